package washbook.functions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.functions.catalogue.CommandWords;

/** Why a call is refused is said in every language, whole, and with its numbers as people write. */
class SentenceTest {
  private static final Path SOURCES = Path.of("src/main/java");
  private static final Pattern PLACEHOLDER = Pattern.compile("\\{\\d}");
  private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"");

  /** What makes a sentence. */
  private static final Pattern MADE =
      Pattern.compile(
          "(?:new RefusedException|RefusedException\\.contradiction|new NotPortableException"
              + "|Sentence\\.of|\\brefused)\\(");

  private static final Pattern ENGLISH =
      Pattern.compile(
          "\\b(the|and|reading|must|too|which|with|above|below|sugar|not|its|blank|needs|has|form"
              + "|gravity|swapped|cells|outside|to|be)\\b");

  private static Map<String, String> texts(String language) {
    return Sentence.texts(language);
  }

  @ParameterizedTest
  @ValueSource(strings = {"de", "fr", "es", "it", "pt", "nl", "af"})
  void noTextIsMissingAndEachHasTheValuesOfTheEnglishOne(String language) {
    assertEquals(new TreeSet<>(texts("en").keySet()), new TreeSet<>(texts(language).keySet()));
    texts("en")
        .forEach(
            (key, text) ->
                assertEquals(placeholders(text), placeholders(texts(language).get(key)), key));
  }

  private static Set<String> placeholders(String text) {
    return PLACEHOLDER.matcher(text).results().map(r -> r.group()).collect(Collectors.toSet());
  }

  @ParameterizedTest
  @ValueSource(strings = {"de", "fr", "es", "it", "pt", "nl", "af"})
  void noTextIsLeftInEnglish(String language) {
    texts(language)
        .forEach(
            (key, text) -> {
              assertFalse(ENGLISH.matcher(text).find(), key + ": " + text);
              boolean words = text.replaceAll("\\{\\d}", "").matches(".*\\p{L}{3,}.*");
              boolean shared = key.startsWith("name.") && !text.contains(" ");
              assertFalse(words && !shared && text.equals(texts("en").get(key)), key + ": " + text);
            });
  }

  /** A key is one word; two words in a literal of a refusal would be a text beside the files. */
  @Test
  void everyRefusalNamesATextOfTheFilesAndEveryTextIsUsed() throws IOException {
    Set<String> unused = new TreeSet<>(texts("en").keySet());
    Set<String> wrong = new TreeSet<>();
    try (Stream<Path> files = Files.walk(SOURCES)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        String code = Files.readString(file).replaceAll("(?s)/\\*.*?\\*/", "");
        for (MatchResult literal : LITERAL.matcher(code).results().toList()) {
          String key = literal.group(1);
          unused.removeIf(one -> one.equals(key) || one.matches(Pattern.quote(key) + "\\.\\w+"));
        }
        for (MatchResult made : MADE.matcher(code).results().toList()) {
          for (MatchResult literal :
              LITERAL.matcher(inBrackets(code, made.end())).results().toList()) {
            String text = literal.group(1);
            boolean key = text.matches("[a-z]+\\.[A-Za-z.]+");
            if (text.contains(" ") || key && !text.equals(".range") && !isKey(text)) {
              wrong.add(file.getFileName() + ": " + text);
            }
          }
        }
      }
    }
    unused.remove("function.column");
    Catalogue.all().forEach(f -> f.parameters().forEach(p -> unused.remove(p.told().key())));
    assertEquals(Set.of(), wrong);
    assertEquals(Set.of(), unused);
  }

  private static String inBrackets(String code, int start) {
    int end = start;
    for (int depth = 1; depth > 0; end++) {
      depth += code.charAt(end) == '(' ? 1 : code.charAt(end) == ')' ? -1 : 0;
    }
    return code.substring(start, end);
  }

  private static boolean isKey(String text) {
    return texts("en").containsKey(text);
  }

  /** Whatever a call is given, what is said of it is in the reader's language. */
  @ParameterizedTest
  @ValueSource(strings = {"de", "fr", "es", "it", "pt", "nl", "af"})
  void noFunctionSpeaksEnglish(String language) {
    int refused = 0;
    for (CatalogueFunction function : Catalogue.all()) {
      for (Object[] call : calls(function)) {
        if (function.call(call) instanceof Answer.Refusal refusal) {
          refused++;
          String words = withoutWords(refusal.told().in(language));
          assertFalse(ENGLISH.matcher(words).find(), function.name() + ": " + words);
          assertFalse(words.matches(".*\\d\\.\\d.*"), function.name() + ": " + words);
          assertFalse(words.contains("{"), words);
        }
      }
    }
    assertTrue(refused > 1000, refused + " refusals");
  }

  private static List<Object[]> calls(CatalogueFunction function) {
    Object[] example = CommandWords.read(function, function.example());
    List<Object[]> calls = new ArrayList<>();
    for (int i = 0; i < function.parameters().size(); i++) {
      for (Object wrong :
          new Object[] {null, "x", 1e9, -1e9, Double.NaN, 0.0, List.of(1.5, "y"), 1.5, 50.0}) {
        Object[] call = Arrays.copyOf(example, Math.max(example.length, i + 1));
        call[i] = wrong;
        calls.add(call);
      }
    }
    calls.add(new Object[20]);
    return calls;
  }

  /** Words that a function takes and what was typed stay as they are in every language. */
  private static String withoutWords(String text) {
    return text.replaceAll("16\\.83|[„«‘][^“»’]*[“»’]", "");
  }

  @Test
  void numbersTakeTheDecimalMarkOfTheReaderAndNamesStayAsTheyAre() {
    Answer.Refusal refusal = (Answer.Refusal) Catalogue.get("ABV").call(1.085, 1.3);
    assertEquals("gravity 1.3 is too high; it must be 0.97 to 1.19 SG.", refusal.reason());
    assertEquals(
        "Dichte: 1,3 ist zu hoch; zulässig ist 0,97 bis 1,19 SG.", refusal.told().in("de"));
    assertEquals(
        "Densité : 1,3 est une valeur trop élevée ; valeurs admises : 0,97 à 1,19 SG.",
        refusal.told().in("fr"));
    assertEquals(refusal.reason(), refusal.told().in("sv"));
    assertEquals(
        "0,97 bis 1,19; 20",
        Sentence.of("answer.none", List.of(Sentence.of("range", 0.97, 1.19), 20.0))
            .in("de")
            .replaceAll(" hat .*", ""));
  }

  @Test
  void aSwapIsNamedInTheReadersLanguage() {
    Answer.Refusal refusal = (Answer.Refusal) Catalogue.get("VOLUMEAT20").call(10.0, 65.0, 20.0);
    assertTrue(refusal.reason().contains("Were temperature and strength swapped?"));
    assertTrue(
        refusal.told().in("de").contains("Sind Temperatur und Stärke vertauscht?"),
        refusal.told().in("de"));
  }

  @Test
  void aKeyThatIsNoneIsNoticed() {
    assertThrows(IllegalArgumentException.class, () -> Sentence.of("no such").english());
  }
}
