package washbook.log.layout;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import washbook.log.ComputedHeaders;
import washbook.log.layout.Header.HeaderCell;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;
import washbook.log.words.Concept;
import washbook.log.words.Vocabulary;

/**
 * A row of nothing but times of day below a header: {@code morning | evening} under one reading are
 * two readings, though only the first of the columns is called so.
 */
final class TimesOfDayBelow {
  private TimesOfDayBelow() {}

  /** The header with that row, or as it is. */
  static Header joined(Grid grid, Header header) {
    int row = header.bottomRow() + 1;
    List<Integer> times = times(grid, row, header);
    if (!isUnderOneReading(header, times)
        || !ComputedHeaders.in(grid, header.bottomRow()).columns().isEmpty()) {
      return header;
    }
    List<HeaderCell> cells = new ArrayList<>();
    HeaderCell group = null;
    for (int column = header.firstColumn(); column <= times.get(times.size() - 1); column++) {
      HeaderCell own = at(header, column);
      group = own != null ? own : group;
      if (times.contains(column) && group != null) {
        cells.add(with(group, column, grid.text(row, column).strip()));
      } else if (own != null) {
        cells.add(own);
      }
    }
    int last = times.get(times.size() - 1);
    header.cells().stream().filter(c -> c.column() > last).forEach(cells::add);
    return new Header(header.topRow(), row, List.copyOf(cells), header.vessel());
  }

  /** Whether two times or more stand under the header of one reading. */
  private static boolean isUnderOneReading(Header header, List<Integer> times) {
    for (HeaderCell cell : header.cells()) {
      int next =
          header.cells().stream()
              .mapToInt(HeaderCell::column)
              .filter(column -> column > cell.column())
              .min()
              .orElse(Integer.MAX_VALUE);
      long under = times.stream().filter(t -> t >= cell.column() && t < next).count();
      if (HeaderRuns.isReading(cell.role()) && under > 1) {
        return true;
      }
    }
    return false;
  }

  /**
   * The columns with a time of day in a row; none where anything else stands there but what we have
   * written.
   */
  private static List<Integer> times(Grid grid, int row, Header header) {
    List<Integer> times = new ArrayList<>();
    int columns = row < grid.rowCount() ? grid.columnsUsed(row) : 0;
    ComputedHeaders ours = columns == 0 ? null : ComputedHeaders.in(grid, row);
    for (int column = header.firstColumn(); column < columns; column++) {
      if (grid.kind(row, column) == Kind.BLANK || ours.at(column).isPresent()) {
        continue;
      }
      boolean time =
          grid.kind(row, column) == Kind.TEXT
              && Vocabulary.meanings(grid.text(row, column)).equals(Set.of(Concept.TIME_OF_DAY));
      if (!time) {
        return List.of();
      }
      times.add(column);
    }
    return times;
  }

  private static HeaderCell with(HeaderCell group, int column, String time) {
    Set<Concept> meanings = EnumSet.of(Concept.TIME_OF_DAY);
    meanings.addAll(group.meanings());
    return new HeaderCell(column, group.text() + " " + time, meanings, group.role());
  }

  private static HeaderCell at(Header header, int column) {
    return header.cells().stream().filter(c -> c.column() == column).findFirst().orElse(null);
  }
}
