package washbook.log.reading;

import java.util.Optional;
import java.util.Set;
import washbook.functions.scale.TemperatureUnit;
import washbook.log.LogColumn;
import washbook.log.LogTable;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;
import washbook.log.words.CellText;
import washbook.log.words.Concept;
import washbook.log.words.Vocabulary;

/** What the second number of {@code 1.052/15} is. */
final class TemperatureBesideReading {
  /** Up to here a temperature may be in °C, from here on only in °F. */
  private static final double MOST_CELSIUS = 60;

  /** Below it a temperature of a wash is in °C. */
  private static final double LEAST_FAHRENHEIT = 32;

  private TemperatureBesideReading() {}

  /** The unit of the temperatures in a table's column of pairs, where header or values say it. */
  static Optional<TemperatureUnit> unit(Grid grid, LogTable table, LogColumn use) {
    Set<Concept> m = Vocabulary.meanings(use.header());
    if (m.contains(Concept.C) != m.contains(Concept.F)) {
      return Optional.of(m.contains(Concept.C) ? TemperatureUnit.C : TemperatureUnit.F);
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
    if (highest <= MOST_CELSIUS && lowest < LEAST_FAHRENHEIT) {
      return Optional.of(TemperatureUnit.C);
    }
    return lowest > MOST_CELSIUS ? Optional.of(TemperatureUnit.F) : Optional.empty();
  }

  /** Whether what follows the readings is a temperature: the header or the cell says so. */
  static boolean isTemperature(LogColumn use, CellText cell) {
    Set<Concept> m = Vocabulary.meanings(use.header());
    return cell.marked
        || m.contains(Concept.TEMPERATURE)
        || m.contains(Concept.C)
        || m.contains(Concept.F);
  }
}
