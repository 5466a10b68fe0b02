package washbook.office.menu;

import com.sun.star.sheet.XCellAddressable;
import com.sun.star.sheet.XSheetCellRange;
import com.sun.star.table.CellAddress;
import com.sun.star.table.XCell;
import com.sun.star.uno.UnoRuntime;
import java.util.List;

/** Says in words why the selected cell shows an error or nothing. */
record ExplainCommand(OpenSheet sheet) {

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
    try (Scratch scratch = new Scratch(sheet)) {
      for (PackCall call : calls) {
        String reason = scratch.reason(call, cell);
        if (!reason.isEmpty()) {
          return Outcome.done(where + ", " + call.name() + ": " + reason);
        }
      }
    }
    return Outcome.done(
        cell.getError() == 0
            ? where + ": no Washbook function refuses anything here."
            : where
                + ": no Washbook function refuses anything here; the error comes from"
                + " another part of the formula or from a cell that it refers to.");
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
    return washbook.functions.log.CellAddress.of(address.Row, address.Column);
  }
}
