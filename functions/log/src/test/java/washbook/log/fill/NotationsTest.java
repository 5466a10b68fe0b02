package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static washbook.log.fill.SimpleLogTest.calc;

import java.util.List;
import org.junit.jupiter.api.Test;
import washbook.functions.Answer.Code;
import washbook.log.Batch;
import washbook.log.LogTable;
import washbook.log.OriginalGravity;
import washbook.log.Role;
import washbook.log.Understanding;
import washbook.log.language.Language;
import washbook.log.reading.RowTimes;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Notations that are read where header or values settle them, and left alone where not. */
class NotationsTest {
  private static Understanding understand(TestGrid grid) {
    return SheetUnderstanding.understand(grid, LogMap.none());
  }

  private static Filling fill(TestGrid grid) {
    return LogFiller.fill(grid, understand(grid), FillOptions.usual());
  }

  @Test
  void readingAndTemperatureInOneCell() {
    TestGrid grid =
        TestGrid.of(
            "Apple 7", "date | SG/temp C\n#2025-11-09 | '1.052/15\n#2025-11-11 | 1.047 / 16");
    Filling filling = fill(grid);
    assertEquals(List.of(), filling.refusals());
    double original = calc("CORRECTEDGRAVITY", 1.052, 15.0);
    TestGrid filled = grid.with(filling.patch());
    assertEquals(original, filled.number(1, 2));
    assertEquals(calc("CORRECTEDGRAVITY", 1.047, 16.0, 20.0, original), filled.number(2, 2));
  }

  @Test
  void datesWithoutAYearGoOnOverNewYear() {
    for (String first : List.of("28 Dec", "28 Dec 2025", "28 Dec 18:00")) {
      TestGrid grid =
          TestGrid.of(
              "Sugar 4",
              "date | SG | temp C\n"
                  + first
                  + " | 1.080 | 20\n"
                  + "30 Dec | 1.060 | 20\n"
                  + "2 Jan | 1.020 | 20\n"
                  + "4 Jan 2026 | 1.000 | 20");
      assertEquals(List.of(), fill(grid).refusals(), first);
      Understanding understood = understand(grid);
      double start = first.endsWith("00") ? 0.75 : 0;
      assertArrayEquals(
          new double[] {0, 2 - start, 5 - start, 7 - start},
          RowTimes.of(grid, understood.tables().get(0)).daysFromFirst(new int[] {1, 2, 3, 4}),
          1e-9,
          first);
    }
  }

  @Test
  void aSignOrWordMakesTheSecondNumberATemperature() {
    TestGrid grid =
        TestGrid.of("Plum 3", "data | densità\n4 nov | 1,084 a 19°\n5 nov | 1,078 @ 21");
    assertEquals(List.of(), fill(grid).refusals());
  }

  @Test
  void aSecondNumberThatNothingExplainsIsRefused() {
    TestGrid grid = TestGrid.of("Plum 3", "date | SG\n4 Nov | '1.084/19\n5 Nov | '1.078/21");
    Filling filling = fill(grid);
    assertEquals(2, filling.refusals().size());
    assertTrue(filling.refusals().get(0).reason().contains("nothing says what the second one is"));
  }

  @Test
  void aTemperatureBehindTheReadingThatMayBeEitherIsRefused() {
    TestGrid grid = TestGrid.of("Plum 3", "date | SG/temp\n4 Nov | '1.084/40\n5 Nov | '1.078/50");
    assertTrue(fill(grid).refusals().get(0).reason().contains("may be in °C or °F"));
  }

  /** A unit after the value does not make a header of the line. */
  @Test
  void labelsAboveTheTableWithValueAndUnit() {
    TestGrid beside =
        TestGrid.of(
            "log",
            """
            Batch | Plum 3
            Hydrometer calibrated at | 18 | °C
            Original gravity | 1.090 | SG
            Gravity expected at the end | 1.000 | SG
            |
            Date | SG | Temp C | Alcohol (% vol) | Plus or minus (% vol)
            #2025-11-09 | 1.084 | 21 | 0.8 | 0.2\
            """);
    keyLinesAreRead(beside);
    TestGrid merged =
        TestGrid.of(
            "log",
            """
            Batch | | | Plum 3
            Hydrometer calibrated at | | | 18 | °C
            Original gravity | | | 1.090 | SG
            Gravity expected at the end | | | 1.000 | SG
            |
            Date | SG | Temp C | Alcohol (% vol) | Plus or minus (% vol)
            #2025-11-09 | 1.084 | 21 | 0.8 | 0.2\
            """);
    for (int row = 0; row < 4; row++) {
      merged.merge(row, 0, row, 2);
    }
    keyLinesAreRead(merged);
  }

  private static void keyLinesAreRead(TestGrid grid) {
    Understanding understood = understand(grid);
    assertEquals(1, understood.tables().size());
    LogTable table = understood.tables().get(0);
    Batch batch = table.batches().get(0);
    assertEquals("Plum 3", batch.name());
    assertInstanceOf(OriginalGravity.Stated.class, batch.original());
    assertEquals(1.090, batch.originalGravity().orElseThrow());
    assertEquals(18, table.settings().calibrationC());
    assertEquals(Role.OTHER, table.columns().get(4).role());
  }

  @Test
  void theOriginalGravityInTheHeader() {
    TestGrid grid = TestGrid.of("Sugar 4", "day | SG (start 1.090) | temp C\n1 | 1.077 | 26");
    Batch batch = understand(grid).tables().get(0).batches().get(0);
    assertInstanceOf(OriginalGravity.Stated.class, batch.original());
    assertEquals(1.090, batch.originalGravity().orElseThrow());
  }

