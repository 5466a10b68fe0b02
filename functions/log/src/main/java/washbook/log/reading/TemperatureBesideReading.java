package washbook.log.reading;

import java.util.Set;
import washbook.log.LogColumn;
import washbook.log.LogTable;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;
import washbook.log.words.CellText;
import washbook.log.words.Concept;
import washbook.log.words.Vocabulary;

/** What the second number of {@code 1.052/15} is. */
final class TemperatureBesideReading {
  /** How the unit of the temperatures of a column of pairs is settled. */
  enum Unit {
    C,
    F,
    /** Neither the header nor the values say. */
    OPEN
  }

  private TemperatureBesideReading() {}

  /** The unit of the temperatures in a table's column of pairs. */
  static Unit unit(Grid grid, LogTable table, LogColumn use) {
    Set<Concept> m = Vocabulary.meanings(use.header());
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
  static boolean isTemperature(LogColumn use, CellText cell) {
    Set<Concept> m = Vocabulary.meanings(use.header());
    return cell.marked
        || m.contains(Concept.TEMPERATURE)
        || m.contains(Concept.C)
        || m.contains(Concept.F);
  }
}
