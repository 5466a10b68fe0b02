package washbook.functions.log;

import java.util.EnumSet;
import java.util.List;
import washbook.functions.log.Header.HeaderCell;

/** Settles role and unit of every column of a table from its headers, then from its values. */
final class ColumnSettler {
  private final Grid grid;
  private final Header header;
  private final TableRows rows;
  final ColumnUses columns;
  final ReadingSettler reading;

  ColumnSettler(Grid grid, Header header, TableRows rows, TableMap said) {
    this.grid = grid;
    this.header = header;
    this.rows = rows;
    this.columns = new ColumnUses(grid, header, rows, said);
    this.reading = new ReadingSettler(grid, rows, columns);
  }

  /**
   * @param lines what is said above the table
   */
  void settle(List<KeyLine> lines) {
    reading.settle();
    settleDegrees();
    new TemperatureSettler(grid, rows, columns).settle();
    new InstrumentSettler(grid, header, rows, columns).settle(lines, reading);
    reading.settleStatedTemperature();
    settleRefractometer();
    settleOwnGravity();
    settleAmount(Role.SUGAR_ADDED);
    settleAmount(Role.WATER_ADDED);
    settleAmount(Role.VOLUME);
    settleDays();
    settleOneOnly(Role.DATE);
    settleBatch();
  }

  /**
   * A column of bare degrees is the temperature where it stays while the gravity falls: degrees of
   * sugar would end near nought with it.
   */
  private void settleDegrees() {
    List<HeaderCell> degrees =
        columns.with(Role.OTHER).stream()
            .filter(c -> c.meanings().equals(EnumSet.of(Concept.DEGREES)) && !columns.isSaid(c))
            .toList();
    HeaderCell gravity =
        columns.with(Role.GRAVITY).stream()
            .filter(c -> columns.facts(c).mostlyGravity())
            .findFirst()
            .orElse(null);
    if (degrees.size() != 1 || gravity == null || columns.has(Role.TEMPERATURE)) {
      return;
    }
    HeaderCell cell = degrees.get(0);
    double lowest = Double.POSITIVE_INFINITY;
    double there = Double.NaN;
    for (int row = rows.firstRow(); row <= rows.lastRow(); row++) {
      double value = ColumnFacts.plainNumber(grid, row, gravity.column());
      double points = 1000 * (value >= 100 ? value / 1000 - 1 : value - 1);
      if (points <= lowest) {
        lowest = points;
        there = ColumnFacts.plainNumber(grid, row, cell.column());
      }
    }
    if (lowest < 15 && there >= 10 && columns.facts(cell).max() <= 104) {
      columns.change(
          cell, Role.TEMPERATURE, "", "degrees that stay while the gravity falls are no sugar");
    }
  }

  private void settleRefractometer() {
    List<HeaderCell> cells = columns.with(Role.REFRACTOMETER);
    for (int i = 0; i < cells.size(); i++) {
      HeaderCell cell = cells.get(i);
      String stated =
          columns.saidUnit(cell).isEmpty()
              ? Units.sugarScale(cell.meanings())
              : columns.saidUnit(cell);
      boolean percent =
          stated.equals("BRIX")
              || stated.equals("PLATO")
              || stated.equals("BALLING")
              || stated.isEmpty() && !columns.facts(cell).mostlyGravity();
      if (i > 0) {
        columns.change(cell, Role.OTHER, "", "another column is the refractometer's");
      } else if (percent) {
        columns.change(
            cell, Role.REFRACTOMETER, "BRIX", stated.isEmpty() ? "by its values" : "by its header");
      } else {
        columns.change(cell, Role.REFRACTOMETER, stated.isEmpty() ? "SG" : stated, "by its header");
      }
    }
  }

  /**
   * The scale of the log's own corrected gravity: by its header, its values, else the reading's.
   */
  private void settleOwnGravity() {
    String reading =
        columns.all().stream()
            .filter(u -> u.role() == Role.GRAVITY)
            .map(ColumnUse::unit)
            .findFirst()
            .orElse("");
    for (HeaderCell cell : columns.with(Role.OWN_CORRECTED_GRAVITY)) {
      String stated =
          columns.saidUnit(cell).isEmpty()
              ? Units.sugarScale(cell.meanings())
              : columns.saidUnit(cell);
      String unit =
          !stated.isEmpty() ? stated : columns.facts(cell).mostlyGravity() ? "SG" : reading;
      columns.change(cell, Role.OWN_CORRECTED_GRAVITY, unit, columns.of(cell).why());
    }
  }

  private void settleAmount(Role role) {
    List<HeaderCell> cells = columns.with(role);
    for (int i = 0; i < cells.size(); i++) {
      HeaderCell cell = cells.get(i);
      if (i > 0) {
        columns.change(cell, Role.OTHER, "", "another column is used");
        continue;
      }
      List<Concept> units =
          role == Role.SUGAR_ADDED
              ? List.of(Concept.KG, Concept.LB, Concept.G)
              : List.of(Concept.ML, Concept.GALUS, Concept.GALUK, Concept.L);
      String unit =
          !columns.saidUnit(cell).isEmpty()
              ? columns.saidUnit(cell)
              : units.stream()
                  .filter(cell.meanings()::contains)
                  .map(Enum::name)
                  .findFirst()
                  .orElse("");
      columns.change(cell, role, unit, unit.isEmpty() ? "its unit is not stated" : "by its header");
    }
  }

  /** A column of days that holds dates is one of dates. */
  private void settleDays() {
    for (HeaderCell cell : columns.with(Role.DAY)) {
      for (int row = rows.firstRow(); row <= rows.lastRow(); row++) {
        Grid.Kind kind = grid.kind(row, cell.column());
        if (kind == Grid.Kind.DATE
            || (kind == Grid.Kind.TEXT
                && !Double.isNaN(
                    DateText.serial(grid.text(row, cell.column()), DateText.Order.DAY_FIRST)))) {
          columns.change(cell, Role.DATE, "", "its values are dates");
          break;
        }
      }
    }
  }

  private void settleOneOnly(Role role) {
    List<HeaderCell> cells = columns.with(role);
    for (int i = 1; i < cells.size(); i++) {
      columns.change(cells.get(i), Role.OTHER, "", "another column is used");
    }
  }

  private void settleBatch() {
    List<HeaderCell> cells = columns.with(Role.BATCH);
    HeaderCell chosen =
        cells.stream()
            .filter(c -> c.meanings().contains(Concept.BATCH))
            .findFirst()
            .orElse(cells.isEmpty() ? null : cells.get(0));
    for (HeaderCell cell : cells) {
      if (cell != chosen) {
        columns.change(cell, Role.OTHER, "", "another column names the batch");
      } else if (!cell.meanings().contains(Concept.BATCH)) {
        columns.change(cell, Role.BATCH, "", "the vessel stands for the batch");
      }
    }
  }
}