  @Test
  void degreesOfGravityArePointsWhereNoOtherScaleReaches() {
    TestGrid points =
        TestGrid.of("Plum 3", "Day | Gravity degrees | Temp deg C\n0 | 84 | 19\n12 | -1 | 19");
    assertEquals("POINTS", unit(points, Role.GRAVITY));
    TestGrid open =
        TestGrid.of("Plum 3", "Day | Gravity degrees | Temp deg C\n0 | 20 | 19\n12 | -1 | 19");
    assertEquals(1, understand(open).doubts().size());
  }

  @Test
  void bareDegreesThatStayAreTheTemperature() {
    TestGrid grid = TestGrid.of("Plum 3", "dag | sg | graden\n1 | 1.084 | 19\n12 | 0.999 | 20");
    assertEquals("C", unit(grid, Role.TEMPERATURE));
    TestGrid sugar = TestGrid.of("Plum 3", "dag | sg | graden\n1 | 1.084 | 20\n12 | 0.999 | 0");
    assertTrue(understand(sugar).tables().get(0).column(Role.TEMPERATURE).isEmpty());
  }

  private static String unit(TestGrid grid, Role role) {
    return understand(grid).tables().get(0).column(role).orElseThrow().unit();
  }

  @Test
  void aLogThatRunsAcrossIsTurned() {
    TestGrid grid =
        TestGrid.of(
            "Plum 3",
            "date | #2025-11-04 | #2025-11-05 | #2025-11-07\n"
                + "SG | 1.084 | 1.078 | 1.046\n"
                + "°C|19|21|23");
    Understanding understood = understand(grid);
    assertEquals(1, understood.tables().size());
    assertEquals(List.of(), understood.doubts());
    assertTrue(understood.across().isPresent());
  }

  @Test
  void aNameInARowOfItsOwnBeginsAnotherBatch() {
    TestGrid grid =
        TestGrid.of(
            "Cellar",
            """
            PLUM 3 |
            date | SG | temp C
            4/11/24 | 1.084 | 19
            9/11/24 | 1.021 | 22
            APPLE 7 (OG 1.053) |
            9/11/24 | 1.052 | 15
            19/11/24 | 1.010 | 16\
            """);
    List<Batch> batches = understand(grid).tables().get(0).batches();
    assertEquals(List.of("PLUM 3", "APPLE 7"), batches.stream().map(Batch::name).toList());
    assertInstanceOf(OriginalGravity.FirstReading.class, batches.get(0).original());
    assertEquals(1.053, batches.get(1).originalGravity().orElseThrow());
    assertEquals(List.of(), fill(grid).refusals());
  }

  /** Of two ferments written into one column none is computed: the first reading is one's only. */
  @Test
  void readingsOfTwoBatchesMixedAreRefused() {
    TestGrid grid =
        TestGrid.of(
            "Cellar",
            """
            date | SG | temp C
            #2025-11-04 | 1.084 | 19
            #2025-11-05 | 1.052 | 15
            #2025-11-06 | 1.061 | 22
            #2025-11-07 | 1.049 | 16
            #2025-11-10 | 1.013 | 22
            #2025-11-11 | 1.028 | 17\
            """);
    Filling filling = fill(grid);
    assertEquals(6, filling.refusals().size());
    filling.refusals().forEach(r -> assertEquals(Code.CONTRADICTION, r.code()));
    String reason = filling.refusals().get(0).reason(Language.EN);
    assertTrue(reason.contains("two batches may be mixed"), reason);
    assertEquals(0, filling.tables().get(0).batches().get(0).filled());
    assertEquals(
        List.of(), filling.patch().columns(), "nothing is written where nothing is filled");
  }

  /** Sugar may have been added, or a figure be wrong: nothing behind it is computed before. */
  @Test
  void aRiseIsAskedAboutWithAllThatFollows() {
    TestGrid grid =
        TestGrid.of(
            "Cellar",
            """
            date | SG | temp C
            #2025-11-04 | 1.084 | 19
            #2025-11-05 | 1.062 | 20
            #2025-11-06 | 1.083 | 20
            #2025-11-07 | 1.049 | 20
            #2025-11-10 | 1.013 | 20\
            """);
    assertEquals(3, fill(grid).refusals().size());
  }

  @Test
  void aTableOfValuesIsNoLogUnlessTheyAreGravitiesOrATemperatureStandsBeside() {
    assertEquals(0, tables("Date | Value\n#2025-11-04 | 95\n#2025-11-05 | 1"));
    assertEquals(0, tables("Comment | Value\nfirst | 1.5\nsecond | 2"));
    assertEquals(0, tables("Points | Points at most\nfirst | 15\nsecond | 2"));
    assertEquals(0, tables("Name | PA\nfirst | 1.5\nsecond | 2"));
    assertEquals(1, tables("Date | Value\n#2025-11-04 | 1.084\n#2025-11-05 | 1.078"));
    assertEquals(
        1, tables("Date | Reading | Temp C\n#2025-11-04 | 18 | 20\n#2025-11-05 | 12 | 21"));
  }

  private static int tables(String sheet) {
    Understanding understood = understand(TestGrid.of("Sheet1", sheet));
    assertTrue(!understood.tables().isEmpty() || understood.doubts().isEmpty());
    return understood.tables().size();
  }
}
