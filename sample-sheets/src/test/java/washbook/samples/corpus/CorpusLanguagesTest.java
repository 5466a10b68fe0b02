package washbook.samples.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import washbook.log.ComputedColumn;
import washbook.log.UnderstandingText;
import washbook.log.WarningLimits;
import washbook.log.fill.FillOptions;
import washbook.log.fill.Filling;
import washbook.log.fill.FormulaStyle;
import washbook.log.fill.LogFiller;
import washbook.log.language.Language;
import washbook.log.overview.Overviews;
import washbook.log.sheet.CellRefusal;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.Grid;

/**
 * What is written into a log, and what is told and asked about it, has no English in it: not a word
 * that the English texts have and those of the language do not.
 */
class CorpusLanguagesTest {
  private static final Pattern WORD = Pattern.compile("\\p{L}{2,}");

  /** More digits than any reading has, as 29.444444444444443. */
  private static final Pattern LONG_NUMBER = Pattern.compile("\\d[.,]\\d{7}");

  /** A line of a map is the same in every language. */
  private static final Pattern STATEMENT =
      Pattern.compile("(sugar added at|batch from) row \\d+ = (by the rise)?");

  /** Words of such lines. */
  private static final Set<String> OF_MAPS =
      Set.of(
          ("after batch before calibration charge column corrected factor first gravity header in"
                  + " ignore kg last limit no offset original pressure reading readings refractometer"
                  + " row run scale sheet strength sugar temperature volume warnings wash yes")
              .split(" "));

  private static final List<String> FILES =
      List.of(
          "/washbook/log/language/",
          "/washbook/log/language/understanding/",
          "/washbook/functions/refusal/");

  private final Set<String> wrong = new TreeSet<>();
  private int texts;

  private static final LocalDate TODAY = LocalDate.of(2026, 11, 20);

  /** English words that are none of a language's own. */
  private static Map<Language, Set<String>> englishWords() throws IOException {
    Map<Language, Set<String>> words = new EnumMap<>(Language.class);
    Set<String> english = words(Language.EN);
    for (Language language : EnumSet.complementOf(EnumSet.of(Language.EN))) {
      Set<String> foreign = new TreeSet<>(english);
      foreign.removeAll(words(language));
      assertTrue(foreign.size() > 300, foreign.size() + " words");
      words.put(language, foreign);
    }
    return words;
  }

  private static Set<String> words(Language language) throws IOException {
    Set<String> words = new TreeSet<>();
    for (String folder : FILES) {
      try (InputStream in =
          Language.class.getResourceAsStream(folder + language.code() + ".properties")) {
        for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList()) {
          if (!line.startsWith("#")) {
            Matcher word = WORD.matcher(line.substring(line.indexOf('=') + 1));
            while (word.find()) {
              words.add(word.group().toLowerCase(Locale.ROOT));
            }
          }
        }
      }
    }
    return words;
  }

  @Test
  void theCorpusIsFilledAndExplainedWithoutAWordOfEnglish() throws IOException {
    Map<Language, Set<String>> words = englishWords();
    for (Path folder : List.of(CorpusFilesTest.GENERATED, CorpusFilesTest.TYPED)) {
      for (Path log : CorpusFilesTest.logs(folder)) {
        for (Taken.Sheet sheet : Taken.of(log).sheets()) {
          String own = ownWords(sheet.grid());
          for (Language language : words.keySet()) {
            look(log.getFileName() + " " + language, sheet, language, words.get(language), own);
          }
        }
      }
    }
    assertTrue(texts > 1000, texts + " texts");
    assertEquals(Set.of(), wrong);
  }

  private void look(
      String where, Taken.Sheet sheet, Language language, Set<String> foreign, String own) {
    FillOptions options =
        new FillOptions(EnumSet.allOf(ComputedColumn.class), FormulaStyle.VALUES)
            .in(language)
            .forUser(language)
            .noting(new Overviews(WarningLimits.usual(), TODAY));
    Filling filling = LogFiller.fill(sheet.grid(), sheet.understanding(), options);
    for (ColumnPatch column : filling.patch().columns()) {
      find(where, foreign, column.header(), own);
      for (int row = column.firstRow(); row <= column.lastRow(); row++) {
        String text = column.owns(row) ? column.cells().text(row) : null;
        if (text != null) {
          find(where, foreign, text, own);
        }
      }
    }
    for (CellRefusal refusal : filling.refusals()) {
      find(where, foreign, refusal.reason(language), own);
    }
    Set<String> told = new TreeSet<>(foreign);
    told.removeAll(OF_MAPS);
    UnderstandingText.lines(sheet.understanding(), filling.accounts(), language)
        .lines()
        .forEach(text -> find(where, told, text, own));
  }

  /** Words that stand in the sheet itself are the person's, who is quoted. */
  private void find(String where, Set<String> foreign, String text, String own) {
    texts++;
    if (LONG_NUMBER.matcher(text).find()) {
      wrong.add(where + ": digits in " + text);
    }
    Matcher word = WORD.matcher(STATEMENT.matcher(text).replaceAll(""));
    while (word.find()) {
      String one = word.group().toLowerCase(Locale.ROOT);
      boolean code = word.group().equals(word.group().toUpperCase(Locale.ROOT));
      if (!code && foreign.contains(one) && !own.contains(one)) {
        wrong.add(where + ": " + word.group() + " in " + text);
      }
    }
  }

  private static String ownWords(Grid grid) {
    StringBuilder own = new StringBuilder(grid.name());
    for (int row = 0; row < grid.rowCount(); row++) {
      for (int column = 0; column < grid.columnsUsed(row); column++) {
        if (grid.kind(row, column) == Grid.Kind.TEXT) {
          own.append(' ').append(grid.text(row, column));
        }
      }
    }
    return own.toString().toLowerCase(Locale.ROOT);
  }
}
