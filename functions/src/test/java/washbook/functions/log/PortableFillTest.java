package washbook.functions.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import washbook.functions.portable.FormulaRewriter;

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
    return LogFiller.fill(SUGAR, LogReader.understand(SUGAR, LogMap.none()), options);
  }

  @Test
  void everyFilledCellHasAFormulaOfItsOwnRow() {
    for (ColumnPatch column : filled().patch().columns()) {
      for (int row = column.firstRow(); row <= column.lastRow(); row++) {
        String formula = column.cells().formula(row);
        if (column.header().equals(Computed.FIRST_GRAVITY.header()) && row > column.firstRow()) {
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
    String formula = filled().patch().columns().get(0).cells().formula(2);
    assertEquals(
        "IF(OR(B3=\"\",C3=\"\"),\"\",IF(AND(B3>=", formula.substring(0, 33), "the beginning");
  }

  @Test
  void theOriginalGravityIsLookedFor() {
    ColumnPatch abv = filled().patch().columns().get(1);
    assertTrue(abv.cells().formula(2).contains("(MAX($I$1:$I$204)-E3)"), abv.cells().formula(2));
    assertEquals("ABV to date (Washbook)", abv.header());
  }
}
