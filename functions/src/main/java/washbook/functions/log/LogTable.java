package washbook.functions.log;

import java.util.List;
import java.util.Optional;

/**
 * One table of readings in a sheet; all numbers from 0, ends included.
 *
 * @param headerRow the row of its headers
 * @param columns its columns from left to right
 * @param batches its batches in order of first appearance
 */
public record LogTable(
    int headerRow,
    int firstRow,
    int lastRow,
    int firstColumn,
    int lastColumn,
    List<ColumnUse> columns,
    List<Batch> batches) {

  /** The table's first column with that role. */
  public Optional<ColumnUse> column(Role role) {
    return columns.stream().filter(c -> c.role() == role).findFirst();
  }

  /** The area from header to last row, as A3:F40. */
  public String range() {
    return CellAddress.of(headerRow, firstColumn) + ":" + CellAddress.of(lastRow, lastColumn);
  }
}
