package washbook.functions.catalogue;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Properties;
import washbook.functions.Sentence;
import washbook.functions.quantity.UnitWords;

/**
 * The catalogue's texts in another language. The English ones are declared with the functions;
 * their translations stand beside this class, in a file for each language, each under a comment
 * with the English text that it was made from. Units with words in them are those of refusals. A
 * text that several functions share is there once.
 */
public final class CatalogueTexts {
  private final Map<String, String> byEnglish = new HashMap<>();

  /**
   * @param code of ISO 639, such as {@code de}; English where there is no file for it
   */
  public CatalogueTexts(String code) {
    Properties translated = new Properties();
    try (InputStream in = CatalogueTexts.class.getResourceAsStream(code + ".properties")) {
      if (in != null) {
        translated.load(new InputStreamReader(in, StandardCharsets.UTF_8));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    english().forEach((key, text) -> byEnglish.put(text, translated.getProperty(key, text)));
    for (String unit : UnitWords.english()) {
      if (UnitWords.of(unit) instanceof Sentence words) {
        byEnglish.put(unit, words.in(code));
      }
    }
  }

  /** An English text of the catalogue in this language; a text that it does not hold as it is. */
  public String of(String english) {
    return byEnglish.getOrDefault(english, english);
  }

  /**
   * Every text that has a translation, in the order of the work: {@code FUNCTION.summary}, {@code
   * FUNCTION.caution} and {@code FUNCTION.argument}, by the first function that has it.
   */
  public static Map<String, String> english() {
    Map<String, String> texts = new LinkedHashMap<>();
    Map<String, String> keys = new LinkedHashMap<>();
    for (CatalogueFunction function : Catalogue.all()) {
      keys.putIfAbsent(function.summary(), function.name() + ".summary");
      keys.putIfAbsent(function.caution(), function.name() + ".caution");
      for (Parameter parameter : function.parameters()) {
        keys.putIfAbsent(parameter.meaning(), function.name() + "." + parameter.name());
      }
    }
    keys.remove("");
    keys.forEach((text, key) -> texts.put(key, text));
    return texts;
  }
}
