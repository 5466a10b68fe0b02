package washbook.log.sheet;

/**
 * One computed column to be put into a sheet: a header cell and one cell a row below it. Writers
 * ask for the cells in ascending order, once each; nothing outside the stated rows is touched.
 *
 * @param column where it goes, from 0
 * @param headerRow row of the header cell, from 0
 * @param header text of the header cell
 * @param headerBefore text of the header of ours that it replaces; the same where there is none
 * @param firstRow first row that belongs to the table
 * @param lastRow last row that belongs to the table
 * @param decimals decimal places that a reader wants to see; -1 for text columns
 * @param cells the content, asked with the row number
 * @param cut letters of the longest text left of it that ran on over its cells; 0 for none
 */
public record ColumnPatch(
    int column,
    int headerRow,
    String header,
    String headerBefore,
    int firstRow,
    int lastRow,
    int decimals,
    Cells cells,
    int cut) {

  /** A column that cuts no text off. */
  public ColumnPatch(
      int column,
      int headerRow,
      String header,
      String headerBefore,
      int firstRow,
      int lastRow,
      int decimals,
      Cells cells) {
    this(column, headerRow, header, headerBefore, firstRow, lastRow, decimals, cells, 0);
  }

  /** A column whose header does not change. */
  public ColumnPatch(
      int column,
      int headerRow,
      String header,
      int firstRow,
      int lastRow,
      int decimals,
      Cells cells) {
    this(column, headerRow, header, header, firstRow, lastRow, decimals, cells);
  }

  /** The same column, which cuts this many letters off. */
  public ColumnPatch cutting(int letters) {
    return new ColumnPatch(
        column, headerRow, header, headerBefore, firstRow, lastRow, decimals, cells, letters);
  }

  /** Whether a row below the header is one that this column fills. */
  public boolean owns(int row) {
    return row >= firstRow && row <= lastRow && cells.owns(row);
  }

  /** The decimal places that a reader wants to see in a row. */
  public int decimals(int row) {
    return cells.decimals(row, decimals);
  }

  /** Whether a header's text, null for none, says that we have written the column before. */
  public boolean isOurs(String text) {
    if (text == null) {
      return false;
    }
    String stripped = text.strip();
    return stripped.equals(header) || stripped.equals(headerBefore);
  }

  /** The cells of one computed column. All three answers for a row together are its content. */
  public interface Cells {
    /** The number, or NaN when the cell holds none. */
    double number(int row);

    /** The text, or null when the cell holds none. A cell with neither is left blank. */
    String text(int row);

    /** The formula with the sheet's own A1 references, without "=", or null for a plain value. */
    default String formula(int row) {
      return null;
    }

    /** Whether a row between the first and the last is one of these; others are not touched. */
    default boolean owns(int row) {
      return true;
    }

    /** Whether the texts name the rows, so that they should be read whole. */
    default boolean nameRows() {
      return false;
    }

    /** The decimal places of a row's number, where they are not the column's usual ones. */
    default int decimals(int row, int usual) {
      return usual;
    }
  }
}
