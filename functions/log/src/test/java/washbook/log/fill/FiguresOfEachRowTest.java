package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.functions.Answer.Code;
import washbook.log.ComputedColumn;
import washbook.log.sheet.CellRefusal;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Each reading has its figures or a reason, never both; the counts add up to the readings. */
class FiguresOfEachRowTest {
  private static Filling fill(String log, ComputedColumn... columns) {
    TestGrid grid = TestGrid.of("Plum 3", log);
    return LogFiller.fill(
        grid,
        SheetUnderstanding.understand(grid, LogMap.none()),
        new FillOptions(EnumSet.copyOf(List.of(columns)), FormulaStyle.VALUES));
  }

  private static ColumnPatch column(Filling filling, ComputedColumn column) {
    return filling.columns().stream()
        .filter(c -> c.column() == column)
        .findFirst()
        .orElseThrow()
        .patch();
  }

  private static List<String> refused(Filling filling) {
    return filling.refusals().stream().map(CellRefusal::cell).toList();
  }

  /** Rows are as people count them; a reading has a figure exactly where it has no note. */
  private static void hasFiguresOrNotes(Filling filling, int... noted) {
    ColumnPatch note = column(filling, ComputedColumn.NOTE);
    for (FilledColumn filled : filling.columns()) {
      if (filled.column() == ComputedColumn.NOTE || filled.column() == ComputedColumn.STATE) {
        continue;
      }
      ColumnPatch patch = filled.patch();
      for (int row = patch.firstRow(); row <= patch.lastRow(); row++) {
        int shown = row + 1;
        boolean isNoted = IntStream.of(noted).anyMatch(n -> n == shown);
        assertEquals(isNoted, note.cells().text(row) != null, "note " + shown);
        if (isNoted) {
          assertTrue(Double.isNaN(patch.cells().number(row)), filled.column() + " " + shown);
          assertTrue(note.cells().text(row).contains("" + shown), note.cells().text(row));
        }
      }
    }
  }

  private static final String INTERLEAVED =
      """
      Batch | Day | SG | Temp C
      Plum 3 | 0 | 1.085 | 20
      Apple 7 | 0 | 1.06 | 20
      Plum 3 | 3 | 1.05 |
      Apple 7 | 3 | 1.04 |
      Plum 3 | 5 | 1.03 |
      Apple 7 | 5 | 1.02 | 20
      Plum 3 | 8 | 1.01 | 20
      Apple 7 | 9 | 1.005 |
      Apple 7 | 11 | 1.005 | 20\
      """;

  @Test
  void refusalsOfBatchesBetweenEachOtherStandInTheOrderOfRows() {
    Filling filling = fill(INTERLEAVED, ComputedColumn.CORRECTED_GRAVITY, ComputedColumn.ABV);
    assertEquals(List.of("D4", "D5", "D6", "D9"), refused(filling));
    hasFiguresOrNotes(filling, 4, 5, 6, 9);
    Filling.BatchCount plum = filling.tables().get(0).batches().get(0);
    Filling.BatchCount apple = filling.tables().get(0).batches().get(1);
    assertEquals(List.of(4, 2, 2), List.of(plum.rows(), plum.filled(), plum.refused()));
    assertEquals(List.of(5, 3, 2), List.of(apple.rows(), apple.filled(), apple.refused()));
  }

  @Test
  void everyOneOfManyRefusalsKeepsItsRow() {
    StringBuilder log = new StringBuilder("Day|SG|Temp C\n0|1.085|20");
    for (int i = 1; i <= 60; i++) {
      log.append("\n" + i * 0.25 + "|" + (1.08 - 0.001 * i) + (i % 2 == 1 ? "|" : "|20"));
    }
    Filling filling = fill(log.toString(), ComputedColumn.ABV);
    assertEquals(
        IntStream.rangeClosed(0, 29).mapToObj(i -> "C" + (3 + 2 * i)).toList(), refused(filling));
    ColumnPatch note = column(filling, ComputedColumn.NOTE);
    assertTrue(note.cells().text(60).startsWith("C61: "));
    assertNull(note.cells().text(61));
  }

