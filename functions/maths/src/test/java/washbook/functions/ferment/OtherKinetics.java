package washbook.functions.ferment;

import java.util.function.DoubleUnaryOperator;
import java.util.random.RandomGenerator;
import washbook.functions.ferment.Ferment.Family;

/**
 * Ferments by rate laws that neither the fit nor {@link Growth} uses, made to be held against the
 * finished fit: a full crop of yeast that wakes and starves (Michaelis and Menten, Biochem. Z. 49
 * (1913) 333, from memory), two sugars of which the first hinders the second, and a wash that its
 * own heat warms. Constants are invented.
 */
final class OtherKinetics {
  private static final double STEP = 0.01;
  private static final int LENGTH = 6000;

  private OtherKinetics() {}

  /** The share still to fall on each day. */
  static DoubleUnaryOperator left(Family family, RandomGenerator random) {
    double wakes = Ferment.in(random, 0.3, 1.5);
    double rate = Ferment.in(random, 0.25, 0.8);
    double half = Ferment.in(random, 0.03, 0.5);
    double first = family == Family.TWO_SUGARS ? Ferment.in(random, 0.35, 0.65) : 1;
    double slower = Ferment.in(random, 0.3, 0.7);
    double hindrance = Ferment.in(random, 0.05, 0.5);
    double warming = family == Family.SELF_HEATED ? Ferment.in(random, 8, 20) : 0;
    double cooling = Ferment.in(random, 0.5, 2);
    double[] left = new double[LENGTH];
    double easy = first;
    double hard = 1 - first;
    double kelvin = 0;
    for (int i = 0; i < LENGTH; i++) {
      left[i] = easy + hard;
      double awake = 1 - Math.exp(-Math.pow(i * STEP / wakes, 2));
      double pace = rate * awake * Math.pow(2, kelvin / 10) * (1 + half) * STEP;
      double easyGone = Math.min(easy, pace * easy / (easy + half));
      double hardGone = pace * slower * hard / (hard + half * (1 + easy / hindrance));
      easy -= easyGone;
      hard -= Math.min(hard, hardGone);
      kelvin += warming * easyGone - cooling * kelvin * STEP;
    }
    return day -> {
      double at = Math.min(LENGTH - 1.001, Math.max(0, day) / STEP);
      int i = (int) at;
      return left[i] + (left[i + 1] - left[i]) * (at - i);
    };
  }
}
