package washbook.log.layout;

import java.util.ArrayList;
import java.util.List;
import washbook.log.Role;
import washbook.log.layout.Header.HeaderCell;
import washbook.log.sheet.Grid;

/** Splits the header cells of one row into tables. */
final class HeaderRuns {
  private HeaderRuns() {}

  /** Runs of cells side by side become headers where they name a reading. */
  static List<Header> toHeaders(Grid grid, int row, List<List<HeaderCell>> runs) {
    List<List<HeaderCell>> split = new ArrayList<>();
    for (List<HeaderCell> run : runs) {
      split.addAll(splitAtRepeats(run));
    }
    List<List<HeaderCell>> tables = new ArrayList<>();
    List<HeaderCell> waiting = null;
    for (List<HeaderCell> run : split) {
      List<HeaderCell> last = tables.isEmpty() ? null : tables.get(tables.size() - 1);
      boolean reading = namesReading(run);
      if (reading && waiting != null && isNear(grid, row, waiting, run)) {
        waiting.addAll(run);
        tables.add(waiting);
        waiting = null;
      } else if (reading) {
        tables.add(new ArrayList<>(run));
        waiting = null;
      } else if (last != null && isNear(grid, row, last, run) && !isComputed(run)) {
        last.addAll(run);
      } else if (last != null && gap(last, run) == 0) {
        last.addAll(run);
      } else if (waiting != null && gap(waiting, run) <= 1) {
        waiting.addAll(run);
      } else {
        waiting = new ArrayList<>(run);
      }
    }
    return tables.stream()
        .filter(t -> t.stream().filter(c -> c.role() != Role.OTHER).count() >= 2)
        .filter(t -> !isOneText(t))
        .map(t -> new Header(row, row, List.copyOf(t)))
        .toList();
  }

  /** At most one cell between them; one label with its value and a unit after it is no header. */
  private static boolean isNear(Grid grid, int row, List<HeaderCell> left, List<HeaderCell> right) {
    int gap = gap(left, right);
    boolean valueBetween =
        gap == 1 && grid.kind(row, right.get(0).column() - 1) == Grid.Kind.NUMBER;
    return gap <= 1 && !(valueBetween && isOneText(left));
  }

  /** One cell, or several merged. */
  private static boolean isOneText(List<HeaderCell> run) {
    return run.stream().map(HeaderCell::text).distinct().count() == 1;
  }

  private static int gap(List<HeaderCell> left, List<HeaderCell> right) {
    return right.get(0).column() - left.get(left.size() - 1).column() - 1;
  }

  private static boolean isComputed(List<HeaderCell> run) {
    return run.get(0).role() == Role.COMPUTED;
  }

  static boolean namesReading(List<HeaderCell> run) {
    return run.stream().anyMatch(c -> isReading(c.role()));
  }

  static boolean isReading(Role role) {
    return role == Role.GRAVITY || role == Role.REFRACTOMETER || role == Role.OWN_CORRECTED_GRAVITY;
  }

  /** Two tables without a gap: the second begins where the first column's role comes again. */
  private static List<List<HeaderCell>> splitAtRepeats(List<HeaderCell> run) {
    Role first = run.get(0).role();
    boolean leads =
        first == Role.DATE || first == Role.DAY || first == Role.HOURS || first == Role.BATCH;
    for (int i = 1; leads && i < run.size(); i++) {
      if (run.get(i).role() == first
          && namesReading(run.subList(0, i))
          && namesReading(run.subList(i, run.size()))) {
        List<List<HeaderCell>> parts = new ArrayList<>();
        parts.add(new ArrayList<>(run.subList(0, i)));
        parts.addAll(splitAtRepeats(new ArrayList<>(run.subList(i, run.size()))));
        return parts;
      }
    }
    return List.of(run);
  }
}
