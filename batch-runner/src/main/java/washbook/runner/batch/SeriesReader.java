package washbook.runner.batch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import washbook.functions.log.Batch;
import washbook.functions.log.ColumnPatch;
import washbook.functions.log.ColumnUse;
import washbook.functions.log.Computed;
import washbook.functions.log.Filling;
import washbook.functions.log.Grid;
import washbook.functions.log.LogTable;
import washbook.functions.log.Role;
import washbook.functions.log.Understanding;
import washbook.runner.report.BatchSeries;

/** Takes the curves of the batches out of a filling. */
final class SeriesReader {
  private SeriesReader() {}

  static List<BatchSeries> read(Grid grid, Understanding understanding, Filling filling) {
    List<BatchSeries> series = new ArrayList<>();
    for (LogTable table : understanding.tables()) {
      ColumnPatch gravity = column(table, filling, Computed.CORRECTED_GRAVITY);
      ColumnPatch abv = column(table, filling, Computed.ABV);
      if (gravity == null && abv == null) {
        continue;
      }
      for (Batch batch : table.batches()) {
        series.add(read(grid, table, batch, gravity, abv));
      }
    }
    return series;
  }

  private static BatchSeries read(
      Grid grid, LogTable table, Batch batch, ColumnPatch gravity, ColumnPatch abv) {
    int[] rows = thinned(batch.rows());
    Time time = Time.of(grid, table, rows);
    return new BatchSeries(
        batch.name(), time.unit(), time.values(), values(gravity, rows), values(abv, rows));
  }

  /** A wide time axis with equal steps where the log states no usable time. */
  private record Time(String unit, double[] values) {
    static Time of(Grid grid, LogTable table, int[] rows) {
      for (Role role : new Role[] {Role.DATE, Role.DAY, Role.HOURS}) {
        ColumnUse use = table.column(role).orElse(null);
        if (use == null) {
          continue;
        }
        double[] values =
            Arrays.stream(rows).mapToDouble(row -> grid.number(row, use.column())).toArray();
        if (isAscending(values)) {
          boolean date = role == Role.DATE;
          double start = values.length == 0 || !date ? 0 : values[0];
          return new Time(
              role == Role.HOURS ? "hours" : date ? "days since the first reading" : "day",
              Arrays.stream(values).map(v -> v - start).toArray());
        }
      }
      double[] values = new double[rows.length];
      Arrays.setAll(values, i -> i + 1);
      return new Time("reading", values);
    }

    private static boolean isAscending(double[] values) {
      for (int i = 0; i < values.length; i++) {
        if (!Double.isFinite(values[i]) || (i > 0 && values[i] < values[i - 1])) {
          return false;
        }
      }
      return values.length > 0;
    }
  }

  private static double[] values(ColumnPatch column, int[] rows) {
    return Arrays.stream(rows)
        .mapToDouble(row -> column == null ? Double.NaN : column.cells().number(row))
        .toArray();
  }

  private static int[] thinned(int[] rows) {
    return Arrays.stream(thinned(rows.length)).map(i -> rows[i]).toArray();
  }

  /** Evenly chosen indexes below {@code count}, the first and the last among them. */
  static int[] thinned(int count) {
    int[] chosen = new int[Math.min(count, BatchSeries.MOST_POINTS)];
    Arrays.setAll(
        chosen,
        i ->
            count == chosen.length
                ? i
                : (int) ((long) i * (count - 1) / (BatchSeries.MOST_POINTS - 1)));
    return chosen;
  }

  private static ColumnPatch column(LogTable table, Filling filling, Computed computed) {
    for (ColumnPatch patch : filling.patch().columns()) {
      if (patch.headerRow() == table.headerRow()
          && patch.firstRow() == table.firstRow()
          && patch.header().equals(computed.header())) {
        return patch;
      }
    }
    return null;
  }
}
