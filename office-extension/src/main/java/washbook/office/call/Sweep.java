package washbook.office.call;

import java.util.function.Function;

/** Runs a function over arguments of which some are whole ranges. */
final class Sweep {
  private Sweep() {}

  /**
   * The result for single values, or rows of results when an argument is a {@link Table}: single
   * values, single rows and single columns serve for every place; a place that another range does
   * not reach is #N/A, as in Calc's own functions.
   */
  static Object over(Object[] arguments, Function<Object[], Object> cell) {
    int rows = 1;
    int columns = 1;
    boolean single = true;
    for (Object argument : arguments) {
      if (argument instanceof Table table) {
        single = false;
        rows = Math.max(rows, table.rows());
        columns = Math.max(columns, table.columns());
      }
    }
    if (single) {
      return cell.apply(arguments);
    }
    Object[][] results = new Object[rows][columns];
    Object[] values = new Object[arguments.length];
    for (int r = 0; r < rows; r++) {
      for (int c = 0; c < columns; c++) {
        boolean complete = pick(arguments, r, c, values);
        results[r][c] = complete ? cell.apply(values) : CalcError.NOT_AVAILABLE;
      }
    }
    return results;
  }

  private static boolean pick(Object[] arguments, int row, int column, Object[] values) {
    for (int i = 0; i < arguments.length; i++) {
      if (arguments[i] instanceof Table table) {
        if (!table.reaches(row, column)) {
          return false;
        }
        values[i] = table.at(row, column);
      } else {
        values[i] = arguments[i];
      }
    }
    return true;
  }
}
