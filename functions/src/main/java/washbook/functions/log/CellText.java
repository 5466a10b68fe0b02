package washbook.functions.log;

import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * The numbers in a cell's text, as people write them: {@code 1.085 @ 68F}, {@code 1,085}, {@code
 * ~1.05}, {@code 12 °Bx}, {@code 2 kg}. A value comes first; a second number counts only with a
 * temperature's unit behind it.
 */
final class CellText {
  /** What the text is. */
  enum Form {
    /** Says that there is nothing: n/a, -, none. */
    NOTHING,
    /** One number, perhaps with a unit and a temperature. */
    VALUE,
    /** A temperature alone, as 68F. */
    TEMPERATURE,
    /** Anything else. */
    OTHER
  }

  private static final String NOTHINGS =
      "|n/a|na|n.a.|none|nil|-|--|---|?|??|x|.|..|...|k.a.|keine|s/o|nd|n.d.|nvt|n.v.t.|\u2013|\u2014|/|tbd|";

  private static final List<String> ABOUT =
      List.of("circa", "ca", "approx", "about", "etwa", "env", "c.");

  private static final Set<String> CONNECTORS =
      Set.of("at", "bei", "a", "\u00e0", "by", "bij", "op", "em", "con", "de", "t");

  private final String text;
  private int at;

  Form form = Form.OTHER;
  double value = Double.NaN;

  /** Word behind the number in lower case, "" for none. */
  String unit = "";

  double temperature = Double.NaN;
  boolean temperatureInF;

  private CellText(String text) {
    this.text = text;
  }

  static CellText read(String text) {
    CellText result = new CellText(text.strip());
    result.parse();
    return result;
  }

  private void parse() {
    if (text.isEmpty() || NOTHINGS.contains("|" + text.toLowerCase(Locale.ROOT) + "|")) {
      form = Form.NOTHING;
      return;
    }
    skipAbout();
    double first = number();
    if (Double.isNaN(first)) {
      return;
    }
    String firstUnit = word();
    skipConnector();
    double second = number();
    if (Double.isNaN(second)) {
      if (at < text.length()) {
        return;
      }
      value = first;
      unit = firstUnit;
      form = isTemperature(firstUnit) ? Form.TEMPERATURE : Form.VALUE;
      if (form == Form.TEMPERATURE) {
        temperature = first;
        temperatureInF = isF(firstUnit);
      }
      return;
    }
    String secondUnit = word();
    skip(" \u00a0)].");
    if (at < text.length() || !isTemperature(secondUnit) || isTemperature(firstUnit)) {
      return;
    }
    value = first;
    unit = firstUnit;
    temperature = second;
    temperatureInF = isF(secondUnit);
    form = Form.VALUE;
  }

  private static boolean isTemperature(String unit) {
    return unit.equals("c") || unit.equals("celsius") || isF(unit);
  }

  private static boolean isF(String unit) {
    return unit.equals("f") || unit.equals("fahrenheit");
  }

  /** Passes over marks and words that say that a number is not exact. */
  private void skipAbout() {
    skip("~\u2248\u00b1 \u00a0'");
    String lower = text.toLowerCase(Locale.ROOT);
    for (String word : ABOUT) {
      if (lower.startsWith(word, at)) {
        at += word.length();
        skip(". \u00a0");
        break;
      }
    }
  }

  /** Passes over what stands between a reading and its temperature. */
  private void skipConnector() {
    skip(" \u00a0@()[],;/-");
    int start = at;
    while (at < text.length() && Character.isLetter(text.charAt(at))) {
      at++;
    }
    if (at > start && !CONNECTORS.contains(text.substring(start, at).toLowerCase(Locale.ROOT))) {
      at = start;
    }
    skip(" \u00a0@([");
  }

  private void skip(String characters) {
    while (at < text.length() && characters.indexOf(text.charAt(at)) >= 0) {
      at++;
    }
  }

  /** Reads a number with a point or a decimal comma; NaN when none begins here. */
  private double number() {
    int start = at;
    int end = at;
    boolean digits = false;
    int separator = -1;
    if (end < text.length() && "+-\u2212".indexOf(text.charAt(end)) >= 0) {
      end++;
    }
    for (; end < text.length(); end++) {
      char c = text.charAt(end);
      if (c >= '0' && c <= '9') {
        digits = true;
      } else if ((c == '.' || c == ',')
          && separator < 0
          && end + 1 < text.length()
          && Character.isDigit(text.charAt(end + 1))) {
        separator = end;
      } else {
        break;
      }
    }
    if (!digits || end - start > 18) {
      return Double.NaN;
    }
    at = end;
    return Double.parseDouble(text.substring(start, end).replace(',', '.').replace('\u2212', '-'));
  }

  /** Reads letters behind a number, without degree sign and spaces. */
  private String word() {
    int start = at;
    skip(" \u00a0\u00b0\u00ba");
    int from = at;
    while (at < text.length()
        && (Character.isLetter(text.charAt(at))
            || (at > from && (text.charAt(at) == '/' || Character.isDigit(text.charAt(at)))))) {
      at++;
    }
    if (at == from) {
      return "";
    }
    String word = text.substring(from, at).toLowerCase(Locale.ROOT);
    return CONNECTORS.contains(word) ? "" : word;
  }
}
