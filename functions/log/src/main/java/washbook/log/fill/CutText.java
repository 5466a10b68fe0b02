package washbook.log.fill;

import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;

/** Texts of the log that run on over the blank cells right of them, where a new column will be. */
final class CutText {
  private CutText() {}

  /** The column with the length of the longest text that its cells cut off. */
  static ColumnPatch told(Grid grid, ColumnPatch patch) {
    int left = patch.column() - 1;
    int longest = 0;
    for (int row = patch.headerRow(); left >= 0 && row <= patch.lastRow(); row++) {
      if (grid.kind(row, left) == Kind.TEXT
          && grid.kind(row, patch.column()) == Kind.BLANK
          && !grid.isKeptInside(row, left)
          && isFilled(patch, row)) {
        String text = grid.text(row, left);
        // One of several lines wraps.
        longest = text.indexOf('\n') < 0 ? Math.max(longest, text.length()) : longest;
      }
    }
    return longest == 0 ? patch : patch.cutting(longest);
  }

  private static boolean isFilled(ColumnPatch patch, int row) {
    return row == patch.headerRow()
        || patch.owns(row)
            && (!Double.isNaN(patch.cells().number(row)) || patch.cells().text(row) != null);
  }
}
