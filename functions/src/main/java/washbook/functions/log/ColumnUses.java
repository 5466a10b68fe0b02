package washbook.functions.log;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import washbook.functions.log.Header.HeaderCell;

/** What the columns of one table have been taken for so far, and the doubts about it. */
final class ColumnUses {
  private final Grid grid;
  private final Header header;
  private final TableRows rows;
  private final TableMap said;
  private final TreeMap<Integer, ColumnUse> uses = new TreeMap<>();
  private final Map<Integer, ColumnFacts> facts = new HashMap<>();
  private final List<Doubt> doubts = new ArrayList<>();
  private boolean settled = true;

  ColumnUses(Grid grid, Header header, TableRows rows, TableMap said) {
    this.grid = grid;
    this.header = header;
    this.rows = rows;
    this.said = said;
    for (HeaderCell cell : header.cells()) {
      String why =
          isSaid(cell)
              ? "by the map"
              : cell.role() == Role.OTHER ? "its header names nothing of a log" : "by its header";
      change(cell, cell.role(), "", why);
    }
  }

  List<ColumnUse> all() {
    return List.copyOf(uses.values());
  }

  List<Doubt> doubts() {
    return doubts;
  }

  /** Whether the readings are understood without doubt. */
  boolean isSettled() {
    return settled;
  }

  /** Leaves the table unfilled. */
  void unsettle() {
    settled = false;
  }

  boolean has(Role role) {
    return uses.values().stream().anyMatch(u -> u.role() == role);
  }

  ColumnUse of(HeaderCell cell) {
    return uses.get(cell.column());
  }

  /** Whether a map says what the column holds. */
  boolean isSaid(HeaderCell cell) {
    return said.columns().containsKey(cell.column());
  }

  /** Whether a map says if the readings are corrected. */
  boolean isCorrectionSaid() {
    return said.corrected() != null;
  }

  /** Whether a map says at what temperature was read, or that it does not matter. */
  boolean isTemperatureSaid() {
    return Boolean.TRUE.equals(said.corrected()) || !Double.isNaN(said.temperatureC());
  }

  /** The columns of a role; those that a map names shut out all others. */
  List<HeaderCell> with(Role role) {
    List<HeaderCell> cells = header.cells().stream().filter(c -> of(c).role() == role).toList();
    List<HeaderCell> named = cells.stream().filter(this::isSaid).toList();
    if (named.isEmpty()) {
      return cells;
    }
    cells.stream()
        .filter(c -> !named.contains(c))
        .forEach(c -> change(c, Role.OTHER, "", "the map names another column"));
    return named;
  }

  /** The unit that a map gives for a column, "" when it gives none. */
  String saidUnit(HeaderCell cell) {
    TableMap.ColumnMap column = said.columns().get(cell.column());
    return column == null ? "" : column.unit();
  }

  void change(HeaderCell cell, Role role, String unit, String why) {
    uses.put(cell.column(), new ColumnUse(cell.column(), cell.text(), role, unit, why));
  }

  void doubt(HeaderCell cell, String question) {
    doubts.add(new Doubt(CellAddress.of(header.bottomRow(), cell.column()), question));
  }

  ColumnFacts facts(HeaderCell cell) {
    return facts.computeIfAbsent(cell.column(), c -> ColumnFacts.of(grid, rows, c));
  }
}
