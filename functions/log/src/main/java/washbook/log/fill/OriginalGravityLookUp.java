package washbook.log.fill;

import java.util.EnumSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import washbook.log.Batch;
import washbook.log.ComputedColumn;
import washbook.log.LogColumn;
import washbook.log.LogTable;
import washbook.log.OriginalGravity.FirstReading;
import washbook.log.OriginalGravity.Stated;
import washbook.log.Role;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;

/**
 * How formulas find an original gravity that stands in a row of the table. A reference to that row
 * would be wrong once the table is sorted. So the corrected first reading stands in a column of its
 * own, on its row alone, and goes with that row; the formulas look for it over the whole column.
 * With a batch column each row looks for the value of its batch, once, in the column of original
 * gravities.
 *
 * <p>A look-up reads as many cells as there are rows. Tables of more than {@link #MOST_ROWS} rows
 * are left with the reference.
 */
final class OriginalGravityLookUp {
  /** Look-ups of longer tables take too long. */
  static final int MOST_ROWS = 5000;

  /** In a longer table each row looks once, though it means one more column. */
  private static final int MOST_ROWS_LOOKING_OFTEN = 1000;

  /** Blank rows below the table that belong to the look-up: readings still to come. */
  private static final int ROWS_TO_COME = 200;

  private final Grid grid;
  private final LogTable table;
  private final int firstColumn;
  private final int statedColumn;
  private final int batchColumn;
  private final int endRow;
  private final Map<Batch, Boolean> namedThroughout = new IdentityHashMap<>();

  /**
   * @param firstColumn where the first gravities stand, -1 when they have no column
   * @param all the sheet's tables
   */
  OriginalGravityLookUp(Grid grid, LogTable table, int firstColumn, List<LogTable> all) {
    this.grid = grid;
    this.table = table;
    this.firstColumn = firstColumn;
    this.statedColumn = column(table, Role.ORIGINAL_GRAVITY);
    this.batchColumn = column(table, Role.BATCH);
    this.endRow = endRow(all);
  }

  private static int column(LogTable table, Role role) {
    return table.column(role).map(LogColumn::column).orElse(-1);
  }

  /** Whether a row's reading is what its batch's formulas take for the original gravity. */
  static boolean isTheFirst(Batch batch, int row) {
    return batch.isFirstReading(row) && !batch.isFed();
  }

  /** The columns that a table's formulas need beside the wanted ones. */
  static Set<ComputedColumn> columns(Grid grid, LogTable table) {
    Set<ComputedColumn> columns = EnumSet.noneOf(ComputedColumn.class);
    int rows = table.lastRow() - table.firstRow() + 1;
    if (rows > MOST_ROWS) {
      return columns;
    }
    boolean byReading =
        table.batches().stream()
            .anyMatch(
                b -> b.original() instanceof FirstReading && !b.isFed() && b.rows().length > 1);
    if (byReading) {
      columns.add(ComputedColumn.FIRST_GRAVITY);
    }
    boolean oftenIsTooMuch = rows > MOST_ROWS_LOOKING_OFTEN || table.column(Role.BATCH).isPresent();
    if (oftenIsTooMuch && (byReading || isStatedOnSomeRows(grid, table))) {
      columns.add(ComputedColumn.ORIGINAL_GRAVITY);
    }
    return columns;
  }

