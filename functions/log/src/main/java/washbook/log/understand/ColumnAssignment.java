package washbook.log.understand;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import washbook.log.Doubts;
import washbook.log.LogColumn;
import washbook.log.MapAnswer;
import washbook.log.Role;
import washbook.log.language.Message;
import washbook.log.layout.Header;
import washbook.log.layout.Header.HeaderCell;
import washbook.log.layout.TableRows;
import washbook.log.sheet.Grid;
import washbook.log.words.ReadingScale;

/** What the columns of one table have been taken for so far, and the doubts about it. */
final class ColumnAssignment {
  private final Grid grid;
  private final Header header;
  private final TableRows rows;
  private final TableMap said;
  private final TreeMap<Integer, LogColumn> uses = new TreeMap<>();
  private final Map<Integer, ColumnValues> facts = new HashMap<>();
  private final Doubts doubts;
  private boolean settled = true;

  ColumnAssignment(Grid grid, Header header, TableRows rows, TableMap said, Doubts doubts) {
    this.grid = grid;
    this.header = header;
    this.rows = rows;
    this.said = said;
    this.doubts = doubts;
    for (HeaderCell cell : header.cells()) {
      String why = isSaid(cell) ? "col.map" : cell.role() == Role.OTHER ? "col.none" : "col.header";
      change(cell, cell.role(), "", Message.of(why));
    }
  }

  List<LogColumn> all() {
    return List.copyOf(uses.values());
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

  LogColumn of(HeaderCell cell) {
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

  /** Where a map names the columns of a role, no other has it. */
  void takeOnlyNamed(Role role) {
    List<HeaderCell> named = with(role).stream().filter(this::isSaid).toList();
    if (!named.isEmpty()) {
      header.cells().stream()
          .filter(c -> of(c).role() == role && !named.contains(c))
          .forEach(c -> change(c, Role.OTHER, "", Message.of("col.mapOther")));
    }
  }

  /** The columns of a role; where a map names some, those. */
  List<HeaderCell> with(Role role) {
    List<HeaderCell> cells = header.cells().stream().filter(c -> of(c).role() == role).toList();
    List<HeaderCell> named = cells.stream().filter(this::isSaid).toList();
    return named.isEmpty() ? cells : named;
  }

  /** The unit that a map gives for a column, "" when it gives none. */
  String saidUnit(HeaderCell cell) {
    TableMap.ColumnMap column = said.columns().get(cell.column());
    return column == null ? "" : column.unit();
  }

  /** The scale of a column of readings that the map or its header states. */
  Optional<ReadingScale> statedScale(HeaderCell cell) {
    String unit = saidUnit(cell);
    return unit.isEmpty()
        ? ReadingScale.in(cell.meanings())
        : Optional.of(ReadingScale.valueOf(unit));
  }

  void change(HeaderCell cell, Role role, String unit, Message why) {
    uses.put(cell.column(), new LogColumn(cell.column(), cell.text(), role, unit, why));
  }

  void doubt(HeaderCell cell, Message asked, MapAnswer... answers) {
    doubts.ask(grid.address(header.bottomRow(), cell.column()), asked, answers);
  }

  ColumnValues facts(HeaderCell cell) {
    return facts.computeIfAbsent(cell.column(), c -> ColumnValues.of(grid, rows, c));
  }
}
