package washbook.office.menu;

import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XSheetCellCursor;
import com.sun.star.sheet.XUsedAreaCursor;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.UnoRuntime;
import java.util.BitSet;
import java.util.List;
import washbook.log.sheet.Grid;
import washbook.office.dialog.StoppedException;

/** The used area of an open sheet as it was when this was made. */
final class CalcGrid implements Grid {
  private final String name;
  private final Object[][] cells;
  private final int columns;
  private final BitSet formulas;
  private final BitSet errors;
  private final BitSet dates;
  private final BitSet logicals;
  private final List<Area> merged;

  private CalcGrid(OpenSheet sheet, Object[][] cells, CellMarks marks) {
    this.name = sheet.name();
    this.cells = cells;
    this.columns = cells[0].length;
    this.formulas = marks.formulas();
    this.errors = marks.errors();
    this.dates = marks.dates();
    this.logicals = marks.logicals();
    this.merged = marks.merged();
  }

  static CalcGrid of(OpenSheet sheet) {
    XSheetCellCursor cursor = sheet.sheet().createCursor();
    UnoRuntime.queryInterface(XUsedAreaCursor.class, cursor).gotoEndOfUsedArea(false);
    CellRangeAddress end =
        UnoRuntime.queryInterface(XCellRangeAddressable.class, cursor).getRangeAddress();
    try {
      XCellRange used = sheet.sheet().getCellRangeByPosition(0, 0, end.EndColumn, end.EndRow);
      Object[][] cells = UnoRuntime.queryInterface(XCellRangeData.class, used).getDataArray();
      return new CalcGrid(sheet, cells, CellMarks.of(sheet, used, end.EndColumn + 1));
    } catch (com.sun.star.lang.IndexOutOfBoundsException e) {
      throw new StoppedException("stopped.usedArea", e);
    }
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public int rowCount() {
    return cells.length;
  }

  @Override
  public int columnCount() {
    return columns;
  }

  @Override
  public Kind kind(int row, int column) {
    if (row >= cells.length || column >= columns) {
      return Kind.BLANK;
    }
    int at = row * columns + column;
    if (errors.get(at)) {
      return Kind.ERROR;
    }
    Object cell = cells[row][column];
    if (cell instanceof Double) {
      return dates.get(at) ? Kind.DATE : logicals.get(at) ? Kind.LOGICAL : Kind.NUMBER;
    }
    boolean text = cell instanceof String string && !(string.isEmpty() && !formulas.get(at));
    return text ? Kind.TEXT : Kind.BLANK;
  }

  @Override
  public double number(int row, int column) {
    return switch (kind(row, column)) {
      case NUMBER, DATE, LOGICAL -> (Double) cells[row][column];
      default -> Double.NaN;
    };
  }

  @Override
  public String text(int row, int column) {
    return kind(row, column) == Kind.TEXT ? (String) cells[row][column] : "";
  }

  @Override
  public boolean isFormula(int row, int column) {
    return row < cells.length && column < columns && formulas.get(row * columns + column);
  }

  @Override
  public List<Area> merged() {
    return merged;
  }
}
