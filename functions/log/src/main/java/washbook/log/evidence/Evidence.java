package washbook.log.evidence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import washbook.log.LogColumn;
import washbook.log.LogTable;
import washbook.log.OriginalGravity;
import washbook.log.Role;
import washbook.log.language.Message;
import washbook.log.reading.RowTimes;
import washbook.log.sheet.Grid;
import washbook.log.words.BatchNameText;
import washbook.log.words.CellText;
import washbook.log.words.Concept;
import washbook.log.words.DateText;
import washbook.log.words.TradeWords;
import washbook.log.words.Vocabulary;
import washbook.log.words.WashWords;

/**
 * Weighs whether a table is the log of a ferment: its words, its own figures, and how its readings
 * run. Strong evidence lets it be filled, weak evidence asks, none or contrary leaves it alone.
 */
public final class Evidence {
  /** What follows from the evidence. */
  public enum Verdict {
    FERMENT,
    OPEN,
    OTHER
  }

  private static final int ENOUGH = 3;

  private static final int WORTH_ASKING = 2;

  /** More than a word and a scale. */
  private static final int SURE = 5;

  /** Days that a ferment takes at least; common practice, no source. */
  private static final double SHORTEST = 0.7;

  /** Days after which a wash that ferments has lost a third of its extract; common practice. */
  private static final double LONGEST_LAG = 21;

  private static final Set<Role> TIMES =
      EnumSet.of(Role.DATE, Role.TIME, Role.DAY, Role.HOURS, Role.BATCH);

  /** Fewer show no course, as long as nothing tells when they were read. */
  private static final int FEWEST_READINGS = 4;

  /** Of this many rows notes are read, and as many lines above. */
  private static final int ROWS_READ = 400;

  private final Grid grid;
  private final LogTable table;
  private final int above;
  private final Set<Clue> clues = EnumSet.noneOf(Clue.class);

  /** Whether a word names another liquid, as brine. */
  private boolean otherLiquid;

  /** Whether the readings have not fallen for longer than a wash takes to begin. */
  private boolean restsLong;

  /** Whether the readings fall far, less and less: not as those of eggs or of a thinned paste. */
  private boolean levelsOff;

  private Evidence(Grid grid, LogTable table, int above) {
    this.grid = grid;
    this.table = table;
    this.above = above;
  }

  /**
   * @param table with its columns and, where they are settled, its batches
   * @param above first row that can hold lines about the table
   * @param topRow first row of its header
   * @param ferments tables of the sheet that are known as ferments
   */
  public static Evidence of(
      Grid grid, LogTable table, int above, int topRow, List<LogTable> ferments) {
    Evidence evidence = new Evidence(grid, table, above);
    if (ferments.stream().anyMatch(f -> f.settled() && headers(f).equals(headers(table)))) {
      evidence.clues.add(Clue.SIBLING);
    }
    evidence.words(topRow);
    evidence.columns();
    evidence.notes();
    evidence.course();
    return evidence;
  }

  private static List<String> headers(LogTable table) {
    return table.columns().stream()
        .filter(c -> c.role() != Role.COMPUTED)
        .map(c -> c.header().strip())
        .toList();
  }

  /**
   * What follows from it. A sheet called by the same foreign word as its title says no more than
   * the title: where words and course speak of a ferment it is worth a question.
   */
  public Verdict verdict() {
    int sum = clues.stream().mapToInt(c -> c.weight).sum();
    boolean twice = clues.containsAll(EnumSet.of(Clue.OTHER_WORD, Clue.OTHER_SHEET));
    boolean both = clues.containsAll(EnumSet.of(Clue.TRADE_WORD, Clue.COURSE));
    if (sum < WORTH_ASKING && twice && both && sum - Clue.OTHER_SHEET.weight >= ENOUGH) {
      return Verdict.OPEN;
    }
    if (!levelsOff && clues.equals(EnumSet.of(Clue.COURSE))) {
      return Verdict.OPEN;
    }
    if ((restsLong || otherLiquid) && sum >= ENOUGH && sum < SURE) {
      return Verdict.OPEN;
    }
    return sum >= ENOUGH ? Verdict.FERMENT : sum >= WORTH_ASKING ? Verdict.OPEN : Verdict.OTHER;
  }

  /** What weighs most on one side, {@link Message#NONE} where nothing does. */
  public Message mostly(boolean against) {
    return clues.stream()
        .filter(c -> c.weight < 0 == against)
        .max(Comparator.comparing(c -> Math.abs(c.weight)))
        .map(Clue::said)
        .orElse(Message.NONE);
  }

