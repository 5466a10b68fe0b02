package washbook.functions.ferment;

import java.util.function.ToDoubleFunction;

/**
 * What the readings of one ferment say of its course: every {@link FallShape} fitted, each with the
 * weight that its evidence gives it (Bayesian model averaging).
 */
final class CourseModel {
  /** More readings than this are thinned before they are fitted. */
  static final int MOST_READINGS = 48;

  /**
   * How far a shape is off the true course, SG by the square of the fall in SG: 0.0002 at 10 points
   * above now, 0.003 at 40; chosen on generated courses.
   */
  static final double MODEL_ERROR = 2;

  private static final double NEGLIGIBLE = 3e-3;

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
    double[] shares = new double[fits.length];
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < fits.length; i++) {
      fits[i] = CourseFit.of(FallShape.ALL.get(i), readings, expectedFinal);
      shares[i] = fits[i].logEvidence();
      most = Math.max(most, shares[i]);
    }
    double sum = 0;
    for (int i = 0; i < fits.length; i++) {
      shares[i] = Math.exp(shares[i] - most);
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

  /** The law of what {@code ask} makes of a course. */
  Mixture law(ToDoubleFunction<CourseFit> ask) {
    Mixture law = new Mixture();
    for (int i = 0; i < fits.length; i++) {
      if (shares[i] > NEGLIGIBLE) {
        fits[i].addTo(law, shares[i], ask);
      }
    }
    return law;
  }
}
