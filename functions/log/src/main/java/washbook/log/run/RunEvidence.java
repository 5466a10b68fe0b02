package washbook.log.run;

import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import washbook.log.LogColumn;
import washbook.log.Role;
import washbook.log.language.Message;
import washbook.log.sheet.Grid;

/** Weighs whether a table with volumes and strengths is a still run. */
final class RunEvidence {
  enum Verdict {
    RUN,
    OPEN,
    /** A run beside a sure one, else left alone. */
    WEAK,
    /** Something speaks for a run, more against it. */
    OTHER,
    /** Nothing worth a word. */
    NOTHING
  }

  private static final int ENOUGH = 6;
  private static final int WORTH_ASKING = 5;

  /** Enough beside a sure run on the same sheet. */
  private static final int ENOUGH_BESIDE = 4;

  /** Below this many jars the strengths show no course. */
  private static final int FEWEST = 4;

  /** What a run's strength falls by at least, % vol. */
  private static final double FALL = 8;

  /** A rise at the beginning or by an error of reading, % vol. */
  private static final double SMALL_RISE = 2.5;

  private static final int MOST_DAYS = 3;

  private final Set<RunClue> clues = EnumSet.noneOf(RunClue.class);

  RunEvidence(Grid grid, RunHeader header, List<LogColumn> columns, RunRows rows, RunLines lines) {
    words(grid, header, columns, lines);
    course(grid, columns, rows);
    int named = 0;
    int end = rows.jars.isEmpty() ? 0 : rows.jars.get(rows.jars.size() - 1) + 1;
    for (LogColumn column : columns) {
      named = Math.max(named, RunCuts.named(grid, header.bottomRow() + 1, end, column.column()));
      if (column.role() == Role.CUT) {
        named = 2;
      }
    }
    Set<RunCut> groups = EnumSet.noneOf(RunCut.class);
    rows.groups.stream().map(RunCut::of).filter(c -> c != null).forEach(groups::add);
    if (named >= 2 || groups.size() >= 2) {
      clues.add(RunClue.CUTS);
    }
  }

  Verdict verdict() {
    int sum = clues.stream().mapToInt(c -> c.weight).sum();
    int positive = clues.stream().mapToInt(c -> Math.max(0, c.weight)).sum();
    if (sum >= ENOUGH) {
      return Verdict.RUN;
    }
    if (sum >= WORTH_ASKING) {
      return Verdict.OPEN;
    }
    if (sum >= ENOUGH_BESIDE) {
      return Verdict.WEAK;
    }
    return positive >= ENOUGH ? Verdict.OTHER : Verdict.NOTHING;
  }

  /** Whether it is worth a question. */
  boolean isWorthAsking() {
    return verdict() == Verdict.OPEN;
  }

  /** What weighs most on one side; {@link Message#NONE} where nothing does. */
  Message mostly(boolean against) {
    return clues.stream()
        .filter(c -> c.weight < 0 == against)
        .max(Comparator.comparing(c -> Math.abs(c.weight)))
        .map(RunClue::said)
        .orElse(Message.NONE);
  }

  private void words(Grid grid, RunHeader header, List<LogColumn> columns, RunLines lines) {
    for (RunHeader.Cell cell : header.cells()) {
      boolean temperature = cell.isTemperature();
      if (cell.has(RunWord.JAR) && !cell.isVolume()) {
        clues.add(RunClue.JARS);
      }
      if (cell.has(RunWord.BOTTLE)) {
        clues.add(RunClue.BOTTLES);
      }
      boolean money = cell.text().matches(".*[\u20ac$\u00a3].*");
      boolean other = cell.has(RunWord.OTHER) && !cell.has(RunWord.JAR) && !temperature;
      if (other || money) {
        clues.add(RunClue.OTHER_WORD);
      }
    }
    Set<RunWord> sheet = RunWords.in(grid.name());
    if (lines.words.contains(RunWord.RUN) || sheet.contains(RunWord.RUN)) {
      clues.add(RunClue.RUN_WORD);
    }
    if (lines.words.contains(RunWord.OTHER) || sheet.contains(RunWord.OTHER)) {
      clues.add(RunClue.OTHER_TITLE);
    }
    if (!lines.charge().cell().isEmpty()) {
      clues.add(RunClue.CHARGE);
    }
  }

