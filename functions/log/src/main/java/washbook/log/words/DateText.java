package washbook.log.words;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import washbook.log.sheet.Grid;

/** Dates written as text: ISO, day or month first, with month names; an optional time after it. */
public final class DateText {
  static final LocalDate ZERO = LocalDate.of(1899, 12, 30);

  /** Beginnings of month names in the eight languages, without accents; twelve groups. */
  private static final String[][] MONTHS = {
    {"jan", "ene", "gen"},
    {"feb", "fev", "fevr"},
    {"mar", "mrt", "mae", "maa", "mrz"},
    {"apr", "avr", "abr"},
    {"may", "mai", "mag", "mei", "mayo"},
    {"jun", "juin", "giu"},
    {"jul", "juil", "lug"},
    {"aug", "aou", "ago"},
    {"sep", "set"},
    {"oct", "okt", "out", "ott"},
    {"nov"},
    {"dec", "dez", "dic", "des"}
  };

  private static final Pattern WORD_OR_COMMA = Pattern.compile("\\p{L}[\\p{L}\\p{M}]*\\.?|,");

  /** A word before a date in figures; which language's weekday it is does not matter. */
  private static final Pattern WEEKDAY =
      Pattern.compile(
          "\\p{L}[\\p{L}\\p{M}-]{0,14}\\.?,?\\s*(?=\\d{1,4}[./-]\\s?\\d{1,2}[./-]\\s?\\d{1,4}(\\D|$)"
              + "|\\d{1,2}/\\d{1,2}$|\\d{1,2}\\.\\s?\\d{1,2}\\.$)");

  /** {@code 28/10} or {@code 28.10.}: a date that leaves its year out. */
  private static final Pattern DAY_AND_MONTH =
      Pattern.compile("\\d{1,2}/\\d{1,2}|\\d{1,2}\\.\\s?\\d{1,2}\\.");

  private static final int ISO_LENGTH = 10;

  /** Serials beyond this are no dates of a log. */
  static final double LAST_SERIAL = 1e6;

  /** Seconds from midnight to noon: 12 am is midnight, 12 pm is noon. */
  private static final double NOON = 12 * 3600;

  private DateText() {}

  /** Which of two small numbers comes first. */
  public enum Order {
    DAY_FIRST,
    MONTH_FIRST,
    /** Either would do. */
    UNKNOWN
  }

  /** What a single text says about the order; UNKNOWN when it is no such date. */
  public static Order order(String text) {
    int[] parts = new int[3];
    String date = HourBehindDate.without(text.strip());
    String plain = withoutWeekday(date);
    int count = numbers(plain, parts);
    if (count == 2 && DAY_AND_MONTH.matcher(plain).matches()) {
      return parts[0] > 12 ? Order.DAY_FIRST : parts[1] > 12 ? Order.MONTH_FIRST : Order.UNKNOWN;
    }
    if (count != 3 || parts[0] > 31) {
      return Order.UNKNOWN;
    }
    if (text.contains(".") && !text.contains("/")) {
      return Order.DAY_FIRST;
    }
    if (parts[0] > 12) {
      return Order.DAY_FIRST;
    }
    return parts[1] > 12 ? Order.MONTH_FIRST : Order.UNKNOWN;
  }

  /** Whether a cell holds a date, as such or as a text. */
  public static boolean isDate(Grid grid, int row, int column) {
    return switch (grid.kind(row, column)) {
      case DATE -> true;
      case TEXT -> isDate(grid.text(row, column));
      default -> false;
    };
  }

  /** Whether a text is a date, day or month first. */
  public static boolean isDate(String text) {
    return !Double.isNaN(serial(text, Order.DAY_FIRST))
        || !Double.isNaN(serial(text, Order.MONTH_FIRST));
  }

  /** Days since 1899-12-30, with the time as fraction; NaN when the text is no date. */
  public static double serial(String text, Order order) {
    return serial(text, order, Double.NaN);
  }

  /**
   * The same; a date without a year is put into the one that brings it nearest to another date, so
   * that 2 Jan follows 30 Dec.
   */
  public static double serial(String text, Order order, double near) {
    if (!hasFigure(text)) {
      return Double.NaN;
    }
    String stripped = text.strip();
    return HourBehindDate.mayEnd(stripped)
        ? HourBehindDate.serial(stripped, order, near)
        : withClock(stripped, order, near);
  }

