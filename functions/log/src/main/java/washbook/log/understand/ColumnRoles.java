package washbook.log.understand;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import washbook.log.Doubts;
import washbook.log.LogColumn;
import washbook.log.MapAnswer;
import washbook.log.Role;
import washbook.log.language.Message;
import washbook.log.layout.Header;
import washbook.log.layout.Header.HeaderCell;
import washbook.log.layout.KeyLine;
import washbook.log.layout.TableRows;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;
import washbook.log.words.AmountUnit;
import washbook.log.words.CellText;
import washbook.log.words.Concept;
import washbook.log.words.DateText;
import washbook.log.words.ReadingScale;

/** Settles role and unit of every column of a table from its headers, then from its values. */
final class ColumnRoles {
  /** Rows that are looked through for remarks. */
  private static final int NOTES_READ = 1000;

  private final Grid grid;
  private final Header header;
  private final TableRows rows;
  final ColumnAssignment columns;
  final ReadingColumn reading;

  ColumnRoles(Grid grid, Header header, TableRows rows, TableMap said, Doubts doubts) {
    this.grid = grid;
    this.header = header;
    this.rows = rows;
    this.columns = new ColumnAssignment(grid, header, rows, said, doubts);
    this.reading = new ReadingColumn(grid, rows, columns);
  }

  /**
   * @param lines what is said above the table
   */
  void settle(List<KeyLine> lines) {
    reading.settle(lines);
    settleDegrees();
    new TemperatureColumn(grid, rows, columns).settle();
    new ReadingInstrument(grid, header, rows, columns).settle(lines, reading);
    reading.settleStatedTemperature();
    settleRefractometer();
    settleOwnGravity();
    settleAmount(Role.SUGAR_ADDED);
    settleAmount(Role.WATER_ADDED);
    settleAmount(Role.VOLUME);
    settleDays();
    settleDates();
    settleClock();
    settleOneOnly(Role.DATE);
    settleBatch();
    settleNote();
  }

  /** Without a header for notes the column in which most is written holds them. */
  private void settleNote() {
    if (columns.has(Role.NOTE)) {
      return;
    }
    HeaderCell wordiest = null;
    int most = 1;
    for (HeaderCell cell : columns.with(Role.OTHER)) {
      int sentences = columns.isSaid(cell) ? 0 : sentences(cell.column());
      if (sentences > most) {
        most = sentences;
        wordiest = cell;
      }
    }
    if (wordiest != null) {
      columns.change(wordiest, Role.NOTE, "", Message.of("col.remarks"));
    }
  }

