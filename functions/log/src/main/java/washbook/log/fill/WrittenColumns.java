package washbook.log.fill;

import washbook.log.ComputedColumn;
import washbook.log.ComputedHeader;
import washbook.log.LogTable;
import washbook.log.Understanding;
import washbook.log.sheet.ColumnPatch;

/** Which of the columns that a filling writes belongs to which table of the sheet. */
public final class WrittenColumns {
  private WrittenColumns() {}

  /**
   * The column that holds something computed for a table; null when none is written. Beside its
   * table it is the first one right of the table's beginning, further away it names the table.
   */
  public static ColumnPatch of(
      Understanding understanding, LogTable table, Filling filling, ComputedColumn computed) {
    String label = ComputedColumnPlaces.label(understanding.tables(), table);
    ColumnPatch found = null;
    for (ColumnPatch patch : filling.patch().columns()) {
      ComputedHeader header = ComputedHeader.read(patch.header());
      boolean rows = patch.headerRow() == table.headerRow() && patch.firstRow() == table.firstRow();
      boolean named = header != null && header.label().equals(label);
      boolean beside =
          header != null && header.label().isEmpty() && patch.column() >= table.firstColumn();
      if (rows && (named || beside) && header.column() == computed) {
        if (named) {
          return patch;
        }
        found = found == null || patch.column() < found.column() ? patch : found;
      }
    }
    return found;
  }
}
