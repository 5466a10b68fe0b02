package washbook.office.menu;

/** A command cannot go on; the message is for the user. */
final class StoppedException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  StoppedException(String message) {
    super(message);
  }

  /** The message goes on with what the office or Java says. */
  StoppedException(String message, Throwable cause) {
    super(message + " (" + Trouble.detail(cause) + ")", cause);
  }

  private StoppedException(Throwable cause, String message) {
    super(message, cause);
  }

  /** Whatever was thrown, and what has become of the document. */
  static StoppedException after(Throwable thrown, String outcome) {
    return new StoppedException(thrown, Trouble.of(thrown) + " " + outcome);
  }
}
