package washbook.log.fill;

import washbook.log.ComputedColumn;

/** The formulas of a table's computed columns. */
@FunctionalInterface
interface CellFormulas {
  /** Null where only the value can stand. */
  String formula(ComputedColumn column, int row);
}
