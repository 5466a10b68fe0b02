package washbook.log.fill;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import washbook.log.ComputedColumn;
import washbook.log.ComputedHeader;
import washbook.log.LogColumn;
import washbook.log.LogTable;
import washbook.log.Role;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;

/**
 * Finds the columns for computed cells. Columns of an earlier run are used again. New ones go
 * directly right of the table when all of them have room there and, where something stands further
 * right, a blank column stays between. Otherwise they go right of everything in the table's rows,
 * drawings too, after a blank column, and their headers name the table, so that they are not taken
 * for another table's.
 */
final class ComputedColumnPlaces {
  /** A column and the header to write above it. */
  record Place(int column, String header) {}

  private record Taken(int firstRow, int lastRow, int column) {}

  private final Grid grid;
  private final List<LogTable> tables;
  private final List<Taken> taken = new ArrayList<>();

  ComputedColumnPlaces(Grid grid, List<LogTable> tables) {
    this.grid = grid;
    this.tables = tables;
  }

  /** The columns that an earlier run has written for a table. */
  Map<ComputedColumn, Place> present(LogTable table) {
    Map<ComputedColumn, Place> present = new EnumMap<>(ComputedColumn.class);
    for (LogColumn use : table.columns()) {
      ComputedHeader header =
          use.role() == Role.COMPUTED ? ComputedHeader.read(use.header()) : null;
      if (header != null && header.label().isEmpty()) {
        present.putIfAbsent(header.column(), new Place(use.column(), use.header()));
      }
    }
    String label = label(table);
    int columns = Math.min(grid.columnsUsed(table.headerRow()), Grid.MOST_COLUMNS);
    for (int column = table.lastColumn() + 1; column < columns; column++) {
      if (grid.kind(table.headerRow(), column) == Grid.Kind.TEXT) {
        String text = grid.text(table.headerRow(), column);
        ComputedHeader header = ComputedHeader.read(text);
        if (header != null && header.label().equals(label)) {
          present.putIfAbsent(header.column(), new Place(column, text));
        }
      }
    }
    return present;
  }

  /** A column for each of the wanted ones. */
  Map<ComputedColumn, Place> place(LogTable table, Set<ComputedColumn> wanted) {
    Map<ComputedColumn, Place> places = present(table);
    places.keySet().retainAll(wanted);
    List<ComputedColumn> open = wanted.stream().filter(c -> !places.containsKey(c)).toList();
    if (!open.isEmpty()) {
      int beside = table.lastColumn() + 1;
      boolean room = !sharesRows(table) && isFree(table, beside, open.size());
      int first = room ? beside : Math.max(beside, lastUsed(table) + 2);
      for (int i = 0; i < open.size(); i++) {
        ComputedHeader header = new ComputedHeader(open.get(i), room ? "" : label(table));
        places.put(open.get(i), new Place(first + i, header.text()));
      }
    }
    for (Place place : places.values()) {
      taken.add(new Taken(table.headerRow(), table.lastRow(), place.column()));
    }
    return places;
  }

  /** Whether vessels side by side share its dates: what is beside it belongs to several. */
  private boolean sharesRows(LogTable table) {
    return tables.stream()
        .anyMatch(
            t ->
                t != table
                    && t.headerRow() == table.headerRow()
                    && t.firstColumn() <= table.lastColumn()
                    && table.firstColumn() <= t.lastColumn());
  }

  private String label(LogTable table) {
    return label(tables, table);
  }

  /** The table's only batch when no other table has that name, else its columns. */
  static String label(List<LogTable> tables, LogTable table) {
    String name = table.batches().size() == 1 ? table.batches().get(0).name() : "";
    long same =
        tables.stream()
            .filter(t -> t.batches().stream().anyMatch(b -> b.name().equals(name)))
            .count();
    return !name.isEmpty() && same == 1
        ? name
        : "columns "
            + CellAddress.letters(table.firstColumn())
            + " to "
            + CellAddress.letters(lastOwn(table));
  }

  private static int lastOwn(LogTable table) {
    int last = table.firstColumn();
    for (LogColumn use : table.columns()) {
      if (use.role() != Role.COMPUTED) {
        last = use.column();
      }
    }
    return last;
  }

  private boolean isFree(LogTable table, int first, int count) {
    if (!blank(table, first, first + count - 1)) {
      return false;
    }
    // New columns are up to two fifths wider than those that a drawing further right stands over.
    int reach = first + count - 1 + (2 * count + 4) / 5;
    if (drawings(table).anyMatch(d -> d.lastColumn() >= first && d.firstColumn() <= reach)) {
      return false;
    }
    return blank(table, first + count, first + count) || lastUsed(table) < first;
  }

  /** The drawings beside the rows of a table. */
  private Stream<Grid.Area> drawings(LogTable table) {
    return grid.drawings().stream()
        .filter(d -> d.lastRow() >= table.headerRow() && d.firstRow() <= table.lastRow());
  }

  private boolean blank(LogTable table, int first, int last) {
    for (Taken one : taken) {
      if (overlap(table, one) && one.column() >= first && one.column() <= last) {
        return false;
      }
    }
    for (Grid.Area area : grid.merged()) {
      if (area.lastRow() >= table.headerRow()
          && area.firstRow() <= table.lastRow()
          && area.lastColumn() >= first
          && area.firstColumn() <= last) {
        return false;
      }
    }
    for (int row = table.headerRow(); row <= table.lastRow(); row++) {
      for (int column = first; column <= last; column++) {
        if (grid.kind(row, column) != Grid.Kind.BLANK) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean overlap(LogTable table, Taken one) {
    return one.lastRow() >= table.headerRow() && one.firstRow() <= table.lastRow();
  }

  private int lastUsed(LogTable table) {
    int drawn = drawings(table).mapToInt(Grid.Area::lastColumn).max().orElse(0);
    int last = Math.max(table.lastColumn(), drawn);
    for (int row = table.headerRow(); row <= table.lastRow(); row++) {
      for (int column = grid.columnsUsed(row) - 1; column > last; column--) {
        if (grid.kind(row, column) != Grid.Kind.BLANK) {
          last = column;
        }
      }
    }
    for (Taken one : taken) {
      if (overlap(table, one)) {
        last = Math.max(last, one.column());
      }
    }
    return last;
  }
}
