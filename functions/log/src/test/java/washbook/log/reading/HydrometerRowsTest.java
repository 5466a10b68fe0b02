package washbook.log.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.Batch;
import washbook.log.LogColumn;
import washbook.log.LogSettings;
import washbook.log.LogSettings.SugarReadings;
import washbook.log.LogTable;
import washbook.log.OriginalGravity;
import washbook.log.Role;
import washbook.log.StatedWash;
import washbook.log.WritingWish;
import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.log.sheet.Grid;
import washbook.log.sheet.TestGrid;

/** What one row of a table is: a reading with its temperature, nothing, or why it is refused. */
class HydrometerRowsTest {
  private static LogSettings at(double temperatureC, boolean corrected) {
    return new LogSettings(
        temperatureC,
        Message.NONE,
        corrected,
        20,
        Message.NONE,
        0,
        1,
        Double.NaN,
        SugarReadings.TOLD_BY_RISE,
        StatedWash.none(),
        WritingWish.NONE);
  }

  private static HydrometerRows rows(Grid grid, LogSettings settings, LogColumn... columns) {
    return new HydrometerRows(
        grid,
        new LogTable(
            0,
            1,
            grid.rowCount() - 1,
            0,
            columns.length - 1,
            List.of(columns),
            List.of(),
            settings,
            List.of(),
            true));
  }

  private static LogColumn gravity(int column, String unit) {
    return new LogColumn(column, "Gravity", Role.GRAVITY, unit, Message.NONE);
  }

  private static LogColumn temperature(int column, String unit) {
    return new LogColumn(column, "Temp", Role.TEMPERATURE, unit, Message.NONE);
  }

  private static String outcome(HydrometerRows rows) {
    return switch (rows.read(1)) {
      case NOTHING -> "nothing";
      case READ -> String.format(Locale.ROOT, "%.4f at %.1f", rows.gravity, rows.temperatureC);
      case REFUSED -> rows.refusal.cell() + " " + rows.refusal.reason();
    };
  }

  private static String outcome(String row, String scale, String unit) {
    TestGrid grid = TestGrid.of("x", "Gravity | Temp\n" + row.replace('^', '|'));
    return outcome(rows(grid, LogSettings.none(), gravity(0, scale), temperature(1, unit)));
  }

