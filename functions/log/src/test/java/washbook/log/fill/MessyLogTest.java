package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static washbook.log.fill.SimpleLogTest.calc;
import static washbook.log.fill.SimpleLogTest.fill;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import washbook.functions.Answer;
import washbook.log.Batch;
import washbook.log.LogTable;
import washbook.log.Role;
import washbook.log.Understanding;
import washbook.log.sheet.CellRefusal;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.Grid;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Logs typed the way people keep them. */
class MessyLogTest {
  private static Understanding read(TestGrid grid) {
    return SheetUnderstanding.understand(grid, LogMap.none());
  }

  private static Filling filling(TestGrid grid) {
    return LogFiller.fill(grid, read(grid), FillOptions.usual());
  }

  /** Written by hand: title, blank rows, half the cells as text, dates in two ways. */
  private static final TestGrid CELLAR_BOOK =
      TestGrid.of(
          "Molasses 2",
          """
          MOLASSES no. 2 - second attempt!!
          |
          hydrometer is a 60F one
          | When | Hydrometer | temp | what happened
          | 3/12/2024 | 1.085 @ 68F | | in the barrel
          | 5/12/2024 | '1,071 | 73 |
          |
          | 14/12/2024 | ~1.05 | 75 F | smells of bread
          | 16/12/2024 | - | | forgot
          | 17/12/2024 | n/a | 70 |
          | 20/12/2024 | 1,031 (22C) | |
          | | 1012 | 71 | second reading that day
          | 2/1/2025 | too much foam | 66 |
          | 9/1/2025 | 1.003 | 64 | done?
          | | | |
          | average | 1.04 | 70 |\
          """);

  @Test
  void readsAHandWrittenPage() {
    Understanding understood = read(CELLAR_BOOK);
    assertEquals(List.of(), understood.doubts());
    LogTable table = understood.tables().get(0);
    assertEquals("B4:E14", table.range());
    assertEquals(140.0 / 9, table.settings().calibrationC(), 1e-12);
    assertEquals("F", table.column(Role.TEMPERATURE).orElseThrow().unit());
    Filling filling = filling(CELLAR_BOOK);
    assertEquals(2, filling.refusals().size());
    CellRefusal about = filling.refusals().get(0);
    assertEquals("C8", about.cell());
    assertTrue(about.reason().contains("only about right"), about.reason());
    CellRefusal refusal = filling.refusals().get(1);
    assertEquals("C13", refusal.cell());
    assertEquals(Answer.Code.NOT_A_NUMBER, refusal.code());
    assertTrue(refusal.reason().contains("too much foam"), refusal.reason());
    assertTrue(refusal.reason().contains("0.97 to 1.19 SG"), refusal.reason());
    TestGrid filled = CELLAR_BOOK.with(filling.patch());
    double cal = 140.0 / 9;
    double original = calc("CORRECTEDGRAVITY", 1.085, calc("CONVERT", 68.0, "F", "C"), cal);
    assertEquals(original, filled.number(4, 5));
    double warm = calc("CORRECTEDGRAVITY", 1.031, 22.0, cal, original);
    assertEquals(warm, filled.number(10, 5));
    assertEquals(calc("ABV", original, warm), filled.number(10, 6));
    double last = calc("CORRECTEDGRAVITY", 1.012, calc("CONVERT", 71.0, "F", "C"), cal, original);
    assertEquals(last, filled.number(11, 5));
    assertEquals(filled.all(), fill(filled).all());
  }

  @Test
  void putsColumnsOfTablesSideBySideWhereTheyCannotBeConfused() {
    TestGrid grid =
        TestGrid.of(
            "Both",
            """
            Plum 3 | | | | Sugar 4
            Date | SG | Temp C | | Date | SG | Temp C
            #2025-01-01 | 1.085 | 20 | | #2025-01-01 | 1.090 | 25
            #2025-01-05 | 1.040 | 21 | | #2025-01-04 | 1.030 |
            #2025-01-09 | 1.010 | 21 | | #2025-01-09 | 0.995 | 25\
            """);
    Understanding understood = read(grid);
    assertEquals(2, understood.tables().size());
    Filling filling = filling(grid);
    List<ColumnPatch> patches = filling.patch().columns();
    assertEquals(
        List.of(
            "Corrected gravity (SG, Washbook), Plum 3",
            "Corrected gravity (SG, Washbook), Sugar 4"),
        patches.stream()
            .map(ColumnPatch::header)
            .filter(h -> h.startsWith("Corrected gravity"))
            .toList());
    TestGrid filled = grid.with(filling.patch());
    for (int row = 0; row < 5; row++) {
      for (int column = 0; column < 7; column++) {
        assertEquals(grid.at(row, column), filled.at(row, column));
      }
    }
    TestGrid again = fill(filled);
    assertEquals(filled.all(), again.all());
    assertEquals("Washbook note, Sugar 4", noteHeader(filled));
  }

