package washbook.log.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import washbook.functions.scale.TemperatureUnit;
import washbook.log.Doubts;
import washbook.log.LogColumn;
import washbook.log.MapAnswer;
import washbook.log.Role;
import washbook.log.language.Message;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;

/** Which column of a table of jars holds what, in which unit; what is open becomes a question. */
final class RunColumns {
  /** Warmer than any spirit that is measured; the vapour at a head is hotter, °C. */
  private static final double WARMEST_SPIRIT = 45;

  private static final int ROWS_READ = 200;

  private final Grid grid;
  private final RunHeader header;
  private final RunMap said;
  private final Map<Integer, LogColumn> uses = new TreeMap<>();
  private final Doubts doubts;
  private final int end;
  private final RunFigures figures;

  /** Columns for the rows to be found by; -1 where there is none. */
  int volume = -1;

  int strength = -1;
  int temperature = -1;

  /** Whether the column of strengths says that it holds true ones. */
  boolean corrected;

  /** Whether the column of volumes says that it holds those at 20 °C. */
  boolean volumesAt20;

  boolean settled = true;
  private final List<Runnable> questions = new ArrayList<>();

  RunColumns(Grid grid, RunHeader header, int end, RunMap said, Doubts doubts) {
    this.grid = grid;
    this.header = header;
    this.end = Math.min(end, header.bottomRow() + ROWS_READ);
    this.figures = new RunFigures(grid, header.bottomRow() + 1, this.end);
    this.said = said;
    this.doubts = doubts;
    header
        .cells()
        .forEach(
            c ->
                put(
                    c,
                    Role.OTHER,
                    "",
                    c.text().isEmpty() ? Message.NONE : Message.of("col.run.none")));
    others();
    strengths();
    temperatures();
    volumes();
    said.columns().forEach(this::put);
  }

  /** Asks what was left open; not before it is known that the table is a run. */
  void ask() {
    questions.forEach(Runnable::run);
  }

  List<LogColumn> all() {
    return List.copyOf(uses.values());
  }

  private List<RunHeader.Cell> saidOr(Role role, List<RunHeader.Cell> found) {
    List<RunHeader.Cell> named =
        header.cells().stream()
            .filter(c -> said.columns().containsKey(c.column()))
            .filter(c -> said.columns().get(c.column()).role() == role)
            .toList();
    return named.isEmpty()
        ? found.stream().filter(c -> !said.columns().containsKey(c.column())).toList()
        : named;
  }

  private void put(int column, RunMap.Use use) {
    if (uses.containsKey(column)) {
      LogColumn before = uses.get(column);
      String unit =
          use.unit().isEmpty() && before.role() == use.role() ? before.unit() : use.unit();
      uses.put(
          column, new LogColumn(column, before.header(), use.role(), unit, Message.of("col.map")));
    }
  }

  private void put(RunHeader.Cell cell, Role role, String unit, Message why) {
    uses.put(cell.column(), new LogColumn(cell.column(), cell.text(), role, unit, why));
  }

  private void others() {
    for (RunHeader.Cell cell : header.cells()) {
      if (cell.has(RunWord.JAR) || cell.has(RunWord.BOTTLE)) {
        put(cell, Role.JAR, "", Message.of("col.run.jar"));
      } else if (cell.has(RunWord.TIME)) {
        put(cell, Role.TIME, "", Message.of("col.run.header"));
      } else if (cell.has(RunWord.DATE)) {
        put(cell, Role.DATE, "", Message.of("col.run.header"));
      }
      if (cell.isPureAlcohol()) {
        put(cell, Role.OWN_PURE_ALCOHOL, "", Message.of("col.run.own"));
      }
      if (figures.numbers(cell.column()).length == 0
          && RunCuts.isColumn(grid, header.bottomRow() + 1, end, cell)) {
        put(cell, Role.CUT, "", Message.of("col.run.cuts"));
      }
    }
  }

  private void strengths() {
    List<RunHeader.Cell> all =
        header.cells().stream()
            .filter(RunHeader.Cell::isStrength)
            .filter(c -> !isTemperature(c) || c.has(RunWord.PROOF))
            .filter(c -> !c.has(RunWord.OTHER))
            .filter(
                c -> figures.isMostlyNumbers(c.column()) && uses.get(c.column()).role() != Role.CUT)
            .toList();
    List<RunHeader.Cell> named = saidOr(Role.STRENGTH, all);
    List<RunHeader.Cell> raw = named.stream().filter(c -> !c.isAt20()).toList();
    List<RunHeader.Cell> true20 = named.stream().filter(c -> c.isAt20()).toList();
    boolean temperature = header.cells().stream().anyMatch(this::isSpiritTemperature);
    if (raw.size() > 1) {
      List<RunHeader.Cell> read = raw.stream().filter(c -> c.has(RunWord.READ)).toList();
      raw = read.size() == 1 ? read : withoutProof(raw);
    }
    boolean useTrue = !true20.isEmpty() && (raw.isEmpty() || !temperature);
    List<RunHeader.Cell> reading = useTrue ? true20 : raw;
    if (reading.isEmpty()) {
      return;
    }
    RunHeader.Cell cell = reading.get(0);
    corrected = useTrue;
    strength = cell.column();
    if (!useTrue) {
      true20.forEach(c -> put(c, Role.OWN_TRUE_STRENGTH, scale(c), Message.of("col.run.at20")));
    }
    put(cell, Role.STRENGTH, scale(cell), Message.of(useTrue ? "col.run.true" : "col.run.header"));
    if (reading.size() > 1) {
      open(cell, Message.of("ask.whichStrength", letters(reading), statement(cell, "STRENGTH")));
    } else if (figures.max(cell.column()) <= 1) {
      open(cell, Message.of("ask.shares"));
    }
  }

