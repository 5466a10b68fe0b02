package washbook.log.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import washbook.functions.scale.TemperatureUnit;

/** The temperatures that lines about jars tell: of the spirit, for all of them or for one run. */
final class RunTemperatures {
  private static final String NUMBER = "(?<![\\p{L}\\d.,])(\\d{1,5}(?:[.,]\\d+)?)";

  private static final Pattern DEGREES =
      Pattern.compile(
          NUMBER
              + "\\s*\u00b0?\\s*(c|f|celsius|fahrenheit)\\b|"
              + NUMBER
              + "\\s*\u00b0(?!\\s*\\p{L})");
  private static final Pattern IN_BRACKETS =
      Pattern.compile("(\\p{L}+)\\s*\\(\\s*\\d+(?:[.,]\\d+)?\\s*\u00b0?\\s*[cf]?\\b");
  private static final Pattern OTHER_NUMBER = Pattern.compile("\\d");

  private static final Set<RunWord> NO_TEMPERATURE = Set.of(RunWord.CHARGE, RunWord.L);

  /** No alcoholometer is calibrated at more, \u00b0C. */
  static final double WARMEST_CALIBRATION = 26;

  private static final double WARMEST_SPIRIT = 40;

  /** Spirit is not often warmer where it is measured; common practice, no source. */
  private static final double WARMEST_LIKELY = 32;

  private static final Set<RunWord> PLACES =
      Set.of(RunWord.SPIRIT, RunWord.JAR, RunWord.READ, RunWord.INSTRUMENT, RunWord.CALIBRATED);

  /** Degrees in words, which may be those of a strength as well. */
  private static final Pattern IN_WORDS =
      Pattern.compile(
          NUMBER + "\\s*(?:grad|degr[e\u00e9]s|degrees|grados|gradi|graus|graden|grade)\\b");

  /** At the end of a clause, perhaps before a word for calibrated. */
  private static final Pattern MADE_FOR =
      Pattern.compile(
          "\\b(?:at|for|bei|auf|a|\u00e0|bij|op|em)\\s+(15|20)\\s*"
              + "(?:grad|deg|degr[e\u00e9]s|degrees|grados|gradi|graus|graden|grade)"
              + "(?:\\s+(?:geeicht|kalibriert|geijkt|gekalibreerd))?\\W*$",
          Pattern.UNICODE_CHARACTER_CLASS);

  private static final int LONGEST_LINE = 300;

  /** What one line tells, \u00b0C. */
  private record Told(String line, double celsius) {}

  private final List<Told> told = new ArrayList<>();

  private final List<Double> perhaps = new ArrayList<>();

  /** Takes what a clause of a line tells of the spirit; one below a table only adds to those. */
  void read(String line, String clause, Set<RunWord> words, boolean volume, boolean isBelow) {
    double celsius = celsius(clause);
    boolean elsewhere = words.contains(RunWord.HEAD) || words.contains(RunWord.ELSEWHERE);
    boolean read = words.contains(RunWord.READ) || words.contains(RunWord.INSTRUMENT);
    boolean spirit = !isBelow && (words.contains(RunWord.SPIRIT) || words.contains(RunWord.JAR));
    boolean scaled = isScaled(clause) || words.contains(RunWord.TEMPERATURE);
    boolean strength = NO_TEMPERATURE.stream().anyMatch(words::contains) || !scaled;
    boolean ofOne = isBelow && OTHER_NUMBER.matcher(DEGREES.matcher(clause).replaceAll("")).find();
    boolean known = isBelow && !told.isEmpty();
    boolean said = read || spirit && !strength;
    if (!elsewhere && !volume && !ofOne && !known && celsius <= WARMEST_SPIRIT && said) {
      told.add(new Told(line.strip(), celsius));
    } else if (!isBelow && PLACES.stream().anyMatch(words::contains)) {
      Matcher inWords = IN_WORDS.matcher(clause);
      double likely =
          Double.isNaN(celsius) && inWords.find()
              ? Double.parseDouble(inWords.group(1).replace(',', '.'))
              : celsius;
      if (likely > 0 && likely <= WARMEST_LIKELY) {
        perhaps.add(likely);
      }
    }
  }

