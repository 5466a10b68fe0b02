package washbook.log.fill;

import washbook.log.ComputedColumn;
import washbook.log.language.Language;

/** The figures and texts of a table's computed columns. */
interface ComputedCells {
  /** NaN where there is none. */
  double number(ComputedColumn column, int row);

  /** Null where there is none. */
  String text(ComputedColumn column, int row, Language language);
}
