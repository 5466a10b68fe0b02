package washbook.log.run;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import washbook.log.LogColumn;
import washbook.log.Role;
import washbook.log.StillRun.Jar.Strength;
import washbook.log.sheet.Grid;
import washbook.log.words.Ditto;

/** What single rows of jars say about their strength and its temperature, in a column or a note. */
final class StrengthStates {
  /** Longer texts are notes, no marks. */
  private static final int LONGEST_MARK = 25;

  /** More words beside "all" and the degrees speak of something else too. */
  private static final int LONGEST_OF_ALL = 6;

  private static final int LONGEST_ANSWER = 4;
  private static final String NO_MARK = " ";

  /** Warmer than spirit that is measured, °C. */
  private static final double WARMEST = 40;

  private static final Pattern DEGREES =
      Pattern.compile("(?<![\\d.,])(\\d{1,2}(?:[.,]\\d)?)\\s*[\u00b0\u00ba]\\s*[cC](?!\\p{L})");
  private static final Pattern TWENTY = Pattern.compile(".*\\b20 ?[\u00b0\u00ba].*");

  private static final Set<Role> NO_NOTES =
      EnumSet.complementOf(EnumSet.of(Role.OTHER, Role.NOTE, Role.CUT));

  private final Grid grid;
  private final List<LogColumn> columns;
  private final Map<String, RunWord> marks;
  private final Set<RunWord> told;

  /**
   * @param marks what short marks in the cells stand for
   * @param told what the lines about the table mean
   */
  StrengthStates(
      Grid grid, List<LogColumn> columns, Map<String, RunWord> marks, Set<RunWord> told) {
    this.told = told;
    this.grid = grid;
    this.columns = columns;
    this.marks = marks;
  }

  /**
   * Whether a column's cells say row by row if the strength is as read, and nearly nothing else.
   */
  static boolean isColumn(
      Grid grid, int firstRow, int end, RunHeader.Cell cell, Map<String, RunWord> marks) {
    int read = 0;
    int corrected = 0;
    int others = 0;
    boolean asks = asks(cell.words());
    for (int row = firstRow; row < Math.min(end, grid.rowCount()); row++) {
      if (grid.kind(row, cell.column()) == Grid.Kind.TEXT) {
        switch (state(grid.text(row, cell.column()), marks, asks)) {
          case READ -> read++;
          case TRUE -> corrected++;
          default -> others++;
        }
      }
    }
    return read > 0 && corrected > 0 && read + corrected > 2 && read + corrected > others;
  }

  /**
   * Whether a column holds one mark that stands for corrected strengths, or for those as read, and
   * nothing else: a blank cell beside a strength then says the contrary.
   */
  static boolean isTicked(
      Grid grid, int firstRow, int end, int column, int strength, Map<String, RunWord> marks) {
    Set<String> found = new HashSet<>();
    int blanks = 0;
    for (int row = firstRow; row < Math.min(end, grid.rowCount()); row++) {
      if (strength >= 0 && !Double.isNaN(RunCells.number(grid, row, strength))) {
        boolean blank = grid.kind(row, column) == Grid.Kind.BLANK;
        blanks += blank ? 1 : 0;
        if (!blank) {
          String text = grid.text(row, column).strip().toLowerCase(Locale.ROOT);
          found.add(text.isEmpty() ? NO_MARK : text);
        }
      }
    }
    return found.size() == 1 && blanks > 0 && marks.containsKey(found.iterator().next());
  }

  private static Strength state(String cell, Map<String, RunWord> marks, boolean asks) {
    String text = cell.strip();
    Set<RunWord> answer = asks && text.length() <= LONGEST_ANSWER ? RunWords.in(text) : Set.of();
    if (answer.contains(RunWord.YES) || answer.contains(RunWord.NO)) {
      return answer.contains(RunWord.YES) ? Strength.TRUE : Strength.READ;
    }
    RunWord mark =
        text.isEmpty() && marks.size() == 1
            ? opposite(marks.values().iterator().next())
            : marks.get(text.toLowerCase(Locale.ROOT));
    if (mark != null) {
      return mark == RunWord.CORRECTED ? Strength.TRUE : Strength.READ;
    }
    if (text.length() > LONGEST_MARK) {
      return Strength.UNTOLD;
    }
    Set<RunWord> words = RunWords.in(text);
    boolean corrected = words.contains(RunWord.CORRECTED) || words.contains(RunWord.AT20);
    boolean not = words.contains(RunWord.NOT);
    if (corrected && !not) {
      return words.contains(RunWord.READ) ? Strength.UNTOLD : Strength.TRUE;
    }
    return corrected || words.contains(RunWord.READ) && !not ? Strength.READ : Strength.UNTOLD;
  }