  /** SG 0.970 to 1.190 at 0 to 60 °C, ends included, on whatever scale it is written. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0.97 ^ 20 | SG | C | 0.9700 at 20.0",
        "1.19 ^ 20 | SG | C | 1.1900 at 20.0",
        "970 ^ 20 | SG | C | 0.9700 at 20.0",
        "1190 ^ 20 | SG | C | 1.1900 at 20.0",
        "190 ^ 20 | POINTS | C | 1.1900 at 20.0",
        "38 ^ 20 | TWADDELL | C | 1.1900 at 20.0",
        "1.06 ^ 0 | SG | C | 1.0600 at 0.0",
        "1.06 ^ 60 | SG | C | 1.0600 at 60.0",
        "1.06 ^ 32 | SG | F | 1.0600 at 0.0",
        "1.06 ^ 140 | SG | F | 1.0600 at 60.0",
        "1.06 ^ 68 F | SG | C | 1.0600 at 20.0",
        "1.06 ^ 20 C | SG | F | 1.0600 at 20.0",
        "1.06 ^ ~20 | SG | C | 1.0600 at 20.0",
        "1.06 ^ ~68 | SG | F | 1.0600 at 20.0",
      })
  void aReadingIsReadToTheEndsOfItsRange(String row, String scale, String unit, String outcome) {
    assertEquals(outcome, outcome(row, scale, unit));
  }

  /** A unit of its own goes before the column's. ICUMSA SPS-4: 20 °Bx is SG 1.08292. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "-20 points ^ 20 | SG | 0.9800 at 20.0",
        "20 °Bx ^ 20 | SG | 1.0829 at 20.0",
        "20 °Bx ^ 20 | POINTS | 1.0829 at 20.0",
        "1.06 SG ^ 20 | BRIX | 1.0600 at 20.0",
        "250 points ^ 20 | SG | A2 reading '250 points' is too high; it must be -30 to 190 points.",
        "1.5 SG ^ 20 | BRIX | A2 reading '1.5 SG' is too high; it must be 0.97 to 1.19 SG.",
        "0 SG ^ 20 | BRIX | nothing",
        "1.5 ^ 20 | GCM3 | A2 reading 1.5 is too high; it must be 0.969 to 1.187 g/cm³.",
        "0.5 ^ 20 | GCM3 | A2 reading 0.5 is too low; it must be 0.969 to 1.187 g/cm³.",
      })
  void aReadingMayHaveItsOwnUnit(String row, String scale, String outcome) {
    assertEquals(outcome, outcome(row, scale, "C"));
  }

  /** What stands with the reading goes before the column, and that before one stated for all. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1.06 @ 68F ^ 25 | 1.0600 at 20.0",
        "1.06 ^ 25 | 1.0600 at 25.0",
        "1.06 ^ | 1.0600 at 18.0",
        "1.06 ^ - | 1.0600 at 18.0",
      })
  void theNearestTemperatureHolds(String row, String outcome) {
    TestGrid grid = TestGrid.of("x", "Gravity | Temp\n" + row.replace('^', '|'));
    assertEquals(outcome, outcome(rows(grid, at(18, false), gravity(0, "SG"), temperature(1, ""))));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1.06 | 18 | 1.0600 at 18.0",
        "1.06 @ 68F | 18 | 1.0600 at 20.0",
        "1.06 | 60.5 | A2 temperature 60.5 °C is too high; it must be 0 to 60 °C.",
        "1.06 | -1 | A2 temperature -1 °C is too low; it must be 0 to 60 °C.",
        "1.06 @ 141F | 18 | A2 the temperature in '1.06 @ 141F' is too high; it must be 32 to 140"
            + " °F.",
        "1.06 @ 31F | 18 | A2 the temperature in '1.06 @ 31F' is too low; it must be 32 to 140 °F.",
        "1.06 @ 61C | 18 | A2 the temperature in '1.06 @ 61C' is too high; it must be 0 to 60 °C.",
        "1.06 | NaN | A2 temperature is blank; it must be 0 to 60 °C, or the log must say that its"
            + " readings are corrected.",
      })
  void withoutAColumnOneTemperatureHoldsForAll(String cell, double stated, String outcome) {
    TestGrid grid = TestGrid.of("x", "Gravity\n" + cell);
    assertEquals(outcome, outcome(rows(grid, at(stated, false), gravity(0, "SG"))));
  }

  @Test
  void aStatedTemperatureOutsideTheRangeIsAskedForInItsOwnColumn() {
    TestGrid grid = TestGrid.of("x", "Gravity | Temp\n1.06 |");
    assertEquals(
        "B2 temperature 60.5 °C is too high; it must be 0 to 60 °C.",
        outcome(rows(grid, at(60.5, false), gravity(0, "SG"), temperature(1, "C"))));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "65 | A2 temperature 65 °C is too high; it must be 0 to 60 °C.",
        "65 C | A2 temperature '65 C' is too high; it must be 0 to 60 °C.",
        "150 F | A2 temperature '150 F' is too high; it must be 32 to 140 °F.",
        "20 | 1.0600 at 20.0",
      })
  void theTemperatureMayStandInTheFirstColumn(String cell, String outcome) {
    TestGrid grid = TestGrid.of("x", "Temp | Gravity\n" + cell + " | 1.06");
    assertEquals(
        outcome, outcome(rows(grid, LogSettings.none(), temperature(0, "C"), gravity(1, "SG"))));
  }

  @ParameterizedTest
  @EnumSource(names = {"LOGICAL", "ERROR"})
  void anErrorOrATruthValueIsNoReadingAndNoTemperature(Grid.Kind kind) {
    TestGrid grid = TestGrid.of("x", "Gravity | Temp\n1.06 | 20");
    LogColumn[] columns = {gravity(0, "SG"), temperature(1, "C")};
    assertEquals(
        "A2 reading is an error or a truth value; it must be 0.97 to 1.19 SG.",
        outcome(rows(TestGrid.copyWith(grid, 1, 0, kind), LogSettings.none(), columns)));
    assertEquals(
        "B2 temperature is a date, an error or a truth value; it must be 0 to 60 °C.",
        outcome(rows(TestGrid.copyWith(grid, 1, 1, kind), LogSettings.none(), columns)));
  }

  /** Corrected readings need no thermometer; what it showed is still told. */
  @Test
  void aCorrectedReadingHasTheTemperatureThatItWasCorrectedTo() {
    TestGrid grid = TestGrid.of("x", "Gravity | Temp\n1.06 | 31\n1.05 | warm\n1.04 |");
    HydrometerRows rows = rows(grid, at(20, true), gravity(0, "SG"), temperature(1, "C"));
    assertEquals("1.0600 at 20.0", outcome(rows));
    assertEquals(31, rows.measuredC(1));
    assertEquals(HydrometerRows.State.READ, rows.read(2));
    assertTrue(Double.isNaN(rows.measuredC(2)));
    assertEquals(null, rows.refusal);
    assertTrue(Double.isNaN(rows.measuredC(3)));
  }

