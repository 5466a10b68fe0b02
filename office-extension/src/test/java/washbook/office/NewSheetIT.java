package washbook.office;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XSpreadsheets;
import com.sun.star.table.XTableChartsSupplier;
import com.sun.star.uno.UnoRuntime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.office.testing.Book;

/** Commands that add a sheet to the open document. */
class NewSheetIT {
  private static Book log(Book book) {
    return book.data(
        "A1:D5",
        new Object[][] {
          {"Day", "SG", "Temp °C", "ABV %"},
          {0.0, 1.085, 20.0, 0.0},
          {3.0, 1.05, 24.0, 4.0},
          {6.0, 1.02, "", ""},
          {9.0, 1.0, 21.0, ""}
        });
  }

  @ParameterizedTest
  @ValueSource(strings = {"audit", "charts"})
  void addsASheetInOneStepOfUndo(String command) throws Exception {
    try (Book book = log(SharedOffice.get().visibleBook())) {
      book.number("B5", 0.999);
      XUndoManager undo = book.as(XUndoManagerSupplier.class).getUndoManager();
      String[] before = undo.getAllUndoActionTitles();
      book.dispatch("washbook.office:" + command + "?ask=no");
      XSpreadsheets sheets = book.as(XSpreadsheetDocument.class).getSheets();
      String name = "Washbook " + command;
      assertEquals(name, sheets.getElementNames()[1]);
      assertEquals(before.length + 1, undo.getAllUndoActionTitles().length);
      List<Object> written = content(sheets, name);
      for (int i = 0; i < 2; i++) {
        undo.undo();
        assertFalse(sheets.hasByName(name));
        undo.redo();
        assertEquals(written, content(sheets, name));
      }
      undo.undo();
      assertArrayEquals(before, undo.getAllUndoActionTitles());
      undo.undo();
      assertEquals(1.0, book.number("B5"));
    }
  }

  /** Its figures and the number of its charts, to which the office gives other names. */
  private static List<Object> content(XSpreadsheets sheets, String name) throws Exception {
    XSpreadsheet sheet = UnoRuntime.queryInterface(XSpreadsheet.class, sheets.getByName(name));
    List<Object> content = new ArrayList<>();
    XCellRangeData cells =
        UnoRuntime.queryInterface(XCellRangeData.class, sheet.getCellRangeByName("A1:F30"));
    Arrays.stream(cells.getDataArray()).map(Arrays::asList).forEach(content::add);
    content.add(
        UnoRuntime.queryInterface(XTableChartsSupplier.class, sheet)
            .getCharts()
            .getElementNames()
            .length);
    return content;
  }

  @ParameterizedTest
  @ValueSource(strings = {"audit", "charts"})
  void forgetsStepsThatWouldEndTheOfficeWhereNoWindowIs(String command) throws Exception {
    try (Book book = log(SharedOffice.get().newBook())) {
      book.dispatch("washbook.office:" + command + "?ask=no");
      XSpreadsheets sheets = book.as(XSpreadsheetDocument.class).getSheets();
      assertEquals("Washbook " + command, sheets.getElementNames()[1]);
      assertFalse(book.as(XUndoManagerSupplier.class).getUndoManager().isUndoPossible());
    }
  }
}
