package washbook.log.fill;

import java.util.Arrays;
import washbook.functions.RefusedException;
import washbook.functions.ferment.Progress;

/** The readings of one batch up to now, for its rate and state. */
final class ProgressToDate {
  /** Days and readings back that the rate looks at, with room to spare. */
  private static final double RATE_DAYS = 4;

  private static final int RATE_READINGS = 4;

  /** Readings back that the state looks at. */
  private static final int MOST_READINGS = 1000;

  /** SG where a wash is taken to end when nothing else is known; the catalogue's own default. */
  private static final double EXPECTED_FINAL = 1.0;

  private double[] days = new double[64];
  private double[] gravities = new double[64];
  private int size;

  /** The next reading; one without a time is left out. */
  void add(double day, double gravity) {
    if (Double.isNaN(day)) {
      return;
    }
    if (size == days.length) {
      days = Arrays.copyOf(days, size * 2);
      gravities = Arrays.copyOf(gravities, size * 2);
    }
    days[size] = day;
    gravities[size++] = gravity;
  }

  /** Points per day now, NaN when the readings do not tell. */
  double rate() {
    int from = size;
    while (from > 0
        && (size - from < RATE_READINGS || days[from - 1] >= days[size - 1] - RATE_DAYS)) {
      from--;
    }
    try {
      return Progress.rate(
          Arrays.copyOfRange(days, from, size), Arrays.copyOfRange(gravities, from, size));
    } catch (RefusedException tooFew) {
      return Double.NaN;
    }
  }

  /** The state in a word. */
  String state() {
    int from = Math.max(0, size - MOST_READINGS);
    try {
      return Progress.state(
          Arrays.copyOfRange(days, from, size),
          Arrays.copyOfRange(gravities, from, size),
          EXPECTED_FINAL);
    } catch (RefusedException cannot) {
      return null;
    }
  }
}
