package washbook.functions.ferment;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;

/**
 * One {@link FallShape} fitted to a ferment's readings by least squares: each residual counts in
 * reading errors, and what is known of ferments beforehand counts as further readings do
 * (Levenberg, Quart. Appl. Math. 2 (1944) 164; Marquardt, J. SIAM 11 (1963) 431).
 */
final class CourseFit {
  /** Standard deviation of one corrected reading, SG: half a line of a usual hydrometer. */
  static final double READING_ERROR = 0.001;

  /**
   * How far a ferment of this wash may end from where it is expected to, SG: between what
   * FINALGRAVITYPLUSMINUS says of sugar (0.001) and of molasses (0.005).
   */
  static final double END_ERROR = 0.003;

  /** A fall's usual time scale in days, and its spread as a factor e^x; common practice. */
  private static final double USUAL_SCALE = Math.log(2.4);

  private static final double SCALE_SPREAD = 0.5;

  /** How far above its first reading the wash may have begun, SG: logs begin late. */
  private static final double START_ERROR = 0.005;

  private static final double[] SCALES = {0.3, 0.7, 1.3, 2.4, 5};
  private static final int MIDDLES = 12;
  private static final int EVERY = 6;

  /** More than the sums of squares lose in the last digits. */
  private static final double ROUNDING = 1e-6;

  /** Slopes are taken over this many standard deviations to either side. */
  private static final double STEP_DEVIATIONS = 0.1;

  /** Five ends of a normal law and their weights (Gauss and Hermite). */
  private static final double[] ENDS = {-2.85697, -1.355626, 0, 1.355626, 2.85697};

  private static final double[] END_WEIGHTS = {0.011257, 0.222076, 0.533333, 0.222076, 0.011257};
  private static final int MOST_STEPS = 30;
  private static final double ENOUGH = 1e-4;

  /** Places of the parameters: start and end in SG, middle in days, natural log of the scale. */
  private static final int START = 0;

  private static final int END = 1;
  private static final int MIDDLE = 2;
  private static final int SCALE = 3;

  /** What is known of each parameter beforehand, as one over the square of its error. */
  private static final double[] BEFOREHAND = {
    1 / (START_ERROR * START_ERROR),
    1 / (END_ERROR * END_ERROR),
    1e-6,
    1 / (SCALE_SPREAD * SCALE_SPREAD)
  };

  private final FallShape shape;
  private final Readings readings;
  private final double expectedFinal;
  private final double[] at = new double[4];
  private double misfit = Double.POSITIVE_INFINITY;

  private CourseFit(FallShape shape, Readings readings, double expectedFinal) {
    this.shape = shape;
    this.readings = readings;
    this.expectedFinal = expectedFinal;
  }

  /** The best fit of one shape. */
  static CourseFit of(FallShape shape, Readings readings, double expectedFinal) {
    CourseFit fit = new CourseFit(shape, readings, expectedFinal);
    fit.search();
    fit.refine();
    return fit;
  }

  private CourseFit with(double[] parameters) {
    CourseFit other = new CourseFit(shape, readings, expectedFinal);
    System.arraycopy(parameters, 0, other.at, 0, 4);
    return other;
  }

  /** Sum of squares in reading errors, with what is known beforehand. */
  double misfit() {
    return misfit;
  }

  /**
   * Natural log of the evidence for this shape, but for a constant: how probable the readings are,
   * averaged over the parameters, in Laplace's approximation (Kass and Raftery, J. Am. Stat. Assoc.
   * 90 (1995) 773).
   */
  double logEvidence() {
    return Math.log(shape.odds()) - misfit / 2 - Cholesky.logDeterminant(normal()) / 2;
  }

  double gravity(double day) {
    return at[END] + (at[START] - at[END]) * shape.left(x(day));
  }

  /** SG per day that it falls. */
  double fall(double day) {
    return (at[START] - at[END]) * shape.slope(x(day)) / scale();
  }

  /** The fastest fall up to a day. */
  double fastestUntil(double day) {
    return fall(Math.min(day, at[MIDDLE] + scale() * shape.when(shape.fastest())));
  }

  double end() {
    return at[END];
  }

  /** The day on which it comes down to a gravity above its end; long ago if it began below. */
  double dayOf(double gravity) {
    if (at[START] <= gravity) {
      return Double.NEGATIVE_INFINITY;
    }
    return at[MIDDLE] + scale() * shape.when((gravity - at[END]) / (at[START] - at[END]));
  }

  private double scale() {
    return Math.exp(at[SCALE]);
  }

