package washbook.office.menu;

import com.sun.star.beans.PropertyVetoException;
import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.sheet.XArrayFormulaRange;
import com.sun.star.sheet.XCellAddressable;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XSheetCellCursor;
import com.sun.star.sheet.XSheetCellRange;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellContentType;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.text.XText;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.util.NotLockedException;
import com.sun.star.util.XModifiable;
import washbook.log.language.Language;
import washbook.office.dialog.StoppedException;
import washbook.office.language.OfficeText;

/**
 * A cell at the end of the explained cell's own row, so that Calc takes the same row of a column
 * there, that holds a formula for a moment. Undo does not see it, and afterwards the document is as
 * modified as it was. Undo is locked for each single write, because the office forgets the lock
 * after the first one.
 */
final class Scratch implements AutoCloseable {
  private final OpenSheet sheet;
  private final Language language;
  private final XUndoManager undo;
  private final boolean modified;
  private final XCellRange end;

  Scratch(OpenSheet sheet, XCell beside, Language language) {
    this.sheet = sheet;
    this.language = language;
    this.undo = sheet.document(XUndoManagerSupplier.class).getUndoManager();
    this.modified = sheet.document(XModifiable.class).isModified();
    this.end = endOfRow(beside);
    sheet.document().lockControllers();
  }

  /** Why the call is refused in {@code cell}; "" when it is not. */
  String reason(PackCall call, XCell cell) {
    CellAddress at = UnoRuntime.queryInterface(XCellAddressable.class, cell).getCellAddress();
    ReasonCall question = ReasonCall.of(call);
    CellRangeAddress array = arrayAround(cell);
    if (array != null) {
      String element =
          "=INDEX(%s;%d;%d)"
              .formatted(
                  question.formula(),
                  at.Row - array.StartRow + 1,
                  at.Column - array.StartColumn + 1);
      array(element);
      if (scratchCell().getError() == 0) {
        return shown();
      }
      clear();
    }
    for (ReasonCall.Single single : question.singles()) {
      if (answer("ROWS(" + single.text() + ")*COLUMNS(" + single.text() + ")>1").equals("1")) {
        return OfficeText.of("explain.several", single.name(), forArrays(call)).in(language);
      }
    }
    return answer(question.inOwnRow());
  }

  private static String forArrays(PackCall call) {
    return "WASHBOOK.COLUMN(\"" + call.name() + "\"; ...)";
  }

  /** What a formula shows; "" when it is an error. */
  private String answer(String formula) {
    XCell single = scratchCell();
    unseen(() -> single.setFormula("=(" + formula + ")&\"\""));
    return single.getError() == 0 ? shown() : "";
  }

  private String shown() {
    return UnoRuntime.queryInterface(XText.class, scratchCell()).getString();
  }

  private CellRangeAddress arrayAround(XCell cell) {
    XSheetCellRange range = UnoRuntime.queryInterface(XSheetCellRange.class, cell);
    XSheetCellCursor cursor = sheet.sheet().createCursorByRange(range);
    cursor.collapseToCurrentArray();
    boolean array =
        !UnoRuntime.queryInterface(XArrayFormulaRange.class, cursor).getArrayFormula().isEmpty();
    return array
        ? UnoRuntime.queryInterface(XCellRangeAddressable.class, cursor).getRangeAddress()
        : null;
  }

  private XCellRange endOfRow(XCell beside) {
    int column = sheet.sheet(XCellRangeAddressable.class).getRangeAddress().EndColumn;
    int row = UnoRuntime.queryInterface(XCellAddressable.class, beside).getCellAddress().Row;
    try {
      XCellRange end = sheet.sheet().getCellRangeByPosition(column, row, column, row);
      if (end.getCellByPosition(0, 0).getType() != CellContentType.EMPTY) {
        throw new StoppedException("stopped.lastCell.taken");
      }
      return end;
    } catch (com.sun.star.lang.IndexOutOfBoundsException e) {
      throw new StoppedException("stopped.lastCell.none", e);
    }
  }

  private XCell scratchCell() {
    try {
      return end.getCellByPosition(0, 0);
    } catch (com.sun.star.lang.IndexOutOfBoundsException e) {
      throw new StoppedException("stopped.lastCell.none", e);
    }
  }

  private void clear() {
    array("");
  }

  private void array(String formula) {
    XArrayFormulaRange range = UnoRuntime.queryInterface(XArrayFormulaRange.class, end);
    unseen(() -> range.setArrayFormula(formula));
  }

  private void unseen(Runnable write) {
    undo.lock();
    try {
      write.run();
    } finally {
      try {
        undo.unlock();
      } catch (NotLockedException e) {
        throw new StoppedException("stopped.undo", e);
      }
    }
  }

  /** Lets go of everything, also when one of the steps fails. */
  @Override
  public void close() {
    try {
      clear();
    } finally {
      sheet.document().unlockControllers();
      try {
        sheet.document(XModifiable.class).setModified(modified);
      } catch (PropertyVetoException e) {
        throw new StoppedException("stopped.lastCell.kept", e);
      }
    }
  }
}
