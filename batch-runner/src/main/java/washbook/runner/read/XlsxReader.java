package washbook.runner.read;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import washbook.log.sheet.Grid;
import washbook.runner.markup.XmlScanner;
import washbook.runner.sheet.CompactGrid;
import washbook.runner.sheet.SheetReader;
import washbook.runner.sheet.Texts;

/** Reads .xlsx and .xlsm. */
public final class XlsxReader implements SheetReader {
  @Override
  public List<Grid> read(Path file) throws IOException {
    try (XlsxPackage workbook = XlsxPackage.open(file)) {
      XlsxDates.Styles styles = XlsxDates.styles(workbook.archive(), workbook.styles());
      Texts texts = workbook.sharedStrings();
      int sharedCount = texts.size();
      List<Grid> grids = new ArrayList<>();
      for (XlsxPackage.Sheet sheet : workbook.sheets()) {
        CompactGrid grid = new CompactGrid(sheet.name(), texts).in(file);
        try (InputStream in = workbook.archive().read(sheet.part())) {
          XmlScanner scanner = new XmlScanner(in, sheet.part().name(), sheet.part().size());
          XlsxSheet cells = new XlsxSheet(scanner, grid, texts, styles, workbook.date1904());
          cells.read(sharedCount);
          for (XlsxAnchor anchor : workbook.anchors(sheet.part())) {
            grid.draw(anchor.area(cells.sizes()));
          }
        }
        grids.add(grid);
      }
      return grids;
    }
  }
}
