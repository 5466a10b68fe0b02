package washbook.functions.ferment;

import washbook.functions.Numbers;
import washbook.functions.RefusedException;
import washbook.functions.liquid.EthanolWater;
import washbook.functions.liquid.FermentingWash;
import washbook.functions.liquid.Solve;
import washbook.functions.liquid.SucroseSolution;

/** The balance asked the other way round: which gravity goes with a wanted alcohol. */
public final class Forecast {
  private static final double HIGHEST_ORIGINAL = 1.190;
  private static final double LOWEST_ORIGINAL = 1.001;

  /** An original gravity at a limit stays one. */
  private static final double ROUNDING = 1e-10;

  private Forecast() {}

  /** SG 20/20 at which a wash of that original gravity holds {@code percentVolume}. */
  public static double gravityAt(double originalGravity, double percentVolume) {
    double extract = SucroseSolution.brix(originalGravity);
    double most = alcohol(extract, FermentingWash.LOWEST_TRUE_EXTRACT);
    double trueExtract =
        Solve.root(
            re -> alcohol(extract, re) - percentVolume,
            extract * (1 - percentVolume / most),
            FermentingWash.LOWEST_TRUE_EXTRACT,
            extract);
    if (Double.isNaN(trueExtract)) {
      throw RefusedException.contradiction(
          "a wash of original gravity "
              + Numbers.show(originalGravity)
              + " cannot reach "
              + Numbers.show(percentVolume)
              + " % vol; at most "
              + Numbers.round(alcohol(extract, 0), 2)
              + ".");
    }
    return FermentingWash.gravity(extract, trueExtract);
  }

  private static double alcohol(double originalExtract, double trueExtract) {
    return FermentingWash.alcoholByMass(originalExtract, trueExtract)
        * FermentingWash.density20(FermentingWash.gravity(originalExtract, trueExtract))
        / EthanolWater.ETHANOL_DENSITY_20;
  }

  /**
   * Original gravity that gives {@code percentVolume} when fermented down to {@code gravity}:
   * alcohol and gravity settle the true extract, and Balling's balance gives the original one,
   * {@code OE = (2.0665 A + RE) / (1 + 0.010665 A)}.
   */
  public static double originalFor(double percentVolume, double gravity) {
    double alcohol =
        percentVolume * EthanolWater.ETHANOL_DENSITY_20 / FermentingWash.density20(gravity);
    double trueExtract = SucroseSolution.brix(gravity - EthanolWater.gravity(alcohol / 100) + 1);
    double extract =
        (FermentingWash.EXTRACT_PER_ETHANOL * alcohol + trueExtract)
            / (1 + FermentingWash.EXTRACT_PER_ETHANOL_FALL * alcohol);
    double original = SucroseSolution.gravity(extract);
    if (!(trueExtract >= FermentingWash.LOWEST_TRUE_EXTRACT
        && original >= LOWEST_ORIGINAL - ROUNDING
        && original <= HIGHEST_ORIGINAL + ROUNDING)) {
      throw RefusedException.contradiction(
          "no original gravity from "
              + Numbers.show(LOWEST_ORIGINAL)
              + " to "
              + Numbers.show(HIGHEST_ORIGINAL)
              + " gives "
              + Numbers.show(percentVolume)
              + " % vol at gravity "
              + Numbers.show(gravity)
              + ".");
    }
    return Math.max(LOWEST_ORIGINAL, Math.min(HIGHEST_ORIGINAL, original));
  }

  /** SG 20/20 when the share {@code fermentable} of the extract has fermented. */
  public static double finalGravity(double originalGravity, double fermentable) {
    double extract = SucroseSolution.brix(originalGravity);
    return FermentingWash.gravity(extract, left(extract, fermentable));
  }

  /**
   * True extract in % of the wash as it is then, lighter by gas and yeast: {@code RE = OE (1 - s) /
   * (1 - 0.010665 OE s / 2.0665)}, Balling's balance solved for a share s.
   */
  private static double left(double originalExtract, double fermentable) {
    double gone =
        FermentingWash.EXTRACT_PER_ETHANOL_FALL
            * originalExtract
            * fermentable
            / FermentingWash.EXTRACT_PER_ETHANOL;
    return originalExtract * (1 - fermentable) / (1 - gone);
  }
}
