package washbook.log.sheet;

import java.util.List;

/**
 * One sheet as a reader hands it over. Rows and columns count from 0. Every place outside the used
 * area is blank.
 */
public interface Grid {
  /** Columns that are looked at; what stands further right belongs to no log. */
  int MOST_COLUMNS = 2048;

  /** What a cell holds. A formula counts as its stored result. */
  enum Kind {
    BLANK,
    NUMBER,
    /** A number shown as a date or time: days since 1899-12-30. */
    DATE,
    TEXT,
    LOGICAL,
    /** An error, or a formula without a stored result. */
    ERROR
  }

  /** A merged area, all ends included. */
  record Area(int firstRow, int firstColumn, int lastRow, int lastColumn) {}

  /** The sheet's name. */
  String name();

  /** The name of the workbook's file without its ending; "" where the sheet's name is that. */
  default String fileName() {
    return "";
  }

  /** One past the last used row. */
  int rowCount();

  /** One past the last used column. */
  int columnCount();

  /**
   * One past the last used column of a row, or anything between that and {@link #columnCount()}.
   * Readers that know it save the search of wide and empty sheets.
   */
  default int columnsUsed(int row) {
    return columnCount();
  }

  /** How many cells of a row hold something. */
  default int filled(int row) {
    int filled = 0;
    for (int column = 0; column < columnsUsed(row); column++) {
      filled += kind(row, column) == Kind.BLANK ? 0 : 1;
    }
    return filled;
  }

  /** The address by which a person finds a cell. */
  default String address(int row, int column) {
    return CellAddress.of(row, column);
  }

  Kind kind(int row, int column);

  /** The number of a NUMBER, DATE or LOGICAL cell; NaN for every other kind. */
  double number(int row, int column);

  /** The text of a TEXT cell; "" for every other kind. */
  String text(int row, int column);

  /** Whether the cell's content is a formula. */
  boolean isFormula(int row, int column);

  /**
   * Whether a cell's text wraps or is made smaller, and so never runs on over blank neighbours, as
   * far as the reader knows.
   */
  default boolean isKeptInside(int row, int column) {
    return false;
  }

  List<Area> merged();

  /** The cells that charts, pictures and other drawings lie over, as far as the reader knows. */
  default List<Area> drawings() {
    return List.of();
  }
}
