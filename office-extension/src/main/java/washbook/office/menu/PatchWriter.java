package washbook.office.menu;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.Locale;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.util.MalformedNumberFormatException;
import com.sun.star.util.XNumberFormats;
import com.sun.star.util.XNumberFormatsSupplier;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.Grid;
import washbook.log.sheet.SheetPatch;
import washbook.office.dialog.StoppedException;

/**
 * Puts computed columns into an open sheet, in runs of cells as long as can be: a call for each
 * cell takes minutes for a long log. Cells that hold the right thing already are not touched.
 */
final class PatchWriter {
  /** The office's own, whichever that is. */
  private static final Locale USUAL = new Locale("", "", "");

  private final OpenSheet sheet;
  private final Grid before;
  private final boolean formulas;
  private final CellRun run;
  private final HeaderLook look;

  PatchWriter(OpenSheet sheet, Grid before, boolean formulas) {
    this.sheet = sheet;
    this.before = before;
    this.formulas = formulas;
    this.run = new CellRun(sheet);
    this.look = new HeaderLook(sheet, before);
  }

  /** Inside one step of undo; the sheet is computed when all is written. */
  void write(SheetPatch patch) {
    XCalculatable calculation = sheet.document(XCalculatable.class);
    boolean automatic = calculation.isAutomaticCalculationEnabled();
    calculation.enableAutomaticCalculation(false);
    try {
      for (ColumnPatch column : patch.columns()) {
        write(column);
      }
    } catch (com.sun.star.uno.Exception e) {
      throw new StoppedException("stopped.write", e);
    } finally {
      calculation.enableAutomaticCalculation(automatic);
    }
  }

  private void write(ColumnPatch patch) throws com.sun.star.uno.Exception {
    int column = patch.column();
    text(patch.headerRow(), column, patch.header());
    for (int row = patch.firstRow(); row <= patch.lastRow(); row++) {
      if (!patch.owns(row)) {
        run.end();
        continue;
      }
      double number = patch.cells().number(row);
      String text = patch.cells().text(row);
      String formula = formulas ? patch.cells().formula(row) : null;
      if (formula != null) {
        run.formula(row, column, "=" + CalcFormulaText.forCalc(formula), isEmpty(row, column));
      } else if (!Double.isNaN(number)) {
        number(row, column, number);
      } else {
        text(row, column, text == null ? "" : text);
      }
    }
    run.end();
    look.apply(patch);
    if (patch.decimals() >= 0) {
      formats(patch);
    }
  }

  /** A format for each stretch of rows with the same digits. */
  private void formats(ColumnPatch patch) throws com.sun.star.uno.Exception {
    int from = patch.firstRow();
    for (int row = from; row <= patch.lastRow(); row++) {
      boolean last = row == patch.lastRow();
      if (last || patch.decimals(row + 1) != patch.decimals(from) || !patch.owns(row + 1)) {
        if (patch.owns(from) && patch.decimals(from) >= 0) {
          XCellRange cells =
              sheet.sheet().getCellRangeByPosition(patch.column(), from, patch.column(), row);
          UnoRuntime.queryInterface(XPropertySet.class, cells)
              .setPropertyValue("NumberFormat", format(patch.decimals(from)));
        }
        from = row + 1;
      }
    }
  }

  private void number(int row, int column, double number) throws com.sun.star.uno.Exception {
    if (before.isFormula(row, column) || before.number(row, column) != number) {
      run.value(row, column, number, isEmpty(row, column));
    }
  }

  private void text(int row, int column, String text) throws com.sun.star.uno.Exception {
    boolean same =
        !before.isFormula(row, column)
            && before.text(row, column).equals(text)
            && (!text.isEmpty() || before.kind(row, column) == Grid.Kind.BLANK);
    if (!same) {
      run.value(row, column, text, isEmpty(row, column));
    } else if (text.isEmpty()) {
      run.blank(row, column);
    }
  }

  private boolean isEmpty(int row, int column) {
    return !before.isFormula(row, column) && before.kind(row, column) == Grid.Kind.BLANK;
  }

  /** With the decimal sign that the office has, as in the cells that a person types into. */
  private int format(int decimals) throws MalformedNumberFormatException {
    XNumberFormats formats = sheet.document(XNumberFormatsSupplier.class).getNumberFormats();
    String code = decimals == 0 ? "0" : "0." + "0".repeat(decimals);
    return formats.addNewConverted(code, new Locale("en", "US", ""), USUAL);
  }
}
