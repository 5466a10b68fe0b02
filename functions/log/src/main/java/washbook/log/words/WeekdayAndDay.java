package washbook.log.words;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A weekday with the day of a month that is not named, as {@code Tue 7}. */
public final class WeekdayAndDay {
  private static final Pattern FORM =
      Pattern.compile("(\\p{L}[\\p{L}\\p{M}]*)\\.?,?\\s+(\\d{1,2})\\.?");

  /** Weekdays that are words or months too: only before a day do they mean one. */
  private static final Set<String> SHORT_DAYS =
      Set.of(
          "lun",
          "mar",
          "mer",
          "jeu",
          "ven",
          "sam",
          "dim",
          "mie",
          "mi\u00e9",
          "jue",
          "vie",
          "sab",
          "s\u00e1b",
          "dom",
          "gio",
          "seg",
          "ter",
          "qua",
          "qui",
          "sex",
          "din",
          "don",
          "vri",
          "vry");

  private WeekdayAndDay() {}

  /** Whether a text is one, perhaps also the day of a month: {@code mar 7}. */
  public static boolean isOne(String text) {
    return read(text) != null;
  }

  /** Whether a text is one and no day of a month. */
  public static boolean isOneOnly(String text) {
    return isOne(text) && DateText.monthNamed(text) == 0;
  }

  /** Days since 1899-12-30, also where the weekday is called as a month is; NaN for none. */
  public static double serial(String text, double near) {
    LocalDate at = date(text, near);
    return at == null ? Double.NaN : ChronoUnit.DAYS.between(DateText.ZERO, at);
  }

  /** The next such day from another date on; null for none. */
  static LocalDate date(String text, double near) {
    Matcher matcher = Math.abs(near) < DateText.LAST_SERIAL ? read(text) : null;
    if (matcher == null) {
      return null;
    }
    int day = Integer.parseInt(matcher.group(2));
    LocalDate at = DateText.ZERO.plusDays((long) near);
    while (day >= 1 && day <= 31 && at.getDayOfMonth() != day) {
      at = at.plusDays(1);
    }
    return at.getDayOfMonth() == day ? at : null;
  }

  /** Its parts; null where the text is none. */
  private static Matcher read(String text) {
    Matcher matcher = FORM.matcher(text.strip());
    return matcher.matches()
            && (SHORT_DAYS.contains(matcher.group(1).toLowerCase(Locale.ROOT))
                || Vocabulary.meanings(matcher.group(1)).contains(Concept.WEEKDAY))
        ? matcher
        : null;
  }
}
