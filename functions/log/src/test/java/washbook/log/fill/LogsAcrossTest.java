package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import washbook.log.ComputedColumn;
import washbook.log.RowAccount;
import washbook.log.Understanding;
import washbook.log.UnderstandingText;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.Grid;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Logs whose dates stand side by side: each reading is a column of the sheet. */
class LogsAcrossTest {
  private static final String DOWN =
      """
      date | SG | temp C
      #2025-11-04 | 1.084 | 24
      #2025-11-06 | 1.052 | 26
      #2025-11-10 | 1.011 | 23
      #2025-11-17 | 0.998 | 19\
      """;

  private static final String ACROSS =
      """
      Plum 3 | 25 L
      date | #2025-11-04 | #2025-11-06 | #2025-11-10 | #2025-11-17
      SG | 1.084 | 1.052 | 1.011 | 0.998
      temp C | 24 | 26 | 23 | 19
      smell | fruit | | yeast |
       | | | |
      racked on the 18th | | | |\
      """;

  private static Understanding understand(Grid grid) {
    return SheetUnderstanding.understand(grid, LogMap.none());
  }

  private static Filling fill(Grid grid) {
    return LogFiller.fill(grid, understand(grid), FillOptions.usual());
  }

  private static ColumnPatch column(Filling filling, int column) {
    return filling.patch().columns().stream()
        .filter(c -> c.column() == column)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void itsFiguresAreThoseOfTheSameLogThatRunsDown() {
    Filling down = fill(TestGrid.of("Log", DOWN));
    Filling across = fill(TestGrid.of("Log", ACROSS));
    assertEquals(down.patch().columns().size() + 2, 6);
    for (int reading = 0; reading < 4; reading++) {
      ColumnPatch turned = column(across, 1 + reading);
      for (int i = 0; i < down.patch().columns().size(); i++) {
        ColumnPatch straight = down.patch().columns().get(i);
        int row = turned.firstRow() + i;
        assertEquals(straight.cells().number(1 + reading), turned.cells().number(row), 1e-12);
        assertEquals(straight.decimals(), turned.decimals(row));
        assertEquals(straight.header(), column(across, 0).cells().text(row));
      }
    }
  }

  @Test
  void itsRowsGoBelowEverythingWithABlankOneBetween() {
    ColumnPatch labels = column(fill(TestGrid.of("Log", ACROSS)), 0);
    assertEquals("Computed (Washbook)", labels.header());
    assertEquals(8, labels.headerRow());
    assertEquals(9, labels.firstRow());
    assertEquals(12, labels.lastRow());
    assertEquals("1", column(fill(TestGrid.of("Log", ACROSS)), 1).header());
  }

  @Test
  void aFilledOneIsFilledInTheSamePlaceAgain() {
    TestGrid grid = TestGrid.of("Log", ACROSS);
    Filling first = fill(grid);
    Filling again = fill(grid.with(first.patch()));
    assertEquals(first.patch().columns().size(), again.patch().columns().size());
    for (int i = 0; i < first.patch().columns().size(); i++) {
      ColumnPatch before = first.patch().columns().get(i);
      ColumnPatch after = again.patch().columns().get(i);
      assertEquals(before.headerRow(), after.headerRow());
      assertEquals(before.lastRow(), after.lastRow());
      assertTrue(after.isOurs(before.header()));
    }
  }

  @Test
  void aRefusalNamesTheCellOfTheSheet() {
    Filling filling = fill(TestGrid.of("Log", ACROSS.replace("| 26 |", "| hot |")));
    assertEquals(List.of("C4"), filling.refusals().stream().map(r -> r.cell()).toList());
    RowAccount account = filling.accounts().values().iterator().next();
    assertEquals(List.of(5, 3, 1), List.of(account.rows(), account.filled(), account.refused()));
    assertEquals("A", account.passed().get(0).rows());
  }

  @Test
  void aQuestionAboutARowIsAnsweredByAMapThatNamesTheRow() {
    TestGrid grid =
        TestGrid.of(
            "Must",
            """
            date | #2025-09-19 | #2025-09-22 | #2025-09-26 | #2025-10-02
            must Brix | 20.1 | 14.0 | 9.2 | 7.1
            temp C | 20 | 20 | 20 | 20\
            """);
    Understanding open = understand(grid);
    assertEquals(1, open.doubts().size());
    assertEquals("A2", open.doubts().get(0).cell());
    String question = open.doubts().get(0).question();
    assertTrue(question.contains("column B here is row 2 of the sheet"), question);
    List<String> lines = open.doubts().get(0).answers().get(0).lines();
    assertEquals(List.of("row 2 = REFRACTOMETER in BRIX"), lines);
    LogMap map = LogMap.none().with("Must", open.doubts().get(0), lines);
    assertEquals(map, LogMap.parse(map.print()));
    Understanding settled = SheetUnderstanding.understand(grid, map);
    assertEquals(List.of(), settled.doubts());
    assertTrue(settled.tables().get(0).settled());
  }

  @Test
  void whatIsUnderstoodIsToldByTheRowsOfTheSheet() {
    String told = UnderstandingText.lines(understand(TestGrid.of("Log", ACROSS)));
    assertTrue(told.contains("table A2:E5"), told);
    assertTrue(told.contains("3: SG"), told);
    assertTrue(told.contains("columns B-E"), told);
  }

  @Test
  void whatAMergedCellReachesIntoIsAskedAbout() {
    TestGrid grid = TestGrid.of("Log", ACROSS).merge(2, 1, 2, 2);
    assertFalse(understand(grid).across().isPresent());
    assertTrue(understand(grid).doubts().get(0).question().contains("Can it be transposed?"));
  }

  private static TestGrid filledAnd(String... more) {
    TestGrid grid = TestGrid.of("Log", ACROSS);
    TestGrid filled = grid.with(fill(grid).patch());
    for (String cell : more) {
      String[] parts = cell.split("=");
      int row = Integer.parseInt(parts[0].substring(1)) - 1;
      filled =
          TestGrid.copyWith(
              filled, row, parts[0].charAt(0) - 'A', parts.length < 2 ? null : parts[1]);
    }
    return filled;
  }

  @Test
  void aRowOfThePersonBelowOursIsNotOurs() {
    TestGrid grid = filledAnd("A14=pH", "B14=3.5", "C14=3.4", "D14=3.4");
    Filling again =
        LogFiller.fill(
            grid,
            understand(grid),
            new FillOptions(
                EnumSet.of(
                    ComputedColumn.CORRECTED_GRAVITY,
                    ComputedColumn.ABV,
                    ComputedColumn.APPARENT_ATTENUATION,
                    ComputedColumn.REAL_ATTENUATION,
                    ComputedColumn.TRUE_EXTRACT),
                FormulaStyle.VALUES));
    ColumnPatch labels = column(again, 0);
    assertFalse(labels.owns(13));
    assertTrue(labels.owns(labels.lastRow()));
    assertTrue(labels.lastRow() > 13);
  }

  @Test
  void whatAPersonWroteIntoTheHeadingIsNotTakenForOurs() {
    ColumnPatch beside = column(fill(filledAnd("E9=checked by us")), 4);
    assertFalse(beside.isOurs("checked by us"));
  }

  @Test
  void figuresOfAReadingThatIsGoneGoToo() {
    TestGrid grid = filledAnd("E2=", "E3=", "E4=");
    ColumnPatch gone = column(fill(grid), 4);
    assertTrue(gone.owns(9));
    assertTrue(Double.isNaN(gone.cells().number(9)));
  }

  @Test
  void readingsWithoutADateAreCountedToo() {
    TestGrid grid = TestGrid.of("Log", ACROSS.replace(" | #2025-11-17", " |"));
    assertEquals(5, fill(grid).accounts().values().iterator().next().rows());
  }

  @Test
  void figuresBelowAreAskedAbout() {
    Understanding two = understand(TestGrid.of("Log", ACROSS + "\n" + ACROSS));
    assertFalse(two.across().isPresent());
    assertTrue(two.doubts().get(0).question().contains("Can it be transposed?"));
  }

  @Test
  void whatAMapCanOnlySayOfALogThatRunsDownIsNotPassedOver() {
    TestGrid grid = TestGrid.of("Log", ACROSS);
    for (String line :
        List.of(
            "sugar added at row 3 = 2 KG",
            "batch from row 4 = Plum 9",
            "row 40 = TEMPERATURE in C",
            "column B = GRAVITY in SG")) {
      Understanding sheet = SheetUnderstanding.understand(grid, LogMap.parse(line));
      assertFalse(sheet.doubts().isEmpty() && !sheet.tables().isEmpty(), line);
    }
    Understanding ignored =
        SheetUnderstanding.understand(grid, LogMap.parse("sheet = Log\nignore = yes"));
    assertTrue(ignored.isEmpty() && ignored.doubts().isEmpty());
  }

  @Test
  void theMapThatIsWrittenOfItSaysTheSame() {
    TestGrid grid = TestGrid.of("Log", ACROSS);
    String map = LogMap.write(List.of(understand(grid)));
    assertTrue(map.contains("row 3 = GRAVITY in SG"), map);
    Understanding again = SheetUnderstanding.understand(grid, LogMap.parse(map));
    assertEquals(List.of(), again.doubts());
    assertEquals(understand(grid).range(understand(grid).tables().get(0)), "A2:E5");
    assertTrue(again.across().isPresent());
  }

  @Test
  void aSentenceBelowIsFoundInItsOwnRow() {
    Understanding sheet = understand(TestGrid.of("Log", ACROSS + "\nhydrometer 15 C | | | |"));
    assertTrue(UnderstandingText.lines(sheet).contains("A8"), UnderstandingText.lines(sheet));
  }
}
