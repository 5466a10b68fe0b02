package washbook.log.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.sheet.TestGrid;
import washbook.log.words.Concept;

/** Lines above a table: a label and what it says, in one cell or in cells side by side. */
class KeyLinesTest {
  private static List<KeyLine> all(String text) {
    TestGrid grid = TestGrid.of("x", text);
    return new KeyLines(grid).find(0, grid.rowCount() - 1, 0, grid.columnCount() - 1);
  }

  /** Cells are separated by a bar; the first line read. */
  private static KeyLine line(String cells) {
    return all(cells.replace('^', '|')).get(0);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Volume: 25 L; VOLUME; 25; A1",
        "Volume = 25 L; VOLUME; 25; A1",
        "Volume 25 L; VOLUME; 25; A1",
        "Volume ^ 25 L; VOLUME; 25; B1",
        "Volume: ^ 25 L; VOLUME; 25; B1",
        "Volume ^ 25 ^ L; VOLUME; 25; B1",
        "Volume ^ ^ ^ 25; VOLUME; 25; D1",
        "OG: 1.085; ORIGINALGRAVITY; 1.085; A1",
        "Original gravity ^ 1.085; ORIGINALGRAVITY; 1.085; B1",
        "Original gravity: 1,085; ORIGINALGRAVITY; 1.085; A1",
        "Stammwürze: 20 °P; ORIGINALGRAVITY; 20; A1",
        "Refractometer factor: 1.04; FACTOR; 1.04; A1",
        "Hydrometer reads 1.002 in water; OFFSET; 0.002; A1",
        "Hydrometer error: 0.002; OFFSET; 0.002; A1",
        "All samples read at 20 C; TEMPERATURE; 20; A1",
      })
  void aLineSaysThis(String cells, Concept meaning, double value, String cell) {
    KeyLine line = line(cells);
    assertTrue(line.has(meaning), line.meanings().toString());
    assertEquals(value, line.value(), 1e-12);
    assertEquals(cell, line.cell());
    assertTrue(line.hasValue());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Volume ^ ^ ^ ^ 25",
        "Volume: a lot",
        "Volume",
      })
  void aLabelWithoutANumberNearItHasNone(String cells) {
    assertTrue(Double.isNaN(line(cells).value()));
  }

  /** UK and US gallons: Weights and Measures Act 1985 and NIST Handbook 44, Appendix C. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Volume: 25 L; 25",
        "Volume: 25000 ml; 25",
        "Volume: 5 gal uk; 22.73045",
        "Volume: 5 imp gal; 22.73045",
        "Volume: 5 us gal; 18.92705892",
        "Volume ^ 5 ^ uk gallons; 22.73045",
        "Volume (us gal): ^ 5; 18.92705892",
        "Volume: 5 gal; NaN",
        "Volume: 5; NaN",
      })
  void aVolumeInLitres(String cells, double litres) {
    assertEquals(litres, line(cells).litres(), 1e-12);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Temperature: 20 C; 20",
        "Temperature: 68 F; 20",
        "Temperature (C): ^ 40; 40",
        "Temperature (F): ^ 50; 10",
        "Temperature ^ 68 ^ °F; 20",
        "Temperature: 20; 20",
        "Temperature: 31.9; 31.9",
        "Temperature: 32; NaN",
        "Temperature: 60; NaN",
        "Temperature: 68; 20",
        "Temperature: warm; NaN",
      })
  void aTemperatureWhoseUnitIsStatedOrCanBeOnlyOne(String cells, double celsius) {
    assertEquals(celsius, line(cells).celsius(), 1e-12);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Calibration: 60 F",
        "Hydrometer calibrated at 20 C",
        "Hydrometer: 60 F",
        "Hydrometer ^ 60 F",
        "Spindel geeicht: 20 °C"
      })
  void aCalibration(String cells) {
    assertTrue(line(cells).isCalibration());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Hydrometer: glass 2",
        "Hydrometer temperature: 60 F",
        "Hydrometer, measured: 60 F",
        "Hydrometer corrected to 60 F",
        "Original hydrometer: 60 F",
        "Temperature: 60 F"
      })
  void noCalibration(String cells) {
    assertFalse(line(cells).isCalibration());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Readings corrected to 20 C",
        "Readings: corrected",
        "Corrected: yes",
        "All readings corrected"
      })
  void readingsAreCorrected(String cells) {
    assertTrue(line(cells).saysCorrected());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Readings: not corrected",
        "Readings not corrected",
        "Corrected: no",
        "Corrected?",
        "Correction factor corrected: 1.04",
        "Corrected alcohol: 9"
      })
  void readingsAreNotSaidToBeCorrected(String cells) {
    assertFalse(line(cells).saysCorrected());
  }

  @Test
  void oneCellMaySayMoreThanOneThing() {
    List<KeyLine> lines = all("Plum 3 (OG 1.098), volume 25 L; temperature 20 C");
    assertEquals(
        List.of(1.098, 25.0, 20.0),
        lines.stream().map(KeyLine::value).filter(v -> !Double.isNaN(v)).toList());
  }

  @Test
  void onlyTheSixtyRowsAboveATableAreRead() {
    assertEquals(1, all("Volume: 25 L" + "\n".repeat(60)).size());
    assertEquals(0, all("Volume: 25 L" + "\n".repeat(61)).size());
  }

  @Test
  void aLabelAfterAnotherLabelHasNoValueOfIts() {
    List<KeyLine> lines = all("Volume | Original gravity | 1.085");
    assertEquals("", lines.get(0).text().replace("Original gravity", ""));
    assertTrue(Double.isNaN(lines.get(0).value()));
    assertEquals(1.085, lines.get(1).value());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {"Batch: Plum 3; Plum 3", "Batch Plum 3; Plum 3", "Batch ^ Plum 3; Plum 3"})
  void aBatchIsNamed(String cells, String name) {
    KeyLine line = line(cells);
    assertEquals(EnumSet.of(Concept.BATCH), line.meanings());
    assertEquals(name, line.text());
  }
}
