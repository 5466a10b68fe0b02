package washbook.log.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import washbook.log.PassedOver;
import washbook.log.Role;

/** The texts of all languages are there, whole, and in that language. */
class MessagesTest {
  private static final Pattern PLACEHOLDER = Pattern.compile("\\{\\d}");

  /** Texts without words, and words that two languages share. */
  private static final Set<String> SAME_IN_ENGLISH =
      Set.of(
          "blank",
          "unit",
          "plain",
          "amount",
          "quoted",
          "warning.limit",
          "audit.detail.both",
          "scale.SG",
          "scale.THOUSANDTHS",
          "answer.remark",
          "each",
          "account.passed",
          "account.and",
          "told.of",
          "FR scale.POINTS",
          "DE told.unit",
          "IT told.unit",
          "NL told.unit",
          "AF told.unit",
          "FR role.VOLUME",
          "IT role.VOLUME",
          "PT role.VOLUME",
          "NL role.VOLUME",
          "AF role.VOLUME",
          "FR role.DATE",
          "NL role.REFRACTOMETER");

  private static final Path SOURCES = Path.of("src/main/java/washbook/log");
  private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"");

  /** What maps are written with in all languages. */
  private static final Pattern STATEMENT =
      Pattern.compile(
          "(original gravity|header row|last row|first reading|refractometer factor|volumes at 20"
              + "|charge strength|sugar readings|sugar added at row|batch from row|by the rise|column [A-Z]|( = )?[A-Z_]+ in)\\b.*");

  /** Titles and names that older versions wrote, and words for programs. */
  private static final Set<String> NOT_FOR_THE_FILES =
      Set.of(
          "there is no message '",
          "too few readings",
          "Washbook charts",
          "Washbook answers",
          "above plan",
          "not falling",
          "reading overdue",
          "suspicious reading",
          "too cold",
          "too warm");

  private static Properties texts(Language language) {
    Properties texts = new Properties();
    for (String folder : List.of("", "understanding/")) {
      Properties some = new Properties();
      String name = folder + language.code() + ".properties";
      try (Reader reader =
          new InputStreamReader(Messages.class.getResourceAsStream(name), StandardCharsets.UTF_8)) {
        some.load(reader);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      some.forEach((key, text) -> assertNull(texts.put(key, text), key + " stands twice"));
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
  void everyTextIsReadAsJavasOwnReaderReadsIt(Language language) {
    Properties texts = texts(language);
    for (String key : texts.stringPropertyNames()) {
      assertEquals(texts.getProperty(key), Messages.OF_LOGS.text(language, key), key);
    }
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
    return PLACEHOLDER.matcher(text).results().map(r -> r.group()).sorted().toList();
  }

  @ParameterizedTest
  @EnumSource(value = Language.class, names = "EN", mode = EnumSource.Mode.EXCLUDE)
  void noTextIsLeftInEnglish(Language language) {
    Properties english = texts(Language.EN);
    Properties here = texts(language);
    Set<String> left =
        english.stringPropertyNames().stream()
            .filter(key -> english.getProperty(key).equals(here.getProperty(key)))
            .filter(key -> !SAME_IN_ENGLISH.contains(key))
            .filter(key -> !SAME_IN_ENGLISH.contains(language + " " + key))
            .collect(Collectors.toSet());
    assertEquals(Set.of(), left);
    Pattern words =
        Pattern.compile(
            "\\b(the|and|reading|must|too|which|with|above|below|sugar|log|batch|row)\\b");
    for (String key : here.stringPropertyNames()) {
      assertFalse(words.matcher(here.getProperty(key)).find(), here.getProperty(key));
    }
  }

  /** Every key named in the code is in the files; a key begins a message only where it is one. */
  @Test
  void everyMessageThatTheCodeNamesIsThere() throws IOException {
    Set<String> known = texts(Language.EN).stringPropertyNames();
    Pattern named = Pattern.compile("Message\\.of\\(\\s*\"([a-z.A-Z-]+)\"[,)]");
    Set<String> missing = new TreeSet<>();
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        Matcher matcher = named.matcher(Files.readString(file));
        while (matcher.find()) {
          if (!known.contains(matcher.group(1))) {
            missing.add(matcher.group(1));
          }
        }
      }
    }
    assertEquals(Set.of(), missing);
  }

  @Test
  void everyTextAboutWhatWasUnderstoodIsUsed() throws IOException {
    Set<String> families = new TreeSet<>();
    for (Role role : Role.values()) {
      families.add("role." + role);
    }
    for (PassedOver reason : PassedOver.values()) {
      families.add("passed." + reason);
    }
    Set<String> literals = new TreeSet<>();
    for (Path file : sources("")) {
      LITERAL.matcher(code(file)).results().forEach(found -> literals.add(found.group(1)));
    }
    Set<String> unused =
        texts(Language.EN).stringPropertyNames().stream()
            .filter(
                key ->
                    key.matches(
                        "(ask|alone|because|col|from|remark|told|map|limit|role|account|passed)\\..*"))
            .filter(key -> !literals.contains(key) && !families.contains(key))
            .collect(Collectors.toSet());
    assertEquals(Set.of(), unused);
    families.removeAll(texts(Language.EN).stringPropertyNames());
    assertEquals(Set.of(), families);
  }

  /** Two words in a literal are a text, unless it is a pattern or in the lists of old titles. */
  @Test
  void whatPeopleReadStandsInTheFiles() throws IOException {
    Pattern words = Pattern.compile("[A-Za-z]{2,},? [A-Za-z]{2,}");
    Set<String> found = new TreeSet<>();
    for (Path file : sources("")) {
      if (!file.endsWith("ComputedHeader.java") && !file.endsWith("EarlierTitles.java")) {
        LITERAL
            .matcher(code(file))
            .results()
            .map(literal -> literal.group(1))
            .filter(text -> words.matcher(text).find())
            .filter(text -> !STATEMENT.matcher(text).matches() && !text.contains("(?i:"))
            .forEach(found::add);
      }
    }
    found.removeAll(NOT_FOR_THE_FILES);
    assertEquals(Set.of(), found);
  }

  private static String code(Path file) throws IOException {
    return Files.readString(file).replaceAll("(?s)/\\*.*?\\*/", "").replaceAll("//.*", "");
  }

  private static List<Path> sources(String begin) throws IOException {
    try (Stream<Path> files = Files.walk(SOURCES.resolve(begin))) {
      return files.filter(file -> file.toString().endsWith(".java")).toList();
    }
  }

  @Test
  void numbersTakeTheDecimalMarkOfTheLanguage() {
    Message range = Message.of("range", new Figure("0.97"), new Figure("1.19"), " SG");
    assertEquals("0.97 to 1.19 SG", range.in(Language.EN));
    assertEquals("0,97 bis 1,19 SG", range.in(Language.DE));
    assertEquals("0,97 à 1,19 SG", range.in(Language.FR));
  }

  @Test
  void aTextOfThePersonsIsQuotedAsItStands() {
    assertEquals("{1} 1.5", Message.of("plain", "{1} 1.5").in(Language.DE));
    assertThrows(IllegalArgumentException.class, () -> Message.of("no such thing").in(Language.EN));
  }

  @Test
  void aUsersLanguageIsTheFirstThatTheEnvironmentNames() {
    assertEquals(Language.EN, Language.ofUser(Map.of()));
    assertEquals(Language.DE, Language.ofUser(Map.of("LANG", "de_AT.UTF-8")));
    assertEquals(Language.FR, Language.ofUser(Map.of("LANG", "de_DE", "LC_MESSAGES", "fr")));
    assertEquals(Language.EN, Language.ofUser(Map.of("LC_ALL", "C.UTF-8", "LANG", "de_DE")));
    assertEquals(Language.EN, Language.ofUser(Map.of("LANG", "sv_SE")));
  }
}
