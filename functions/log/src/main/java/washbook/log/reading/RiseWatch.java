package washbook.log.reading;

import washbook.log.ReadingError;

/**
 * Watches the readings of one batch for rises that nothing in its log explains. Limits are common
 * practice, no source.
 */
public final class RiseWatch {
  /** A rise that stays, SG: more than two readings and thermometers err by. */
  public static final double LASTING = 0.004;

  /** So many rises, and one in so many readings, are more than slips of the pen. */
  private static final int FEWEST_RISES = 2;

  private static final int READINGS_PER_RISE = 5;

  private double before = Double.POSITIVE_INFINITY;
  private int risen = -1;
  private double beforeRise = Double.NaN;
  private int rises;
  private int openFrom = Integer.MAX_VALUE;

  /** To be called where something was put in: the next reading may be higher. */
  public void begin() {
    before = Double.POSITIVE_INFINITY;
    risen = -1;
  }

  /**
   * Takes the next reading.
   *
   * @param position where it stands in the batch
   * @param gravity SG 20/20
   */
  public void read(int position, double gravity) {
    boolean beyond = gravity > before + ReadingError.BEYOND;
    if (beyond || (risen >= 0 && gravity > beforeRise + ReadingError.USUAL)) {
      openFrom = Math.min(openFrom, beyond ? position : risen);
    }
    boolean rise = gravity > before + LASTING;
    rises += beyond ? 1 : 0;
    risen = rise ? position : -1;
    beforeRise = rise ? before : Double.NaN;
    before = gravity;
  }

  /** The position from which a rise puts the readings in question; the largest int for none. */
  public int openFrom() {
    return openFrom;
  }

  /** Whether there is one. */
  public boolean isOpen() {
    return openFrom < Integer.MAX_VALUE;
  }

  /** Whether so many readings rise so often that they may be those of several batches. */
  public boolean isMixed(int readings) {
    return rises >= FEWEST_RISES && rises * READINGS_PER_RISE >= readings;
  }
}
