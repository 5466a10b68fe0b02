package washbook.log.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import washbook.log.LogColumn;
import washbook.log.LogTable;
import washbook.log.sheet.Grid;

/** What the figures of a log's own column of pure alcohol or strength at 20 °C are. */
public final class OwnAlcohol {
  /** How far the middle one of the figures may be off ours where a header names the unit. */
  private static final double NAMED = 2;

  /** The same where the figures alone tell the unit; the units lie ten times apart. */
  private static final double TOLD = 1.25;

  private static final List<RunVolumeUnit> UNITS =
      List.of(RunVolumeUnit.L, RunVolumeUnit.DL, RunVolumeUnit.CL, RunVolumeUnit.ML);

  private static final int MOST_DECIMALS = 6;

  private OwnAlcohol() {}

  /**
   * How a column's figures become ours.
   *
   * @param parts what they are divided by
   * @param isSum whether each holds all jars up to its row
   */
  public record Scale(double parts, boolean isSum) {}

  /** A cell's figure; NaN for none. */
  public static double figure(Grid grid, LogColumn column, int row) {
    return RunCells.number(grid, row, column.column());
  }

  /**
   * Unit and kind of a column of pure alcohol, by its header and by which of them ours fit best;
   * empty where none does.
   *
   * @param rows of the jars
   * @param pure litres of pure alcohol in each
   * @param firstRows where runs begin, whose sums begin again
   */
  public static Optional<Scale> scale(
      Grid grid, LogColumn column, int[] rows, double[] pure, int[] firstRows) {
    RunHeader.Cell header = RunHeader.Cell.of(column.column(), column.header());
    List<RunVolumeUnit> named = UNITS.stream().filter(u -> header.has(u.word())).toList();
    double[] own = Arrays.stream(rows).mapToDouble(row -> figure(grid, column, row)).toArray();
    double[] sums = sums(rows, pure, firstRows);
    Scale best = null;
    double least = Math.log(named.size() == 1 ? NAMED : TOLD);
    for (RunVolumeUnit unit : named.size() == 1 ? named : UNITS) {
      for (boolean sum : header.has(RunWord.CUMULATIVE) ? List.of(true) : List.of(false, true)) {
        double off = off(own, sum ? sums : pure, 1 / unit.toLitres(1));
        if (off < least) {
          least = off;
          best = new Scale(1 / unit.toLitres(1), sum);
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private static double[] sums(int[] rows, double[] pure, int[] firstRows) {
    int[] begins = firstRows.clone();
    Arrays.sort(begins);
    double[] sums = new double[pure.length];
    double sum = 0;
    int next = 0;
    for (int i = 0; i < pure.length; i++) {
      while (next < begins.length && begins[next] <= rows[i]) {
        sum = 0;
        next++;
      }
      sum += pure[i];
      sums[i] = sum;
    }
    return sums;
  }

  /** The middle one of the ratios' logarithms; infinite without figures. */
  private static double off(double[] own, double[] ours, double parts) {
    List<Double> ratios = new ArrayList<>();
    for (int i = 0; i < own.length; i++) {
      if (own[i] > 0 && ours[i] > 0) {
        ratios.add(Math.abs(Math.log(own[i] / parts / ours[i])));
      }
    }
    ratios.sort(null);
    return ratios.isEmpty() ? Double.POSITIVE_INFINITY : ratios.get(ratios.size() / 2);
  }

  /** The last place to which the column is written, as 0.1; 0 where more digits are kept. */
  public static double step(Grid grid, LogColumn column, LogTable table) {
    double step = 1;
    for (int row = table.firstRow(); row <= table.lastRow(); row++) {
      double value = figure(grid, column, row);
      while (!Double.isNaN(value) && Math.abs(value / step - Math.rint(value / step)) > 1e-6) {
        step /= 10;
        if (step < Math.pow(10, -MOST_DECIMALS)) {
          return 0;
        }
      }
    }
    return step;
  }
}
