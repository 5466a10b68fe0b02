package washbook.functions.portable;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Moves the relative references of a formula in the A1 syntax, as a copy to another cell does. */
public final class FormulaShift {
  private static final Pattern CELL = Pattern.compile("(\\$?)([A-Za-z]{1,3})(\\$?)([0-9]{1,7})");
  private static final Pattern COLUMN = Pattern.compile("(\\$?)([A-Za-z]{1,3})");
  private static final Pattern ROW = Pattern.compile("(\\$?)([0-9]{1,7})");
  private static final int COLUMNS = 1 << 14;
  private static final int ROWS = 1 << 20;

  private FormulaShift() {}

  /** The formula as it stands this many rows below and columns to the right. */
  public static String shift(String formula, int rows, int columns) {
    StringBuilder out = new StringBuilder();
    int before = -1;
    for (int i = 0; i < formula.length(); ) {
      int end = Lexemes.end(formula, i);
      String piece = formula.substring(i, end);
      boolean name = end < formula.length() && "(!".indexOf(formula.charAt(end)) >= 0;
      boolean inRange =
          before >= 0 && formula.charAt(before) == ':'
              || end < formula.length() && formula.charAt(end) == ':';
      out.append(name ? piece : shifted(piece, inRange, rows, columns));
      before = i;
      i = end;
    }
    return out.toString();
  }

  private static String shifted(String piece, boolean inRange, int rows, int columns) {
    Matcher cell = CELL.matcher(piece);
    if (cell.matches()) {
      return column(cell.group(1), cell.group(2), columns)
          + row(cell.group(3), cell.group(4), rows);
    }
    Matcher column = COLUMN.matcher(piece);
    if (inRange && column.matches()) {
      return column(column.group(1), column.group(2), columns);
    }
    Matcher row = ROW.matcher(piece);
    return inRange && row.matches() ? row(row.group(1), row.group(2), rows) : piece;
  }

  private static String row(String fixed, String row, int by) {
    if (!fixed.isEmpty()) {
      return fixed + row;
    }
    return "" + (Math.floorMod(Integer.parseInt(row) - 1 + by, ROWS) + 1);
  }

  private static String column(String fixed, String letters, int by) {
    if (!fixed.isEmpty()) {
      return fixed + letters;
    }
    int column = 0;
    for (char c : letters.toUpperCase(Locale.ROOT).toCharArray()) {
      column = column * 26 + (c - 'A' + 1);
    }
    return letters(Math.floorMod(column - 1 + by, COLUMNS));
  }

  private static String letters(int column) {
    StringBuilder letters = new StringBuilder();
    for (int rest = column; rest >= 0; rest = rest / 26 - 1) {
      letters.insert(0, (char) ('A' + rest % 26));
    }
    return letters.toString();
  }
}
