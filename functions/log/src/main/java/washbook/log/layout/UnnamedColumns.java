package washbook.log.layout;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import washbook.log.Role;
import washbook.log.layout.Header.HeaderCell;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;
import washbook.log.words.Concept;
import washbook.log.words.DateText;

/**
 * Columns beside a table that its header gives no name: remarks behind its last column, dates
 * before its first one.
 */
public final class UnnamedColumns {
  private static final int ROWS_READ = 200;

  /** Fewer letters are a mark, no remark. */
  private static final int LETTERS = 3;

  /** Fewer dates may be something else. */
  private static final int FEWEST_DATES = 3;

  private final Grid grid;
  private final List<Header> headers;

  /**
   * @param headers all headers of the sheet
   */
  public UnnamedColumns(Grid grid, List<Header> headers) {
    this.grid = grid;
    this.headers = headers;
  }

  /** The headers with those columns. */
  public List<Header> added() {
    return headers.stream().map(this::with).toList();
  }

  private Header with(Header header) {
    List<HeaderCell> cells = new ArrayList<>(header.cells());
    int before = header.firstColumn() - 1;
    int behind = header.lastColumn() + 1;
    boolean dated = header.cells().stream().anyMatch(c -> c.role() == Role.DATE);
    boolean noted = header.cells().stream().anyMatch(c -> c.role() == Role.NOTE);
    if (!dated && isFree(header, before) && areDates(header, before)) {
      cells.add(0, cell(before, Role.DATE));
    }
    if (!noted && isFree(header, behind) && areRemarks(header, behind)) {
      cells.add(cell(behind, Role.NOTE));
    }
    return cells.size() == header.cells().size()
        ? header
        : new Header(header.topRow(), header.bottomRow(), List.copyOf(cells), header.vessel());
  }

  private static HeaderCell cell(int column, Role role) {
    return new HeaderCell(column, "", EnumSet.noneOf(Concept.class), role);
  }

  private boolean isFree(Header header, int column) {
    if (column < 0 || column >= grid.columnCount() || !header.vessel().isEmpty()) {
      return false;
    }
    for (int row = header.topRow(); row <= header.bottomRow(); row++) {
      if (grid.kind(row, column) != Kind.BLANK) {
        return false;
      }
    }
    return headers.stream()
        .noneMatch(
            h ->
                h.topRow() == header.topRow()
                    && column >= h.firstColumn() - 1
                    && column <= h.lastColumn() + 1
                    && h != header);
  }

  private int end(Header header) {
    int last = header.bottomRow() + 1 + ROWS_READ;
    return header.nextBelow(header.bottomRow(), headers, Math.min(grid.rowCount(), last));
  }

  private boolean isBlank(Header header, int row) {
    return header.cells().stream().allMatch(c -> grid.kind(row, c.column()) == Kind.BLANK);
  }

  private boolean areDates(Header header, int column) {
    int dates = 0;
    int end = end(header);
    for (int row = header.bottomRow() + 1; row < end; row++) {
      if (grid.kind(row, column) != Kind.BLANK) {
        if (!DateText.isDate(grid, row, column)) {
          return false;
        }
        dates++;
      }
    }
    return dates >= FEWEST_DATES;
  }

  private boolean areRemarks(Header header, int column) {
    int remarks = 0;
    boolean gap = false;
    int end = end(header);
    for (int row = header.bottomRow() + 1; row < end; row++) {
      Kind kind = grid.kind(row, column);
      gap |= isBlank(header, row);
      // Behind a blank row the lines over the next table begin.
      if (kind != Kind.BLANK && (kind != Kind.TEXT || gap)) {
        return false;
      }
      boolean words =
          kind == Kind.TEXT
              && grid.text(row, column).chars().filter(Character::isLetter).count() >= LETTERS;
      remarks += words ? 1 : 0;
    }
    return remarks > 0;
  }
}
