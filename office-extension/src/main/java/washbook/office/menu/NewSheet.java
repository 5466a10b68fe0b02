package washbook.office.menu;

import com.sun.star.awt.FontWeight;
import com.sun.star.beans.XPropertySet;
import com.sun.star.container.NoSuchElementException;
import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.lang.WrappedTargetException;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XSpreadsheetView;
import com.sun.star.sheet.XSpreadsheets;
import com.sun.star.table.XCellRange;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.util.XModifiable;
import java.util.List;
import java.util.function.Consumer;
import washbook.office.dialog.StoppedException;

/** A sheet that a command adds to the open document. */
record NewSheet(OpenSheet document, XSpreadsheet sheet) {

  /** Adds an empty one behind all others. */
  static NewSheet add(OpenSheet document, String name) {
    XSpreadsheets sheets = sheets(document);
    sheets.insertNewByName(name, (short) sheets.getElementNames().length);
    try {
      XSpreadsheet made = UnoRuntime.queryInterface(XSpreadsheet.class, sheets.getByName(name));
      return new NewSheet(document, made);
    } catch (NoSuchElementException | WrappedTargetException e) {
      throw new StoppedException("stopped.write", e);
    }
  }

  /**
   * Adds one and writes it, as one step of undo; where that fails it is gone again, and all steps
   * are forgotten. So they are in a document without a window: the office undoes a new sheet
   * through the window in front, and without one it ends (7.4) or does nothing (25.2).
   */
  static void write(OpenSheet document, String title, String name, Consumer<NewSheet> writing) {
    XUndoManager undo = document.document(XUndoManagerSupplier.class).getUndoManager();
    XModifiable changes = document.document(XModifiable.class);
    boolean modified = changes.isModified();
    try {
      undo.enterUndoContext(title);
      writing.accept(add(document, name));
      undo.leaveUndoContext();
      if (!document.isShown()) {
        undo.clear();
      }
    } catch (Throwable trouble) {
      boolean isRemoved = isRemoved(document, name, changes, modified);
      undo.reset(); // which also ends our step
      throw StoppedException.after(trouble, isRemoved ? "nothing.changed" : "nothing.takenBack");
    }
  }

  private static boolean isRemoved(
      OpenSheet document, String name, XModifiable changes, boolean modified) {
    try {
      XSpreadsheets sheets = sheets(document);
      if (sheets.hasByName(name)) {
        sheets.removeByName(name);
      }
      changes.setModified(modified);
      return true;
    } catch (com.sun.star.uno.Exception | RuntimeException e) {
      return false;
    }
  }

  static XSpreadsheets sheets(OpenSheet document) {
    return document.document(XSpreadsheetDocument.class).getSheets();
  }

  /** The name, or with a number behind it where that is taken. */
  static String free(OpenSheet document, String name) {
    List<String> taken = List.of(sheets(document).getElementNames());
    String free = name;
    for (int i = 2; taken.contains(free); i++) {
      free = name + " " + i;
    }
    return free;
  }

  /** Puts numbers and texts below each other from a row on; null leaves a cell blank. */
  void put(int row, List<Object[]> rows) throws com.sun.star.uno.Exception {
    int columns = rows.get(0).length;
    Object[][] cells = new Object[rows.size()][columns];
    for (int i = 0; i < cells.length; i++) {
      for (int j = 0; j < columns; j++) {
        Object cell = rows.get(i)[j];
        boolean blank = cell == null || cell.equals(Double.NaN);
        cells[i][j] = blank ? "" : cell instanceof Integer count ? count.doubleValue() : cell;
      }
    }
    XCellRange range = sheet.getCellRangeByPosition(0, row, columns - 1, row + cells.length - 1);
    UnoRuntime.queryInterface(XCellRangeData.class, range).setDataArray(cells);
  }

  void bold(int row, int columns) {
    set(row, columns, "CharWeight", FontWeight.BOLD);
  }

  void wrap(int row, int columns) {
    set(row, columns, "IsTextWrapped", true);
  }

  private void set(int row, int columns, String property, Object value) {
    try {
      UnoRuntime.queryInterface(
              XPropertySet.class, sheet.getCellRangeByPosition(0, row, columns - 1, row))
          .setPropertyValue(property, value);
    } catch (com.sun.star.uno.Exception e) {
      throw new StoppedException("stopped.write", e);
    }
  }

  /** As wide as in centimetres. */
  void widths(double... centimetres) throws com.sun.star.uno.Exception {
    var columns = UnoRuntime.queryInterface(XColumnRowRange.class, sheet).getColumns();
    for (int i = 0; i < centimetres.length; i++) {
      UnoRuntime.queryInterface(XPropertySet.class, columns.getByIndex(i))
          .setPropertyValue("Width", (int) Math.round(centimetres[i] * 1000));
    }
  }

  /** Brings it to the front of its window. */
  void show() {
    XSpreadsheetView view =
        UnoRuntime.queryInterface(
            XSpreadsheetView.class, document.document().getCurrentController());
    if (view != null) {
      view.setActiveSheet(sheet);
    }
  }
}
