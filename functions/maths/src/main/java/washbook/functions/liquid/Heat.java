package washbook.functions.liquid;

/**
 * Heats of ethanol-water at ordinary pressure. Pure liquids: Perry's Chemical Engineers' Handbook,
 * 8th ed., tables 2-153 (specific heat) and 2-150 (vaporization). Mixtures hold more heat than
 * their parts: the excess is fitted to Melinder (2010), 11 to 60 % by mass at 10 to 20 °C, and to
 * Perry's table 2-205, 3 to 41 °C, met within 0.8 % and 3 %; above 41 °C it is taken to be the
 * same.
 */
public final class Heat {
  private static final double ZERO_C = 273.15;

  /** J/(kmol K) in powers of the temperature in K. */
  private static final double[] WATER = {276370, -2090.1, 8.125, -0.014116, 9.3701e-6};

  private static final double[] ETHANOL = {102640, -139.63, -0.030341, 0.0020386};

  /** J/(kg K): times w (1 - w), in powers of 1 - 2 w. */
  private static final double[] EXCESS = {1829.677, 1581.939, 1160.898, -415.3707};

  private Heat() {}

  /** Specific heat in J/(kg K); p is the mass fraction of ethanol, 0 to 100 °C. */
  public static double specific(double p, double temperatureC) {
    double kelvin = temperatureC + ZERO_C;
    double water = Polynomial.value(WATER, kelvin) / VapourLiquid.WATER_MOLAR_MASS;
    double ethanol = Polynomial.value(ETHANOL, kelvin) / VapourLiquid.ETHANOL_MOLAR_MASS;
    return (1 - p) * water + p * ethanol + p * (1 - p) * Polynomial.value(EXCESS, 1 - 2 * p);
  }

  /** J/kg to warm a mixture, by Simpson's rule over a curve that hardly bends. */
  public static double toWarm(double p, double fromC, double toC) {
    double middle = (fromC + toC) / 2;
    return (toC - fromC) / 6 * (specific(p, fromC) + 4 * specific(p, middle) + specific(p, toC));
  }

  /** J/kg set free when vapour of that mass fraction condenses; heats of mixing are left out. */
  public static double ofCondensing(double p, double temperatureC) {
    double kelvin = temperatureC + ZERO_C;
    double ethanol = kelvin / 514;
    double water = kelvin / 647.096;
    double ofEthanol = 55789e3 * Math.pow(1 - ethanol, 0.31245) / VapourLiquid.ETHANOL_MOLAR_MASS;
    double power = 0.3199 - 0.212 * water + 0.25795 * water * water;
    double ofWater = 52053e3 * Math.pow(1 - water, power) / VapourLiquid.WATER_MOLAR_MASS;
    return p * ofEthanol + (1 - p) * ofWater;
  }
}
