package washbook.functions.ferment;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.random.RandomGenerator;
import washbook.functions.ferment.Ferment.Family;

/**
 * Someone who knows how a course was made and how far readings err, but not its constants: ferments
 * of that family drawn as probable as the readings leave them, by differential evolution Markov
 * chains (ter Braak, Stat. Comput. 16 (2006) 239), begun at the truth. Nobody can do better.
 */
final class Oracle {
  private static final int WALKERS = 24;
  private static final int GENERATIONS = 300;
  private static final int SETTLED = 120;
  private static final int EVERY = 6;

  /** Numbers in 0 to 1 that are handed out in order, so that a ferment is made of them again. */
  static final class Constants implements RandomGenerator {
    private final double[] numbers;
    private int used;

    Constants(double[] numbers) {
      this.numbers = numbers;
    }

    @Override
    public double nextDouble() {
      return numbers[used++];
    }

    @Override
    public long nextLong() {
      throw new IllegalStateException("only constants are handed out");
    }
  }

  static final int MOST_CONSTANTS = 16;

  private final Family family;
  private final boolean mayStop;
  private final GeneratedCourse course;
  private final Random random;

  private Oracle(Family family, boolean mayStop, GeneratedCourse course, Random random) {
    this.family = family;
    this.mayStop = mayStop;
    this.course = course;
    this.random = random;
  }

  /** Whether a ferment of these constants is stopped on its way: one in four. */
  static boolean stops(double[] constants) {
    return constants[MOST_CONSTANTS - 1] < 0.25;
  }

  static Ferment ferment(Family family, boolean mayStop, double[] constants) {
    return Ferment.make(family, mayStop && stops(constants), new Constants(constants));
  }

  /**
   * Ferments that may have given these readings.
   *
   * @param mayStop whether one in four of that kind is stopped
   */
  static List<Ferment> possible(
      GeneratedCourse course, double[] truth, boolean mayStop, Random random) {
    return new Oracle(course.family(), mayStop, course, random).draw(truth);
  }

  private List<Ferment> draw(double[] truth) {
    double[][] walkers = new double[WALKERS][];
    double[] chances = new double[WALKERS];
    for (int i = 0; i < WALKERS; i++) {
      do {
        walkers[i] = moved(truth, truth, truth, 0, 0.003);
      } while (walkers[i] == null);
      chances[i] = chance(walkers[i]);
    }
    List<Ferment> drawn = new ArrayList<>();
    for (int step = 0; step < GENERATIONS; step++) {
      for (int i = 0; i < WALKERS; i++) {
        double[] a = walkers[random.nextInt(WALKERS)];
        double[] b = walkers[random.nextInt(WALKERS)];
        double far = step % 10 == 0 ? 1 : 0.6 * random.nextDouble() + 0.2;
        double[] tried = moved(walkers[i], a, b, far, 1e-4);
        if (tried == null) {
          continue;
        }
        double chance = chance(tried);
        if (Math.log(random.nextDouble()) < chance - chances[i]) {
          walkers[i] = tried;
          chances[i] = chance;
        }
      }
      if (step >= SETTLED && step % EVERY == 0) {
        for (double[] walker : walkers) {
          drawn.add(ferment(family, mayStop, walker));
        }
      }
    }
    return drawn;
  }

  /** Null when that leads out of 0 to 1. */
  private double[] moved(double[] from, double[] a, double[] b, double far, double jitter) {
    double[] to = new double[MOST_CONSTANTS];
    for (int k = 0; k < MOST_CONSTANTS; k++) {
      to[k] = from[k] + far * (a[k] - b[k]) + jitter * random.nextGaussian();
      if (to[k] < 0 || to[k] >= 1) {
        return null;
      }
    }
    if (mayStop && random.nextInt(3) == 0) {
      to[MOST_CONSTANTS - 1] = random.nextDouble();
      to[2] = random.nextBoolean() ? to[2] : random.nextDouble();
    }
    return to;
  }

  /** Natural log, but for a constant. */
  private double chance(double[] constants) {
    Ferment ferment = ferment(family, mayStop, constants);
    double sum = square((ferment.planned() - course.expectedFinal()) / GeneratedCourse.END_SCATTER);
    for (int i = 0; i < course.times().size(); i++) {
      double gravity = ferment.truth().applyAsDouble(course.times().get(i));
      sum += square((gravity - course.gravities().get(i)) / GeneratedCourse.NOISE);
    }
    return -sum / 2;
  }

  private static double square(double x) {
    return x * x;
  }
}
