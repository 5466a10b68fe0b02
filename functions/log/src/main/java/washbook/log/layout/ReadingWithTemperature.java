package washbook.log.layout;

import washbook.log.layout.Header.HeaderCell;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;
import washbook.log.words.CellText;
import washbook.log.words.Concept;

/** Reading and temperature in one cell without a unit after it: {@code 1.052/15}. */
final class ReadingWithTemperature {
  private static final int ROWS_SEEN = 50;

  private final Grid grid;

  ReadingWithTemperature(Grid grid) {
    this.grid = grid;
  }

  /** Whether a header speaks of gravity and temperature and the values below are such pairs. */
  boolean standBelow(int headerRow, HeaderCell cell) {
    if (!HeaderRoles.hasScaleOrGravity(cell.meanings())
        && !cell.meanings().contains(Concept.HYDROMETER)) {
      return false;
    }
    int pairs = 0;
    int last = Math.min(grid.rowCount() - 1, headerRow + ROWS_SEEN);
    for (int row = headerRow + 1; row <= last; row++) {
      if (grid.kind(row, cell.column()) == Kind.TEXT) {
        CellText text = CellText.read(grid.text(row, cell.column()));
        boolean pair =
            text.form == CellText.Form.PAIR
                || (text.form == CellText.Form.VALUE && !Double.isNaN(text.temperature));
        pairs += pair ? 1 : 0;
      } else if (grid.kind(row, cell.column()) != Kind.BLANK) {
        return false;
      }
    }
    return pairs >= 2;
  }
}
