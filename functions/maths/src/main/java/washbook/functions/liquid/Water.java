package washbook.functions.liquid;

/** Density of pure water in kg/m3. */
public final class Water {
  static final double[] KELL = {
    999.83952, 16.952577, -7.9905127e-3, -46.241757e-6, 105.84601e-9, -281.03006e-12
  };

  private Water() {}

  /**
   * Water by Kell, J. Chem. Eng. Data 20 (1975) 97: the water term of the sucrose formula. Valid 0
   * to 150 °C.
   */
  public static double density(double temperatureC) {
    return Polynomial.value(KELL, temperatureC) / (1 + 16.887236e-3 * temperatureC);
  }

  /**
   * Water by CIPM: Tanaka et al., Metrologia 38 (2001) 301, equation 1 and table 1. Valid 0 to 40
   * °C.
   */
  public static double densityCipm(double temperatureC) {
    double fromMaximum = temperatureC - 3.983035;
    return 999.974950
        * (1
            - fromMaximum
                * fromMaximum
                * (temperatureC + 301.797)
                / (522528.9 * (temperatureC + 69.34881)));
  }
}
