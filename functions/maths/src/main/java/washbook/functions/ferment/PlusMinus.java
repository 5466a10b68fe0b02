package washbook.functions.ferment;

import washbook.functions.liquid.EthanolWater;
import washbook.functions.liquid.FermentingWash;
import washbook.functions.liquid.SucroseSolution;
import washbook.functions.liquid.WashKind;
import washbook.functions.reading.Hydrometer;

/**
 * How far off the alcohol so far may be for want of sharp reading: first-order propagation of two
 * independent readings' errors (JCGM 100:2008, 5.1.2) and of what the balance of that kind of wash
 * may be off ({@link WashKind#uncertainty}).
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
      double originalGravity,
      double gravity,
      double readingError,
      double temperatureErrorC,
      WashKind kind) {
    double percentVolume = Balance.of(originalGravity, gravity, kind).percentVolume();
    double byOriginal =
        (alcohol(originalGravity + STEP, gravity, kind)
                - alcohol(originalGravity - STEP, gravity, kind))
            / (2 * STEP);
    double byGravity =
        (alcohol(originalGravity, gravity + STEP, kind)
                - alcohol(originalGravity, gravity - STEP, kind))
            / (2 * STEP);
    double originalError =
        Math.hypot(readingError, temperatureErrorC * gravityPerKelvin(originalGravity, 0));
    double gravityError =
        Math.hypot(
            readingError,
            temperatureErrorC * gravityPerKelvin(gravity, Math.max(0, percentVolume)));
    double byReadings = Math.hypot(byOriginal * originalError, byGravity * gravityError);
    return Math.hypot(byReadings, kind.uncertainty() * percentVolume);
  }

  private static double alcohol(double originalGravity, double gravity, WashKind kind) {
    double originalExtract = SucroseSolution.brix(originalGravity);
    double trueExtract = FermentingWash.trueExtract(originalExtract, gravity, kind);
    return FermentingWash.percentVolume(originalExtract, trueExtract, gravity, kind);
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
