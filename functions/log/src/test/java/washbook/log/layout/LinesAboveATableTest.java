package washbook.log.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.sheet.TestGrid;
import washbook.log.words.Concept;

/** What a line above a table is about. */
class LinesAboveATableTest {
  private static List<KeyLine> all(String text) {
    TestGrid grid = TestGrid.of("x", text.replace('^', '|'));
    return new KeyLines(grid).find(0, grid.rowCount() - 1, 0, grid.columnCount() - 1);
  }

  private static String originals(String text) {
    return all(text).stream()
        .filter(KeyLine::isOriginalGravity)
        .filter(line -> !Double.isNaN(line.value()))
        .map(line -> line.value() + "")
        .collect(Collectors.joining(" "));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "OG: 1.085; 1.085",
        "OG^1.085; 1.085",
        "Start: 1.085; 1.085",
        "Start: 1.021; 1.021",
        "Start: 1.02; ''",
        "Start: 1.199; 1.199",
        "Start: 1.2; ''",
        "Start: 20 °Bx; 20.0",
        "Start: 20; ''",
        "Start temperature: 1.085; ''",
        "Start volume: 1.085; ''",
        "Original sugar: 1.085; ''",
        // inside a title
        "Kit 2 - start 1.093 - 23 L; 1.093",
        "Kit 2 - stop 1.003 - 23 L; ''",
        "Kit 2 - start 1.09 - 23 L; ''",
        "Kit 2 - start 1.09300 - 23 L; ''",
      })
  void theGravityBeforeTheFerment(String line, String gravity) {
    assertEquals(gravity, originals(line));
  }

  /** What is said in brackets of a gravity beside it is the temperature it was read at. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "OG (at 28 C)^1.085; 28",
        "OG (at 50 F)^1.085; 10",
        "OG (hydrometer 20 C)^1.085; NaN",
        "OG (calibrated 20 C)^1.085; NaN",
        "OG (corrected to 20 C)^1.085; NaN",
        "OG: 1.085 @ 68F; 20",
        "OG: 1.085; NaN",
      })
  void theTemperatureOfTheOriginalGravity(String line, double celsius) {
    assertEquals(celsius, all(line).get(0).temperatureC(), 1e-9);
    assertEquals(1.085, all(line).get(0).value());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Temperature: 20 C; true",
        "Sample temperature: 20 C; true",
        "Temperature: warm; false",
        "Hydrometer temperature: 20 C; false",
        "Hydrometer sample temperature: 20 C; true",
        "Original temperature: 20 C; false",
        "Room temperature: 20 C; false",
        "Volume: 20 L; false",
      })
  void oneTemperatureForAllReadings(String line, boolean all) {
    assertEquals(all, all(line).stream().anyMatch(KeyLine::isReadingTemperature));
  }

  /** 60 °F is 140/9 °C. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Hydrometer: the one for 60 F; 15.555555555555555",
        "Calibration: made for 15 C; 15",
        "Readings: corrected to 15 C; 15",
        "Hydrometer: glass; NaN",
      })
  void aTemperatureInWordsBehindALabel(String line, double celsius) {
    KeyLine found = all(line).get(0);
    assertEquals(celsius, found.temperatureC(), 1e-9);
    assertEquals(Double.NaN, found.value());
    assertEquals(line.replaceAll("^\\w+: ", ""), found.text());
  }

  @Test
  void theSameLineOfAnotherColumn() {
    KeyLine line = all("OG^1.085 ").get(0).in(3, 1.065);
    assertEquals(1.065, line.value());
    assertEquals("D1", line.cell());
    assertEquals(3, line.column());
    assertEquals("", line.text());
    assertEquals(true, line.numberCell());
    assertEquals(true, line.has(Concept.ORIGINALGRAVITY));
    assertEquals(20, line.at(20).temperatureC());
    assertEquals(20, line.at(20).at(15).temperatureC());
  }

  @Test
  void onlyTheColumnsOfTheTableAreRead() {
    TestGrid grid = TestGrid.of("x", "OG: 1.085|OG: 1.065|OG: 1.045");
    assertEquals(
        List.of(1.065), new KeyLines(grid).find(0, 0, 1, 1).stream().map(KeyLine::value).toList());
    String wide = "yeast" + "|".repeat(64) + "OG: 1.085";
    assertEquals(
        1,
        new KeyLines(TestGrid.of("x", wide))
            .find(0, 0, 0, 99).stream().filter(KeyLine::isOriginalGravity).count());
    assertEquals(
        0,
        new KeyLines(TestGrid.of("x", "|" + wide))
            .find(0, 0, 0, 99).stream().filter(KeyLine::isOriginalGravity).count());
  }
}
