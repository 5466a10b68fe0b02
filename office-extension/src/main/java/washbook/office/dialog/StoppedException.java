package washbook.office.dialog;

import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.office.language.OfficeText;

/** A command cannot go on; what it says is for the user. */
public final class StoppedException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient Message said;

  public StoppedException(Message said) {
    this(null, said);
  }

  /** Says a text that has no placeholders. */
  public StoppedException(String key) {
    this(OfficeText.of(key));
  }

  /** The message goes on with what the office or Java says. */
  public StoppedException(Message said, Throwable cause) {
    this(cause, OfficeText.of("stopped.because", said, Trouble.detail(cause)));
  }

  public StoppedException(String key, Throwable cause) {
    this(OfficeText.of(key), cause);
  }

  /** A cause of null is none. */
  private StoppedException(Throwable cause, Message said) {
    super(said.in(Language.EN), cause);
    this.said = said;
  }

  /** Whatever was thrown, and what has become of the document. */
  public static StoppedException after(Throwable thrown, String outcomeKey) {
    Message whole = OfficeText.of("stopped.then", Trouble.of(thrown), OfficeText.of(outcomeKey));
    return new StoppedException(thrown, whole);
  }

  Message said() {
    return said;
  }
}
