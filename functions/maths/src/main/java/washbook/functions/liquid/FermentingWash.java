package washbook.functions.liquid;

/**
 * A wash in ferment: water, sugar and the alcohol made from it, all by one balance.
 *
 * <p>Balling's balance: {@code A = (OE - RE) / (2.0665 - 0.010665 OE)}, all in % by mass: 2.0665 g
 * of extract give 1 g of ethanol, 0.9565 g of carbon dioxide and 0.11 g of yeast. Tabarie's rule:
 * the gravities of the alcoholic and the sugary part add up, {@code SG = SG_E(A) + SG_S(RE) - 1}.
 *
 * <p>Limits: a sugar wash poor in nutrients yields up to some percent more alcohol than Balling's
 * beer worts; the additivity is good to about 0.0005 SG. Each part's gravity is over its own
 * model's water, so a wash without alcohol is the sugar solution at every temperature.
 */
public final class FermentingWash {
  /** Extract fermented for one gram of ethanol when the original extract is small, g. */
  public static final double EXTRACT_PER_ETHANOL = 2.0665;

  /** How the factor falls with each % of original extract. */
  public static final double EXTRACT_PER_ETHANOL_FALL = 0.010665;

  /** Carbon dioxide given off for {@link #EXTRACT_PER_ETHANOL} grams of extract, g. */
  public static final double CO2_PER_ETHANOL = 0.9565;

  /** Lowest true extract that a reading error explains, % by mass. */
  public static final double LOWEST_TRUE_EXTRACT = -0.5;

  private static final double WATER_20 = Water.density(20);
  private static final double ETHANOL_WATER_20 = EthanolWater.density(0, 20);

  private FermentingWash() {}

  /**
   * Ethanol in % by mass when {@code originalExtract} has fermented down to {@code trueExtract}.
   */
  public static double alcoholByMass(double originalExtract, double trueExtract) {
    return (originalExtract - trueExtract) / extractPerEthanol(originalExtract);
  }

  private static double extractPerEthanol(double originalExtract) {
    return EXTRACT_PER_ETHANOL - EXTRACT_PER_ETHANOL_FALL * originalExtract;
  }

  /** Specific gravity 20/20 of the wash. */
  public static double gravity(double originalExtract, double trueExtract) {
    double alcohol = alcoholByMass(originalExtract, trueExtract) / 100;
    return EthanolWater.density(alcohol, 20) / ETHANOL_WATER_20
        + SucroseSolution.gravity(trueExtract)
        - 1;
  }

  /** True extract, % by mass, of a wash of known original extract at a gravity 20/20. */
  public static double trueExtract(double originalExtract, double gravity) {
    double perEthanol = extractPerEthanol(originalExtract);
    double start = 0.1808 * originalExtract + 0.8192 * SucroseSolution.brix(gravity);
    return Solve.root(
        re -> gravity(originalExtract, re) - gravity,
        re -> gravitySlope(originalExtract, re, perEthanol),
        start,
        originalExtract - 100 * perEthanol,
        originalExtract + 1);
  }

  private static double gravitySlope(
      double originalExtract, double trueExtract, double perEthanol) {
    double alcohol = (originalExtract - trueExtract) / perEthanol / 100;
    return SucroseSolution.gravitySlope(trueExtract)
        - EthanolWater.densitySlope20(alcohol) / ETHANOL_WATER_20 / perEthanol / 100;
  }

  /** Density in kg/m3 of the wash at a temperature: Tabarie's rule over water that warm. */
  public static double density(double originalExtract, double trueExtract, double temperatureC) {
    double[] ethanol = EthanolWater.atTemperature(temperatureC);
    double alcohol = alcoholByMass(originalExtract, trueExtract) / 100;
    return SucroseSolution.density(trueExtract, temperatureC)
        + (Polynomial.value(ethanol, alcohol) - ethanol[0])
            * Water.density(temperatureC)
            / ethanol[0];
  }

  /** True extract, % by mass, of a wash that has {@code density} kg/m3 at {@code temperatureC}. */
  public static double trueExtractOfDensity(
      double originalExtract, double density, double temperatureC) {
    double perEthanol = extractPerEthanol(originalExtract);
    double[] ethanol = EthanolWater.atTemperature(temperatureC);
    double[] sucrose = SucroseSolution.atTemperature(temperatureC);
    double water = sucrose[0];
    double waters = water / ethanol[0];
    double apparent = density / water;
    double start = 0.1808 * originalExtract + 0.8192 * SucroseSolution.brix(apparent);
    return Solve.root(
        re ->
            Polynomial.value(ethanol, (originalExtract - re) / perEthanol / 100) * waters
                + Polynomial.value(sucrose, re / 100)
                - water
                - density,
        re ->
            (Polynomial.slope(sucrose, re / 100)
                    - Polynomial.slope(ethanol, (originalExtract - re) / perEthanol / 100)
                        * waters
                        / perEthanol)
                / 100,
        start,
        originalExtract - 100 * perEthanol,
        originalExtract + 1);
  }

  /** Density in kg/m3 at 20 °C of a liquid of the given gravity 20/20. */
  public static double density20(double gravity) {
    return gravity * WATER_20;
  }
}
