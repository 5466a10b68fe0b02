package washbook.log.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.sheet.TestGrid;

/** Cells as people type them. */
class CellTextTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1.085 | VALUE | 1.085 | | NaN",
        "'1,085' | VALUE | 1.085 | | NaN",
        ".998 | VALUE | 0.998 | | NaN",
        "1.085 @ 68F | VALUE | 1.085 | | 68",
        "1.085@68°F | VALUE | 1.085 | | 68",
        "1.052 at 15°C | VALUE | 1.052 | | 15",
        "1,052 bei 15 °C | VALUE | 1.052 | | 15",
        "1.052 (15C) | VALUE | 1.052 | | 15",
        "1.052 SG at 15 C | VALUE | 1.052 | sg | 15",
        "1.052/15C | VALUE | 1.052 | | 15",
        "1.052/15 | PAIR | NaN | | 15",
        "1,084 a 19° | PAIR | NaN | | 19",
        "1084 / 19 | PAIR | NaN | | 19",
        "1/15 | OTHER | NaN | | NaN",
        "1.052/1.048 | OTHER | NaN | | NaN",
        "19 degrees | VALUE | 19 | | NaN",
        "23 degrees C | TEMPERATURE | NaN | | 23",
        "~1.05 | VALUE | 1.05 | | NaN",
        "ca. 1.05 | VALUE | 1.05 | | NaN",
        "12 °Bx | VALUE | 12 | bx | NaN",
        "-1.2 °Bx | VALUE | -1.2 | bx | NaN",
        "2 kg | VALUE | 2 | kg | NaN",
        "60 litres | VALUE | 60 | litres | NaN",
        "5 gal uk | VALUE | 5 | gal uk | NaN",
        "5 Imp gal | VALUE | 5 | imp gal | NaN",
        "5 gal of wash | OTHER | NaN | | NaN",
        "2 kg sugar | OTHER | NaN | | NaN",
        "'n/a|na' | OTHER | NaN | | NaN",
        "68F | TEMPERATURE | NaN | | 68",
        "20 °C | TEMPERATURE | NaN | | 20",
        "n/a | NOTHING | NaN | | NaN",
        "- | NOTHING | NaN | | NaN",
        "? | NOTHING | NaN | | NaN",
        "1.040-1.050 | OTHER | NaN | | NaN",
        "<1.000 | OTHER | NaN | | NaN",
        "cat 20 | OTHER | NaN | | NaN",
        "too much foam | OTHER | NaN | | NaN",
        "1.05 or so | OTHER | NaN | | NaN",
        "1.0.5 | OTHER | NaN | | NaN",
        ".998.5 | OTHER | NaN | | NaN",
        "1. | OTHER | NaN | | NaN",
        "'1.05, so' | OTHER | NaN | | NaN",
        "+0.002 | VALUE | 0.002 | | NaN",
        "23 deg. C | TEMPERATURE | NaN | | 23",
        "1.052 / 3 | PAIR | NaN | | 3",
        "1.052 / 2.9 | OTHER | NaN | | NaN",
        "1.052 / 140 | PAIR | NaN | | 140",
        "1.052 / 141 | OTHER | NaN | | NaN",
      })
  void reads(String text, CellText.Form form, double value, String unit, double temperature) {
    CellText cell = CellText.read(text);
    assertEquals(form, cell.form);
    if (form == CellText.Form.VALUE) {
      assertEquals(value, cell.value);
      assertEquals(unit == null ? "" : unit, cell.unit);
    }
    assertEquals(temperature, cell.temperature);
  }

  /** 32 °F is 0 °C and 212 °F is 100 °C by definition, so 68 °F is 20 °C. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "68F | 20",
        "68 degrees Fahrenheit | 20",
        "20 °C | 20",
        "20 celsius | 20",
        "1.085 @ 68F | 20",
        "1.085 @ 20C | 20",
        "1.085 | NaN",
      })
  void aTemperatureHasItsOwnUnit(String text, double celsius) {
    assertEquals(celsius, CellText.read(text).celsius(), 1e-12);
  }

  /** What follows is the state in which a reading was taken: a sign or a word says so. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1.052 @ 15 | true",
        "1.052 (@15) | true",
        "1.052 at 15 | true",
        "'1.052, at 15' | true",
        "1.052 15° | true",
        "1.052 15º | true",
        "1.052 15 degrees | true",
        "1.052/15 | false",
        "1.052 / 15 | false",
        "1.052 (15) | false",
      })
  void aSecondNumberIsMarked(String text, boolean marked) {
    CellText cell = CellText.read(text);
    assertEquals(CellText.Form.PAIR, cell.form);
    assertEquals(marked, cell.marked);
  }

  /** The number that counts in a column of numbers, and the one that stands in a line of notes. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1.085 | 1.085 | 1.085",
        "'1,085' | 1.085 | 1.085",
        "'1,052/15' | 1.052 | 1.052",
        "12 kg | NaN | 12",
        "1.052 SG at 15 | NaN | 1.052",
        "20 °C | NaN | 20",
        "n/a | NaN | NaN",
        "foam | NaN | NaN",
        "'' | NaN | NaN",
      })
  void aCellsNumberWithoutAndWithAUnit(String cell, double plain, double number) {
    TestGrid grid = TestGrid.of("x", cell);
    assertEquals(plain, CellText.plainNumber(grid, 0, 0));
    assertEquals(number, CellText.number(grid, 0, 0));
  }
}
