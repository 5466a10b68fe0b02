package washbook.runner.read;

import static washbook.runner.markup.XmlScanner.ascii;

import washbook.runner.file.UnusableFileException;
import washbook.runner.markup.XmlScanner;
import washbook.runner.sheet.CellReference;

/**
 * Where in a sheet part a walk over its rows and cells stands. Both may leave out their address
 * (ECMA-376-1:2016, 18.3.1.73 and 18.3.1.4); one that is no address inside a sheet is refused.
 */
public final class XlsxPosition {
  private static final byte[] R = ascii("r");

  private int row = -1;
  private int column = -1;

  /** Row of the current row or cell, from 0. */
  public int row() {
    return row;
  }

  /** Column of the current cell, from 0. */
  public int column() {
    return column;
  }

  /** The current tag begins a row. */
  public void startRow(XmlScanner scanner) throws UnusableFileException {
    column = -1;
    row++;
    if (scanner.attribute(R)) {
      row = CellReference.number(scanner.bytes(), scanner.valueStart(), scanner.valueEnd()) - 1;
    }
    if (row < 0 || row >= CellReference.ROWS) {
      throw scanner.damaged("how.rowOutside");
    }
  }

  /** The current tag begins a cell. */
  public void startCell(XmlScanner scanner) throws UnusableFileException {
    nextCell();
    if (scanner.attribute(R)) {
      goToAddress(scanner);
    }
    check(scanner);
  }

  /** A cell begins; its address, if it has one, comes with its attributes. */
  void nextCell() {
    column++;
  }

  /** The current attribute is the cell's address. */
  void goToAddress(XmlScanner scanner) throws UnusableFileException {
    long reference = CellReference.parse(scanner.bytes(), scanner.valueStart(), scanner.valueEnd());
    if (reference < 0) {
      throw scanner.damaged("how.cellAddress");
    }
    row = CellReference.row(reference);
    column = CellReference.column(reference);
  }

  /** Refuses a cell outside of any sheet, once its attributes are read. */
  void check(XmlScanner scanner) throws UnusableFileException {
    if (row < 0 || column >= CellReference.COLUMNS) {
      throw scanner.damaged("how.cellOutside");
    }
  }
}
