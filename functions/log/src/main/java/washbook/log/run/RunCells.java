package washbook.log.run;

import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import washbook.functions.scale.TemperatureUnit;
import washbook.log.sheet.Grid;
import washbook.log.words.CellText;
import washbook.log.words.Ditto;

/** The figures in a table of jars, with the units that stand in their cells. */
final class RunCells {
  private static final double WARMEST_SPIRIT = 40;

  /** Spirit without water is 75 degrees over proof. */
  private static final double MOST_PROOF = 76;

  private static final Pattern THOUSANDS = Pattern.compile("[1-9]\\d?[.,]\\d{3}( ?(?i:ml))?");

  private static final Pattern PERCENT =
      Pattern.compile("(?i)\\s*(?:(?:%|vol)[-.\\s%vol]*|%.{0,8}|\u00b0|grad)$");

  /** The degree that is a percent by volume; behind another figure it is short for glass. */
  private static final String DEGREES_OF_VOLUME = "gl";

  /** Degrees over or under proof, which is 100. */
  private static final Pattern OVER_OR_UNDER =
      Pattern.compile("(?i)(\\d+(?:[.,]\\d+)?)\\s*\u00b0?\\s*([ou])\\.?\\s?p\\.?");

  /** As 1/4 l or 73 1/2. */
  private static final Pattern FRACTION =
      Pattern.compile("(?:(\\d{1,2})\\s+)?([1-9])/([2-9])\\s*(\\p{L}{0,6}|%)\\.?");

  private RunCells() {}

  /** Whether a cell tells a strength by how far it is over or under proof. */
  static boolean isFromProof(Grid grid, int row, int column) {
    return grid.kind(row, column) == Grid.Kind.TEXT
        && OVER_OR_UNDER.matcher(grid.text(row, column).strip()).matches();
  }

  /** The temperature behind a strength in one cell, \u00b0C; NaN for none. */
  static double temperatureOfStrength(Grid grid, int row, int column) {
    if (grid.kind(row, column) != Grid.Kind.TEXT) {
      return Double.NaN;
    }
    double celsius = CellText.read(grid.text(row, column)).celsius();
    return celsius >= 0 && celsius <= WARMEST_SPIRIT ? celsius : Double.NaN;
  }

  /** The number in a cell, also one with % behind it; NaN when there is none. */
  static double number(Grid grid, int row, int column) {
    double number = CellText.number(grid, row, column);
    if (!Double.isNaN(number) && !isFromProof(grid, row, column)
        || grid.kind(row, column) != Grid.Kind.TEXT) {
      return number;
    }
    String text = grid.text(row, column).strip();
    if (text.chars().noneMatch(c -> Character.isDigit(c) || c > '~')) {
      return Double.NaN;
    }
    Matcher proof = OVER_OR_UNDER.matcher(text);
    if (proof.matches()) {
      double degrees = CellText.read(proof.group(1)).value;
      if (degrees > MOST_PROOF) {
        return Double.NaN;
      }
      return proof.group(2).equalsIgnoreCase("o") ? 100 + degrees : 100 - degrees;
    }
    Matcher fraction = FRACTION.matcher(text);
    if (fraction.matches() && (fraction.group(1) != null || !fraction.group(4).isEmpty())) {
      double whole = fraction.group(1) == null ? 0 : Double.parseDouble(fraction.group(1));
      double parts = Double.parseDouble(fraction.group(3));
      return whole + Double.parseDouble(fraction.group(2)) / parts;
    }
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

  /** Whether a text such as {@code 1,000} has three digits behind its only mark, as no mL have. */
  static boolean hasMarkOfThousands(Grid grid, int row, int column) {
    return grid.kind(row, column) == Grid.Kind.TEXT
        && THOUSANDS.matcher(grid.text(row, column).strip()).matches();
  }

  /** The volume's unit that stands in a cell. */
  static Optional<RunVolumeUnit> volumeUnit(Grid grid, int row, int column) {
    if (grid.kind(row, column) != Grid.Kind.TEXT) {
      return Optional.empty();
    }
    Set<RunWord> words = RunWords.in(unit(grid.text(row, column)));
    for (RunVolumeUnit unit : RunVolumeUnit.values()) {
      if (words.contains(unit.word()) && unit.word() != RunWord.GALLON) {
        return Optional.of(unit);
      }
    }
    return Optional.empty();
  }

  private static String unit(String text) {
    Matcher fraction = FRACTION.matcher(text.strip());
    return fraction.matches() ? fraction.group(4) : CellText.read(text).unit;
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
    if (isFromProof(grid, row, column)) {
      return !allowed.contains(RunWord.PROOF);
    }
    String unit = unit(grid.text(row, column));
    if (allowed.contains(RunWord.STRENGTH) && unit.equals(DEGREES_OF_VOLUME)) {
      return false;
    }
    return !unit.isEmpty() && RunWords.in(unit).stream().noneMatch(allowed::contains);
  }
}
