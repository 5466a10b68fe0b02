package washbook.log;

/**
 * By how much two readings of one wash differ though nothing has happened between them. Common
 * practice, no source.
 */
public final class ReadingError {
  /**
   * What hydrometer and keeper err by between two readings, SG; the same figure does for other
   * scales.
   */
  public static final double USUAL = 0.003;

  /** A rise that no reading error explains, SG. */
  public static final double BEYOND = 0.006;

  private ReadingError() {}
}
