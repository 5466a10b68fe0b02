package washbook.functions.ferment;

import java.util.function.DoubleUnaryOperator;
import java.util.random.RandomGenerator;
import org.apache.commons.math3.special.Erf;

/**
 * The true course of a made-up ferment. Ranges are common practice, no source.
 *
 * @param truth SG by day
 * @param planned SG where it would come to rest if nothing stopped it
 * @param end SG where it comes to rest
 * @param arrest day on which it is stopped; infinite when it runs through
 * @param length days until it rests or is stopped
 */
record Ferment(
    DoubleUnaryOperator truth, double planned, double end, double arrest, double length) {

  /**
   * How the course is made: from MONOD to COLD_SNAP by {@link Growth}, the last three by {@link
   * OtherKinetics}.
   */
  enum Family {
    LOGISTIC,
    GOMPERTZ,
    EXPONENTIAL,
    TWO_PHASE,
    DELAYED,
    LOGNORMAL,
    MONOD,
    COLD_NIGHTS,
    POOR_IN_NITROGEN,
    COLD_SNAP,
    STARVED,
    TWO_SUGARS,
    SELF_HEATED
  }

  private static final double STEP = 0.01;

  static Ferment make(Family family, boolean stuck, RandomGenerator random) {
    double original = in(random, 1.040, 1.110);
    double end = in(random, 0.990, 1.010);
    double share = in(random, 0.35, 0.75);
    double dying = in(random, 0.05, 0.25);
    DoubleUnaryOperator left = left(family, original, end, random);
    DoubleUnaryOperator whole = t -> end + (original - end) * left.applyAsDouble(t);
    if (stuck) {
      double arrest = firstDay(whole, original - share * (original - end), STEP);
      DoubleUnaryOperator truth = stopped(whole, arrest, dying);
      return new Ferment(truth, end, truth.applyAsDouble(arrest + 5), arrest, arrest);
    }
    return new Ferment(
        whole, end, end, Double.POSITIVE_INFINITY, firstDay(whole, end + 0.0005, 5 * STEP));
  }

  /** The share still to fall on each day. */
  private static DoubleUnaryOperator left(
      Family family, double original, double end, RandomGenerator random) {
    double lag = in(random, 0.1, 1.2);
    return switch (family) {
      case LOGISTIC -> {
        double scale = in(random, 0.4, 1.3);
        double middle = lag + 3 * scale;
        yield t -> 1 / (1 + Math.exp((t - middle) / scale));
      }
      case GOMPERTZ -> {
        double scale = in(random, 0.5, 1.6);
        double middle = lag + 1.3 * scale;
        yield t -> 1 - Math.exp(-Math.exp(-(t - middle) / scale));
      }
      case EXPONENTIAL -> {
        double scale = in(random, 0.8, 2.5);
        yield t -> Math.exp(-Math.max(0, t - lag) / scale);
      }
      case TWO_PHASE -> {
        double quick = in(random, 0.5, 0.85);
        double scale = in(random, 0.3, 0.8);
        double middle = lag + 3 * scale;
        double slow = in(random, 1.5, 3.5);
        yield t ->
            quick / (1 + Math.exp((t - middle) / scale))
                + (1 - quick) * Math.exp(-Math.max(0, t - lag) / slow);
      }
      case DELAYED -> {
        double late = in(random, 1, 3);
        double scale = in(random, 1.5, 4);
        double power = in(random, 1, 2);
        yield t -> Math.exp(-Math.pow(Math.max(0, t - late) / scale, power));
      }
      case LOGNORMAL -> {
        double middle = in(random, 2, 5);
        double spread = in(random, 0.3, 0.7);
        yield t -> 0.5 * Erf.erfc(Math.log(Math.max(1e-9, t) / middle) / spread / Math.sqrt(2));
      }
      case STARVED, TWO_SUGARS, SELF_HEATED -> OtherKinetics.left(family, random);
      default -> {
        DoubleUnaryOperator course = Growth.course(family, original, end, random);
        yield t -> (course.applyAsDouble(t) - end) / (original - end);
      }
    };
  }

  private static double firstDay(DoubleUnaryOperator course, double gravity, double step) {
    double day = 0;
    while (course.applyAsDouble(day) > gravity && day < 60) {
      day += step;
    }
    return day;
  }

  /** A cold or poisoned yeast does not stop at once: its rate dies away over some hours. */
  private static DoubleUnaryOperator stopped(
      DoubleUnaryOperator whole, double arrest, double dying) {
    return t ->
        whole.applyAsDouble(
            t <= arrest ? t : arrest + dying * (1 - Math.exp(-(t - arrest) / dying)));
  }

  static double in(RandomGenerator random, double from, double to) {
    return from + (to - from) * random.nextDouble();
  }

  /** A wash whose yeast is dead. */
  Ferment neverBegun() {
    double original = truth.applyAsDouble(0);
    return new Ferment(day -> original, planned, original, Double.NEGATIVE_INFINITY, 0);
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

  /** Days from then until it is within 0.002 of the expected end, or of its own if higher. */
  double daysLeft(double from, double expectedFinal) {
    double target = Math.max(end, expectedFinal) + Finish.WITHIN;
    double day = from;
    while (truth.applyAsDouble(day) > target && day < from + 200) {
      day += STEP;
    }
    return day - from;
  }
}
