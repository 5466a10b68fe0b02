package washbook.log;

import washbook.log.language.Message;

/**
 * What holds for all readings of a table.
 *
 * @param temperatureC one temperature for all readings, NaN when none is stated. Readings that are
 *     corrected already have the temperature that they were corrected to
 * @param temperatureWhy where it is stated, {@link Message#NONE} when it is not
 * @param correctedAlready whether the log says that its readings are corrected already
 * @param calibrationC temperature at which the instrument is calibrated
 * @param calibrationWhy where it is stated
 * @param offset what the instrument shows too much, SG
 * @param refractometerFactor a refractometer's reading over the degrees Brix it means
 * @param volumeL volume at the start, NaN when not stated
 * @param sugarReadings whether a reading on the row of an addition was taken before or after it
 * @param wash what ferments, and where that is stated
 * @param writing how it is to be written into
 */
public record LogSettings(
    double temperatureC,
    Message temperatureWhy,
    boolean correctedAlready,
    double calibrationC,
    Message calibrationWhy,
    double offset,
    double refractometerFactor,
    double volumeL,
    SugarReadings sugarReadings,
    StatedWash wash,
    WritingWish writing) {

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
        Message.NONE,
        false,
        USUAL_CALIBRATION,
        Message.of("from.none"),
        0,
        1,
        Double.NaN,
        SugarReadings.TOLD_BY_RISE,
        StatedWash.none(),
        WritingWish.NONE);
  }

  /** The same, to be written into otherwise. */
  public LogSettings written(WritingWish otherwise) {
    return new LogSettings(
        temperatureC,
        temperatureWhy,
        correctedAlready,
        calibrationC,
        calibrationWhy,
        offset,
        refractometerFactor,
        volumeL,
        sugarReadings,
        wash,
        otherwise);
  }

  /** Whether the readings' temperature is known without a temperature column. */
  public boolean hasTemperature() {
    return !Double.isNaN(temperatureC);
  }
}
