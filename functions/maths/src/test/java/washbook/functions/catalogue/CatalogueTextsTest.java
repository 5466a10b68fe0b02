package washbook.functions.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.functions.quantity.Quantity;

/** Every text of the catalogue is there in every language, made from the text that it has now. */
class CatalogueTextsTest {
  /** Names, accepted words and figures, which are the same in every language. */
  private static final Pattern KEPT =
      Pattern.compile("\\b[A-Z]{3,}[A-Z0-9]*\\b|\\d+(?:\\.\\d+)?(?:/\\d+)?|°Bx|% vol");

  /** A translation and the English text that it was made from. */
  private record Translation(String english, String text) {}

  private static Map<String, Translation> file(String language) throws IOException {
    Map<String, Translation> texts = new LinkedHashMap<>();
    String name = language + ".properties";
    try (InputStream in = CatalogueTexts.class.getResourceAsStream(name)) {
      String comment = "";
      for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\n", -1)) {
        if (line.startsWith("# ")) {
          comment = line.substring(2);
        } else if (!line.isBlank()) {
          String[] sides = line.split(" = ", 2);
          texts.put(sides[0], new Translation(comment, sides[1]));
        }
      }
    }
    return texts;
  }

  @ParameterizedTest
  @ValueSource(strings = {"de", "fr", "es", "it", "pt", "nl", "af"})
  void everyTextHasATranslationOfWhatItSaysNow(String language) throws IOException {
    Map<String, String> madeFrom = new LinkedHashMap<>();
    file(language).forEach((key, translation) -> madeFrom.put(key, translation.english()));
    assertEquals(lines(CatalogueTexts.english()), lines(madeFrom));
  }

  private static String lines(Map<String, String> texts) {
    return texts.entrySet().stream()
        .map(text -> text.getKey() + " = " + text.getValue())
        .sorted()
        .collect(Collectors.joining("\n"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"de", "fr", "es", "it", "pt", "nl", "af"})
  void namesAcceptedWordsAndFiguresStayAsTheyAre(String language) throws IOException {
    file(language)
        .forEach(
            (key, translation) ->
                assertEquals(
                    kept(translation.english()),
                    kept(translation.text().replaceAll("(\\d),(\\d)", "$1.$2")),
                    language + " " + key + ": " + translation.text()));
  }

  private static List<String> kept(String text) {
    return KEPT.matcher(text).results().map(MatchResult::group).sorted().toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"de", "fr", "es", "it", "pt", "nl", "af"})
  void noTextIsLeftInEnglish(String language) throws IOException {
    Set<String> left = new TreeSet<>();
    Pattern words =
        Pattern.compile("\\b(the|and|reading|must|too|which|with|above|below|sugar|not|its)\\b");
    file(language)
        .forEach(
            (key, translation) -> {
              if (translation.text().equals(translation.english())
                  || words.matcher(translation.text()).find()) {
                left.add(key + ": " + translation.text());
              }
            });
    assertEquals(Set.of(), left);
  }

  /** An English text stands in for what is missing, so that nobody sees an empty help. */
  @Test
  void aTextIsFoundByItsEnglishAndEveryOtherStaysAsItIs() {
    String summary = Catalogue.get("ABV").summary();
    CatalogueTexts german = new CatalogueTexts("de");
    assertFalse(german.of(summary).isBlank());
    assertFalse(german.of(summary).equals(summary), summary);
    assertEquals("°Bx", german.of("°Bx"));
    assertEquals("", german.of(""));
    assertEquals(summary, new CatalogueTexts("en").of(summary));
    assertEquals(summary, new CatalogueTexts("sv").of(summary));
  }

  @Test
  void everyUnitWithAWordInItIsTranslated() {
    List<String> units = new ArrayList<>();
    Catalogue.all().stream().filter(f -> !f.givesText()).forEach(f -> units.add(f.resultUnit()));
    for (Quantity quantity : Quantity.values()) {
      units.add(quantity.unit());
    }
    Pattern word = Pattern.compile("[a-z]{4,}");
    for (String unit : units) {
      if (word.matcher(unit).find()) {
        assertFalse(new CatalogueTexts("de").of(unit).equals(unit), unit);
      }
    }
  }
}
