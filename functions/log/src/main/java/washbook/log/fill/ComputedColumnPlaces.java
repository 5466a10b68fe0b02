package washbook.log.fill;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import washbook.log.ComputedColumn;
import washbook.log.ComputedHeader;
import washbook.log.ComputedHeaders;
import washbook.log.LogColumn;
import washbook.log.LogTable;
import washbook.log.Role;
import washbook.log.WrittenScale;
import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;

/**
 * Finds the columns for computed cells. Columns of an earlier run are used again. New ones go
 * directly right of the table when all of them have room there and, where something stands further
 * right, a blank column stays between. Otherwise they go right of everything in the table's rows,
 * drawings and merged cells too, after a blank column, and their headers name the table, so that
 * they are not taken for another table's.
 */
final class ComputedColumnPlaces {
  /**
   * A column and the header to write above it.
   *
   * @param before the header's text that an earlier run has written; "" for a new column
   */
  record Place(int column, ComputedHeader header, String before) {}

  /**
   * What an earlier run has written for a table.
   *
   * @param scale of the corrected reading from now on
   */
  record Present(Map<ComputedColumn, Place> places, WrittenScale scale) {}

  private record Taken(int firstRow, int lastRow, int column) {}

  private final Grid grid;
  private final List<LogTable> tables;
  private final List<Taken> taken = new ArrayList<>();

  /** The texts of rows with headers as they will be, by row and column. */
  private final Map<Integer, Map<Integer, String>> written = new HashMap<>();

  ComputedColumnPlaces(Grid grid, List<LogTable> tables) {
    this.grid = grid;
    this.tables = tables;
  }

  /**
   * The columns that an earlier run has written for a table. A corrected reading on SG, as all
   * earlier versions have written it, becomes that on the wanted scale unless SG is needed too.
   */
  Present present(LogTable table, WrittenScale wanted, boolean gravityIsNeeded) {
    Map<ComputedColumn, Place> present = new EnumMap<>(ComputedColumn.class);
    Place gravity = null;
    Place other = null;
    for (Place place : found(table)) {
      if (place.header().column() != ComputedColumn.CORRECTED_GRAVITY) {
        present.putIfAbsent(place.header().column(), place);
      } else if (place.header().scale().isPlainGravity()) {
        gravity = gravity == null ? place : gravity;
      } else {
        other = other == null ? place : other;
      }
    }
    boolean beside = other != null || (gravityIsNeeded && !wanted.isPlainGravity());
    if (gravity != null) {
      present.put(
          beside ? ComputedColumn.SPECIFIC_GRAVITY : ComputedColumn.CORRECTED_GRAVITY, gravity);
    }
    if (other != null) {
      present.put(ComputedColumn.CORRECTED_GRAVITY, other);
    }
    boolean stays = other != null && gravity != null && wanted.isPlainGravity();
    return new Present(present, stays ? other.header().scale() : wanted);
  }

  private List<Place> found(LogTable table) {
    List<Place> found = new ArrayList<>();
    for (LogColumn use : table.columns()) {
      Optional<ComputedHeader> header =
          use.role() == Role.COMPUTED ? ComputedHeader.read(use.header()) : Optional.empty();
      header
          .filter(h -> h.label().isEmpty())
          .ifPresent(h -> found.add(new Place(use.column(), h, use.header())));
    }
    found.addAll(rightBeside(table));
    int columns = Math.min(grid.columnsUsed(table.headerRow()), Grid.MOST_COLUMNS);
    for (int column = table.lastColumn() + 1; column < columns; column++) {
      if (grid.kind(table.headerRow(), column) == Grid.Kind.TEXT) {
        int at = column;
        ComputedHeader.read(grid.text(table.headerRow(), column).strip())
            .filter(h -> labels(table).contains(h.label()))
            .ifPresent(h -> found.add(new Place(at, h, grid.text(table.headerRow(), at).strip())));
      }
    }
    return found;
  }

  /** Ours right beside a table whose header, as one with a row of units, ends before them. */
  private List<Place> rightBeside(LogTable table) {
    List<Place> found = new ArrayList<>();
    ComputedHeaders ours = ComputedHeaders.in(grid, table.headerRow());
    int column = table.lastColumn() + 1;
    while (ours.at(column).filter(h -> h.label().isEmpty()).isPresent()) {
      String text = grid.text(table.headerRow(), column).strip();
      found.add(new Place(column, ours.at(column).orElseThrow(), text));
      column++;
    }
    return found;
  }

