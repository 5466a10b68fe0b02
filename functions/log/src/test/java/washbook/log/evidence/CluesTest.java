package washbook.log.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.Batch;
import washbook.log.LogColumn;
import washbook.log.LogSettings;
import washbook.log.LogTable;
import washbook.log.OriginalGravity;
import washbook.log.Role;
import washbook.log.language.Message;
import washbook.log.sheet.TestGrid;

/** What each clue is told by, alone, and what follows from it. */
class CluesTest {
  private static final String BEGUN = "0|1.05|20\n1|1.049|20\n2|1.048|20";
  private static final String FALLS = "0|1.085|20\n2|1.06|20\n5|1.03|20\n8|1.01|20\n9|1.005|20";
  private static final String STAYS = "0|1.05|20\n1|1.05|20\n2|1.05|20\n3|1.05|20\n4|1.05|20";

  private static final LogColumn DAY = column(0, "Day", Role.DAY, "");
  private static final LogColumn DENSITY = column(1, "Density", Role.GRAVITY, "SG");
  private static final LogColumn WARMTH = column(2, "Temp", Role.TEMPERATURE, "C");

  private static LogColumn column(int column, String header, Role role, String unit) {
    return new LogColumn(column, header, role, unit, Message.NONE);
  }

  /** A table with its header in the last but so many rows of a sheet. */
  private static LogTable table(int headerRow, int rows, List<Batch> batches, LogColumn... more) {
    List<LogColumn> columns = new ArrayList<>(List.of(more));
    int last = columns.stream().mapToInt(LogColumn::column).max().orElseThrow();
    return new LogTable(
        headerRow,
        headerRow + 1,
        headerRow + rows,
        0,
        last,
        columns,
        batches,
        LogSettings.none(),
        List.of(),
        true);
  }

  private static Evidence evidence(String sheet, String above, String rows, LogColumn... columns) {
    int lines = above.isEmpty() ? 0 : above.split("\n").length;
    TestGrid grid =
        TestGrid.of(sheet, (above.isEmpty() ? "" : above + "\n") + "Day|Density|Temp\n" + rows);
    LogTable table = table(lines, rows.split("\n").length, List.of(), columns);
    return Evidence.of(grid, table, 0, lines, List.of());
  }

  private static Evidence plain(String sheet, String above, String rows) {
    return evidence(sheet, above, rows, DAY, DENSITY, WARMTH);
  }

