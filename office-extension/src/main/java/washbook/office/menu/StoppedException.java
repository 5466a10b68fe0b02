package washbook.office.menu;

/** A command cannot go on; the message is for the user. */
final class StoppedException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  StoppedException(String message) {
    super(message);
  }

  StoppedException(String message, Throwable cause) {
    super(message, cause);
  }
}
