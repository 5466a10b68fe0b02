package washbook.office.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import washbook.log.language.Language;

/** The extension's texts of all languages are there, whole, in that language, and used. */
class OfficeTextIT {
  private static final Pattern PLACEHOLDER = Pattern.compile("\\{\\d}");

  /** Texts without words, the product's name, and words that two languages share. */
  private static final Set<String> SAME_IN_ENGLISH =
      Set.of(
          "menu.title",
          "explain.refused",
          "reason.said",
          "portable.why",
          "stopped.because",
          "stopped.then",
          "DE portable.name",
          "NL menu.help");

  private static Properties texts(Language language) {
    Properties texts = new Properties();
    try (Reader reader =
        new InputStreamReader(
            OfficeText.class.getResourceAsStream(language.code() + ".properties"),
            StandardCharsets.UTF_8)) {
      texts.load(reader);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return texts;
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void noTextIsMissingAndNoneIsLeftOver(Language language) {
    assertEquals(
        new TreeSet<>(texts(Language.EN).stringPropertyNames()),
        new TreeSet<>(texts(language).stringPropertyNames()));
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void everyPlaceholderOfATextStandsInItOnce(Language language) {
    Properties english = texts(Language.EN);
    Properties here = texts(language);
    for (String key : english.stringPropertyNames()) {
      assertEquals(
          placeholders(english.getProperty(key)), placeholders(here.getProperty(key)), key);
    }
  }

  private static List<String> placeholders(String text) {
    return PLACEHOLDER.matcher(text).results().map(MatchResult::group).sorted().toList();
  }

  @ParameterizedTest
  @EnumSource(value = Language.class, names = "EN", mode = EnumSource.Mode.EXCLUDE)
  void noTextIsLeftInEnglish(Language language) {
    Properties english = texts(Language.EN);
    Properties here = texts(language);
    Pattern words =
        Pattern.compile(
            "\\b(the|and|reading|cell|sheet|which|with|could|cannot|written|refused)\\b");
    Set<String> left =
        english.stringPropertyNames().stream()
            .filter(
                key ->
                    english.getProperty(key).equals(here.getProperty(key))
                        || words.matcher(here.getProperty(key)).find())
            .filter(key -> !SAME_IN_ENGLISH.contains(key))
            .filter(key -> !SAME_IN_ENGLISH.contains(language + " " + key))
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(Set.of(), left);
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void everyMenuEntryHasAKeyOfItsOwnAndFits(Language language) {
    Set<Character> keys = new HashSet<>();
    for (String entry :
        List.of("fill", "audit", "charts", "explain", "portable", "recalculate", "help")) {
      String text = OfficeText.of("menu." + entry).in(language);
      assertEquals(2, text.split("~", -1).length, text);
      assertTrue(keys.add(Character.toLowerCase(text.charAt(text.indexOf('~') + 1))), text);
      assertTrue(text.length() <= 40, text);
      boolean asks = !Set.of("audit", "charts", "recalculate", "help").contains(entry);
      assertEquals(asks, text.endsWith("..."), text);
      assertFalse(MenuText.of("menu." + entry, language).matches(".*(~|\\.|\\s)"), text);
    }
  }

  /** The dialogs give each of these one line, which 98 characters were too long for. */
  @ParameterizedTest
  @EnumSource(Language.class)
  void labelsOfOneLineFit(Language language) {
    for (String label : List.of("heading", "own", "formulas", "xls")) {
      String text = OfficeText.of("dialog." + label).in(language);
      assertTrue(text.length() <= 85, text);
    }
  }

  /** Two words in a literal are a text; what is generated is code, and two are for developers. */
  @Test
  void whatPeopleReadStandsInTheFiles() throws IOException {
    Pattern literal = Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"");
    Set<String> found = new TreeSet<>();
    try (Stream<Path> files = Files.walk(Path.of("src/main/java/washbook/office"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        if (file.toString().contains("generate")) {
          continue;
        }
        String code = Files.readString(file).replaceAll("(?s)/\\*.*?\\*/|//[^\n]*", "");
        literal
            .matcher(code)
            .results()
            .map(match -> match.group(1))
            .filter(text -> text.matches(".*[A-Za-z]{2,},? [A-Za-z]{2,}.*"))
            .forEach(found::add);
      }
    }
    found.remove("Washbook audit"); // the name of a sheet, the same in all languages
    found.removeAll(Set.of("the range cannot be read", "the office does not format numbers"));
    assertEquals(Set.of(), found);
  }

  /** A key stands in the code as it is; the menu's entries are named by their commands. */
  @Test
  void everyTextIsUsedAndEveryKeyThatTheCodeNamesIsThere() throws IOException {
    Set<String> known = texts(Language.EN).stringPropertyNames();
    StringBuilder all = new StringBuilder();
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        all.append(Files.readString(file));
      }
    }
    Set<String> named =
        Pattern.compile("\"((?:[a-z]+|COLUMN)\\.[a-zA-Z.]+|more)\"")
            .matcher(all)
            .results()
            .map(found -> found.group(1))
            .collect(Collectors.toCollection(TreeSet::new));
    Set<String> unused = new TreeSet<>(known);
    unused.removeAll(named);
    unused.removeIf(key -> key.startsWith("menu.") || key.startsWith("help.menu."));
    assertEquals(Set.of(), unused);
    Pattern ours =
        Pattern.compile(
            "(menu|help|java|dialog|fill|explain|portable|stopped|wizard|nothing|description|COLUMN)\\..*");
    named.removeIf(key -> known.contains(key) || !ours.matcher(key).matches());
    named.removeAll(
        Set.of("menu.", "help.menu.", "dialog.xlb", "description.xml", "description.txt"));
    assertEquals(Set.of(), named);
  }
}
