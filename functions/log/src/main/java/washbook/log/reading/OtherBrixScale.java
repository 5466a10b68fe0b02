package washbook.log.reading;

import washbook.log.LogSettings;
import washbook.log.words.ReadingScale;

/** A Brix scale that is not calibrated at 20 °C: it shows other degrees than those of CONVERT. */
public final class OtherBrixScale {
  private OtherBrixScale() {}

  /** Whether the readings of that scale, with that instrument, are of this sort. */
  public static boolean is(ReadingScale scale, LogSettings settings) {
    return scale.isPercentOfExtract() && settings.calibrationC() != LogSettings.USUAL_CALIBRATION;
  }
}
