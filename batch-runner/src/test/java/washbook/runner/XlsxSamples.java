package washbook.runner;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Workbooks for tests, written by a general library. */
public final class XlsxSamples {
  /** Row of the headers in {@link #log}, from 0. */
  public static final int HEADER_ROW = 2;

  /** Last row of readings in {@link #log}, from 0. */
  public static final int LAST_ROW = 12;

  /** First column right of the table in {@link #log}, from 0. */
  public static final int FREE_COLUMN = 5;

  private XlsxSamples() {}

  /**
   * A log with a title, styled headers, dates, a formula column, a blank row and a second sheet.
   */
  public static Path log(Path file) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      XSSFSheet sheet = workbook.createSheet("Plum 3");
      CellStyle title = workbook.createCellStyle();
      Font bold = workbook.createFont();
      bold.setBold(true);
      title.setFont(bold);
      CellStyle header = workbook.createCellStyle();
      header.setFont(bold);
      header.setFillForegroundColor(IndexedColors.LIGHT_YELLOW.getIndex());
      header.setFillPattern(FillPatternType.SOLID_FOREGROUND);
      header.setBorderBottom(BorderStyle.THIN);
      CellStyle date = workbook.createCellStyle();
      date.setDataFormat(workbook.createDataFormat().getFormat("yyyy-mm-dd hh:mm"));
      Cell titleCell = sheet.createRow(0).createCell(0);
      titleCell.setCellValue("Plum 3, main press & racking <cellar 2>");
      titleCell.setCellStyle(title);
      sheet.addMergedRegion(new CellRangeAddress(0, 0, 0, 4));
      String[] headers = {"Date", "SG", "Temp \u00B0C", "Points", "Note"};
      Row headerRow = sheet.createRow(HEADER_ROW);
      for (int i = 0; i < headers.length; i++) {
        Cell cell = headerRow.createCell(i);
        cell.setCellValue(headers[i]);
        cell.setCellStyle(header);
      }
      for (int row = HEADER_ROW + 1; row <= LAST_ROW; row++) {
        if (row == 7) {
          continue;
        }
        Row line = sheet.createRow(row);
        Cell day = line.createCell(0);
        day.setCellValue(LocalDateTime.of(2026, 1, row, 18, 30));
        day.setCellStyle(date);
        line.createCell(1).setCellValue(1.085 - 0.006 * (row - 3));
        line.createCell(2).setCellValue(20 + row % 3);
        line.createCell(3).setCellFormula("1000*(B" + (row + 1) + "-1)");
        if (row % 4 == 0) {
          line.createCell(4).setCellValue(" racked, \"clear\" \u00E9\u6885\uD83C\uDF4E ");
        }
      }
      XSSFSheet other = workbook.createSheet("Apple 7");
      other.createRow(4).createCell(2).setCellValue(true);
      workbook.createSheet("Empty");
      workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
      try (OutputStream out = Files.newOutputStream(file)) {
        workbook.write(out);
      }
    }
    return file;
  }
}
