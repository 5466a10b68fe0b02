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
import washbook.log.language.Language;
import washbook.office.dialog.Outcome;
import washbook.office.dialog.StoppedException;
import washbook.office.language.OfficeText;

/** Says in words why the selected cell shows an error or nothing. */
record MenuExplain(OpenSheet sheet, Language language) {

  Outcome run() {
    XCell cell = selected();
    String formula = cell.getFormula();
    List<PackCall> calls =
        formula.startsWith("=") || formula.startsWith("{=") ? PackCall.in(formula) : List.of();
    String where = address(cell);
    if (calls.isEmpty()) {
      return Outcome.failed(say("explain.noCall", where));
    }
    sheet.requireWritable();
    try (Scratch scratch = new Scratch(sheet, cell, language)) {
      for (PackCall call : calls) {
        String reason = scratch.reason(call, cell);
        if (!reason.isEmpty()) {
          return Outcome.done(say("explain.refused", where, call.name(), reason));
        }
      }
    }
    if (cell.getError() == 0) {
      return Outcome.done(say("explain.nothing", where));
    }
    return Outcome.done(error(cell, where));
  }

  private String say(String key, Object... arguments) {
    return OfficeText.of(key, arguments).in(language);
  }

  /** Names the first cell with an error that the formula refers to. */
  private String error(XCell cell, String where) {
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
          return say("explain.error", where, address(first), shown);
        }
      } catch (com.sun.star.uno.Exception e) {
        throw new StoppedException("stopped.used", e);
      }
    }
    return say("explain.elsewhere", where);
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
      throw new StoppedException("stopped.used", e);
    }
  }

  private XCell selected() {
    Object selection = sheet.document().getCurrentSelection();
    XSheetCellRange range = UnoRuntime.queryInterface(XSheetCellRange.class, selection);
    if (range == null) {
      throw new StoppedException("stopped.select");
    }
    try {
      return range.getCellByPosition(0, 0);
    } catch (com.sun.star.lang.IndexOutOfBoundsException e) {
      throw new StoppedException("stopped.select", e);
    }
  }

  private static String address(XCell cell) {
    CellAddress address = UnoRuntime.queryInterface(XCellAddressable.class, cell).getCellAddress();
    return washbook.log.sheet.CellAddress.of(address.Row, address.Column);
  }
}
