package washbook.log.run;

import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import washbook.log.MapAnswer;
import washbook.log.Role;
import washbook.log.language.Message;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;

/** Which column holds the volumes of jars, in which unit, and whether it is a running total. */
final class RunVolumes {
  /** Names of totals in a header; "all" and "together" may mean that all are in one unit. */
  private static final Pattern IS_TOTAL =
      Pattern.compile(
          "(?i)\\b(tota\\p{L}*|sum(s|me|ma)?|som(me|ma)?|suma|gesamt|ges|running|laufend|lopende?)\\b");

  /** Rows that may go against the growth of a long running total: slips of the pen. */
  private static final int MOST_SLIPS = 1;

  /** Where the strength rises by so much between two rows another run may begin, % vol or proof. */
  private static final double RESTART = 5;

  private final Grid grid;
  private final RunHeader header;
  private final RunMap said;
  private final RunLines lines;
  private final RunFigures figures;
  private final int strength;
  private final int firstRow;
  private final int end;

  /** The column; null where there is none. */
  RunHeader.Cell cell;

  /** Whether each figure holds all jars up to its row. */
  boolean isTotal;

  /** Of {@link RunVolumeUnit}, "" where nothing tells it. */
  String unit = "";

  /**
   * @param candidates columns that may hold volumes
   * @param strength column of the strengths
   */
  RunVolumes(
      Grid grid,
      RunHeader header,
      RunMap said,
      RunLines lines,
      RunFigures figures,
      List<RunHeader.Cell> candidates,
      int strength,
      int end,
      RunQuestions questions) {
    this.grid = grid;
    this.header = header;
    this.said = said;
    this.lines = lines;
    this.figures = figures;
    this.strength = strength;
    this.firstRow = header.bottomRow() + 1;
    this.end = end;
    List<RunHeader.Cell> found = single(candidates);
    if (found.isEmpty()) {
      return;
    }
    cell = found.get(0);
    unit = unit(cell);
    isTotal =
        said.uses(cell.column(), Role.VOLUME_SO_FAR)
            || !said.uses(cell.column(), Role.VOLUME) && saysTotal(cell);
    ask(found, questions);
  }

  Role role() {
    return isTotal ? Role.VOLUME_SO_FAR : Role.VOLUME;
  }

  private void ask(List<RunHeader.Cell> found, RunQuestions questions) {
    String letters = CellAddress.letters(cell.column());
    if (found.size() > 1) {
      List<MapAnswer> answers =
          found.stream()
              .flatMap(c -> Stream.of(units(c)).map(u -> use(c, Role.VOLUME, u)))
              .toList();
      questions.open(
          cell,
          Message.of("ask.whichVolume", RunQuestions.letters(found), said(cell, Role.VOLUME, "ML")),
          answers);
    } else if (isOpen(cell)) {
      String first = units(cell)[0];
      List<MapAnswer> answers =
          Stream.of(units(cell))
              .flatMap(u -> Stream.of(use(cell, Role.VOLUME_SO_FAR, u), use(cell, Role.VOLUME, u)))
              .toList();
      questions.open(
          cell,
          Message.of(
              "ask.sums",
              letters,
              said(cell, Role.VOLUME_SO_FAR, first),
              said(cell, Role.VOLUME, first)),
          answers);
    } else if (unit.isEmpty()) {
      questions.open(
          cell,
          Message.of("ask.volumeUnit", letters, said(cell, role(), "ML")),
          Stream.of(units(cell)).map(u -> use(cell, role(), u)).toList());
    }
  }

  private static MapAnswer use(RunHeader.Cell cell, Role role, String unit) {
    return MapAnswer.of(said(cell, role, unit));
  }

  private static String said(RunHeader.Cell cell, Role role, String unit) {
    return RunQuestions.statement(cell, role + " in " + unit);
  }

  /** The unit of a column, or all that it can be. */
  private String[] units(RunHeader.Cell of) {
    String told = unit(of);
    if (!told.isEmpty()) {
      return new String[] {told};
    }
    return of.has(RunWord.GALLON)
        ? new String[] {"GALUS", "GALUK"}
        : new String[] {"ML", "CL", "L", "GALUS"};
  }

