package washbook.functions.log;

import washbook.functions.Numbers;

/** What the numbers of one column look like; texts that are a number without a unit count too. */
final class ColumnFacts {
  private int numbers;
  private int likeGravity;
  private int below32;
  private int above60;
  private int negative;
  private double min = Double.POSITIVE_INFINITY;
  private double max = Double.NEGATIVE_INFINITY;

  static ColumnFacts of(Grid grid, TableRows rows, int column) {
    ColumnFacts facts = new ColumnFacts();
    for (int row = rows.firstRow(); row <= rows.lastRow(); row++) {
      double value = plainNumber(grid, row, column);
      if (!Double.isNaN(value) && !rows.isSkipped(row)) {
        facts.add(value);
      }
    }
    return facts;
  }

  /** The cell's number when it has no unit of its own, else NaN. */
  static double plainNumber(Grid grid, int row, int column) {
    switch (grid.kind(row, column)) {
      case NUMBER:
        return grid.number(row, column);
      case TEXT:
        CellText cell = CellText.read(grid.text(row, column));
        boolean number = cell.form == CellText.Form.VALUE || cell.form == CellText.Form.PAIR;
        return number && cell.unit.isEmpty() ? cell.value : Double.NaN;
      default:
        return Double.NaN;
    }
  }

  private void add(double value) {
    if (value == 0) {
      numbers++;
      below32++;
      min = Math.min(min, 0);
      max = Math.max(max, 0);
      return;
    }
    numbers++;
    min = Math.min(min, value);
    max = Math.max(max, value);
    if (looksLikeGravity(value)) {
      likeGravity++;
    }
    if (value < 32) {
      below32++;
    }
    if (value > 60) {
      above60++;
    }
    if (value < 0) {
      negative++;
    }
  }

  static boolean looksLikeGravity(double value) {
    return (value >= 0.97 && value <= 1.2) || (value >= 970 && value <= 1200);
  }

  int numbers() {
    return numbers;
  }

  double min() {
    return min;
  }

  double max() {
    return max;
  }

  boolean mostlyGravity() {
    return numbers > 0 && likeGravity >= 0.8 * numbers;
  }

  boolean allGravity() {
    return numbers > 0 && likeGravity == numbers;
  }

  /** C, F or "" when the numbers would do for both or for neither. */
  String temperatureUnit() {
    if (numbers == 0) {
      return "";
    }
    if (above60 > 0 && below32 == 0) {
      return "F";
    }
    if (above60 == 0 && negative == 0 && below32 > 0) {
      return "C";
    }
    return "";
  }

  /** The least and the greatest number, to be read. */
  String range() {
    return Numbers.show(min) + " to " + Numbers.show(max);
  }
}
