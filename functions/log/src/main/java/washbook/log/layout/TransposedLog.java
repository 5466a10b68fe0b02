package washbook.log.layout;

import java.util.Optional;
import washbook.log.Doubt;
import washbook.log.Role;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;
import washbook.log.words.CellText;
import washbook.log.words.DateText;
import washbook.log.words.ReadingScale;
import washbook.log.words.Vocabulary;

/** Finds a log that runs across: its dates to the right in one row, its readings in another. */
public final class TransposedLog {
  private static final int FEWEST = 3;
  private static final int ROWS_BETWEEN = 12;
  private static final int MOST_COLUMNS = 64;

  private TransposedLog() {}

  /** A doubt that says so, where a sheet without a table holds such a log. */
  public static Optional<Doubt> in(Grid grid) {
    int time = -1;
    int label = -1;
    int gravity = -1;
    for (int row = 0; row < grid.rowCount(); row++) {
      int column = firstText(grid, row);
      if (column < 0) {
        continue;
      }
      Role role = HeaderRoles.role(Vocabulary.meanings(grid.text(row, column)));
      if (isTime(role) && values(grid, row, column, false) >= FEWEST) {
        time = row;
        label = label < 0 ? column : label;
      } else if (role == Role.GRAVITY && values(grid, row, column, true) >= FEWEST) {
        gravity = row;
        label = column;
      }
      if (time >= 0 && gravity >= 0) {
        return Math.abs(time - gravity) <= ROWS_BETWEEN
            ? Optional.of(doubt(time, gravity, label))
            : Optional.empty();
      }
    }
    return Optional.empty();
  }

  private static Doubt doubt(int time, int gravity, int label) {
    return new Doubt(
        CellAddress.of(gravity, label),
        "The log runs across: its times stand side by side in row "
            + (time + 1)
            + " and its readings in row "
            + (gravity + 1)
            + ". Only logs that run down are filled. Can it be turned? In the spreadsheet: copy it"
            + " and paste it transposed into a new sheet");
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
