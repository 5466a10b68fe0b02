package washbook.samples.corpus;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import washbook.log.Role;
import washbook.samples.ferment.Entry;

/** Writes one table of readings onto a page and notes down what is to be understood of it. */
final class Sheetful {
  private record Column(String header, Role role, String unit, Function<Entry, Object> value) {}

  private final Page page;
  private final int headerRow;
  private final int firstColumn;
  private final List<Column> columns = new ArrayList<>();
  private final List<Expected.Row> rows = new ArrayList<>();
  private final Map<String, Expected.Ferment> batches = new LinkedHashMap<>();
  private final Map<String, Double> earliest = new LinkedHashMap<>();
  private int headerRows = 1;
  private double stated = Double.NaN;
  private double statedError;
  private boolean alreadyCorrected;
  private int nextRow;

  Sheetful(Page page, int headerRow, int firstColumn) {
    this.page = page;
    this.headerRow = headerRow;
    this.firstColumn = firstColumn;
  }

  /** A column; an override of an entry under this header wins over {@code value}. */
  Sheetful column(String header, Role role, String unit, Function<Entry, Object> value) {
    columns.add(new Column(header, role, unit, value));
    return this;
  }

  Sheetful column(String header, Role role, Function<Entry, Object> value) {
    return column(header, role, "", value);
  }

  /** A second row under the headers, usually with the units. */
  Sheetful unitRow(Object... units) {
    page.line(headerRow + 1, firstColumn, units);
    headerRows = 2;
    return this;
  }

  /** The log states the original gravity itself, rounded to within {@code error}. */
  Sheetful stated(double originalGravity, double error) {
    stated = originalGravity;
    statedError = error;
    return this;
  }

  /** The log says that its readings are corrected, or that there is nothing to correct. */
  Sheetful alreadyCorrected() {
    alreadyCorrected = true;
    return this;
  }

  /** Entries become rows, null a blank row, an array a line written as it stands. */
  Sheetful rows(List<?> lines) {
    for (int i = 0; i < columns.size(); i++) {
      page.put(headerRow, firstColumn + i, columns.get(i).header());
    }
    nextRow = headerRow + headerRows;
    for (Object line : lines) {
      if (line instanceof Entry entry) {
        write(entry);
      } else if (line instanceof Object[] values) {
        page.line(nextRow, firstColumn, values);
      }
      nextRow++;
    }
    return this;
  }

  /** The log states this entry's batch's original gravity in the row itself. */
  Sheetful statedFor(Entry entry, double originalGravity) {
    batches.computeIfPresent(
        entry.moment().ferment().name(),
        (name, b) ->
            new Expected.Ferment(
                name, originalGravity, b.firstRow(), b.calibrationC(), b.offset()));
    return this;
  }

  /** The first row below the table. */
  int end() {
    return nextRow;
  }

  private void write(Entry entry) {
    for (int i = 0; i < columns.size(); i++) {
      Column column = columns.get(i);
      Object value =
          entry.overridden(column.header())
              ? entry.override(column.header())
              : entry.without() && isReading(column.role()) ? null : column.value().apply(entry);
      page.put(nextRow, firstColumn + i, value);
    }
    if (!entry.without()) {
      note(entry);
    }
  }

  private static boolean isReading(Role role) {
    return role == null
        || role == Role.GRAVITY
        || role == Role.REFRACTOMETER
        || role == Role.TEMPERATURE
        || role.name().startsWith("OWN_");
  }

  private void note(Entry entry) {
    String name = entry.moment().ferment().name();
    if (!entry.refused() && !(earliest.getOrDefault(name, 1e9) <= entry.moment().day())) {
      earliest.put(name, entry.moment().day());
      batches.put(
          name,
          new Expected.Ferment(
              name,
              stated,
              nextRow,
              entry.instrument().calibrationC(),
              entry.instrument().offset()));
    }
    rows.add(entry.refused() ? refused(name) : filled(name, entry));
  }

  private Expected.Row refused(String name) {
    double none = Double.NaN;
    return new Expected.Row(nextRow, name, true, none, none, none, none, none, none, none, none);
  }

  private Expected.Row filled(String name, Entry entry) {
    double truth = entry.moment().gravity();
    double half = entry.instrument().halfStepGravity(truth);
    double originalHalf = Double.isNaN(stated) ? half : statedError;
    double gravityError = 1.05 * half + 0.0001 + entry.loose() / 150;
    return new Expected.Row(
        nextRow,
        name,
        false,
        entry.loose() > 0 ? Double.NaN : entry.shownGravity(),
        alreadyCorrected ? Double.NaN : entry.temperatureC(),
        truth,
        gravityError,
        entry.moment().abv(),
        // Between 130 and 150 % vol go with 1 of gravity over the whole range.
        150 * (gravityError + originalHalf),
        entry.moment().apparentAttenuation(),
        entry.moment().realAttenuation());
  }

  Expected.Table expected() {
    List<Expected.Column> uses = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      Column c = columns.get(i);
      uses.add(new Expected.Column(firstColumn + i, c.role(), c.unit(), c.header()));
    }
    return new Expected.Table(page.name(), uses, List.copyOf(batches.values()), rows);
  }
}
