package washbook.log.words;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** An hour or a half of the day in words behind a date, as {@code Wed 8/24 am}. */
final class HourBehindDate {
  /** A half of the day behind a date: {@code Wed 8/24 am}. */
  private static final Pattern HALF_DAY =
      Pattern.compile("(.*[\\p{L}\\d.]),?\\s+(\\p{L}[\\p{L}.]*)");

  /** An hour behind a date: {@code 06-feb 07h}, {@code 14/03 21u30}, {@code 7/11 6 am}. */
  private static final Pattern HOUR =
      Pattern.compile(
          "(.*\\S)\\s+(\\d{1,2})\\s?(h|u|uur|uhr|hrs?|am|pm)\\.?(\\d{2})?",
          Pattern.CASE_INSENSITIVE);

  private static final Set<String> LATER_HALF =
      Set.of(
          "pm",
          "p.m.",
          "evening",
          "night",
          "afternoon",
          "abend",
          "abends",
          "nachmittag",
          "nachmittags",
          "soir",
          "tarde",
          "noche",
          "noite",
          "sera",
          "pomeriggio",
          "avond",
          "middag",
          "aand",
          "namiddag");

  private static final Set<String> EARLIER_HALF =
      Set.of(
          "am",
          "a.m.",
          "morning",
          "fr\u00fch",
          "morgens",
          "vormittag",
          "matin",
          "ma\u00f1ana",
          "manh\u00e3",
          "manha",
          "mattina",
          "ochtend",
          "oggend");

  /** Longer texts are no dates. */
  private static final int LONGEST = 60;

  private static final double MORNING = 0.375;

  private static final double EVENING = 0.75;

  private HourBehindDate() {}

  /** Whether a date may be followed by an hour or by a half of the day. */
  static boolean mayEnd(String text) {
    int end = text.length() - 1;
    if (end < 0 || end > LONGEST || text.indexOf(' ') < 0) {
      return false;
    }
    char last = text.charAt(end);
    boolean minutes =
        Character.isDigit(last) && end > 2 && "hHuU".indexOf(text.charAt(end - 2)) >= 0;
    return minutes || last == '.' || Character.isLetter(last);
  }

  /** One hour or one half of the day behind a date; both together say more than is read. */
  static double serial(String text, DateText.Order order, double near) {
    Matcher hour = HOUR.matcher(text);
    if (hour.matches() && isPlainDate(hour.group(1))) {
      return DateText.withClock(hour.group(1), order, near) + hour(hour);
    }
    Matcher half = HALF_DAY.matcher(text);
    if (half.matches() && text.indexOf(':') < 0) {
      String word = half.group(2).toLowerCase(Locale.ROOT);
      boolean later = LATER_HALF.contains(word);
      if ((later || EARLIER_HALF.contains(word)) && isPlainDate(half.group(1))) {
        return DateText.withClock(half.group(1), order, near) + (later ? EVENING : MORNING);
      }
      if (HOUR.matcher(text).matches() || later || EARLIER_HALF.contains(word)) {
        return Double.NaN;
      }
    }
    return hour.matches() ? Double.NaN : DateText.withClock(text, order, near);
  }

  /** A date with at least a day and a month, and no word for an hour or a half of the day. */
  private static boolean isPlainDate(String text) {
    Matcher half = HALF_DAY.matcher(text);
    boolean another =
        HOUR.matcher(text).matches()
            || half.matches()
                && (LATER_HALF.contains(half.group(2).toLowerCase(Locale.ROOT))
                    || EARLIER_HALF.contains(half.group(2).toLowerCase(Locale.ROOT)));
    long figures = text.chars().filter(Character::isDigit).count();
    boolean month = DateText.monthNamed(text) > 0;
    return !another && (month ? figures > 0 : text.chars().anyMatch(c -> "./-".indexOf(c) >= 0));
  }

  /** A date without what stands behind it. */
  static String without(String text) {
    if (!mayEnd(text)) {
      return text;
    }
    Matcher hour = HOUR.matcher(text);
    String date = hour.matches() ? hour.group(1) : text;
    Matcher half = HALF_DAY.matcher(date);
    return half.matches() ? half.group(1) : date;
  }

  private static double hour(Matcher hour) {
    String half = hour.group(3).toLowerCase(Locale.ROOT);
    String minutes = hour.group(4) == null ? "" : ":" + hour.group(4);
    return DateText.time(
        hour.group(2) + minutes + (half.endsWith("m") ? half : minutes.isEmpty() ? "h" : ""));
  }
}
