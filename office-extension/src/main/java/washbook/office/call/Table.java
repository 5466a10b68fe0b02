package washbook.office.call;

import java.util.function.Consumer;
import java.util.function.Function;

/** More than one cell: values in rows, null where blank. */
record Table(int rows, int columns, Object[] cells) {

  /** Takes over Calc's rows; a single cell comes back as its value alone. */
  static <T> Object of(T[][] given, Function<? super T, Object> read) {
    int columns = 0;
    for (T[] row : given) {
      columns = Math.max(columns, row.length);
    }
    if (given.length == 1 && columns == 1) {
      return read.apply(given[0][0]);
    }
    Object[] cells = new Object[given.length * columns];
    for (int r = 0; r < given.length; r++) {
      for (int c = 0; c < given[r].length; c++) {
        cells[r * columns + c] = read.apply(given[r][c]);
      }
    }
    return new Table(given.length, columns, cells);
  }

  /** The value for a place of the result: a single row or column serves for all. */
  Object at(int row, int column) {
    return cells[(rows == 1 ? 0 : row) * columns + (columns == 1 ? 0 : column)];
  }

  /** Whether the place has a value at all. */
  boolean reaches(int row, int column) {
    return (rows == 1 || row < rows) && (columns == 1 || column < columns);
  }

  void forEach(Consumer<Object> consumer) {
    for (Object cell : cells) {
      consumer.accept(cell);
    }
  }
}
