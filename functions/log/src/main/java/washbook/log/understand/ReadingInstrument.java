package washbook.log.understand;

import java.util.List;
import java.util.Set;
import washbook.functions.Numbers;
import washbook.functions.RefusedException;
import washbook.functions.ferment.Balance;
import washbook.functions.quantity.Quantity;
import washbook.functions.reading.Refractometer;
import washbook.functions.scale.SugarScale;
import washbook.log.MapAnswer;
import washbook.log.Role;
import washbook.log.language.Figure;
import washbook.log.language.Message;
import washbook.log.layout.Header;
import washbook.log.layout.Header.HeaderCell;
import washbook.log.layout.KeyLine;
import washbook.log.layout.TableRows;
import washbook.log.reading.RowInstrument;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;
import washbook.log.words.CellText;
import washbook.log.words.Concept;
import washbook.log.words.Ditto;
import washbook.log.words.ReadingScale;
import washbook.log.words.Vocabulary;

/**
 * Settles whether degrees of sugar were read with a hydrometer or a refractometer. In a ferment the
 * two part: alcohol lets a hydrometer sink to about nought and keeps a refractometer up. So a
 * course that ends low was read with a hydrometer, and any other is asked about where the log names
 * no instrument.
 */
final class ReadingInstrument {
  /** A hydrometer ends below this, degrees of sugar; common practice, no source. */
  private static final double LOW_END = 3;

  /** And below this share of the first reading: a weak wash ends low on both instruments. */
  private static final double LOW_SHARE = 0.3;

  private static final int LINES_AROUND = 8;

  /** Of more rows the last ones are read. */
  private static final int ROWS_READ = 200;

  /** A rise that begins another batch, degrees of sugar. */
  private static final double NEW_BATCH = 2;

  /** How far two readings of a refractometer may be out, degrees of sugar. */
  private static final double READING_ERROR = 0.5;

  /** No wash ferments to less, SG; the least that readings may be. */
  private static final double LEAST_GRAVITY = Quantity.GRAVITY.min();

  private final Grid grid;
  private final Header header;
  private final TableRows rows;
  private final ColumnAssignment columns;

  /** The greatest and the least reading in degrees, and whether a temperature stands with any. */
  private double highest = Double.NEGATIVE_INFINITY;

  private double lowest = Double.POSITIVE_INFINITY;
  private boolean withTemperature;

  /** Whether one batch fell lower than a refractometer ever shows. */
  private boolean tooLowForRefractometer;

  ReadingInstrument(Grid grid, Header header, TableRows rows, ColumnAssignment columns) {
    this.grid = grid;
    this.header = header;
    this.rows = rows;
    this.columns = columns;
  }

  /**
   * @param lines what is said above the table
   * @param reading what the header of the reading says
   */
  void settle(List<KeyLine> lines, ReadingColumn reading) {
    if (isSaidOfEachRow()) {
      return;
    }
    boolean refractometer =
        lines.stream().anyMatch(l -> l.has(Concept.REFRACTOMETER) && !l.has(Concept.HYDROMETER));
    refractometer |= !columns.has(Role.REFRACTOMETER) && saidBelow();
    for (HeaderCell cell : columns.with(Role.GRAVITY)) {
      String unit = columns.of(cell).unit();
      if (columns.isSaid(cell) || columns.has(Role.REFRACTOMETER) || isSaid(cell.meanings())) {
        continue;
      }
      // Which scale it is has been asked, and no answer could name one.
      if (unit.isEmpty()) {
        continue;
      }
      lookAt(cell, unit);
      if (refractometer && !unit.equals("SG")) {
        columns.change(cell, Role.REFRACTOMETER, unit, Message.of("col.refractometer"));
        ask(cell, Message.of("because.refractometer"), false);
      } else if (!isHydrometer(lines, reading)) {
        boolean anyTemperature =
            withTemperature
                || columns.has(Role.TEMPERATURE)
                || columns.isTemperatureSaid()
                || reading.correctedByHeader
                || !Double.isNaN(reading.temperatureByHeader)
                || lines.stream().anyMatch(l -> l.isReadingTemperature() || l.saysCorrected());
        if (highest < lowest || (tooLowForRefractometer && anyTemperature)) {
          continue;
        }
        if (lowest >= LOW_END || lowest > LOW_SHARE * highest) {
          ask(
              cell,
              Message.of("because.noInstrument", new Figure(Numbers.round(lowest, 2))),
              false);
        } else if (!anyTemperature) {
          ask(cell, Message.of("because.noTemperature"), true);
        }
      }
    }
  }

