package washbook.functions.liquid;

/**
 * Density of ethanol-water by the general formula of OIML R 22:1975 (also Council Directive
 * 76/766/EEC, annex, section 4). Strengths are mass fractions 0 to 1 or % vol at 20 °C; valid -20
 * to 40 °C as far as the mixture is liquid.
 */
public final class EthanolWater {
  /** Terms in p alone; the first is water at 20 °C. */
  static final double[] A = {
    9.982012300e2,
    -1.929769495e2,
    3.891238958e2,
    -1.668103923e3,
    1.352215441e4,
    -8.829278388e4,
    3.062874042e5,
    -6.138381234e5,
    7.470172998e5,
    -5.478461354e5,
    2.234460334e5,
    -3.903285426e4
  };

  /** Terms in (t - 20) alone. */
  static final double[] B = {
    0, -2.0618513e-1, -5.2682542e-3, 3.6130013e-5, -3.8957702e-7, 7.1693540e-9, -9.9739231e-11
  };

  /** Mixed terms: row i belongs to (t - 20)^(i+1), entry k to p^(k+1). */
  static final double[][] C = {
    {
      1.693443461530087e-1,
      -1.046914743455169e1,
      7.196353469546523e1,
      -7.047478054272792e2,
      3.924090430035045e3,
      -1.210164659068747e4,
      2.248646550400788e4,
      -2.605562982188164e4,
      1.852373922069467e4,
      -7.420201433430137e3,
      1.285617841998974e3
    },
    {
      -1.193013005057010e-2,
      2.517399633803461e-1,
      -2.170575700536993,
      1.353034988843029e1,
      -5.029988758547014e1,
      1.096355666577570e2,
      -1.422753946421155e2,
      1.080435942856230e2,
      -4.414153236817392e1,
      7.442971530188783
    },
    {
      -6.802995733503803e-4,
      1.876837790289664e-2,
      -2.002561813734156e-1,
      1.022992966719220,
      -2.895696483903638,
      4.810060584300675,
      -4.672147440794683,
      2.458043105903461,
      -5.411227621436812e-1
    },
    {4.075376675622027e-6, -8.763058573471110e-6, 6.515031360099368e-6, -1.515784836987210e-6},
    {-2.788074354782409e-8, 1.345612883493354e-8}
  };

  /** Density of pure ethanol at 20 °C in kg/m3; 789.24 as printed in table IVa. */
  public static final double ETHANOL_DENSITY_20 = Polynomial.value(A, 1);

  private EthanolWater() {}

  /** Density in kg/m3 of a mixture with mass fraction {@code p} of ethanol. */
  public static double density(double p, double temperatureC) {
    return Polynomial.value(temperatureC == 20 ? A : atTemperature(temperatureC), p);
  }

  /** Slope of the density at 20 °C by the mass fraction, kg/m3. */
  public static double densitySlope20(double p) {
    return Polynomial.slope(A, p);
  }

  /** The formula's polynomial in p at one temperature, ascending. */
  static double[] atTemperature(double temperatureC) {
    double d = temperatureC - 20;
    double[] inP = A.clone();
    inP[0] += Polynomial.value(B, d);
    double power = 1;
    for (double[] row : C) {
      power *= d;
      for (int k = 0; k < row.length; k++) {
        inP[k + 1] += row[k] * power;
      }
    }
    return inP;
  }

  /** % vol at 20 °C of a mass fraction. */
  public static double percentVolume(double p) {
    return 100 * p * Polynomial.value(A, p) / ETHANOL_DENSITY_20;
  }

  /** Mass fraction of a strength in % vol at 20 °C, 0 to 100. */
  public static double massFraction(double percentVolume) {
    double target = percentVolume / 100 * ETHANOL_DENSITY_20;
    double start = percentVolume / 100 * (0.79 + 0.21 * percentVolume / 100);
    return Solve.root(
        p -> p * Polynomial.value(A, p) - target,
        p -> Polynomial.value(A, p) + p * Polynomial.slope(A, p),
        start,
        0,
        1);
  }

  /** Specific gravity 20/20 of a mass fraction. */
  public static double gravity(double p) {
    return Polynomial.value(A, p) / A[0];
  }

  /** Mass fraction of a strength in % vol, both volumes at {@code temperatureC}. */
  public static double massFractionAt(double percentVolume, double temperatureC) {
    if (temperatureC == 20) {
      return massFraction(percentVolume);
    }
    double[] inP = atTemperature(temperatureC);
    double target = percentVolume / 100 * Polynomial.value(inP, 1);
    return Solve.root(
        p -> p * Polynomial.value(inP, p) - target,
        p -> Polynomial.value(inP, p) + p * Polynomial.slope(inP, p),
        percentVolume / 100 * (0.79 + 0.21 * percentVolume / 100),
        0,
        1);
  }

  /** % vol of a mass fraction, both volumes at {@code temperatureC}. */
  public static double percentVolumeAt(double p, double temperatureC) {
    double[] inP = atTemperature(temperatureC);
    return 100 * p * Polynomial.value(inP, p) / Polynomial.value(inP, 1);
  }

  /**
   * Mass fraction of the mixture that has {@code density} kg/m3 at {@code temperatureC}; NaN when
   * none has. The density falls with the strength everywhere from -20 to 40 °C, so there is one.
   */
  public static double massFractionOfDensity(double density, double temperatureC) {
    double[] inP = temperatureC == 20 ? A : atTemperature(temperatureC);
    double lightest = Polynomial.value(inP, 1);
    double share = (inP[0] - density) / (inP[0] - lightest);
    return Solve.root(
        p -> Polynomial.value(inP, p) - density,
        p -> Polynomial.slope(inP, p),
        share * (1.3 - 0.3 * share),
        0,
        1);
  }
}
