package washbook.runner.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.Grid;
import washbook.log.sheet.SheetPatch;

/** Compares what the reader sees before and after. */
final class SameGrids {
  private SameGrids() {}

  /** All old cells are equal and the new ones are there. */
  static void check(List<Grid> before, List<SheetPatch> patches, List<Grid> after) {
    assertEquals(before.size(), after.size());
    for (int i = 0; i < before.size(); i++) {
      Grid old = before.get(i);
      Grid now = after.get(i);
      assertEquals(old.name(), now.name());
      assertEquals(old.merged(), now.merged());
      for (int row = 0; row < old.rowCount(); row++) {
        for (int column = 0; column < old.columnCount(); column++) {
          String place = old.name() + " " + row + " " + column;
          assertEquals(old.kind(row, column), now.kind(row, column), place);
          assertEquals(old.isFormula(row, column), now.isFormula(row, column), place);
          assertEquals(old.number(row, column), now.number(row, column), place);
          assertEquals(old.text(row, column), now.text(row, column), place);
        }
      }
    }
    ColumnPatch column = patches.get(0).columns().get(0);
    Grid patched = after.get(0);
    assertEquals(column.header(), patched.text(column.headerRow(), column.column()));
    for (int row = column.firstRow(); row <= column.lastRow(); row++) {
      assertEquals(column.cells().number(row), patched.number(row, column.column()));
      String text = column.cells().text(row);
      assertEquals(text == null ? "" : text, patched.text(row, column.column()));
    }
  }
}
