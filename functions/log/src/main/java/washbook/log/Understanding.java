package washbook.log;

import java.util.List;

/**
 * What was understood of one sheet; no tables means that nothing was recognised.
 *
 * @param leftAlone tables with readings that are no ferment's log as far as they tell
 * @param runs its still runs
 */
public record Understanding(
    String sheet,
    List<LogTable> tables,
    List<Doubt> doubts,
    List<LeftAlone> leftAlone,
    List<StillRun> runs) {

  /** Of a sheet without still runs. */
  public Understanding(
      String sheet, List<LogTable> tables, List<Doubt> doubts, List<LeftAlone> leftAlone) {
    this(sheet, tables, doubts, leftAlone, List.of());
  }

  /** Whether neither a ferment nor a still run was recognised. */
  public boolean isEmpty() {
    return tables.isEmpty() && runs.isEmpty();
  }
}
