package washbook.functions.scale;

import washbook.functions.Answer.Code;
import washbook.functions.RefusedException;
import washbook.functions.liquid.Polynomial;

/**
 * Sugar of grape must by its density: OIV-MA-AS2-02 table II, as reprinted in the French order of
 * 14 September 2011, annex IV. The table counts the reducing sugar, not the must's other extract of
 * about 25 g/L. Least squares through its 41 rows, which it meets within 0.13 g/L (0.013 % vol).
 */
public final class MustSugar {
  /** The table's ends, 10 and 30 °Bx. */
  public static final double LOWEST_GRAVITY = 1.0409;

  public static final double HIGHEST_GRAVITY = 1.1308;

  /** Reducing sugar in g/L by powers of (SG - 1). */
  private static final double[] GRAMS_PER_LITRE = {-27.721, 2757.278, -1948.837, 4212.713};

  /** The table's own divisor, g of sugar per litre for each % vol. */
  private static final double GRAMS_PER_PERCENT = 16.83;

  private MustSugar() {}

  /** % vol that a must of this SG 20/20 promises; refuses what the table does not hold. */
  public static double potential(double gravity) {
    if (!(gravity >= LOWEST_GRAVITY && gravity <= HIGHEST_GRAVITY)) {
      throw new RefusedException(
          gravity < LOWEST_GRAVITY ? Code.TOO_LOW : Code.TOO_HIGH,
          "must.table",
          gravity,
          LOWEST_GRAVITY,
          HIGHEST_GRAVITY);
    }
    return Polynomial.value(GRAMS_PER_LITRE, gravity - 1) / GRAMS_PER_PERCENT;
  }
}
