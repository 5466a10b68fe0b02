package washbook.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.junit.jupiter.api.Test;

class LogSettingsTest {
  /** A 20 °C instrument without error, and nothing known of temperature and volume. */
  @Test
  void nothingStatedChangesNoReading() {
    LogSettings none = LogSettings.none();
    assertEquals(20, none.calibrationC());
    assertEquals(0, none.offset());
    assertEquals(1, none.refractometerFactor());
    assertEquals(Double.NaN, none.temperatureC());
    assertEquals(Double.NaN, none.volumeL());
    assertFalse(none.correctedAlready());
    assertFalse(none.hasTemperature());
    assertEquals(LogSettings.SugarReadings.TOLD_BY_RISE, none.sugarReadings());
  }
}
