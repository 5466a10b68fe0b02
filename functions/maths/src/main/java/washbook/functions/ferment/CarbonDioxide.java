package washbook.functions.ferment;

import washbook.functions.Numbers;
import washbook.functions.RefusedException;
import washbook.functions.liquid.EthanolWater;
import washbook.functions.liquid.FermentingWash;
import washbook.functions.liquid.SucroseSolution;

/**
 * Carbon dioxide given off and the alcohol it stands for, by Balling's balance: 2.0665 g of extract
 * give 1 g of ethanol, 0.9565 g of carbon dioxide and 0.11 g of yeast.
 */
public final class CarbonDioxide {
  /** Extract that leaves the liquid for each gram of ethanol: as gas and as yeast. */
  private static final double LEAVES_PER_ETHANOL = FermentingWash.EXTRACT_PER_ETHANOL_FALL * 100;

  private CarbonDioxide() {}

  /** % vol of a wash that has lost {@code grams} of gas since it was {@code litres} at 20 °C. */
  public static double percentVolume(double originalGravity, double grams, double litres) {
    double originalExtract = SucroseSolution.brix(originalGravity);
    double washGrams = litres * FermentingWash.density20(originalGravity);
    double ethanol = grams / FermentingWash.CO2_PER_ETHANOL;
    double left = washGrams - LEAVES_PER_ETHANOL * ethanol;
    double trueExtract =
        (originalExtract * washGrams - 100 * FermentingWash.EXTRACT_PER_ETHANOL * ethanol) / left;
    if (!(left > 0 && trueExtract >= FermentingWash.LOWEST_TRUE_EXTRACT)) {
      throw RefusedException.contradiction(
          "a wash of "
              + Numbers.show(litres)
              + " L and original gravity "
              + Numbers.show(originalGravity)
              + " has not enough sugar to give off "
              + Numbers.show(grams)
              + " g; at most "
              + Numbers.round(most(originalExtract, washGrams), 1)
              + " g.");
    }
    return 100
        * ethanol
        / left
        * FermentingWash.density20(FermentingWash.gravity(originalExtract, trueExtract))
        / EthanolWater.ETHANOL_DENSITY_20;
  }

  private static double most(double originalExtract, double washGrams) {
    return originalExtract
        / 100
        * washGrams
        / FermentingWash.EXTRACT_PER_ETHANOL
        * FermentingWash.CO2_PER_ETHANOL;
  }

  /** Grams of gas given off by a wash that was {@code litres} at 20 °C before the ferment. */
  public static double grams(double originalGravity, double gravity, double litres) {
    Balance balance = Balance.of(originalGravity, gravity);
    double washGrams = litres * FermentingWash.density20(originalGravity);
    double alcohol =
        FermentingWash.alcoholByMass(balance.originalExtract(), balance.trueExtract()) / 100;
    double ethanol = alcohol * washGrams / (1 + LEAVES_PER_ETHANOL * alcohol);
    return ethanol * FermentingWash.CO2_PER_ETHANOL;
  }
}
