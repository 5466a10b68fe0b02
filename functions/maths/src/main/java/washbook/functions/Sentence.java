package washbook.functions;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;

/**
 * Why a call is refused, before it is known who reads it. The texts lie beside this class in {@code
 * refusal/}, a file for each language.
 *
 * @param key of the text in the files of all languages
 * @param values what its placeholders stand for: numbers, which take the language's decimal mark,
 *     other sentences, lists of values, and texts that stay as they are (names of functions, words
 *     that they take, what a person typed)
 */
public record Sentence(String key, List<Object> values) {
  /** Nothing is refused. */
  public static final Sentence NONE = of("nothing");

  private static final String ENGLISH = "en";
  private static final Set<String> LANGUAGES =
      Set.of(ENGLISH, "de", "fr", "es", "it", "pt", "nl", "af");
  private static final Map<String, Map<String, String>> TEXTS = new ConcurrentHashMap<>();

  public Sentence {
    values = List.copyOf(values);
  }

  public static Sentence of(String key, Object... values) {
    return new Sentence(key, List.of(values));
  }

  public String english() {
    return in(ENGLISH);
  }

  /**
   * The sentence in a language.
   *
   * @param language its code of ISO 639, such as {@code de}; English where there is no file for it
   */
  public String in(String language) {
    String code = LANGUAGES.contains(language) ? language : ENGLISH;
    String text = texts(code).get(key);
    if (text == null) {
      throw new IllegalArgumentException("there is no sentence '" + key + "'");
    }
    String filled = TextFile.filled(text, index -> shown(values.get(index), code));
    boolean namesFirst = text.startsWith("{0}") && values.get(0) instanceof Sentence;
    return namesFirst && !code.equals(ENGLISH) ? capitalised(filled) : filled;
  }

  /** The texts of a language that has a file. */
  static Map<String, String> texts(String code) {
    return TEXTS.computeIfAbsent(
        code, one -> TextFile.read(Sentence.class, "refusal/" + one + ".properties"));
  }

  /** As a sentence begins that a name begins; the English ones all begin small, after a cell. */
  private static String capitalised(String text) {
    int second = text.offsetByCodePoints(0, 1);
    return text.substring(0, second).toUpperCase(Locale.ROOT) + text.substring(second);
  }

  private static String shown(Object value, String code) {
    if (value instanceof Sentence sentence) {
      return sentence.in(code);
    }
    if (value instanceof Double number) {
      return Numbers.written(Numbers.show(number), code);
    }
    if (value instanceof List<?> list) {
      boolean commas = list.stream().anyMatch(Double.class::isInstance);
      String between = commas && !code.equals(ENGLISH) ? "; " : ", ";
      return list.stream().map(one -> shown(one, code)).collect(Collectors.joining(between));
    }
    return value.toString();
  }
}
