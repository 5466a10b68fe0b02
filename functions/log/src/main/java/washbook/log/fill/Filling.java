package washbook.log.fill;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import washbook.log.ComputedColumn;
import washbook.log.LogTable;
import washbook.log.RowAccount;
import washbook.log.sheet.CellRefusal;
import washbook.log.sheet.SheetPatch;

/**
 * The computed columns of one sheet.
 *
 * @param patch what is to be written
 * @param columns the same column by column, with what each holds
 * @param tables counts for the report, one for each table
 * @param refusals every refused row once, in the order of the sheet
 * @param accounts what became of each row of each table, tables that wait for an answer too
 */
public record Filling(
    SheetPatch patch,
    List<FilledColumn> columns,
    List<TableCount> tables,
    List<CellRefusal> refusals,
    Map<LogTable, RowAccount> accounts) {

  /** The column of a table with that content. */
  public Optional<FilledColumn> column(LogTable table, ComputedColumn wanted) {
    return columns.stream()
        .filter(column -> column.table() == table && column.column() == wanted)
        .findFirst();
  }

  /**
   * Rows of one table.
   *
   * @param isRun whether its batches are still runs
   */
  public record TableCount(LogTable table, List<BatchCount> batches, boolean isRun) {
    TableCount(LogTable table, List<BatchCount> batches) {
      this(table, batches, false);
    }
  }

  /** Rows of one batch: with a reading, filled, and refused. */
  public record BatchCount(
      String name, OptionalDouble originalGravity, int rows, int filled, int refused) {}
}
