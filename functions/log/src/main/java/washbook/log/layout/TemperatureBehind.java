package washbook.log.layout;

import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;
import washbook.log.words.CellText;
import washbook.log.words.Concept;
import washbook.log.words.ReadingScale;
import washbook.log.words.Statement;

/** The temperature of one stated gravity where it stands in a cell of its own behind it. */
final class TemperatureBehind {
  private static final int FARTHEST = 3;

  /** A temperature and nothing else, with or without the word or sign for at. */
  private static final Pattern DEGREES =
      Pattern.compile(
          "(?:(?i:at|bei|à|a|bij|by|op|om|em)\\s|@\\s?)?\\(?(\\d{1,3}(?:[.,]\\d)?\\s?[\u00b0\u00ba]?\\s?[CF])\\)?");

  /** A word for at, or a unit of gravity, between the two. */
  private static final Pattern BETWEEN = Pattern.compile("(?i)@|at|bei|à|a|bij|by|op|om|em|sg|d");

  private static final Pattern UNIT = Pattern.compile("[\u00b0\u00ba]\\s?[CF]");

  private TemperatureBehind() {}

  /** In °C; NaN where the cell holds no gravity, a corrected one, or none stands behind it. */
  static double gravity(Grid grid, int row, int column, Set<Concept> label) {
    if (label.contains(Concept.CORRECTED)
        || !ReadingScale.looksLikeGravity(CellText.number(grid, row, column))) {
      return Double.NaN;
    }
    for (int at = column + 1; at <= column + FARTHEST && at < grid.columnCount(); at++) {
      if (grid.kind(row, at) == Kind.NUMBER) {
        String unit = text(grid, row, at + 1);
        return UNIT.matcher(unit).matches()
            ? Statement.temperatureIn(CellText.number(grid, row, at) + unit)
            : Double.NaN;
      }
      String text = text(grid, row, at);
      Matcher degrees = DEGREES.matcher(text);
      if (degrees.matches()) {
        return Statement.temperatureIn(degrees.group(1));
      }
      if (!text.isEmpty() && !BETWEEN.matcher(text).matches()) {
        return Double.NaN;
      }
    }
    return Double.NaN;
  }

  private static String text(Grid grid, int row, int column) {
    return column < grid.columnCount() && grid.kind(row, column) == Kind.TEXT
        ? grid.text(row, column).strip()
        : "";
  }
}