  private double x(double day) {
    return (day - at[MIDDLE]) / scale();
  }

  /**
   * A coarse search over middle and scale; start and end follow from each by plain regression. The
   * misfit of a few readings is never more than that of all, so that most places need no more.
   */
  private void search() {
    double first = readings.days()[0];
    double last = readings.days()[readings.count() - 1];
    double[][] places = new double[SCALES.length * MIDDLES][4];
    double[] least = new double[places.length];
    for (int i = 0; i < places.length; i++) {
      double scale = SCALES[i / MIDDLES];
      double from = first - scale;
      double to = last + 3 * scale;
      places[i][MIDDLE] = from + (to - from) * (i % MIDDLES) / (MIDDLES - 1);
      places[i][SCALE] = Math.log(scale);
      least[i] = regress(places[i], EVERY) - ROUNDING;
    }
    int best = places.length;
    for (int tried = 0; tried < places.length; tried++) {
      int next = leastOf(least);
      if (!(least[next] <= misfit)) {
        return;
      }
      least[next] = Double.POSITIVE_INFINITY;
      double found = regress(places[next], 1);
      if (found < misfit || found == misfit && next < best) {
        misfit = found;
        best = next;
        System.arraycopy(places[next], 0, at, 0, 4);
      }
    }
  }

  private static int leastOf(double[] values) {
    int least = 0;
    for (int i = 1; i < values.length; i++) {
      least = values[i] < values[least] ? i : least;
    }
    return least;
  }

  /**
   * Puts in start and end that fit best with the middle and the scale given.
   *
   * @param every how many readings one is looked at
   * @return the misfit with them
   */
  private double regress(double[] parameters, int every) {
    double w = 1 / (READING_ERROR * READING_ERROR);
    double aa = 1 / square(START_ERROR);
    double ab = 0;
    double bb = 1 / square(END_ERROR);
    double ya = aa * (readings.gravities()[0] - expectedFinal);
    double yb = 0;
    double yy = ya * (readings.gravities()[0] - expectedFinal);
    double scale = Math.exp(parameters[SCALE]);
    for (int i = 0; i < readings.count(); i += every) {
      double weight = w * readings.weights()[i];
      double left = shape.left((readings.days()[i] - parameters[MIDDLE]) / scale);
      double y = readings.gravities()[i] - expectedFinal;
      aa += weight * left * left;
      ab += weight * left * (1 - left);
      bb += weight * (1 - left) * (1 - left);
      ya += weight * left * y;
      yb += weight * (1 - left) * y;
      yy += weight * y * y;
    }
    double determinant = aa * bb - ab * ab;
    double start = (ya * bb - yb * ab) / determinant;
    double end = (yb * aa - ya * ab) / determinant;
    parameters[START] = expectedFinal + start;
    parameters[END] = expectedFinal + end;
    return yy - start * ya - end * yb + square((parameters[SCALE] - USUAL_SCALE) / SCALE_SPREAD);
  }

  private double misfit(double[] parameters) {
    double scale = Math.exp(parameters[SCALE]);
    double whole = parameters[START] - parameters[END];
    double sum = 0;
    for (int i = 0; i < readings.count(); i++) {
      double left = shape.left((readings.days()[i] - parameters[MIDDLE]) / scale);
      double off = (parameters[END] + whole * left - readings.gravities()[i]) / READING_ERROR;
      sum += readings.weights()[i] * off * off;
    }
    sum += square((parameters[START] - readings.gravities()[0]) / START_ERROR);
    sum += square((parameters[END] - expectedFinal) / END_ERROR);
    return sum + square((parameters[SCALE] - USUAL_SCALE) / SCALE_SPREAD);
  }

  private static double square(double x) {
    return x * x;
  }

  private void refine() {
    double damping = 1e-2;
    double[][] slopes = new double[4][readings.count()];
    double[][] normal = new double[4][4];
    double[][] damped = new double[4][4];
    double[] towards = new double[4];
    double[] tried = new double[4];
    boolean isMoved = true;
    for (int step = 0; step < MOST_STEPS; step++) {
      if (isMoved) {
        takeSlopes(slopes);
        takeNormal(slopes, normal);
        takeGradient(slopes, towards);
      }
      damp(normal, damping, damped);
      double[] move = Cholesky.solve(damped, towards);
      for (int i = 0; i < 4; i++) {
        tried[i] = at[i] + move[i];
      }
      double found = misfit(tried);
      isMoved = found < misfit;
      if (isMoved) {
        double gain = misfit - found;
        misfit = found;
        System.arraycopy(tried, 0, at, 0, 4);
        damping /= 5;
        if (gain < ENOUGH) {
          return;
        }
      } else {
        damping *= 6;
        if (damping > 1e6) {
          return;
        }
      }
    }
  }

