package washbook.log.understand;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import washbook.functions.scale.TemperatureUnit;
import washbook.log.language.Message;
import washbook.log.layout.TableRows;
import washbook.log.reading.RowRefusals;
import washbook.log.sheet.Grid;
import washbook.log.words.CellText;
import washbook.log.words.DateText;
import washbook.log.words.ReadingScale;

/** What the numbers of one column look like; texts that are a number without a unit count too. */
final class ColumnValues {
  private static final int FEWEST = 3;

  /** Fewer do not show that a column holds dates. */
  private static final int FEWEST_DATES = 3;

  private static final int MONTHS = 12;
  private static final int ROWS_READ = 1000;
  private static final Pattern CLOCK = Pattern.compile("([01]?\\d|2[0-3])[:h][0-5]\\d");

  private int numbers;
  private int likeGravity;
  private int below32;
  private int above60;
  private int negative;
  private double min = Double.POSITIVE_INFINITY;
  private double max = Double.NEGATIVE_INFINITY;

  static ColumnValues of(Grid grid, TableRows rows, int column) {
    ColumnValues facts = new ColumnValues();
    for (int row = rows.firstRow(); row <= rows.lastRow(); row++) {
      double value = CellText.plainNumber(grid, row, column);
      if (!Double.isNaN(value) && !rows.isSkipped(row)) {
        facts.add(value);
      }
    }
    return facts;
  }

  /** Whether nothing but 1, 2, 3 or the like stands in a column. */
  static boolean areRunning(Grid grid, TableRows rows, int column) {
    double before = Double.NaN;
    int counted = 0;
    for (int row = rows.firstRow(); row <= rows.lastRow(); row++) {
      double value = rows.isSkipped(row) ? Double.NaN : CellText.plainNumber(grid, row, column);
      if (!Double.isNaN(value)) {
        if (value != Math.rint(value) || (counted > 0 && Math.abs(value - before) != 1)) {
          return false;
        }
        before = value;
        counted++;
      }
    }
    return counted >= FEWEST;
  }

  /** Whether several words stand in a column and no figure: names, or findings such as traces. */
  static boolean areWords(Grid grid, TableRows rows, int column) {
    int words = 0;
    for (int row = rows.firstRow(); row <= rows.lastRow(); row++) {
      Grid.Kind kind = rows.isSkipped(row) ? Grid.Kind.BLANK : grid.kind(row, column);
      String text = kind == Grid.Kind.TEXT ? grid.text(row, column) : "";
      if (kind != Grid.Kind.BLANK && kind != Grid.Kind.TEXT
          || text.chars().anyMatch(Character::isDigit)) {
        return false;
      }
      words += text.chars().anyMatch(Character::isLetter) ? 1 : 0;
    }
    return words >= FEWEST;
  }

  /** Whether nothing but times of the day stands in a column, as 08:00. */
  static boolean areClock(Grid grid, TableRows rows, int column) {
    int times = 0;
    for (int row = rows.firstRow(); row <= rows.lastRow(); row++) {
      Grid.Kind kind = rows.isSkipped(row) ? Grid.Kind.BLANK : grid.kind(row, column);
      boolean time =
          kind == Grid.Kind.DATE && grid.number(row, column) < 1
              || kind == Grid.Kind.TEXT && CLOCK.matcher(grid.text(row, column).strip()).matches();
      if (kind != Grid.Kind.BLANK && !time) {
        return false;
      }
      times += time ? 1 : 0;
    }
    return times >= FEWEST;
  }

  /** Numbers as 30.11 and 2.12, which count no days: they go back where a month begins. */
  static boolean areDaysAndMonths(Grid grid, TableRows rows, int column) {
    int numbers = 0;
    int back = 0;
    int order = 0;
    double before = Double.NaN;
    for (int row = rows.firstRow(); row <= rows.lastRow(); row++) {
      double value =
          rows.isSkipped(row) || grid.kind(row, column) != Grid.Kind.NUMBER
              ? Double.NaN
              : grid.number(row, column);
      if (Double.isNaN(value)) {
        continue;
      }
      long month = Math.round(100 * (value - Math.floor(value)));
      if (value < 1 || value >= 32 || month < 1 || month > MONTHS) {
        return false;
      }
      int at = (int) (100 * month + (long) Math.floor(value));
      numbers++;
      back += value < before ? 1 : 0;
      before = value;
      if (at < order && !(order >= 100 * MONTHS && at < 200)) {
        return false;
      }
      order = at;
    }
    return numbers >= FEWEST_DATES && back > 0;
  }