  /** Without a column of proofs beside one of % vol that says the same. */
  private List<RunHeader.Cell> withoutProof(List<RunHeader.Cell> cells) {
    List<RunHeader.Cell> plain = cells.stream().filter(c -> !c.has(RunWord.PROOF)).toList();
    return plain.size() == 1 && cells.size() == 2 ? plain : cells;
  }

  private String scale(RunHeader.Cell cell) {
    RunMap.Use use = said.columns().get(cell.column());
    if (use != null && !use.unit().isEmpty()) {
      return use.unit();
    }
    return cell.has(RunWord.PROOF) ? "PROOFUS" : "ABV";
  }

  /** By its header, by the units in its cells, or as degrees that no strength has. */
  private boolean isTemperature(RunHeader.Cell cell) {
    if (cell.isTemperature()) {
      return true;
    }
    if (cell.has(RunWord.VOLUME) || cell.has(RunWord.STRENGTH) || cell.isPureAlcohol()) {
      return false;
    }
    int with = 0;
    int numbers = 0;
    for (int row = header.bottomRow() + 1; row < end; row++) {
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

  private boolean isSpiritTemperature(RunHeader.Cell cell) {
    return isTemperature(cell)
        && !cell.has(RunWord.HEAD)
        && !cell.has(RunWord.ELSEWHERE)
        && figures.isMostlyNumbers(cell.column())
        && (cell.has(RunWord.F) || figures.min(cell.column()) < WARMEST_SPIRIT);
  }

  private void temperatures() {
    List<RunHeader.Cell> spirit = new ArrayList<>();
    for (RunHeader.Cell cell : header.cells()) {
      boolean known =
          cell.column() == strength
              || !isTemperature(cell)
              || !figures.isMostlyNumbers(cell.column())
              || uses.get(cell.column()).role() != Role.OTHER;
      if (known || cell.has(RunWord.ELSEWHERE)) {
        continue;
      }
      boolean fahrenheit = cell.has(RunWord.F) && !cell.has(RunWord.C);
      boolean hot = figures.min(cell.column()) > (fahrenheit ? 140 : 60);
      if (cell.has(RunWord.HEAD) || hot && cell.has(RunWord.C)) {
        put(cell, Role.HEAD_TEMPERATURE, fahrenheit ? "F" : "C", Message.of("col.run.values"));
      } else {
        spirit.add(cell);
      }
    }
    List<RunHeader.Cell> found = saidOr(Role.TEMPERATURE, spirit);
    if (found.isEmpty()) {
      return;
    }
    List<RunHeader.Cell> named = found.stream().filter(c -> c.has(RunWord.SPIRIT)).toList();
    RunHeader.Cell cell = named.size() == 1 ? named.get(0) : found.get(0);
    temperature = cell.column();
    put(cell, Role.TEMPERATURE, unit(cell), Message.of("col.run.values"));
    if (found.size() > 1 && named.size() != 1) {
      open(
          cell,
          Message.of("ask.whichTemperature", letters(found), statement(cell, "TEMPERATURE in C")),
          found.stream()
              .map(
                  c ->
                      MapAnswer.of(
                          statement(c, "TEMPERATURE in " + (unit(c).isEmpty() ? "C" : unit(c)))))
              .toArray(MapAnswer[]::new));
    } else if (unit(cell).isEmpty()) {
      open(
          cell,
          Message.of(
              "ask.spiritDegrees",
              CellAddress.letters(cell.column()),
              statement(cell, "TEMPERATURE in C")),
          MapAnswer.of(statement(cell, "TEMPERATURE in C")),
          MapAnswer.of(statement(cell, "TEMPERATURE in F")));
    }
  }

  /** C or F by header and values; "" where they do not settle it. */
  private String unit(RunHeader.Cell cell) {
    RunMap.Use use = said.columns().get(cell.column());
    if (use != null && !use.unit().isEmpty()) {
      return use.unit();
    }
    double low = figures.min(cell.column());
    double high = figures.max(cell.column());
    for (int row = header.bottomRow() + 1; row < end; row++) {
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

  private void volumes() {
    if (strength < 0) {
      return;
    }
    List<RunHeader.Cell> all =
        header.cells().stream()
            .filter(RunHeader.Cell::isVolume)
            .filter(c -> c.column() != strength && c.column() != temperature)
            .filter(c -> figures.isMostlyNumbers(c.column()) && !c.has(RunWord.OTHER))
            .toList();
    List<RunHeader.Cell> found = saidOr(Role.VOLUME, all);
    if (found.size() > 1) {
      List<RunHeader.Cell> single = found.stream().filter(c -> !c.has(RunWord.CUMULATIVE)).toList();
      found = single.isEmpty() ? found : single;
    }
    if (found.size() > 1) {
      found = withoutSums(found);
    }
    if (found.size() > 1) {
      List<RunHeader.Cell> raw = found.stream().filter(c -> !c.isAt20()).toList();
      found = raw.isEmpty() ? found : raw;
    }
    if (found.isEmpty()) {
      return;
    }
    RunHeader.Cell cell = found.get(0);
    volume = cell.column();
    volumesAt20 = cell.isAt20();
    put(cell, Role.VOLUME, volumeUnit(cell), Message.of("col.run.header"));
    if (found.size() > 1) {
      open(cell, Message.of("ask.whichVolume", letters(found), statement(cell, "VOLUME in ML")));
    } else if (cell.has(RunWord.CUMULATIVE) || grows(cell)) {
      open(
          cell,
          Message.of(
              "ask.sums",
              CellAddress.letters(cell.column()),
              statement(
                  cell, "VOLUME in " + (volumeUnit(cell).isEmpty() ? "ML" : volumeUnit(cell)))));
    } else if (volumeUnit(cell).isEmpty()) {
      open(
          cell,
          Message.of(
              "ask.volumeUnit",
              CellAddress.letters(cell.column()),
              statement(cell, "VOLUME in ML")));
    }
  }

  /** Without a column that holds the sums of another one up to each row. */
  private List<RunHeader.Cell> withoutSums(List<RunHeader.Cell> cells) {
    return cells.stream()
        .filter(
            c ->
                cells.stream()
                    .noneMatch(
                        other ->
                            other != c && figures.areSums(c.column(), other.column(), strength)))
        .toList();
  }

  /** Whether each volume is larger than the one before, as sums are; a slip hides no long list. */
  private boolean grows(RunHeader.Cell cell) {
    if (said.columns().containsKey(cell.column())) {
      return false;
    }
    double[] values = figures.besideStrengths(cell.column(), strength);
    int slips = 0;
    for (int i = 1; i < values.length; i++) {
      slips += values[i] <= values[i - 1] ? 1 : 0;
    }
    boolean manifold = values.length > 6 && values[values.length - 1] > 4 * values[0];
    return values.length > 3 && (slips == 0 || slips == 1 && manifold);
  }

  /** The unit that stands in all cells of a column which has none in its header. */
  private String unitInCells(RunHeader.Cell cell) {
    String found = "";
    for (int row = header.bottomRow() + 1; row < end; row++) {
      boolean jar = !Double.isNaN(RunCells.number(grid, row, strength));
      if (jar && !Double.isNaN(RunCells.number(grid, row, cell.column()))) {
        String here =
            RunCells.volumeUnit(grid, row, cell.column()).map(RunVolumeUnit::name).orElse("");
        if (here.isEmpty()) {
          return "";
        }
        found = found.isEmpty() ? here : found;
      }
    }
    return found;
  }

  private String volumeUnit(RunHeader.Cell cell) {
    RunMap.Use use = said.columns().get(cell.column());
    if (use != null && !use.unit().isEmpty()) {
      return use.unit();
    }
    for (RunVolumeUnit unit : RunVolumeUnit.values()) {
      boolean whichGallon = unit == RunVolumeUnit.GALUS && !cell.text().matches("(?i).*\\bus\\b.*");
      if (cell.has(unit.word())) {
        return whichGallon ? "" : unit.name();
      }
    }
    return unitInCells(cell);
  }

  private void open(RunHeader.Cell cell, Message question, MapAnswer... answers) {
    settled = false;
    String at = CellAddress.of(header.bottomRow(), cell.column());
    questions.add(() -> doubts.ask(at, question, answers));
  }

  /** A line of a map about a column. */
  private static String statement(RunHeader.Cell cell, String use) {
    return "column " + CellAddress.letters(cell.column()) + " = " + use;
  }

  private static Message letters(List<RunHeader.Cell> cells) {
    return cells.stream()
        .map(cell -> Message.of("plain", CellAddress.letters(cell.column())))
        .reduce((before, last) -> Message.of("either", before, last))
        .orElse(Message.NONE);
  }
}