  /**
   * A column for each of the wanted ones.
   *
   * @param present those that an earlier run has written
   */
  Map<ComputedColumn, Place> place(
      LogTable table, Set<ComputedColumn> wanted, Present present, Language language) {
    Map<ComputedColumn, Place> places = new EnumMap<>(present.places());
    places.keySet().retainAll(wanted);
    List<ComputedColumn> open = wanted.stream().filter(c -> !places.containsKey(c)).toList();
    if (!open.isEmpty()) {
      int beside = table.lastColumn() + 1;
      boolean room = !sharesRows(table) && isFree(table, beside, open.size());
      int first = room ? beside : Math.max(beside, lastUsed(table) + 2);
      String label = room ? "" : label(table, language);
      for (int i = 0; i < open.size(); i++) {
        places.put(
            open.get(i),
            new Place(
                first + i, new ComputedHeader(open.get(i), WrittenScale.SG, false, label), ""));
      }
    }
    for (Place place : places.values()) {
      taken.add(new Taken(table.headerRow(), table.lastRow(), place.column()));
    }
    write(table, places, present.scale(), language);
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

  /**
   * Settles the headers: plain where they are found again for ours and no column of the person's is
   * taken for ours with them, else marked.
   */
  private void write(
      LogTable table, Map<ComputedColumn, Place> places, WrittenScale scale, Language language) {
    Map<Integer, String> row =
        written.computeIfAbsent(table.headerRow(), r -> ComputedHeaders.texts(grid, r));
    Set<Integer> before = new ComputedHeaders(row).columns();
    Set<ComputedColumn> marked = EnumSet.noneOf(ComputedColumn.class);
    boolean settled = false;
    while (!settled) {
      places.replaceAll((column, place) -> headed(column, place, scale, marked.contains(column)));
      places.values().forEach(p -> row.put(p.column(), p.header().text(language)));
      ComputedHeaders read = new ComputedHeaders(row);
      Set<ComputedColumn> lost = EnumSet.noneOf(ComputedColumn.class);
      places.forEach(
          (column, place) -> {
            if (read.at(place.column()).isEmpty()) {
              lost.add(column);
            }
          });
      Set<Integer> foreign = new HashSet<>(read.columns());
      foreign.removeAll(before);
      places.values().forEach(place -> foreign.remove(place.column()));
      settled = !marked.addAll(foreign.isEmpty() ? lost : places.keySet());
    }
  }

  private static Place headed(
      ComputedColumn column, Place place, WrittenScale scale, boolean marked) {
    String label = place.header().label();
    return new Place(
        place.column(),
        new ComputedHeader(
            column,
            column == ComputedColumn.CORRECTED_GRAVITY ? scale : WrittenScale.SG,
            marked || !label.isEmpty() || column == ComputedColumn.NOTE,
            label),
        place.before());
  }

  /** The names that a table goes by in the headers of all languages. */
  private Set<String> labels(LogTable table) {
    return Arrays.stream(Language.values())
        .map(language -> label(table, language))
        .collect(Collectors.toSet());
  }

  /** The table's only batch when no other table has that name, else its columns. */
  private String label(LogTable table, Language language) {
    String name = table.batches().size() == 1 ? table.batches().get(0).name() : "";
    long same =
        tables.stream()
            .filter(t -> t.batches().stream().anyMatch(b -> b.name().equals(name)))
            .count();
    return !name.isEmpty() && same == 1
        ? name
        : Message.of(
                "header.columns",
                CellAddress.letters(table.firstColumn()),
                CellAddress.letters(lastOwn(table)))
            .in(language);
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
    return besideRows(grid.drawings(), table);
  }

  private static Stream<Grid.Area> besideRows(List<Grid.Area> areas, LogTable table) {
    return areas.stream()
        .filter(a -> a.lastRow() >= table.headerRow() && a.firstRow() <= table.lastRow());
  }

  private boolean blank(LogTable table, int first, int last) {
    for (Taken one : taken) {
      if (overlap(table, one) && one.column() >= first && one.column() <= last) {
        return false;
      }
    }
    if (besideRows(grid.merged(), table)
        .anyMatch(a -> a.lastColumn() >= first && a.firstColumn() <= last)) {
      return false;
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
    int last =
        Stream.concat(drawings(table), besideRows(grid.merged(), table))
            .mapToInt(Grid.Area::lastColumn)
            .reduce(table.lastColumn(), Math::max);
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