  private void course(Grid grid, List<LogColumn> columns, RunRows rows) {
    for (LogColumn column : columns) {
      switch (column.role()) {
        case STRENGTH -> strengths(grid, column, rows);
        case HEAD_TEMPERATURE -> {
          double[] values = values(grid, column.column(), rows.jars);
          if (values.length >= FEWEST && values[values.length - 1] > values[0] + 1) {
            clues.add(RunClue.HEAD);
          }
        }
        case DATE, OTHER -> dates(grid, column.column(), rows);
        default -> {}
      }
      if (isNumbered(grid, column.column(), rows)) {
        clues.add(RunClue.NUMBERED);
      }
    }
  }

  private void strengths(Grid grid, LogColumn column, RunRows rows) {
    double[] values =
        Arrays.stream(values(grid, column.column(), rows.jars))
            .filter(v -> v > 0)
            .map(v -> column.unit().equals(RunStrengthUnit.SHARE.name()) ? 100 * v : v)
            .toArray();
    if (values.length < FEWEST) {
      return;
    }
    int restarts = 0;
    int rises = 0;
    double falls = 0;
    double before = values[0];
    for (int i = 1; i < values.length; i++) {
      double rise = values[i] - before;
      if (values[i] > 100 && before <= 100 || before > 100 && values[i] <= 100) {
        continue;
      }
      rises += rise > SMALL_RISE && rise < FALL ? 1 : 0;
      restarts += rise >= FALL ? 1 : 0;
      falls += rise < 0 ? -rise : 0;
      before = values[i];
    }
    boolean often = rises * 5 > values.length || restarts * 4 > values.length;
    if (!often && falls >= FALL * (1 + restarts)) {
      clues.add(RunClue.FALL);
    } else {
      clues.add(RunClue.NO_FALL);
    }
  }

  private void dates(Grid grid, int column, RunRows rows) {
    Set<String> days = new HashSet<>();
    int texts = 0;
    for (int row : rows.jars) {
      if (grid.kind(row, column) == Grid.Kind.DATE) {
        double day = Math.floor(grid.number(row, column));
        if (day > 0) {
          days.add(String.valueOf(day));
        }
      } else if (grid.kind(row, column) == Grid.Kind.TEXT) {
        String text = grid.text(row, column).strip();
        boolean date =
            text.matches("[0-3]?\\d[./-][0-3]?\\d([./-](\\d{2}|\\d{4}))?\\.?")
                || text.matches("\\d{4}-\\d{2}-\\d{2}.*")
                || text.matches("\\d{1,2}\\.?\\s?\\p{L}{3,9}\\.?(\\s\\d{2,4})?");
        if (date) {
          days.add(text);
          texts++;
        }
      }
    }
    boolean all = texts == 0 || texts * 2 > rows.jars.size();
    if (days.size() > MOST_DAYS && all) {
      clues.add(RunClue.MONTHS);
    }
  }

  private static boolean isNumbered(Grid grid, int column, RunRows rows) {
    double before = 0;
    int count = 0;
    for (int row : rows.jars) {
      String digits =
          grid.kind(row, column) == Grid.Kind.TEXT
              ? grid.text(row, column).replaceAll("\\D", "")
              : String.valueOf((int) RunCells.number(grid, row, column));
      if (digits.isEmpty() || digits.length() > 4) {
        return false;
      }
      double number = Double.parseDouble(digits);
      if (count > 0 && number != before + 1 && number != 1) {
        return false;
      }
      before = number;
      count++;
    }
    return count >= 3;
  }

  private static double[] values(Grid grid, int column, List<Integer> rows) {
    return rows.stream()
        .mapToDouble(row -> RunCells.number(grid, row, column))
        .filter(v -> !Double.isNaN(v))
        .toArray();
  }
}
