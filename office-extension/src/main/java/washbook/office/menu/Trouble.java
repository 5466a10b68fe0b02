package washbook.office.menu;

/** What has gone wrong, in words for the user. */
final class Trouble {
  private Trouble() {}

  /** Whatever was thrown: our own sentence, or what the office or Java says about it. */
  static String of(Throwable thrown) {
    if (thrown instanceof StoppedException) {
      return thrown.getMessage();
    }
    if (thrown instanceof OutOfMemoryError) {
      return "The command stopped: the memory of Java in the office is used up.";
    }
    return "The command stopped because of an error (" + detail(thrown) + ").";
  }

  static String detail(Throwable thrown) {
    String message = thrown.getMessage();
    String kind = thrown.getClass().getSimpleName();
    return message == null || message.isBlank() ? kind : kind + ": " + message.strip();
  }
}
