package washbook.office.menu;

import com.sun.star.container.XEnumeration;
import com.sun.star.container.XIndexAccess;
import com.sun.star.sheet.FormulaResult;
import com.sun.star.sheet.XCellAddressable;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XFormulaQuery;
import com.sun.star.sheet.XSheetCellRange;
import com.sun.star.sheet.XSheetCellRanges;
import com.sun.star.table.CellAddress;
import com.sun.star.table.XCell;
import com.sun.star.text.XText;
import com.sun.star.uno.UnoRuntime;
import java.util.ArrayList;
import java.util.List;

/** Says in words why the selected cell shows an error or nothing. */
record MenuExplain(OpenSheet sheet) {

  Outcome run() {
    XCell cell = selected();
    String formula = cell.getFormula();
    List<PackCall> calls =
        formula.startsWith("=") || formula.startsWith("{=") ? PackCall.in(formula) : List.of();
    String where = address(cell);
    if (calls.isEmpty()) {
      return Outcome.failed(where + " holds no call of a Washbook function.");
    }
    sheet.requireWritable();
    try (Scratch scratch = new Scratch(sheet, cell)) {
      for (PackCall call : calls) {
        String reason = scratch.reason(call, cell);
        if (!reason.isEmpty()) {
          return Outcome.done(where + ", " + call.name() + ": " + reason);
        }
      }
    }
    if (cell.getError() == 0) {
      return Outcome.done(where + ": no Washbook function refuses anything here.");
    }
    return Outcome.done(where + ": no Washbook function refuses anything here; " + source(cell));
  }

  /** The first cell with an error that the formula refers to. */
  private static String source(XCell cell) {
    var precedents = UnoRuntime.queryInterface(XFormulaQuery.class, cell).queryPrecedents(false);
    for (Object range : ranges(precedents)) {
      XEnumeration wrong =
          UnoRuntime.queryInterface(XCellRangesQuery.class, range)
              .queryFormulaCells(FormulaResult.ERROR)
              .getCells()
              .createEnumeration();
      try {
        if (wrong.hasMoreElements()) {
          XCell first = UnoRuntime.queryInterface(XCell.class, wrong.nextElement());
          String shown = UnoRuntime.queryInterface(XText.class, first).getString();
          return address(first) + " shows " + shown + ", and this formula uses it.";
        }
      } catch (com.sun.star.uno.Exception e) {
        throw new StoppedException("The cells that the formula uses cannot be read.", e);
      }
    }
    return "the error comes from another part of the formula.";
  }

  private static List<Object> ranges(XSheetCellRanges precedents) {
    List<Object> all = new ArrayList<>();
    XIndexAccess access = UnoRuntime.queryInterface(XIndexAccess.class, precedents);
    try {
      for (int i = 0; i < access.getCount(); i++) {
        all.add(access.getByIndex(i));
      }
      return all;
    } catch (com.sun.star.uno.Exception e) {
      throw new StoppedException("The cells that the formula uses cannot be read.", e);
    }
  }

  private XCell selected() {
    Object selection = sheet.document().getCurrentSelection();
    XSheetCellRange range = UnoRuntime.queryInterface(XSheetCellRange.class, selection);
    if (range == null) {
      throw new StoppedException("Select one cell first.");
    }
    try {
      return range.getCellByPosition(0, 0);
    } catch (com.sun.star.lang.IndexOutOfBoundsException e) {
      throw new StoppedException("Select one cell first.", e);
    }
  }

  private static String address(XCell cell) {
    CellAddress address = UnoRuntime.queryInterface(XCellAddressable.class, cell).getCellAddress();
    return washbook.log.sheet.CellAddress.of(address.Row, address.Column);
  }
}
