package washbook.functions.ferment;

import java.util.Arrays;
import washbook.functions.Numbers;
import washbook.functions.RefusedException;

/**
 * A ferment's readings in order of time: days (any zero) and SG 20/20.
 *
 * @param days not falling
 * @param gravities as many
 */
record Readings(double[] days, double[] gravities) {

  /** Drops rows where either cell is blank (NaN); refuses days that run backwards. */
  static Readings of(double[] times, double[] gravities) {
    if (times.length != gravities.length) {
      throw RefusedException.contradiction(
          times.length + " cells of times stand against " + gravities.length + " of gravities.");
    }
    double[] days = new double[times.length];
    double[] kept = new double[times.length];
    int count = 0;
    for (int i = 0; i < times.length; i++) {
      if (Double.isNaN(times[i]) || Double.isNaN(gravities[i])) {
        continue;
      }
      if (count > 0 && times[i] < days[count - 1]) {
        throw RefusedException.contradiction(
            "times (cell "
                + (i + 1)
                + ") "
                + Numbers.show(times[i])
                + " is before the time above it, "
                + Numbers.show(days[count - 1])
                + ".");
      }
      days[count] = times[i];
      kept[count++] = gravities[i];
    }
    return new Readings(Arrays.copyOf(days, count), Arrays.copyOf(kept, count));
  }

  int count() {
    return days.length;
  }

  /** The readings from index {@code first} on. */
  Readings from(int first) {
    return new Readings(
        Arrays.copyOfRange(days, first, count()), Arrays.copyOfRange(gravities, first, count()));
  }

  /** Days between the first and the last reading. */
  double span() {
    return count() == 0 ? 0 : days[count() - 1] - days[0];
  }

  /**
   * The straight line of least squares through the readings up to {@code last}, over {@code window}
   * days or the last {@code fewest} readings, whichever are more.
   */
  Line line(int last, double window, int fewest) {
    int first = last;
    while (first > 0 && (last - first + 1 < fewest || days[last] - days[first - 1] <= window)) {
      first--;
    }
    int n = last - first + 1;
    double meanDay = 0;
    double meanGravity = 0;
    for (int i = first; i <= last; i++) {
      meanDay += (days[i] - days[last]) / n;
      meanGravity += gravities[i] / n;
    }
    double square = 0;
    double product = 0;
    for (int i = first; i <= last; i++) {
      double day = days[i] - days[last] - meanDay;
      square += day * day;
      product += day * (gravities[i] - meanGravity);
    }
    double slope = square == 0 ? Double.NaN : product / square;
    return new Line(-slope, meanGravity - slope * meanDay, days[last] - days[first]);
  }

  /**
   * A fitted line.
   *
   * @param fallPerDay SG per day, positive when it falls; NaN when all readings are of one time
   * @param gravity SG at its end
   * @param span days it covers
   */
  record Line(double fallPerDay, double gravity, double span) {}
}
