package washbook.runner.sheet;

import washbook.log.sheet.CellAddress;
import washbook.runner.file.UnusableFileException;

/** The last safety net of every writer: what is not ours is never replaced. */
public final class OwnCells {
  private OwnCells() {}

  /**
   * Refuses to write over a cell.
   *
   * @param sheet name of its sheet; "" in a file that has no sheets
   * @param ours whether its column is one that we have written before
   * @param blank whether nothing stands in it
   */
  public static void refuseOthers(String sheet, int row, int column, boolean ours, boolean blank)
      throws UnusableFileException {
    if (!ours && !blank) {
      throw sheet.isEmpty()
          ? UnusableFileException.of("write.notOurs", CellAddress.of(row, column))
          : UnusableFileException.of(
              "write.notOursIn", CellAddress.of(row, column), UnusableFileException.quoted(sheet));
    }
  }
}
