package washbook.functions.liquid;

/**
 * Boiling ethanol-water: activity coefficients by van Laar, vapour pressures by Antoine, ideal
 * vapour. At 1013.25 hPa within 0.011 mole fraction of the data in Perry's Chemical Engineers'
 * Handbook. Mole fractions of ethanol throughout.
 */
public final class VapourLiquid {
  /** One standard atmosphere in hPa; 760 mmHg. */
  public static final double ATMOSPHERE_HPA = 1013.25;

  static final double ETHANOL_MOLAR_MASS = 46.069;
  static final double WATER_MOLAR_MASS = 18.015;

  private static final double VAN_LAAR_ETHANOL = 1.6798;
  private static final double VAN_LAAR_WATER = 0.9227;
  private static final double[] ANTOINE_ETHANOL = {8.1122, 1592.864, 226.184};
  private static final double[] ANTOINE_WATER = {8.07131, 1730.63, 233.426};
  private static final double LN10 = Math.log(10);

  private VapourLiquid() {}

  /** A boiling liquid: its temperature in °C and the mole fraction of ethanol in its vapour. */
  public record Boil(double temperatureC, double vapour) {}

  /** The vapours over a liquid that does not boil, hPa. */
  public record Vapour(double ethanolHPa, double waterHPa) {}

  /** The vapours over a liquid with mole fraction {@code x} at a temperature; 5 to 100 °C. */
  public static Vapour vapour(double x, double temperatureC) {
    double inHPa = ATMOSPHERE_HPA / 760;
    return new Vapour(
        x
            * activity(VAN_LAAR_ETHANOL, VAN_LAAR_WATER, x)
            * vapourPressure(ANTOINE_ETHANOL, temperatureC)
            * inHPa,
        (1 - x)
            * activity(VAN_LAAR_WATER, VAN_LAAR_ETHANOL, 1 - x)
            * vapourPressure(ANTOINE_WATER, temperatureC)
            * inHPa);
  }

  /** Mole fraction of a mass fraction of ethanol. */
  public static double moleFraction(double massFraction) {
    double ethanol = massFraction / ETHANOL_MOLAR_MASS;
    return ethanol / (ethanol + (1 - massFraction) / WATER_MOLAR_MASS);
  }

  /** Mass fraction of a mole fraction of ethanol. */
  public static double massFraction(double moleFraction) {
    double ethanol = moleFraction * ETHANOL_MOLAR_MASS;
    return ethanol / (ethanol + (1 - moleFraction) * WATER_MOLAR_MASS);
  }

  /** Molar mass of a mixture, g/mol. */
  public static double molarMass(double moleFraction) {
    return moleFraction * ETHANOL_MOLAR_MASS + (1 - moleFraction) * WATER_MOLAR_MASS;
  }

  /** The boil of a liquid with mole fraction {@code x} under a pressure. */
  public static Boil boil(double x, double pressureHPa) {
    double pressure = pressureHPa * 760 / ATMOSPHERE_HPA;
    double ethanolPart = x * activity(VAN_LAAR_ETHANOL, VAN_LAAR_WATER, x);
    double waterPart = (1 - x) * activity(VAN_LAAR_WATER, VAN_LAAR_ETHANOL, 1 - x);
    double start = 78.2 + 21.8 * Math.exp(-9 * x);
    double t =
        Solve.root(
            at ->
                Math.log(
                    (ethanolPart * vapourPressure(ANTOINE_ETHANOL, at)
                            + waterPart * vapourPressure(ANTOINE_WATER, at))
                        / pressure),
            at -> {
              double ethanol = ethanolPart * vapourPressure(ANTOINE_ETHANOL, at);
              double water = waterPart * vapourPressure(ANTOINE_WATER, at);
              return (ethanol * steepness(ANTOINE_ETHANOL, at)
                      + water * steepness(ANTOINE_WATER, at))
                  / (ethanol + water);
            },
            start,
            40,
            120);
    return new Boil(t, ethanolPart * vapourPressure(ANTOINE_ETHANOL, t) / pressure);
  }

  /**
   * Mole fraction of ethanol in the liquid that boils at a temperature under a pressure, on the
   * side of the constant-boiling mixture that is richer in water.
   *
   * @param highest mole fraction up to which the boiling point falls
   */
  public static double liquid(double temperatureC, double pressureHPa, double highest) {
    double pressure = pressureHPa * 760 / ATMOSPHERE_HPA;
    double ethanol = vapourPressure(ANTOINE_ETHANOL, temperatureC) / pressure;
    double water = vapourPressure(ANTOINE_WATER, temperatureC) / pressure;
    return Solve.root(
        x ->
            x * activity(VAN_LAAR_ETHANOL, VAN_LAAR_WATER, x) * ethanol
                + (1 - x) * activity(VAN_LAAR_WATER, VAN_LAAR_ETHANOL, 1 - x) * water
                - 1,
        Math.min(highest, (1 - water) / (5 * ethanol - water)),
        0,
        highest);
  }

  /** Activity coefficient by van Laar of the component whose constant is {@code own}. */
  private static double activity(double own, double other, double moleFraction) {
    double share = own * moleFraction + other * (1 - moleFraction);
    double pull = other * (1 - moleFraction) / share;
    return Math.exp(own * pull * pull);
  }

  /** mmHg. */
  private static double vapourPressure(double[] antoine, double temperatureC) {
    return Math.exp(LN10 * (antoine[0] - antoine[1] / (antoine[2] + temperatureC)));
  }

  /** Slope of the logarithm of the vapour pressure, per K. */
  private static double steepness(double[] antoine, double temperatureC) {
    double above = antoine[2] + temperatureC;
    return LN10 * antoine[1] / (above * above);
  }
}