  private void words(int topRow) {
    List<LogColumn> joined = joined();
    for (LogColumn column : table.columns()) {
      if (column.role() != Role.COMPUTED && joined.contains(column)) {
        boolean reading = column.role() == Role.GRAVITY || column.role() == Role.REFRACTOMETER;
        if (reading && TradeWords.in(column.header()).equals(Set.of(TradeWords.Side.OTHER))) {
          clues.add(Clue.OTHER_READING);
        }
        boolean twoUses = Vocabulary.meanings(column.header()).contains(Concept.TWO_USES);
        weigh(column.header(), twoUses ? Clue.DOUBTFUL_WORD : Clue.OTHER_WORD);
        if (twoUses) {
          clues.add(Clue.DOUBTFUL_WORD);
        }
      }
    }
    for (int row = Math.max(above, topRow - ROWS_READ); row < topRow; row++) {
      for (int column = table.firstColumn(); column <= table.lastColumn(); column++) {
        if (grid.kind(row, column) == Grid.Kind.TEXT) {
          weigh(grid.text(row, column), Clue.OTHER_WORD);
        }
      }
    }
    weigh(grid.name(), Clue.OTHER_SHEET);
    weigh(grid.fileName(), Clue.OTHER_SHEET);
  }

  /** The columns that stand beside the reading without a gap; after a gap begins another list. */
  private List<LogColumn> joined() {
    List<LogColumn> run = new ArrayList<>();
    boolean withReading = false;
    for (LogColumn column : table.columns()) {
      boolean gap = !run.isEmpty() && column.column() > run.get(run.size() - 1).column() + 1;
      if (gap && withReading) {
        break;
      }
      if (gap) {
        run.clear();
      }
      run.add(column);
      withReading |= column.role() == Role.GRAVITY || column.role() == Role.REFRACTOMETER;
    }
    return run;
  }

  private void weigh(String text, Clue other) {
    Set<TradeWords.Side> sides = TradeWords.in(text);
    if (sides.contains(TradeWords.Side.FERMENT)) {
      clues.add(Clue.TRADE_WORD);
    }
    boolean liquid = Vocabulary.meanings(text).contains(Concept.FOREIGN);
    if (liquid || sides.contains(TradeWords.Side.OTHER) && isOtherWithoutCompounds(text)) {
      clues.add(other);
    }
    otherLiquid |= liquid;
    if (!BatchNameText.of(text).isEmpty() && !WashWords.inValue(text).isEmpty()) {
      clues.add(Clue.NAMED_BATCH);
    }
  }

  /** Kartoffelmaische, of potatoes, is a mash: a word of both sides speaks of a ferment. */
  private static boolean isOtherWithoutCompounds(String text) {
    StringBuilder rest = new StringBuilder();
    for (String word : text.split("(?<=[^\\p{L}\\p{M}])|(?=[^\\p{L}\\p{M}])")) {
      rest.append(TradeWords.in(word).size() > 1 ? " " : word);
    }
    return TradeWords.in(rest.toString()).contains(TradeWords.Side.OTHER);
  }

  private void columns() {
    for (LogColumn column : table.columns()) {
      switch (column.role()) {
        case ORIGINAL_GRAVITY, OWN_ABV, OWN_APPARENT_ATTENUATION, OWN_REAL_ATTENUATION ->
            clues.add(Clue.OWN_FIGURES);
        case SUGAR_ADDED -> clues.add(Clue.SUGAR_ADDED);
        case GRAVITY, REFRACTOMETER, OWN_CORRECTED_GRAVITY -> {
          Set<Concept> meanings = Vocabulary.meanings(column.header());
          boolean scale = meanings.stream().anyMatch(Concept.SUGAR_SCALES::contains);
          boolean density =
              meanings.contains(Concept.KGM3)
                  || meanings.contains(Concept.GCM3)
                  || meanings.contains(Concept.BAUME);
          if (scale && !density
              || meanings.contains(Concept.HYDROMETER)
              || meanings.contains(Concept.REFRACTOMETER)
              || meanings.contains(Concept.POTENTIAL)) {
            clues.add(Clue.NAMED_SCALE);
          }
        }
        default -> {}
      }
    }
    if (statesOriginal()) {
      clues.add(Clue.OWN_FIGURES);
    }
  }

  private boolean statesOriginal() {
    return table.batches().stream().anyMatch(b -> b.original() instanceof OriginalGravity.Stated);
  }

  private void notes() {
    int last = Math.min(table.lastRow(), table.firstRow() + ROWS_READ);
    for (LogColumn column : table.columns()) {
      if (column.role() != Role.NOTE) {
        continue;
      }
      for (int row = table.firstRow(); row <= last; row++) {
        if (grid.kind(row, column.column()) == Grid.Kind.TEXT) {
          String text = grid.text(row, column.column());
          Set<Concept> meanings = Vocabulary.meanings(text);
          if (TradeWords.in(text).contains(TradeWords.Side.FERMENT)) {
            clues.add(Clue.NOTED_WORD);
          }
          if (meanings.contains(Concept.SUGAR) && meanings.contains(Concept.ADDED)) {
            clues.add(Clue.SUGAR_ADDED);
          }
        }
      }
    }
  }

