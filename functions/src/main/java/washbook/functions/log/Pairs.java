package washbook.functions.log;

import java.util.Set;
import washbook.functions.log.Grid.Kind;
import washbook.functions.log.Header.HeaderCell;

/** Reading and temperature in one cell without a unit behind: {@code 1.052/15}. */
final class Pairs {
  private static final int ROWS_SEEN = 50;

  /** How the unit of the temperatures of a column of pairs is settled. */
  enum Unit {
    C,
    F,
    /** Neither the header nor the values say. */
    OPEN
  }

  private final Grid grid;

  Pairs(Grid grid) {
    this.grid = grid;
  }

  /** Whether a header speaks of gravity and temperature and the values below are such pairs. */
  boolean standBelow(int headerRow, HeaderCell cell) {
    if (!HeaderJudge.hasScaleOrGravity(cell.meanings())
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

  /** The unit of the temperatures in a table's column of pairs. */
  static Unit unit(Grid grid, LogTable table, ColumnUse use) {
    Set<Concept> m = Words.meanings(use.header());
    if (m.contains(Concept.C) != m.contains(Concept.F)) {
      return m.contains(Concept.C) ? Unit.C : Unit.F;
    }
    double lowest = Double.POSITIVE_INFINITY;
    double highest = Double.NEGATIVE_INFINITY;
    for (int row = table.firstRow(); row <= table.lastRow(); row++) {
      if (grid.kind(row, use.column()) == Kind.TEXT) {
        CellText text = CellText.read(grid.text(row, use.column()));
        if (text.form == CellText.Form.PAIR) {
          lowest = Math.min(lowest, text.temperature);
          highest = Math.max(highest, text.temperature);
        }
      }
    }
    return highest <= 60 && lowest < 32 ? Unit.C : lowest > 60 ? Unit.F : Unit.OPEN;
  }

  /** Whether what stands behind the readings is a temperature: the header or the cell says so. */
  static boolean isTemperature(ColumnUse use, CellText cell) {
    Set<Concept> m = Words.meanings(use.header());
    return cell.marked
        || m.contains(Concept.TEMPERATURE)
        || m.contains(Concept.C)
        || m.contains(Concept.F);
  }
}
