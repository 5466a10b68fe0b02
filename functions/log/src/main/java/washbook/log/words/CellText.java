package washbook.log.words;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import washbook.functions.scale.TemperatureUnit;
import washbook.log.sheet.Grid;

/**
 * The numbers in a cell's text, as people write them: {@code 1.085 @ 68F}, {@code 1,085}, {@code
 * ~1.05}, {@code 12 °Bx}, {@code 2 kg}. A value comes first; a second number is read only with a
 * temperature's unit after it.
 */
public final class CellText {
  /** What the text is. */
  public enum Form {
    /** Says that there is nothing: n/a, -, none. */
    NOTHING,
    /** One number, perhaps with a unit and a temperature. */
    VALUE,
    /** A gravity and a number after it without a unit, as 1.052/15: perhaps its temperature. */
    PAIR,
    /** A temperature alone, as 68F. */
    TEMPERATURE,
    /** Anything else. */
    OTHER
  }

  private static final Set<String> NOTHINGS =
      Set.of(
          "",
          "n/a",
          "na",
          "n.a.",
          "none",
          "nil",
          "-",
          "--",
          "---",
          "?",
          "??",
          "x",
          ".",
          "..",
          "...",
          "k.a.",
          "keine",
          "s/o",
          "nd",
          "n.d.",
          "nvt",
          "n.v.t.",
          "\u2013",
          "\u2014",
          "/",
          "tbd",
          "n/b",
          "n.b.",
          "empty",
          "leer",
          "vide",
          "vacio",
          "vac\u00edo",
          "vuoto",
          "vuota",
          "vazio",
          "vazia",
          "leeg");

  /** Between them a number after a reading may be a temperature; a second gravity is not. */
  private static final double LEAST_PAIRED = 3;

  private static final double MOST_PAIRED = 140;

  private static final List<String> ABOUT =
      List.of("circa", "ca", "approx", "about", "etwa", "env", "c.");

  private static final Set<String> CONNECTORS =
      Set.of("at", "bei", "a", "\u00e0", "by", "bij", "op", "em", "con", "de", "t");

  /** A gravity as it is written with its decimals or in thousands. */
  private static final Pattern GRAVITY =
      Pattern.compile("[01]?[.,]\\d{2,4}(?!\\d).*|(9[789]|1[01])\\d\\d(?!\\d).*");

  /** Words for degrees of whatever kind after a number. */
  private static final Set<String> DEGREES =
      Set.of(
          "degrees",
          "degree",
          "deg",
          "grad",
          "degr\u00e9s",
          "degr\u00e9",
          "degres",
          "grados",
          "grado",
          "gradi",
          "graus",
          "grau",
          "graden",
          "graad",
          "grade");

  private final String text;
  private int at;

  public Form form = Form.OTHER;
  public double value = Double.NaN;

  /** Word after the number in lower case, "" for none. */
  public String unit = "";

  /** The temperature as it stands there, NaN when there is none. */
  public double temperature = Double.NaN;

  /** Its unit; °C as long as nothing says otherwise. */
  public TemperatureUnit temperatureUnit = TemperatureUnit.C;

  /** Whether a sign or a word says that what follows the value is the state it was read in. */
  public boolean marked;

  /** Whether a sign or a word says that the number is not exact. */
  public boolean isAbout;

  private CellText(String text) {
    this.text = text;
  }

  public static CellText read(String text) {
    CellText result = new CellText(text.strip());
    result.parse();
    return result;
  }

