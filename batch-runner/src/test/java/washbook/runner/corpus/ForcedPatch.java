package washbook.runner.corpus;

import java.util.List;
import java.util.Map;
import washbook.log.sheet.Grid;
import washbook.log.sheet.SheetPatch;
import washbook.runner.TestColumn;

/** Columns put beside everything a file holds, whether it is a log or not. */
final class ForcedPatch {
  static final String HEADER = "Washbook probe";
  static final int HEADER_ROW = 1;
  static final int LAST_ROW = 4;

  private ForcedPatch() {}

  /** One column with a number and a text, right of the first sheet's last used column. */
  static List<SheetPatch> on(List<Grid> grids) {
    Grid grid = grids.get(0);
    return TestColumn.on(
        grid.name(),
        TestColumn.of(
            grid.columnCount(), HEADER_ROW, HEADER, LAST_ROW, 3, Map.of(2, 1.085, 4, "a < b")));
  }
}
