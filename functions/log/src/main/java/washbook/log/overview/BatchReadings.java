package washbook.log.overview;

import java.util.Arrays;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import washbook.log.Batch;
import washbook.log.ComputedColumn;
import washbook.log.LogTable;
import washbook.log.Role;
import washbook.log.fill.ComputedTable;
import washbook.log.reading.HydrometerRows;
import washbook.log.reading.RowTimes;
import washbook.log.sheet.Grid;

/**
 * The readings of one batch that were not refused, in the order of time.
 *
 * @param rows in the sheet
 * @param days of each, NaN without a time
 * @param gravities corrected, SG 20/20
 * @param temperatureRows rows in the sheet with a temperature, also beside refused readings
 * @param temperaturesC as measured in them
 * @param readingCells address of the reading in a row of the sheet
 * @param temperatureCells address of the temperature in a row of the sheet
 * @param lastTried the row of the last reading, refused or not; -1 for none
 * @param lastTriedDay when that was, NaN without a time
 */
record BatchReadings(
    int[] rows,
    double[] days,
    double[] gravities,
    int[] temperatureRows,
    double[] temperaturesC,
    IntFunction<String> readingCells,
    IntFunction<String> temperatureCells,
    int lastTried,
    double lastTriedDay) {

  /** The coldest and the warmest that a thermometer in a wash can show, °C. */
  private static final double COLDEST = -20;

  private static final double WARMEST = 100;

  static BatchReadings of(
      Grid grid, LogTable table, Batch batch, ComputedTable computed, RowTimes order) {
    HydrometerRows reading = new HydrometerRows(grid, table);
    int[] rows =
        Arrays.stream(batch.rows())
            .filter(r -> !Double.isNaN(computed.number(ComputedColumn.CORRECTED_GRAVITY, r)))
            .toArray();
    double[] temperatures =
        Arrays.stream(batch.rows()).mapToDouble(r -> temperature(table, reading, r)).toArray();
    int[] measured =
        IntStream.range(0, temperatures.length)
            .filter(i -> temperatures[i] >= COLDEST && temperatures[i] <= WARMEST)
            .toArray();
    int lastTried = lastTried(grid, table, batch, reading, order);
    return new BatchReadings(
        rows,
        Arrays.stream(rows).mapToDouble(order::days).toArray(),
        Arrays.stream(rows)
            .mapToDouble(r -> computed.number(ComputedColumn.CORRECTED_GRAVITY, r))
            .toArray(),
        Arrays.stream(measured).map(i -> batch.rows()[i]).toArray(),
        Arrays.stream(measured).mapToDouble(i -> temperatures[i]).toArray(),
        row -> cell(grid, reading, row),
        row -> temperatureCell(grid, table, reading, row),
        lastTried,
        lastTried < 0 ? Double.NaN : order.days(lastTried));
  }

  /** A text without a figure, as {@code not read}, tells of no reading. */
  private static int lastTried(
      Grid grid, LogTable table, Batch batch, HydrometerRows reading, RowTimes order) {
    int[] rows = batch.rows();
    for (int i = rows.length - 1; i >= 0; i--) {
      HydrometerRows.State state = reading.read(rows[i]);
      boolean tried =
          state == HydrometerRows.State.READ
              || state == HydrometerRows.State.REFUSED && hasFigure(grid, table, rows[i]);
      if (tried && Double.isFinite(order.days(rows[i]))) {
        return rows[i];
      }
    }
    return -1;
  }

  private static boolean hasFigure(Grid grid, LogTable table, int row) {
    return Stream.of(Role.GRAVITY, Role.REFRACTOMETER)
        .flatMap(role -> table.column(role).stream())
        .anyMatch(use -> grid.text(row, use.column()).chars().anyMatch(Character::isDigit));
  }

  private static String temperatureCell(
      Grid grid, LogTable table, HydrometerRows reading, int row) {
    return table
        .column(Role.TEMPERATURE)
        .map(column -> grid.address(row, column.column()))
        .orElseGet(() -> cell(grid, reading, row));
  }

  private static String cell(Grid grid, HydrometerRows reading, int row) {
    HydrometerRows.State state = reading.read(row);
    return state == HydrometerRows.State.NOTHING ? grid.address(row, 0) : reading.cell(row);
  }

  /** One temperature stated for all readings was not measured with them. */
  private static double temperature(LogTable table, HydrometerRows reading, int row) {
    if (table.column(Role.TEMPERATURE).isPresent()) {
      return reading.measuredC(row);
    }
    return reading.read(row) == HydrometerRows.State.READ
            && reading.temperatureC != table.settings().temperatureC()
        ? reading.temperatureC
        : Double.NaN;
  }

  int count() {
    return rows.length;
  }

  /** Where a reading stands. */
  String cell(int index) {
    return cellIn(rows[index]);
  }

  /** Where a temperature was measured. */
  String temperatureCell(int index) {
    return temperatureCells.apply(temperatureRows[index]);
  }

  /** The row of the last one. */
  int lastRow() {
    return rows[count() - 1];
  }

  /** Whether every reading has a time. */
  boolean isTimed() {
    return Arrays.stream(days).allMatch(Double::isFinite);
  }

  /** From first to last; NaN without times. */
  double span() {
    return count() == 0 ? Double.NaN : days[count() - 1] - days[0];
  }

  /** The same with at most the last {@code most} readings. */
  BatchReadings last(int most) {
    if (count() <= most) {
      return this;
    }
    int from = count() - most;
    return new BatchReadings(
        Arrays.copyOfRange(rows, from, count()),
        Arrays.copyOfRange(days, from, count()),
        Arrays.copyOfRange(gravities, from, count()),
        temperatureRows,
        temperaturesC,
        readingCells,
        temperatureCells,
        lastTried,
        lastTriedDay);
  }

  /** Where the reading on a row of the sheet stands. */
  String cellIn(int row) {
    return readingCells.apply(row);
  }
}
