package washbook.runner.write;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.log.sheet.ColumnPatch;
import washbook.runner.TestColumn;

/** New columns look like the log that they stand beside. */
class XlsxLookTest {
  private static final String HEADER = "Apparent attenuation (Washbook)";

  @TempDir private Path folder;

  @Test
  void headersWrapInNarrowColumnsAndTheirRowHasRoomForThem() throws IOException {
    try (XSSFWorkbook workbook = filled()) {
      XSSFSheet sheet = workbook.getSheetAt(0);
      assertEquals(12.7, sheet.getColumnWidth(2) / 256.0, 0.1);
      assertTrue(sheet.getRow(0).getCell(2).getCellStyle().getWrapText());
      assertEquals(45, sheet.getRow(0).getHeightInPoints());
      assertEquals(36.7, sheet.getColumnWidth(3) / 256.0, 0.1);
    }
  }

  @Test
  void cellsTakeFontFillAndBorderOfTheRowAndNoAlignmentOrNumberFormat() throws IOException {
    try (XSSFWorkbook workbook = filled()) {
      XSSFSheet sheet = workbook.getSheetAt(0);
      for (int row = 1; row < 4; row++) {
        XSSFCellStyle left = sheet.getRow(row).getCell(1).getCellStyle();
        XSSFCellStyle number = sheet.getRow(row).getCell(2).getCellStyle();
        assertEquals(left.getFillForegroundColorColor(), number.getFillForegroundColorColor());
        assertEquals(left.getBorderBottom(), number.getBorderBottom());
        assertEquals(HorizontalAlignment.GENERAL, number.getAlignment());
        assertEquals("0.0", number.getDataFormatString());
      }
      assertFalse(sheet.getRow(1).getCell(2).getCellStyle().getWrapText());
      assertTrue(sheet.getRow(2).getCell(3).getCellStyle().getWrapText());
    }
  }

  @Test
  void aTextTakesAsManyLinesAsItsWordsNeed() {
    assertEquals(1, ColumnLook.lines("Real", 12));
    assertEquals(3, ColumnLook.lines(HEADER, 12));
    assertEquals(2, ColumnLook.lines("one\ntwo", 12));
    assertEquals(3, ColumnLook.lines("abcdefghijklmnopqrstuvwxyz", 12));
  }

  private XSSFWorkbook filled() throws IOException {
    Path log = folder.resolve("log.xlsx");
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      XSSFSheet sheet = workbook.createSheet("Log");
      sheet.createRow(0).createCell(0).setCellValue("Day");
      sheet.getRow(0).createCell(1).setCellValue("SG");
      for (int row = 1; row < 4; row++) {
        XSSFCellStyle style = workbook.createCellStyle();
        style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
        IndexedColors colour = row % 2 == 0 ? IndexedColors.LIGHT_GREEN : IndexedColors.WHITE;
        style.setFillForegroundColor(colour.getIndex());
        style.setBorderBottom(BorderStyle.THIN);
        style.setAlignment(HorizontalAlignment.CENTER);
        sheet.createRow(row).createCell(0).setCellValue(row);
        sheet.getRow(row).createCell(1).setCellValue(1.05);
        sheet.getRow(row).getCell(1).setCellStyle(style);
      }
      try (OutputStream out = Files.newOutputStream(log)) {
        workbook.write(out);
      }
    }
    Path filled = folder.resolve("filled.xlsx");
    ColumnPatch number = TestColumn.of(2, 0, HEADER, 3, 1, Map.of(1, 0.0, 2, 41.2, 3, 60.0));
    ColumnPatch note =
        TestColumn.of(
            3,
            0,
            "Washbook note",
            3,
            -1,
            Map.of(2, "temperature is blank; it must be 0 to 60 °C."));
    new XlsxWriter().write(log, TestColumn.on("Log", number, note), filled);
    Path again = folder.resolve("again.xlsx");
    new XlsxWriter().write(filled, TestColumn.on("Log", number, note), again);
    assertEquals(-1, Files.mismatch(filled, again));
    try (InputStream in = Files.newInputStream(filled)) {
      return new XSSFWorkbook(in);
    }
  }
}
