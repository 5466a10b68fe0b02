package washbook.log.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import washbook.functions.scale.TemperatureUnit;

/** Sentences in a log that say something about its readings. */
public final class Statement {
  private Statement() {}

  /** Whether the text says that readings are corrected already. */
  public static boolean saysCorrected(String text) {
    return saysCorrected(Vocabulary.meanings(text));
  }

  public static boolean saysCorrected(Set<Concept> meanings) {
    return meanings.contains(Concept.CORRECTED)
        && !meanings.contains(Concept.NEGATION)
        && !meanings.contains(Concept.UNCORRECTED);
  }

  private static final Pattern DEGREES =
      Pattern.compile(
          "(\\d{1,3}(?:[.,]\\d+)?)\\s*(?:\u00b0|\u00ba|(?i:deg\\.?|grad|degrees))?\\s*([CcFf])\\b");

  private static final Pattern IN_WATER =
      Pattern.compile("\\b(0[.,]9[89]\\d*|1[.,]0[01]\\d*|99\\d|100\\d|101\\d)\\b");

  /**
   * The temperatures of sample and water that a specific gravity is of, as 60/60, 20 °C/4 °C: those
   * in use, as 12/4 is a date.
   */
  private static final Pattern REFERENCE =
      Pattern.compile(
          "(?<![\\d./,-])(?:(15(?:[.,][56])?|17[.,]5|20|25|59|60|68)\\s{0,2}[\u00b0\u00ba]?"
              + "\\s{0,2}[CcFf]?\\s{0,2}/\\s{0,2}\\1|(15|20)\\s{0,2}[\u00b0\u00ba]\\s{0,2}[Cc]?/\\s{0,2}4)"
              + "\\s{0,2}[\u00b0\u00ba]?\\s{0,2}([CcFf]?)(?![\\d/-]|[.,]\\d|\\p{L})");

  /** A warmer reference without a unit is one in °F. */
  private static final double WARMEST_REFERENCE_C = 30;

  /**
   * The temperature of the sample of a specific gravity such as 60/60, °C; NaN when none is named.
   */
  public static double referenceIn(String text) {
    Matcher matcher = REFERENCE.matcher(text);
    if (!matcher.find()) {
      return Double.NaN;
    }
    String sample = matcher.group(1) == null ? matcher.group(2) : matcher.group(1);
    double shown = Double.parseDouble(sample.replace(',', '.'));
    boolean inF =
        matcher.group(3).isEmpty()
            ? shown > WARMEST_REFERENCE_C
            : matcher.group(3).equalsIgnoreCase("F");
    return inF ? TemperatureUnit.F.toCelsius(shown) : shown;
  }

  /** Whether a text is nothing but such a reference. */
  public static boolean isReference(String text) {
    return REFERENCE.matcher(text.strip()).matches();
  }

  /**
   * The only temperature in a text in °C, as in 60/60 and 60 °F/60 °F too; NaN when there is none
   * or more.
   */
  public static double temperatureIn(String text) {
    double celsius = referenceIn(text);
    Matcher matcher = DEGREES.matcher(REFERENCE.matcher(text).replaceAll(" "));
    while (matcher.find()) {
      if (!Double.isNaN(celsius) && celsius(matcher) != celsius) {
        return Double.NaN;
      }
      celsius = celsius(matcher);
    }
    return celsius;
  }

  private static double celsius(Matcher found) {
    double shown = Double.parseDouble(found.group(1).replace(',', '.'));
    return TemperatureUnit.valueOf(found.group(2).toUpperCase(Locale.ROOT)).toCelsius(shown);
  }

  /** What a hydrometer shows in water less 1, where a text says so; else NaN. */
  public static double readingInWater(String text) {
    Set<Concept> meanings = Vocabulary.meanings(text);
    if (!meanings.contains(Concept.HYDROMETER) || !meanings.contains(Concept.WATER)) {
      return Double.NaN;
    }
    Matcher matcher = IN_WATER.matcher(text);
    if (!matcher.find()) {
      return Double.NaN;
    }
    double shown = Double.parseDouble(matcher.group(1).replace(',', '.'));
    return ReadingScale.SG.toGravity(shown) - 1;
  }

  /** The temperature at which a text says that all samples are read, °C; NaN when it says none. */
  public static double samplesReadAt(String text) {
    for (String part : text.split(";")) {
      double celsius = samplesReadAtIn(part);
      if (!Double.isNaN(celsius)) {
        return celsius;
      }
    }
    return Double.NaN;
  }

  private static double samplesReadAtIn(String text) {
    Set<Concept> meanings = Vocabulary.meanings(text);
    boolean about =
        meanings.contains(Concept.SAMPLE)
            || (meanings.contains(Concept.READING) && !meanings.contains(Concept.HYDROMETER));
    boolean other =
        meanings.contains(Concept.CALIBRATION)
            || meanings.contains(Concept.CORRECTED)
            || meanings.contains(Concept.NEGATION)
            || meanings.contains(Concept.ORIGINAL)
            || meanings.contains(Concept.ORIGINALGRAVITY)
            || meanings.contains(Concept.FINALGRAVITY)
            || meanings.contains(Concept.OFFSET);
    return about && !other && !IN_WATER.matcher(text).find() ? temperatureIn(text) : Double.NaN;
  }

  private static final Pattern FIGURE =
      Pattern.compile("(?<![\\d.,])(\\d{1,4}(?:[.,]\\d{1,4})?)\\s*(\u00b0?\\s?\\p{L}{1,8})?");

  /** Whether a text speaks of what is wanted and not of what was read. */
  public static boolean saysTarget(String text) {
    Set<Concept> meanings = Vocabulary.meanings(text);
    return meanings.contains(Concept.TARGET) || meanings.contains(Concept.FINALGRAVITY);
  }

  /** The gravities that a text states on a scale, by its unit or as figures like 1.085; SG. */
  public static List<Double> figures(String text, ReadingScale scale) {
    List<Double> found = new ArrayList<>();
    Matcher matcher = FIGURE.matcher(text);
    while (matcher.find()) {
      double value = Double.parseDouble(matcher.group(1).replace(',', '.'));
      boolean plain =
          scale == ReadingScale.SG && value > 1 && value < 1.2 && matcher.group(1).length() >= 5;
      boolean named =
          matcher.group(2) != null
              && ReadingScale.in(Vocabulary.meanings(matcher.group(2))).equals(Optional.of(scale))
              && scale != ReadingScale.SG;
      if (plain || named) {
        found.add(scale.toGravity(value));
      }
    }
    return found;
  }
}
