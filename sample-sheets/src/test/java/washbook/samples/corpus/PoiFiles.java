package washbook.samples.corpus;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import washbook.log.sheet.Grid;

/** Writes pages as .xlsx or .xls. */
final class PoiFiles {
  private final Workbook workbook;
  private final Dialect dialect;
  private final Map<String, CellStyle> styles = new HashMap<>();

  private PoiFiles(Workbook workbook, Dialect dialect) {
    this.workbook = workbook;
    this.dialect = dialect;
  }

  static void write(Log log, Path file) throws IOException {
    boolean old = file.toString().endsWith(".xls");
    try (Workbook workbook = old ? new HSSFWorkbook() : new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      new PoiFiles(workbook, log.dialect()).fill(log);
      workbook.write(out);
    }
  }

  private void fill(Log log) {
    for (Page page : log.pages()) {
      Sheet sheet = workbook.createSheet(page.name());
      page.cells()
          .forEach(
              (r, line) -> {
                Row row = sheet.createRow(r);
                line.forEach((c, value) -> put(row.createCell(c), value));
              });
      for (Grid.Area area : page.merged()) {
        sheet.addMergedRegion(
            new CellRangeAddress(
                area.firstRow(), area.lastRow(), area.firstColumn(), area.lastColumn()));
      }
    }
  }

  private void put(Cell cell, Object value) {
    if (value instanceof Page.Shown shown) {
      put(cell, shown.value());
      cell.setCellStyle(style(shown.format()));
    } else if (value instanceof Page.Formula formula) {
      cell.setCellFormula(formula.text());
      cell.setCellValue(formula.result());
    } else if (value instanceof Number number) {
      cell.setCellValue(number.doubleValue());
    } else if (value instanceof LocalDate date) {
      cell.setCellValue(date);
      cell.setCellStyle(style(dialect.date().toLowerCase(Locale.ROOT)));
    } else if (value instanceof LocalDateTime time) {
      cell.setCellValue(time);
      cell.setCellStyle(style(dialect.date().toLowerCase(Locale.ROOT) + " hh:mm"));
    } else if (value instanceof LocalTime time) {
      cell.setCellValue(DateUtil.convertTime(time.toString()));
      cell.setCellStyle(style("hh:mm"));
    } else {
      cell.setCellValue(value.toString());
    }
  }

  private CellStyle style(String format) {
    return styles.computeIfAbsent(
        format,
        f -> {
          CellStyle style = workbook.createCellStyle();
          style.setDataFormat(workbook.createDataFormat().getFormat(f));
          return style;
        });
  }
}