  /** Whether a column says of each row which instrument was read. */
  private boolean isSaidOfEachRow() {
    if (columns.has(Role.INSTRUMENT)) {
      return true;
    }
    if (columns.has(Role.REFRACTOMETER) || columns.with(Role.GRAVITY).size() != 1) {
      return false;
    }
    HeaderCell reading = columns.with(Role.GRAVITY).get(0);
    for (Role role : List.of(Role.OTHER, Role.NOTE)) {
      for (HeaderCell cell : columns.with(role)) {
        if (!columns.isSaid(cell) && namesBoth(cell.column(), reading.column())) {
          columns.change(cell, Role.INSTRUMENT, "", Message.of("col.instruments"));
          return true;
        }
      }
    }
    return false;
  }

  /** Whether nothing but instruments stands in a column, and both kinds of them. */
  private boolean namesBoth(int column, int reading) {
    int hydrometers = 0;
    int refractometers = 0;
    boolean words = false;
    int last = Math.min(rows.lastRow(), rows.firstRow() + ROWS_READ);
    for (int row = rows.firstRow(); row <= last; row++) {
      boolean read = !rows.isSkipped(row) && grid.kind(row, reading) != Grid.Kind.BLANK;
      if (!read) {
        continue;
      }
      String text = grid.kind(row, column) == Grid.Kind.TEXT ? grid.text(row, column) : "";
      words |= text.strip().length() > 2;
      switch (RowInstrument.of(text)) {
        case HYDROMETER -> hydrometers++;
        case REFRACTOMETER -> refractometers++;
        default -> {
          if (!Ditto.isMark(text)) {
            return false;
          }
        }
      }
    }
    // Single letters may be initials.
    return hydrometers > 0 && refractometers > 0 && (words || saidAround());
  }

  /** Whether a line close above, a note or one close below speaks of a refractometer. */
  private boolean saidAround() {
    int first = Math.max(0, header.topRow() - LINES_AROUND);
    return saysRefractometer(first, header.bottomRow(), grid.columnCount()) || saidBelow();
  }

  /** Whether a note, or a line close below, speaks of a refractometer. */
  private boolean saidBelow() {
    int last = Math.min(grid.rowCount() - 1, rows.lastRow() + LINES_AROUND);
    int first = Math.max(rows.firstRow(), last - ROWS_READ);
    return saysRefractometer(first, last, header.lastColumn() + 2);
  }

  private boolean saysRefractometer(int firstRow, int lastRow, int columns) {
    for (int row = firstRow; row <= lastRow; row++) {
      for (int column = 0; column < Math.min(columns, grid.columnsUsed(row)); column++) {
        if (grid.kind(row, column) == Grid.Kind.TEXT
            && Vocabulary.meanings(grid.text(row, column)).contains(Concept.REFRACTOMETER)) {
          return true;
        }
      }
    }
    return false;
  }

  /** Apparent extract is what a hydrometer shows. */
  private static boolean isSaid(Set<Concept> meanings) {
    return meanings.contains(Concept.HYDROMETER) || meanings.contains(Concept.EXTRACT);
  }

  private boolean isHydrometer(List<KeyLine> lines, ReadingColumn reading) {
    return !Double.isNaN(reading.calibrationByHeader)
        || lines.stream()
            .filter(l -> !l.has(Concept.REFRACTOMETER) && !l.has(Concept.OTHERTHING))
            .anyMatch(l -> l.isCalibration() || isSaid(l))
        || Vocabulary.meanings(grid.name()).contains(Concept.HYDROMETER)
        || header.cells().stream().anyMatch(c -> c.meanings().contains(Concept.HYDROMETER))
        || header.cells().stream().anyMatch(this::isSameReadingAsGravity)
        || (columns.has(Role.OWN_CORRECTED_GRAVITY) && columns.has(Role.TEMPERATURE));
  }

