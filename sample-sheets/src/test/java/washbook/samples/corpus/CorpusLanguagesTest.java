package washbook.samples.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import washbook.log.UnderstandingText;
import washbook.log.fill.FillOptions;
import washbook.log.fill.Filling;
import washbook.log.fill.LogFiller;
import washbook.log.language.Language;
import washbook.log.sheet.CellRefusal;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.Grid;

/** What is written into a log, and what is told and asked about it, has no English in it. */
class CorpusLanguagesTest {
  /** English words that none of our other languages has and no map is written with. */
  /** A line of a map is the same in every language. */
  private static final Pattern STATEMENT =
      Pattern.compile("(sugar added at|batch from) row \\d+ = (by the rise)?");

  private static final Pattern TOLD =
      Pattern.compile(
          "\\b(the|and|which|readings|must|too|batches|above|below|rows|blank|known|filled|nothing"
              + "|says|another|values|temperatures|its|they|were|taken|stated)\\b");

  private static final Pattern WRITTEN =
      Pattern.compile(
          TOLD.pattern() + "|\\b(with|reading|batch|gravity|corrected|row|column|header|sheet)\\b");

  private final Set<String> english = new TreeSet<>();
  private int texts;

  @Test
  void theCorpusIsFilledAndExplainedWithoutAWordOfEnglish() throws IOException {
    for (Path folder : List.of(CorpusFilesTest.GENERATED, CorpusFilesTest.TYPED)) {
      for (Path log : CorpusFilesTest.logs(folder)) {
        for (Taken.Sheet sheet : Taken.of(log).sheets()) {
          String own = ownWords(sheet.grid());
          for (Language language : EnumSet.complementOf(EnumSet.of(Language.EN))) {
            look(log.getFileName() + " " + language, sheet, language, own);
          }
        }
      }
    }
    assertTrue(texts > 1000, texts + " texts");
    assertEquals(Set.of(), english);
  }

  private void look(String where, Taken.Sheet sheet, Language language, String own) {
    FillOptions options = FillOptions.usual().in(language).forUser(language);
    Filling filling = LogFiller.fill(sheet.grid(), sheet.understanding(), options);
    List<String> written = new ArrayList<>();
    filling.patch().columns().stream().map(ColumnPatch::header).forEach(written::add);
    for (CellRefusal refusal : filling.refusals()) {
      written.add(refusal.reason(language));
    }
    written.forEach(text -> find(where, WRITTEN, text, own));
    String told = UnderstandingText.lines(sheet.understanding(), filling.accounts(), language);
    find(where, TOLD, told, own);
  }

  /** Words that stand in the sheet itself are the person's, who is quoted. */
  private void find(String where, Pattern words, String text, String own) {
    texts++;
    Matcher found = words.matcher(STATEMENT.matcher(text).replaceAll(""));
    while (found.find()) {
      if (!own.contains(found.group().toLowerCase(Locale.ROOT))) {
        english.add(where + ": " + found.group() + " in " + text.lines().findFirst().orElse(""));
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
