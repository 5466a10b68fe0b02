package washbook.log.reading;

import washbook.log.LogColumn;
import washbook.log.LogTable;
import washbook.log.sheet.Grid;
import washbook.log.words.CellText;
import washbook.log.words.ReadingScale;

/** Readings that are said to be about right, as {@code ~4} or {@code ca. 1.0}. */
final class AboutReading {
  /** The part of the other readings that must be finer. */
  private static final double MOST = 0.5;

  private AboutReading() {}

  /** Whether it is written with a place less than the other readings of its column are. */
  static boolean isTooRough(
      Grid grid, LogTable table, LogColumn column, ReadingScale scale, double value) {
    double place = scale == ReadingScale.SG && value < 10 ? 10 : 1;
    if (!isWhole(value * place)) {
      return false;
    }
    int finer = 0;
    int all = 0;
    for (int row = table.firstRow(); row <= table.lastRow(); row++) {
      double other = CellText.plainNumber(grid, row, column.column());
      if (!Double.isNaN(other)) {
        all++;
        finer += isWhole(other * place) ? 0 : 1;
      }
    }
    return finer > MOST * all;
  }

  private static boolean isWhole(double value) {
    return Math.abs(value - Math.rint(value)) < 1e-6;
  }
}
