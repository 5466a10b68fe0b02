package washbook.log.sheet;

import java.util.List;

/**
 * A sheet whose log runs across, turned so that each of its columns becomes a row. Above the turned
 * block stands what stands above it in the sheet, and below it, after a blank row, what stands
 * below. Addresses remain those of the sheet.
 */
public final class AcrossGrid implements Grid {
  private final Grid sheet;
  private final int label;
  private final int width;
  private final int[] block;
  private final int[] below;
  private final int headingRow;
  private final int firstNewRow;

  /**
   * @param label the column with the names of the rows, from 0
   * @param lastColumn the last column of the block
   * @param block the rows of the block from top to bottom, those that an earlier run has written
   *     with them
   * @param below the other rows below its first one
   * @param headingRow the row above those of ours, whether it is there already or not
   * @param firstNewRow where the next row of ours goes
   */
  public AcrossGrid(
      Grid sheet,
      int label,
      int lastColumn,
      int[] block,
      int[] below,
      int headingRow,
      int firstNewRow) {
    this.sheet = sheet;
    this.label = label;
    this.width = lastColumn - label + 1;
    this.block = block.clone();
    this.below = below.clone();
    this.headingRow = headingRow;
    this.firstNewRow = firstNewRow;
  }

  /** The row above those of ours. */
  public int headingRow() {
    return headingRow;
  }

  /** The area of the block in the sheet, as A3:F40; the rows of ours are no part of it. */
  public String range() {
    int last = block[0];
    for (int row : block) {
      last = row < headingRow ? row : last;
    }
    return CellAddress.of(block[0], label) + ":" + CellAddress.of(last, label + width - 1);
  }

  /** The row of the turned block's headers. */
  public int headerRow() {
    return block[0];
  }

  /** The column of the sheet that became a row of the turned block. */
  public int sheetColumn(int row) {
    return label + row - block[0];
  }

  /** The row of the sheet that became a column of the turned block, or will be that. */
  public int sheetRow(int column) {
    return column < block.length ? block[column] : firstNewRow + column - block.length;
  }

  /** The column that a row of the sheet became; -1 for a row outside the block. */
  public int column(int sheetRow) {
    for (int column = 0; column < block.length; column++) {
      if (block[column] == sheetRow) {
        return column;
      }
    }
    return -1;
  }

  private boolean isTurned(int row) {
    return row >= block[0] && row < block[0] + width;
  }

  /** The row of the sheet that a row outside the turned block is; -1 for the blank one. */
  private int outside(int row) {
    int after = row - block[0] - width - 1;
    return row < block[0] ? row : after < 0 || after >= below.length ? -1 : below[after];
  }

  @Override
  public String address(int row, int column) {
    return isTurned(row)
        ? CellAddress.of(sheetRow(column), sheetColumn(row))
        : CellAddress.of(Math.max(outside(row), 0), column);
  }

  @Override
  public String name() {
    return sheet.name();
  }

  @Override
  public String fileName() {
    return sheet.fileName();
  }

  @Override
  public int rowCount() {
    return block[0] + width + (below.length == 0 ? 0 : 1 + below.length);
  }

  @Override
  public int columnCount() {
    return Math.max(sheet.columnCount(), block.length);
  }

  @Override
  public Kind kind(int row, int column) {
    if (isTurned(row)) {
      return column < block.length ? sheet.kind(block[column], sheetColumn(row)) : Kind.BLANK;
    }
    int at = outside(row);
    return at < 0 ? Kind.BLANK : sheet.kind(at, column);
  }

  @Override
  public double number(int row, int column) {
    if (isTurned(row)) {
      return column < block.length ? sheet.number(block[column], sheetColumn(row)) : Double.NaN;
    }
    int at = outside(row);
    return at < 0 ? Double.NaN : sheet.number(at, column);
  }

  @Override
  public String text(int row, int column) {
    if (isTurned(row)) {
      return column < block.length ? sheet.text(block[column], sheetColumn(row)) : "";
    }
    int at = outside(row);
    return at < 0 ? "" : sheet.text(at, column);
  }

  @Override
  public boolean isFormula(int row, int column) {
    if (isTurned(row)) {
      return column < block.length && sheet.isFormula(block[column], sheetColumn(row));
    }
    int at = outside(row);
    return at >= 0 && sheet.isFormula(at, column);
  }

  /** None: a block with merged cells is not turned, and what is merged outside is text. */
  @Override
  public List<Area> merged() {
    return List.of();
  }
}
