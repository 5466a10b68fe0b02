package washbook.office.menu;

import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.sheet.AddressConvention;
import com.sun.star.sheet.CellFlags;
import com.sun.star.sheet.XCellAddressable;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XFormulaParser;
import com.sun.star.sheet.XFormulaTokens;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.util.XProtectable;
import java.util.ArrayList;
import java.util.List;
import washbook.functions.portable.FormulaRewriter;
import washbook.functions.portable.FormulaSyntax;
import washbook.log.language.Message;
import washbook.office.dialog.StoppedException;
import washbook.office.language.OfficeText;

/** The formulas of a document that call our functions, and what would stand in their place. */
final class FormulaCells {
  private final FormulaRewriter rewriter = new FormulaRewriter(FormulaSyntax.A1);
  private final List<Runnable> changes = new ArrayList<>();
  private final List<Message> left = new ArrayList<>();
  private final XFormulaParser parser;
  private final List<String> ranges = new ArrayList<>();
  private int calls;
  private int cells;

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
      throw new StoppedException("stopped.formulas", e);
    }
  }

  private void read(String sheetName, XSpreadsheet sheet) throws com.sun.star.uno.Exception {
    boolean isProtected = UnoRuntime.queryInterface(XProtectable.class, sheet).isProtected();
    for (CellRangeAddress area :
        UnoRuntime.queryInterface(XCellRangesQuery.class, sheet)
            .queryContentCells((short) CellFlags.FORMULA)
            .getRangeAddresses()) {
      String[][] formulas =
          UnoRuntime.queryInterface(
                  XCellRangeFormula.class,
                  sheet.getCellRangeByPosition(
                      area.StartColumn, area.StartRow, area.EndColumn, area.EndRow))
              .getFormulaArray();
      for (int c = 0; c < formulas[0].length; c++) {
        readColumn(new Place(sheetName, sheet, area.StartColumn + c), area, formulas, isProtected);
      }
    }
  }

  private record Place(String sheetName, XSpreadsheet sheet, int column) {
    String words(int firstRow, int lastRow) {
      String first = washbook.log.sheet.CellAddress.of(firstRow, column);
      return sheetName
          + " "
          + (firstRow == lastRow
              ? first
              : first + ":" + washbook.log.sheet.CellAddress.of(lastRow, column));
    }
  }

  /** In runs of formulas that are the same but for their row. */
  private void readColumn(
      Place place, CellRangeAddress area, String[][] formulas, boolean isProtected)
      throws com.sun.star.uno.Exception {
    int c = place.column - area.StartColumn;
    int start = 0;
    String alike = RelativeFormula.of(formulas[0][c], area.StartRow);
    for (int r = 1; r <= formulas.length; r++) {
      String next =
          r < formulas.length ? RelativeFormula.of(formulas[r][c], area.StartRow + r) : "";
      if (!next.equals(alike)) {
        readRun(
            place, area.StartRow + start, area.StartRow + r - 1, formulas[start][c], isProtected);
        start = r;
        alike = next;
      }
    }
  }

  private void readRun(Place place, int firstRow, int lastRow, String formula, boolean isProtected)
      throws com.sun.star.uno.Exception {
    String where = place.words(firstRow, lastRow);
    boolean wholeRanges = PackCall.in(formula).stream().anyMatch(c -> c.name().equals("COLUMN"));
    if (!wholeRanges && !FormulaRewriter.concerns(bare(formula))) {
      return;
    }
    if (isProtected) {
      leave(where, "portable.protected");
    } else if (formula.startsWith("{")) {
      leave(where, "portable.array");
    } else if (wholeRanges) {
      leave(where, "portable.column");
    } else {
      rewrite(place, firstRow, lastRow, where);
    }
  }

  private void leave(String where, String why) {
    left.add(OfficeText.of("portable.why", where, OfficeText.of(why)));
  }

  /** Without the sign of a formula or of an array formula. */
  private static String bare(String formula) {
    return formula.substring(formula.indexOf('=') + 1);
  }

  /** The first formula serves for all, unless the last one becomes too long. */
  private void rewrite(Place place, int firstRow, int lastRow, String where)
      throws com.sun.star.uno.Exception {
    FormulaRewriter.Rewritten first = rewritten(place, firstRow);
    if (first.calls() != rewritten(place, lastRow).calls()) {
      int middle = (firstRow + lastRow) / 2;
      rewrite(place, firstRow, middle, place.words(firstRow, middle));
      rewrite(place, middle + 1, lastRow, place.words(middle + 1, lastRow));
      return;
    }
    first.left().forEach(why -> left.add(OfficeText.of("portable.why", where, why)));
    if (first.calls() == 0) {
      return;
    }
    int rows = lastRow - firstRow + 1;
    calls += first.calls() * rows;
    cells += rows;
    ranges.add(where);
    changes.add(
        () -> {
          try {
            new LikeFormulas(place.sheet)
                .write(place.column, firstRow, lastRow, row -> forCalc(place, row));
          } catch (com.sun.star.uno.Exception e) {
            throw new StoppedException("stopped.formulas.write", e);
          }
        });
  }

  /** By way of the notation of .xlsx, which the rewriter knows. */
  private FormulaRewriter.Rewritten rewritten(Place place, int row)
      throws com.sun.star.uno.Exception {
    convention(AddressConvention.XL_OOX);
    XCell cell = place.sheet.getCellByPosition(place.column, row);
    var tokens = UnoRuntime.queryInterface(XFormulaTokens.class, cell).getTokens();
    return rewriter.rewrite(parser.printFormula(tokens, at(cell)));
  }

  private String forCalc(Place place, int row) {
    try {
      XCell cell = place.sheet.getCellByPosition(place.column, row);
      FormulaRewriter.Rewritten rewritten = rewritten(place, row);
      var changed = parser.parseFormula(rewritten.text(), at(cell));
      convention(AddressConvention.UNSPECIFIED);
      return "=" + parser.printFormula(changed, at(cell));
    } catch (com.sun.star.uno.Exception e) {
      throw new StoppedException("stopped.formulas", e);
    }
  }

  private static CellAddress at(XCell cell) {
    return UnoRuntime.queryInterface(XCellAddressable.class, cell).getCellAddress();
  }

  private void convention(short convention) throws com.sun.star.uno.Exception {
    UnoRuntime.queryInterface(XPropertySet.class, parser)
        .setPropertyValue("FormulaConvention", convention);
  }

  List<Runnable> changes() {
    return changes;
  }

  List<Message> left() {
    return left;
  }

  int calls() {
    return calls;
  }

  /** How many cells change. */
  int cells() {
    return cells;
  }

  /** Where, one for each run of like formulas. */
  List<String> ranges() {
    return ranges;
  }
}
