package washbook.samples.sheets;

import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XIndexAccess;
import com.sun.star.sheet.FormulaResult;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.XCell;
import com.sun.star.text.XText;
import com.sun.star.uno.UnoRuntime;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import washbook.office.testing.Office;
import washbook.runner.sheet.PortableResult;
import washbook.runner.write.PortableXlsx;

/**
 * Writes the starter workbooks: formulas by POI, stored results as the office calculates them with
 * the extension, the .ods saved by the office itself. Each in two forms: with the functions and
 * plain.
 */
public final class Starters {
  /** The office's number of #N/A, which a chart does not draw. */
  static final int NOT_AVAILABLE = 32767;

  private Starters() {}

  /** Arguments: the folder to write to, the packed extension, the table of published values. */
  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments[0]);
    Path scratch = Files.createTempDirectory("starters");
    try (Office office = Office.with(Path.of(arguments[1]))) {
      for (boolean portable : new boolean[] {false, true}) {
        Path into = folder.resolve(portable ? "portable" : "pack");
        for (Map.Entry<String, Book> entry : books(portable, Path.of(arguments[2])).entrySet()) {
          Path xlsx = into.resolve(entry.getKey() + ".xlsx");
          Files.createDirectories(into);
          if (portable) {
            Path calls = scratch.resolve(entry.getKey() + ".xlsx");
            entry.getValue().save(calls);
            PortableResult result = new PortableXlsx().write(calls, xlsx);
            if (!result.left().isEmpty()) {
              throw new IllegalStateException(xlsx + ": " + result.left());
            }
          } else {
            entry.getValue().save(xlsx);
          }
          try (washbook.office.testing.Book open = office.open(xlsx)) {
            open.recalculate();
            storeResults(xlsx, open);
            open.save(into.resolve(entry.getKey() + ".ods"));
          }
        }
      }
    } finally {
      Office.delete(scratch);
    }
  }

  private static Map<String, Book> books(boolean portable, Path values) {
    Map<String, Book> books = new LinkedHashMap<>();
    for (LogScale scale : LogScale.values()) {
      books.put(scale.file, StarterLog.make(portable, scale));
    }
    books.put("still-run-log", StarterRun.make(portable));
    books.put("dilution-and-blending", StarterDilution.make(portable));
    books.put("making-up", StarterMakeUp.make(portable));
    books.put("plan", StarterPlan.make(portable));
    books.put("class", StarterClass.make(portable));
    books.put("proof", StarterProof.make(portable, values));
    return books;
  }

  private static void storeResults(Path xlsx, washbook.office.testing.Book open)
      throws IOException {
    try (InputStream in = Files.newInputStream(xlsx);
        XSSFWorkbook workbook = new XSSFWorkbook(in)) {
      for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
        Sheet sheet = workbook.getSheetAt(i);
        XSpreadsheet shown = sheet(open, i);
        for (Row row : sheet) {
          for (Cell cell : row) {
            if (cell.getCellType() == CellType.FORMULA) {
              store(cell, cell(shown, cell.getRowIndex(), cell.getColumnIndex()));
            }
          }
        }
      }
      try (OutputStream out = Files.newOutputStream(xlsx)) {
        workbook.write(out);
      }
    }
  }

  private static void store(Cell cell, XCell shown) {
    if (shown.getError() == NOT_AVAILABLE && cell.getColumnIndex() > CurvePage.LAST_COLUMN) {
      cell.setCellErrorValue(FormulaError.NA.getCode());
      return;
    }
    if (shown.getError() != 0) {
      throw new IllegalStateException(
          cell.getSheet().getSheetName() + " " + cell.getAddress() + " is an error");
    }
    String text = UnoRuntime.queryInterface(XText.class, shown).getString();
    if (isText(shown)) {
      cell.setCellValue(text);
    } else {
      cell.setCellValue(shown.getValue());
    }
  }

  /** Whether a formula gives text; an empty one counts. */
  static boolean isText(XCell cell) {
    XPropertySet properties = UnoRuntime.queryInterface(XPropertySet.class, cell);
    try {
      Object kind = properties.getPropertyValue("FormulaResultType2");
      return ((Number) kind).intValue() == FormulaResult.STRING;
    } catch (com.sun.star.uno.Exception e) {
      throw new IllegalStateException(e);
    }
  }

  static XSpreadsheet sheet(washbook.office.testing.Book open, int index) {
    try {
      Object sheets = open.as(XSpreadsheetDocument.class).getSheets();
      return UnoRuntime.queryInterface(
          XSpreadsheet.class,
          UnoRuntime.queryInterface(XIndexAccess.class, sheets).getByIndex(index));
    } catch (com.sun.star.uno.Exception e) {
      throw new IllegalStateException(e);
    }
  }

  static XCell cell(XSpreadsheet sheet, int row, int column) {
    try {
      return sheet.getCellByPosition(column, row);
    } catch (com.sun.star.lang.IndexOutOfBoundsException e) {
      throw new IllegalStateException(e);
    }
  }
}
