package washbook.functions.ferment;

/** Whether the last readings stand still where the fitted course would have gone on falling. */
final class Standing {
  /** By so much the sum of squares of a level must be under that of the course: odds of 20 to 1. */
  private static final double CLEARLY = 6;

  /** Readings over a shorter time stand for no level. */
  private static final double SHORTEST_DAYS = 0.5;

  /** Standard deviations of chi-squared above which readings are not level. */
  private static final double UNLIKELY = 2.5;

  private Standing() {}

  /** The SG at which the last readings stand; NaN when the course explains them as well. */
  static double level(Readings readings, CourseModel course) {
    int count = readings.count();
    double sum = 0;
    double squares = 0;
    double off = 0;
    double level = Double.NaN;
    double best = CLEARLY;
    for (int i = count - 1; i >= 0; i--) {
      double day = readings.days()[i];
      double gravity = readings.gravities()[i];
      int n = count - i;
      sum += gravity - readings.gravities()[count - 1];
      squares += square(gravity - readings.gravities()[count - 1]);
      off += square(gravity - course.mean(fit -> fit.gravity(day)));
      double error = square(CourseFit.READING_ERROR);
      double flat = (squares - sum * sum / n) / error;
      if (n < 2 || course.now() - day < SHORTEST_DAYS) {
        continue;
      }
      if (flat > n - 1 + UNLIKELY * Math.sqrt(2.0 * (n - 1))) {
        if (n > 2 * Progress.FEWEST_READINGS) {
          break;
        }
        continue;
      }
      double better = off / error - flat;
      if (n >= Progress.FEWEST_READINGS) {
        Readings.Line line = readings.line(count - 1, course.now() - day, n);
        if (line.fallPerDay() > Progress.STILL_PER_DAY) {
          continue;
        }
        if (line.span() >= Progress.SHORTEST_SPAN_DAYS
            && line.fallPerDay() + line.error() < Progress.STILL_PER_DAY) {
          better += CLEARLY;
        }
      }
      if (better > best) {
        best = better;
        level = readings.gravities()[count - 1] + sum / n;
      }
    }
    return level;
  }

  private static double square(double x) {
    return x * x;
  }
}