  /** Whether nearly all that stands in a column are dates, of several days. */
  static boolean areDates(Grid grid, TableRows rows, int column) {
    Set<String> days = new HashSet<>();
    int dates = 0;
    int filled = 0;
    int last = Math.min(rows.lastRow(), rows.firstRow() + ROWS_READ);
    for (int row = rows.firstRow(); row <= last; row++) {
      Grid.Kind kind = rows.isSkipped(row) ? Grid.Kind.BLANK : grid.kind(row, column);
      filled += kind == Grid.Kind.BLANK ? 0 : 1;
      boolean date =
          DateText.isDate(grid, row, column)
              && kind != Grid.Kind.BLANK
              && !(kind == Grid.Kind.DATE && grid.number(row, column) < 1);
      if (date) {
        dates++;
        days.add(
            kind == Grid.Kind.DATE
                ? Double.toString(grid.number(row, column))
                : grid.text(row, column));
      }
    }
    return days.size() >= FEWEST_DATES && 10 * dates >= 9 * filled;
  }

  /** Whether figures with decimals stand in it, as of temperatures, and no names. */
  static boolean areFractions(Grid grid, TableRows rows, int column) {
    boolean fraction = false;
    for (int row = rows.firstRow(); row <= rows.lastRow(); row++) {
      if (!rows.isSkipped(row) && grid.kind(row, column) != Grid.Kind.BLANK) {
        double value = CellText.plainNumber(grid, row, column);
        if (Double.isNaN(value)) {
          return false;
        }
        fraction |= value != Math.rint(value);
      }
    }
    return fraction;
  }

  /** Whether the values count the readings, one up or down in each row. */
  static boolean countRows(Grid grid, TableRows rows, int column) {
    int counted = 0;
    double before = Double.NaN;
    double step = 0;
    String name = "";
    for (int row = rows.firstRow(); row <= rows.lastRow(); row++) {
      String text = grid.kind(row, column) == Grid.Kind.TEXT ? grid.text(row, column) : "";
      if (!text.isEmpty() && text.equals(name)) {
        continue;
      }
      double value = CellText.plainNumber(grid, row, column);
      if (rows.isSkipped(row) || Double.isNaN(value)) {
        name = Double.isNaN(value) ? text : name;
        continue;
      }
      double moved = value - before;
      if (!Double.isNaN(moved)) {
        if (Math.abs(moved) != 1 || (step != 0 && moved != step)) {
          return false;
        }
        step = moved;
        counted++;
      }
      before = value;
    }
    return counted >= FEWEST;
  }

  /** Whether a column of readings has temperatures in its cells, as {@code 1.052 @ 15C}. */
  static boolean haveTemperatures(Grid grid, TableRows rows, int column) {
    for (int row = rows.firstRow(); row <= rows.lastRow(); row++) {
      boolean text = grid.kind(row, column) == Grid.Kind.TEXT;
      if (text && !Double.isNaN(CellText.read(grid.text(row, column)).temperature)) {
        return true;
      }
    }
    return false;
  }

  private void add(double value) {
    if (value == 0) {
      numbers++;
      below32++;
      min = Math.min(min, 0);
      max = Math.max(max, 0);
      return;
    }
    numbers++;
    min = Math.min(min, value);
    max = Math.max(max, value);
    if (ReadingScale.looksLikeGravity(value)) {
      likeGravity++;
    }
    if (value < 32) {
      below32++;
    }
    if (value > 60) {
      above60++;
    }
    if (value < 0) {
      negative++;
    }
  }

  int numbers() {
    return numbers;
  }

  double min() {
    return min;
  }

  double max() {
    return max;
  }

  boolean mostlyGravity() {
    return numbers > 0 && likeGravity >= 0.8 * numbers;
  }

  boolean allGravity() {
    return numbers > 0 && likeGravity == numbers;
  }

  /** The unit of temperatures; empty when the numbers would do for both or for neither. */
  Optional<TemperatureUnit> temperatureUnit() {
    if (numbers == 0) {
      return Optional.empty();
    }
    if (above60 > 0 && below32 == 0) {
      return Optional.of(TemperatureUnit.F);
    }
    return above60 == 0 && negative == 0 && below32 > 0
        ? Optional.of(TemperatureUnit.C)
        : Optional.empty();
  }

  /** The least and the greatest number, to be read. */
  Message range() {
    return RowRefusals.range(min, max, "");
  }
}
