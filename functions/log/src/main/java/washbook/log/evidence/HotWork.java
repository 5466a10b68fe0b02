package washbook.log.evidence;

import washbook.functions.scale.TemperatureUnit;
import washbook.log.LogColumn;
import washbook.log.LogTable;
import washbook.log.Role;
import washbook.log.sheet.Grid;
import washbook.log.words.CellText;

/** Tells temperatures that no ferment has. */
final class HotWork {
  /** Temperatures that a ferment has, °C; warmer than any is hot work. */
  private static final double COLDEST = -3;

  private static final double WARMEST = 46;

  private HotWork() {}

  /** Whether most temperatures are none of a ferment. */
  static boolean isIn(Grid grid, LogTable table) {
    LogColumn column = table.column(Role.TEMPERATURE).orElse(null);
    if (column == null) {
      return false;
    }
    int all = 0;
    int outside = 0;
    for (int row = table.firstRow(); row <= table.lastRow(); row++) {
      double celsius = celsius(grid, row, column);
      if (!Double.isNaN(celsius)) {
        all++;
        outside += celsius < COLDEST || celsius > WARMEST ? 1 : 0;
      }
    }
    return all > 0 && outside > 0.5 * all;
  }

  /** A temperature whose unit the cell or its column says; else NaN. */
  private static double celsius(Grid grid, int row, LogColumn column) {
    if (grid.kind(row, column.column()) == Grid.Kind.TEXT) {
      CellText cell = CellText.read(grid.text(row, column.column()));
      if (cell.form == CellText.Form.TEMPERATURE) {
        return cell.temperatureUnit.toCelsius(cell.temperature);
      }
    }
    double value = CellText.number(grid, row, column.column());
    return switch (column.unit()) {
      case "C" -> value;
      case "F" -> TemperatureUnit.F.toCelsius(value);
      default -> Double.NaN;
    };
  }
}
