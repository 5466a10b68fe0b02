package washbook.log.words;

import java.util.Locale;
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

  /** The only temperature in a text in °C; NaN when there is none or more than one. */
  public static double temperatureIn(String text) {
    Matcher matcher = DEGREES.matcher(text);
    if (!matcher.find()) {
      return Double.NaN;
    }
    double shown = Double.parseDouble(matcher.group(1).replace(',', '.'));
    double celsius =
        TemperatureUnit.valueOf(matcher.group(2).toUpperCase(Locale.ROOT)).toCelsius(shown);
    return matcher.find() ? Double.NaN : celsius;
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
}
