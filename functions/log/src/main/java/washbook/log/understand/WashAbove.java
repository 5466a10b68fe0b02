package washbook.log.understand;

import java.util.Set;
import washbook.functions.liquid.WashKind;
import washbook.log.StatedWash;
import washbook.log.language.Message;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;
import washbook.log.words.WashWords;

/** What the rows above a table say of the kind of wash. */
final class WashAbove {
  /** Rows above a header in which it is looked for. */
  private static final int MOST_ROWS = 60;

  private WashAbove() {}

  /** What the rows above a header state; none when they name two kinds. */
  static StatedWash stated(Grid grid, int firstRow, int lastRow, int firstColumn, int lastColumn) {
    StatedWash title = StatedWash.none();
    StatedWash line = StatedWash.none();
    boolean two = false;
    for (int row = Math.max(firstRow, lastRow - MOST_ROWS); row <= lastRow; row++) {
      for (int column = firstColumn; column <= lastColumn; column++) {
        if (grid.kind(row, column) != Kind.TEXT) {
          continue;
        }
        String text = grid.text(row, column).strip();
        StatedWash here =
            one(grid, WashWords.inValue(valueOf(grid, row, column, text)), row, column);
        if (here.isStated()) {
          two |= line.isStated() && line.kind() != here.kind();
          line = here;
          continue;
        }
        StatedWash named = one(grid, WashWords.inTitle(text), row, column);
        if (named.isStated()) {
          two |= title.isStated() && title.kind() != named.kind();
          title = named;
        }
      }
    }
    return two ? StatedWash.none() : line.isStated() ? line : title;
  }

  /** What follows a label for the kind of wash; "" when the text is no such label. */
  private static String valueOf(Grid grid, int row, int column, String text) {
    int mark = Math.max(text.indexOf(':'), text.indexOf('='));
    if (mark > 0 && WashWords.isLabel(text.substring(0, mark)) && mark + 1 < text.length()) {
      return text.substring(mark + 1);
    }
    boolean beside = column + 1 < grid.columnCount() && grid.kind(row, column + 1) == Kind.TEXT;
    return beside && WashWords.isLabel(text) ? grid.text(row, column + 1).strip() : "";
  }

  private static StatedWash one(Grid grid, Set<WashKind> kinds, int row, int column) {
    return kinds.size() == 1
        ? new StatedWash(
            kinds.iterator().next(), Message.of("from.cell", grid.address(row, column)))
        : StatedWash.none();
  }
}
