package washbook.log.fill;

import java.util.List;
import java.util.Map;
import washbook.log.LogTable;
import washbook.log.language.Message;
import washbook.log.sheet.Grid;

/** What is said in the note column besides why a row was refused. */
public interface RowNotes {
  /** Nothing else. */
  RowNotes NONE = (grid, table, computed) -> Map.of();

  /**
   * The notes of a table by row.
   *
   * @param grid in the directions in which the table runs down
   * @param computed the table's figures
   */
  Map<Integer, List<Message>> of(Grid grid, LogTable table, ComputedTable computed);
}
