package washbook.log.understand;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import washbook.log.ComputedColumn;
import washbook.log.Understanding;
import washbook.log.audit.LogAuditor;
import washbook.log.fill.FillOptions;
import washbook.log.fill.Filling;
import washbook.log.fill.FormulaStyle;
import washbook.log.fill.LogFiller;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.TestGrid;

/** Sheets of random words and numbers of the trade: never a failure, never an infinite number. */
class RandomSheetTest {
  private static final int SHEETS = 3000;
  private static final String[] WORDS = {
    "Date",
    "SG",
    "Temp C",
    "°Brix",
    "Batch",
    "OG",
    "1.085 @ 68F",
    "n/a",
    "-",
    "Plum 3",
    "Total",
    "ABV",
    "Corrected gravity (Washbook)",
    "Washbook note",
    "sugar added kg",
    "2 kg",
    "Refractometer",
    "Volume L",
    "All readings corrected",
    "calibrated at 60F",
    "'1,050",
    "Day",
    "3/4/2025",
    "Water added",
    "Factor 3"
  };

  @Test
  void isReadFilledAuditedAndMapped() {
    Random random = new Random(5);
    int filled = 0;
    for (int i = 0; i < SHEETS; i++) {
      TestGrid grid = TestGrid.of("s", text(random));
      Understanding understood = SheetUnderstanding.understand(grid, LogMap.none());
      FillOptions all = new FillOptions(EnumSet.allOf(ComputedColumn.class), FormulaStyle.PACK);
      Filling filling = LogFiller.fill(grid, understood, all);
      for (ColumnPatch column : filling.patch().columns()) {
        for (int row = column.firstRow(); row <= column.lastRow(); row++) {
          assertFalse(Double.isInfinite(column.cells().number(row)));
          column.cells().formula(row);
          filled += Double.isNaN(column.cells().number(row)) ? 0 : 1;
        }
      }
      filling.refusals().forEach(r -> assertFalse(r.reason().isEmpty()));
      LogAuditor.audit(grid, understood);
      LogMap map = LogMap.parse(LogMap.write(List.of(understood)));
      LogFiller.fill(grid, SheetUnderstanding.understand(grid, map), all);
    }
    assertFalse(filled == 0);
  }

  private static String text(Random random) {
    int rows = 1 + random.nextInt(12);
    int columns = 1 + random.nextInt(8);
    StringBuilder text = new StringBuilder();
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        text.append(
            switch (random.nextInt(5)) {
              case 0 -> "";
              case 1 -> WORDS[random.nextInt(WORDS.length)];
              case 2 -> String.valueOf(1 + random.nextInt(100) / 1000.0);
              case 3 -> String.valueOf(random.nextInt(80));
              default -> WORDS[random.nextInt(5)];
            });
        text.append(column < columns - 1 ? "|" : row < rows - 1 ? "\n" : "");
      }
    }
    return text.toString();
  }
}
