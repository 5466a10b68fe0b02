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

  private final boolean inGravities;
  private final boolean othersAreFiner;

  AboutReading(Grid grid, LogTable table, LogColumn column, ReadingScale scale) {
    inGravities = scale == ReadingScale.SG;
    int finer = 0;
    int all = 0;
    for (int row = table.firstRow(); row <= table.lastRow(); row++) {
      double other = CellText.plainNumber(grid, row, column.column());
      if (!Double.isNaN(other)) {
        all++;
        finer += isRough(other) ? 0 : 1;
      }
    }
    othersAreFiner = finer > MOST * all;
  }

  /** Whether a reading is written with a place less than the others of its column are. */
  boolean isTooRough(double value) {
    return othersAreFiner && isRough(value);
  }

  private boolean isRough(double value) {
    double places = value * (inGravities && value < 10 ? 10 : 1);
    return Math.abs(places - Math.rint(places)) < 1e-6;
  }
}
