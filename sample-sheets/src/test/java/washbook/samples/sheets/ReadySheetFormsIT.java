package washbook.samples.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XNamed;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XUsedAreaCursor;
import com.sun.star.table.CellContentType;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.text.XText;
import com.sun.star.uno.UnoRuntime;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.office.testing.Office;

/**
 * Who reads a sheet with functions and one in plain formulas sees one figure: wherever both have
 * one under the same words, the office shows the same digits. The functions' own proof stands in
 * one form alone.
 */
class ReadySheetFormsIT {
  /** Right of these are what charts draw, and nothing that is printed. */
  private static final int COLUMNS = CurvePage.FIRST_COLUMN;

  private static final List<String> LANGUAGES =
      List.of("en", "de", "fr", "es", "it", "pt", "nl", "af");

  @TempDir static Path ready;
  private static Office office;

  @BeforeAll
  static void start() throws Exception {
    MadeReadySheets.into(ready);
    office = Office.with(Path.of(System.getProperty("washbook.oxt")));
  }

  @AfterAll
  static void end() {
    office.close();
  }

  @ParameterizedTest
  @CsvSource({
    "ferment-log, 50",
    "ferment-log-fahrenheit, 50",
    "ferment-log-brix, 50",
    "ferment-log-oechsle, 50",
    "still-run-log, 60",
    "dilution-and-blending, 8",
    "making-up, 8",
    "plan, 18",
    "class, 70"
  })
  void bothFormsShowTheSameFigures(String book, int least) throws Exception {
    for (String language : LANGUAGES) {
      Path folder = language.equals("en") ? MadeReadySheets.ENGLISH : ready.resolve(language);
      for (String kind : List.of(".ods", ".xlsx")) {
        Path pack = folder.resolve("pack").resolve(book + kind);
        assertTrue(Files.exists(pack), pack.toString());
        Map<String, String> exact = shown(pack);
        Map<String, String> plain = shown(folder.resolve("portable").resolve(book + kind));
        exact.keySet().retainAll(plain.keySet());
        plain.keySet().retainAll(exact.keySet());
        assertEquals(exact, plain, language + " " + book + kind);
        assertTrue(exact.size() >= least, language + " " + book + kind + ": " + exact.size());
      }
    }
  }

  /** What cells with formulas show as a number, by sheet, section, line and head. */
  private static Map<String, String> shown(Path file) throws Exception {
    Map<String, String> shown = new TreeMap<>();
    try (washbook.office.testing.Book book = office.open(file)) {
      book.recalculate();
      int sheets = book.as(XSpreadsheetDocument.class).getSheets().getElementNames().length;
      for (int i = 0; i < sheets; i++) {
        take(Starters.sheet(book, i), shown);
      }
    }
    return shown;
  }

  private static void take(XSpreadsheet sheet, Map<String, String> shown) throws Exception {
    XUsedAreaCursor cursor = UnoRuntime.queryInterface(XUsedAreaCursor.class, sheet.createCursor());
    cursor.gotoEndOfUsedArea(false);
    CellRangeAddress end =
        UnoRuntime.queryInterface(XCellRangeAddressable.class, cursor).getRangeAddress();
    String name = UnoRuntime.queryInterface(XNamed.class, sheet).getName();
    Map<Integer, String> heads = new HashMap<>();
    Map<String, Integer> seen = new HashMap<>();
    String section = "";
    for (int row = 0; row <= end.EndRow; row++) {
      String first = text(sheet.getCellByPosition(0, row));
      boolean alone = !first.isEmpty();
      for (int column = 0; column < Math.min(COLUMNS, end.EndColumn + 1); column++) {
        XCell cell = sheet.getCellByPosition(column, row);
        String text = text(cell);
        alone &= column == 0 || text.isEmpty();
        if (!text.isEmpty() && !isNumber(cell)) {
          heads.put(column, text);
        } else if (isShown(sheet, column)
            && isNumber(cell)
            && cell.getType() == CellContentType.FORMULA
            && !text.isEmpty()) {
          // A line is told by its words or, in a table, by its place below the heads.
          String line =
              isNumber(sheet.getCellByPosition(0, row)) || first.isEmpty() ? row + "" : first;
          String head = column == 1 ? "" : heads.getOrDefault(column, "");
          String key = String.join(" | ", name, section, line, column + "", head);
          shown.put(key + " | " + seen.merge(key, 1, Integer::sum), text);
        }
      }
      section = alone ? first : section;
    }
  }

  private static boolean isShown(XSpreadsheet sheet, int column) throws Exception {
    Object one =
        UnoRuntime.queryInterface(XColumnRowRange.class, sheet).getColumns().getByIndex(column);
    return (boolean)
        UnoRuntime.queryInterface(XPropertySet.class, one).getPropertyValue("IsVisible");
  }

  private static boolean isNumber(XCell cell) {
    return cell.getType() == CellContentType.VALUE
        || cell.getType() == CellContentType.FORMULA
            && cell.getError() == 0
            && !Starters.isText(cell);
  }

  private static String text(XCell cell) {
    return UnoRuntime.queryInterface(XText.class, cell).getString();
  }
}
