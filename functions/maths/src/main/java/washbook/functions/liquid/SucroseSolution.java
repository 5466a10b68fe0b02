package washbook.functions.liquid;

/**
 * Density of sucrose-water by ICUMSA SPS-4 (1998), coefficients from Bubník, Kadlec, Urban, Bruhns,
 * Sugar Technologists Manual (1995). Strength is % by mass (degrees Brix). The formula is continued
 * smoothly below 0 °Bx, down to SG 0.970, because the apparent extract of a dry ferment is
 * negative.
 */
public final class SucroseSolution {
  /** Row i belongs to ((t - 20)/100)^i, entry k to w^(k+1); w is the mass fraction. */
  static final double[][] C = {
    {385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.2890},
    {-46.2720, -7.1720, 1.1597, 5.1126, 17.5254},
    {59.7712, 7.2491, 12.3630, -35.4791},
    {-47.2207, -21.6977, 27.6301},
    {18.3184, 12.3081}
  };

  private static final double WATER_20 = Water.density(20);
  private static final double[] AT_20 = atTemperature(20);

  /** Brackets of the inverse; wider than any accepted reading. */
  private static final double LOWEST_BRIX = -15;

  private static final double HIGHEST_BRIX = 95;

  private SucroseSolution() {}

  /** Density in kg/m3; 0 to 60 °C. */
  public static double density(double brix, double temperatureC) {
    return Polynomial.value(atTemperature(temperatureC), brix / 100);
  }

  /** Specific gravity 20/20 of a solution. */
  public static double gravity(double brix) {
    return Polynomial.value(AT_20, brix / 100) / WATER_20;
  }

  /** Slope of {@link #gravity} per degree Brix. */
  public static double gravitySlope(double brix) {
    return Polynomial.slope(AT_20, brix / 100) / WATER_20 / 100;
  }

  /** Degrees Brix of a specific gravity 20/20. */
  public static double brix(double gravity) {
    double points = gravity - 1;
    double start = points * (258 - points * (213 - 200 * points));
    return Solve.root(
        b -> gravity(b) - gravity, SucroseSolution::gravitySlope, start, LOWEST_BRIX, HIGHEST_BRIX);
  }

  /** Degrees Brix of a solution that has {@code density} kg/m3 at {@code temperatureC}. */
  public static double brixOfDensity(double density, double temperatureC) {
    double[] inW = atTemperature(temperatureC);
    double points = density / inW[0] - 1;
    double start = points * (2.58 - points * (2.13 - 2 * points));
    return 100
        * Solve.root(
            w -> Polynomial.value(inW, w) - density,
            w -> Polynomial.slope(inW, w),
            start,
            LOWEST_BRIX / 100,
            HIGHEST_BRIX / 100);
  }

  /** The formula's polynomial in w at one temperature, ascending, water included. */
  static double[] atTemperature(double temperatureC) {
    double d = (temperatureC - 20) / 100;
    double[] inW = new double[7];
    inW[0] = Water.density(temperatureC);
    double power = 1;
    for (double[] row : C) {
      for (int k = 0; k < row.length; k++) {
        inW[k + 1] += row[k] * power;
      }
      power *= d;
    }
    return inW;
  }
}