  /** How many cells of a column hold more than two words; a reading with its degrees is none. */
  private int sentences(int column) {
    int found = 0;
    int last = Math.min(rows.lastRow(), rows.firstRow() + NOTES_READ);
    for (int row = rows.firstRow(); row <= last; row++) {
      if (grid.kind(row, column) == Grid.Kind.TEXT
          && grid.text(row, column).strip().split("\\s+").length > 2
          && Double.isNaN(CellText.read(grid.text(row, column)).temperature)) {
        found++;
      }
    }
    return found;
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
      double value = CellText.plainNumber(grid, row, gravity.column());
      double points = 1000 * (ReadingScale.SG.toGravity(value) - 1);
      if (points <= lowest) {
        lowest = points;
        there = CellText.plainNumber(grid, row, cell.column());
      }
    }
    if (lowest < 15 && there >= 10 && columns.facts(cell).max() <= 104) {
      columns.change(cell, Role.TEMPERATURE, "", Message.of("col.degrees"));
    }
  }

  private void settleRefractometer() {
    columns.takeOnlyNamed(Role.REFRACTOMETER);
    List<HeaderCell> cells = columns.with(Role.REFRACTOMETER);
    for (int i = 0; i < cells.size(); i++) {
      HeaderCell cell = cells.get(i);
      Optional<ReadingScale> stated = columns.statedScale(cell);
      boolean percent =
          stated.isPresent()
              ? stated.get().isPercentOfExtract()
              : !columns.facts(cell).mostlyGravity();
      if (i > 0) {
        columns.change(cell, Role.OTHER, "", Message.of("col.otherRefractometer"));
      } else if (percent) {
        columns.change(
            cell,
            Role.REFRACTOMETER,
            ReadingScale.BRIX.name(),
            Message.of(stated.isEmpty() ? "col.values" : "col.header"));
      } else {
        String unit = stated.orElse(ReadingScale.SG).name();
        columns.change(cell, Role.REFRACTOMETER, unit, Message.of("col.header"));
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
            .map(LogColumn::unit)
            .findFirst()
            .orElse("");
    for (HeaderCell cell : columns.with(Role.OWN_CORRECTED_GRAVITY)) {
      Optional<ReadingScale> stated = columns.statedScale(cell);
      String unit =
          stated.isPresent()
              ? stated.get().name()
              : columns.facts(cell).mostlyGravity() ? ReadingScale.SG.name() : reading;
      columns.change(cell, Role.OWN_CORRECTED_GRAVITY, unit, columns.of(cell).why());
    }
  }

  private void settleAmount(Role role) {
    columns.takeOnlyNamed(role);
    columns.with(role).stream()
        .filter(c -> !columns.isSaid(c) && ColumnValues.areWords(grid, rows, c.column()))
        .forEach(c -> columns.change(c, Role.OTHER, "", Message.of("col.other")));
    List<HeaderCell> cells = columns.with(role);
    for (int i = 0; i < cells.size(); i++) {
      HeaderCell cell = cells.get(i);
      if (i > 0) {
        columns.change(cell, Role.OTHER, "", Message.of("col.other"));
        continue;
      }
      String unit =
          !columns.saidUnit(cell).isEmpty()
              ? columns.saidUnit(cell)
              : AmountUnit.in(cell.meanings(), role == Role.SUGAR_ADDED)
                  .map(AmountUnit::name)
                  .orElse("");
      columns.change(cell, role, unit, Message.of(unit.isEmpty() ? "col.noUnit" : "col.header"));
    }
  }

  /** A column of days that holds dates is one of dates. */
  private void settleDays() {
    columns.takeOnlyNamed(Role.DAY);
    for (HeaderCell cell : columns.with(Role.DAY)) {
      if (!columns.has(Role.DATE) && ColumnValues.areDaysAndMonths(grid, rows, cell.column())) {
        columns.change(cell, Role.DATE, "", Message.of("col.dates"));
        continue;
      }
      for (int row = rows.firstRow(); row <= rows.lastRow(); row++) {
        Grid.Kind kind = grid.kind(row, cell.column());
        if (kind == Grid.Kind.DATE
            || (kind == Grid.Kind.TEXT
                && !Double.isNaN(
                    DateText.serial(grid.text(row, cell.column()), DateText.Order.DAY_FIRST)))) {
          columns.change(cell, Role.DATE, "", Message.of("col.dates"));
          break;
        }
      }
    }
  }

  /** Where no header names the dates the column that holds nothing else does. */
  private void settleDates() {
    if (columns.has(Role.DATE) || columns.has(Role.DAY) || columns.has(Role.HOURS)) {
      return;
    }
    List<HeaderCell> cells = new ArrayList<>(columns.with(Role.TIME));
    cells.addAll(columns.with(Role.OTHER));
    for (HeaderCell cell : cells) {
      if (!columns.isSaid(cell) && ColumnValues.areDates(grid, rows, cell.column())) {
        columns.change(cell, Role.DATE, "", Message.of("col.dates"));
        return;
      }
    }
  }

  /** The column of the clock, whatever is written over it. */
  private void settleClock() {
    columns.with(Role.OTHER).stream()
        .filter(c -> columns.has(Role.DATE) && !columns.has(Role.TIME) && !columns.isSaid(c))
        .filter(c -> ColumnValues.areClock(grid, rows, c.column()))
        .findFirst()
        .ifPresent(c -> columns.change(c, Role.TIME, "", Message.of("col.clock")));
  }

  private void settleOneOnly(Role role) {
    columns.takeOnlyNamed(role);
    List<HeaderCell> cells = columns.with(role);
    for (int i = 1; i < cells.size(); i++) {
      columns.change(cells.get(i), Role.OTHER, "", Message.of("col.other"));
    }
  }

  private void settleBatch() {
    columns.takeOnlyNamed(Role.BATCH);
    List<HeaderCell> times = times();
    LogColumn of = readingColumn();
    BatchColumn byReadings =
        of == null
            ? null
            : new BatchColumn(grid, rows, of, times.isEmpty() ? -1 : times.get(0).column());
    if (byReadings != null) {
      settleBatchByReadings(byReadings, !times.isEmpty());
    }
    List<HeaderCell> cells = columns.with(Role.BATCH);
    HeaderCell chosen = times.isEmpty() ? lot(cells) : chosen(cells, byReadings);
    for (HeaderCell cell : cells) {
      if (cell != chosen) {
        columns.change(cell, Role.OTHER, "", Message.of("col.otherBatch"));
      } else if (!cell.meanings().contains(Concept.BATCH)
          && cell.meanings().contains(Concept.VESSEL)) {
        boolean moved = byReadings != null && !columns.isSaid(cell) && byReadings.isMovedOn(cell);
        columns.change(
            cell,
            moved ? Role.OTHER : Role.BATCH,
            "",
            Message.of(moved ? "col.moved" : "col.vessel"));
      }
    }
  }

  /** The lot; the vessel where one lot stands in several that are read on the same days. */
  private HeaderCell chosen(List<HeaderCell> cells, BatchColumn byReadings) {
    HeaderCell lot = lot(cells);
    if (lot == null || columns.isSaid(lot) || byReadings == null) {
      return lot;
    }
    return cells.stream()
        .filter(c -> c != lot && c.meanings().contains(Concept.VESSEL))
        .filter(c -> byReadings.isOneName(lot) && byReadings.partsDays(c))
        .findFirst()
        .orElse(lot);
  }

  private static HeaderCell lot(List<HeaderCell> cells) {
    return cells.stream()
        .filter(c -> c.meanings().contains(Concept.BATCH))
        .findFirst()
        .orElse(cells.isEmpty() ? null : cells.get(0));
  }

  private LogColumn readingColumn() {
    return Stream.of(Role.GRAVITY, Role.REFRACTOMETER)
        .flatMap(role -> columns.all().stream().filter(u -> u.role() == role))
        .findFirst()
        .orElse(null);
  }

  /** Where no header names the batch the readings may; and none has a reading of its own each. */
  private void settleBatchByReadings(BatchColumn byReadings, boolean timed) {
    List<HeaderCell> named = columns.with(Role.BATCH);
    for (HeaderCell cell : named) {
      if (!columns.isSaid(cell) && byReadings.holdsTimes(cell)) {
        columns.change(cell, Role.OTHER, "", Message.of("col.times"));
      } else if (!columns.isSaid(cell) && ColumnValues.areFractions(grid, rows, cell.column())) {
        columns.change(cell, Role.OTHER, "", Message.of("col.fractions"));
      } else if (!columns.isSaid(cell) && ColumnValues.countRows(grid, rows, cell.column())) {
        columns.change(cell, Role.OTHER, "", Message.of("col.counts"));
      }
    }
    if (columns.with(Role.BATCH).isEmpty()) {
      List<HeaderCell> open =
          columns.with(Role.OTHER).stream().filter(c -> !columns.isSaid(c)).toList();
      byReadings
          .among(open)
          .ifPresent(c -> columns.change(c, Role.BATCH, "", Message.of("col.restarts")));
      if (timed && columns.with(Role.BATCH).isEmpty()) {
        askAboutTurns(byReadings, open);
      }
    }
  }

  private List<HeaderCell> times() {
    return Stream.of(Role.DATE, Role.DAY, Role.HOURS, Role.TIME)
        .flatMap(role -> columns.with(role).stream())
        .toList();
  }

  private void askAboutTurns(BatchColumn byReadings, List<HeaderCell> open) {
    for (HeaderCell cell : open) {
      if (!byReadings.holdsTimes(cell) && byReadings.isReadInTurn(cell)) {
        String column = MapPrinter.column(cell.column());
        columns.unsettle();
        columns.doubt(
            cell,
            Message.of("ask.namesBatch", CellAddress.letters(cell.column()), cell.text()),
            MapAnswer.of(column + " = BATCH"),
            MapAnswer.of(column + " = OTHER"));
        return;
      }
    }
  }
}
