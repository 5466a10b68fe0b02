package washbook.functions.ferment;

import washbook.functions.liquid.EthanolWater;
import washbook.functions.liquid.VapourLiquid;
import washbook.functions.liquid.VapourLiquid.Vapour;
import washbook.functions.liquid.WashKind;
import washbook.functions.liquid.Water;

/**
 * What a scale does not see of a ferment's gas and what else goes off with it. The wash is taken to
 * be saturated with carbon dioxide at 1013.25 hPa, the gas with the vapours of the wash: an airlock
 * in the cold gives some of them back.
 */
public final class WeighedGas {
  /**
   * Carbon dioxide in water under 100 kPa of it, 1000 x mole fraction from 0 °C in steps of 5: CRC
   * Handbook of Chemistry and Physics after Carroll, Slupsky and Mather (1991).
   */
  private static final double[] MOLE_FRACTION = {
    1.337, 1.123, 0.950, 0.814, 0.704, 0.614, 0.541, 0.481, 0.431, 0.389
  };

  private static final double STEP_C = 5;
  private static final double CO2_MOLAR_MASS = 44.0095;
  private static final double WATER_MOLAR_MASS = 18.0153;
  private static final double ETHANOL_MOLAR_MASS = 46.0684;

  /** The steps that follow change the answer by less than rounding. */
  private static final int STEPS = 12;

  private WeighedGas() {}

  /** % vol of a wash that has lost that mass and kept its temperature. */
  public static double percentVolume(
      double originalGravity, double grams, double litres, double temperatureC, WashKind kind) {
    double made = grams;
    double carriedOff = 0;
    double percentVolume = 0;
    for (int step = 0; step < STEPS; step++) {
      percentVolume = CarbonDioxide.percentVolume(originalGravity, made, litres, kind);
      Vapour vapour = vapour(percentVolume / 2, temperatureC);
      double gas = VapourLiquid.ATMOSPHERE_HPA - vapour.ethanolHPa() - vapour.waterHPa();
      double ethanol = vapour.ethanolHPa() / gas * ETHANOL_MOLAR_MASS / CO2_MOLAR_MASS;
      double water = vapour.waterHPa() / gas * WATER_MOLAR_MASS / CO2_MOLAR_MASS;
      double gone = grams / (1 + ethanol + water);
      made = gone + litres * dissolved(percentVolume, temperatureC, gas);
      carriedOff = gone * ethanol;
    }
    double lost = carriedOff / litres * 100 / EthanolWater.ETHANOL_DENSITY_20;
    return Math.max(0, percentVolume - lost);
  }

  /** Vapours over a wash of that strength; its sugar is left out. */
  static Vapour vapour(double percentVolume, double temperatureC) {
    double p = EthanolWater.massFraction(percentVolume);
    return VapourLiquid.vapour(VapourLiquid.moleFraction(p), temperatureC);
  }

  /**
   * Grams of carbon dioxide in a litre under that pressure of it. What alcohol changes: Commission
   * Regulation (EEC) No 2676/90, annex (overpressure), (0.86 - 0.01 A) / 0.86, there for 20 °C.
   */
  static double dissolved(double percentVolume, double temperatureC, double pressureHPa) {
    int row = (int) Math.min(temperatureC / STEP_C, MOLE_FRACTION.length - 2);
    double share = temperatureC / STEP_C - row;
    double x =
        Math.pow(MOLE_FRACTION[row], 1 - share) * Math.pow(MOLE_FRACTION[row + 1], share) / 1000;
    double inWater = x / (1 - x) * CO2_MOLAR_MASS / WATER_MOLAR_MASS * Water.density(temperatureC);
    return inWater * pressureHPa / 1000 * (0.86 - 0.01 * percentVolume) / 0.86;
  }
}
