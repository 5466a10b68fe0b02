package washbook.log.run;

import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import washbook.functions.scale.TemperatureUnit;
import washbook.log.sheet.Grid;
import washbook.log.words.CellText;
import washbook.log.words.Ditto;

/** The figures in a table of jars, with the units that stand in their cells. */
final class RunCells {
  private static final Pattern PERCENT =
      Pattern.compile("(?i)\\s*(?:(?:%|vol)[-.\\s%vol]*|%.{0,8}|\u00b0|grad)$");

  private RunCells() {}

  /** The number in a cell, also one with % behind it; NaN when there is none. */
  static double number(Grid grid, int row, int column) {
    double number = CellText.number(grid, row, column);
    if (!Double.isNaN(number) || grid.kind(row, column) != Grid.Kind.TEXT) {
      return number;
    }
    String text = grid.text(row, column).strip();
    String bare = PERCENT.matcher(text).replaceFirst("");
    return bare.equals(text) ? Double.NaN : CellText.read(bare).value;
  }

  /** The row whose cell holds for a row: the one above where a cell only repeats it. */
  static int source(Grid grid, int row, int column) {
    int source = row;
    while (source > 0 && isDitto(grid, source, column)) {
      source--;
    }
    return source;
  }

  static boolean isDitto(Grid grid, int row, int column) {
    return grid.kind(row, column) == Grid.Kind.TEXT && Ditto.isMark(grid.text(row, column));
  }

  /** Whether a cell says that its number is not exact. */
  static boolean isAbout(Grid grid, int row, int column) {
    return grid.kind(row, column) == Grid.Kind.TEXT
        && CellText.read(grid.text(row, column)).isAbout;
  }

  /** The volume's unit that stands in a cell. */
  static Optional<RunVolumeUnit> volumeUnit(Grid grid, int row, int column) {
    if (grid.kind(row, column) != Grid.Kind.TEXT) {
      return Optional.empty();
    }
    Set<RunWord> words = RunWords.in(CellText.read(grid.text(row, column)).unit);
    for (RunVolumeUnit unit : RunVolumeUnit.values()) {
      if (words.contains(unit.word()) && unit.word() != RunWord.GALLON) {
        return Optional.of(unit);
      }
    }
    return Optional.empty();
  }

  /** The unit of a temperature that stands in a cell. */
  static Optional<TemperatureUnit> temperatureUnit(Grid grid, int row, int column) {
    if (grid.kind(row, column) != Grid.Kind.TEXT) {
      return Optional.empty();
    }
    CellText cell = CellText.read(grid.text(row, column));
    return cell.form == CellText.Form.TEMPERATURE
        ? Optional.of(cell.temperatureUnit)
        : Optional.empty();
  }

  /** Whether a text has a word after its number that is no unit of what it should be. */
  static boolean hasOtherUnit(Grid grid, int row, int column, Set<RunWord> allowed) {
    if (grid.kind(row, column) != Grid.Kind.TEXT) {
      return false;
    }
    String unit = CellText.read(grid.text(row, column)).unit;
    return !unit.isEmpty() && RunWords.in(unit).stream().noneMatch(allowed::contains);
  }
}
