package washbook.samples.generator;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.IntUnaryOperator;

/**
 * A sheet in memory that can be changed. A cell is null, a text, a {@code Double}, a {@code
 * LocalDate}, a {@code LocalDateTime}, a {@code Boolean}, a {@link Formula} or {@link Failed}.
 */
final class Sheet {
  /** A formula with its stored result. */
  record Formula(Object result) {}

  /** A cell with an error. */
  record Failed() {}

  /** A merged area, all ends included. */
  record Merged(int firstRow, int firstColumn, int lastRow, int lastColumn) {}

  private final String name;
  private final Map<Long, Object> cells = new HashMap<>();
  private final List<Merged> merged = new ArrayList<>();
  private int rows;
  private int columns;

  Sheet(String name) {
    this.name = name;
  }

  String name() {
    return name;
  }

  int rows() {
    return rows;
  }

  int columns() {
    return columns;
  }

  List<Merged> merged() {
    return merged;
  }

  void merge(Merged area) {
    merged.add(area);
  }

  Sheet put(int row, int column, Object value) {
    if (value == null || value.equals("")) {
      cells.remove(key(row, column));
      return this;
    }
    cells.put(key(row, column), value);
    rows = Math.max(rows, row + 1);
    columns = Math.max(columns, column + 1);
    return this;
  }

  Object at(int row, int column) {
    return cells.get(key(row, column));
  }

  private static long key(int row, int column) {
    return (long) row << 32 | column;
  }

  /** The same cells elsewhere and under another name; merged areas go along. */
  Sheet moved(String newName, IntUnaryOperator toRow, IntUnaryOperator toColumn) {
    Sheet other = new Sheet(newName);
    cells.forEach(
        (key, value) ->
            other.put(
                toRow.applyAsInt((int) (key >> 32)), toColumn.applyAsInt((int) (long) key), value));
    for (Merged m : merged) {
      other.merge(
          new Merged(
              toRow.applyAsInt(m.firstRow()),
              toColumn.applyAsInt(m.firstColumn()),
              toRow.applyAsInt(m.lastRow()),
              toColumn.applyAsInt(m.lastColumn())));
    }
    return other;
  }

  Sheet copy() {
    return moved(name, r -> r, c -> c);
  }

  /** As lines of comma-separated cells. */
  String csv() {
    StringBuilder text = new StringBuilder();
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        text.append(column == 0 ? "" : ",").append(quoted(shown(at(row, column))));
      }
      text.append('\n');
    }
    return text.toString();
  }

  static String shown(Object value) {
    if (value == null) {
      return "";
    }
    if (value instanceof Formula formula) {
      return shown(formula.result());
    }
    if (value instanceof Double number) {
      String text = String.format(Locale.ROOT, "%.6f", number);
      return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
    }
    if (value instanceof LocalDateTime || value instanceof LocalDate) {
      return value.toString().replace('T', ' ');
    }
    return value instanceof Failed ? "#N/A" : value.toString();
  }

  private static String quoted(String text) {
    return text.matches("[^,\"\n]*") ? text : '"' + text.replace("\"", "\"\"") + '"';
  }
}
