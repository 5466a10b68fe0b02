package washbook.log.reading;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.regex.Pattern;
import washbook.log.LogColumn;
import washbook.log.LogTable;
import washbook.log.Role;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;
import washbook.log.words.CellText;
import washbook.log.words.Concept;
import washbook.log.words.DateText;
import washbook.log.words.Vocabulary;
import washbook.log.words.WeekdayAndDay;

/** When the rows of a table were taken, and rows put in the order of time. */
public final class RowTimes {
  /** Day 0 of the serial numbers of spreadsheets. */
  private static final LocalDate EPOCH = LocalDate.of(1899, 12, 30);

  private static final Pattern DASHED = Pattern.compile("\\d{1,2}-\\d{1,2}");

  /** The last day that a spreadsheet has, 9999-12-31 (ECMA-376 part 1, 18.17.4.1). */
  private static final double LAST_DAY = 2_958_465;

  /** Less is a count of days; January 1927, no log of today begins before. */
  private static final double FIRST_CALENDAR_DAY = 10_000;

  /** Rows in which a weekday shows itself. */
  private static final int WEEK = 20;

  private final double[] days;
  private final int firstRow;
  private final boolean any;
  private int slip = -1;

  private RowTimes(double[] days, int firstRow, boolean any) {
    this.days = days;
    this.firstRow = firstRow;
    this.any = any;
  }

  /**
   * Reads the time columns: date and time, else hours, else day number. A row without a time has
   * that of the row before it, and one of which only the day is known is no earlier on that day.
   */
  public static RowTimes of(Grid grid, LogTable table) {
    int date = column(table, Role.DATE);
    int time = column(table, Role.TIME);
    int hours = column(table, Role.HOURS);
    int day = column(table, Role.DAY);
    if (date < 0 && hours < 0 && day < 0) {
      return new RowTimes(new double[0], table.firstRow(), false);
    }
    if (date < 0 && hours < 0 && time < 0 && countsBack(grid, table, day)) {
      return new RowTimes(new double[0], table.firstRow(), false);
    }
    double[] days = new double[table.lastRow() - table.firstRow() + 1];
    DateText.Order order = date < 0 ? DateText.Order.UNKNOWN : order(grid, table, date);
    double before = Double.NaN;
    double near = date < 0 ? Double.NaN : firstWithYear(grid, table, date);
    boolean weekdays = date >= 0 && namesWeekdays(grid, table, date);
    for (int row = table.firstRow(); row <= table.lastRow(); row++) {
      double at;
      boolean counted = date < 0 && hours >= 0;
      double clock = time < 0 ? Double.NaN : timeOf(grid, row, time);
      if (date >= 0) {
        double after = Double.isNaN(before) ? near : before;
        at =
            weekdays && grid.kind(row, date) == Kind.TEXT
                ? weekdayOf(grid.text(row, date), order, after)
                : dateOf(grid, row, date, order, after);
      } else if (counted) {
        at = CellText.plainNumber(grid, row, hours) / 24;
      } else {
        at = dayOf(grid, row, day);
      }
      if (!counted && !Double.isNaN(clock)) {
        at = Math.floor(Double.isNaN(at) ? before : at) + clock;
      }
      if (Math.abs(at) > LAST_DAY) {
        at = Double.NaN;
      }
      boolean onlyDay = at == Math.floor(at) && Math.floor(before) == at;
      if (Double.isNaN(at) || onlyDay && Double.isNaN(clock) && hours < 0) {
        at = before;
      }
      before = at;
      days[row - table.firstRow()] = at;
    }
    RowTimes times = new RowTimes(days, table.firstRow(), true);
    int slip = date < 0 ? -1 : mendYear(days);
    times.slip = slip < 0 ? -1 : table.firstRow() + slip;
    return times;
  }

  /**
   * The only date out of order, where it stands in order in the year before or after, or in that of
   * a date beside it: the year is a slip of the pen. Dates of several batches in turn are left
   * alone.
   */
  private static int mendYear(double[] days) {
    for (int i = 1; i + 1 < days.length; i++) {
      boolean off = days[i] < days[i - 1] || days[i] > days[i + 1];
      if (!off || !(days[i - 1] <= days[i + 1])) {
        continue;
      }
      double shown = days[i];
      LocalDate date = EPOCH.plusDays((long) shown);
      int before = EPOCH.plusDays((long) days[i - 1]).getYear() - date.getYear();
      int after = EPOCH.plusDays((long) days[i + 1]).getYear() - date.getYear();
      for (int years : new int[] {1, -1, before, after}) {
        long other = EPOCH.until(date.plusYears(years), ChronoUnit.DAYS);
        days[i] = other + shown - Math.floor(shown);
        if (isInOrder(days)) {
          return i;
        }
      }
      days[i] = shown;
      return -1;
    }
    return -1;
  }

