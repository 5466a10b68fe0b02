package washbook.office.dialog;

import washbook.log.language.Message;
import washbook.office.language.OfficeText;

/** What has gone wrong, in words for the user. */
public final class Trouble {
  private Trouble() {}

  /** Whatever was thrown: our own sentence, or what the office or Java says about it. */
  public static Message of(Throwable thrown) {
    if (thrown instanceof StoppedException stopped) {
      return stopped.said();
    }
    if (thrown instanceof OutOfMemoryError) {
      return OfficeText.of("stopped.memory");
    }
    return OfficeText.of("stopped.error", detail(thrown));
  }

  static String detail(Throwable thrown) {
    String message = thrown.getMessage();
    String kind = thrown.getClass().getSimpleName();
    return message == null || message.isBlank() ? kind : kind + ": " + message.strip();
  }
}
