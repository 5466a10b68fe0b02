package washbook.log.fill;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import washbook.functions.scale.TemperatureUnit;
import washbook.log.Batch;
import washbook.log.ComputedColumn;
import washbook.log.LogTable;
import washbook.log.Role;
import washbook.log.Understanding;
import washbook.log.WrittenScale;
import washbook.log.language.Language;
import washbook.log.reading.HydrometerRows;
import washbook.log.reading.RowTimes;
import washbook.log.sheet.Grid;

/**
 * The course of one batch for drawing: one point a reading, in the order of time.
 *
 * @param batch its name
 * @param sheet the sheet that it is on
 * @param timed whether {@code days} are days since its first reading; else readings are counted
 * @param days the time of each point
 * @param gravity corrected, SG 20/20; NaN where refused
 * @param abv % vol so far; NaN where refused
 * @param temperatureC as measured; NaN where the log has none
 * @param scale on which the log's gravities are drawn
 * @param temperatureUnit in which its temperatures are drawn
 * @param language of the log
 */
public record BatchCurve(
    String batch,
    String sheet,
    boolean timed,
    double[] days,
    double[] gravity,
    double[] abv,
    double[] temperatureC,
    WrittenScale scale,
    TemperatureUnit temperatureUnit,
    Language language) {

  /** Points more than these cannot be told apart; of longer batches this many are drawn. */
  public static final int MOST_POINTS = 400;

  /** Drawn on SG and in °C, with English words. */
  public BatchCurve(
      String batch,
      String sheet,
      boolean timed,
      double[] days,
      double[] gravity,
      double[] abv,
      double[] temperatureC) {
    this(
        batch,
        sheet,
        timed,
        days,
        gravity,
        abv,
        temperatureC,
        WrittenScale.SG,
        TemperatureUnit.C,
        Language.EN);
  }

  /** The gravities on the log's own scale. */
  public double[] shownGravity() {
    return IntStream.range(0, gravity.length).mapToDouble(this::shownGravity).toArray();
  }

  /** The gravity of a point on the log's own scale. */
  public double shownGravity(int point) {
    double sg = gravity[point];
    return scale.isPlainGravity() || Double.isNaN(sg) ? sg : scale.fromGravity(sg);
  }

  /** The temperatures in the log's own unit. */
  public double[] shownTemperature() {
    return Arrays.stream(temperatureC).map(temperatureUnit::fromCelsius).toArray();
  }

  /** The curves of all batches on a sheet that have at least two points to draw. */
  public static List<BatchCurve> of(Grid sheet, Understanding understanding, Filling filling) {
    Grid grid = understanding.seen(sheet);
    List<BatchCurve> curves = new ArrayList<>();
    for (LogTable table : understanding.tables()) {
      FilledColumn gravity = filling.column(table, ComputedColumn.CORRECTED_GRAVITY).orElse(null);
      FilledColumn abv = filling.column(table, ComputedColumn.ABV).orElse(null);
      if (gravity == null && abv == null) {
        continue;
      }
      RowTimes order = RowTimes.of(grid, table);
      HydrometerRows reading = new HydrometerRows(grid, table);
      for (Batch batch : table.batches()) {
        int[] rows =
            Arrays.stream(batch.rows())
                .filter(row -> isNumber(gravity, row) || isNumber(abv, row))
                .toArray();
        if (rows.length > 1) {
          curves.add(curve(grid, table, batch, thinned(rows), gravity, abv, order, reading));
        }
      }
    }
    return curves;
  }

  private static BatchCurve curve(
      Grid grid,
      LogTable table,
      Batch batch,
      int[] rows,
      FilledColumn gravity,
      FilledColumn abv,
      RowTimes order,
      HydrometerRows reading) {
    double[] days = Arrays.stream(rows).mapToDouble(order::days).toArray();
    boolean timed = isTime(days);
    double start = days[0];
    for (int i = 0; i < days.length; i++) {
      days[i] = timed ? days[i] - start : i + 1;
    }
    return new BatchCurve(
        batch.name(),
        grid.name(),
        timed,
        days,
        numbers(gravity, rows),
        numbers(abv, rows),
        Arrays.stream(rows).mapToDouble(row -> measured(table, reading, row)).toArray(),
        gravity == null ? WrittenScale.SG : gravity.scale(),
        HydrometerRows.unitOf(table.column(Role.TEMPERATURE).orElse(null)),
        (gravity == null ? abv : gravity).language());
  }

  private static boolean isTime(double[] days) {
    for (int i = 0; i < days.length; i++) {
      if (!Double.isFinite(days[i]) || i > 0 && days[i] < days[i - 1]) {
        return false;
      }
    }
    return days[days.length - 1] > days[0];
  }

  /** One temperature stated for all readings was not measured with them. */
  private static double measured(LogTable table, HydrometerRows reading, int row) {
    if (reading.read(row) != HydrometerRows.State.READ) {
      return Double.NaN;
    }
    if (table.settings().correctedAlready()) {
      return reading.measuredC(row);
    }
    boolean stated =
        table.column(Role.TEMPERATURE).isEmpty()
            && reading.temperatureC == table.settings().temperatureC();
    return stated ? Double.NaN : reading.temperatureC;
  }

  private static boolean isNumber(FilledColumn column, int row) {
    return column != null && !Double.isNaN(column.inGravity(row));
  }

  private static double[] numbers(FilledColumn column, int[] rows) {
    return Arrays.stream(rows)
        .mapToDouble(row -> column == null ? Double.NaN : column.inGravity(row))
        .toArray();
  }

  private static int[] thinned(int[] rows) {
    if (rows.length <= MOST_POINTS) {
      return rows;
    }
    int[] chosen = new int[MOST_POINTS];
    Arrays.setAll(chosen, i -> rows[(int) ((long) i * (rows.length - 1) / (MOST_POINTS - 1))]);
    return chosen;
  }
}
