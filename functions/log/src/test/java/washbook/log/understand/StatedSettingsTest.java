package washbook.log.understand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.LogSettings;
import washbook.log.Understanding;
import washbook.log.language.Language;
import washbook.log.sheet.TestGrid;

/** What lines above a table say about all its readings. */
class StatedSettingsTest {
  private static Understanding understand(String line, String header) {
    TestGrid grid =
        TestGrid.of(
            "Plum 3",
            line.replace('^', '|')
                + "\n|\n"
                + header
                + "\n0 | 1.085 | 20\n2 | 1.060 | 21\n4 | 1.030 | 21\n6 | 1.010 | 20");
    return SheetUnderstanding.understand(grid, LogMap.none());
  }

  private static LogSettings settings(String line) {
    return understand(line, "Day | SG | Temp C").tables().get(0).settings();
  }

  @Test
  void aLogThatSaysNothingHasTheUsualSettings() {
    LogSettings settings = settings("cellar book");
    assertEquals(20, settings.calibrationC());
    assertEquals("no other is stated", settings.calibrationWhy().in(Language.EN));
    assertEquals(0, settings.offset());
    assertEquals(1, settings.refractometerFactor());
    assertTrue(Double.isNaN(settings.volumeL()));
    assertTrue(Double.isNaN(settings.temperatureC()));
    assertFalse(settings.hasTemperature());
    assertFalse(settings.correctedAlready());
  }

  /** 60 °F is 140/9 °C. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Hydrometer calibrated at 60 F; 15.555555555555555",
        "Hydrometer calibrated at ^ 60 F; 15.555555555555555",
        "Calibration: 15 C; 15",
        "Calibration temperature (°C): ^ 17.5; 17.5",
        "Calibration ^ 60; 15.555555555555555",
        "hydrometer is a 60F one; 15.555555555555555",
        "Spindel geeicht bei 15 °C; 15",
        "Calibration: 10 C; 10",
        "Calibration: 30 C; 30",
      })
  void theCalibration(String line, double celsius) {
    LogSettings settings = settings(line);
    assertEquals(celsius, settings.calibrationC(), 1e-12);
    assertTrue(
        settings.calibrationWhy().in(Language.EN).startsWith("stated in "),
        settings.calibrationWhy().in(Language.EN));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Calibration: 9 C", "Calibration: 31 C", "Calibration: 4 C"})
  void aCalibrationThatCannotBeIsAskedAbout(String line) {
    Understanding understood = understand(line, "Day | SG | Temp C");
    assertEquals(1, understood.doubts().size());
    String question = understood.doubts().get(0).question();
    assertTrue(question.contains("is outside 10 to 30 °C"), question);
    assertTrue(question.contains("calibration = 20 C"), question);
  }

  /** In SG up to 0.05, in points up to 50; a hydrometer that is further out is none. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Hydrometer error: 0.002; 0.002",
        "Hydrometer error: -0.003; -0.003",
        "Hydrometer error: 0.05; 0.05",
        "Hydrometer error: 2; 0.002",
        "Hydrometer error: -3; -0.003",
        "Hydrometer error: 50; 0.05",
        "Hydrometer error: 51; 0",
        "Offset ^ 0.001; 0.001",
        "Offset ^ 1; 0.001",
        "Anzeigefehler: 0,002; 0.002",
        "Hydrometer reads 1.002 in water; 0.002",
        "Hydrometer reads 0.997 in water; -0.003",
      })
  void theOffset(String line, double offset) {
    assertEquals(offset, settings(line).offset(), 1e-12);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Volume: 25 L; 25",
        "Volume: 5 gal uk; 22.73045",
        "Volume: 5 us gal; 18.92705892",
        "Volume: 500 ml; 0.5",
        "Volume: 0 L; NaN",
      })
  void theVolumeAtTheStart(String line, double litres) {
    assertEquals(litres, settings(line).volumeL(), 1e-12);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Readings corrected to 20 C; 20",
        "Readings corrected to 60 F; 15.555555555555555",
        "Readings: corrected; 20",
        "Readings: corrected to 15 °C; 15",
        "Corrected: yes; 20",
        "All readings corrected to 99 C; 20",
      })
  void readingsThatAreCorrectedAlready(String line, double celsius) {
    LogSettings settings = settings(line);
    assertTrue(settings.correctedAlready());
    assertEquals(celsius, settings.temperatureC(), 1e-12);
    assertTrue(settings.temperatureWhy().in(Language.EN).startsWith("corrected already, by "));
  }

  @Test
  void correctedReadingsAreOfTheInstrumentsTemperatureWhereNoOtherIsStated() {
    LogSettings settings = settings("Calibration: 15 C\nReadings: corrected");
    assertTrue(settings.correctedAlready());
    assertEquals(15, settings.temperatureC(), 1e-12);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Temperature: 20 C; 20",
        "Temperature: 68 F; 20",
        "All samples read at 20 C; 20",
        "Temperature: 0 C; 0",
        "Temperature: 60 C; 60",
      })
  void oneTemperatureForAllReadings(String line, double celsius) {
    LogSettings settings = settings(line);
    assertEquals(celsius, settings.temperatureC(), 1e-12);
    assertTrue(settings.hasTemperature());
    assertEquals(
        "one temperature for all readings, in A1", settings.temperatureWhy().in(Language.EN));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Temperature: 61 C; is outside 0 to 60 °C",
        "Temperature: -1 C; is outside 0 to 60 °C",
        "Temperature: 45; in °C or °F?",
      })
  void aTemperatureThatCannotBeOrMayBeTwoIsAskedAbout(String line, String part) {
    Understanding understood = understand(line, "Day | SG | Temp C");
    assertEquals(1, understood.doubts().size());
    String question = understood.doubts().get(0).question();
    assertTrue(question.contains(part), question);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Refractometer factor: 1.04; 1.04",
        "Refractometer factor: 0.9; 0.9",
        "Refractometer factor: 1.1; 1.1",
      })
  void theRefractometersFactor(String line, double factor) {
    Understanding understood = understand(line, "Day | SG | Temp C | Refractometer Brix");
    assertEquals(factor, understood.tables().get(0).settings().refractometerFactor());
    assertEquals(1, settings(line).refractometerFactor());
  }

  @ParameterizedTest
  @ValueSource(strings = {"Refractometer factor: 0.89", "Refractometer factor: 1.11"})
  void aFactorThatCannotBeIsAskedAbout(String line) {
    Understanding understood = understand(line, "Day | SG | Temp C | Refractometer Brix");
    String question = understood.doubts().get(0).question();
    assertTrue(question.contains("is outside 0.9 to 1.1"), question);
    assertEquals(1, understood.tables().get(0).settings().refractometerFactor());
  }
}
