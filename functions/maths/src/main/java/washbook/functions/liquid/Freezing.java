package washbook.functions.liquid;

import washbook.functions.Numbers;
import washbook.functions.RefusedException;

/**
 * Where ice begins to form in ethanol-water, so that no density is given for slush. CRC Handbook of
 * Chemistry and Physics, "Concentrative properties of aqueous solutions: ethanol" (from memory),
 * linear between its rows; from 30 % by mass on it stays liquid down to -20 °C.
 */
public final class Freezing {
  private static final double[] PERCENT_MASS = {
    0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28, 30
  };
  private static final double[] ICE_AT_C = {
    0, -0.40, -0.81, -1.23, -1.65, -2.09, -2.54, -2.99, -3.47, -3.96, -4.47, -5.56, -6.73, -8.01,
    -9.40, -10.92, -12.60, -14.47, -16.41, -18.43, -20.47
  };

  private Freezing() {}

  /** Temperature in °C at which ice begins to form; -20.47 and above 30 % by mass. */
  public static double point(double massFraction) {
    double percent = 100 * massFraction;
    for (int i = 1; i < PERCENT_MASS.length; i++) {
      if (percent < PERCENT_MASS[i]) {
        double share = (percent - PERCENT_MASS[i - 1]) / (PERCENT_MASS[i] - PERCENT_MASS[i - 1]);
        return ICE_AT_C[i - 1] + share * (ICE_AT_C[i] - ICE_AT_C[i - 1]);
      }
    }
    return ICE_AT_C[ICE_AT_C.length - 1];
  }

  /** Refuses a mixture that is colder than its freezing point. */
  public static void refuseIce(double massFraction, double temperatureC) {
    double ice = point(massFraction);
    if (temperatureC < ice) {
      throw RefusedException.contradiction("ice", temperatureC, Numbers.rounded(ice, 1));
    }
  }
}
