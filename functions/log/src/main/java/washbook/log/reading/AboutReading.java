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

  private final Grid grid;
  private final LogTable table;
  private final LogColumn column;
  private final boolean inGravities;

  /** Whether the others are finer; looked for when a reading first wants it: most do not. */
  private Boolean othersAreFiner;

  AboutReading(Grid grid, LogTable table, LogColumn column, ReadingScale scale) {
    this.grid = grid;
    this.table = table;
    this.column = column;
    this.inGravities = scale == ReadingScale.SG;
  }

  /** Whether a reading is written with a place less than the others of its column are. */
  boolean isTooRough(double value) {
    if (othersAreFiner == null) {
      othersAreFiner = areOthersFiner();
    }
    return othersAreFiner && isRough(value);
  }

  private boolean areOthersFiner() {
    int finer = 0;
    int all = 0;
    for (int row = table.firstRow(); row <= table.lastRow(); row++) {
      double other = CellText.plainNumber(grid, row, column.column());
      if (!Double.isNaN(other)) {
        all++;
        finer += isRough(other) ? 0 : 1;
      }
    }
    return finer > MOST * all;
  }

  private boolean isRough(double value) {
    double places = value * (inGravities && value < 10 ? 10 : 1);
    return Math.abs(places - Math.rint(places)) < 1e-6;
  }
}
