package washbook.runner.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import washbook.functions.SafetyNote;
import washbook.functions.catalogue.CatalogueFunction.Group;
import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.runner.card.Card;
import washbook.runner.file.UnusableFileException;
import washbook.runner.report.AuditReport;
import washbook.runner.report.FileReport;
import washbook.runner.report.OverviewColumn;

/** The runner's texts of all languages are there, whole, in that language, and used. */
class WordingTest {
  private static final Path SOURCES = Path.of("src/main/java/washbook/runner");
  private static final Pattern PLACEHOLDER = Pattern.compile("\\{\\d}");
  private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"");

  /** Texts without words, the product's name, and words that two languages share. */
  private static final Set<String> SAME_IN_ENGLISH =
      Set.of(
          "totals.each",
          "totals.list",
          "ask.question",
          "console.rows.table",
          "plain",
          "list",
          "portable.where",
          "usage.of",
          "how.in",
          "failed.other",
          "failed.system",
          "card.scale.GRAVITY",
          "card.scale.GRAVITY.narrow",
          "card.scale.GRAVITY.unit",
          "card.scale.SUGAR",
          "card.scale.SUGAR.narrow",
          "card.scale.BAUME",
          "card.scale.BAUME.narrow",
          "card.scale.BAUME.unit",
          "card.scale.OECHSLE",
          "card.scale.OECHSLE.narrow",
          "card.scale.OECHSLE.unit",
          "card.corner.gravity",
          "usage.against",
          "system",
          "season.sentence",
          "head.ours",
          "DE charts.reading",
          "FR wash.MALT",
          "FR chart.heading",
          "IT totals.files.one",
          "IT head.file",
          "IT column.FILE",
          "NL head.alcohol",
          "NL head.alcoholVol",
          "NL charts.alcohol",
          "NL audit.open",
          "ES card.scale.BY_BALANCE.narrow",
          "ES head.alcohol",
          "ES head.alcoholVol",
          "ES charts.alcohol");

  /** Words that programs read or write, and typefaces. */
  private static final Set<String> NOT_FOR_THE_FILES =
      Set.of(
          "(not packaged)",
          "nothing to compare",
          "nothing recognised",
          "partly filled",
          "still run",
          "days since the first reading",
          "Alcohol to date",
          "without dates",
          "more points than a chart has",
          "yyyy-MM-dd HH:mm:ss",
          "Liberation Sans",
          "Liberation Sans, DejaVu Sans, Arial, sans-serif",
          "@media screen { svg { border-bottom: 1px solid #767676; max-width: 100%; }",
          "Disk quota exceeded",
          "File name too long",
          "Input/output error",
          "No space left on device",
          "Read-only file system",
          "Too many levels of symbolic links",
          "Too many open files");

  private static final Pattern TWO_WORDS = Pattern.compile("[A-Za-z]{2,} [A-Za-z]{2,}");

  private static final List<Class<?>> OWNERS = List.of(Wording.class, UnusableFileException.class);

  private static Properties texts(Language language) {
    return texts(Wording.class, language);
  }

  /** What is seldom said stands in folders of its own, which are read only then. */
  private static Properties texts(Class<?> owner, Language language) {
    Properties texts = texts(owner, language.code());
    if (owner == Wording.class) {
      for (String folder : List.of("usage/", "card/")) {
        texts(Wording.class, folder + language.code())
            .forEach((key, text) -> assertNull(texts.put(key, text), key + " is twice"));
      }
    }
    return texts;
  }

  private static Properties texts(Class<?> owner, String name) {
    Properties texts = new Properties();
    try (Reader reader =
        new InputStreamReader(
            owner.getResourceAsStream(name + ".properties"), StandardCharsets.UTF_8)) {
      texts.load(reader);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return texts;
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void noTextIsMissingAndNoneIsLeftOver(Language language) {
    for (Class<?> owner : OWNERS) {
      assertEquals(
          new TreeSet<>(texts(owner, Language.EN).stringPropertyNames()),
          new TreeSet<>(texts(owner, language).stringPropertyNames()));
    }
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void everyPlaceholderOfATextStandsInItOnce(Language language) {
    for (Class<?> owner : OWNERS) {
      Properties english = texts(owner, Language.EN);
      Properties here = texts(owner, language);
      for (String key : english.stringPropertyNames()) {
        assertEquals(
            placeholders(english.getProperty(key)), placeholders(here.getProperty(key)), key);
      }
    }
  }

  private static List<String> placeholders(String text) {
    return PLACEHOLDER.matcher(text).results().map(MatchResult::group).sorted().toList();
  }

  @ParameterizedTest
  @EnumSource(value = Language.class, names = "EN", mode = EnumSource.Mode.EXCLUDE)
  void noTextIsLeftInEnglish(Language language) {
    OWNERS.forEach(owner -> noTextIsLeftInEnglish(owner, language));
  }

  private static void noTextIsLeftInEnglish(Class<?> owner, Language language) {
    Properties english = texts(owner, Language.EN);
    Properties here = texts(owner, language);
    Set<String> left =
        english.stringPropertyNames().stream()
            .filter(key -> english.getProperty(key).equals(here.getProperty(key)))
            .filter(key -> !SAME_IN_ENGLISH.contains(key))
            .filter(key -> !SAME_IN_ENGLISH.contains(language + " " + key))
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(Set.of(), left);
    Pattern words =
        Pattern.compile(
            "\\b(the|and|reading|must|too|which|with|above|below|sugar|log|batch|row|refused)\\b");
    for (String key : here.stringPropertyNames()) {
      assertFalse(words.matcher(here.getProperty(key)).find(), key + ": " + here.getProperty(key));
    }
  }

  /** A key stands in the code as it is, or its last part belongs to a family of them. */
  @Test
  void everyTextIsUsedAndEveryKeyThatTheCodeNamesIsThere() throws IOException {
    Set<String> known = texts(Language.EN).stringPropertyNames();
    Set<String> literals = new HashSet<>();
    for (Path file : sources("")) {
      literals(file).forEach(literal -> literals.add(literal.group(1)));
    }
    Set<String> families = new HashSet<>();
    Arrays.stream(FileReport.Status.values()).forEach(s -> families.add("status." + s));
    Arrays.stream(AuditReport.Status.values()).forEach(s -> families.add("audit.status." + s));
    Arrays.stream(OverviewColumn.values()).forEach(c -> families.add("column." + c));
    Arrays.stream(Group.values()).forEach(g -> families.add("functions." + g));
    Arrays.stream(Card.Kind.values()).forEach(k -> families.add("card." + k));
    for (String scale : List.of("GRAVITY", "SUGAR", "BAUME", "OECHSLE", "BY_RULE", "BY_BALANCE")) {
      Stream.of("", ".narrow", ".unit").forEach(p -> families.add("card.scale." + scale + p));
    }
    Stream.of("MALT", "FRUIT", "SUGAR", "HONEY", "MOLASSES")
        .forEach(w -> families.add("wash." + w));
    Set<String> unused =
        known.stream()
            .filter(key -> !families.contains(key) && !literals.contains(key))
            .filter(key -> !literals.contains(key.replaceFirst("\\.(one|many)$", "")))
            .filter(key -> !literals.contains(key.replaceFirst("^(head|csv)\\.", "")))
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(Set.of(), unused);
    Set<String> missing = new TreeSet<>(families);
    Pattern named =
        Pattern.compile(
            "\\b(?:say|count)\\(\\s*(?:[^\"()]*\\?\\s*\"([a-z.A-Z]+)\"\\s*:\\s*)?\"([a-z.A-Z]+)\"");
    for (Path file : sources("")) {
      named
          .matcher(Files.readString(file))
          .results()
          .flatMap(found -> Stream.of(found.group(1), found.group(2)))
          .filter(key -> key != null && key.contains(".") && !key.endsWith("."))
          .forEach(missing::add);
    }
    missing.removeIf(key -> known.contains(key) || known.contains(key + ".many"));
    assertEquals(Set.of(), missing);
  }

  @Test
  void everyReasonAboutAFileIsUsed() throws IOException {
    Set<String> unused =
        new TreeSet<>(texts(UnusableFileException.class, Language.EN).stringPropertyNames());
    for (Path file : sources("")) {
      literals(file).forEach(literal -> unused.remove(literal.group(1)));
    }
    unused.removeIf(key -> key.matches("kind\\.(fods|sxc|uos|numbers|gsheet)"));
    assertEquals(Set.of(), unused);
  }

  /** Two words in a literal are a text, unless it is markup or what only a programmer can cause. */
  @Test
  void whatPeopleReadStandsInTheFiles() throws IOException {
    Set<String> found = new TreeSet<>();
    for (Path file : sources("")) {
      String code = withoutHelp(code(file));
      for (MatchResult literal : LITERAL.matcher(code).results().toList()) {
        String text = literal.group(1);
        boolean words = TWO_WORDS.matcher(text).find();
        boolean markup = text.matches("(?s).*[<>=].*");
        if (words && !markup && !isOfProgrammers(code, literal.start())) {
          found.add(text);
        }
      }
    }
    found.removeAll(NOT_FOR_THE_FILES);
    assertEquals(Set.of(), found);
  }

  /** The help is English beside the options; its other languages have a test of their own. */
  private static String withoutHelp(String code) {
    StringBuilder rest = new StringBuilder(code);
    for (MatchResult help = find(rest); help != null; help = find(rest)) {
      int end = help.end();
      for (int depth = 1; depth > 0; end++) {
        if (rest.charAt(end) == '"') {
          Matcher literal = LITERAL.matcher(rest).region(end, rest.length());
          literal.lookingAt();
          end = literal.end() - 1;
        }
        depth += rest.charAt(end) == '(' ? 1 : rest.charAt(end) == ')' ? -1 : 0;
      }
      rest.delete(help.start(), end);
    }
    return rest.toString();
  }

  private static MatchResult find(CharSequence code) {
    Matcher help = Pattern.compile("@(Command|Option|Parameters)\\(").matcher(code);
    return help.find() ? help.toMatchResult() : null;
  }

  /** Whether a literal belongs to a statement that makes an exception which no file can cause. */
  private static boolean isOfProgrammers(String code, int at) {
    String before = LITERAL.matcher(code.substring(0, at)).replaceAll("\"\"");
    int statement =
        Math.max(
            before.lastIndexOf(';'), Math.max(before.lastIndexOf('{'), before.lastIndexOf('}')));
    return before
        .substring(statement + 1)
        .matches("(?s).*\\bIllegal(State|Argument)Exception\\(.*");
  }

  private static String code(Path file) throws IOException {
    return Files.readString(file).replaceAll("(?s)/\\*.*?\\*/", "").replaceAll("//.*", "");
  }

  private static List<MatchResult> literals(Path file) throws IOException {
    return LITERAL.matcher(code(file)).results().toList();
  }

  private static List<Path> sources(String begin) throws IOException {
    try (Stream<Path> files = Files.walk(SOURCES)) {
      return files
          .filter(file -> file.toString().endsWith(".java"))
          .filter(file -> file.toString().startsWith(SOURCES.resolve(begin).toString()))
          .toList();
    }
  }

  @Test
  void theEnglishCautionIsThatOfTheFunctions() {
    Wording english = new Wording(Language.EN);
    assertEquals(SafetyNote.LINES, Caution.lines(english));
    assertEquals(SafetyNote.text(), Caution.text(english));
    assertEquals(SafetyNote.POINTER, english.say("safety.pointer"));
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void aTableHasNoHeadTwiceAndNamesOfSheetsAreAllowed(Language language) {
    Wording words = new Wording(language);
    Set<String> heads = new HashSet<>();
    for (OverviewColumn column : OverviewColumn.values()) {
      assertTrue(heads.add(column.head(words)), column + ": " + column.head(words));
    }
    Set<String> sheets = new HashSet<>();
    for (String key : List.of("season.sheet", "season.sheet.curves", "season.sheet.warnings")) {
      String name = words.say(key);
      assertTrue(name.matches("[^\\[\\]:*?/\\\\']{1,31}") && sheets.add(name), name);
    }
    for (String key : List.of("report.title", "audit.title")) {
      assertTrue(words.say(key).startsWith("Washbook: "), words.say(key));
    }
    assertTrue(words.say(Message.of("season.title")).startsWith("Washbook"));
  }

  @Test
  void numbersAndDaysAreWrittenAsTheReaderWritesThem() {
    Wording german = new Wording(Language.DE);
    assertEquals("1,0500", german.number("%.4f", 1.05));
    assertEquals("30.11.2025", german.day("2025-11-30"));
    assertEquals("30/11/2025", new Wording(Language.FR).day("2025-11-30"));
    assertEquals("30-11-2025", new Wording(Language.NL).day("2025-11-30"));
    assertEquals("2025-11-30", new Wording(Language.EN).day("2025-11-30"));
    assertEquals("", german.day(""));
    assertEquals("1 Datei", german.count("totals.files", 1));
    assertEquals("0 Dateien", german.count("totals.files", 0));
  }
}