  private static boolean isInOrder(double[] days) {
    double before = Double.NEGATIVE_INFINITY;
    for (double day : days) {
      if (day < before) {
        return false;
      }
      before = Double.isNaN(day) ? before : day;
    }
    return true;
  }

  /**
   * Whether what is called a day are numbers as 28.12 and 2.1 that go back: days with their months,
   * of which it is not known which month a tenth is. The rows stand in the order of time then.
   */
  private static boolean countsBack(Grid grid, LogTable table, int column) {
    double before = Double.NaN;
    boolean back = false;
    int numbers = 0;
    for (int row = table.firstRow(); row <= table.lastRow(); row++) {
      if (grid.kind(row, column) != Kind.NUMBER) {
        continue;
      }
      double value = grid.number(row, column);
      long month = Math.round((value - Math.floor(value)) * 100);
      boolean whole = Math.abs(value * 100 - Math.rint(value * 100)) < 1e-6;
      if (!whole || value < 1 || value >= 32 || month < 1 || month > 12) {
        return false;
      }
      back |= value < before;
      before = value;
      numbers++;
    }
    return back && numbers > 2;
  }

  private static int column(LogTable table, Role role) {
    return table.column(role).map(LogColumn::column).orElse(-1);
  }

  private static DateText.Order order(Grid grid, LogTable table, int column) {
    int dayFirst = 0;
    int monthFirst = 0;
    for (int row = table.firstRow(); row <= table.lastRow(); row++) {
      if (grid.kind(row, column) == Kind.TEXT) {
        DateText.Order order = DateText.order(text(grid, row, column));
        dayFirst += order == DateText.Order.DAY_FIRST ? 1 : 0;
        monthFirst += order == DateText.Order.MONTH_FIRST ? 1 : 0;
      }
    }
    if (dayFirst > 0 || monthFirst > 0) {
      return dayFirst >= monthFirst ? DateText.Order.DAY_FIRST : DateText.Order.MONTH_FIRST;
    }
    return falls(grid, table, column, DateText.Order.DAY_FIRST)
            > falls(grid, table, column, DateText.Order.MONTH_FIRST)
        ? DateText.Order.MONTH_FIRST
        : DateText.Order.DAY_FIRST;
  }

  /** How often a date lies before the one above it. */
  private static int falls(Grid grid, LogTable table, int column, DateText.Order order) {
    int falls = 0;
    double before = Double.NaN;
    for (int row = table.firstRow(); row <= table.lastRow(); row++) {
      if (grid.kind(row, column) == Kind.TEXT) {
        double at = DateText.serial(text(grid, row, column), order);
        falls += at < before ? 1 : 0;
        before = Double.isNaN(at) ? before : at;
      }
    }
    return falls;
  }

  /** The first date that states its year; NaN when none does. */
  private static double firstWithYear(Grid grid, LogTable table, int column) {
    for (int row = table.firstRow(); row <= table.lastRow(); row++) {
      double at = dateOf(grid, row, column, DateText.Order.DAY_FIRST, Double.NaN);
      boolean text = grid.kind(row, column) == Kind.TEXT;
      if (!Double.isNaN(at) && !(text && DateText.lacksYear(text(grid, row, column)))) {
        return at;
      }
    }
    return Double.NaN;
  }

  /** Whether the dates are weekdays with the day of the month; the first ones tell. */
  private static boolean namesWeekdays(Grid grid, LogTable table, int column) {
    int last = Math.min(table.lastRow(), table.firstRow() + WEEK);
    for (int row = table.firstRow(); row <= last; row++) {
      if (grid.kind(row, column) == Kind.TEXT && WeekdayAndDay.isOneOnly(grid.text(row, column))) {
        return true;
      }
    }
    return false;
  }

  private static double weekdayOf(String text, DateText.Order order, double after) {
    double day = WeekdayAndDay.serial(text, after);
    boolean known = !Double.isNaN(day) || WeekdayAndDay.isOne(text);
    return known ? day : DateText.serial(text, order, after);
  }

  private static double dateOf(Grid grid, int row, int column, DateText.Order order, double near) {
    return switch (grid.kind(row, column)) {
      case DATE -> grid.number(row, column);
      case NUMBER -> dayAndMonth(grid.number(row, column), near);
      case TEXT -> DateText.serial(text(grid, row, column), order, near);
      default -> Double.NaN;
    };
  }

  /** A date's text; {@code 4-3} in a column of dates is the fourth of March, or April 3. */
  private static String text(Grid grid, int row, int column) {
    String text = grid.text(row, column).strip();
    return DASHED.matcher(text).matches() ? text.replace('-', '/') : text;
  }