  private static boolean isStatedOnSomeRows(Grid grid, LogTable table) {
    int column = column(table, Role.ORIGINAL_GRAVITY);
    if (column < 0) {
      return false;
    }
    for (Batch batch : table.batches()) {
      if (batch.original() instanceof Stated stated && stated.number().isPresent()) {
        for (int row : batch.rows()) {
          if (!hasNumber(grid, row, column)) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private static boolean hasNumber(Grid grid, int row, int column) {
    return grid.kind(row, column) == Grid.Kind.NUMBER && grid.number(row, column) != 0;
  }

  /** Whether the first gravities have a column. */
  boolean hasColumn() {
    return firstColumn >= 0;
  }

  /** The corrected first reading of a row's batch. */
  String ofFirstReading(Batch batch, FirstReading first, int row) {
    return canBeSorted(batch, row)
        ? lookUp(batch, row, firstColumn, false)
        : CellAddress.fixed(first.row(), firstColumn);
  }

  /** The number that states the original gravity of a row's batch, as it stands in its cell. */
  String ofStatement(Batch batch, Stated stated, int row) {
    if (statedColumn < 0) {
      return CellAddress.fixed(stated.cell());
    }
    if (hasNumber(grid, row, statedColumn)) {
      return CellAddress.of(row, statedColumn);
    }
    return canBeSorted(batch, row)
        ? lookUp(batch, row, statedColumn, true)
        : CellAddress.fixed(stated.cell());
  }

  /** Sorting breaks a log itself where rows take their batch from the row above. */
  private boolean canBeSorted(Batch batch, int row) {
    return table.lastRow() - table.firstRow() < MOST_ROWS
        && (batchColumn < 0
            || sameName(row, batch.rows()[0])
                && namedThroughout.computeIfAbsent(batch, this::isNamedThroughout));
  }

  private boolean isNamedThroughout(Batch batch) {
    for (int row : batch.rows()) {
      if (grid.kind(row, batchColumn) == Grid.Kind.BLANK) {
        return false;
      }
    }
    return true;
  }

  private boolean sameName(int row, int other) {
    return grid.kind(row, batchColumn) == grid.kind(other, batchColumn)
        && switch (grid.kind(row, batchColumn)) {
          case TEXT -> grid.text(row, batchColumn).equals(grid.text(other, batchColumn));
          case NUMBER, DATE -> grid.number(row, batchColumn) == grid.number(other, batchColumn);
          default -> false;
        };
  }

  private String lookUp(Batch batch, int row, int column, boolean several) {
    String values = range(column);
    if (batchColumn < 0) {
      return "MAX(" + values + ")";
    }
    String names = range(batchColumn);
    String name = CellAddress.of(row, batchColumn);
    if (isPlain(batch)) {
      String sum = "SUMIF(" + names + "," + name + "," + values + ")";
      return several ? sum + "/COUNTIFS(" + names + "," + name + "," + values + ",\">0\")" : sum;
    }
    String same = "(" + names + "=" + name + ")";
    String sum = "SUMPRODUCT(" + same + "*1," + values + ")";
    return several ? sum + "/SUMPRODUCT(" + same + "*(" + values + ">0))" : sum;
  }

  /** Whether programs that search by patterns, or for a part of a cell, find this batch alone. */
  private boolean isPlain(Batch batch) {
    String name = batch.name().toLowerCase(Locale.ROOT);
    return name.chars().allMatch(c -> Character.isLetterOrDigit(c) || " -_/#,".indexOf(c) >= 0)
        && table.batches().stream()
            .map(other -> other.name().toLowerCase(Locale.ROOT))
            .noneMatch(other -> !other.equals(name) && other.contains(name));
  }

  /** The column from its header to the last row, and blank rows below. */
  private String range(int column) {
    return CellAddress.fixed(table.headerRow(), column) + ":" + CellAddress.fixed(endRow, column);
  }

  private int endRow(List<LogTable> all) {
    int most = table.lastRow() + ROWS_TO_COME;
    for (LogTable other : all) {
      if (other.headerRow() > table.lastRow()) {
        most = Math.min(most, other.headerRow() - 1);
      }
    }
    int row = table.lastRow();
    while (row < most
        && isBlank(row + 1, firstColumn)
        && isBlank(row + 1, statedColumn)
        && isBlank(row + 1, batchColumn)) {
      row++;
    }
    return row;
  }

  private boolean isBlank(int row, int column) {
    return column < 0 || grid.kind(row, column) == Grid.Kind.BLANK;
  }
}
