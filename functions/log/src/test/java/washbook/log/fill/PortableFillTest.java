package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import washbook.functions.portable.FormulaRewriter;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** A log filled with plain arithmetic that refers to the log's own cells. */
class PortableFillTest {
  private static final TestGrid SUGAR =
      TestGrid.of(
          "Sugar 4",
          """
          Date | Brix (hydrometer) | Temp (°F) | Note
          #2025-10-01 | 20.4 | 75 | sugar dissolved
          #2025-10-03 | 15.2 | 80 |
          #2025-10-06 | 7.1 | 78 |""");

  private static Filling filled() {
    FillOptions options = new FillOptions(FillOptions.usual().columns(), FormulaStyle.PORTABLE);
    return LogFiller.fill(SUGAR, SheetUnderstanding.understand(SUGAR, LogMap.none()), options);
  }

  @Test
  void everyFilledCellHasAFormulaOfItsOwnRow() {
    for (ColumnPatch column : filled().patch().columns()) {
      for (int row = column.firstRow(); row <= column.lastRow(); row++) {
        String formula = column.cells().formula(row);
        if (column.header().startsWith("First gravity") && row > column.firstRow()) {
          assertNull(formula);
          continue;
        }
        assertNotNull(formula, column.header() + " row " + row);
        assertTrue(formula.length() <= FormulaRewriter.LONGEST, formula);
        assertFalse(FormulaRewriter.concerns(formula), formula);
        assertTrue(formula.contains("" + (row + 1)), formula);
      }
    }
  }

  @Test
  void aConvertedReadingSharesTheGuardsOfTheCorrection() {
    List<ColumnPatch> columns = filled().patch().columns();
    assertEquals("Corrected gravity (SG, Washbook)", columns.get(5).header());
    String formula = columns.get(5).cells().formula(2);
    assertEquals(
        "IF(OR(B3=\"\",C3=\"\"),\"\",IF(AND(B3>=", formula.substring(0, 33), "the beginning");
  }

  @Test
  void theOriginalGravityIsLookedFor() {
    ColumnPatch abv = filled().patch().columns().get(1);
    assertTrue(abv.cells().formula(2).contains("(MAX($I$1:$I$204)-J3)"), abv.cells().formula(2));
    assertEquals("Alcohol to date (% vol)", abv.header());
  }
}
