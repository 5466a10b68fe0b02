package washbook.log.reading;

import java.util.Arrays;
import washbook.log.LogTable;
import washbook.log.sheet.Grid;

/** When the rows of a table were taken. */
public final class RowTimes {
  private final RowOrder order;

  private RowTimes(RowOrder order) {
    this.order = order;
  }

  public static RowTimes of(Grid grid, LogTable table) {
    return new RowTimes(RowOrder.of(grid, table));
  }

  /**
   * Time of each given row in days, counted from the first one that has a time; NaN for rows before
   * any time, and for all where the log states none.
   */
  public double[] days(int[] rows) {
    double[] days = Arrays.stream(rows).mapToDouble(order::days).toArray();
    double start = Arrays.stream(days).filter(Double::isFinite).findFirst().orElse(Double.NaN);
    return Arrays.stream(days).map(day -> day - start).toArray();
  }
}
