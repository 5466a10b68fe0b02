package washbook.log.run;

import java.util.List;
import washbook.log.sheet.Grid;

/** A sheet in which the cells of its runs are blank. */
record GridWithoutRuns(Grid grid, List<Grid.Area> runs) implements Grid {
  private boolean isRun(int row, int column) {
    for (Area area : runs) {
      if (row >= area.firstRow()
          && row <= area.lastRow()
          && column >= area.firstColumn()
          && column <= area.lastColumn()) {
        return true;
      }
    }
    return false;
  }

  @Override
  public String name() {
    return grid.name();
  }

  @Override
  public String fileName() {
    return grid.fileName();
  }

  @Override
  public int rowCount() {
    return grid.rowCount();
  }

  @Override
  public int columnCount() {
    return grid.columnCount();
  }

  @Override
  public int columnsUsed(int row) {
    return grid.columnsUsed(row);
  }

  @Override
  public Kind kind(int row, int column) {
    return isRun(row, column) ? Kind.BLANK : grid.kind(row, column);
  }

  @Override
  public double number(int row, int column) {
    return isRun(row, column) ? Double.NaN : grid.number(row, column);
  }

  @Override
  public String text(int row, int column) {
    return isRun(row, column) ? "" : grid.text(row, column);
  }

  @Override
  public boolean isFormula(int row, int column) {
    return !isRun(row, column) && grid.isFormula(row, column);
  }

  @Override
  public boolean isKeptInside(int row, int column) {
    return grid.isKeptInside(row, column);
  }

  @Override
  public List<Area> merged() {
    return grid.merged();
  }

  @Override
  public List<Area> drawings() {
    return grid.drawings();
  }
}