  private void course() {
    LogColumn reading =
        table
            .column(Role.GRAVITY)
            .or(() -> table.column(Role.REFRACTOMETER))
            .or(() -> table.column(Role.OWN_CORRECTED_GRAVITY))
            .orElse(null);
    if (reading == null) {
      return;
    }
    List<double[]> batches = new ArrayList<>();
    if (table.batches().isEmpty()) {
      int[] rows = new int[Math.max(0, table.lastRow() - table.firstRow() + 1)];
      for (int i = 0; i < rows.length; i++) {
        rows[i] = table.firstRow() + i;
      }
      RowTimes.of(grid, table).sort(rows);
      batches.add(gravities(reading, rows));
    }
    table.batches().forEach(b -> batches.add(gravities(reading, b.rows())));
    Course course = new Course(batches);
    boolean warm = HotWork.isIn(grid, table);
    if (course.isOutside() || warm) {
      clues.add(Clue.OTHER_WORLD);
    }
    if (course.isFinished() && table.column(Role.ORIGINAL_GRAVITY).isEmpty() && !statesOriginal()) {
      clues.add(Clue.FINISHED);
    }
    if (course.rises() && isDated()) {
      clues.add(Clue.RISES);
    } else if (course.isOneEach()) {
      clues.add(Clue.ONE_EACH);
    } else if (hasNoTime()
        && (course.isUnlike() || course.rose() || isShortList(batches, course))) {
      clues.addAll(EnumSet.of(Clue.OTHER_COURSE, Clue.ONE_EACH));
    } else if (course.isUnlike()) {
      clues.add(Clue.OTHER_COURSE);
      restsLong = isLong();
    } else if (!clues.contains(Clue.TRADE_WORD) && isWithinADay()) {
      return;
    } else if (course.isLikeFerment() && !warm) {
      clues.add(Clue.COURSE);
      levelsOff = course.levelsOff() && course.endsLow();
    } else if (course.fallsShortly() && !warm) {
      clues.add(Clue.SHORT_FALL);
    } else if (course.mayHaveBegun() && !warm && !isLong()) {
      clues.add(Clue.BEGUN);
    }
  }

  /** Whether it was read for longer than a wash takes to begin. */
  private boolean isLong() {
    RowTimes times = RowTimes.of(grid, table);
    return Math.abs(times.days(table.lastRow()) - times.days(table.firstRow())) > LONGEST_LAG;
  }

  /** Whether the order of the rows is known: newest on top, a wash seems to rise. */
  private boolean isDated() {
    RowTimes times = RowTimes.of(grid, table);
    double first = times.days(table.firstRow());
    return times.days(table.lastRow()) > first;
  }

  /** Whether a few figures stand without a temperature or an original gravity: a list. */
  private boolean isShortList(List<double[]> batches, Course course) {
    int count = batches.stream().mapToInt(b -> b.length).sum();
    boolean falls =
        count > 2
            && (course.fallsShortly() || batches.stream().allMatch(Evidence::fallsThroughout));
    return count < FEWEST_READINGS
        && !falls
        && table.column(Role.TEMPERATURE).isEmpty()
        && !statesOriginal();
  }

  private static boolean fallsThroughout(double[] gravities) {
    for (int i = 1; i < gravities.length; i++) {
      if (!(gravities[i] < gravities[i - 1])) {
        return false;
      }
    }
    return true;
  }

  private boolean hasNoTime() {
    return table.columns().stream().noneMatch(c -> TIMES.contains(c.role()));
  }

  /** Whether all was read within hours: no wash ferments so soon. */
  private boolean isWithinADay() {
    LogColumn clock = table.column(Role.TIME).orElse(null);
    if (clock == null) {
      return false;
    }
    boolean days =
        table.column(Role.DATE).isPresent()
            || table.column(Role.DAY).isPresent()
            || table.column(Role.HOURS).isPresent();
    if (!days) {
      return isOneDay(clock.column());
    }
    RowTimes times = RowTimes.of(grid, table);
    double first = Double.POSITIVE_INFINITY;
    double last = Double.NEGATIVE_INFINITY;
    for (int row = table.firstRow(); row <= table.lastRow(); row++) {
      double day = times.days(row);
      first = day < first ? day : first;
      last = day > last ? day : last;
    }
    return last >= first && last - first < SHORTEST;
  }

  /** Whether a clock never goes back to an earlier hour. */
  private boolean isOneDay(int column) {
    double before = Double.NEGATIVE_INFINITY;
    for (int row = table.firstRow(); row <= table.lastRow(); row++) {
      double time =
          switch (grid.kind(row, column)) {
            case NUMBER, DATE -> grid.number(row, column);
            case TEXT -> DateText.time(grid.text(row, column));
            default -> Double.NaN;
          };
      if (time < before) {
        return false;
      }
      before = time >= before ? time : before;
    }
    return before <= 24;
  }

  private double[] gravities(LogColumn reading, int[] rows) {
    double[] found = new double[rows.length];
    int count = 0;
    for (int row : rows) {
      double value = CellText.number(grid, row, reading.column());
      double gravity =
          Double.isNaN(value) || value == 0 ? Double.NaN : RoughGravity.of(value, reading);
      if (gravity > 0.7 && gravity < 2) {
        found[count++] = gravity;
      }
    }
    return Arrays.copyOf(found, count);
  }
}
