package washbook.log.fill;

import java.util.List;
import java.util.OptionalDouble;
import washbook.log.sheet.CellRefusal;
import washbook.log.sheet.SheetPatch;

/**
 * The computed columns of one sheet.
 *
 * @param patch what is to be written
 * @param tables counts for the report, one for each table
 * @param refusals every refused row once, in the order of the sheet
 */
public record Filling(SheetPatch patch, List<TableCount> tables, List<CellRefusal> refusals) {

  /** Rows of one table. */
  public record TableCount(String range, List<BatchCount> batches) {}

  /** Rows of one batch: with a reading, filled, and refused. */
  public record BatchCount(
      String name, OptionalDouble originalGravity, int rows, int filled, int refused) {}
}