  private static RunWord opposite(RunWord mark) {
    return mark == RunWord.CORRECTED ? RunWord.READ : RunWord.CORRECTED;
  }

  boolean hasColumn() {
    return column().isPresent();
  }

  private Optional<LogColumn> column() {
    return columns.stream().filter(c -> c.role() == Role.STRENGTH_STATE).findFirst();
  }

  /** Whether a column's header asks if a strength is corrected, so that its cells answer. */
  private static boolean asks(Set<RunWord> header) {
    return header.contains(RunWord.CORRECTED) && !header.contains(RunWord.NOT);
  }

  /** What the strengths of rows are, one after the other. */
  List<Strength> of(List<Integer> rows, int strength, boolean corrected) {
    int column = column().map(LogColumn::column).orElse(-1);
    boolean asks = column().filter(c -> asks(RunWords.in(c.header()))).isPresent();
    List<Strength> states = new ArrayList<>();
    Strength before = Strength.UNTOLD;
    for (int row : rows) {
      Strength here = before;
      if (column < 0) {
        here = noted(row, strength, corrected);
      } else if (!Ditto.isMark(grid.text(row, column).strip())) {
        here = state(grid.text(row, column), marks, asks);
      }
      states.add(here);
      before = here;
    }
    return states;
  }

  /** By a note in the row, or by a word after the strength itself. */
  private Strength noted(int row, int strength, boolean corrected) {
    String cell = grid.kind(row, strength) == Grid.Kind.TEXT ? grid.text(row, strength) : "";
    Set<RunWord> own = RunWords.in(cell);
    if (corrected && own.contains(RunWord.READ)) {
      return Strength.UNTOLD;
    }
    if (!corrected && own.contains(RunWord.CORRECTED) && !own.contains(RunWord.NOT)) {
      return Strength.UNTOLD;
    }
    for (String note : notes(row)) {
      Set<RunWord> words = RunWords.in(note);
      boolean at20 = words.contains(RunWord.CORRECTED) && TWENTY.matcher(note).matches();
      if (at20 && !words.contains(RunWord.NOT)) {
        return Strength.TRUE;
      }
      if (at20 && corrected) {
        return Strength.UNTOLD;
      }
    }
    return Strength.LIKE_ALL;
  }

  /** The one that a row's note says all jars have, °C; NaN for none. */
  double temperatureOfAll(int row) {
    boolean all = false;
    for (String note : notes(row)) {
      for (String clause : note.split("[,;](?!\\d)")) {
        Set<RunWord> words = RunWords.in(clause);
        boolean brief = clause.strip().split("\\s+").length <= LONGEST_OF_ALL;
        all |= words.contains(RunWord.ALL) && brief && DEGREES.matcher(clause).find();
      }
    }
    return all ? temperature(row) : Double.NaN;
  }

  /** The temperature of the spirit that a row's note names, °C; NaN where none or several do. */
  double temperature(int row) {
    double found = Double.NaN;
    for (String note : notes(row)) {
      Set<RunWord> words = RunWords.in(note);
      boolean ofSpirit =
          words.contains(RunWord.SPIRIT)
              || words.contains(RunWord.JAR)
              || words.contains(RunWord.READ)
              || words.contains(RunWord.INSTRUMENT)
              || told.contains(RunWord.EXCEPT);
      boolean elsewhere =
          !ofSpirit
              || words.contains(RunWord.ELSEWHERE)
              || words.contains(RunWord.HEAD)
              || words.contains(RunWord.CORRECTED);
      Matcher degrees = DEGREES.matcher(note);
      while (!elsewhere && degrees.find()) {
        double celsius = Double.parseDouble(degrees.group(1).replace(',', '.'));
        if (!Double.isNaN(found) && celsius != found) {
          return Double.NaN;
        }
        found = celsius <= WARMEST ? celsius : found;
      }
    }
    return found;
  }

  private List<String> notes(int row) {
    return columns.stream()
        .filter(c -> !NO_NOTES.contains(c.role()) && !isOfAnother(c))
        .filter(c -> grid.kind(row, c.column()) == Grid.Kind.TEXT)
        .map(c -> grid.text(row, c.column()))
        .toList();
  }

  /** Whether a column's header says that it is about a temperature, which then is another's. */
  private static boolean isOfAnother(LogColumn column) {
    Set<RunWord> words = RunWords.in(column.header());
    return words.contains(RunWord.TEMPERATURE) || words.contains(RunWord.ELSEWHERE);
  }
}
