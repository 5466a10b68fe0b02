package washbook.samples.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XNamed;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XUsedAreaCursor;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
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

  /** One with a decimal point and one with a comma; {@code -Dwashbook.languages=all} takes all. */
  private static final List<String> LANGUAGES =
      "all".equals(System.getProperty("washbook.languages"))
          ? List.of("en", "de", "fr", "es", "it", "pt", "nl", "af")
          : List.of("en", "de");

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
    "still-run-log, 50",
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
    int columns = Math.min(COLUMNS, end.EndColumn + 1);
    XCellRange cells = sheet.getCellRangeByPosition(0, 0, columns - 1, end.EndRow);
    // All at once: the office answers each question about a single cell slowly.
    Object[][] values = UnoRuntime.queryInterface(XCellRangeData.class, cells).getDataArray();
    String[][] formulas =
        UnoRuntime.queryInterface(XCellRangeFormula.class, cells).getFormulaArray();
    boolean[] isShown = new boolean[columns];
    for (int column = 0; column < columns; column++) {
      isShown[column] = isShown(sheet, column);
    }
    String[] heads = new String[columns];
    Map<String, Integer> seen = new HashMap<>();
    String section = "";
    for (int row = 0; row <= end.EndRow; row++) {
      // A line is told by its words or, in a table, by its place below the heads.
      boolean named = values[row][0] instanceof String words && !words.isEmpty();
      String line = named ? (String) values[row][0] : "row " + row;
      boolean alone = named;
      for (int column = 0; column < columns; column++) {
        Object value = values[row][column];
        alone &= column == 0 || "".equals(value);
        if (value instanceof String words) {
          heads[column] = words.isEmpty() ? heads[column] : words;
        } else if (isShown[column] && formulas[row][column].startsWith("=")) {
          String head = column == 1 ? "" : heads[column];
          String key = String.join(" | ", name, section, line, column + "", head);
          XCell cell = sheet.getCellByPosition(column, row);
          shown.put(key + " | " + seen.merge(key, 1, Integer::sum), text(cell));
        }
      }
      section = alone ? line : section;
    }
    // An .ods has a zero where a formula gave an empty text; the cell shows none.
    shown.values().removeIf(String::isEmpty);
  }

  private static boolean isShown(XSpreadsheet sheet, int column) throws Exception {
    Object one =
        UnoRuntime.queryInterface(XColumnRowRange.class, sheet).getColumns().getByIndex(column);
    return (boolean)
        UnoRuntime.queryInterface(XPropertySet.class, one).getPropertyValue("IsVisible");
  }

  private static String text(XCell cell) {
    return UnoRuntime.queryInterface(XText.class, cell).getString();
  }
}