  private static void damp(double[][] normal, double damping, double[][] damped) {
    for (int i = 0; i < 4; i++) {
      System.arraycopy(normal[i], 0, damped[i], 0, 4);
      damped[i][i] *= 1 + damping;
    }
  }

  /** Slopes of each reading's gravity by the parameters. */
  private void takeSlopes(double[][] slopes) {
    double whole = at[START] - at[END];
    double scale = scale();
    for (int i = 0; i < readings.count(); i++) {
      double x = (readings.days()[i] - at[MIDDLE]) / scale;
      double left = shape.left(x);
      double fall = whole * shape.slope(x, left);
      slopes[START][i] = left;
      slopes[END][i] = 1 - left;
      slopes[MIDDLE][i] = fall / scale;
      slopes[SCALE][i] = fall == 0 ? 0 : fall * x;
    }
  }

  private double[][] normal() {
    double[][] slopes = new double[4][readings.count()];
    takeSlopes(slopes);
    double[][] normal = new double[4][4];
    takeNormal(slopes, normal);
    return normal;
  }

  /** Matrix of the normal equations, known-beforehand included. */
  private void takeNormal(double[][] slopes, double[][] normal) {
    for (int a = 0; a < 4; a++) {
      for (int b = 0; b <= a; b++) {
        double sum = a == b ? BEFOREHAND[a] : 0;
        for (int i = 0; i < readings.count(); i++) {
          sum += weight(i) * slopes[a][i] * slopes[b][i];
        }
        normal[a][b] = sum;
        normal[b][a] = sum;
      }
    }
  }

  private double weight(int i) {
    return readings.weights()[i] / (READING_ERROR * READING_ERROR);
  }

  private void takeGradient(double[][] slopes, double[] towards) {
    towards[START] = (readings.gravities()[0] - at[START]) / square(START_ERROR);
    towards[END] = (expectedFinal - at[END]) / square(END_ERROR);
    towards[SCALE] = (USUAL_SCALE - at[SCALE]) / square(SCALE_SPREAD);
    towards[MIDDLE] = 0;
    for (int i = 0; i < readings.count(); i++) {
      double left = slopes[START][i];
      double off = readings.gravities()[i] - (at[END] + (at[START] - at[END]) * left);
      for (int a = 0; a < 4; a++) {
        towards[a] += weight(i) * slopes[a][i] * off;
      }
    }
  }

  /**
   * Adds the law of what {@code ask} makes of this fit: at five ends that the readings leave
   * possible, the others following it, each a normal law of first order (JCGM 102:2011, 6.2.1.3).
   */
  void addTo(Mixture law, double share, ToDoubleFunction<CourseFit> ask) {
    double[][] normal = normal();
    double[] unit = new double[4];
    unit[END] = 1;
    double[] along = Cholesky.solve(normal, unit);
    double deviation = Math.sqrt(along[END]);
    for (int i = 0; i < ENDS.length; i++) {
      double[] there = at.clone();
      for (int k = 0; k < 4; k++) {
        there[k] += ENDS[i] * along[k] / deviation;
      }
      CourseFit fit = with(there);
      law.add(share * END_WEIGHTS[i], ask.applyAsDouble(fit), fit.plusMinus(ask, normal));
    }
  }

  /** Standard deviation with the end as it is. */
  private double plusMinus(ToDoubleFunction<CourseFit> ask, double[][] normal) {
    int[] free = {START, MIDDLE, SCALE};
    double[][] matrix = new double[3][3];
    double[] gradient = new double[3];
    for (int i = 0; i < 3; i++) {
      double step = STEP_DEVIATIONS / Math.sqrt(normal[free[i]][free[i]]);
      double[] up = at.clone();
      double[] down = at.clone();
      up[free[i]] += step;
      down[free[i]] -= step;
      gradient[i] = (ask.applyAsDouble(with(up)) - ask.applyAsDouble(with(down))) / (2 * step);
      for (int k = 0; k < 3; k++) {
        matrix[i][k] = normal[free[i]][free[k]];
      }
    }
    double[] solved = Cholesky.solve(matrix, gradient);
    double sum = 0;
    for (int i = 0; i < 3; i++) {
      sum += gradient[i] * solved[i];
    }
    return Math.sqrt(Math.max(0, sum));
  }

  @Override
  public String toString() {
    return shape + Arrays.toString(at) + " " + misfit;
  }
}
