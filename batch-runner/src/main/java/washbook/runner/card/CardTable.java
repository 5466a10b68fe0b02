package washbook.runner.card;

import java.util.List;

/**
 * Values over rows, which formulas can calculate too.
 *
 * @param title above it, or ""
 * @param corner what the first column holds, with its unit
 * @param across what the heads of the other columns hold, or "" where each says it itself
 * @param rows the values of the first column
 * @param rowDecimals of these
 */
record CardTable(
    String title,
    String corner,
    String across,
    double[] rows,
    int rowDecimals,
    List<Column> columns) {

  /** What stands where a value would be outside the range for which the formula is valid. */
  static final String OUTSIDE = "–";

  /**
   * One column.
   *
   * @param head a text, or "" where {@code reading} is the head
   * @param reading what the instrument shows, or NaN
   * @param headDecimals of the reading
   * @param decimals of the values
   * @param signed whether a plus stands before a positive value
   * @param formula with {row}, {head} and settings' names for cells
   * @param values NaN outside the valid range
   */
  record Column(
      String head,
      double reading,
      int headDecimals,
      int decimals,
      boolean signed,
      String formula,
      double[] values) {

    String headText() {
      return head.isEmpty() ? CardNumber.plain(reading, headDecimals) : head;
    }

    String text(int row) {
      double value = values[row];
      return Double.isNaN(value)
          ? OUTSIDE
          : signed ? CardNumber.signed(value, decimals) : CardNumber.plain(value, decimals);
    }
  }
}
