package washbook.functions.reading;

import washbook.functions.RefusedException;
import washbook.functions.liquid.RefractiveIndex;
import washbook.functions.liquid.Solve;
import washbook.functions.liquid.SucroseSolution;

/**
 * Sugar readings of a refractometer without a temperature correction of its own. The index at a
 * temperature follows from the density by the rule of Lorentz and Lorenz, {@code (n^2 - 1)/(n^2 +
 * 2) = r density}; how the specific refraction r moves with temperature is fitted to the rows from
 * 5 to 17 °C of OIV-MA-AS2-02 (2012), table I, met within 0.04 °Bx from 10 to 40 °Bx. Above 20 °C
 * the table was not at hand: there the rule is carried on, and checked with water's index alone.
 */
public final class RefractometerTemperature {
  /** Change of the specific refraction per K, and the more of it for sugar of mass fraction 1. */
  private static final double PER_KELVIN = -6.4898978e-5;

  private static final double PER_KELVIN_OF_SUGAR = 1.6761260e-4;

  private static final double LOWEST = -3;
  private static final double HIGHEST = 42;

  private RefractometerTemperature() {}

  /** Refractive index at 589 nm of sucrose in water, 0 to 40 °Bx, 5 to 30 °C. */
  public static double index(double brix, double temperatureC) {
    double warmer = temperatureC - 20;
    double at20 = RefractiveIndex.WATER + RefractiveIndex.ofSucrose(brix);
    double refraction =
        (at20 * at20 - 1)
            / (at20 * at20 + 2)
            * SucroseSolution.density(brix, temperatureC)
            / SucroseSolution.density(brix, 20)
            * (1 + (PER_KELVIN + PER_KELVIN_OF_SUGAR * brix / 100) * warmer);
    return Math.sqrt((1 + 2 * refraction) / (1 - refraction));
  }

  /** °Bx at 20 °C of a liquid that shows {@code reading} at a temperature. */
  public static double brixAt20(double reading, double temperatureC) {
    if (temperatureC == 20) {
      return reading;
    }
    double shown = RefractiveIndex.WATER + RefractiveIndex.ofSucrose(reading);
    double brix = Solve.root(b -> index(b, temperatureC) - shown, reading, LOWEST, HIGHEST);
    if (Double.isNaN(brix)) {
      throw RefusedException.contradiction("brix.none");
    }
    return brix;
  }
}
