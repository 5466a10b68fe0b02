package washbook.log.audit;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import washbook.functions.RefusedException;
import washbook.functions.reading.Alcoholometer;
import washbook.log.language.Figure;
import washbook.log.language.Message;

/**
 * One way in which a person may have come to a jar's figure.
 *
 * @param cause what is wrong with it; null for the right way
 * @param detail in words
 */
record RunWay(Audit.Cause cause, Message detail, ToDoubleFunction<RunAuditor.Jar> figure) {
  /** A rule by the degree is told from jars at least so far from 20 °C. */
  private static final double FAR = 1;

  /** % vol a degree that rules of thumb lie between; common practice, no source. */
  private static final double LEAST_PER_DEGREE = 0.15;

  private static final double MOST_PER_DEGREE = 0.6;

  /** A jar with the log's own figure for it. */
  record Pair(RunAuditor.Jar jar, double own) {}

  static RunWay right(ToDoubleFunction<RunAuditor.Jar> figure) {
    return new RunWay(null, Message.NONE, figure);
  }

  static RunWay asRead(String detail, ToDoubleFunction<RunAuditor.Jar> figure) {
    return new RunWay(Audit.Cause.WARM_READING, Message.of("audit.detail." + detail), figure);
  }

  static RunWay calibrated(double celsius) {
    return new RunWay(
        Audit.Cause.WRONG_REFERENCE,
        Message.of("audit.detail.calibrated", figure("%.1f", celsius)),
        jar -> trueStrength(jar, celsius));
  }

  /** The same correction for each degree, measured from the figures; empty where none fits. */
  static Optional<RunWay> perDegree(List<Pair> pairs) {
    double product = 0;
    double square = 0;
    for (Pair pair : pairs) {
      double warmer = pair.jar().temperatureC() - 20;
      if (Math.abs(warmer) >= FAR) {
        product += warmer * (pair.jar().readStrength() - pair.own());
        square += warmer * warmer;
      }
    }
    double factor = product / square;
    return factor >= LEAST_PER_DEGREE && factor <= MOST_PER_DEGREE
        ? Optional.of(
            new RunWay(
                Audit.Cause.RULE_OF_THUMB,
                Message.of("audit.detail.perDegree", figure("%.2f", factor)),
                jar -> jar.readStrength() - factor * (jar.temperatureC() - 20)))
        : Optional.empty();
  }

  private static double trueStrength(RunAuditor.Jar jar, double calibrationC) {
    try {
      return Alcoholometer.trueStrength(jar.readStrength(), jar.temperatureC(), calibrationC);
    } catch (RefusedException refused) {
      return Double.NaN;
    }
  }

  private static Figure figure(String format, double value) {
    return new Figure(String.format(Locale.ROOT, format, value));
  }
}
