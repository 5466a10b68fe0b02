package washbook.runner.file;

import java.io.IOException;
import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.log.language.Messages;
import washbook.log.language.Told;

/** A file that cannot be worked on; says why, in the language of whoever reads it. */
public final class UnusableFileException extends IOException implements Told {
  private static final long serialVersionUID = 1L;

  private static final Messages TEXTS = new Messages(UnusableFileException.class);

  private final transient Message told;

  private UnusableFileException(Message told, Throwable cause) {
    super(told.in(Language.EN), cause);
    this.told = told;
  }

  /** One of the texts that stand beside this class. */
  public static UnusableFileException of(String key, Object... arguments) {
    return new UnusableFileException(message(key, arguments), null);
  }

  /** The same with what it comes from. */
  public static UnusableFileException from(Throwable cause, String key, Object... arguments) {
    return new UnusableFileException(message(key, arguments), cause);
  }

  /**
   * A damaged file, with how it is damaged.
   *
   * @param how key of one of the texts that stand beside this class
   */
  public static UnusableFileException damaged(Throwable cause, String how, Object... arguments) {
    return from(cause, "damaged", message(how, arguments));
  }

  /** One of the texts that stand beside this class. */
  public static Message message(String key, Object... arguments) {
    return TEXTS.message(key, arguments);
  }

  /** A text of the person's in quotation marks, as an argument of another text. */
  public static Object quoted(Object text) {
    return message("quoted", text.toString());
  }

  @Override
  public Message told() {
    return told;
  }
}
