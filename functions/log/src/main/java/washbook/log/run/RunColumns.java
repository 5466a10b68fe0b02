package washbook.log.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import washbook.functions.Numbers;
import washbook.log.LogColumn;
import washbook.log.Role;
import washbook.log.language.Message;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;

/** Which column of a table of jars holds what, in which unit; what is open becomes a question. */
final class RunColumns {
  private static final int ROWS_READ = 200;

  private final Grid grid;
  private final RunHeader header;
  private final RunMap said;
  private final Map<Integer, LogColumn> uses = new TreeMap<>();
  private final int end;
  private final RunFigures figures;
  private final RunTemperatureColumns degrees;

  /** Columns for the rows to be found by; -1 where there is none. */
  int volume = -1;

  int strength = -1;
  int temperature = -1;

  /** Whether the column of strengths says that it holds true ones. */
  boolean corrected;

  /** Whether the column of volumes says that it holds those at 20 °C. */
  boolean volumesAt20;

  /** Of {@link RunVolumeUnit}, "" while it is open. */
  String volumeUnit = "";

  /** Whether volumes are running totals. */
  boolean isTotal;

  private final RunLines lines;
  private final RunQuestions questions;

  RunColumns(
      Grid grid, RunHeader header, int end, RunMap said, RunLines lines, RunQuestions questions) {
    this.grid = grid;
    this.header = header;
    this.end = Math.min(end, header.bottomRow() + ROWS_READ);
    this.figures = new RunFigures(grid, header.bottomRow() + 1, this.end);
    this.said = said;
    this.degrees = new RunTemperatureColumns(grid, header, said, figures, this::isStrength);
    this.lines = lines;
    this.questions = questions;
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
    states();
    temperatures();
    volumes();
    said.columns().forEach(this::put);
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
    boolean reading = column == strength && use.role() == Role.OWN_TRUE_STRENGTH;
    if (uses.containsKey(column) && !reading) {
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
      boolean label = !cell.has(RunWord.TEMPERATURE) && !cell.isStrength() && !cell.isVolume();
      if (label && (cell.has(RunWord.JAR) || cell.has(RunWord.BOTTLE))) {
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

  private void states() {
    for (RunHeader.Cell cell : header.cells()) {
      boolean free = uses.get(cell.column()).role() == Role.OTHER;
      if (free && isStates(cell)) {
        put(cell, Role.STRENGTH_STATE, "", Message.of("col.run.values"));
      }
    }
  }

  private boolean isStates(RunHeader.Cell cell) {
    int first = header.bottomRow() + 1;
    return StrengthStates.isColumn(grid, first, end, cell, lines.marks)
        || StrengthStates.isTicked(grid, first, end, cell.column(), strength, lines.marks);
  }

  private void strengths() {
    List<RunHeader.Cell> all =
        header.cells().stream()
            .filter(this::isStrength)
            .filter(c -> !degrees.isOne(c) || c.has(RunWord.PROOF))
            .filter(c -> !c.has(RunWord.OTHER))
            .filter(
                c -> figures.isMostlyNumbers(c.column()) && uses.get(c.column()).role() != Role.CUT)
            .toList();
    List<RunHeader.Cell> named = saidOr(Role.STRENGTH, all);
    List<RunHeader.Cell> raw = named.stream().filter(c -> !c.isAt20()).toList();
    List<RunHeader.Cell> true20 = named.stream().filter(c -> c.isAt20()).toList();
    boolean temperature = header.cells().stream().anyMatch(degrees::isOfSpirit);
    if (raw.size() > 1) {
      List<RunHeader.Cell> read =
          raw.stream().filter(c -> c.has(RunWord.READ) || c.has(RunWord.INSTRUMENT)).toList();
      raw = read.size() == 1 ? read : withoutProof(raw);
    }
    List<RunHeader.Cell> only =
        all.stream().filter(c -> said.uses(c.column(), Role.OWN_TRUE_STRENGTH)).toList();
    boolean saidTrue = named.isEmpty() && !only.isEmpty();
    boolean useTrue = saidTrue || !true20.isEmpty() && (raw.isEmpty() || !temperature);
    List<RunHeader.Cell> reading = saidTrue ? only : useTrue ? true20 : raw;
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
      questions.open(
          cell,
          Message.of(
              "ask.whichStrength",
              RunQuestions.letters(reading),
              RunQuestions.statement(cell, "STRENGTH")),
          RunQuestions.answers(reading, "STRENGTH"));
    } else if (scale(cell).isEmpty()) {
      questions.open(
          cell,
          Message.of("ask.whichProof", CellAddress.letters(cell.column())),
          RunQuestions.answers(cell, "STRENGTH in PROOFUS", "STRENGTH in PROOFUK"));
    } else if (scale(cell).equals("ABV") && figures.max(cell.column()) <= 1) {
      questions.open(
          cell,
          Message.of("ask.shares", RunQuestions.statement(cell, "STRENGTH in SHARE")),
          RunQuestions.answers(cell, "STRENGTH in SHARE", "STRENGTH in ABV"));
    }
  }

  /** By its header, or as what was read beside the same strengths at 20 °C. */
  private boolean isStrength(RunHeader.Cell cell) {
    boolean read = cell.has(RunWord.READ) && !cell.isVolume() && !cell.isTemperature();
    return cell.isStrength()
        || read
            && header.cells().stream()
                .filter(c -> c != cell && c.isStrength() && c.isAt20())
                .anyMatch(c -> figures.areNear(cell.column(), c.column()));
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
    if (cell.has(RunWord.PROOF) || figures.areFromProof(cell.column())) {
      return figures.areFromProof(cell.column()) ? "PROOFUK" : proof(cell);
    }
    return figures.areShares(cell.column()) ? "SHARE" : "ABV";
  }

  /** The proof that the header names, else that of the lines; "" where both or none are. */
  private String proof(RunHeader.Cell cell) {
    return RunLineUnits.either(cell, RunWord.US_PROOF, RunWord.UK_PROOF, lines.proofs)
        .map(word -> word == RunWord.US_PROOF ? "PROOFUS" : "PROOFUK")
        .orElse("");
  }

  private void temperatures() {
    List<RunHeader.Cell> spirit = new ArrayList<>();
    for (RunHeader.Cell cell : header.cells()) {
      boolean known =
          cell.column() == strength
              || !degrees.isOne(cell)
              || !figures.isMostlyNumbers(cell.column())
              || uses.get(cell.column()).role() != Role.OTHER;
      if (known || cell.has(RunWord.ELSEWHERE)) {
        continue;
      }
      boolean fahrenheit = cell.has(RunWord.F) && !cell.has(RunWord.C);
      boolean hot = figures.min(cell.column()) > (fahrenheit ? 140 : 60);
      boolean beside =
          header.cells().stream().anyMatch(c -> c.column() != strength && degrees.isCool(c));
      if (cell.has(RunWord.HEAD) || hot && (cell.has(RunWord.C) || beside)) {
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
    put(cell, Role.TEMPERATURE, degrees.unit(cell), Message.of("col.run.values"));
    if (found.size() > 1 && named.size() != 1) {
      questions.open(
          cell,
          Message.of(
              "ask.whichTemperature",
              RunQuestions.letters(found),
              RunQuestions.statement(cell, "TEMPERATURE in C")),
          found.stream()
              .flatMap(
                  c ->
                      RunQuestions.answers(
                          c,
                          "TEMPERATURE in " + (degrees.unit(c).isEmpty() ? "C" : degrees.unit(c)))
                          .stream())
              .toList());
    } else if (degrees.unit(cell).isEmpty()) {
      askDegrees(cell);
    }
  }

  /** No spirit is measured at 60 °C: what is warmer is vapour, or in °F. */
  private void askDegrees(RunHeader.Cell cell) {
    boolean hot = figures.min(cell.column()) > 60;
    String first = hot ? "HEAD_TEMPERATURE in C" : "TEMPERATURE in C";
    questions.open(
        cell,
        Message.of(
            "ask.spiritDegrees",
            CellAddress.letters(cell.column()),
            RunQuestions.statement(cell, first)),
        RunQuestions.answers(cell, first, "TEMPERATURE in F"));
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
    List<RunHeader.Cell> amounts =
        all.stream().filter(c -> !figures.areNumbers(c.column())).toList();
    all = amounts.isEmpty() ? all : amounts;
    List<RunHeader.Cell> alone = saidOr(Role.VOLUME, all);
    boolean total = alone.stream().noneMatch(c -> said.uses(c.column(), Role.VOLUME));
    List<RunHeader.Cell> candidates = total ? saidOr(Role.VOLUME_SO_FAR, all) : alone;
    RunVolumes found =
        new RunVolumes(grid, header, said, lines, figures, candidates, strength, end, questions);
    if (found.cell != null) {
      volume = found.cell.column();
      volumesAt20 = found.cell.isAt20();
      volumeUnit = found.unit;
      isTotal = found.isTotal;
      put(found.cell, found.role(), found.unit, Message.of("col.run.header"));
    }
  }

  /** Whether a jar is numbered 1 in one of the columns. */
  boolean isFirstJar(RunRows rows, int row) {
    for (LogColumn column : all()) {
      boolean label = column.role() == Role.JAR || column.column() == header.firstColumn();
      String text =
          grid.kind(row, column.column()) == Grid.Kind.TEXT
              ? grid.text(row, column.column()).replaceAll("\\D", "")
              : Numbers.show(RunCells.number(grid, row, column.column()));
      boolean first = text.equals("1") || text.equals("01");
      boolean alike = letters(row, column).equals(letters(rows.jars.get(0), column));
      if (first
          && alike
          && (label || column.role() == Role.OTHER && isNumbered(rows, row, column))) {
        return true;
      }
    }
    return false;
  }

  /** A label without its number: F1 and H1 are of two cuts, and begin no run. */
  private String letters(int row, LogColumn column) {
    return grid.kind(row, column.column()) == Grid.Kind.TEXT
        ? grid.text(row, column.column()).replaceAll("[\\d\\s.]", "").toLowerCase(Locale.ROOT)
        : "";
  }

  /** Whether the two rows of jars before a row have numbers that follow each other. */
  private boolean isNumbered(RunRows rows, int row, LogColumn column) {
    int at = rows.jars.indexOf(row);
    if (at < 2) {
      return false;
    }
    double before = RunCells.number(grid, rows.jars.get(at - 1), column.column());
    double earlier = RunCells.number(grid, rows.jars.get(at - 2), column.column());
    return before == earlier + 1;
  }
}
