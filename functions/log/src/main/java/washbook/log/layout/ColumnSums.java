package washbook.log.layout;

import java.util.Arrays;
import java.util.BitSet;
import washbook.log.sheet.Grid;
import washbook.log.words.CellText;
import washbook.log.words.ReadingScale;

/**
 * The least, the greatest and the mean of the columns of a table, for rows that only repeat them.
 * Each row is taken in once, and only where one is asked about below it.
 */
final class ColumnSums {
  /** Of fewer readings a repeated figure tells nothing. */
  private static final int FEWEST = 4;

  private final Grid grid;
  private final int[] columns;
  private final BitSet skipped;
  private final int[] counts;
  private final double[] least;
  private final double[] greatest;
  private final double[] sums;
  private int next;

  /**
   * @param columns of readings and of other numbers
   * @param first first row of the table
   * @param skipped rows that are no readings, as far as they are known
   */
  ColumnSums(Grid grid, int[] columns, int first, BitSet skipped) {
    this.grid = grid;
    this.columns = columns;
    this.skipped = skipped;
    this.next = first;
    counts = new int[columns.length];
    least = new double[columns.length];
    greatest = new double[columns.length];
    sums = new double[columns.length];
    Arrays.fill(least, Double.POSITIVE_INFINITY);
    Arrays.fill(greatest, Double.NEGATIVE_INFINITY);
  }

  /**
   * Whether at least two figures stand in a row and each is the least of its column so far, or each
   * the greatest, or each the mean.
   */
  boolean areRepeatedIn(int row) {
    takeInUpTo(row);
    int figures = 0;
    boolean isLeast = true;
    boolean isGreatest = true;
    boolean isMean = true;
    for (int i = 0; i < columns.length; i++) {
      double figure = CellText.plainNumber(grid, row, columns[i]);
      if (Double.isNaN(figure)) {
        continue;
      }
      if (counts[i] < FEWEST) {
        return false;
      }
      figures++;
      double shown = figure * Aggregate.size(figure);
      double within = Aggregate.within(figure);
      isLeast &= Math.abs(least[i] - shown) <= within;
      isGreatest &= Math.abs(greatest[i] - shown) <= within;
      isMean &= Math.abs(sums[i] / counts[i] - shown) <= within;
    }
    return figures >= 2 && (isLeast || isGreatest || isMean);
  }

  private void takeInUpTo(int end) {
    for (; next < end; next++) {
      for (int i = 0; i < columns.length && !skipped.get(next); i++) {
        double number = CellText.number(grid, next, columns[i]);
        if (!Double.isNaN(number) && number != 0) {
          double value = ReadingScale.withoutThousandths(number);
          counts[i]++;
          least[i] = Math.min(least[i], value);
          greatest[i] = Math.max(greatest[i], value);
          sums[i] += value;
        }
      }
    }
  }
}