  private static boolean hasFigure(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) >= '0' && text.charAt(i) <= '9') {
        return true;
      }
    }
    return false;
  }

  /** The day of {@code 2026-11-28}, perhaps with a time behind it; NaN for other texts. */
  private static double isoDay(String text) {
    boolean whole = text.length() == ISO_LENGTH;
    boolean timed =
        text.length() > ISO_LENGTH
            && (text.charAt(ISO_LENGTH) == ' ' || text.charAt(ISO_LENGTH) == 'T')
            && text.indexOf(':') > ISO_LENGTH;
    if (!whole && !timed || text.charAt(4) != '-' || text.charAt(7) != '-') {
      return Double.NaN;
    }
    int year = figures(text, 0, 4);
    int month = figures(text, 5, 7);
    int day = figures(text, 8, 10);
    if (year <= 31 || month < 1 || month > 12 || day < 1) {
      return Double.NaN;
    }
    return day > YearMonth.of(year, month).lengthOfMonth()
        ? Double.NaN
        : LocalDate.of(year, month, day).toEpochDay() - ZERO.toEpochDay();
  }

  /** Digits from one place to another as a number, -1 where something else stands there. */
  private static int figures(String text, int from, int to) {
    int number = 0;
    for (int i = from; i < to; i++) {
      char c = text.charAt(i);
      if (c < '0' || c > '9') {
        return -1;
      }
      number = 10 * number + c - '0';
    }
    return number;
  }

  /** The same of a date with a time like 18:30 behind it, or none. */
  static double withClock(String stripped, Order order, double near) {
    double iso = isoDay(stripped);
    if (!Double.isNaN(iso)) {
      return iso + (stripped.length() == ISO_LENGTH ? 0 : time(stripped.substring(ISO_LENGTH)));
    }
    String trimmed = withoutWeekday(stripped);
    int space = dateEnd(trimmed);
    String date = trimmed.substring(0, space);
    double time = space < trimmed.length() ? time(trimmed.substring(space)) : 0;
    if (Double.isNaN(time)) {
      return Double.NaN;
    }
    LocalDate day = date(date, order, near);
    day = day == null ? WeekdayAndDay.date(date, near) : day;
    return day == null ? Double.NaN : day.toEpochDay() - ZERO.toEpochDay() + time;
  }

  /** A time of day such as 18:30 as a fraction of a day, NaN when it is none. */
  public static double time(String text) {
    String t = text.strip().toLowerCase(Locale.ROOT);
    boolean afternoon = t.endsWith("pm");
    boolean morning = t.endsWith("am");
    if (afternoon || morning) {
      t = t.substring(0, t.length() - 2).strip();
    }
    if (t.startsWith("t")) {
      t = t.substring(1);
    }
    if (t.endsWith("h") || t.endsWith("z")) {
      t = t.substring(0, t.length() - 1);
    }
    String[] parts = t.split("[:h.]", -1);
    if (parts.length > 3) {
      return Double.NaN;
    }
    double seconds = 0;
    double unit = 3600;
    for (int i = 0; i < parts.length; i++) {
      if (parts[i].isEmpty() || parts[i].length() > 2 || !isDigits(parts[i])) {
        return Double.NaN;
      }
      int value = Integer.parseInt(parts[i]);
      if (value > (i == 0 ? 24 : 59)) {
        return Double.NaN;
      }
      seconds += value * unit;
      unit /= 60;
    }
    if (afternoon && seconds < NOON) {
      seconds += NOON;
    } else if (morning && seconds >= NOON) {
      seconds -= NOON;
    }
    return seconds / (2 * NOON);
  }

  /** The text without a weekday or its abbreviation before a date in figures. */
  private static String withoutWeekday(String text) {
    Matcher matcher = WEEKDAY.matcher(text);
    return matcher.lookingAt() ? text.substring(matcher.end()) : text;
  }

  /** Where the date ends and a time begins. */
  private static int dateEnd(String text) {
    int colon = text.indexOf(':');
    if (colon < 0) {
      return text.length();
    }
    int at = colon;
    while (at > 0 && Character.isDigit(text.charAt(at - 1))) {
      at--;
    }
    return at > 0 && (text.charAt(at - 1) == 'T' || text.charAt(at - 1) == ' ') ? at - 1 : 0;
  }

  private static LocalDate date(String text, Order order, double near) {
    int[] parts = new int[3];
    int month = 0;
    int count = numbers(text, parts);
    if (count == -1) {
      month = monthNamed(text);
      if (month == 0) {
        return null;
      }
      count = numbers(WORD_OR_COMMA.matcher(text).replaceAll(" ").strip(), parts);
      if (count < 1 || count > 2) {
        return null;
      }
    }
    try {
      if (month > 0) {
        if (count == 1) {
          return nearest(MonthDay.of(month, parts[0]), near);
        }
        return parts[0] > 31
            ? LocalDate.of(year(parts[0]), month, parts[1])
            : LocalDate.of(year(parts[1]), month, parts[0]);
      }
      if (count == 2 && DAY_AND_MONTH.matcher(text.strip()).matches()) {
        boolean monthFirst = order == Order.MONTH_FIRST;
        return nearest(MonthDay.of(parts[monthFirst ? 0 : 1], parts[monthFirst ? 1 : 0]), near);
      }
      if (count != 3) {
        return null;
      }
      if (parts[0] > 31) {
        return LocalDate.of(parts[0], parts[1], parts[2]);
      }
      return order == Order.MONTH_FIRST
          ? LocalDate.of(year(parts[2]), parts[0], parts[1])
          : LocalDate.of(year(parts[2]), parts[1], parts[0]);
    } catch (DateTimeException notADate) {
      return null;
    }
  }

  private static LocalDate nearest(MonthDay day, double near) {
    if (!(Math.abs(near) < LAST_SERIAL)) {
      return day.atYear(2000);
    }
    LocalDate reference = ZERO.plusDays((long) near);
    LocalDate best = day.atYear(reference.getYear());
    for (int years = -1; years <= 1; years += 2) {
      LocalDate other = day.atYear(reference.getYear() + years);
      if (Math.abs(ChronoUnit.DAYS.between(reference, other))
          < Math.abs(ChronoUnit.DAYS.between(reference, best))) {
        best = other;
      }
    }
    return best;
  }

  /** Whether a text is a date with a month's name and no year. */
  public static boolean lacksYear(String text) {
    double early = serial(text, Order.DAY_FIRST, 0);
    return early != serial(text, Order.DAY_FIRST, LAST_SERIAL - 1) && !Double.isNaN(early);
  }

  private static int year(int shown) {
    return shown < 100 ? 2000 + shown : shown;
  }

  /** The last month named: {@code mar 3 nov} is a Tuesday in November. */
  static int monthNamed(String text) {
    int named = 0;
    for (String token : Vocabulary.tokens(text)) {
      if (!Character.isLetter(token.charAt(0)) || token.length() < 3) {
        continue;
      }
      for (int month = 0; month < MONTHS.length; month++) {
        for (String start : MONTHS[month]) {
          if (token.startsWith(start) && !isWeekday(token)) {
            named = month + 1;
          }
        }
      }
    }
    return named;
  }

  /** Whether a word is a whole weekday's name, as {@code martes} or {@code maandag}. */
  private static boolean isWeekday(String token) {
    return token.length() > 3 && Vocabulary.meanings(token).contains(Concept.WEEKDAY);
  }

  /** Numbers separated by one of {@code / - .} or a space; -1 when anything else is in the text. */
  private static int numbers(String text, int[] parts) {
    int count = 0;
    boolean inNumber = false;
    int digits = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c >= '0' && c <= '9') {
        if (!inNumber) {
          if (count == 3) {
            return -1;
          }
          parts[count++] = 0;
          digits = 0;
        }
        if (++digits > 4) {
          return -1;
        }
        parts[count - 1] = parts[count - 1] * 10 + (c - '0');
        inNumber = true;
      } else if (c == '/' || c == '-' || c == '.' || c == ' ') {
        inNumber = false;
      } else {
        return -1;
      }
    }
    return count;
  }

  private static boolean isDigits(String text) {
    return text.chars().allMatch(c -> c >= '0' && c <= '9');
  }
}
