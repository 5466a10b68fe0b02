package washbook.functions.ferment;

import washbook.functions.Numbers;
import washbook.functions.RefusedException;
import washbook.functions.liquid.FermentingWash;
import washbook.functions.liquid.Solve;
import washbook.functions.liquid.SucroseSolution;

/** The balance asked the other way round: which gravity goes with a wanted alcohol. */
public final class Forecast {
  private static final double HIGHEST_ORIGINAL = 1.190;
  private static final double LOWEST_ORIGINAL = 1.001;

  private Forecast() {}

  /** SG 20/20 at which a wash of that original gravity holds {@code percentVolume}. */
  public static double gravityAt(double originalGravity, double percentVolume) {
    double lowest = driest(originalGravity);
    double most = Balance.of(originalGravity, lowest).percentVolume();
    double gravity =
        Solve.root(
            g -> Balance.of(originalGravity, g).percentVolume() - percentVolume,
            originalGravity + (lowest - originalGravity) * Math.min(1, percentVolume / most),
            lowest,
            originalGravity);
    if (Double.isNaN(gravity)) {
      throw RefusedException.contradiction(
          "a wash of original gravity "
              + Numbers.show(originalGravity)
              + " cannot reach "
              + Numbers.show(percentVolume)
              + " % vol; at most "
              + Numbers.round(most, 2)
              + ".");
    }
    return gravity;
  }

  /** Original gravity that gives {@code percentVolume} when fermented down to {@code gravity}. */
  public static double originalFor(double percentVolume, double gravity) {
    double low = Math.max(LOWEST_ORIGINAL, gravity);
    double original =
        Solve.root(
            og -> alcohol(og, gravity) - percentVolume,
            Math.min(HIGHEST_ORIGINAL, Math.max(low, gravity + percentVolume / 131)),
            low,
            HIGHEST_ORIGINAL);
    if (Double.isNaN(original)) {
      throw RefusedException.contradiction(
          "no original gravity from "
              + Numbers.show(low)
              + " to "
              + Numbers.show(HIGHEST_ORIGINAL)
              + " gives "
              + Numbers.show(percentVolume)
              + " % vol at gravity "
              + Numbers.show(gravity)
              + ".");
    }
    Balance.of(original, gravity);
    return original;
  }

  private static double alcohol(double originalGravity, double gravity) {
    double extract = SucroseSolution.brix(originalGravity);
    double left = FermentingWash.trueExtract(extract, gravity);
    return new Balance(extract, 0, left, gravity).percentVolume();
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

  private static double driest(double originalGravity) {
    return finalGravity(originalGravity, 1);
  }
}
