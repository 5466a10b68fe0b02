package washbook.log.run;

import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import washbook.functions.scale.TemperatureUnit;
import washbook.log.sheet.Grid;

/** Which columns of a table of jars hold temperatures, of what, and in which unit. */
final class RunTemperatureColumns {
  /** Warmer than any spirit that is measured; the vapour at a head is hotter, °C. */
  private static final double WARMEST_SPIRIT = 45;

  /** What may head temperatures that belong to the column before. */
  private static final Pattern BARE = Pattern.compile("[CF]|@|at|bei|\u00e0|a|bij|by|op");

  /** Cooler is no spirit that anybody reads, and one run's differs by no more, °C or °F. */
  private static final double COOLEST = 8;

  private static final double SPREAD = 20;

  private final Grid grid;
  private final RunHeader header;
  private final RunMap said;
  private final RunFigures figures;
  private final Predicate<RunHeader.Cell> strength;

  /**
   * @param strength whether a cell heads strengths
   */
  RunTemperatureColumns(
      Grid grid,
      RunHeader header,
      RunMap said,
      RunFigures figures,
      Predicate<RunHeader.Cell> strength) {
    this.grid = grid;
    this.header = header;
    this.said = said;
    this.figures = figures;
    this.strength = strength;
  }

  /** By its header, by the units in its cells, or as degrees that no strength has. */
  boolean isOne(RunHeader.Cell cell) {
    if (cell.isTemperature() || isBareTemperature(cell)) {
      return true;
    }
    if (cell.has(RunWord.VOLUME) || cell.has(RunWord.STRENGTH) || cell.isPureAlcohol()) {
      return false;
    }
    int with = 0;
    int numbers = 0;
    for (int row = figures.firstRow(); row < figures.end(); row++) {
      boolean number = !Double.isNaN(RunCells.number(grid, row, cell.column()));
      numbers += number ? 1 : 0;
      with += number && RunCells.temperatureUnit(grid, row, cell.column()).isPresent() ? 1 : 0;
    }
    boolean named =
        header.cells().stream().anyMatch(c -> c.has(RunWord.STRENGTH) || c.has(RunWord.PROOF));
    boolean degrees =
        cell.has(RunWord.DEGREE) && named && numbers > 0 && figures.max(cell.column()) <= 40;
    return degrees || with >= 2 && with * 2 > numbers;
  }

  /** Whether only a letter or a word as "at" heads figures of spirit right beside a strength. */
  private boolean isBareTemperature(RunHeader.Cell cell) {
    return BARE.matcher(cell.text()).matches()
        && figures.isMostlyNumbers(cell.column())
        && figures.min(cell.column()) > (cell.has(RunWord.F) ? 45 : COOLEST)
        && figures.max(cell.column()) - figures.min(cell.column()) <= SPREAD
        && figures.max(cell.column()) <= (cell.has(RunWord.F) ? 90 : 40)
        && header.cells().stream()
            .anyMatch(c -> c.column() == cell.column() - 1 && strength.test(c));
  }

  boolean isOfSpirit(RunHeader.Cell cell) {
    return isOne(cell)
        && !cell.has(RunWord.HEAD)
        && !cell.has(RunWord.ELSEWHERE)
        && figures.isMostlyNumbers(cell.column())
        && (cell.has(RunWord.F) || figures.min(cell.column()) < WARMEST_SPIRIT);
  }

  /** Whether a column holds temperatures of spirit in °C, which those of vapour are far above. */
  boolean isCool(RunHeader.Cell cell) {
    return isOfSpirit(cell) && !cell.has(RunWord.F) && figures.max(cell.column()) <= 40;
  }

  /** C or F by header and values; "" where they do not settle it. */
  String unit(RunHeader.Cell cell) {
    RunMap.Use use = said.columns().get(cell.column());
    if (use != null && !use.unit().isEmpty()) {
      return use.unit();
    }
    double low = figures.min(cell.column());
    double high = figures.max(cell.column());
    for (int row = figures.firstRow(); row < figures.end(); row++) {
      Optional<TemperatureUnit> own = RunCells.temperatureUnit(grid, row, cell.column());
      if (own.isPresent() && cell.has(RunWord.C) == cell.has(RunWord.F)) {
        return own.get().name();
      }
    }
    boolean celsius = low >= -5 && high <= 40;
    boolean fahrenheit = low > 40 && high <= 90;
    if (cell.has(RunWord.C) != cell.has(RunWord.F)) {
      return cell.has(RunWord.C) ? (low < 60 ? "C" : "") : high > 40 ? "F" : "";
    }
    return celsius ? "C" : fahrenheit && high - low < 25 ? "F" : "";
  }
}
