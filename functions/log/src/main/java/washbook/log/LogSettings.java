package washbook.log;

/**
 * What holds for all readings of a table.
 *
 * @param temperatureC one temperature for all readings, NaN when none is stated. Readings that are
 *     corrected already have the temperature that they were corrected to
 * @param temperatureWhy where it is stated, "" when it is not
 * @param correctedAlready whether the log says that its readings are corrected already
 * @param calibrationC temperature at which the instrument is calibrated
 * @param calibrationWhy where it is stated
 * @param offset what the instrument shows too much, SG
 * @param refractometerFactor a refractometer's reading over the degrees Brix it means
 * @param volumeL volume at the start, NaN when not stated
 * @param sugarReadings whether a reading on the row of an addition was taken before or after it
 * @param wash what ferments, and where that is stated
 */
public record LogSettings(
    double temperatureC,
    String temperatureWhy,
    boolean correctedAlready,
    double calibrationC,
    String calibrationWhy,
    double offset,
    double refractometerFactor,
    double volumeL,
    SugarReadings sugarReadings,
    StatedWash wash) {

  /** When the reading on the row of an addition was taken. */
  public enum SugarReadings {
    /** Told from the readings: a reading higher than the one before it was taken after. */
    TOLD_BY_RISE,
    BEFORE,
    AFTER
  }

  /** Calibration when nothing else is stated. */
  public static final double USUAL_CALIBRATION = 20;

  /** Nothing stated. */
  public static LogSettings none() {
    return new LogSettings(
        Double.NaN,
        "",
        false,
        USUAL_CALIBRATION,
        "no other is stated",
        0,
        1,
        Double.NaN,
        SugarReadings.TOLD_BY_RISE,
        StatedWash.none());
  }

  /** Whether the readings' temperature is known without a temperature column. */
  public boolean hasTemperature() {
    return !Double.isNaN(temperatureC);
  }
}
