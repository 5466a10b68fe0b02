package washbook.samples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What people read, in the program, the documents and the comments, is written in plain words. */
class WordsForPeopleTest {
  private static final Path ROOT = Path.of("..");
  private static final List<String> MODULES =
      List.of("functions/maths", "functions/log", "batch-runner", "office-extension");

  /**
   * {@code presentBrix}, {@code UNKNOWN_WORD}: what is so written has its place in code and JSON.
   */
  private static final Pattern WORD_OF_CODE =
      Pattern.compile(
          "\\b\\p{Ll}{2,}\\p{Lu}\\p{L}*|\\b(?:CONTRADICTION|[A-Z]+_WORD|OUT_OF_[A-Z]+)\\b");

  /** Heads of a table for programs, which are English there. */
  private static final String HEAD_FOR_PROGRAMS = "csv.";

  /** Odd in English; what stands in quotation marks is spoken about. */
  private static final Pattern ODD =
      Pattern.compile(
          "behind the (?:decimal )?(?:point|mark)\\b|\\bpresent (?:token|row|reading)\\b"
              + "|(?<![\"„“])\\breckon|\\balcoholmeter\\b|\\b(?:tell|told) a map\\b|\\banew\\b"
              + "|\\bparted by\\b|\\bin vain\\b|\\bis right at \\d|\\bcounts what others\\b"
              + "|\\btakes? for granted\\b|\\bso many digits\\b",
          Pattern.CASE_INSENSITIVE);

  private static final Pattern COMMENT = Pattern.compile("(?s)/\\*.*?\\*/|(?m)^\\s*//.*$");
  private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"");

  private int texts;

  private static List<Path> files(Path folder, Predicate<String> wanted) {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(file -> wanted.test(file.toString())).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Path> bundles() {
    List<Path> bundles = new ArrayList<>();
    for (String module : MODULES) {
      bundles.addAll(
          files(
              ROOT.resolve(module).resolve("src/main/resources/washbook"),
              name -> name.matches(".*/\\w\\w\\.properties")));
    }
    bundles.addAll(
        files(Path.of("src/release/ready"), name -> name.matches(".*/\\w\\w\\.properties")));
    assertTrue(bundles.size() > 70, bundles.size() + " files");
    return bundles;
  }

  @Test
  void noTextHasAWordOfCode() throws IOException {
    List<String> wrong = new ArrayList<>();
    for (Path file : bundles()) {
      for (String line : Files.readAllLines(file)) {
        if (!line.startsWith("#") && !line.startsWith(HEAD_FOR_PROGRAMS)) {
          find(WORD_OF_CODE, line.substring(line.indexOf('=') + 1), file + ": " + line, wrong);
        }
      }
    }
    assertTrue(texts > 5000, texts + " texts");
    assertEquals(List.of(), wrong);
  }

  @Test
  void englishTextsAndDocumentsAreIdiomatic() throws IOException {
    List<String> wrong = new ArrayList<>();
    for (Path file : bundles()) {
      if (file.endsWith("en.properties")) {
        for (String line : Files.readAllLines(file)) {
          find(ODD, line.substring(line.indexOf('=') + 1), file + ": " + line, wrong);
        }
      }
    }
    for (Path file :
        files(ROOT, name -> name.endsWith(".md") && !name.matches(".*/(target|glossary)/.*"))) {
      for (String line : Files.readAllLines(file)) {
        find(ODD, line, file + ": " + line, wrong);
      }
    }
    assertEquals(List.of(), wrong);
  }

  /** Comments, and the sentences that stand in code: help and what functions are about. */
  @Test
  void codeIsExplainedInIdiomaticEnglish() throws IOException {
    List<String> wrong = new ArrayList<>();
    for (String module : MODULES) {
      for (Path file : files(ROOT.resolve(module).resolve("src"), name -> name.endsWith(".java"))) {
        String code = Files.readString(file);
        COMMENT
            .matcher(code)
            .results()
            .forEach(one -> find(ODD, one.group(), file + ": " + one.group(), wrong));
        if (file.toString().contains("/src/main/")) {
          LITERAL
              .matcher(COMMENT.matcher(code).replaceAll(""))
              .results()
              .forEach(one -> find(ODD, one.group(1), file + ": " + one.group(1), wrong));
        }
      }
    }
    assertTrue(texts > 5000, texts + " texts");
    assertEquals(List.of(), wrong);
  }

  private void find(Pattern sought, String text, String where, List<String> wrong) {
    texts++;
    Matcher found = sought.matcher(text);
    if (found.find()) {
      wrong.add(found.group() + " in " + where);
    }
  }
}
