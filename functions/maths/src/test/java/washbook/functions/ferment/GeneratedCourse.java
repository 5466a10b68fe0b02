package washbook.functions.ferment;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.random.RandomGenerator;

/**
 * A ferment whose true course is known because it is made: times of irregular readings, each wrong
 * by 0.001 SG (standard deviation), up to a moment anywhere in its course.
 *
 * @param end SG where the true course comes to rest
 * @param arrest day on which it is stopped; infinite when it runs through
 */
record GeneratedCourse(
    Family family,
    DoubleUnaryOperator truth,
    double end,
    double expectedFinal,
    double arrest,
    List<Double> times,
    List<Double> gravities) {

  /** How the true course is made; the last three by {@link Growth}. */
  enum Family {
    LOGISTIC,
    GOMPERTZ,
    EXPONENTIAL,
    MONOD,
    COLD_NIGHTS,
    POOR_IN_NITROGEN
  }

  static final double NOISE = 0.001;
  private static final double STEP = 0.01;

  static GeneratedCourse make(Family family, boolean stuck, RandomGenerator random) {
    double original = in(random, 1.040, 1.110);
    double end = in(random, 0.990, 1.010);
    double lag = in(random, 0.1, 1.2);
    DoubleUnaryOperator whole =
        switch (family) {
          case LOGISTIC -> {
            double scale = in(random, 0.4, 1.3);
            double middle = lag + 3 * scale;
            yield t -> end + (original - end) / (1 + Math.exp((t - middle) / scale));
          }
          case GOMPERTZ -> {
            double scale = in(random, 0.5, 1.6);
            double middle = lag + 1.3 * scale;
            yield t -> end + (original - end) * (1 - Math.exp(-Math.exp(-(t - middle) / scale)));
          }
          case EXPONENTIAL -> {
            double scale = in(random, 0.8, 2.5);
            yield t -> end + (original - end) * Math.exp(-Math.max(0, t - lag) / scale);
          }
          default -> Growth.course(family, original, end, random);
        };
    double length = 0;
    while (whole.applyAsDouble(length) > end + 0.0005 && length < 60) {
      length += 0.05;
    }
    double share = in(random, 0.35, 0.75);
    double arrestAt = original - share * (original - end);
    double arrest = Double.POSITIVE_INFINITY;
    if (stuck) {
      arrest = 0;
      while (whole.applyAsDouble(arrest) > arrestAt) {
        arrest += STEP;
      }
    }
    // A cold or poisoned yeast does not stop at once: its rate dies away over some hours.
    double dying = in(random, 0.05, 0.25);
    double stop = arrest;
    DoubleUnaryOperator truth =
        stuck
            ? t ->
                whole.applyAsDouble(
                    t <= stop ? t : stop + dying * (1 - Math.exp(-(t - stop) / dying)))
            : whole;
    double until = stuck ? arrest + in(random, -1, 8) : in(random, 1, length + 8);
    until = Math.max(until, 1.1);
    List<Double> times = new ArrayList<>();
    List<Double> gravities = new ArrayList<>();
    double usualGap = random.nextBoolean() ? 0.5 : 1.0;
    for (double day = 0; ; ) {
      times.add(day);
      gravities.add(truth.applyAsDouble(day) + NOISE * random.nextGaussian());
      double next = day + usualGap * in(random, 0.6, 1.4) * (random.nextInt(10) == 0 ? 2 : 1);
      if (next > until) {
        break;
      }
      day = next;
    }
    double expected = end + 0.001 * random.nextGaussian();
    return new GeneratedCourse(
        family,
        truth,
        stuck ? truth.applyAsDouble(arrest + 5) : end,
        expected,
        arrest,
        times,
        gravities);
  }

  /** The same readings of a wash whose yeast is dead. */
  GeneratedCourse neverBegun(RandomGenerator random) {
    double original = truth.applyAsDouble(0);
    int kept = Math.min(times.size(), 12);
    List<Double> same = new ArrayList<>();
    for (int i = 0; i < kept; i++) {
      same.add(original + NOISE * random.nextGaussian());
    }
    return new GeneratedCourse(
        family,
        day -> original,
        original,
        expectedFinal,
        Double.NEGATIVE_INFINITY,
        times.subList(0, kept),
        same);
  }

  static double in(RandomGenerator random, double from, double to) {
    return from + (to - from) * random.nextDouble();
  }

  double now() {
    return times.get(times.size() - 1);
  }

  /** SG per day. */
  double fall(double day) {
    return (truth.applyAsDouble(day - STEP) - truth.applyAsDouble(day + STEP)) / (2 * STEP);
  }

  /** SG by which it has fallen. */
  double fallen(double day) {
    return truth.applyAsDouble(0) - truth.applyAsDouble(day);
  }

  double fastestUntil(double day) {
    double fastest = 0;
    for (double at = STEP; at <= day; at += 0.02) {
      fastest = Math.max(fastest, fall(at));
    }
    return fastest;
  }

  /** Days until the truth is within 0.002 of the expected end, or of its own if that is higher. */
  double daysLeft() {
    double target = Math.max(end, expectedFinal) + Finish.WITHIN;
    double day = now();
    while (truth.applyAsDouble(day) > target && day < 200) {
      day += STEP;
    }
    return day - now();
  }
}
