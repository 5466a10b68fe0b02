package washbook.functions.ferment;

import washbook.functions.Numbers;
import washbook.functions.RefusedException;
import washbook.functions.liquid.EthanolWater;
import washbook.functions.liquid.FermentingWash;
import washbook.functions.liquid.SucroseSolution;
import washbook.functions.liquid.WashKind;

/**
 * Carbon dioxide given off and the alcohol it stands for, by the balance of the {@link WashKind};
 * for malt Balling's: 2.0665 g of extract give 1 g of ethanol, 0.9565 g of carbon dioxide and 0.11
 * g of yeast.
 */
public final class CarbonDioxide {
  private CarbonDioxide() {}

  /** % vol of a wash that has made {@code grams} of gas since it was {@code litres} at 20 °C. */
  public static double percentVolume(
      double originalGravity, double grams, double litres, WashKind kind) {
    double originalExtract = SucroseSolution.brix(originalGravity);
    double washGrams = litres * FermentingWash.density20(originalGravity);
    double ethanol = grams / kind.co2PerExtract();
    double left = washGrams - kind.fall() * 100 * ethanol;
    double trueExtract =
        left > 0 ? trueExtract(originalExtract, washGrams, ethanol, left, kind) : Double.NaN;
    if (!(trueExtract >= FermentingWash.LOWEST_TRUE_EXTRACT)) {
      throw RefusedException.contradiction(
          "gas.tooMuch",
          litres,
          originalGravity,
          grams,
          Numbers.rounded(most(originalExtract, washGrams, kind), 1));
    }
    return 100
        * ethanol
        / left
        * FermentingWash.density20(FermentingWash.gravity(originalExtract, trueExtract, kind))
        / EthanolWater.ETHANOL_DENSITY_20;
  }

  private static double trueExtract(
      double originalExtract, double washGrams, double ethanol, double left, WashKind kind) {
    return kind.inverted() == 0
        ? (originalExtract * washGrams - 100 * kind.extractPerEthanol() * ethanol) / left
        : kind.trueExtract(originalExtract, 100 * ethanol / left);
  }

  private static double most(double originalExtract, double washGrams, WashKind kind) {
    return kind.countedExtract(originalExtract, 0)
        / 100
        * washGrams
        / kind.extractPerEthanol()
        * kind.co2PerExtract();
  }

  /** Grams of gas given off by a wash that was {@code litres} at 20 °C before the ferment. */
  public static double grams(double originalGravity, double gravity, double litres, WashKind kind) {
    Balance balance = Balance.of(originalGravity, gravity, kind);
    double washGrams = litres * FermentingWash.density20(originalGravity);
    double alcohol = kind.alcoholByMass(balance.originalExtract(), balance.trueExtract()) / 100;
    double ethanol = alcohol * washGrams / (1 + kind.fall() * 100 * alcohol);
    return ethanol * kind.co2PerExtract();
  }
}