  /**
   * The text of a cell of a line, as a clause of its own where it tells a temperature and of what;
   * what stands after a colon is one as well.
   */
  static String setApart(String text) {
    if (!isWhole(text)) {
      return " " + text;
    }
    int colon = text.lastIndexOf(':');
    boolean after = colon > 0 && isWhole(text.substring(colon + 1));
    return "; "
        + (after ? text.substring(0, colon) + "; " + text.substring(colon + 1) : text)
        + "; ";
  }

  private static boolean isWhole(String text) {
    return !Double.isNaN(celsius(text.toLowerCase(Locale.ROOT)))
        && PLACES.stream().anyMatch(RunWords.in(text)::contains);
  }

  /**
   * The temperature that lines may tell where none is sure to be the spirit's, \u00b0C; NaN for
   * none.
   */
  double perhaps() {
    return perhaps.isEmpty() ? Double.NaN : perhaps.get(0);
  }

  /**
   * The one that holds for all runs, \u00b0C; NaN where none does or several differ.
   *
   * @param labels what the runs are called: a line that begins with one speaks of that run alone
   */
  double ofAll(List<String> labels) {
    return only(line -> labels.stream().noneMatch(label -> isOf(line, label)));
  }

  /** The one of the run with a label, \u00b0C; NaN where no line or several tell one. */
  double of(String label) {
    return only(line -> isOf(line, label));
  }

  /** The one that lines tell, \u00b0C; NaN where none does or several differ. */
  private double only(Predicate<String> which) {
    double[] found =
        told.stream()
            .filter(t -> which.test(t.line()))
            .mapToDouble(Told::celsius)
            .distinct()
            .toArray();
    return found.length == 1 ? found[0] : Double.NaN;
  }

  private static boolean isOf(String line, String label) {
    return !label.isEmpty()
        && line.regionMatches(true, 0, label, 0, label.length())
        && (line.length() == label.length()
            || !Character.isLetterOrDigit(line.charAt(label.length())));
  }

  /** The temperature that a text says an instrument is calibrated at, \u00b0C; NaN for none. */
  static double statedCalibration(String text) {
    if (text.length() > LONGEST_LINE) {
      return Double.NaN;
    }
    for (String clause : text.toLowerCase(Locale.ROOT).split("[,;\u2013\u2014]")) {
      double celsius = celsius(clause);
      if (celsius < WARMEST_CALIBRATION && RunWords.in(clause).contains(RunWord.CALIBRATED)) {
        return celsius;
      }
    }
    return Double.NaN;
  }

  /** Whether the degrees stand in brackets right behind the name of an instrument. */
  static boolean isOfInstrument(String clause) {
    Matcher bracket = IN_BRACKETS.matcher(clause);
    return bracket.find() && RunWords.in(bracket.group(1)).contains(RunWord.INSTRUMENT);
  }

  /** Whether the first degrees of a clause are said to be of a temperature scale. */
  private static boolean isScaled(String clause) {
    Matcher degrees = DEGREES.matcher(clause);
    return degrees.find() && degrees.group(1) != null;
  }

  /** What an instrument is made for, \u00b0C: also degrees in a word, as {@code at 15 degrees}. */
  static double calibrationC(String clause) {
    double celsius = celsius(clause);
    Matcher words = MADE_FOR.matcher(clause);
    boolean one = OTHER_NUMBER.matcher(clause.replaceFirst(NUMBER, "")).find();
    return Double.isNaN(celsius) && !one && words.find()
        ? Double.parseDouble(words.group(1))
        : celsius;
  }

  /** The first temperature of a clause, \u00b0C; NaN where there is none. */
  static double celsius(String clause) {
    Matcher degrees = DEGREES.matcher(clause);
    if (!degrees.find()) {
      return Double.NaN;
    }
    double value =
        Double.parseDouble(
            (degrees.group(1) == null ? degrees.group(3) : degrees.group(1)).replace(',', '.'));
    boolean f = degrees.group(2) != null && degrees.group(2).startsWith("f");
    return f ? TemperatureUnit.F.toCelsius(value) : value;
  }
}
