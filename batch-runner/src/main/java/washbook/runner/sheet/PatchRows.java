package washbook.runner.sheet;

import java.util.ArrayList;
import java.util.List;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.ColumnPatch;

/** The patched columns of one sheet, from left to right, asked row by row. */
public final class PatchRows {
  /** One patched column and what was found out about it. */
  public static final class Column {
    public final ColumnPatch patch;
    public final String letters;

    /** The header was there before, so the cells below it are ours to change. */
    public boolean isOurs;

    Column(ColumnPatch patch) {
      this.patch = patch;
      this.letters = CellAddress.letters(patch.column());
    }

    public boolean isHeader(int row) {
      return row == patch.headerRow();
    }
  }

  private static final CellContent BLANK = new CellContent(Double.NaN, null, null);

  private final List<Column> columns = new ArrayList<>();
  private final List<Column> active = new ArrayList<>();
  private final List<CellContent> contents = new ArrayList<>();

  public PatchRows(List<ColumnPatch> patches) {
    for (ColumnPatch patch : patches) {
      if (patch.headerRow() < 0 || patch.firstRow() <= patch.headerRow() || patch.column() < 0) {
        throw new IllegalArgumentException("a header must stand above the rows of its column");
      }
      columns.add(new Column(patch));
    }
    columns.sort((a, b) -> Integer.compare(a.patch.column(), b.patch.column()));
  }

  /** The first row from here on that has to do with a patch, or Integer.MAX_VALUE. */
  public int next(int from) {
    int next = Integer.MAX_VALUE;
    for (Column column : columns) {
      ColumnPatch patch = column.patch;
      if (patch.headerRow() >= from) {
        next = Math.min(next, patch.headerRow());
      } else if (patch.lastRow() >= from) {
        next = Math.min(next, Math.max(from, patch.firstRow()));
      }
    }
    return next;
  }

  /** Asks the patches for a row. */
  public void load(int row) {
    active.clear();
    contents.clear();
    for (Column column : columns) {
      ColumnPatch patch = column.patch;
      if (column.isHeader(row)) {
        active.add(column);
        contents.add(new CellContent(Double.NaN, patch.header(), null));
      } else if (patch.owns(row)) {
        active.add(column);
        contents.add(content(patch.cells(), row));
      }
    }
  }

  private static CellContent content(ColumnPatch.Cells cells, int row) {
    double number = cells.number(row);
    String text = cells.text(row);
    String formula = cells.formula(row);
    if (Double.isInfinite(number)) {
      throw new IllegalArgumentException("a cell cannot hold an infinite number");
    }
    if (Double.isNaN(number) && formula == null && (text == null || text.isEmpty())) {
      return BLANK;
    }
    return new CellContent(number, Double.isNaN(number) ? text : null, formula);
  }

  /** How many columns have to do with the loaded row. */
  public int size() {
    return active.size();
  }

  public Column column(int index) {
    return active.get(index);
  }

  public CellContent content(int index) {
    return contents.get(index);
  }

  /** The last column, from 0, that is filled in the loaded row, or -1. */
  public int lastFilled() {
    for (int i = active.size() - 1; i >= 0; i--) {
      if (!contents.get(i).isBlank()) {
        return active.get(i).patch.column();
      }
    }
    return -1;
  }

  /** The columns whose headers have not been found in the sheet, once all rows have gone by. */
  public List<ColumnPatch> added() {
    return columns.stream().filter(column -> !column.isOurs).map(column -> column.patch).toList();
  }

  public int firstColumn() {
    return columns.get(0).patch.column();
  }

  public int lastColumn() {
    return columns.get(columns.size() - 1).patch.column();
  }

  public int firstRow() {
    return columns.stream().mapToInt(column -> column.patch.headerRow()).min().orElse(0);
  }

  public int lastRow() {
    return columns.stream()
        .mapToInt(column -> Math.max(column.patch.headerRow(), column.patch.lastRow()))
        .max()
        .orElse(0);
  }
}
