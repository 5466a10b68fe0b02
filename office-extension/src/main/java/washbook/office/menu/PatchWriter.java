package washbook.office.menu;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.Locale;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.text.XText;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.util.MalformedNumberFormatException;
import com.sun.star.util.XNumberFormats;
import com.sun.star.util.XNumberFormatsSupplier;
import washbook.functions.log.ColumnPatch;
import washbook.functions.log.Grid;
import washbook.functions.log.SheetPatch;

/**
 * Puts computed columns into an open sheet, cell by cell: the office keeps no undo for data that is
 * put into a whole range. Cells that hold the right thing already are not touched.
 */
final class PatchWriter {
  private final OpenSheet sheet;
  private final Grid before;
  private final boolean formulas;

  PatchWriter(OpenSheet sheet, Grid before, boolean formulas) {
    this.sheet = sheet;
    this.before = before;
    this.formulas = formulas;
  }

  void write(SheetPatch patch) {
    try {
      for (ColumnPatch column : patch.columns()) {
        write(column);
      }
    } catch (com.sun.star.uno.Exception e) {
      throw new StoppedException("The sheet could not be written.", e);
    }
  }

  private void write(ColumnPatch patch) throws com.sun.star.uno.Exception {
    int column = patch.column();
    text(patch.headerRow(), column, patch.header());
    for (int row = patch.firstRow(); row <= patch.lastRow(); row++) {
      double number = patch.cells().number(row);
      String text = patch.cells().text(row);
      String formula = formulas ? patch.cells().formula(row) : null;
      if (formula != null) {
        cell(row, column).setFormula("=" + FormulaText.forCalc(formula));
      } else if (!Double.isNaN(number)) {
        number(row, column, number);
      } else {
        text(row, column, text == null ? "" : text);
      }
    }
    if (patch.decimals() >= 0) {
      XCellRange cells = range(column, patch.firstRow(), patch.lastRow());
      UnoRuntime.queryInterface(XPropertySet.class, cells)
          .setPropertyValue("NumberFormat", format(patch.decimals()));
    }
  }

  private void number(int row, int column, double number) throws com.sun.star.uno.Exception {
    if (before.isFormula(row, column) || before.number(row, column) != number) {
      cell(row, column).setValue(number);
    }
  }

  private void text(int row, int column, String text) throws com.sun.star.uno.Exception {
    boolean same =
        !before.isFormula(row, column)
            && before.text(row, column).equals(text)
            && (!text.isEmpty() || before.kind(row, column) == Grid.Kind.BLANK);
    if (same) {
      return;
    }
    if (text.isEmpty()) {
      cell(row, column).setFormula("");
    } else {
      UnoRuntime.queryInterface(XText.class, cell(row, column)).setString(text);
    }
  }

  private XCell cell(int row, int column) throws com.sun.star.uno.Exception {
    return sheet.sheet().getCellByPosition(column, row);
  }

  private XCellRange range(int column, int firstRow, int lastRow)
      throws com.sun.star.lang.IndexOutOfBoundsException {
    return sheet.sheet().getCellRangeByPosition(column, firstRow, column, lastRow);
  }

  private int format(int decimals) throws MalformedNumberFormatException {
    XNumberFormats formats = sheet.document(XNumberFormatsSupplier.class).getNumberFormats();
    Locale english = new Locale("en", "US", "");
    String code = decimals == 0 ? "0" : "0." + "0".repeat(decimals);
    int key = formats.queryKey(code, english, false);
    return key >= 0 ? key : formats.addNew(code, english);
  }
}
