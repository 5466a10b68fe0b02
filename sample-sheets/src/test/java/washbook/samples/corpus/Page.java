package washbook.samples.corpus;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import washbook.log.sheet.Grid;

/** One sheet as it is about to be written: values by row and column, from 0. */
final class Page {
  /** A value with the number format that a person gave it. */
  record Shown(Object value, String format) {}

  /** A formula without "=" and its stored result. */
  record Formula(String text, double result) {}

  private final String name;
  private final TreeMap<Integer, TreeMap<Integer, Object>> cells = new TreeMap<>();
  private final List<Grid.Area> merged = new ArrayList<>();

  Page(String name) {
    this.name = name;
  }

  String name() {
    return name;
  }

  /** Numbers, text, LocalDate, LocalDateTime, LocalTime, Shown or Formula; null writes nothing. */
  Page put(int row, int column, Object value) {
    if (value != null) {
      cells.computeIfAbsent(row, r -> new TreeMap<>()).put(column, value);
    }
    return this;
  }

  /** Values side by side from a cell on; null leaves a cell blank. */
  Page line(int row, int column, Object... values) {
    for (int i = 0; i < values.length; i++) {
      put(row, column + i, values[i]);
    }
    return this;
  }

  Page merge(int firstRow, int firstColumn, int lastRow, int lastColumn) {
    merged.add(new Grid.Area(firstRow, firstColumn, lastRow, lastColumn));
    return this;
  }

  List<Grid.Area> merged() {
    return merged;
  }

  TreeMap<Integer, TreeMap<Integer, Object>> cells() {
    return cells;
  }

  Object at(int row, int column) {
    TreeMap<Integer, Object> line = cells.get(row);
    return line == null ? null : line.get(column);
  }
}
