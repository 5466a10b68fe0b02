package washbook.samples.generator;

import java.util.List;
import java.util.Random;

/** Seeded choices; the same seed and number always give the same log. */
final class Choice {
  private static final long SPREAD = 0x9E3779B97F4A7C15L;

  private final Random random;

  /**
   * @param purpose a stream of its own, so that other words do not change the figures
   */
  Choice(long seed, int number, int purpose) {
    long mixed = seed * SPREAD + number * 0xBF58476D1CE4E5B9L + purpose * 0x94D049BB133111EBL;
    mixed ^= mixed >>> 31;
    random = new Random(mixed * SPREAD);
  }

  boolean chance(double probability) {
    return random.nextDouble() < probability;
  }

  /** From the first to the last, both included. */
  int whole(int first, int last) {
    return first + random.nextInt(last - first + 1);
  }

  double between(double lowest, double highest) {
    return lowest + (highest - lowest) * random.nextDouble();
  }

  /** A value between, on whole steps. */
  double stepped(double lowest, double highest, double step) {
    return onStep(between(lowest, highest), step);
  }

  static double onStep(double value, double step) {
    return Math.rint(Math.rint(value / step) * step * 1e6) / 1e6;
  }

  <T> T of(List<T> values) {
    return values.get(random.nextInt(values.size()));
  }

  @SafeVarargs
  final <T> T among(T... values) {
    return values[random.nextInt(values.length)];
  }
}
