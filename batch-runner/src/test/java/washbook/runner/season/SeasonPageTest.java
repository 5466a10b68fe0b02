package washbook.runner.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import washbook.log.language.Language;
import washbook.runner.language.Wording;
import washbook.runner.report.OverviewColumn;

class SeasonPageTest {
  @Test
  void everyColumnStandsOnTheSheetOnce() {
    assertEquals(OverviewColumn.values().length, SeasonPage.COLUMNS.size());
    assertEquals(EnumSet.allOf(OverviewColumn.class), EnumSet.copyOf(SeasonPage.COLUMNS));
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void whatIsPrintedIsOnePageWideInEveryLanguage(Language language) {
    Wording words = new Wording(language);
    int names = SeasonPage.width(OverviewColumn.BATCH, words);
    for (int[] part : SeasonPage.printed(0)) {
      int width = part[0] == 0 ? 0 : names;
      for (int column = part[0]; column <= part[1]; column++) {
        width += SeasonPage.width(SeasonPage.COLUMNS.get(column), words);
      }
      assertTrue(width <= SeasonPage.ACROSS, language + ": " + width);
    }
    assertEquals(1, SeasonPage.pages(words, 0));
  }

  /** They stand on pages of their own, beside the names, so that the table stays readable. */
  @Test
  void columnsOfThePersonArePrintedBehindOurs() {
    Wording words = new Wording(Language.EN);
    List<int[]> printed = SeasonPage.printed(2);
    assertEquals(3, printed.size());
    assertEquals(OverviewColumn.values().length + 1, printed.get(2)[1]);
    assertEquals(1, SeasonPage.pages(words, 2));
    assertEquals(2, SeasonPage.pages(words, 12));
  }

  @Test
  void aHeadsLongestWordFits() {
    Wording words = new Wording(Language.DE);
    assertEquals("Vergärungsgrad".length() + 1, SeasonPage.width(OverviewColumn.REAL, words));
  }
}
