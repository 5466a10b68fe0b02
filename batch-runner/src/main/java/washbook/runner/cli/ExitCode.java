package washbook.runner.cli;

/** What the program's exit code says. */
public final class ExitCode {
  public static final int DONE = 0;

  /** Done, but something was refused; it is listed. */
  public static final int REFUSED = 1;

  /** The command line makes no sense. */
  public static final int USAGE = 2;

  /** A file could not be read or written. */
  public static final int FILE = 3;

  /** Nothing was recognised. */
  public static final int NOTHING_RECOGNISED = 4;

  private ExitCode() {}
}
