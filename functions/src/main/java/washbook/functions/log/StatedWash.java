package washbook.functions.log;

import java.util.Locale;
import java.util.Set;
import washbook.functions.Numbers;
import washbook.functions.ferment.Balance;
import washbook.functions.liquid.WashKind;
import washbook.functions.log.Grid.Kind;

/**
 * The kind of wash that a log is filled by.
 *
 * @param kind what ferments
 * @param why where it is stated, "" when it is not: then the kind is malt
 */
public record StatedWash(WashKind kind, String why) {
  /** Rows above a header in which it is looked for. */
  private static final int MOST_ROWS = 60;

  /** When the log does not tell how strong its wash is. */
  private static final double USUAL_ORIGINAL = 1.080;

  private static final double USUAL_END = 1.000;

  /** Nothing stated. */
  public static StatedWash none() {
    return new StatedWash(WashKind.MALT, "");
  }

  boolean isStated() {
    return !why.isEmpty();
  }

  /** What the rows above a header state; none when they name two kinds. */
  static StatedWash above(Grid grid, int firstRow, int lastRow, int firstColumn, int lastColumn) {
    StatedWash title = none();
    StatedWash line = none();
    boolean two = false;
    for (int row = Math.max(firstRow, lastRow - MOST_ROWS); row <= lastRow; row++) {
      for (int column = firstColumn; column <= lastColumn; column++) {
        if (grid.kind(row, column) != Kind.TEXT) {
          continue;
        }
        String text = grid.text(row, column).strip();
        StatedWash here = one(WashWords.inValue(valueOf(grid, row, column, text)), row, column);
        if (here.isStated()) {
          two |= line.isStated() && line.kind != here.kind;
          line = here;
          continue;
        }
        StatedWash named = one(WashWords.inTitle(text), row, column);
        if (named.isStated()) {
          two |= title.isStated() && title.kind != named.kind;
          title = named;
        }
      }
    }
    return two ? none() : line.isStated() ? line : title;
  }

  /** What stands behind a label for the kind of wash; "" when the text is no such label. */
  private static String valueOf(Grid grid, int row, int column, String text) {
    int mark = Math.max(text.indexOf(':'), text.indexOf('='));
    if (mark > 0 && WashWords.isLabel(text.substring(0, mark)) && mark + 1 < text.length()) {
      return text.substring(mark + 1);
    }
    boolean beside = column + 1 < grid.columnCount() && grid.kind(row, column + 1) == Kind.TEXT;
    return beside && WashWords.isLabel(text) ? grid.text(row, column + 1).strip() : "";
  }

  private static StatedWash one(Set<WashKind> kinds, int row, int column) {
    return kinds.size() == 1
        ? new StatedWash(kinds.iterator().next(), "stated in " + CellAddress.of(row, column))
        : none();
  }

  /** The sentence for a person; where nothing is stated, what each kind would make of the wash. */
  String remark(double originalGravity) {
    if (isStated()) {
      return "kind of wash " + kind.word() + ": " + why;
    }
    boolean known = originalGravity > USUAL_END;
    double original = known ? originalGravity : USUAL_ORIGINAL;
    StringBuilder worth = new StringBuilder();
    for (String word : WashKind.words()) {
      double alcohol = Balance.of(original, USUAL_END, WashKind.of(word)).percentVolume();
      worth.append(
          String.format(Locale.ROOT, "%s %s %.1f", worth.isEmpty() ? "" : ",", word, alcohol));
    }
    return "kind of wash not stated, taken as MALT; from "
        + Numbers.round(original, 4)
        + " to "
        + Numbers.show(USUAL_END)
        + " % vol are"
        + worth
        + ". If it is another, say in a map: wash = SUGAR";
  }

  /** The kind as an argument of a formula. */
  String argument() {
    return Numbers.parse(kind.word()) == null ? '"' + kind.word() + '"' : kind.word();
  }
}
