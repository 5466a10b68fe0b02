package washbook.functions.ferment;

import washbook.functions.Numbers;
import washbook.functions.RefusedException;
import washbook.functions.liquid.EthanolWater;
import washbook.functions.liquid.FermentingWash;
import washbook.functions.liquid.Solve;
import washbook.functions.liquid.SucroseSolution;
import washbook.functions.liquid.WashKind;

/** The balance asked the other way round: which gravity goes with a wanted alcohol. */
public final class Forecast {
  private static final double HIGHEST_ORIGINAL = 1.190;
  private static final double LOWEST_ORIGINAL = 1.001;

  /** An original gravity at a limit stays one. */
  private static final double ROUNDING = 1e-10;

  private Forecast() {}

  /** SG 20/20 at which a wash of that original gravity holds {@code percentVolume}. */
  public static double gravityAt(double originalGravity, double percentVolume, WashKind kind) {
    double extract = SucroseSolution.brix(originalGravity);
    double most = alcohol(extract, FermentingWash.LOWEST_TRUE_EXTRACT, kind);
    double trueExtract =
        Solve.root(
            re -> alcohol(extract, re, kind) - percentVolume,
            extract * (1 - percentVolume / most),
            FermentingWash.LOWEST_TRUE_EXTRACT,
            extract);
    if (Double.isNaN(trueExtract)) {
      throw RefusedException.contradiction(
          "forecast.strength",
          originalGravity,
          percentVolume,
          Numbers.rounded(alcohol(extract, 0, kind), 2));
    }
    return FermentingWash.gravity(extract, trueExtract, kind);
  }

  private static double alcohol(double originalExtract, double trueExtract, WashKind kind) {
    return FermentingWash.percentVolume(
        originalExtract,
        trueExtract,
        FermentingWash.gravity(originalExtract, trueExtract, kind),
        kind);
  }

  /**
   * Original gravity that gives {@code percentVolume} when fermented down to {@code gravity}:
   * alcohol and gravity settle the true extract, and the balance gives the original one; for malt
   * {@code OE = (2.0665 A + RE) / (1 + 0.010665 A)}.
   */
  public static double originalFor(double percentVolume, double gravity, WashKind kind) {
    double alcohol =
        percentVolume * EthanolWater.ETHANOL_DENSITY_20 / FermentingWash.density20(gravity);
    double trueExtract = SucroseSolution.brix(gravity - EthanolWater.gravity(alcohol / 100) + 1);
    double extract = kind.originalExtract(alcohol, trueExtract);
    double original = SucroseSolution.gravity(extract);
    if (!(trueExtract >= FermentingWash.LOWEST_TRUE_EXTRACT
        && original >= LOWEST_ORIGINAL - ROUNDING
        && original <= HIGHEST_ORIGINAL + ROUNDING)) {
      throw RefusedException.contradiction(
          "forecast.original", LOWEST_ORIGINAL, HIGHEST_ORIGINAL, percentVolume, gravity);
    }
    return Math.max(LOWEST_ORIGINAL, Math.min(HIGHEST_ORIGINAL, original));
  }
}
