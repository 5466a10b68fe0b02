package washbook.log.reading;

import washbook.functions.scale.SugarScale;
import washbook.log.LogSettings;

/** A Brix scale that is not right at 20 °C: it shows other degrees than those of CONVERT. */
public final class OtherBrixScale {
  private OtherBrixScale() {}

  /** Whether the readings of that scale, with that instrument, are of this sort. */
  public static boolean is(SugarScale scale, LogSettings settings) {
    boolean brix =
        scale == SugarScale.BRIX || scale == SugarScale.PLATO || scale == SugarScale.BALLING;
    return brix && settings.calibrationC() != LogSettings.USUAL_CALIBRATION;
  }
}
