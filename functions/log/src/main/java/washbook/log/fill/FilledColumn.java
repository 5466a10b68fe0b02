package washbook.log.fill;

import washbook.log.ComputedColumn;
import washbook.log.LogTable;
import washbook.log.WrittenScale;
import washbook.log.language.Language;
import washbook.log.sheet.ColumnPatch;

/**
 * One computed column of a table.
 *
 * @param scale of its figures; SG for all but the corrected reading
 * @param language in which it is written
 * @param patch what is to be written
 */
public record FilledColumn(
    LogTable table,
    ComputedColumn column,
    WrittenScale scale,
    Language language,
    ColumnPatch patch) {

  /** The figure on a row, a corrected reading as SG 20/20; NaN where there is none. */
  public double inGravity(int row) {
    double figure = patch.cells().number(row);
    return scale.isPlainGravity() || Double.isNaN(figure) ? figure : scale.toGravity(figure);
  }
}
