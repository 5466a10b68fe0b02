package washbook.runner.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.Grid;
import washbook.log.sheet.SheetPatch;

/** All that POI can tell of an .xls workbook stays, but for the patched cells. */
public final class XlsChangeCheck implements ChangeCheck {
  @Override
  public void check(
      Path before,
      List<Grid> gridsBefore,
      List<SheetPatch> patches,
      Path after,
      List<Grid> gridsAfter)
      throws Exception {
    SameGrids.check(gridsBefore, patches, gridsAfter);
    ColumnPatch column = patches.get(0).columns().get(0);
    Map<String, String> difference = XlsCells.difference(XlsCells.of(before), XlsCells.of(after));
    String sheet = "0 " + gridsBefore.get(0).name() + "!";
    for (int row = column.headerRow(); row <= column.lastRow(); row++) {
      difference.remove(sheet + CellAddress.of(row, column.column()));
    }
    assertEquals(Map.of(), difference);
  }
}
