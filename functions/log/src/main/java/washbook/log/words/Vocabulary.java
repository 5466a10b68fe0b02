package washbook.log.words;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import washbook.log.language.Language;

/**
 * The vocabulary of headers and key lines. It knows no language: every line of its data file gives
 * words of one meaning, and a text means all that its longest matches mean.
 */
public final class Vocabulary {
  private static final String FILE = "header-words.txt";

  /** Longer texts are prose, not headers. */
  private static final int LONGEST = 120;

  /** Temperatures to which readings are brought, °C and °F. */
  private static final Set<String> REFERENCES = Set.of("15", "17", "20", "25", "60", "68");

  private static final WordList<Concept> WORDS =
      WordList.load(Vocabulary.class, FILE, Concept.class);

  /** In capitals it is short for an original gravity in two languages. */
  private static final String PREPOSITION = " di ";

  private static final Remembered<List<String>> TOKENS =
      new Remembered<>(text -> List.copyOf(takeApart(text)));

  private static final Remembered<Set<Concept>> MEANINGS =
      new Remembered<>(
          text -> {
            Set<Concept> found = meaningsOf(tokens(text.replace(PREPOSITION, " ")));
            addAbbreviated(text, found);
            return found;
          });

  /** A word cut short with a point behind it, as {@code Densid.}; shorter ones mean too much. */
  private static final Pattern CUT_SHORT = Pattern.compile("(?<!\\p{L})(\\p{L}{5,})\\.(?!\\p{L})");

  /** What headers cut short; an everyday word before a point ends a sentence. */
  private static final Set<Concept> INSTRUMENTS =
      EnumSet.of(Concept.GRAVITY, Concept.HYDROMETER, Concept.REFRACTOMETER, Concept.TEMPERATURE);

  /** More words are a sentence, and a point ends it. */
  private static final int MOST_WORDS = 4;

  private Vocabulary() {}

  /** All meanings of a text; empty when there are none or when it is prose. */
  public static Set<Concept> meanings(String text) {
    return text.length() > LONGEST ? Set.of() : MEANINGS.of(text);
  }

  /**
   * The languages whose words stand in a text, each as often as words of it do. Units are the same
   * in all languages and count for none.
   */
  public static List<Language> languages(String text) {
    return text.length() > LONGEST
        ? List.of()
        : WORDS.matches(tokens(text)).stream()
            .flatMap(here -> here.stream().flatMap(e -> e.language().stream()).distinct())
            .toList();
  }

  /** Lower-case words without accents; the degree sign, % and / are words of their own. */
  public static List<String> tokens(String text) {
    return TOKENS.of(text);
  }

  /** The same of the words of a data file, which are read but once. */
  static List<String> takeApart(String text) {
    return isAscii(text) ? asciiTokens(text) : tokensOf(withoutAccents(text));
  }

  /** The same as {@link #tokensOf}, for the thousands of words that are read at every start. */
  private static List<String> asciiTokens(String text) {
    List<String> tokens = new ArrayList<>();
    int start = -1;
    for (int i = 0; i <= text.length(); i++) {
      char c = i < text.length() ? text.charAt(i) : ' ';
      boolean letter = (c | 0x20) >= 'a' && (c | 0x20) <= 'z';
      boolean digit = c >= '0' && c <= '9';
      boolean ends = !digit && (!letter || (start >= 0 && text.charAt(i - 1) <= '9'));
      if (ends && start >= 0) {
        tokens.add(text.substring(start, i).toLowerCase(Locale.ROOT));
        start = -1;
      }
      if (start < 0 && (letter || digit)) {
        start = i;
      } else if (c == '%' || c == '/') {
        tokens.add(String.valueOf(c));
      }
    }
    return tokens;
  }

  private static List<String> tokensOf(String plain) {
    List<String> tokens = new ArrayList<>();
    StringBuilder word = new StringBuilder();
    for (int i = 0; i < plain.length(); i++) {
      char c = plain.charAt(i);
      if (Character.isLetterOrDigit(c)) {
        boolean digit = Character.isDigit(c);
        if (word.length() > 0 && !digit && Character.isDigit(word.charAt(word.length() - 1))) {
          end(word, tokens);
        }
        word.append(c);
      } else if (Character.getType(c) != Character.NON_SPACING_MARK) {
        end(word, tokens);
        if (c == '\u00b0' || c == '%' || c == '/') {
          tokens.add(String.valueOf(c));
        }
      }
    }
    end(word, tokens);
    return tokens;
  }

  private static String withoutAccents(String text) {
    return Normalizer.normalize(
        text.replace('\u00ba', '\u00b0').replace("\u00df", "ss"), Normalizer.Form.NFKD);
  }

  private static boolean isAscii(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) > '~') {
        return false;
      }
    }
    return true;
  }

  private static void end(StringBuilder word, List<String> tokens) {
    if (word.length() > 0) {
      tokens.add(word.toString().toLowerCase(Locale.ROOT));
      word.setLength(0);
    }
  }

  /** All meanings of a text taken apart, which is not remembered. */
  static Set<Concept> meaningsOf(List<String> tokens) {
    Set<Concept> found = EnumSet.noneOf(Concept.class);
    WORDS.matches(tokens).forEach(here -> here.forEach(entry -> found.add(entry.meaning())));
    settleLetters(found, tokens.size() == 1);
    boolean converted = found.remove(Concept.CONVERTED);
    if (converted && (isNotConverted(tokens) || tokens.stream().anyMatch(REFERENCES::contains))) {
      found.add(Concept.CORRECTED);
    }
    return found;
  }

  /** Whether nothing but that they are not converted is said, as {@code niet omgerekend}. */
  private static boolean isNotConverted(List<String> tokens) {
    return tokens.size() == 2 && means(tokens.get(0), Concept.NEGATION);
  }

  private static boolean means(String word, Concept concept) {
    return WORDS.matches(List.of(word)).stream()
        .flatMap(List::stream)
        .anyMatch(entry -> entry.meaning() == concept);
  }

  private static void addAbbreviated(String text, Set<Concept> found) {
    if (text.indexOf('.') < 0 || tokens(text).size() > MOST_WORDS) {
      return;
    }
    Matcher words = CUT_SHORT.matcher(text);
    while (words.find()) {
      List<String> cut = tokens(words.group(1));
      if (cut.size() == 1 && WORDS.matches(cut).isEmpty()) {
        WORDS.begins(cut.get(0)).filter(INSTRUMENTS::contains).ifPresent(found::add);
      }
    }
  }

  private static void settleLetters(Set<Concept> found, boolean alone) {
    boolean degrees =
        alone
            || found.contains(Concept.TEMPERATURE)
            || found.contains(Concept.CALIBRATION)
            || found.contains(Concept.CORRECTED)
            || found.contains(Concept.AMBIENT)
            || found.contains(Concept.DEGREES);
    if (found.remove(Concept.BARE_C) && degrees) {
      found.add(Concept.C);
    }
    if (found.remove(Concept.BARE_F) && degrees) {
      found.add(Concept.F);
    }
  }
}