  private static void says(Evidence evidence, boolean against, String clue, String verdict) {
    assertEquals(Evidence.Verdict.valueOf(verdict), evidence.verdict(), clue);
    assertEquals(
        clue.equals("-") ? Message.NONE.key() : "clue." + clue, evidence.mostly(against).key());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Sheet1; ''; COURSE; FERMENT",
        "Sheet1; Must, tank 4; TRADE_WORD; FERMENT",
        "Must; ''; TRADE_WORD; FERMENT",
        "Plum 3; ''; COURSE; FERMENT",
      })
  void whatSpeaksForAFermentWithACourse(String sheet, String above, String clue, String verdict) {
    says(plain(sheet, above, FALLS), false, clue, verdict);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Sheet1; ''; BEGUN; OPEN",
        "Plum 3; ''; NAMED_BATCH; FERMENT",
        "Sheet1; Must, tank 4; TRADE_WORD; FERMENT",
        "Sheet1; Brine; BEGUN; OTHER",
      })
  void whatSpeaksForAFermentThatHasBegun(String sheet, String above, String clue, String verdict) {
    says(plain(sheet, above, BEGUN), false, clue, verdict);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Sheet1; Brine; OTHER_WORD; OTHER",
        "Brine; ''; OTHER_SHEET; OTHER",
        "Sheet1; ''; -; FERMENT",
      })
  void whatSpeaksAgainstOneWithACourse(String sheet, String above, String clue, String verdict) {
    says(plain(sheet, above, FALLS), true, clue, verdict);
  }

  @Test
  void wordsBelowTheTopAndAboveTheSearchedRowsDoNotCount() {
    TestGrid grid = TestGrid.of("Sheet1", "Must, tank 4\n\nDay|Density|Temp\n" + BEGUN);
    LogTable table = table(2, 3, List.of(), DAY, DENSITY, WARMTH);
    says(Evidence.of(grid, table, 0, 2, List.of()), false, "TRADE_WORD", "FERMENT");
    says(Evidence.of(grid, table, 1, 2, List.of()), false, "BEGUN", "OPEN");
    TestGrid beside = TestGrid.of("Sheet1", "|||Must\n\nDay|Density|Temp\n" + BEGUN);
    says(Evidence.of(beside, table, 0, 2, List.of()), false, "BEGUN", "OPEN");
  }

  @ParameterizedTest
  @CsvSource({
    "ORIGINAL_GRAVITY, OWN_FIGURES",
    "OWN_ABV, OWN_FIGURES",
    "OWN_APPARENT_ATTENUATION, OWN_FIGURES",
    "OWN_REAL_ATTENUATION, OWN_FIGURES",
    "SUGAR_ADDED, SUGAR_ADDED",
  })
  void aColumnThatOnlyAFermentHas(Role role, String clue) {
    says(
        evidence("Sheet1", "", STAYS, DAY, DENSITY, column(2, "x", role, "")),
        false,
        clue,
        "FERMENT");
  }

  @Test
  void aStatedOriginalGravityIsAFigureOfAFerment() {
    TestGrid grid = TestGrid.of("Sheet1", "Day|Density|Temp\n" + STAYS);
    int[] rows = IntStream.rangeClosed(1, 5).toArray();
    Batch stated =
        new Batch(
            "x",
            rows,
            new OriginalGravity.Stated(1.06, "A1", Message.NONE, Optional.empty()),
            OptionalDouble.empty());
    LogTable table = table(0, 5, List.of(stated), DAY, DENSITY, WARMTH);
    says(Evidence.of(grid, table, 0, 0, List.of()), false, "OWN_FIGURES", "FERMENT");
  }

  @ParameterizedTest
  @CsvSource({
    "pitched yeast, NOTED_WORD, FERMENT",
    "added 1 kg sugar, SUGAR_ADDED, FERMENT",
    "cold night, BEGUN, OPEN"
  })
  void notesInRowsSpeakToo(String note, String clue, String verdict) {
    LogColumn notes = column(3, "Note", Role.NOTE, "");
    String first = BEGUN.replaceFirst("20", "20|" + note);
    says(evidence("Sheet1", "", first, DAY, DENSITY, WARMTH, notes), false, clue, verdict);
    String last = BEGUN + "|" + note;
    says(evidence("Sheet1", "", last, DAY, DENSITY, WARMTH, notes), false, clue, verdict);
    LogColumn other = column(3, "Note", Role.OTHER, "");
    says(evidence("Sheet1", "", last, DAY, DENSITY, WARMTH, other), false, "BEGUN", "OPEN");
  }

  @ParameterizedTest
  @CsvSource({
    "Hydrometer, SG, FERMENT",
    "Brix, BRIX, FERMENT",
    "Potential alcohol, SG, FERMENT",
    "Refractometer, BRIX, FERMENT",
    "Density kg/m3, SG, OPEN",
    "Density, SG, OPEN",
  })
  void aScaleOfTheTradeIsALittle(String header, String unit, String verdict) {
    String rows = unit.equals("BRIX") ? "0|12|20\n1|11.9|20\n2|11.8|20" : BEGUN;
    says(
        evidence("Sheet1", "", rows, DAY, column(1, header, Role.GRAVITY, unit), WARMTH),
        false,
        "BEGUN",
        verdict);
  }

  @Test
  void anotherTableOfTheSheetWithTheSameHeadersIsOne() {
    TestGrid grid = TestGrid.of("Sheet1", "Day|Density|Temp\n" + STAYS);
    LogTable table = table(0, 5, List.of(), DAY, DENSITY, WARMTH);
    LogTable other = table(0, 5, List.of(), DAY, DENSITY, column(2, "Heat", Role.OTHER, ""));
    says(Evidence.of(grid, table, 0, 0, List.of(table)), false, "SIBLING", "FERMENT");
    says(Evidence.of(grid, table, 0, 0, List.of(other)), false, "BEGUN", "OPEN");
  }

  /** Rows of a table and the course that they show. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      nullValues = "none",
      value = {
        "0|1.06|20,1|1.039|20; SHORT_FALL; none; FERMENT",
        "0|1.06|20,9|1.07|20,12|1.08|20,15|1.09|20; none; RISES; OTHER",
        "0|1.05|20,1|1.05|20,2|1.05|20,3|1.05|20,4|1.05|20,5|1.05|20; none; OTHER_COURSE; OTHER",
        "0|0.998|20,1|0.997|20; none; FINISHED; OTHER",
        "0|1.3|20,1|1.3|20,2|1.3|20; none; OTHER_WORLD; OTHER",
      })
  void theCourseSpeaks(String rows, String speaksFor, String against, String verdict) {
    Evidence evidence = plain("Sheet1", "", rows.replace(',', '\n'));
    says(evidence, false, speaksFor == null ? "-" : speaksFor, verdict);
    says(evidence, true, against == null ? "-" : against, verdict);
  }

  @Test
  void anUndatedRiseMayBeAListWithTheNewestOnTop() {
    String rises = "0|1.06|20\n0|1.07|20\n0|1.08|20\n0|1.09|20";
    assertEquals(
        false, plain("Sheet1", "", rises).mostly(true).key().equals("clue.RISES"), "not dated");
  }

  @Test
  void oneReadingOfManyNamesIsNoCourse() {
    TestGrid grid = TestGrid.of("Sheet1", "Day|Density|Temp\n" + FALLS);
    List<Batch> batches = new ArrayList<>();
    for (int row = 1; row <= 3; row++) {
      batches.add(Batch.unknown("lot " + row, new int[] {row}, "B2", Message.NONE));
    }
    LogTable table = table(0, 5, batches, DAY, DENSITY, WARMTH);
    says(Evidence.of(grid, table, 0, 0, List.of()), true, "ONE_EACH", "OTHER");
  }

  /** What is warmer or colder than any ferment in most rows is something else. */
  @ParameterizedTest
  @CsvSource({
    "72, C, OTHER_WORLD",
    "72, F, -",
    "47, C, OTHER_WORLD",
    "46, C, -",
    "-4, C, OTHER_WORLD",
    "-3, C, -",
    "162, F, OTHER_WORLD",
    "72, '', -",
  })
  void temperaturesThatNoFermentHas(String value, String unit, String against) {
    String rows = FALLS.replace("|20", "|" + value);
    Evidence evidence =
        evidence("Sheet1", "", rows, DAY, DENSITY, column(2, "Temp", Role.TEMPERATURE, unit));
    assertEquals(
        against.equals("-") ? Message.NONE.key() : "clue." + against, evidence.mostly(true).key());
  }

  @Test
  void aFewHotReadingsAreSlips() {
    String two = "0|1.085|72\n2|1.06|72\n5|1.03|20\n8|1.01|20\n9|1.005|";
    says(plain("Sheet1", "", two), true, "-", "FERMENT");
    says(plain("Sheet1", "", two.replace("|1.03|20", "|1.03|72")), true, "OTHER_WORLD", "OTHER");
  }

  /** A reading is known roughly even where its scale is not settled. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "SG; 1085,1060,1030,1010,1005",
        "''; 1.085,1.06,1.03,1.01,1.005",
        "GCM3; 1.083,1.058,1.028,1.008,1.003",
        "BRIX; 20.5,15,7.5,2.6,1.3",
        "''; 20.5,15,7.5,2.6,1.3",
        "OECHSLE; 85,60,30,10,5",
        "''; 85,60,45,42,41",
      })
  void aCourseIsSeenOnEveryScale(String unit, String readings) {
    StringBuilder rows = new StringBuilder();
    String[] values = readings.split(",");
    for (int i = 0; i < values.length; i++) {
      rows.append((i == 0 ? "" : "\n") + 2 * i + "|" + values[i] + "|20");
    }
    Evidence evidence =
        evidence(
            "Sheet1",
            "",
            rows.toString(),
            DAY,
            column(1, "Density", Role.GRAVITY, unit.strip()),
            WARMTH);
    assertEquals("clue.COURSE", evidence.mostly(false).key());
  }

  /** No wash ferments within hours; a word of the trade says that it is one all the same. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      nullValues = "none",
      value = {
        "TIME; 0.3,0.35,0.4,0.5,0.6; none",
        "TIME; 0.3,0.9,0.3,0.9,0.3; COURSE",
        "TIME; 8:00,9:00,10:00,11:00,12:00; none",
        "TIME; 8:00,20:00,8:00,20:00,8:00; COURSE",
      })
  void withinADayNothingFerments(Role role, String times, String clue) {
    String[] at = times.split(",");
    String[] gravity = {"1.085", "1.06", "1.03", "1.01", "1.005"};
    StringBuilder rows = new StringBuilder();
    for (int i = 0; i < at.length; i++) {
      rows.append((i == 0 ? "" : "\n") + at[i] + "|" + gravity[i] + "|20");
    }
    LogColumn time = column(0, "Time", role, "");
    Evidence evidence = evidence("Sheet1", "", rows.toString(), time, DENSITY, WARMTH);
    assertEquals(clue == null ? Message.NONE.key() : "clue." + clue, evidence.mostly(false).key());
    Evidence named = evidence("Sheet1", "Must, tank 4", rows.toString(), time, DENSITY, WARMTH);
    assertEquals(Evidence.Verdict.FERMENT, named.verdict());
  }

  @ParameterizedTest
  @CsvSource({"0.1, none", "0.2, COURSE"})
  void datesWithAClockTellWhetherItIsADay(double apart, String clue) {
    String[] gravity = {"1.085", "1.06", "1.03", "1.01", "1.005"};
    StringBuilder rows = new StringBuilder();
    for (int i = 0; i < gravity.length; i++) {
      rows.append((i == 0 ? "" : "\n") + i * 24 * apart + "|" + gravity[i] + "|20|");
    }
    LogColumn hours = column(0, "Hours", Role.HOURS, "");
    LogColumn clock = column(3, "Time", Role.TIME, "");
    Evidence evidence = evidence("Sheet1", "", rows.toString(), hours, DENSITY, WARMTH, clock);
    assertEquals(
        clue.equals("none") ? Message.NONE.key() : "clue." + clue, evidence.mostly(false).key());
  }

  @Test
  void columnsBehindAGapBelongToAnotherList() {
    LogColumn brine = column(4, "Brine tank", Role.OTHER, "");
    LogColumn beside = column(3, "Brine tank", Role.OTHER, "");
    says(evidence("Sheet1", "", FALLS, DAY, DENSITY, WARMTH, beside), true, "OTHER_WORD", "OTHER");
    says(evidence("Sheet1", "", FALLS, DAY, DENSITY, WARMTH, brine), true, "-", "FERMENT");
    LogColumn ours = column(3, "Brine tank", Role.COMPUTED, "");
    says(evidence("Sheet1", "", FALLS, DAY, DENSITY, WARMTH, ours), true, "-", "FERMENT");
  }

  @Test
  void readingsCalledThoseOfAnotherLiquidAreThoseOfAnotherLiquid() {
    LogColumn brine = column(1, "Brine SG", Role.GRAVITY, "SG");
    says(evidence("Sheet1", "", FALLS, DAY, brine, WARMTH), true, "OTHER_READING", "OTHER");
  }
}
