package washbook.log;

import java.util.List;
import java.util.Optional;
import washbook.log.sheet.AcrossGrid;
import washbook.log.sheet.Grid;

/**
 * What was understood of one sheet; no tables means that nothing was recognised.
 *
 * @param leftAlone tables with readings that are no ferment's log as far as they tell
 * @param runs its still runs
 * @param across the sheet as its tables see it where its log runs across
 */
public record Understanding(
    String sheet,
    List<LogTable> tables,
    List<Doubt> doubts,
    List<LeftAlone> leftAlone,
    List<StillRun> runs,
    Optional<AcrossGrid> across) {

  /** Of a sheet whose tables run down. */
  public Understanding(
      String sheet,
      List<LogTable> tables,
      List<Doubt> doubts,
      List<LeftAlone> leftAlone,
      List<StillRun> runs) {
    this(sheet, tables, doubts, leftAlone, runs, Optional.empty());
  }

  /** Of a sheet without still runs. */
  public Understanding(
      String sheet, List<LogTable> tables, List<Doubt> doubts, List<LeftAlone> leftAlone) {
    this(sheet, tables, doubts, leftAlone, List.of());
  }

  /** The area of a table in the sheet, as A3:F40. */
  public String range(LogTable table) {
    return across.map(AcrossGrid::range).orElse(table.range());
  }

  /** The sheet in the directions of the tables. */
  public Grid seen(Grid grid) {
    return across.isPresent() ? across.get() : grid;
  }

  /** Whether neither a ferment nor a still run was recognised. */
  public boolean isEmpty() {
    return tables.isEmpty() && runs.isEmpty();
  }
}