  /** A gravity column that agreed with the reading: both are what a hydrometer shows. */
  private boolean isSameReadingAsGravity(HeaderCell cell) {
    return cell.role() == Role.GRAVITY
        && columns.of(cell).role() == Role.OTHER
        && columns.facts(cell).mostlyGravity();
  }

  private static boolean isSaid(KeyLine line) {
    return line.has(Concept.HYDROMETER)
        || Vocabulary.meanings(line.text()).contains(Concept.HYDROMETER);
  }

  private void lookAt(HeaderCell cell, String unit) {
    highest = Double.NEGATIVE_INFINITY;
    lowest = Double.POSITIVE_INFINITY;
    withTemperature = false;
    tooLowForRefractometer = false;
    double start = Double.NaN;
    double before = Double.NaN;
    boolean oneAfterTheOther = !columns.has(Role.BATCH);
    boolean degrees = ReadingScale.of(unit).isPercentOfExtract();
    for (int row = rows.firstRow(); row <= rows.lastRow(); row++) {
      double value = rows.isSkipped(row) ? Double.NaN : degrees(row, cell.column(), degrees);
      if (!Double.isNaN(value)) {
        highest = Math.max(highest, value);
        lowest = Math.min(lowest, value);
        start = value <= before + NEW_BATCH ? Math.max(start, value) : value;
        before = value;
        tooLowForRefractometer |= oneAfterTheOther && isTooLow(start, value);
      }
    }
  }

  /** Whether no wash that began so ferments until a refractometer shows so little. */
  private static boolean isTooLow(double start, double value) {
    double present = value + READING_ERROR;
    if (present >= start) {
      return false;
    }
    try {
      return present <= 0 || Refractometer.gravity(start, present, 1) < LEAST_GRAVITY;
    } catch (RefusedException refused) {
      return true;
    }
  }

  /** A row's reading where it is in degrees of sugar, by the column or by its own unit. */
  private double degrees(int row, int column, boolean byColumn) {
    if (grid.kind(row, column) == Grid.Kind.NUMBER) {
      return byColumn ? grid.number(row, column) : Double.NaN;
    }
    if (grid.kind(row, column) != Grid.Kind.TEXT) {
      return Double.NaN;
    }
    CellText text = CellText.read(grid.text(row, column));
    withTemperature |= !Double.isNaN(text.temperature);
    boolean ours =
        text.unit.isEmpty()
            ? byColumn
            : ReadingScale.behind(text.unit).filter(ReadingScale::isPercentOfExtract).isPresent();
    return ours ? text.value : Double.NaN;
  }

  private void ask(HeaderCell cell, Message because, boolean needsTemperature) {
    columns.unsettle();
    String letters = CellAddress.letters(cell.column());
    String unit = columns.of(cell).unit().equals("SG") ? "BRIX" : columns.of(cell).unit();
    String hydrometer = MapPrinter.column(cell.column()) + " = GRAVITY in " + unit;
    columns.doubt(
        cell,
        Message.of("ask.instrument", letters, cell.text(), because),
        MapAnswer.of(MapPrinter.column(cell.column()) + " = REFRACTOMETER in " + refracted(unit))
            .with(strength(true)),
        new MapAnswer(
            needsTemperature ? List.of(hydrometer, "temperature = 20 C") : List.of(hydrometer),
            strength(false),
            needsTemperature));
  }

  /** A refractometer's degrees by mass are Brix; other scales are its own. */
  private static String refracted(String unit) {
    return ReadingScale.of(unit).isPercentOfExtract() ? "BRIX" : unit;
  }

  /** What would follow, where the readings tell. */
  private Message strength(boolean refractometer) {
    if (!(lowest < highest)) {
      return Message.NONE;
    }
    try {
      double original = SugarScale.BRIX.toGravity(highest);
      double gravity =
          refractometer
              ? Refractometer.gravity(highest, lowest, 1)
              : SugarScale.BRIX.toGravity(lowest);
      double alcohol = Balance.of(original, gravity).percentVolume();
      return Message.of("ask.about", new Figure(Numbers.round(alcohol, 1)));
    } catch (RefusedException refused) {
      return Message.NONE;
    }
  }
}
