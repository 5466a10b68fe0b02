package washbook.functions.ferment;

import java.util.function.ToDoubleFunction;

/**
 * What the readings of one ferment say of its course: every {@link FallShape} fitted, each with the
 * weight that its misfit leaves it, {@code exp(-misfit / 2)}.
 */
final class CourseModel {
  /** More readings than this are thinned before they are fitted. */
  static final int MOST_READINGS = 48;

  /**
   * How far a shape is off the true course, as a share of the fall; chosen on generated courses.
   */
  static final double MODEL_ERROR = 0.1;

  private static final double NEGLIGIBLE = 1e-3;

  private final Readings readings;
  private final double expectedFinal;
  private final CourseFit[] fits;
  private final double[] shares;

  private CourseModel(Readings readings, double expectedFinal, CourseFit[] fits, double[] shares) {
    this.readings = readings;
    this.expectedFinal = expectedFinal;
    this.fits = fits;
    this.shares = shares;
  }

  static CourseModel of(Readings all, double expectedFinal) {
    Readings readings =
        all.thinned(MOST_READINGS).latestFirst(MODEL_ERROR, CourseFit.READING_ERROR);
    CourseFit[] fits = new CourseFit[FallShape.ALL.size()];
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < fits.length; i++) {
      fits[i] = CourseFit.of(FallShape.ALL.get(i), readings, expectedFinal);
      least = Math.min(least, fits[i].misfit());
    }
    double[] shares = new double[fits.length];
    double sum = 0;
    for (int i = 0; i < fits.length; i++) {
      shares[i] = Math.exp((least - fits[i].misfit()) / 2);
      sum += shares[i];
    }
    for (int i = 0; i < fits.length; i++) {
      shares[i] /= sum;
    }
    return new CourseModel(readings, expectedFinal, fits, shares);
  }

  /** SG where it was expected to end. */
  double expectedFinal() {
    return expectedFinal;
  }

  /** Day of the first reading. */
  double first() {
    return readings.days()[0];
  }

  /** Day of the last reading. */
  double now() {
    return readings.days()[readings.count() - 1];
  }

  /** Mean over the shapes. */
  double mean(ToDoubleFunction<CourseFit> ask) {
    double sum = 0;
    for (int i = 0; i < fits.length; i++) {
      sum += shares[i] * ask.applyAsDouble(fits[i]);
    }
    return sum;
  }

  /** The value that is not passed with probability {@code p}, each fit being a normal law. */
  double quantile(ToDoubleFunction<CourseFit> ask, double p) {
    double[] means = new double[fits.length];
    double[] deviations = new double[fits.length];
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < fits.length; i++) {
      if (shares[i] > NEGLIGIBLE) {
        means[i] = ask.applyAsDouble(fits[i]);
        deviations[i] = Math.max(1e-9, fits[i].plusMinus(ask));
        low = Math.min(low, means[i] - 4 * deviations[i]);
        high = Math.max(high, means[i] + 4 * deviations[i]);
      }
    }
    for (int step = 0; step < 40; step++) {
      double middle = (low + high) / 2;
      double below = 0;
      for (int i = 0; i < fits.length; i++) {
        if (shares[i] > NEGLIGIBLE) {
          below += shares[i] * normal((middle - means[i]) / deviations[i]);
        }
      }
      if (below < p) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /** Normal distribution by the logistic approximation, within 0.02. */
  private static double normal(double z) {
    return 1 / (1 + Math.exp(-1.702 * z));
  }
}