  private static String noteHeader(TestGrid grid) {
    for (int column = 0; column < grid.columnCount(); column++) {
      if (grid.text(1, column).startsWith("Washbook note")) {
        return grid.text(1, column);
      }
    }
    return "";
  }

  @Test
  void aNoteColumnStaysWhenItsReasonIsGone() {
    TestGrid grid =
        TestGrid.of(
            "Plum 3",
            """
            Day | SG | Temp C
            0 | 1.085 | 20
            1 | 1.070 |
            2 | 1.060 | 20\
            """);
    TestGrid filled = fill(grid);
    assertTrue(filled.text(2, 7).startsWith("C3: temperature is blank"), filled.text(2, 7));
    TestGrid mended = TestGrid.copyWith(filled, 2, 2, 21.0);
    TestGrid again = fill(mended);
    assertEquals("Washbook note", again.text(0, 7));
    assertEquals(Grid.Kind.BLANK, again.kind(2, 7));
    assertEquals(
        calc("CORRECTEDGRAVITY", 1.070, 21.0, 20.0, calc("CORRECTEDGRAVITY", 1.085, 20.0)),
        again.number(2, 3));
    assertEquals(again.all(), fill(again).all());
  }

  @Test
  void readsStackedTablesWithTheirKeyLinesAndMergedHeaders() {
    TestGrid grid =
        TestGrid.of(
                "Winter",
                """
                Batch: Plum 3
                OG | 1.086
                Date | Hydrometer | | Notes
                | SG | °C |
                #2025-01-01 | 1.080 | 21 |
                #2025-01-04 | 1.050 | 22 | racked
                |
                Batch: Apple 7
                OG | 1.052
                Date | Hydrometer | | Notes
                | SG | °C |
                #2025-01-02 | 1.050 | 15 |
                #2025-01-09 | 1.020 | 16 |\
                """)
            .merge(2, 1, 2, 2)
            .merge(9, 1, 9, 2);
    Understanding understood = read(grid);
    assertEquals(List.of(), understood.doubts());
    assertEquals(2, understood.tables().size());
    Batch plum = understood.tables().get(0).batches().get(0);
    Batch apple = understood.tables().get(1).batches().get(0);
    assertEquals("Plum 3", plum.name());
    assertEquals(1.086, plum.originalGravity().orElseThrow());
    assertEquals("B2", plum.original().cell());
    assertEquals("Apple 7", apple.name());
    assertEquals(1.052, apple.originalGravity().orElseThrow());
    assertEquals(4, understood.tables().get(0).firstRow());
    assertEquals(5, understood.tables().get(0).lastRow());
    assertEquals("C", understood.tables().get(0).column(Role.TEMPERATURE).orElseThrow().unit());
  }

  @Test
  void sortsTextDatesByTheOrderThatTheColumnShows() {
    TestGrid grid =
        TestGrid.of(
            "Apple 7",
            """
            Date | SG | Temp C
            11/09/2024 | 1.020 | 18
            11/02/2024 | 1.050 | 18
            11/20/2024 | 1.002 | 18
            11/05/2024 | 1.038 | 18\
            """);
    Batch batch = read(grid).tables().get(0).batches().get(0);
    assertEquals(List.of(2, 4, 1, 3), Arrays.stream(batch.rows()).boxed().toList());
    assertEquals("B3", batch.original().cell());
  }

  @Test
  void asksInsteadOfGuessing() {
    TestGrid twoReadings =
        TestGrid.of(
            "x",
            """
            Date | SG | SG | Temp C
            #2025-01-01 | 1.085 | 1.070 | 20
            #2025-01-02 | 1.080 | 1.060 | 20\
            """);
    assertFalse(read(twoReadings).tables().get(0).settled());
    assertEquals("C1", read(twoReadings).doubts().get(0).cell());
    assertEquals(List.of(), filling(twoReadings).patch().columns());
    TestGrid eitherUnit =
        TestGrid.of(
            "x",
            """
            Date | SG | Temp
            #2025-01-01 | 1.085 | 50
            #2025-01-02 | 1.080 | 48\
            """);
    assertFalse(read(eitherUnit).tables().get(0).settled());
    TestGrid headerAgainstValues =
        TestGrid.of(
            "x",
            """
            Date | Brix | Temp C
            #2025-01-01 | 1.085 | 20
            #2025-01-02 | 1.080 | 20
            #2025-01-03 | 1.070 | 20\
            """);
    assertFalse(read(headerAgainstValues).tables().get(0).settled());
  }