  private void parse() {
    if (NOTHINGS.contains(text.toLowerCase(Locale.ROOT))) {
      form = Form.NOTHING;
      return;
    }
    skipAbout();
    boolean gravity = GRAVITY.matcher(text.substring(at)).matches();
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
        temperatureUnit = isF(firstUnit) ? TemperatureUnit.F : TemperatureUnit.C;
      }
      return;
    }
    String secondUnit = word();
    skip(" \u00a0)].");
    if (at < text.length() || isTemperature(firstUnit)) {
      return;
    }
    if (secondUnit.isEmpty()
        && (gravity || marked)
        && second >= LEAST_PAIRED
        && second <= MOST_PAIRED) {
      value = first;
      unit = firstUnit;
      temperature = second;
      form = Form.PAIR;
      return;
    }
    if (!isTemperature(secondUnit)) {
      return;
    }
    value = first;
    unit = firstUnit;
    temperature = second;
    temperatureUnit = isF(secondUnit) ? TemperatureUnit.F : TemperatureUnit.C;
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
    int before = at;
    skip("~\u2248\u00b1 \u00a0'");
    isAbout = text.substring(before, at).chars().anyMatch(c -> "~\u2248\u00b1".indexOf(c) >= 0);
    String lower = text.toLowerCase(Locale.ROOT);
    for (String word : ABOUT) {
      if (lower.startsWith(word, at)) {
        at += word.length();
        isAbout = true;
        skip(". \u00a0");
        break;
      }
    }
  }

  /** Passes over what stands between a reading and its temperature. */
  private void skipConnector() {
    int before = at;
    skip(" \u00a0@()[],;/-");
    marked |= text.substring(before, at).indexOf('@') >= 0;
    int start = at;
    while (at < text.length() && Character.isLetter(text.charAt(at))) {
      at++;
    }
    if (!CONNECTORS.contains(text.substring(start, at).toLowerCase(Locale.ROOT))) {
      at = start;
    }
    marked |= at > start;
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

  /** Reads letters after a number, without degree sign, words for degrees and spaces. */
  private String word() {
    int start = at;
    skip(" \u00a0\u00b0\u00ba");
    marked |= text.substring(start, at).chars().anyMatch(c -> c == 0xb0 || c == 0xba);
    if (at < text.length() && text.charAt(at) == '%') {
      return percent();
    }
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
    if (DEGREES.contains(word)) {
      marked = true;
      skip(".");
      return word();
    }
    boolean connects = CONNECTORS.contains(word);
    marked |= connects;
    return connects ? "" : withSecondWord(word);
  }

  /** A per cent sign, perhaps with what it is a part of: {@code %} or {@code vol}. */
  private String percent() {
    at++;
    int sign = at;
    skip(" \u00a0");
    int from = at;
    while (at < text.length() && Character.isLetter(text.charAt(at))) {
      at++;
    }
    String of = text.substring(from, at).toLowerCase(Locale.ROOT);
    if (of.equals("vol")) {
      skip(".");
      return of;
    }
    at = sign;
    return "%";
  }

  /** A unit of two words, as {@code gal uk}. */
  private String withSecondWord(String word) {
    int end = at;
    skip(" \u00a0");
    int from = at;
    while (at < text.length() && Character.isLetter(text.charAt(at))) {
      at++;
    }
    String both = word + " " + text.substring(from, at).toLowerCase(Locale.ROOT);
    if (!AmountUnit.isOne(word) && AmountUnit.isOne(both)) {
      return both;
    }
    at = end;
    return word;
  }

  /** Whether it may be a reading: a value that is no amount, with a temperature or without. */
  public boolean isReading() {
    return form == Form.PAIR || form == Form.VALUE && !isAmount();
  }

  /** Whether it is an amount of mass or volume, as {@code 1500 L}. */
  public boolean isAmount() {
    return form == Form.VALUE && AmountUnit.isOne(unit) && !ReadingScale.looksLikeGravity(value);
  }

  /** The temperature in °C, NaN when there is none. */
  public double celsius() {
    return temperatureUnit.toCelsius(temperature);
  }

  /** The cell's number when it has no unit of its own, else NaN. */
  public static double plainNumber(Grid grid, int row, int column) {
    switch (grid.kind(row, column)) {
      case NUMBER:
        return grid.number(row, column);
      case TEXT:
        CellText cell = read(grid.text(row, column));
        boolean number = cell.form == Form.VALUE || cell.form == Form.PAIR;
        return number && cell.unit.isEmpty() ? cell.value : Double.NaN;
      default:
        return Double.NaN;
    }
  }

  /** The cell's number, whatever unit stands after it; NaN when there is none. */
  public static double number(Grid grid, int row, int column) {
    return grid.kind(row, column) == Grid.Kind.TEXT
        ? read(grid.text(row, column)).value
        : plainNumber(grid, row, column);
  }
}
