package washbook.runner.write;

import java.util.IdentityHashMap;
import java.util.Map;
import java.util.function.IntSupplier;
import washbook.log.sheet.ColumnPatch;

/**
 * How wide the new columns of a sheet are, in characters, and how headers and notes wrap in them.
 */
final class ColumnLook {
  static final int NARROWEST = 7;
  static final int WIDEST = 12;

  /** Reasons are sentences: narrower, they would make their rows very high. */
  static final int NOTE = 36;

  /** How many letters of a sentence take the room of a digit, by which a column's width counts. */
  static final double LETTERS = 1.2;

  /** A text that is longer is a sentence, no state. */
  private static final int LONGEST_STATE = 24;

  /** What notes come down to where a sheet would be wider than a page, in this order. */
  private static final int[] NARROWER = {NOTE, 30, 24, 20, 16, 12};

  private final Map<ColumnPatch, Integer> widths = new IdentityHashMap<>();
  private int note = NOTE;

  /** Whether a column holds sentences, which wrap. */
  boolean isNote(ColumnPatch column) {
    return measured(column) == NOTE;
  }

  /** The longest word of the header has room, and so have numbers and states. */
  int width(ColumnPatch column) {
    return Math.min(measured(column), isNote(column) ? note : NOTE);
  }

  private int measured(ColumnPatch column) {
    return widths.computeIfAbsent(column, c -> c.cells().nameRows() ? measureNames(c) : measure(c));
  }

  /** How wide sentences are from now on, in characters. */
  void setNote(int characters) {
    note = characters;
  }

  int note() {
    return note;
  }

  /** The widest notes with which a sheet is printed on the fewest pages side by side. */
  void fitNotes(IntSupplier pages) {
    int best = NOTE;
    int fewest = Integer.MAX_VALUE;
    for (int each : NARROWER) {
      note = each;
      int needed = pages.getAsInt();
      if (needed < fewest) {
        best = each;
        fewest = needed;
      }
      if (fewest <= 1) {
        break;
      }
    }
    note = best;
  }

  private static int measure(ColumnPatch column) {
    int longest = 0;
    for (String word : column.header().split("\\s+")) {
      longest = Math.max(longest, word.length());
    }
    for (int row = column.firstRow(); column.decimals() < 0 && row <= column.lastRow(); row++) {
      String text = column.cells().text(row);
      longest = text == null ? longest : Math.max(longest, text.length());
      if (longest > LONGEST_STATE) {
        return NOTE;
      }
    }
    return Math.max(NARROWEST, Math.min(WIDEST, longest + 1));
  }

  private static int measureNames(ColumnPatch column) {
    int longest = 0;
    for (int row = column.firstRow(); row <= column.lastRow(); row++) {
      String text = column.cells().text(row);
      longest = text == null ? longest : Math.max(longest, text.length());
    }
    return Math.max(NARROWEST, Math.min(NOTE, longest + 1));
  }

  /** How many lines a text takes where words wrap. */
  static int lines(String text, double width) {
    int lines = 0;
    for (String paragraph : text.split("\n", -1)) {
      int used = 0;
      lines++;
      for (String word : paragraph.split(" ")) {
        if (used > 0 && used + 1 + word.length() > width) {
          lines++;
          used = 0;
        }
        used += (used > 0 ? 1 : 0) + word.length();
        lines += width >= 1 ? (int) Math.max(0, Math.ceil(used / width) - 1) : 0;
        used = width >= 1 && used > width ? (int) (used % width) : used;
      }
    }
    return lines;
  }
}
