package washbook.log.layout;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import washbook.functions.Numbers;
import washbook.log.sheet.Grid;
import washbook.log.words.CellText;
import washbook.log.words.ReadingScale;

/** Rows that sum up readings, as an average below a table: told by their figures. */
final class Aggregate {
  /** Of fewer readings a repeated figure tells nothing. */
  private static final int FEWEST = 4;

  private Aggregate() {}

  /**
   * Whether the figure in a row is what its label says of the readings above it, to the digits that
   * it is written with: of all of them, or of those since the last such row.
   *
   * @param label a text with a word for a total
   * @param columns where readings stand
   * @param first first row of the table
   * @param skipped rows above that are no readings
   */
  static boolean sumsUp(
      Grid grid, String label, int[] columns, int first, int row, BitSet skipped) {
    for (int column : columns) {
      double figure = CellText.plainNumber(grid, row, column);
      if (!Double.isNaN(figure)) {
        int since = skipped.previousSetBit(row - 1) + 1;
        return agrees(label, figure, values(grid, column, first, row, skipped))
            || agrees(label, figure, values(grid, column, Math.max(first, since), row, skipped));
      }
    }
    return false;
  }

  /**
   * Whether every figure in a row is the least, the greatest or the mean of its column, whatever
   * the row is called.
   *
   * @param columns of readings and of other numbers; at least two must hold a figure
   */
  static boolean repeatsColumns(Grid grid, int[] columns, int first, int row, BitSet skipped) {
    int figures = 0;
    boolean least = true;
    boolean greatest = true;
    boolean mean = true;
    for (int column : columns) {
      double figure = CellText.plainNumber(grid, row, column);
      if (Double.isNaN(figure)) {
        continue;
      }
      List<Double> values = values(grid, column, first, row, skipped);
      if (values.size() < FEWEST) {
        return false;
      }
      figures++;
      double size = ReadingScale.withoutThousandths(figure) / figure;
      double within = 0.51 * Math.pow(10, -decimals(figure)) * size + 1e-9;
      double average = values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
      least &= Math.abs(Collections.min(values) - figure * size) <= within;
      greatest &= Math.abs(Collections.max(values) - figure * size) <= within;
      mean &= Math.abs(average - figure * size) <= within;
    }
    return figures >= 2 && (least || greatest || mean);
  }

  private static List<Double> values(Grid grid, int column, int from, int to, BitSet skipped) {
    List<Double> values = new ArrayList<>();
    for (int row = from; row < to; row++) {
      double value = number(grid, row, column);
      if (!skipped.get(row) && !Double.isNaN(value) && value != 0) {
        values.add(ReadingScale.withoutThousandths(value));
      }
    }
    return values;
  }

  /** A reading's number, whatever stands after it. */
  private static double number(Grid grid, int row, int column) {
    return grid.kind(row, column) == Grid.Kind.TEXT
        ? CellText.read(grid.text(row, column)).value
        : CellText.plainNumber(grid, row, column);
  }

  private static boolean agrees(String label, double figure, List<Double> values) {
    if (values.isEmpty()) {
      return false;
    }
    double size = ReadingScale.withoutThousandths(figure) / figure;
    double within = 0.51 * Math.pow(10, -decimals(figure)) * size + 1e-9;
    String word = label.strip().toLowerCase(Locale.ROOT);
    if (word.startsWith("max") || word.startsWith("m\u00e1x") || word.startsWith("massimo")) {
      return Math.abs(Collections.max(values) - figure * size) <= within;
    }
    if (word.startsWith("min") || word.startsWith("m\u00edn")) {
      return Math.abs(Collections.min(values) - figure * size) <= within;
    }
    double sum = values.stream().mapToDouble(Double::doubleValue).sum();
    double mean = sum / values.size();
    return Math.abs(mean - figure * size) <= within
        || Math.abs(median(values) - figure * size) <= within
        || (values.size() > 1 && Math.abs(sum - figure) <= within)
        || figure == values.size();
  }

  private static double median(List<Double> values) {
    List<Double> sorted = values.stream().sorted().toList();
    int half = sorted.size() / 2;
    return sorted.size() % 2 == 1
        ? sorted.get(half)
        : (sorted.get(half - 1) + sorted.get(half)) / 2;
  }

  private static int decimals(double figure) {
    String text = Numbers.show(figure);
    int point = text.indexOf('.');
    return point < 0 ? 0 : text.length() - point - 1;
  }
}
