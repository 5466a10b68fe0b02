package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import washbook.log.PassedOver;
import washbook.log.RowAccount;
import washbook.log.RowAccount.Passed;
import washbook.log.Understanding;
import washbook.log.language.Language;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Every row of a table's range is filled, refused, or passed over for a reason. */
class RowAccountsTest {

  private static List<RowAccount> of(String... rows) {
    TestGrid grid = TestGrid.of("Log", String.join("\n", rows));
    Understanding understanding = SheetUnderstanding.understand(grid, LogMap.none());
    return List.copyOf(
        LogFiller.fill(grid, understanding, FillOptions.usual()).accounts().values());
  }

  @Test
  void blankRowsHeadingsAveragesAndNotesAreNamedWithTheirRows() {
    assertEquals(
        List.of(
            new RowAccount(
                10,
                4,
                1,
                5,
                List.of(
                    new Passed(PassedOver.BLANK, 2, "4, 8"),
                    new Passed(PassedOver.HEADING, 1, "2"),
                    new Passed(PassedOver.AVERAGE, 1, "7"),
                    new Passed(PassedOver.NOTE, 1, "6")))),
        of(
            "Day | SG | Temp °C",
            " | SG | °C",
            "0 | 1.085 | 20",
            " | | ",
            "3 | 1.05 | 24",
            "racked today | | ",
            "Average | 1.0675 | 22",
            "5 | | 20",
            "6 | 1.02 | 21",
            "7 | 1.01 | ",
            "9 | 1.0 | 21"));
  }

  @Test
  void theRowsOfATableThatWaitsForAnAnswerAreRefused() {
    assertEquals(
        List.of(
            new RowAccount(
                6,
                0,
                4,
                2,
                List.of(
                    new Passed(PassedOver.BLANK, 1, "5"), new Passed(PassedOver.HEADING, 1, "2")))),
        of(
            "Plum wine, fermentation | | ",
            "Day | Reading | Temp °C",
            "0 | 20.5 | 20",
            "3 | 14 | 24",
            "5 | | 20",
            "6 | 9 | 21",
            "9 | 6 | 21"));
  }

  @Test
  void theJarsOfAStillRunAreAccountedForAsReadingsAre() {
    assertEquals(
        List.of(
            new RowAccount(
                8,
                4,
                1,
                2 + 1,
                List.of(
                    new Passed(PassedOver.HEADING, 2, "1, 4"),
                    new Passed(PassedOver.AVERAGE, 1, "7")))),
        of(
            "Jar | Cut | Volume mL | Strength % vol | Temp °C",
            "1 | heads | 200 | 78 | 20",
            "2 | heads | 200 | 76 | 20",
            "hearts | | | | ",
            "3 | hearts | 500 | 70 | 20",
            "4 | hearts | 500 | | 20",
            "Total | | 1400 | | ",
            "5 | tails | 500 | 50 | 20"));
  }

  @Test
  void anAccountThatDoesNotAddUpIsNone() {
    assertThrows(IllegalArgumentException.class, () -> new RowAccount(5, 3, 1, 0, List.of()));
    assertThrows(
        IllegalArgumentException.class,
        () -> new RowAccount(5, 3, 1, 1, List.of(new Passed(PassedOver.NOTE, 2, "4-5"))));
  }

  @Test
  void itIsToldInTheUsersWords() {
    RowAccount account =
        new RowAccount(5, 3, 1, 1, List.of(new Passed(PassedOver.HEADING, 1, "1")));
    assertEquals(
        "Rows: 5; filled: 3; refused: 1; passed over: 1 (headings: 1)",
        account.told().in(Language.EN));
    assertEquals(
        "Zeilen: 5; ausgefüllt: 3; zurückgewiesen: 1; übergangen: 1 (Überschriften: 1)",
        account.told().in(Language.DE));
    assertEquals(
        "Rows: 4; filled: 3; refused: 1; passed over: 0",
        new RowAccount(4, 3, 1, 0, List.of()).told().in(Language.EN));
  }
}
