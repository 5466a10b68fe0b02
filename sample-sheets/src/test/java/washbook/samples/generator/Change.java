package washbook.samples.generator;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.IntUnaryOperator;

/** Changes to a log that say nothing about its readings; its figures must stay. */
enum Change {
  WEEKDAY_BEFORE_THE_DATE,
  INITIALS,
  NEUTRAL_COLUMN,
  BATTERY_COLUMN,
  COLUMNS_SHUFFLED,
  TABLE_BELOW,
  TABLE_BESIDE,
  BLANK_ROW,
  SHEET_RENAMED;

  /** The changed sheet, and where each row and column has gone. */
  record Changed(Sheet sheet, IntUnaryOperator row, IntUnaryOperator column) {}

  private static final int FEWEST_HEADERS = 3;

  /** Whether the change leaves the meaning of that sheet as it is. */
  boolean fits(Sheet sheet, Seen seen) {
    return this != COLUMNS_SHUFFLED || (seen.tables().size() == 1 && sheet.merged().isEmpty());
  }

  Changed apply(Sheet sheet, Seen.Table table, Words words, int seed) {
    return switch (this) {
      case WEEKDAY_BEFORE_THE_DATE ->
          withColumn(
              sheet,
              table,
              table.firstColumn(),
              words.all("weekday").get(0),
              row -> words.all("weekdays").get(row % 7));
      case INITIALS ->
          withColumn(
              sheet,
              table,
              table.firstColumn() + 1,
              words.all("initials").get(0),
              row -> String.valueOf((char) ('A' + row % 26)));
      case NEUTRAL_COLUMN ->
          withColumn(
              sheet,
              table,
              table.firstColumn() + seed % (table.lastColumn() - table.firstColumn() + 2),
              words.all("neutral").get(seed % 6),
              row -> words.all("neutralvalues").get(row % 9));
      case BATTERY_COLUMN ->
          withColumn(
              sheet,
              table,
              table.lastColumn() + 1,
              words.all("battery").get(1),
              row -> Choice.onStep(4.1 - row / 100.0, 0.01));
      case COLUMNS_SHUFFLED -> shuffled(sheet, table, seed);
      case TABLE_BELOW -> shopping(sheet, sheet.rows() + 2, table.firstColumn());
      case TABLE_BESIDE -> shopping(sheet, table.headerRow(), sheet.columns() + 1);
      case BLANK_ROW -> {
        int middle = (table.firstRow() + table.lastRow()) / 2;
        IntUnaryOperator down = row -> row > middle ? row + 1 : row;
        yield new Changed(sheet.moved(sheet.name(), down, c -> c), down, c -> c);
      }
      case SHEET_RENAMED -> new Changed(sheet.moved("Sheet7", r -> r, c -> c), r -> r, c -> c);
    };
  }

  private interface Cells {
    Object at(int row);
  }

  private static Changed withColumn(
      Sheet sheet, Seen.Table table, int at, String header, Cells cells) {
    IntUnaryOperator right = column -> column >= at ? column + 1 : column;
    Sheet changed = sheet.moved(sheet.name(), r -> r, right);
    changed.put(table.headerRow(), at, header);
    Object firstHeader = sheet.at(table.headerRow(), table.firstColumn());
    for (int row = table.headerRow() + 1; row < sheet.rows(); row++) {
      boolean again = firstHeader != null && firstHeader.equals(sheet.at(row, table.firstColumn()));
      if (again) {
        changed.put(row, at, header);
      } else if (table.filled().containsKey(row) || table.refused().containsKey(row)) {
        changed.put(row, at, cells.at(row));
      }
    }
    return new Changed(changed, r -> r, right);
  }

  private static Changed shuffled(Sheet sheet, Seen.Table table, int seed) {
    List<Integer> order = new ArrayList<>();
    for (int column = table.firstColumn(); column <= table.lastColumn(); column++) {
      order.add(column);
    }
    Collections.shuffle(order, new Random(seed));
    IntUnaryOperator to =
        column ->
            column < table.firstColumn() || column > table.lastColumn()
                ? column
                : order.get(column - table.firstColumn());
    int top =
        headers(sheet, table, table.headerRow() - 1) ? table.headerRow() - 1 : table.headerRow();
    Sheet changed = sheet.moved(sheet.name(), r -> r, c -> c);
    for (int row = top; row < sheet.rows(); row++) {
      for (int column : order) {
        changed.put(row, to.applyAsInt(column), sheet.at(row, column));
      }
    }
    return new Changed(changed, r -> r, to);
  }

  /** Whether that row belongs to the header: units stand in a row of their own. */
  private static boolean headers(Sheet sheet, Seen.Table table, int row) {
    int texts = 0;
    for (int column = table.firstColumn(); row >= 0 && column <= table.lastColumn(); column++) {
      texts += sheet.at(row, column) instanceof String ? 1 : 0;
    }
    return texts >= Math.min(FEWEST_HEADERS, table.lastColumn() - table.firstColumn() + 1);
  }

  private static Changed shopping(Sheet sheet, int row, int column) {
    Sheet changed = sheet.copy();
    Object[][] cells = {
      {"Item", "Price"}, {"corks", 4.5}, {"labels", 2.2}, {"cloth", 3.0}, {"string", 1.5}
    };
    for (int i = 0; i < cells.length; i++) {
      changed.put(row + i, column, cells[i][0]).put(row + i, column + 1, cells[i][1]);
    }
    return new Changed(changed, r -> r, c -> c);
  }
}
