package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.ComputedColumn;
import washbook.log.language.Language;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Headers that several languages have are told by the words around the table, above and in it. */
class LanguageByWordsAroundTest {
  private static Language language(TestGrid grid, Language user) {
    return LogFiller.fill(
            grid,
            SheetUnderstanding.understand(grid, LogMap.none()),
            FillOptions.usual().forUser(user))
        .columns()
        .get(0)
        .language();
  }

  private static TestGrid log(String title, String note) {
    return TestGrid.of(
        "x",
        (title + "\nDatum|SG|Temp C|\n#2025-10-01|1.085|20|" + note)
            + "\n#2025-10-03|1.05|20|\n#2025-10-05|1.03||");
  }

  @ParameterizedTest
  @CsvSource(
      nullValues = "-",
      value = {
        "'', '', EN, EN",
        "'', '', DE, DE",
        "'', '', NL, NL",
        "Gärung im Keller, '', EN, DE",
        "Gärung im Keller, '', NL, DE",
        "'', Hefe gegeben, EN, DE",
        "'', Hefe gegeben, NL, DE",
        "Dichtheid van het beslag, '', DE, NL",
      })
  void wordsAboveTheTableAndInItDecide(String title, String note, Language user, Language told) {
    assertEquals(told, language(log(title, note), user));
  }

  /** What we have written ourselves in another language is no word of the log's. */
  @Test
  void ourOwnNotesAreNoWordsOfTheLog() {
    TestGrid grid = log("", "");
    Filling filling =
        LogFiller.fill(
            grid,
            SheetUnderstanding.understand(grid, LogMap.none()),
            FillOptions.usual().in(Language.NL));
    assertEquals(true, filling.columns().stream().anyMatch(c -> c.column() == ComputedColumn.NOTE));
    assertEquals(Language.DE, language(grid.with(filling.patch()), Language.DE));
  }
}
