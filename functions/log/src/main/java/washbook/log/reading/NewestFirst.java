package washbook.log.reading;

import washbook.log.LogTable;
import washbook.log.sheet.Grid;

/**
 * Rows without dates that can be read whose newest stands on top: no wash rises as it ferments. The
 * limits are common practice, no source.
 */
public final class NewestFirst {
  private static final int FEWEST = 4;

  /** What a wash begins with at least, and the part of it that is left in the end. */
  private static final double LEAST_START = 1.030;

  private static final double LEFT = 0.6;

  /** Two readings of a wash that rests differ by no more, SG. */
  private static final double SAME = 0.0015;

  private final HydrometerRows reading;

  public NewestFirst(Grid grid, LogTable table) {
    this.reading = new HydrometerRows(grid, table);
  }

  /**
   * Turns rows round whose readings rise from one to the next, from those of a wine to a must's.
   */
  public void turn(int[] rows) {
    int read = 0;
    double first = Double.NaN;
    double before = Double.NaN;
    for (int row : rows) {
      if (reading.read(row) != HydrometerRows.State.READ) {
        continue;
      }
      double gravity = reading.asSugarSolution();
      if (gravity < before - SAME) {
        return;
      }
      first = read == 0 ? gravity : first;
      before = gravity;
      read++;
    }
    if (read < FEWEST || before < LEAST_START || first - 1 > LEFT * (before - 1)) {
      return;
    }
    RowTimes.reverse(rows);
  }
}
