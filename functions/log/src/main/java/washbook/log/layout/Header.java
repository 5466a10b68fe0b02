package washbook.log.layout;

import java.util.List;
import java.util.Set;
import washbook.log.Role;
import washbook.log.words.Concept;

/**
 * The header of one table: one to three rows.
 *
 * @param topRow first row of it
 * @param bottomRow last row of it
 * @param cells one entry a column, from left to right
 * @param vessel the vessel that the table is about where several share the sheet's rows, else ""
 */
public record Header(int topRow, int bottomRow, List<HeaderCell> cells, String vessel) {

  /** The header of one column. */
  public record HeaderCell(int column, String text, Set<Concept> meanings, Role role) {}

  /** A header over rows of its own. */
  public Header(int topRow, int bottomRow, List<HeaderCell> cells) {
    this(topRow, bottomRow, cells, "");
  }

  public int firstColumn() {
    return cells.get(0).column();
  }

  public int lastColumn() {
    return cells.get(cells.size() - 1).column();
  }

  /** Where the first of some headers over these columns begins below a row, else {@code end}. */
  public int nextBelow(int row, List<Header> headers, int end) {
    int next = end;
    for (Header other : headers) {
      if (other.topRow() > row && other.overlaps(this)) {
        next = Math.min(next, other.topRow());
      }
    }
    return next;
  }

  public boolean overlaps(Header other) {
    return firstColumn() <= other.lastColumn() && other.firstColumn() <= lastColumn();
  }
}
