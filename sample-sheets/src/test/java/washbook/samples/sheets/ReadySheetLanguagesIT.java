package washbook.samples.sheets;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XUsedAreaCursor;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XTableChart;
import com.sun.star.table.XTableChartsSupplier;
import com.sun.star.uno.UnoRuntime;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.office.testing.Office;

/** Ready sheets of other languages give in the office what the English ones give. */
class ReadySheetLanguagesIT {
  private static final List<String> BOOKS =
      List.of(
          "ferment-log", "still-run-log", "dilution-and-blending", "making-up", "plan", "class");

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
  @ValueSource(strings = {"de", "fr", "es", "it", "pt", "nl", "af"})
  void allFiguresAreThoseOfTheEnglishSheets(String language) {
    for (String form : List.of("pack", "portable")) {
      for (String book : BOOKS) {
        for (String kind : List.of(".ods", ".xlsx")) {
          Path file = Path.of(form, book + kind);
          List<Object[]> expected = figures(MadeReadySheets.ENGLISH.resolve(file));
          assertTrue(expected.size() > 10, file.toString());
          List<Object[]> there = figures(ready.resolve(language).resolve(file));
          assertArrayEquals(expected.toArray(), there.toArray(), language + " " + file);
        }
      }
    }
  }

  /** Numbers of all sheets with where they stand, recalculated. */
  private static List<Object[]> figures(Path file) {
    List<Object[]> figures = new ArrayList<>();
    try (washbook.office.testing.Book book = office.open(file)) {
      book.recalculate();
      int sheets = book.as(XSpreadsheetDocument.class).getSheets().getElementNames().length;
      for (int i = 0; i < sheets; i++) {
        Object[][] rows = used(Starters.sheet(book, i));
        for (int row = 0; row < rows.length; row++) {
          for (int column = 0; column < rows[row].length; column++) {
            if (rows[row][column] instanceof Double number) {
              figures.add(new Object[] {i, row, column, number});
            }
          }
        }
      }
    }
    return figures;
  }

  private static Object[][] used(XSpreadsheet sheet) {
    XUsedAreaCursor cursor = UnoRuntime.queryInterface(XUsedAreaCursor.class, sheet.createCursor());
    cursor.gotoEndOfUsedArea(false);
    CellRangeAddress end =
        UnoRuntime.queryInterface(XCellRangeAddressable.class, cursor).getRangeAddress();
    try {
      return UnoRuntime.queryInterface(
              XCellRangeData.class, sheet.getCellRangeByPosition(0, 0, end.EndColumn, end.EndRow))
          .getDataArray();
    } catch (com.sun.star.lang.IndexOutOfBoundsException e) {
      throw new IllegalStateException(e);
    }
  }

  /** A kind chosen from the list of the language is the one that the functions know. */
  @ParameterizedTest
  @ValueSource(strings = {"pack", "portable"})
  void anyKindCanBeChosenInTheLanguage(String form) {
    Path english = MadeReadySheets.ENGLISH.resolve(form).resolve("making-up.ods");
    List<String> codes =
        Arrays.asList(
            "SUCROSE", "DEXTROSE", "INVERT", "HONEY", "MOLASSES", "MALTEXTRACT", "DRYMALT");
    List<String> words =
        Arrays.asList(
            "saccharose",
            "dextrose",
            "sucre inverti",
            "miel",
            "mélasse",
            "extrait de malt",
            "extrait de malt sec");
    for (String kind : List.of(".ods", ".xlsx")) {
      Path french = ready.resolve("fr").resolve(form).resolve("making-up" + kind);
      try (washbook.office.testing.Book one = office.open(english);
          washbook.office.testing.Book other = office.open(french)) {
        for (int i = 0; i < codes.size(); i++) {
          one.text("B9", codes.get(i)).recalculate();
          other.text("B9", words.get(i)).recalculate();
          assertEquals(one.number("B10"), other.number("B10"), 1e-9, words.get(i));
          assertTrue(other.number("B10") > 1, words.get(i));
        }
      }
    }
  }

  /** What a chart draws is on its own sheet, whose name is another. */
  @Test
  void aChartDrawsItsOwnSheet() throws Exception {
    try (washbook.office.testing.Book book =
        office.open(ready.resolve("de/pack/ferment-log.ods"))) {
      var charts =
          UnoRuntime.queryInterface(XTableChartsSupplier.class, Starters.sheet(book, 1))
              .getCharts();
      String[] names = charts.getElementNames();
      assertEquals(3, names.length);
      for (String name : names) {
        var ranges =
            UnoRuntime.queryInterface(XTableChart.class, charts.getByName(name)).getRanges();
        assertTrue(ranges.length > 0, name);
        Arrays.stream(ranges).forEach(range -> assertEquals(1, range.Sheet, name));
      }
    }
  }
}
