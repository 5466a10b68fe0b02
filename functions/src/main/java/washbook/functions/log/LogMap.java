package washbook.functions.log;

/** What a person says about a log where the log does not say it itself. */
public final class LogMap {
  private static final LogMap NONE = new LogMap();

  private LogMap() {}

  /** A map that says nothing. */
  public static LogMap none() {
    return NONE;
  }
}
