package washbook.runner.bench;

import java.util.List;
import washbook.functions.ferment.Balance;
import washbook.functions.reading.Hydrometer;

/**
 * What the peers need not find out of a {@link BigLog}: where its columns are, and that a new name
 * begins a new batch. One object goes down the rows of one sheet.
 */
final class KnownColumns {
  static final int DATE = 0;
  static final int BATCH = 1;
  static final int GRAVITY = 2;
  static final int TEMPERATURE = 3;
  static final int FIRST_NEW = 8;
  static final List<String> NEW_HEADERS =
      List.of(
          "Corrected gravity (SG)",
          "Alcohol to date (% vol)",
          "Apparent attenuation (%)",
          "Real attenuation (%)");
  static final String DATE_FORMAT = "m/d/yy h:mm";

  /** The level at which the product deflates. */
  static final int DEFLATE_LEVEL = 4;

  private static final double CALIBRATION = 20;

  private String batch = "";
  private double original;

  /** The new cells of a row. */
  double[] fill(String batchOfRow, double reading, double temperatureC) {
    double gravity;
    if (batchOfRow.equals(batch)) {
      gravity = Hydrometer.correctedGravity(reading, temperatureC, CALIBRATION, original, 0);
    } else {
      batch = batchOfRow;
      original = Hydrometer.correctedGravity(reading, temperatureC, CALIBRATION, 0);
      gravity = original;
    }
    Balance balance = Balance.of(original, gravity);
    return new double[] {
      gravity, balance.percentVolume(), balance.apparentAttenuation(), balance.realAttenuation()
    };
  }
}
