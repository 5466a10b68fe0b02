package washbook.log.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.functions.scale.TemperatureUnit;
import washbook.log.LogColumn;
import washbook.log.LogSettings;
import washbook.log.LogTable;
import washbook.log.Role;
import washbook.log.language.Message;
import washbook.log.sheet.TestGrid;
import washbook.log.words.CellText;

/** The second number of {@code 1.052/15}: a temperature, and its unit by header or values. */
class TemperatureBesideReadingTest {
  private static LogColumn column(String header) {
    return new LogColumn(0, header, Role.GRAVITY, "SG", Message.NONE);
  }

  private static Optional<TemperatureUnit> unit(String header, String first, String second) {
    TestGrid grid = TestGrid.of("x", header + "\n1.080/" + first + "\n1.060/" + second);
    LogColumn column = column(header);
    LogTable table =
        new LogTable(
            0, 1, 2, 0, 0, List.of(column), List.of(), LogSettings.none(), List.of(), true);
    return TemperatureBesideReading.unit(grid, table, column);
  }

  /** Below 32 nothing is °F, above 60 nothing is °C: a wash would be frozen or dead. */
  @ParameterizedTest
  @CsvSource({
    "SG/°C, 70, 72, C",
    "SG/°F, 20, 22, F",
    "SG/temp, 20, 22, C",
    "SG/temp, 31.9, 60, C",
    "SG/temp, 32, 60, ",
    "SG/temp, 31.9, 61, ",
    "SG/temp, 61, 70, F",
    "SG/temp, 60, 70, ",
    "SG/temp, 40, 50, ",
  })
  void itsUnit(String header, String first, String second, TemperatureUnit unit) {
    assertEquals(Optional.ofNullable(unit), unit(header, first, second));
  }

  @ParameterizedTest
  @CsvSource({
    "SG, 1.052/15, false",
    "SG, 1.052 @ 15, true",
    "SG, 1.052 15°, true",
    "SG/temp, 1.052/15, true",
    "SG (°C), 1.052/15, true",
    "SG (°F), 1.052/60, true",
  })
  void isATemperatureWhereHeaderOrCellSaysSo(String header, String cell, boolean is) {
    CellText read = CellText.read(cell);
    assertEquals(CellText.Form.PAIR, read.form);
    assertEquals(is, TemperatureBesideReading.isTemperature(column(header), read));
  }
}
