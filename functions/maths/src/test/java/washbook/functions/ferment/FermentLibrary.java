package washbook.functions.ferment;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import washbook.functions.ferment.Ferment.Family;

/**
 * Many ferments of known kinds, each as probable as readings leave it: the share still to fall
 * comes from the library, start and end by regression, the end with what was expected of it.
 */
final class FermentLibrary {
  private static final double STEP = 0.04;
  private static final int LENGTH = 900;

  /** A little more than the readings' error, as a library has gaps. */
  private static final double ERROR = 1.3 * GeneratedCourse.NOISE;

  private static final double SHORTEST_DAYS = 0.05;
  private static final double LONGER = 1.03;
  private static final int TRIED = 220;

  private record Shape(Family family, float[] left) {
    double left(double day) {
      int i = (int) (day / STEP);
      return left[i] + (left[i + 1] - left[i]) * (day / STEP - i);
    }

    double dayOf(double share, double from) {
      int i = (int) (from / STEP);
      while (i < LENGTH - 1 && left[i] > share) {
        i++;
      }
      return i * STEP;
    }
  }

  private record Likely(double days, double logOfChance) {}

  private final List<Shape> shapes = new ArrayList<>();

  FermentLibrary(Collection<Family> families, int count, Random random) {
    for (Family family : families) {
      for (int i = 0; i < count / families.size(); i++) {
        Ferment ferment = Ferment.make(family, false, random);
        double start = ferment.truth().applyAsDouble(0);
        float[] left = new float[LENGTH];
        for (int k = 0; k < LENGTH; k++) {
          double fallen = start - ferment.truth().applyAsDouble(k * STEP);
          left[k] = (float) (1 - fallen / (start - ferment.end()));
        }
        shapes.add(new Shape(family, left));
      }
    }
  }

  /**
   * The days that are most likely right.
   *
   * @param without a family that is taken out; null for none
   */
  double likeliestDays(GeneratedCourse course, Family without) {
    List<Likely> days = new ArrayList<>();
    double most = Double.NEGATIVE_INFINITY;
    for (Shape shape : shapes) {
      if (shape.family != without) {
        Likely likely = likely(shape, course);
        days.add(likely);
        most = Math.max(most, likely.logOfChance);
      }
    }
    days.sort(Comparator.comparingDouble(Likely::days));
    double[] below = new double[days.size() + 1];
    for (int i = 0; i < days.size(); i++) {
      below[i + 1] = below[i] + Math.exp(days.get(i).logOfChance - most);
    }
    double best = 0;
    double chance = -1;
    double tried = SHORTEST_DAYS;
    for (int i = 0; i < TRIED; i++) {
      double from = Math.min(tried - 1, tried / 1.3);
      double to = Math.max(tried + 1, tried / 0.7);
      double held = below[countBelow(days, to)] - below[countBelow(days, from)];
      if (held > chance) {
        chance = held;
        best = tried;
      }
      tried *= LONGER;
    }
    return best;
  }

  private static int countBelow(List<Likely> days, double limit) {
    int low = 0;
    int high = days.size();
    while (low < high) {
      int middle = (low + high) / 2;
      if (days.get(middle).days < limit) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private static Likely likely(Shape shape, GeneratedCourse course) {
    double expected = course.expectedFinal();
    double weight = 1 / (ERROR * ERROR);
    double aa = 1;
    double ab = 0;
    double bb = 1 / (GeneratedCourse.END_SCATTER * GeneratedCourse.END_SCATTER);
    double ya = 0;
    double yb = 0;
    double yy = 0;
    for (int i = 0; i < course.times().size(); i++) {
      double left = shape.left(course.times().get(i));
      double y = course.gravities().get(i) - expected;
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
    double share = (Math.max(0, end) + Finish.WITHIN - end) / (start - end);
    double misfit = yy - start * ya - end * yb;
    return new Likely(
        Math.max(0, shape.dayOf(share, course.now()) - course.now()),
        -misfit / 2 - Math.log(determinant) / 2);
  }
}
