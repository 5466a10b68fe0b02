package washbook.functions.ferment;

import java.util.Arrays;
import washbook.functions.RefusedException;

/**
 * A ferment's readings in order of time: days (any zero) and SG 20/20.
 *
 * @param days not falling
 * @param gravities as many
 * @param weights how many single readings each stands for
 */
record Readings(double[] days, double[] gravities, double[] weights) {

  /** Drops rows where either cell is blank (NaN); refuses days that run backwards. */
  static Readings of(double[] times, double[] gravities) {
    if (times.length != gravities.length) {
      throw RefusedException.contradiction("cells.times", times.length, gravities.length);
    }
    double[] days = new double[times.length];
    double[] kept = new double[times.length];
    int count = 0;
    for (int i = 0; i < times.length; i++) {
      if (Double.isNaN(times[i]) || Double.isNaN(gravities[i])) {
        continue;
      }
      if (count > 0 && times[i] < days[count - 1]) {
        throw RefusedException.contradiction("readings.order", i + 1, times[i], days[count - 1]);
      }
      days[count] = times[i];
      kept[count++] = gravities[i];
    }
    double[] ones = new double[count];
    Arrays.fill(ones, 1);
    return new Readings(Arrays.copyOf(days, count), Arrays.copyOf(kept, count), ones);
  }

  int count() {
    return days.length;
  }

  /** The readings from index {@code first} on. */
  Readings from(int first) {
    return between(first, count());
  }

  /** The readings from index {@code first} to before {@code end}. */
  Readings between(int first, int end) {
    return new Readings(
        Arrays.copyOfRange(days, first, end),
        Arrays.copyOfRange(gravities, first, end),
        Arrays.copyOfRange(weights, first, end));
  }

  /**
   * The same readings, each the less weighty the further it lies from the gravity of now: a shape
   * is never quite that of the ferment, and the last readings say most of what is to come.
   *
   * @param modelError how far a shape is off, by the square of the fall between a reading and now,
   *     per SG
   * @param readingError SG
   */
  Readings latestFirst(double modelError, double readingError) {
    double now = line(count() - 1, 1, 3).gravity();
    double[] less = new double[count()];
    for (int i = 0; i < less.length; i++) {
      double fallen = gravities[i] - now;
      double off = modelError * fallen * fallen / readingError;
      less[i] = 1 / (1 / weights[i] + off * off);
    }
    return new Readings(days, gravities, less);
  }

  /** At most about that many: neighbours in time become their mean, so that a fit stays quick. */
  Readings thinned(int most) {
    if (count() <= most) {
      return this;
    }
    double width = span() / most;
    double[][] sums = new double[3][most + 1];
    int kept = -1;
    int bin = -1;
    for (int i = 0; i < count(); i++) {
      int into = (int) ((days[i] - days[0]) / width);
      if (into != bin) {
        bin = into;
        kept++;
      }
      sums[0][kept] += weights[i] * days[i];
      sums[1][kept] += weights[i] * gravities[i];
      sums[2][kept] += weights[i];
    }
    kept++;
    for (int i = 0; i < kept; i++) {
      sums[0][i] /= sums[2][i];
      sums[1][i] /= sums[2][i];
    }
    return new Readings(sums[0], sums[1], sums[2]).between(0, kept);
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
    return new Line(
        -slope,
        meanGravity - slope * meanDay,
        days[last] - days[first],
        CourseFit.READING_ERROR / Math.sqrt(square));
  }

  /**
   * A fitted line.
   *
   * @param fallPerDay SG per day, positive when it falls; NaN when all readings are of one time
   * @param gravity SG at its end
   * @param span days it covers
   * @param error standard deviation of the fall, SG per day, from that of a reading
   */
  record Line(double fallPerDay, double gravity, double span, double error) {}
}
