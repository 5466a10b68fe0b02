package washbook.log.layout;

import java.util.Set;
import washbook.log.Doubts;
import washbook.log.Role;
import washbook.log.language.Message;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;
import washbook.log.words.CellText;
import washbook.log.words.Concept;
import washbook.log.words.DateText;
import washbook.log.words.ReadingScale;
import washbook.log.words.TradeWords;
import washbook.log.words.Vocabulary;

/** Finds a log that runs across: its dates to the right in one row, its readings in another. */
public final class TransposedLog {
  private static final int FEWEST = 3;

  /** The part of its extract that a wash has left in the end, at most. */
  private static final double LEFT = 0.65;

  /** As many dates side by side need no word before them, and as many gravities below them. */
  private static final int FEWEST_DATES = 4;

  private static final int ROWS_BETWEEN = 12;
  private static final int TOP_ROWS = 30;
  private static final int MOST_COLUMNS = 64;

  private TransposedLog() {}

  /** Asks to turn such a log, where a sheet without a table holds one. */
  public static void askAbout(Grid grid, Doubts doubts) {
    int time = -1;
    int label = -1;
    int gravity = -1;
    boolean words = speaksOfFerment(grid);
    for (int row = 0; row < grid.rowCount(); row++) {
      int column = firstText(grid, row);
      if (column < 0) {
        continue;
      }
      Set<Concept> meanings = Vocabulary.meanings(grid.text(row, column));
      Role role = HeaderRoles.role(meanings);
      boolean degrees =
          HeaderRoles.hasScaleOrGravity(meanings) && !meanings.equals(Set.of(Concept.GRAVITY));
      if (isTime(role) && values(grid, row, column, false) >= FEWEST
          || words && dates(grid, row, column) >= FEWEST_DATES) {
        time = row;
        label = label < 0 ? column : label;
      } else if (role == Role.GRAVITY && values(grid, row, column, !degrees) >= FEWEST
          || words && time >= 0 && values(grid, row, column, true) >= FEWEST_DATES) {
        gravity = row;
        label = column;
      }
      if (time >= 0 && gravity >= 0) {
        if (Math.abs(time - gravity) <= ROWS_BETWEEN && falls(grid, gravity, label)) {
          ask(time, gravity, label, doubts);
        }
        return;
      }
    }
  }

  private static void ask(int time, int gravity, int label, Doubts doubts) {
    doubts.ask(CellAddress.of(gravity, label), Message.of("ask.across", time + 1, gravity + 1));
  }

  /** Whether a word of the trade stands near the top: then labels need not say more. */
  private static boolean speaksOfFerment(Grid grid) {
    for (int row = 0; row < Math.min(grid.rowCount(), TOP_ROWS); row++) {
      for (int column = 0; column < Math.min(grid.columnsUsed(row), MOST_COLUMNS); column++) {
        if (grid.kind(row, column) == Kind.TEXT
            && TradeWords.in(grid.text(row, column)).equals(Set.of(TradeWords.Side.FERMENT))) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether the figures right of a label end well below the highest of them. */
  private static boolean falls(Grid grid, int row, int label) {
    double highest = Double.NEGATIVE_INFINITY;
    double last = Double.NaN;
    for (int column = label + 1; column < grid.columnsUsed(row); column++) {
      double value = CellText.plainNumber(grid, row, column);
      if (!Double.isNaN(value)) {
        last =
            ReadingScale.looksLikeGravity(value)
                ? 1000 * (ReadingScale.withoutThousandths(value) - 1)
                : value;
        highest = Math.max(highest, last);
      }
    }
    return last <= LEFT * highest;
  }

  /** How many dates stand right of a label. */
  private static int dates(Grid grid, int row, int label) {
    int dates = 0;
    int columns = Math.min(grid.columnsUsed(row), MOST_COLUMNS);
    for (int column = label + 1; column < columns; column++) {
      dates += DateText.isDate(grid, row, column) ? 1 : 0;
    }
    return dates;
  }

  private static boolean isTime(Role role) {
    return role == Role.DATE || role == Role.DAY || role == Role.HOURS || role == Role.TIME;
  }

  private static int firstText(Grid grid, int row) {
    int columns = Math.min(grid.columnsUsed(row), MOST_COLUMNS);
    for (int column = 0; column < columns; column++) {
      if (grid.kind(row, column) != Kind.BLANK) {
        return grid.kind(row, column) == Kind.TEXT ? column : -1;
      }
    }
    return -1;
  }

  /** How many values stand right of the label; none when something else does too. */
  private static int values(Grid grid, int row, int label, boolean gravities) {
    int values = 0;
    int columns = Math.min(grid.columnsUsed(row), MOST_COLUMNS);
    for (int column = label + 1; column < columns; column++) {
      Kind kind = grid.kind(row, column);
      double number = CellText.plainNumber(grid, row, column);
      boolean value =
          gravities
              ? ReadingScale.looksLikeGravity(number)
              : kind == Kind.DATE
                  || !Double.isNaN(number)
                  || (kind == Kind.TEXT
                      && !Double.isNaN(
                          DateText.serial(grid.text(row, column), DateText.Order.DAY_FIRST)));
      values += value ? 1 : 0;
    }
    return values;
  }
}