  /** The one column of several that is meant, or all of them. */
  private List<RunHeader.Cell> single(List<RunHeader.Cell> candidates) {
    List<RunHeader.Cell> found = candidates;
    if (found.size() > 1) {
      List<RunHeader.Cell> plain = found.stream().filter(c -> !c.has(RunWord.CUMULATIVE)).toList();
      found = plain.isEmpty() ? found : plain;
    }
    if (found.size() > 1) {
      found = withoutSums(found);
    }
    if (found.size() > 1) {
      List<RunHeader.Cell> raw = found.stream().filter(c -> !c.isAt20()).toList();
      found = raw.isEmpty() ? found : raw;
    }
    return found;
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

  /** Whether header or lines call the column a running total, and it grows as one. */
  private boolean saysTotal(RunHeader.Cell of) {
    boolean header = of.has(RunWord.CUMULATIVE) || IS_TOTAL.matcher(of.text()).find();
    return (header || lines.volumesSoFar) && grows(of);
  }

  /** Whether nobody says if it is a running total though it looks like one or is called one. */
  private boolean isOpen(RunHeader.Cell of) {
    boolean settled = isTotal || said.columns().containsKey(of.column());
    return !settled && (of.has(RunWord.CUMULATIVE) || grows(of));
  }

  /**
   * Whether each volume is larger than the one before, as totals are, but for the beginning of
   * another run; a slip hides no long list.
   */
  private boolean grows(RunHeader.Cell of) {
    int count = 0;
    int slips = 0;
    double first = Double.NaN;
    double before = Double.NaN;
    double strengthBefore = Double.NaN;
    for (int row = firstRow; row < end; row++) {
      double value = RunCells.number(grid, row, of.column());
      double here = RunCells.number(grid, row, strength);
      if (Double.isNaN(value) || Double.isNaN(here)) {
        continue;
      }
      boolean begins = here > strengthBefore + RESTART && value < before / 2;
      slips += value <= before && !begins ? 1 : 0;
      first = count == 0 ? value : first;
      before = value;
      strengthBefore = here;
      count++;
    }
    boolean manifold = count > 6 && figures.max(of.column()) > 4 * first;
    return count > 3 && (slips == 0 || slips <= MOST_SLIPS && manifold);
  }

  private String unit(RunHeader.Cell of) {
    RunMap.Use use = said.columns().get(of.column());
    if (use != null && !use.unit().isEmpty()) {
      return use.unit();
    }
    for (RunVolumeUnit unit : RunVolumeUnit.values()) {
      if (of.has(unit.word())) {
        return unit.word() == RunWord.GALLON ? gallon(of) : unit.name();
      }
    }
    return unitInCells(of);
  }

  /** The gallon that the header names, else that of the lines about the table. */
  private String gallon(RunHeader.Cell of) {
    return RunLineUnits.either(of, RunWord.US, RunWord.UK, lines.gallons)
        .map(word -> word == RunWord.US ? "GALUS" : "GALUK")
        .orElse("");
  }

  /**
   * The unit that stands in the cells of a column which has none in its header; a number without
   * one must lie among those of the unit that most have.
   */
  private String unitInCells(RunHeader.Cell of) {
    Map<RunVolumeUnit, DoubleSummaryStatistics> named = new EnumMap<>(RunVolumeUnit.class);
    DoubleSummaryStatistics bare = new DoubleSummaryStatistics();
    for (int row = firstRow; row < end; row++) {
      double number = RunCells.number(grid, row, of.column());
      if (!Double.isNaN(RunCells.number(grid, row, strength)) && !Double.isNaN(number)) {
        RunCells.volumeUnit(grid, row, of.column())
            .map(u -> named.computeIfAbsent(u, x -> new DoubleSummaryStatistics()))
            .orElse(bare)
            .accept(number);
      }
    }
    return named.entrySet().stream()
        .max(Comparator.comparing(e -> e.getValue().getCount()))
        .filter(e -> bare.getCount() == 0 || isAmong(bare, e.getValue()))
        .map(e -> e.getKey().name())
        .orElse("");
  }

  private static boolean isAmong(DoubleSummaryStatistics some, DoubleSummaryStatistics named) {
    return named.getCount() > some.getCount()
        && some.getMin() >= named.getMin()
        && some.getMax() <= named.getMax();
  }
}