  @Test
  void theSameReadingOnTwoScalesIsOneReading() {
    TestGrid grid =
        TestGrid.of(
            "x",
            """
            Date | Brix | SG | Temp C
            #2025-01-01 | 20.4 | 1.085 | 20
            #2025-01-02 | 14.7 | 1.060 | 20\
            """);
    LogTable table = read(grid).tables().get(0);
    assertTrue(table.settled());
    assertEquals(1, table.columns().stream().filter(c -> c.role() == Role.GRAVITY).count());
  }

  @Test
  void aFirstReadingWithoutTemperatureLeavesTheBatchOpen() {
    TestGrid grid =
        TestGrid.of(
            "x",
            """
            Day | SG | Temp C
            0 | 1.085 |
            1 | 1.070 | 20\
            """);
    Filling filling = filling(grid);
    assertEquals(2, filling.refusals().size());
    assertEquals("C2", filling.refusals().get(0).cell());
    assertTrue(
        filling.refusals().get(1).reason().contains("first reading, in row 2, is refused"),
        filling.refusals().get(1).reason());
    assertEquals(0, filling.tables().get(0).batches().get(0).filled());
  }

  @Test
  void anotherBatchWithoutAWordIsRefusedNotMixed() {
    TestGrid grid =
        TestGrid.of(
            "x",
            """
            Date | SG | Temp C
            #2025-01-01 | 1.085 | 20
            #2025-01-09 | 1.000 | 20
            #2025-02-01 | 1.060 | 20
            #2025-02-05 | 1.010 | 20\
            """);
    Filling filling = filling(grid);
    assertEquals(List.of("B4", "B5"), filling.refusals().stream().map(CellRefusal::cell).toList());
    assertTrue(filling.refusals().get(0).reason().startsWith("was sugar added at B4"));
    assertEquals(Answer.Code.CONTRADICTION, filling.refusals().get(0).code());
  }

  @Test
  void twoHydrometersThatNearlyAgreeAreAskedAbout() {
    TestGrid grid =
        TestGrid.of(
            "Sugar 4",
            """
            Date | SG old one | SG new one | Temp C
            #2025-02-01 | 1.089 | 1.091 | 24
            #2025-02-02 | 1.075 | 1.078 | 27\
            """);
    assertFalse(read(grid).tables().get(0).settled());
  }

  @Test
  void oneBatchInTwoSpellingsIsOneBatch() {
    TestGrid grid =
        TestGrid.of(
            "x",
            "Batch | Day | SG | T C\n"
                + "p3 | 0 | 1.084 | 19\n"
                + "P3 | 2 | 1.060 | 20\n"
                + "a7 | 0 | 1.050 | 18");
    List<Batch> batches = read(grid).tables().get(0).batches();
    assertEquals(List.of("p3", "a7"), batches.stream().map(Batch::name).toList());
  }

  @Test
  void asksWhetherBrixIsARefractometersWhenOnlyTheTitleSpeaksOfOne() {
    TestGrid grid =
        TestGrid.of(
            "x",
            """
            Plum 3 with the refractometer
            Day | Brix | Temp C
            0 | 20.4 | 22
            3 | 12.4 | 22\
            """);
    assertFalse(read(grid).tables().get(0).settled());
    LogMap map = LogMap.parse("header row = 2\ncolumn B = REFRACTOMETER in BRIX");
    Understanding clear = SheetUnderstanding.understand(grid, map);
    TestGrid filled = grid.with(LogFiller.fill(grid, clear, FillOptions.usual()).patch());
    double gravity = calc("REFRACTOMETERGRAVITY", 20.4, 12.4);
    assertEquals(calc("CONVERT", gravity, "SG", "BRIX"), filled.number(3, 3), 1e-12);
  }

  @Test
  void leavesOtherSheetsAlone() {
    TestGrid battery =
        TestGrid.of(
            "x",
            """
            Date | Cell | SG | Temp C
            #2025-01-01 | 1 | 1.150 | 20
            #2025-01-02 | 1 | 1.140 | 20\
            """);
    assertEquals(List.of(), read(battery).tables());
    TestGrid shopping =
        TestGrid.of("x", "What | How many | Price\nSugar, 25 kg | 2 | 31.5\nBungs | 12 | 0.8");
    assertEquals(List.of(), read(shopping).tables());
  }
}
