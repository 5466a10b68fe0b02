package washbook.functions.ferment;

import java.util.function.DoubleUnaryOperator;
import java.util.random.RandomGenerator;
import washbook.functions.ferment.Ferment.Family;

/**
 * Ferments by equations of yeast, nitrogen, sugar and warmth instead of a curve: yeast grows by
 * Monod's law (Annu. Rev. Microbiol. 3 (1949) 371) on nitrogen, ferments sugar at a saturating
 * rate, slows as alcohol rises (Levenspiel, Biotechnol. Bioeng. 22 (1980) 1671) and with the
 * temperature (a factor of two for 10 K). One ending of the fitted shapes, slowed by alcohol until
 * the sugar gives out, rests on the same two laws, so that these courses are not wholly foreign to
 * the fit. Constants are invented, within what such models use.
 */
final class Growth {
  private static final double STEP = 0.01;
  private static final int LENGTH = 20_000;
  private static final double SNAP_DAYS = 2;
  private static final double NOTHING_LEFT = 1e-6;

  private Growth() {}

  static DoubleUnaryOperator course(
      Family family, double original, double end, RandomGenerator random) {
    double sugar = (original - end) * 2600;
    double most = Math.max(80, 0.47 * sugar * Ferment.in(random, 1.3, 2));
    double yeast = Ferment.in(random, 0.1, 0.6);
    double growth = Ferment.in(random, 1.5, 3.5);
    double most0 = family == Family.POOR_IN_NITROGEN ? 2.2 : 5;
    double nitrogen = Ferment.in(random, 0.5, 1) * most0;
    double rate = Ferment.in(random, 12, 25);
    double half = Ferment.in(random, 5, 20);
    double swing = family == Family.COLD_NIGHTS ? Ferment.in(random, 2, 4) : 0;
    double cooling = family == Family.COLD_NIGHTS ? Ferment.in(random, 0, 0.3) : 0;
    double adapting = Ferment.in(random, 0.1, 0.4);
    boolean snap = family == Family.COLD_SNAP;
    double colder = snap ? Ferment.in(random, 3, 6) : 0;
    double snapDay = snap ? Ferment.in(random, 1.5, 4) : 0;
    double[] left = new double[LENGTH];
    double now = sugar;
    double food = nitrogen;
    for (int i = 0; i < LENGTH && now > NOTHING_LEFT * sugar; i++) {
      left[i] = now;
      double day = i * STEP;
      double kelvin = swing * Math.sin(2 * Math.PI * day) - cooling * day;
      kelvin -= day >= snapDay && day < snapDay + SNAP_DAYS ? colder : 0;
      double warmth = Math.pow(2, kelvin / 10);
      double alcohol = Math.pow(Math.max(0, 1 - 0.47 * (sugar - now) / most), 0.7);
      double awake = 1 - Math.exp(-day / adapting);
      double active = warmth * alcohol * awake * STEP;
      double grown = growth * food / (food + 0.5) * yeast * active;
      grown = Math.min(grown, food);
      food -= grown;
      now -= rate * now / (now + half) * yeast * active;
      now = Math.max(now, 0);
      yeast += grown;
    }
    return day -> {
      double at = Math.max(0, day) / STEP;
      int i = Math.min(LENGTH - 2, (int) at);
      double share = Math.min(1, at - i);
      double sugarLeft = left[i] + (left[i + 1] - left[i]) * share;
      return end + (original - end) * sugarLeft / sugar;
    };
  }
}
