package washbook.runner;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Small invented logs, made by a general-purpose library. */
public final class TestLogs {
  private TestLogs() {}

  /** A ferment that falls from the given gravity by 0.008 a day. */
  public static Path plain(Path file, double originalGravity, int rows) throws IOException {
    return write(file, originalGravity, rows, -1);
  }

  /** The same with a reading that cannot be in row {@code badRow}, counted from 0. */
  public static Path withBadRow(Path file, double originalGravity, int rows, int badRow)
      throws IOException {
    return write(file, originalGravity, rows, badRow);
  }

  /** A log with an alcohol column by {@code factor} times the difference of the gravities. */
  public static Path withOwnAbv(Path file, double originalGravity, int rows, double factor)
      throws IOException {
    try (Workbook book = new XSSFWorkbook()) {
      Sheet sheet = book.createSheet("Log");
      row(sheet, 0, "Day", "SG", "Temp °C", "ABV");
      for (int i = 0; i < rows; i++) {
        double gravity = Math.round((originalGravity - 0.009 * i) * 1000) / 1000.0;
        row(sheet, i + 1, i, gravity, 20, factor * (originalGravity - gravity));
      }
      return save(book, file);
    }
  }

  /** A workbook that is no log. */
  public static Path noLog(Path file) throws IOException {
    try (Workbook book = new XSSFWorkbook()) {
      Sheet sheet = book.createSheet("Prices");
      row(sheet, 0, "Item", "Price");
      row(sheet, 1, "Crate", 4.5);
      return save(book, file);
    }
  }

  private static Path write(Path file, double originalGravity, int rows, int badRow)
      throws IOException {
    try (Workbook book = new XSSFWorkbook()) {
      Sheet sheet = book.createSheet("Log");
      row(sheet, 0, "Day", "SG", "Temp °C");
      for (int i = 0; i < rows; i++) {
        double gravity = Math.max(0.998, originalGravity - 0.008 * i);
        row(sheet, i + 1, i, i == badRow ? 7.5 : Math.round(gravity * 1000) / 1000.0, 20 + i % 5);
      }
      return save(book, file);
    }
  }

  private static void row(Sheet sheet, int number, Object... cells) {
    Row row = sheet.createRow(number);
    for (int i = 0; i < cells.length; i++) {
      if (cells[i] instanceof Number n) {
        row.createCell(i).setCellValue(n.doubleValue());
      } else {
        row.createCell(i).setCellValue((String) cells[i]);
      }
    }
  }

  private static Path save(Workbook book, Path file) throws IOException {
    Files.createDirectories(file.toAbsolutePath().getParent());
    try (OutputStream out = Files.newOutputStream(file)) {
      book.write(out);
    }
    return file;
  }
}