  /** A total stands where other rows have their date; a note says nothing about a reading. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "DATE | Average | B2 the row is called 'Average', but its reading is not what sums up those"
            + " above; it needs a date or day to be a reading.",
        "DAY | Mean | B2 the row is called 'Mean', but its reading is not what sums up those above;"
            + " it needs a date or day to be a reading.",
        "DATE | 3 Mar, mean | 1.0600 at 20.0",
        "DATE | racked | 1.0600 at 20.0",
        "DATE |  | 1.0600 at 20.0",
        "NOTE | Average | 1.0600 at 20.0",
      })
  void aWordForATotalIsNoDate(Role role, String label, String outcome) {
    TestGrid grid = TestGrid.of("x", "x | SG\n" + (label == null ? "" : label) + " | 1.06");
    LogColumn first = new LogColumn(0, "x", role, "", Message.NONE);
    assertEquals(outcome, outcome(rows(grid, at(20, false), first, gravity(1, "SG"))));
  }

  private static HydrometerRows refractometer(double originalBrix, String... cells) {
    TestGrid grid = TestGrid.of("x", "SG | Refractometer\n| " + String.join("\n| ", cells));
    LogColumn column = new LogColumn(1, "Refractometer", Role.REFRACTOMETER, "BRIX", Message.NONE);
    HydrometerRows rows = rows(grid, at(20, false), gravity(0, "SG"), column);
    rows.begin(
        new Batch(
            "Plum 3",
            new int[] {1},
            new OriginalGravity.FirstReading(1.083, "B2", 1),
            OptionalDouble.of(originalBrix)));
    return rows;
  }

  @Test
  void theRefractometerIsReadWhereTheHydrometerWasNot() {
    HydrometerRows rows = refractometer(20, "15", "");
    assertTrue(rows.hasRefractometer());
    assertEquals(HydrometerRows.State.READ, rows.read(1));
    assertTrue(rows.byRefractometer());
    assertEquals("B2", rows.cell(1));
    assertEquals(HydrometerRows.State.NOTHING, rows.read(2));
    assertFalse(rows.byRefractometer());
  }

  /** ICUMSA SPS-4: SG 1.08292 at 20 °Bx; up to 0.002 SG above it is the same wash read again. */
  @ParameterizedTest
  @CsvSource({"20.1, true", "20.4, true", "20.6, false", "20, false", "19.9, false"})
  void aRefractometersReadingALittleAboveTheFirstIsNoFermentYet(double brix, boolean same) {
    HydrometerRows rows = refractometer(20, Double.toString(brix));
    assertEquals(HydrometerRows.State.READ, rows.read(1));
    assertEquals(same, !Double.isNaN(rows.beforeFerment(1.08292)));
  }

  @Test
  void aReadingLikeTheOriginalGravityIsNotAboveIt() {
    TestGrid grid = TestGrid.of("x", "SG\n1.085\n1.087\n1.0871");
    HydrometerRows rows = rows(grid, at(20, false), gravity(0, "SG"));
    rows.read(1);
    double original = rows.asSugarSolution();
    assertEquals(1.085, original, 1e-9);
    assertTrue(Double.isNaN(rows.beforeFerment(original)));
    rows.read(2);
    assertEquals(1.087, rows.beforeFerment(original), 1e-9);
    rows.read(3);
    assertTrue(Double.isNaN(rows.beforeFerment(original)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "25 | refractometer reading 25 does not go with the original reading 20 °Bx; it must be"
            + " below it, or sugar was added.",
        "1 | refractometer reading 1 does not go with the original reading 20 °Bx; it must be above"
            + " what the wash can ferment to.",
      })
  void aRefractometersReadingMustGoWithTheOriginalOne(String cell, String reason) {
    HydrometerRows rows = refractometer(20, cell);
    rows.read(1);
    assertEquals("B2", rows.contradiction(1, 1.083).cell());
    assertEquals(reason, rows.contradiction(1, 1.083).reason());
    assertFalse(rows.asWash(20) >= 0.97 && rows.asWash(20) <= 1.19);
  }

  /** A gravity and a difference of gravities as the log's own figures show them. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "SG | 1.06 | 1.0850 | 0.002 SG",
        "SG | 1060 | 1085.0 | 2",
        "POINTS | 60 | 85.0 points | 2 points",
        "OECHSLE | 60 | 85.0 °Oe | 2 °Oe",
        "GCM3 | 1.06 | 1.0831 g/cm³ | 0 g/cm³",
      })
  void aGravityIsShownOnTheLogsOwnScale(String scale, String cell, String shown, String change) {
    TestGrid grid = TestGrid.of("x", "Gravity\n" + cell);
    HydrometerRows rows = rows(grid, at(20, false), gravity(0, scale));
    assertEquals(shown, rows.shown(1.085).in(Language.EN));
    assertEquals(change, rows.shownDifference(0.002).in(Language.EN));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "C"})
  void aColumnOfTemperaturesIsInDegreesCelsiusUnlessItSaysOtherwise(String unit) {
    assertEquals("C", HydrometerRows.unitOf(temperature(0, unit)).name());
    assertEquals("F", HydrometerRows.unitOf(temperature(0, "F")).name());
    assertEquals("C", HydrometerRows.unitOf(null).name());
  }
}
