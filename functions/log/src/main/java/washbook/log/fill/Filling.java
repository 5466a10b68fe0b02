package washbook.log.fill;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import washbook.log.ComputedColumn;
import washbook.log.LogTable;
import washbook.log.sheet.CellRefusal;
import washbook.log.sheet.SheetPatch;

/**
 * The computed columns of one sheet.
 *
 * @param patch what is to be written
 * @param columns the same column by column, with what each holds
 * @param tables counts for the report, one for each table
 * @param refusals every refused row once, in the order of the sheet
 */
public record Filling(
    SheetPatch patch,
    List<FilledColumn> columns,
    List<TableCount> tables,
    List<CellRefusal> refusals) {

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
  public record TableCount(String range, List<BatchCount> batches, boolean isRun) {
    TableCount(String range, List<BatchCount> batches) {
      this(range, batches, false);
    }
  }

  /** Rows of one batch: with a reading, filled, and refused. */
  public record BatchCount(
      String name, OptionalDouble originalGravity, int rows, int filled, int refused) {}
}
