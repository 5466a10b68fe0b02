package washbook.office.menu;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.sheet.AddressConvention;
import com.sun.star.sheet.CellFlags;
import com.sun.star.sheet.XArrayFormulaRange;
import com.sun.star.sheet.XCellAddressable;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XFormulaParser;
import com.sun.star.sheet.XFormulaTokens;
import com.sun.star.sheet.XSheetCellRange;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.CellAddress;
import com.sun.star.table.XCell;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.util.XProtectable;
import java.util.ArrayList;
import java.util.List;
import washbook.functions.portable.FormulaRewriter;
import washbook.functions.portable.FormulaSyntax;

/** The formulas of a document that call our functions, and what would stand in their place. */
final class FormulaCells {
  private final FormulaRewriter rewriter = new FormulaRewriter(FormulaSyntax.A1);
  private final List<Runnable> changes = new ArrayList<>();
  private final List<String> left = new ArrayList<>();
  private final XFormulaParser parser;
  private int calls;

  private FormulaCells(OpenSheet sheet) throws com.sun.star.uno.Exception {
    parser =
        UnoRuntime.queryInterface(
            XFormulaParser.class,
            sheet
                .document(XMultiServiceFactory.class)
                .createInstance("com.sun.star.sheet.FormulaParser"));
    UnoRuntime.queryInterface(XPropertySet.class, parser).setPropertyValue("CompileEnglish", true);
  }

  static FormulaCells of(OpenSheet sheet) {
    try {
      FormulaCells found = new FormulaCells(sheet);
      var sheets = sheet.document(XSpreadsheetDocument.class).getSheets();
      for (String name : sheets.getElementNames()) {
        found.read(name, UnoRuntime.queryInterface(XSpreadsheet.class, sheets.getByName(name)));
      }
      found.left.addAll(DocumentFormulasOutsideCells.of(sheet));
      return found;
    } catch (com.sun.star.uno.Exception e) {
      throw new StoppedException("The formulas of the document cannot be read.", e);
    }
  }

  private void read(String sheetName, XSpreadsheet sheet) throws com.sun.star.uno.Exception {
    var cells =
        UnoRuntime.queryInterface(XCellRangesQuery.class, sheet)
            .queryContentCells((short) CellFlags.FORMULA)
            .getCells()
            .createEnumeration();
    boolean isProtected = UnoRuntime.queryInterface(XProtectable.class, sheet).isProtected();
    while (cells.hasMoreElements()) {
      XCell cell = UnoRuntime.queryInterface(XCell.class, cells.nextElement());
      if (!FormulaRewriter.concerns(bare(cell.getFormula()))) {
        continue;
      }
      CellAddress at = UnoRuntime.queryInterface(XCellAddressable.class, cell).getCellAddress();
      String where = sheetName + " " + washbook.log.sheet.CellAddress.of(at.Row, at.Column) + ": ";
      if (isProtected) {
        left.add(where + "the sheet is protected.");
      } else if (isArray(sheet, cell)) {
        left.add(where + "it is part of an array formula.");
      } else {
        rewrite(cell, at, where);
      }
    }
  }

  /** Without the sign of a formula or of an array formula. */
  private static String bare(String formula) {
    return formula.substring(formula.indexOf('=') + 1);
  }

  private static boolean isArray(XSpreadsheet sheet, XCell cell) {
    var cursor = sheet.createCursorByRange(UnoRuntime.queryInterface(XSheetCellRange.class, cell));
    cursor.collapseToCurrentArray();
    return !UnoRuntime.queryInterface(XArrayFormulaRange.class, cursor).getArrayFormula().isEmpty();
  }

  /** By way of the notation of .xlsx, which the rewriter knows. */
  private void rewrite(XCell cell, CellAddress at, String where) throws com.sun.star.uno.Exception {
    convention(AddressConvention.XL_OOX);
    var tokens = UnoRuntime.queryInterface(XFormulaTokens.class, cell).getTokens();
    FormulaRewriter.Rewritten rewritten = rewriter.rewrite(parser.printFormula(tokens, at));
    rewritten.left().forEach(why -> left.add(where + why));
    if (rewritten.calls() == 0) {
      return;
    }
    var changed = parser.parseFormula(rewritten.text(), at);
    convention(AddressConvention.UNSPECIFIED);
    String formula = "=" + parser.printFormula(changed, at);
    calls += rewritten.calls();
    changes.add(() -> cell.setFormula(formula));
  }

  private void convention(short convention) throws com.sun.star.uno.Exception {
    UnoRuntime.queryInterface(XPropertySet.class, parser)
        .setPropertyValue("FormulaConvention", convention);
  }

  List<Runnable> changes() {
    return changes;
  }

  List<String> left() {
    return left;
  }

  int calls() {
    return calls;
  }
}
