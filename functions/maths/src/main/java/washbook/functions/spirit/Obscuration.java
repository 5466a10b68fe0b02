package washbook.functions.spirit;

import washbook.functions.Answer.Code;
import washbook.functions.Numbers;
import washbook.functions.RefusedException;

/** Strength hidden by dissolved solids, which make a spirit heavier: 27 CFR 30.32. */
public final class Obscuration {
  /** 0.4 proof, that is 0.2 % vol, for each 0.1 g in 100 mL. */
  private static final double PERCENT_VOL_PER_GRAM = 2;

  private Obscuration() {}

  /** True % vol from the apparent one and the grams of solids in 100 mL. */
  public static double trueStrength(double apparent, double gramsPer100mL) {
    double strength = apparent + PERCENT_VOL_PER_GRAM * gramsPer100mL;
    if (strength > 100) {
      throw new RefusedException(
          Code.TOO_HIGH,
          "apparent "
              + Numbers.show(apparent)
              + " % vol with "
              + Numbers.show(gramsPer100mL)
              + " g per 100 mL would be above 100 % vol.");
    }
    return strength;
  }
}
