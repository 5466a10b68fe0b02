package washbook.log.run;

import java.util.Arrays;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import washbook.log.sheet.Grid;

/** The figures below a header of jars, column by column. */
final class RunFigures {
  /** What a sum may be off its parts by rounding, as a part of it. */
  private static final double ROUNDING = 0.005;

  /** The strongest jar of a run has more than this part of alcohol; common practice, no source. */
  private static final double LEAST_SHARE = 0.15;

  /** What the correction to 20 \u00b0C changes at most where spirit is measured, % vol. */
  private static final double MOST_CORRECTION = 7;

  private static final int FEWEST_SUMS = 3;

  private final Grid grid;
  private final int firstRow;
  private final int end;

  /**
   * @param end one past the last row
   */
  RunFigures(Grid grid, int firstRow, int end) {
    this.grid = grid;
    this.firstRow = firstRow;
    this.end = end;
  }

  int firstRow() {
    return firstRow;
  }

  /** One past the last row. */
  int end() {
    return end;
  }

  double[] numbers(int column) {
    return numbers(column, row -> true);
  }

  private double[] numbers(int column, IntPredicate rows) {
    return IntStream.range(firstRow, end)
        .filter(rows)
        .mapToDouble(row -> RunCells.number(grid, row, column))
        .filter(value -> !Double.isNaN(value))
        .toArray();
  }

  /** The numbers of rows that have a strength too: sums below are left out. */
  double[] besideStrengths(int column, int strength) {
    return numbers(column, row -> !Double.isNaN(RunCells.number(grid, row, strength)));
  }

  /** The largest number, negative infinity where there is none. */
  double max(int column) {
    return Arrays.stream(numbers(column)).max().orElse(Double.NEGATIVE_INFINITY);
  }

  /** The smallest number, positive infinity where there is none. */
  double min(int column) {
    return Arrays.stream(numbers(column)).min().orElse(Double.POSITIVE_INFINITY);
  }

  /** Whether strengths can only be parts of one: nothing so weak is collected from a still. */
  boolean areShares(int column) {
    double most = max(column);
    return most <= 1 && most >= LEAST_SHARE && min(column) > 0;
  }

  boolean isMostlyNumbers(int column) {
    long filled =
        IntStream.range(firstRow, end)
            .filter(row -> grid.kind(row, column) != Grid.Kind.BLANK)
            .filter(row -> !RunCells.isDitto(grid, row, column))
            .count();
    int numbers = numbers(column).length;
    return numbers >= 2 && numbers * 2 > filled;
  }

  /** Whether a column numbers the jars: 1, 2, 3 and so on. */
  boolean areNumbers(int column) {
    double[] found = numbers(column);
    return found.length > FEWEST_SUMS
        && IntStream.range(0, found.length).allMatch(i -> found[i] == i + 1);
  }

  /** Whether most strengths are told by how far they are over or under proof. */
  boolean areFromProof(int column) {
    long from =
        IntStream.range(firstRow, end)
            .filter(row -> RunCells.isFromProof(grid, row, column))
            .count();
    return from >= 2 && from * 2 > numbers(column).length;
  }

  /** Whether two columns hold strengths as read and corrected ones of the same jars. */
  boolean areNear(int one, int other) {
    int both = 0;
    int near = 0;
    for (int row = firstRow; row < end; row++) {
      double off = RunCells.number(grid, row, one) - RunCells.number(grid, row, other);
      both += Double.isNaN(off) ? 0 : 1;
      near += Math.abs(off) <= MOST_CORRECTION ? 1 : 0;
    }
    return both >= FEWEST_SUMS && near * 5 >= both * 4;
  }

  /** Whether a column holds the sums of another one up to each row. */
  boolean areSums(int sums, int parts, int strength) {
    double[] whole = besideStrengths(sums, strength);
    double[] each = besideStrengths(parts, strength);
    double sum = 0;
    for (int i = 0; i < Math.min(whole.length, each.length); i++) {
      sum += each[i];
      if (Math.abs(whole[i] - sum) > ROUNDING * sum) {
        return false;
      }
    }
    return whole.length == each.length && whole.length >= FEWEST_SUMS;
  }
}