  /** Never goes on with the old original: from an unexplained rise on, nothing is filled. */
  @ParameterizedTest
  @CsvSource({"1.060", "1.075", "1.053"})
  void fromARiseOnNeitherFigureNorRateNorStateIsWritten(String risen) {
    Filling filling =
        fill(
            ("Day|SG|Temp C\n0|1.085|20\n2|1.05|20\n3|1.045|20\n4|" + risen + "|20\n")
                + "6|1.04|20\n8|1.03|20",
            ComputedColumn.ABV,
            ComputedColumn.RATE,
            ComputedColumn.STATE);
    assertEquals(List.of("B5", "B6", "B7"), refused(filling));
    hasFiguresOrNotes(filling, 5, 6, 7);
    ColumnPatch state = column(filling, ComputedColumn.STATE);
    assertEquals("working", state.cells().text(3));
    for (int row = 4; row <= 6; row++) {
      assertNull(state.cells().text(row));
    }
    assertTrue(column(filling, ComputedColumn.RATE).cells().number(3) > 1);
    assertEquals(
        List.of(6, 3, 3),
        filling.tables().get(0).batches().stream()
            .flatMap(b -> List.of(b.rows(), b.filled(), b.refused()).stream())
            .toList());
    assertTrue(filling.refusals().get(2).reason().contains("B5"), "each names where the rise is");
  }

  /** A reading refused for itself keeps its own reason behind a rise. */
  @Test
  void aReadingRefusedBeforeTheRestKeepsItsReason() {
    Filling filling =
        fill(
            "Day|SG|Temp C\n0|1.085|20\n2|1.05|20\n3|1.045|20\n4|1.06|20\n6|1.055|\n8|1.04|20",
            ComputedColumn.ABV);
    assertEquals(List.of("B5", "C6", "B7"), refused(filling));
    assertEquals(Code.BLANK, filling.refusals().get(1).code());
    assertEquals(Code.CONTRADICTION, filling.refusals().get(2).code());
  }

  @Test
  void aGravityThatNoWashOfThatOriginalFermentsToIsRefused() {
    Filling filling = fill("Day|SG|Temp C\n0|1.032|20\n2|1.01|20\n3|0.981|20", ComputedColumn.ABV);
    assertEquals(List.of("B4"), refused(filling));
    assertEquals(Code.CONTRADICTION, filling.refusals().get(0).code());
    hasFiguresOrNotes(filling, 4);
  }

  @Test
  void aReadingBeforeTheFermentIsShownAsItIsOnBothScales() {
    Filling filling =
        fill(
            "OG|1.085\nDay|Oechsle|Temp C\n0|86|20\n1|85.5|20\n3|50|20",
            ComputedColumn.CORRECTED_GRAVITY,
            ComputedColumn.SPECIFIC_GRAVITY,
            ComputedColumn.ABV);
    ColumnPatch degrees = column(filling, ComputedColumn.CORRECTED_GRAVITY);
    ColumnPatch gravity = column(filling, ComputedColumn.SPECIFIC_GRAVITY);
    double[] shown = {86, 85.5, 50};
    for (int i = 0; i < 3; i++) {
      assertEquals(shown[i], degrees.cells().number(2 + i), 1e-9);
      assertEquals(1 + shown[i] / 1000, gravity.cells().number(2 + i), 1e-9);
    }
    assertEquals(0, column(filling, ComputedColumn.ABV).cells().number(3));
    FilledColumn filled = filling.columns().get(0);
    assertEquals(1.0855, filled.inGravity(3), 1e-9);
    assertEquals(List.of(), filling.refusals());
  }

  /** Each column is the function of its name, of the original and the corrected gravity. */
  @ParameterizedTest
  @CsvSource({
    "ABV, ABV",
    "APPARENT_ATTENUATION, APPARENTATTENUATION",
    "REAL_ATTENUATION, REALATTENUATION",
    "TRUE_EXTRACT, TRUEEXTRACT",
    "SUGAR_LEFT, SUGARLEFT",
    "PLUS_MINUS, ABVPLUSMINUS",
  })
  void aColumnIsTheFunctionOfItsName(ComputedColumn column, String function) {
    Filling filling =
        fill(
            "Day|SG|Temp C\n0|1.085|24\n2|1.05|22\n5|1.01|20",
            column,
            ComputedColumn.CORRECTED_GRAVITY,
            ComputedColumn.ORIGINAL_GRAVITY);
    double original = SimpleLogTest.calc("CORRECTEDGRAVITY", 1.085, 24.0);
    for (int row = 1; row <= 3; row++) {
      double gravity = column(filling, ComputedColumn.CORRECTED_GRAVITY).cells().number(row);
      double expected = SimpleLogTest.calc(function, original, gravity);
      assertEquals(expected, column(filling, column).cells().number(row), 1e-9);
      assertEquals(original, column(filling, ComputedColumn.ORIGINAL_GRAVITY).cells().number(row));
    }
  }

  @Test
  void aJoinedListHoldsTheElementsOfAllItsParts() {
    List<Integer> joined = new JoinedList<>(List.of(List.of(1, 2), List.of(), List.of(3)));
    assertEquals(List.of(1, 2, 3), joined);
    assertEquals(3, joined.size());
  }
}
