package washbook.runner.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import washbook.log.Batch;
import washbook.log.ComputedColumn;
import washbook.log.LogTable;
import washbook.log.Understanding;
import washbook.log.fill.FilledColumn;
import washbook.log.fill.Filling;
import washbook.log.reading.RowTimes;
import washbook.log.sheet.Grid;
import washbook.runner.report.BatchSeries;

/** Takes the curves of a sheet's first batches out of a filling. */
final class SeriesReader {
  private SeriesReader() {}

  static List<BatchSeries> read(Grid grid, Understanding understanding, Filling filling) {
    List<BatchSeries> series = new ArrayList<>();
    for (LogTable table : understanding.tables()) {
      FilledColumn gravity = filling.column(table, ComputedColumn.CORRECTED_GRAVITY).orElse(null);
      FilledColumn abv = filling.column(table, ComputedColumn.ABV).orElse(null);
      if (gravity == null && abv == null) {
        continue;
      }
      RowTimes times = RowTimes.of(understanding.seen(grid), table);
      for (Batch batch : table.batches()) {
        if (series.size() == BatchSeries.MOST_BATCHES) {
          return series;
        }
        BatchSeries curves = read(batch, times, gravity, abv);
        if (!curves.isEmpty()) {
          series.add(curves);
        }
      }
    }
    return series;
  }

  private static BatchSeries read(
      Batch batch, RowTimes times, FilledColumn gravity, FilledColumn abv) {
    int[] rows = thinned(batch.rows());
    double[] days = times.daysFromFirst(rows);
    boolean timed = Arrays.stream(days).allMatch(Double::isFinite);
    double[][] points = new double[rows.length][];
    for (int i = 0; i < rows.length; i++) {
      // Equal steps where the log states no usable time.
      double time = timed ? BatchSeries.rounded(days[i]) : i + 1;
      points[i] = new double[] {time, value(gravity, rows[i]), value(abv, rows[i])};
    }
    return new BatchSeries(batch.name(), timed ? BatchSeries.DAYS : "reading", points);
  }

  private static double value(FilledColumn column, int row) {
    return column == null ? Double.NaN : BatchSeries.rounded(column.inGravity(row));
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
}
