package washbook.log.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.sheet.TestGrid;

/** Columns of gravities whose headers do not say so, told by their values. */
class GravitiesWithoutAWordTest {
  private static TestGrid column(String header, String values) {
    return TestGrid.of("Log", header + "\n" + values.replace(" ", "\n").replace('_', ' '));
  }

  /** At least four gravities, one other value in eight of them, and a fall of ten points. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "1.085 1.07 1.05 1.01; true",
        "1085 1070 1050 1010; true",
        "1.085 1.07 1.05; false",
        "1.05 1.05 1.05 1.041; false",
        "1.05 1.05 1.05 1.039; true",
        "1.039 1.05 1.05 1.05; true",
        "1.05 1.05 1.05 1.05 1.05 1.05 1.05 1.01 20; true",
        "1.05 1.05 1.05 1.05 1.05 1.05 1.01 20; false",
        "x 1.085 1.07 1.05 1.01; true",
        "x x 1.085 1.07 1.05 1.01; false",
        "20 12 8 4; false",
      })
  void gravitiesBeginBelowACell(String values, boolean begin) {
    assertEquals(begin, new ReadingByValues(column("Blorp", values)).mayBegin(0, 0));
  }

  @Test
  void gravitiesBeginOnlyAtTheirTop() {
    ReadingByValues byValues = new ReadingByValues(column("Blorp", "1.085 1.07 1.05 1.03 1.01"));
    assertTrue(byValues.mayBegin(0, 0));
    assertFalse(byValues.mayBegin(2, 0));
    assertFalse(byValues.mayBegin(5, 0));
  }

  @Test
  void whatStandsBelowABlankCellIsAnotherTables() {
    assertTrue(
        new ReadingByValues(column("Blorp", "1.085 1.07 1.05 1.01  20 30 40")).mayBegin(0, 0));
    assertFalse(
        new ReadingByValues(column("Blorp", "1.085 1.07 1.05  1.01 20 30 40")).mayBegin(0, 0));
  }

  /** Degrees of sugar below a vessel's name where a line above names their scale. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "all in °Brix; Tank 1; 20 14 8 5; true",
        "all in °Oe; Tank 1; 85 60 30 5; true",
        "potential alcohol; Tank 1; 12 8 4 1; true",
        "all in the cellar; Tank 1; 20 14 8 5; false",
        "all in °Brix; Blorp; 20 14 8 5; false",
        "all in °Brix; Grad; 20 14 8 5; true",
        "all in °Brix; Tank 1; 20 14 8; false",
        "all in °Brix; Tank 1; 20 18 16 14; false",
        "all in °Brix; Tank 1; 20 18 16 13; true",
        "all in °Brix; Tank 1; 4 3 2 1; false",
        "all in °Brix; Tank 1; 5 3 2 1; true",
        "all in °Oe; Tank 1; 151 60 30 5; false",
        "all in °Oe; Tank 1; 150 60 30 5; true",
        "all in °Brix; Tank 1; 20 14 15 8 5; false",
        "all in °Brix; Tank 1; 20 14 15 8 5 4 3 2; true",
      })
  void degreesFallBelowAVessel(String line, String header, String values, boolean begin) {
    TestGrid grid = column(line + "\n" + header, values);
    assertEquals(begin, new ReadingByValues(grid).mayBegin(1, 0));
  }

  @ParameterizedTest
  @CsvSource({"7, true", "8, false"})
  void aScaleIsNamedCloseAbove(int rowsBetween, boolean begin) {
    TestGrid grid = column("all in °Brix" + "\n".repeat(rowsBetween) + "\nTank 1", "20 14 8 5");
    assertEquals(begin, new ReadingByValues(grid).mayBegin(rowsBetween + 1, 0));
  }

  private static String found(String log) {
    return HeaderRowsTest.told(new Headers(TestGrid.of("Log", log)).find());
  }

  /** Beside dates, days or temperatures, where no header of the row names a reading. */
  @Test
  void theyCountInTheRightCompany() {
    String rows = "|1.085|1.06\n|1.07|1.05\n|1.05|1.03\n|1.02|1.01";
    assertEquals("1 A DATE B SG C SG", found("Date|Tank 1|Tank 2\n" + rows));
    assertEquals("1 A TEMP B SG C SG", found("Temp C|Tank 1|Tank 2\n" + rows));
    assertEquals("", found("Note|Tank 1|Tank 2\n" + rows));
    assertEquals("1 A DATE B SG C OTHER", found("Date|SG|Tank 2\n" + rows));
  }

  /** Original gravities of several batches rise and fall; those of one ferment only fall. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "1.085 1.075 1.06 1.05 1.03 1.01; 1 A DATE B SG",
        "1.085 1.075 1.0755 1.05 1.03 1.01; 1 A DATE B SG",
        "1.085 1.075 1.08 1.05 1.03 1.01; ''",
        "1.085 1.075 1.06 1.05 1.01; ''",
        "1.085 1.075 1.07 1.07 1.06 1.056; ''",
        "1.085 1.075 1.07 1.07 1.06 1.055; 1 A DATE B SG",
      })
  void originalGravitiesThatFallAsAFermentAreItsReadings(String values, String headers) {
    StringBuilder log = new StringBuilder("Date|OG");
    for (String value : values.split(" ")) {
      log.append("\n|" + value);
    }
    assertEquals(headers, found(log.toString()));
  }

  /** A header of gravity and temperature over pairs of both. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "1.052/15 1.04/16; true",
        "1.052_@_15_C 1.04_@_16_C; true",
        "1.052/15; false",
        "1.052/15 1.04; false",
        "1.052/15 1.04/16 1.03; false",
        "1.052/15 x 1.04/16; true",
      })
  void pairsOfReadingAndTemperature(String values, boolean pairs) {
    TestGrid grid = column("SG/Temp", values);
    Header.HeaderCell cell = HeaderWords.judge("SG/Temp");
    Header.HeaderCell at = new Header.HeaderCell(0, cell.text(), cell.meanings(), cell.role());
    assertEquals(pairs, new ReadingWithTemperature(grid).standBelow(0, at));
    Header.HeaderCell temperature = HeaderWords.judge("Temp");
    assertFalse(
        new ReadingWithTemperature(grid)
            .standBelow(
                0,
                new Header.HeaderCell(
                    0, temperature.text(), temperature.meanings(), temperature.role())));
  }
}
