package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A log that was printed one page wide still is with our columns: their notes give way. */
class OnePageWideTest {
  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"log.xlsx", "log.xls"})
  void notesBecomeNarrowerWhereTheSheetWouldNeedASecondPageBesideTheFirst(String name)
      throws IOException {
    Path log = log(name);
    Cli run = Cli.run("fill", log.toString(), "--out", folder.resolve("out").toString());
    assertEquals(1, run.code(), run.out() + run.err());
    try (InputStream in = Files.newInputStream(folder.resolve("out").resolve(name));
        Workbook book = WorkbookFactory.create(in)) {
      Sheet sheet = book.getSheetAt(0);
      assertEquals(1, sheet.getPrintSetup().getFitWidth());
      assertEquals(0, sheet.getPrintSetup().getFitHeight());
      assertTrue(sheet.getPrintSetup().getLandscape());
      // The library has this bit of an .xls under another name.
      assertTrue(sheet instanceof HSSFSheet old ? old.getAutobreaks() : sheet.getFitToPage());
      Row head = sheet.getRow(0);
      int note = head.getLastCellNum() - 1;
      double width = sheet.getColumnWidth(note) / 256.0;
      assertTrue(width > 15 && width < 31, width + " characters");
      // As high as its words need in so narrow a column.
      assertTrue(sheet.getRow(3).getHeightInPoints() > 2 * sheet.getDefaultRowHeightInPoints());
    }
  }

  private Path log(String name) throws IOException {
    Path log = folder.resolve(name);
    String[] heads = {"Day", "SG", "Temp C", "pH", "Acid", "Smell", "Who"};
    try (Workbook book = name.endsWith("x") ? new XSSFWorkbook() : new HSSFWorkbook();
        OutputStream out = Files.newOutputStream(log)) {
      Sheet sheet = book.createSheet("Log");
      Row head = sheet.createRow(0);
      for (int i = 0; i < heads.length; i++) {
        head.createCell(i).setCellValue(heads[i]);
      }
      double[] gravities = {1.085, 1.06, 1.04, 1.02, 1.004};
      for (int i = 0; i < gravities.length; i++) {
        Row row = sheet.createRow(i + 1);
        row.createCell(0).setCellValue(2 * i);
        row.createCell(1).setCellValue(gravities[i]);
        row.createCell(2).setCellValue(20);
        row.createCell(6).setCellValue("me");
      }
      sheet.getRow(3).getCell(1).setCellValue("~1.04");
      book.write(out);
    }
    return log;
  }
}
