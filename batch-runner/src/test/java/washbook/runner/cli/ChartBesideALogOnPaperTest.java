package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A log that fits on a page is not cut because of a chart right of it. */
class ChartBesideALogOnPaperTest {
  private static final Path LOG = Path.of("../sample-sheets/samples/molasses-2-messy.xlsx");

  @TempDir private Path folder;

  @Test
  void theLogIsOnePageWideAndTheChartBeginsTheNext() throws IOException {
    Path filled = filled(LOG, "once");
    try (InputStream in = Files.newInputStream(filled);
        XSSFWorkbook book = new XSSFWorkbook(in)) {
      XSSFSheet sheet = book.getSheet("winter");
      int end = sheet.getRow(5).getLastCellNum();
      assertEquals("Washbook note", sheet.getRow(5).getCell(end - 1).getStringCellValue());
      // The library names the column before a break.
      assertArrayEquals(new int[] {end - 1}, sheet.getColumnBreaks());
      var chart = (XSSFClientAnchor) sheet.getDrawingPatriarch().getShapes().get(0).getAnchor();
      assertTrue(chart.getCol1() >= end, "the chart begins in column " + chart.getCol1());
      assertFalse(sheet.getFitToPage());
      assertEquals(80, sheet.getPrintSetup().getScale());
      assertTrue(sheet.getPrintSetup().getLandscape());
    }
    assertEquals(-1, Files.mismatch(filled, filled(filled, "twice")));
  }

  private Path filled(Path log, String into) {
    Cli run = Cli.run("fill", log.toString(), "--out", folder.resolve(into).toString());
    assertTrue(run.code() <= 1, run.out() + run.err());
    return folder.resolve(into).resolve(log.getFileName());
  }
}