  /** A serial number of days; a number as 30.09, or 11.9 among dates, is a day and its month. */
  private static double dayAndMonth(double number, double near) {
    long month = Math.round((number - Math.floor(number)) * 100);
    boolean decimals = number > 1 && number < 32 && number != Math.rint(number);
    boolean ofOneDigit = month % 10 == 0 && near > FIRST_CALENDAR_DAY;
    if (!decimals || month > 12 && !ofOneDigit) {
      return number;
    }
    double whole = month > 12 ? Double.NaN : dayOfMonth(number, month, near);
    double one = ofOneDigit ? dayOfMonth(number, month / 10, near) : Double.NaN;
    boolean nearer = Math.abs(whole - near) <= Math.abs(one - near);
    return ofOneDigit && !nearer ? one : whole;
  }

  private static double dayOfMonth(double number, long month, double near) {
    return DateText.serial((int) number + "." + month + ".", DateText.Order.DAY_FIRST, near);
  }

  private static double timeOf(Grid grid, int row, int column) {
    switch (grid.kind(row, column)) {
      case DATE, NUMBER:
        double value = grid.number(row, column);
        return value >= 1 && value <= 24 ? value / 24 : value - Math.floor(value);
      case TEXT:
        return DateText.time(grid.text(row, column));
      default:
        return Double.NaN;
    }
  }

  private static double dayOf(Grid grid, int row, int column) {
    switch (grid.kind(row, column)) {
      case DATE, NUMBER:
        return grid.number(row, column);
      case TEXT:
        String text = grid.text(row, column);
        if (Vocabulary.meanings(text).contains(Concept.WEEKDAY)) {
          return Double.NaN;
        }
        int start = 0;
        while (start < text.length() && !Character.isDigit(text.charAt(start))) {
          start++;
        }
        if (namesNoCount(text.substring(0, start).strip())) {
          return Double.NaN;
        }
        CellText cell = CellText.read(text.substring(start));
        return cell.form == CellText.Form.VALUE ? cell.value : Double.NaN;
      default:
        return Double.NaN;
    }
  }

  /** Whether a word other than that for days stands before a number: {@code jeu 20} is a date. */
  private static boolean namesNoCount(String word) {
    return word.chars().filter(Character::isLetter).count() > 1
        && !Vocabulary.meanings(word).contains(Concept.DAY);
  }

  /** Whether the table has a time column. */
  boolean isKnown() {
    return any;
  }

  /** The row whose date is read in another year than it says, as those around it; -1 for none. */
  public int slip() {
    return slip;
  }

  /** The year of a row's date. */
  public int year(int row) {
    return EPOCH.plusDays((long) days(row)).getYear();
  }

  /** Days of a row, NaN when it has no time. */
  public double days(int row) {
    return any ? days[row - firstRow] : Double.NaN;
  }

  /**
   * Time of each given row in days, counted from the first one that has a time; NaN for rows before
   * any time, and for all where the log states none.
   */
  public double[] daysFromFirst(int[] rows) {
    double[] days = Arrays.stream(rows).mapToDouble(this::days).toArray();
    double start = Arrays.stream(days).filter(Double::isFinite).findFirst().orElse(Double.NaN);
    return Arrays.stream(days).map(day -> day - start).toArray();
  }

  /**
   * Sorts rows by time where they are not in order; rows of the same time keep their order, or turn
   * it where the newest stand on top.
   */
  public void sort(int[] rows) {
    if (!any || isSorted(rows)) {
      return;
    }
    if (isNewestFirst(rows)) {
      reverse(rows);
    }
    mergeSort(rows, new int[rows.length], 0, rows.length);
  }

  static void reverse(int[] rows) {
    for (int i = 0, j = rows.length - 1; i < j; i++, j--) {
      int row = rows[i];
      rows[i] = rows[j];
      rows[j] = row;
    }
  }

  private boolean isNewestFirst(int[] rows) {
    for (int i = 1; i < rows.length; i++) {
      if (days(rows[i]) > days(rows[i - 1])) {
        return false;
      }
    }
    return true;
  }

  private boolean isSorted(int[] rows) {
    for (int i = 1; i < rows.length; i++) {
      if (days(rows[i]) < days(rows[i - 1])) {
        return false;
      }
    }
    return true;
  }

  private void mergeSort(int[] rows, int[] spare, int from, int to) {
    if (to - from < 2) {
      return;
    }
    int middle = (from + to) >>> 1;
    mergeSort(rows, spare, from, middle);
    mergeSort(rows, spare, middle, to);
    System.arraycopy(rows, from, spare, from, to - from);
    int left = from;
    int right = middle;
    for (int i = from; i < to; i++) {
      boolean takeRight = left >= middle || (right < to && days(spare[right]) < days(spare[left]));
      rows[i] = takeRight ? spare[right++] : spare[left++];
    }
  }
}
