package washbook.runner.write;

import washbook.log.sheet.CellAddress;

/**
 * A formula of a workbook that has calls of the pack in it.
 *
 * @param place where it stands
 * @param old its text, without prefix or "="; a shared one already moved to its cell
 * @param text what is to stand there; the old text when it stays
 */
record FormulaCell(Place place, String old, String text) {

  /** A cell; rows and columns from 0. */
  record Place(String sheet, int row, int column) {
    @Override
    public String toString() {
      return sheet + "!" + CellAddress.of(row, column);
    }
  }

  boolean isChanged() {
    return !old.equals(text);
  }
}
