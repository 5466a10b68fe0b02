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

  private static List<Double> values(Grid grid, int column, int from, int to, BitSet skipped) {
    List<Double> values = new ArrayList<>();
    for (int row = from; row < to; row++) {
      double value = CellText.number(grid, row, column);
      if (!skipped.get(row) && !Double.isNaN(value) && value != 0) {
        values.add(ReadingScale.withoutThousandths(value));
      }
    }
    return values;
  }

  private static boolean agrees(String label, double figure, List<Double> values) {
    if (values.isEmpty()) {
      return false;
    }
    double size = size(figure);
    double within = within(figure);
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

  /** What a figure is to be multiplied by: 1085 is written for 1.085. */
  static double size(double figure) {
    return ReadingScale.withoutThousandths(figure) / figure;
  }

  /** What a figure may be off by for the digits that it is written with. */
  static double within(double figure) {
    return 0.51 * Math.pow(10, -decimals(figure)) * size(figure) + 1e-9;
  }

  private static int decimals(double figure) {
    String text = Numbers.show(figure);
    int point = text.indexOf('.');
    return point < 0 ? 0 : text.length() - point - 1;
  }
}
