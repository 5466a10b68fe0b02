package washbook.functions.ferment;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import washbook.functions.ferment.Ferment.Family;

/**
 * Readings of a ferment whose true course is known: at irregular times, each wrong by 0.001 SG
 * (standard deviation), until a week after it has come to rest.
 *
 * @param expectedFinal SG at which the person expects it to end
 */
record GeneratedCourse(
    Family family,
    Ferment ferment,
    double expectedFinal,
    List<Double> times,
    List<Double> gravities) {

  /** How often people read: days from one reading to the next. */
  enum Gaps {
    /** Half a day or a day, more or less, and now and then one is left out. */
    DAILY,
    /** Anything from half a day to two days. */
    HALF_TO_TWO_DAYS;

    private double next(double usual, RandomGenerator random) {
      return this == DAILY
          ? usual * Ferment.in(random, 0.6, 1.4) * (random.nextInt(10) == 0 ? 2 : 1)
          : Ferment.in(random, 0.5, 2);
    }
  }

  static final double NOISE = 0.001;

  /**
   * Standard deviation of the true end round the expected one, SG: more than twice what
   * FINALGRAVITYPLUSMINUS says of sugar.
   */
  static final double END_SCATTER = 0.003;

  private static final int READ_ON_DAYS = 8;

  static GeneratedCourse read(Family family, Ferment ferment, Gaps gaps, RandomGenerator random) {
    double usual = random.nextBoolean() ? 0.5 : 1.0;
    List<Double> times = new ArrayList<>();
    List<Double> gravities = new ArrayList<>();
    double until = ferment.length() + READ_ON_DAYS;
    for (double day = 0; day < until; day += gaps.next(usual, random)) {
      times.add(day);
      gravities.add(ferment.truth().applyAsDouble(day) + NOISE * random.nextGaussian());
    }
    double expected = ferment.planned() + END_SCATTER * random.nextGaussian();
    return new GeneratedCourse(family, ferment, expected, times, gravities);
  }

  /** What is known after this many readings. */
  GeneratedCourse upTo(int readings) {
    return new GeneratedCourse(
        family, ferment, expectedFinal, times.subList(0, readings), gravities.subList(0, readings));
  }

  double now() {
    return times.get(times.size() - 1);
  }

  /** Whether a state can be told at all from as many readings. */
  boolean readEnough() {
    return times.size() >= Progress.FEWEST_READINGS && now() >= Progress.SHORTEST_SPAN_DAYS;
  }

  double daysLeft() {
    return ferment.daysLeft(now(), expectedFinal);
  }
}
