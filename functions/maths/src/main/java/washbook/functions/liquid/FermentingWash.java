package washbook.functions.liquid;

/**
 * A wash in ferment: water, sugar and the alcohol made from it, all by one balance.
 *
 * <p>The balance is that of the {@link WashKind}: Balling's for malt, {@code A = (OE - RE) /
 * (2.0665 - 0.010665 OE)}, all in % by mass, and the same form with other constants for what else
 * ferments. Tabarie's rule: the gravities of the alcoholic and the sugary part add up, {@code SG =
 * SG_E(A) + SG_S(RE) - 1} (OIV-MA-AS2-03B has it for wine).
 *
 * <p>Limits: the additivity is good to about 0.0005 SG. Each part's gravity is over its own model's
 * water, so a wash without alcohol is the sugar solution at every temperature.
 */
public final class FermentingWash {
  /** Lowest true extract that a reading error explains, % by mass. */
  public static final double LOWEST_TRUE_EXTRACT = -0.5;

  private static final double WATER_20 = Water.density(20);
  private static final double ETHANOL_WATER_20 = EthanolWater.density(0, 20);

  private FermentingWash() {}

  /** Ethanol in % by mass when malt of that extract has fermented down to a true extract. */
  public static double alcoholByMass(double originalExtract, double trueExtract) {
    return WashKind.MALT.alcoholByMass(originalExtract, trueExtract);
  }

  /** Specific gravity 20/20 of a malt wash. */
  public static double gravity(double originalExtract, double trueExtract) {
    return gravity(originalExtract, trueExtract, WashKind.MALT);
  }

  /** Specific gravity 20/20 of a wash. */
  public static double gravity(double originalExtract, double trueExtract, WashKind kind) {
    double alcohol = kind.alcoholByMass(originalExtract, trueExtract) / 100;
    return EthanolWater.density(alcohol, 20) / ETHANOL_WATER_20
        + SucroseSolution.gravity(trueExtract)
        - 1;
  }

  /** True extract, % by mass, of a malt wash of known original extract at a gravity 20/20. */
  public static double trueExtract(double originalExtract, double gravity) {
    return trueExtract(originalExtract, gravity, WashKind.MALT);
  }

  /** True extract, % by mass, of a wash of known original extract at a gravity 20/20. */
  public static double trueExtract(double originalExtract, double gravity, WashKind kind) {
    double start = 0.1808 * originalExtract + 0.8192 * SucroseSolution.brix(gravity);
    return Solve.root(
        re -> gravity(originalExtract, re, kind) - gravity,
        re -> gravitySlope(originalExtract, re, kind),
        start,
        lowest(originalExtract, kind),
        originalExtract + 1);
  }

  /** The true extract that would make it all ethanol: the lower end of every search. */
  private static double lowest(double originalExtract, WashKind kind) {
    return originalExtract - 100 * kind.extractPerEthanolAt(originalExtract, originalExtract);
  }

  private static double gravitySlope(double originalExtract, double trueExtract, WashKind kind) {
    double alcohol = kind.alcoholByMass(originalExtract, trueExtract) / 100;
    return SucroseSolution.gravitySlope(trueExtract)
        - EthanolWater.densitySlope20(alcohol)
            / ETHANOL_WATER_20
            / kind.extractPerEthanolAt(originalExtract, trueExtract)
            / 100;
  }

  /** % vol at 20 °C of a wash of that original and true extract and gravity 20/20. */
  public static double percentVolume(
      double originalExtract, double trueExtract, double gravity, WashKind kind) {
    return kind.alcoholByMass(originalExtract, trueExtract)
        * density20(gravity)
        / EthanolWater.ETHANOL_DENSITY_20;
  }

  /** Density in kg/m3 of a malt wash at a temperature: Tabarie's rule over water that warm. */
  public static double density(double originalExtract, double trueExtract, double temperatureC) {
    double[] ethanol = EthanolWater.atTemperature(temperatureC);
    double alcohol = alcoholByMass(originalExtract, trueExtract) / 100;
    return SucroseSolution.density(trueExtract, temperatureC)
        + (Polynomial.value(ethanol, alcohol) - ethanol[0])
            * Water.density(temperatureC)
            / ethanol[0];
  }

  /**
   * True extract, % by mass, of a malt wash that has {@code density} kg/m3 at {@code temperatureC}.
   * Other kinds' alcohol differs by some percent, which expands by less than 0.0001 SG from 10 to
   * 30 °C.
   */
  public static double trueExtractOfDensity(
      double originalExtract, double density, double temperatureC) {
    double perEthanol = WashKind.MALT.extractPerEthanolAt(originalExtract, originalExtract);
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
