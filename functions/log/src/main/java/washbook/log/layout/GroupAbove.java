package washbook.log.layout;

import washbook.log.layout.Header.HeaderCell;
import washbook.log.sheet.Grid;

/** What stands in the row above a table's header, over one column or over a group of them. */
public final class GroupAbove {
  private static final int WIDEST = 4;

  private final Grid grid;
  private final int row;

  public GroupAbove(Grid grid, TableRows rows) {
    this.grid = grid;
    this.row = rows.firstRow() - 2;
  }

  /** The text right over a column, or the nearest left of it where nothing stands over it. */
  public String group(HeaderCell cell) {
    return group(cell, -1);
  }

  /** The same, not from a column or left of it. */
  public String group(HeaderCell cell, int behind) {
    int first = Math.max(behind + 1, Math.max(0, cell.column() - WIDEST));
    for (int at = cell.column(); at >= first; at--) {
      if (!text(at).isEmpty()) {
        return text(at);
      }
    }
    return "";
  }

  private String text(int column) {
    return row >= 0 && grid.kind(row, column) == Grid.Kind.TEXT
        ? grid.text(row, column).strip()
        : "";
  }
}
