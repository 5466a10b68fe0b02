package washbook.functions.ferment;

import washbook.functions.liquid.EthanolWater;
import washbook.functions.liquid.FermentingWash;
import washbook.functions.liquid.SucroseSolution;
import washbook.functions.reading.Hydrometer;

/**
 * How far off the alcohol so far may be for want of sharp reading: first-order propagation of two
 * independent readings' errors (JCGM 100:2008, 5.1.2). The error of the model itself is not in it.
 */
public final class PlusMinus {
  private static final double STEP = 1e-5;
  private static final double ROOM_C = 20;

  private PlusMinus() {}

  /**
   * One standard deviation of the alcohol so far in % vol.
   *
   * @param readingError standard deviation of one reading, SG
   * @param temperatureErrorC standard deviation of the temperature it is corrected with, K
   */
  public static double percentVolume(
      double originalGravity, double gravity, double readingError, double temperatureErrorC) {
    Balance.of(originalGravity, gravity);
    double byOriginal =
        (alcohol(originalGravity + STEP, gravity) - alcohol(originalGravity - STEP, gravity))
            / (2 * STEP);
    double byGravity =
        (alcohol(originalGravity, gravity + STEP) - alcohol(originalGravity, gravity - STEP))
            / (2 * STEP);
    double originalError =
        Math.hypot(readingError, temperatureErrorC * gravityPerKelvin(originalGravity, 0));
    double gravityError =
        Math.hypot(
            readingError,
            temperatureErrorC
                * gravityPerKelvin(gravity, Math.max(0, alcohol(originalGravity, gravity))));
    return Math.hypot(byOriginal * originalError, byGravity * gravityError);
  }

  private static double alcohol(double originalGravity, double gravity) {
    double originalExtract = SucroseSolution.brix(originalGravity);
    double trueExtract = FermentingWash.trueExtract(originalExtract, gravity);
    return FermentingWash.alcoholByMass(originalExtract, trueExtract)
        * FermentingWash.density20(gravity)
        / EthanolWater.ETHANOL_DENSITY_20;
  }

  /** How a corrected gravity moves with one K near 20 °C; the alcohol's share added. */
  private static double gravityPerKelvin(double gravity, double percentVolume) {
    double sugar =
        Hydrometer.correctedGravity(gravity, ROOM_C + 0.5, ROOM_C, 0)
            - Hydrometer.correctedGravity(gravity, ROOM_C - 0.5, ROOM_C, 0);
    double p = EthanolWater.massFraction(percentVolume);
    double alcohol =
        EthanolWater.density(p, ROOM_C - 0.5)
            - EthanolWater.density(p, ROOM_C + 0.5)
            - EthanolWater.density(0, ROOM_C - 0.5)
            + EthanolWater.density(0, ROOM_C + 0.5);
    return sugar + alcohol / FermentingWash.density20(1);
  }
}
