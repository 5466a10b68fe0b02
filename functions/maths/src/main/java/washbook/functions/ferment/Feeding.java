package washbook.functions.ferment;

import washbook.functions.Answer.Code;
import washbook.functions.Numbers;
import washbook.functions.RefusedException;
import washbook.functions.liquid.FermentingWash;
import washbook.functions.liquid.SucroseSolution;

/** A wash that was fed in steps, taken as if all had gone in at once; mixed by mass. */
public final class Feeding {
  private Feeding() {}

  /** Highest SG that the ferment functions take as an original gravity. */
  private static final double HIGHEST_ORIGINAL = 1.190;

  /** SG 20/20 of everything together, fed with dry sugar, as an original gravity. */
  public static double original(double[] litres, double[] gravities, double[] kilograms) {
    return original(litres, gravities, kilograms, 1, HIGHEST_ORIGINAL);
  }

  /**
   * SG 20/20 of everything together. Cells may be blank (NaN); a row with litres needs its gravity.
   *
   * @param kilograms sugar, may be empty
   * @param solids share of dry solids in that sugar
   * @param highest SG above which the whole is refused
   */
  public static double original(
      double[] litres, double[] gravities, double[] kilograms, double solids, double highest) {
    if (litres.length != gravities.length) {
      throw RefusedException.contradiction(
          litres.length + " cells of litres stand against " + gravities.length + " of gravities.");
    }
    double mass = 0;
    double extract = 0;
    for (int i = 0; i < litres.length; i++) {
      boolean noLitres = Double.isNaN(litres[i]);
      if (noLitres != Double.isNaN(gravities[i])) {
        throw new RefusedException(
            Code.BLANK, (noLitres ? "litres" : "gravities") + " (cell " + (i + 1) + ") is blank.");
      }
      if (!noLitres) {
        double part = litres[i] * FermentingWash.density20(gravities[i]) / 1000;
        mass += part;
        extract += part * SucroseSolution.brix(gravities[i]) / 100;
      }
    }
    if (mass == 0) {
      throw new RefusedException(Code.BLANK, "litres holds no number.");
    }
    for (double sugar : kilograms) {
      if (!Double.isNaN(sugar)) {
        mass += sugar;
        extract += sugar * solids;
      }
    }
    double percent = 100 * extract / mass;
    double gravity = percent > 90 ? Double.POSITIVE_INFINITY : SucroseSolution.gravity(percent);
    if (gravity > highest) {
      throw new RefusedException(
          Code.TOO_HIGH,
          "all feeds together make "
              + Numbers.round(percent, 1)
              + " % by mass of sugar, more than SG "
              + Numbers.show(highest)
              + ".");
    }
    return gravity;
  }
}
