package washbook.log.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A sheet typed as text: one line a row, cells separated by {@code |}. A number is a number, a text
 * in single quotes stays a text, an ISO date with {@code #} before it is a date cell.
 */
public final class TestGrid implements Grid {
  private static final LocalDate ZERO = LocalDate.of(1899, 12, 30);
  private final String name;
  private final List<Object[]> rows = new ArrayList<>();
  private final List<Area> merged = new ArrayList<>();
  private final List<Area> drawings = new ArrayList<>();
  private int columns;

  private TestGrid(String name) {
    this.name = name;
  }

  public static TestGrid of(String name, String text) {
    TestGrid grid = new TestGrid(name);
    for (String line : text.split("\n", -1)) {
      String[] cells = line.split("\\|", -1);
      Object[] row = new Object[cells.length];
      for (int i = 0; i < cells.length; i++) {
        row[i] = value(cells[i].strip());
      }
      grid.columns = Math.max(grid.columns, row.length);
      grid.rows.add(row);
    }
    return grid;
  }

  /** Puts a drawing over these cells. */
  public TestGrid draw(int firstRow, int firstColumn, int lastRow, int lastColumn) {
    drawings.add(new Area(firstRow, firstColumn, lastRow, lastColumn));
    return this;
  }

  @Override
  public List<Area> drawings() {
    return drawings;
  }

  public TestGrid merge(int firstRow, int firstColumn, int lastRow, int lastColumn) {
    merged.add(new Area(firstRow, firstColumn, lastRow, lastColumn));
    return this;
  }

  private static Object value(String cell) {
    if (cell.isEmpty()) {
      return null;
    }
    if (cell.startsWith("'")) {
      return cell.substring(1);
    }
    if (cell.startsWith("#20")) {
      return LocalDate.parse(cell.substring(1));
    }
    try {
      return Double.valueOf(cell);
    } catch (NumberFormatException text) {
      return cell;
    }
  }

  /** The same sheet with the cells of a filling put in. */
  public TestGrid with(SheetPatch patch) {
    TestGrid copy = new TestGrid(name);
    copy.merged.addAll(merged);
    rows.forEach(row -> copy.rows.add(row.clone()));
    copy.columns = columns;
    for (ColumnPatch column : patch.columns()) {
      copy.put(column.headerRow(), column.column(), column.header());
      for (int row = column.firstRow(); row <= column.lastRow(); row++) {
        double number = column.cells().number(row);
        copy.put(
            row,
            column.column(),
            Double.isNaN(number) ? column.cells().text(row) : (Object) number);
      }
    }
    return copy;
  }

  /** A copy with one other cell; a kind stands for a cell of that kind. */
  public static TestGrid copyWith(TestGrid grid, int row, int column, Object value) {
    TestGrid copy = grid.with(new SheetPatch(grid.name, List.of()));
    copy.put(row, column, value);
    return copy;
  }

  private void put(int row, int column, Object value) {
    while (row >= rows.size()) {
      rows.add(new Object[0]);
    }
    Object[] cells = rows.get(row);
    if (column >= cells.length) {
      if (value == null) {
        return;
      }
      cells = Arrays.copyOf(cells, column + 1);
      rows.set(row, cells);
    }
    cells[column] = value;
    columns = Math.max(columns, column + 1);
  }

  public Object at(int row, int column) {
    Object[] cells = row < rows.size() ? rows.get(row) : new Object[0];
    return column < cells.length ? cells[column] : null;
  }

  public List<List<Object>> all() {
    List<List<Object>> all = new ArrayList<>();
    for (int row = 0; row < rows.size(); row++) {
      List<Object> line = new ArrayList<>();
      for (int column = 0; column < columns; column++) {
        line.add(at(row, column));
      }
      all.add(line);
    }
    return all;
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public int rowCount() {
    return rows.size();
  }

  @Override
  public int columnCount() {
    return columns;
  }

  @Override
  public Kind kind(int row, int column) {
    Object value = at(row, column);
    if (value instanceof Kind other) {
      return other;
    }
    return value == null
        ? Kind.BLANK
        : value instanceof Double
            ? Kind.NUMBER
            : value instanceof LocalDate ? Kind.DATE : Kind.TEXT;
  }

  @Override
  public double number(int row, int column) {
    Object value = at(row, column);
    return value instanceof Double number
        ? number
        : value instanceof LocalDate date ? date.toEpochDay() - ZERO.toEpochDay() : Double.NaN;
  }

  @Override
  public String text(int row, int column) {
    return at(row, column) instanceof String text ? text : "";
  }

  @Override
  public boolean isFormula(int row, int column) {
    return false;
  }

  @Override
  public List<Area> merged() {
    return merged;
  }
}
