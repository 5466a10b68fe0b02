package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import washbook.log.ComputedColumn;
import washbook.log.sheet.CellRefusal;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Readings before the ferment has begun. */
class LagPhaseTest {
  private static Filling filling(TestGrid grid, FormulaStyle style) {
    FillOptions options =
        new FillOptions(EnumSet.of(ComputedColumn.CORRECTED_GRAVITY, ComputedColumn.ABV), style);
    return LogFiller.fill(grid, SheetUnderstanding.understand(grid, LogMap.none()), options);
  }

  private static double alcohol(Filling filling, int row) {
    return filling.patch().columns().get(1).cells().number(row);
  }

  @Test
  void aReadingALittleAboveTheOriginalGravityIsNoFermentYet() {
    TestGrid grid =
        TestGrid.of(
            "Plum 3",
            """
            Day | SG | Temp C
            0 | 1.085 | 20
            1 | 1.087 | 20
            2 | 1.086 | 20
            3 | 1.060 | 20\
            """);
    Filling filling = filling(grid, FormulaStyle.VALUES);
    assertEquals(List.of(), filling.refusals());
    assertEquals(0, alcohol(filling, 2));
    assertEquals(0, alcohol(filling, 3));
    assertEquals(1.087, filling.patch().columns().get(0).cells().number(2), 1e-9);
    assertTrue(alcohol(filling, 4) > 3);
  }

  @Test
  void aReadingFurtherAboveItIsRefused() {
    TestGrid grid =
        TestGrid.of("Plum 3", "Day | SG | Temp C\n0 | 1.085 | 20\n1 | 1.088 | 20\n2 | 1.060 | 20");
    Filling filling = filling(grid, FormulaStyle.VALUES);
    assertEquals(1, filling.refusals().size());
    assertEquals(
        "reading 1.088 (corrected 1.0880) is above the original gravity 1.0850 and no sugar was"
            + " added; it must be 0.97 to 1.0850 SG.",
        filling.refusals().get(0).reason());
  }

  @Test
  void aRefractometersReadingsWaverAsWell() {
    TestGrid grid =
        TestGrid.of("Plum 3", "Day | Refractometer (Brix)\n0 | 20\n1 | 20.4\n2 | 21.5\n3 | 15");
    Filling filling = filling(grid, FormulaStyle.VALUES);
    assertEquals(0, alcohol(filling, 2));
    assertEquals(List.of("B4", "B5"), filling.refusals().stream().map(CellRefusal::cell).toList());
  }

  @Test
  void itsFormulasGiveTheSame() {
    TestGrid grid =
        TestGrid.of("Plum 3", "Day | SG | Temp C\n0 | 1.085 | 20\n1 | 1.087 | 20\n2 | 1.060 | 20");
    List<ColumnPatch> columns = filling(grid, FormulaStyle.PACK).patch().columns();
    assertEquals("WASHBOOK.CORRECTEDGRAVITY(B3,C3)", columns.get(0).cells().formula(2));
    assertTrue(columns.get(1).cells().formula(2).matches(".*\\bMIN\\(.*,D3\\)\\)"));
  }
}
