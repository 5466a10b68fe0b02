package washbook.log.run;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import washbook.log.LogColumn;
import washbook.log.Role;
import washbook.log.StillRun;
import washbook.log.StillRun.Jar;
import washbook.log.sheet.Grid;

/** What holds for single jars: the running total before, the state of the strength. */
final class RunJars {
  /** A strength that falls by so much and comes back is a slip of the pen, % vol. */
  private static final double SLIP = 20;

  /** Strengths fall: one that rises by so much and comes back is a slip as well, % vol. */
  private static final double SPIKE = 8;

  private final Grid grid;
  private final RunColumns columns;
  private final RunRows rows;
  private final StrengthStates states;
  private final RunStrengthUnit unit;
  private final Map<Integer, Jar> jars = new HashMap<>();

  RunJars(Grid grid, RunColumns columns, RunRows rows, StrengthStates states) {
    this.grid = grid;
    this.columns = columns;
    this.rows = rows;
    this.states = states;
    this.unit =
        columns.all().stream()
            .filter(c -> c.column() == columns.strength)
            .map(LogColumn::unit)
            .map(RunStrengthUnit::of)
            .findFirst()
            .orElse(RunStrengthUnit.ABV);
  }

  Map<Integer, Jar> of(RunParts split, RunTemperatures told, boolean corrected) {
    double last = Double.NaN;
    for (int p = 0; p < split.parts.size(); p++) {
      StillRun.Part part = split.parts.get(p);
      double ofRun = ofRun(part, told.of(split.labels.get(p)));
      List<Integer> here = Arrays.stream(part.rows()).boxed().toList();
      List<Jar.Strength> strengths = states.of(here, columns.strength, corrected);
      for (int i = 0; i < here.size(); i++) {
        int row = here.get(i);
        Jar.Strength strength =
            isSlip(here, i) || isSpike(here, i)
                ? Jar.Strength.UNFIT
                : hasOnlyOwn(row) ? Jar.Strength.OWN_TRUE : strengths.get(i);
        Jar volume = columns.isTotal ? total(here, i, last) : Jar.LIKE_ALL;
        Jar jar = new Jar(strength, temperature(row, ofRun), volume.volume(), volume.before());
        if (!jar.equals(Jar.LIKE_ALL)) {
          jars.put(row, jar);
        }
      }
      last = total(here.get(here.size() - 1));
    }
    return Map.copyOf(jars);
  }

  /** What a line says of one run, or a note of its first jar says of all its jars; else NaN. */
  private double ofRun(StillRun.Part part, double told) {
    boolean none = Arrays.stream(part.rows()).allMatch(row -> Double.isNaN(ownTemperature(row)));
    return Double.isNaN(told) && none ? states.temperatureOfAll(part.rows()[0]) : told;
  }

  private double ownTemperature(int row) {
    return columns.temperature < 0 ? Double.NaN : RunCells.number(grid, row, columns.temperature);
  }

  /** Of a row without a temperature of its own in the table. */
  private double temperature(int row, double ofRun) {
    boolean own =
        columns.temperature >= 0 && grid.kind(row, columns.temperature) != Grid.Kind.BLANK;
    double beside = RunCells.temperatureOfStrength(grid, row, columns.strength);
    if (!own && !Double.isNaN(beside)) {
      return beside;
    }
    double noted = own ? Double.NaN : states.temperature(row);
    return own || !Double.isNaN(noted) ? noted : ofRun;
  }

  /** Strength in % vol; NaN where a row has none. */
  double strength(int row) {
    boolean other =
        RunCells.hasOtherUnit(
            grid, row, columns.strength, JarRows.units(Role.STRENGTH, unit.isProof()));
    return other ? Double.NaN : unit.toPercent(RunCells.number(grid, row, columns.strength));
  }

  /** Whether a strength falls far below that before and the one after is back. */
  boolean isSlip(List<Integer> here, int index) {
    if (index == 0 || index + 1 >= here.size()) {
      return false;
    }
    double before = strength(here.get(index - 1));
    double strength = strength(here.get(index));
    double after = strength(here.get(index + 1));
    return before - strength > SLIP
        && after - strength > SLIP
        && after <= before + 1
        && !columns.isFirstJar(rows, here.get(index + 1));
  }

  /** Whether a strength lies far above that before and the one after is back below. */
  private boolean isSpike(List<Integer> here, int index) {
    if (index < 2 || index + 1 >= here.size()) {
      return false;
    }
    double before = strength(here.get(index - 1));
    double strength = strength(here.get(index));
    return strength - before > SPIKE && strength(here.get(index + 1)) <= before;
  }

  /** Whether only the log's own strength at 20 °C stands in a row. */
  private boolean hasOnlyOwn(int row) {
    return grid.kind(row, columns.strength) == Grid.Kind.BLANK
        && columns.all().stream()
            .filter(c -> c.role() == Role.OWN_TRUE_STRENGTH)
            .findFirst()
            .filter(c -> !Double.isNaN(RunCells.number(grid, row, c.column())))
            .isPresent();
  }

  private double total(int row) {
    double shown = RunCells.number(grid, row, columns.volume);
    boolean other =
        RunCells.hasOtherUnit(grid, row, columns.volume, JarRows.units(Role.VOLUME, false));
    return other
        ? Double.NaN
        : RunCells.volumeUnit(grid, row, columns.volume)
            .or(() -> RunVolumeUnit.of(columns.volumeUnit))
            .map(u -> u.toLitres(shown))
            .orElse(shown);
  }

  /**
   * How the total of a jar is lessened. Where totals do not grow, either of the two may be wrong;
   * only one that is less than the two before is wrong itself.
   *
   * @param last total of the run above, NaN for none
   */
  private Jar total(List<Integer> here, int index, double last) {
    double total = total(here.get(index));
    if (index == 0) {
      return first(here, last);
    }
    double before = total(here.get(index - 1));
    double earlier = index > 1 ? total(here.get(index - 2)) : 0;
    double next = index + 1 < here.size() ? total(here.get(index + 1)) : Double.NaN;
    boolean grown = total > before && !(before <= earlier);
    boolean fallsNext = next <= total && !(next <= before);
    return grown && !fallsNext ? since(here.get(index - 1)) : untold();
  }

  /** The first of a run: from a start reading, or from nothing. */
  private Jar first(List<Integer> here, double last) {
    double total = total(here.get(0));
    double next = here.size() > 1 ? total(here.get(1)) : Double.NaN;
    boolean falls = next <= total;
    if (rows.start >= 0 && rows.start < here.get(0) && Double.isNaN(last)) {
      return total > total(rows.start) && !falls ? since(rows.start) : untold();
    }
    double end = total(here.get(here.size() - 1));
    boolean counter = here.size() > 3 && total > end - total;
    boolean goesOn = total >= last;
    return falls || counter || goesOn ? untold() : Jar.LIKE_ALL;
  }

  private static Jar since(int row) {
    return new Jar(Jar.Strength.LIKE_ALL, Double.NaN, Jar.Volume.TOTAL, row);
  }

  private static Jar untold() {
    return new Jar(Jar.Strength.LIKE_ALL, Double.NaN, Jar.Volume.UNTOLD, -1);
  }
}
