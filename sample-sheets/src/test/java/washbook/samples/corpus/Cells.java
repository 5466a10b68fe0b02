package washbook.samples.corpus;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import washbook.samples.ferment.Entry;

/** What people write into the cells of a log. */
final class Cells {
  static final Function<Entry, Object> DATE = e -> e.time().toLocalDate();
  static final Function<Entry, Object> DATE_TIME = Entry::time;
  static final Function<Entry, Object> TIME = e -> e.time().toLocalTime();
  static final Function<Entry, Object> SHOWN = Entry::shown;
  static final Function<Entry, Object> SG = e -> new Page.Shown(e.shown(), "0.000");
  static final Function<Entry, Object> TENTH = e -> new Page.Shown(e.shown(), "0.0");

  /** 1.085 as 1085. */
  static final Function<Entry, Object> THOUSAND = e -> (double) Math.round(e.shown() * 1000);

  static final Function<Entry, Object> TEMPERATURE = Entry::temperature;
  static final Function<Entry, Object> DAY = e -> e.moment().day();
  static final Function<Entry, Object> BATCH = e -> e.moment().ferment().name();
  static final Function<Entry, Object> NOTHING = e -> null;

  private Cells() {}

  static Function<Entry, Object> date(String pattern) {
    return date(pattern, Locale.ENGLISH);
  }

  static Function<Entry, Object> date(String pattern, Locale language) {
    DateTimeFormatter format = DateTimeFormatter.ofPattern(pattern, language);
    return e -> format.format(e.time());
  }

  /** The reading as text, as {@code 1,085}. */
  static Function<Entry, Object> text(String format, char decimal) {
    return e -> String.format(Locale.ROOT, format, e.shown()).replace('.', decimal);
  }

  /** Notes by row; blank where there are no more. */
  static Function<Entry, Object> notes(List<Entry> entries, String... notes) {
    return e -> {
      int i = entries.indexOf(e);
      return i >= 0 && i < notes.length && !notes[i].isEmpty() ? notes[i] : null;
    };
  }

  /** An always-the-same value. */
  static Function<Entry, Object> always(Object value) {
    return e -> value;
  }

  /** Rows with blank rows after the given ones. */
  static List<Object> withBlankRows(List<Entry> entries, int... after) {
    List<Object> rows = new ArrayList<>();
    for (int i = 0; i < entries.size(); i++) {
      rows.add(entries.get(i));
      for (int a : after) {
        if (a == i) {
          rows.add(null);
        }
      }
    }
    return rows;
  }

  static List<Object> lines(Object... parts) {
    List<Object> rows = new ArrayList<>();
    for (Object part : parts) {
      if (part instanceof List<?> many) {
        rows.addAll(many);
      } else {
        rows.add(part);
      }
    }
    return rows;
  }

  /** A line written as it stands. */
  static Object raw(Object... values) {
    return values;
  }
}
