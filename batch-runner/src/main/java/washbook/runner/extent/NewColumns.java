package washbook.runner.extent;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.Grid.Area;

/** The columns that come into a sheet, and how far right they make a block beside them reach. */
public final class NewColumns {
  private final List<ColumnPatch> columns;

  /** Columns that were there before are none of these. */
  public NewColumns(List<ColumnPatch> columns) {
    this.columns = List.copyOf(columns);
  }

  public boolean isEmpty() {
    return columns.isEmpty();
  }

  /** Whether the other ones are the same. */
  public boolean isSame(NewColumns other) {
    return columns.equals(other.columns);
  }

  /** The ones that follow a block headed by its first row without a gap, from left to right. */
  List<ColumnPatch> ofTable(Area block) {
    List<ColumnPatch> beside = new ArrayList<>();
    int right = block.lastColumn();
    ColumnPatch next = at(right + 1, c -> c.headerRow() == block.firstRow());
    while (next != null) {
      beside.add(next);
      right++;
      next = at(right + 1, c -> c.headerRow() == block.firstRow());
    }
    return beside;
  }

  /** The last column of a filter whose buttons stand in the first row of the block. */
  int endOfFilter(Area block) {
    return block.lastColumn() + ofTable(block).size();
  }

  /** The last column of a page; one blank column may stand between the page and the new ones. */
  int endOfPage(Area page) {
    Predicate<ColumnPatch> onPage =
        c -> c.headerRow() >= page.firstRow() && c.headerRow() <= page.lastRow();
    int gap = at(page.lastColumn() + 1, onPage) == null ? 1 : 0;
    int right = page.lastColumn() + gap;
    while (at(right + 1, onPage) != null) {
      right++;
    }
    return right == page.lastColumn() + gap ? page.lastColumn() : right;
  }

  /** The last column of what is shaded by the row: at least two columns that end beside ours. */
  int endOfShading(Area block) {
    int right = block.lastColumn();
    Predicate<ColumnPatch> inRows =
        c -> c.firstRow() <= block.lastRow() && c.lastRow() >= block.firstRow();
    while (block.firstColumn() < block.lastColumn() && at(right + 1, inRows) != null) {
      right++;
    }
    return right;
  }

  private ColumnPatch at(int column, Predicate<ColumnPatch> where) {
    return columns.stream()
        .filter(c -> c.column() == column)
        .filter(where)
        .findFirst()
        .orElse(null);
  }
}
