package washbook.functions.spirit;

import washbook.functions.Answer.Code;
import washbook.functions.Numbers;
import washbook.functions.RefusedException;

/**
 * Strength hidden by dissolved solids, which make a spirit heavier: 27 CFR 30.32(a), for spirits of
 * 80 to 100 proof.
 */
public final class Obscuration {
  /** 0.4 proof, that is 0.2 % vol, for each 0.1 g in 100 mL. */
  private static final double PERCENT_VOL_PER_GRAM = 2;

  /** 80 and 100 proof; outside the regulation wants a sample distilled. */
  private static final double LOWEST = 40;

  private static final double HIGHEST = 50;

  private Obscuration() {}

  /** True % vol from the apparent one and the grams of solids in 100 mL. */
  public static double trueStrength(double apparent, double gramsPer100mL) {
    double strength = apparent + PERCENT_VOL_PER_GRAM * gramsPer100mL;
    if (strength < LOWEST || strength > HIGHEST) {
      throw new RefusedException(
          strength < LOWEST ? Code.TOO_LOW : Code.TOO_HIGH,
          "obscuration",
          apparent,
          gramsPer100mL,
          Numbers.rounded(strength, 2));
    }
    return strength;
  }
}
