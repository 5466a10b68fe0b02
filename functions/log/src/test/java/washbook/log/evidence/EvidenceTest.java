package washbook.log.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.Understanding;
import washbook.log.fill.FillOptions;
import washbook.log.fill.LogFiller;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** What is filled, asked about and left alone. */
class EvidenceTest {
  private static final String FALLING =
      "\n#2026-11-02 | 1.085 | 20\n#2026-11-03 | 1.07 | 20\n#2026-11-04 | 1.05 | 20"
          + "\n#2026-11-06 | 1.02 | 20\n#2026-11-08 | 1.004 | 20";
  private static final String WAVERING =
      "\n#2026-11-02 | 1.060 | 12\n#2026-11-09 | 1.045 | 12\n#2026-11-16 | 1.068 | 12"
          + "\n#2026-11-23 | 1.050 | 12\n#2026-11-30 | 1.063 | 12";

  private static Understanding understood(String sheet, String text) {
    return SheetUnderstanding.understand(TestGrid.of(sheet, text), LogMap.none());
  }

  private static int columns(String sheet, String text) {
    return LogFiller.fill(TestGrid.of(sheet, text), understood(sheet, text), FillOptions.usual())
        .patch()
        .columns()
        .size();
  }

  private static void isLeftAloneInOneLine(String sheet, String text) {
    Understanding understood = understood(sheet, text);
    assertEquals(List.of(), understood.tables());
    assertTrue(understood.doubts().size() <= 1, understood.doubts().toString());
    assertEquals(0, columns(sheet, text));
  }

  @Test
  void aCourseAsAFermentsIsEnough() {
    assertTrue(columns("Sheet1", "Date | Density | Temp C" + FALLING) > 0);
  }

  @Test
  void aFewFiguresWithoutATimeAreAListAndNoLog() {
    String blends = "Saft und Mischungen\nDichte | 1.052\n\nTeil | Liter | SG\n";
    String end = "\n | | \nDichte der Mischung | | 1.064";
    isLeftAloneInOneLine("Mosto", blends + "Apfel 7 | 25 | 1.052\nPflaume 3 | 15 | 1.084" + end);
    isLeftAloneInOneLine("Mosto", blends + "Pflaume 3 | 15 | 1.084\nApfel 7 | 25 | 1.052" + end);
    isLeftAloneInOneLine("Mosto", blends + "Apfel 7 | 25 | 1.052");
    isLeftAloneInOneLine("Mosto", blends + " | | ");
    assertEquals(1, understood("Must", "Day | SG\n0 | 1.084\n1 | 1.052").doubts().size());
  }

  @Test
  void whatRisesDayByDayIsFruitThatRipensWhateverItsWords() {
    String ripening =
        "\n#2026-08-01 | 1.056 | 24\n#2026-08-06 | 1.062 | 25\n#2026-08-11 | 1.069 | 27"
            + "\n#2026-08-16 | 1.076 | 26\n#2026-08-26 | 1.089 | 22";
    assertEquals(0, columns("Sheet1", "Must, plot 4\nDate | SG | Temp C" + ripening));
  }

  @Test
  void whatFallsMoreAndMoreIsAskedAboutWhereNothingElseSpeaksOfAFerment() {
    String ageing =
        "\n#2026-01-06 | 1.087 | 12\n#2026-01-13 | 1.080 | 12\n#2026-01-20 | 1.069 | 13"
            + "\n#2026-01-27 | 1.052 | 12\n#2026-02-03 | 1.034 | 12";
    assertEquals(0, columns("Sheet1", "Date | Density | Temp C" + ageing));
    assertTrue(columns("Sheet1", "Must, tank 4\nDate | Density | Temp C" + ageing) > 0);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Battery bank, weekly check",
        "Salmuera de aceitunas",
        "Pekelbad",
        "Boord rypheid",
        "Collecte du lait",
        "Giacenza sciroppi",
        "Kühlschmierstoff",
        "Urina, pacientes"
      })
  void aTitleOfAnotherTradeTurnsItOff(String title) {
    assertEquals(0, columns("Sheet1", title + "\nDate | Density | Temp C" + FALLING));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Brine tank", "Aquarium", "Heftruck accu", "Bodenproben", "Acetaia"})
  void aSheetOfAnotherTradeTurnsItOff(String sheet) {
    isLeftAloneInOneLine(sheet, "Date | Density | Temp C" + WAVERING);
    assertEquals(0, columns(sheet, "Date | Density | Temp C" + FALLING));
  }

  @Test
  void readingsThatGoUpAndDownAreLeftAloneWhereNothingSpeaksOfAFerment() {
    isLeftAloneInOneLine("Sheet1", "Date | SG | Temp C" + WAVERING);
  }

  @ParameterizedTest
  @CsvSource({
    "Must temp C",
    "Maischetemperatur C",
    "Temp. mosto C",
    "Temp. moût C",
    "Temp beslag C"
  })
  void aWordOfTheTradeLetsShortLogsBeFilled(String temperature) {
    assertTrue(
        columns("Sheet1", "Date | Density | " + temperature + "\n#2026-11-02 | 1.085 | 20") > 0);
  }

  @Test
  void aDensityAloneIsAskedAboutOnce() {
    Understanding understood =
        understood("Sheet1", "Date | Density | Temp C\n#2026-11-02 | 1.085 | 20");
    assertEquals(1, understood.doubts().size());
    assertTrue(
        understood.doubts().get(0).question().startsWith("Is the table below row 1 the log"));
    assertEquals(0, columns("Sheet1", "Date | Density | Temp C\n#2026-11-02 | 1.085 | 20"));
  }

  @Test
  void aMapAnswersTheQuestion() {
    TestGrid grid = TestGrid.of("Sheet1", "Date | Density | Temp C\n#2026-11-02 | 1.085 | 20");
    Understanding told = SheetUnderstanding.understand(grid, LogMap.parse("header row = 1"));
    assertEquals(List.of(), told.doubts());
    assertTrue(told.tables().get(0).settled());
  }

  @Test
  void aSampleInEachRowIsNoFerment() {
    isLeftAloneInOneLine(
        "Sheet1",
        "Lot | SG | Temp C\nA | 1.085 | 20\nB | 1.070 | 20\nC | 1.050 | 20\nD | 1.020 | 20");
  }

  @Test
  void hotWorkIsNoFerment() {
    isLeftAloneInOneLine("Sheet1", "Date | SG | Temp C" + FALLING.replace("| 20", "| 72"));
  }

  @Test
  void oneSlipOfThePenDoesNotHideTheCourse() {
    assertTrue(columns("Sheet1", "Date | SG | Temp C" + FALLING.replace("1.05 ", "1.15 ")) > 0);
  }

  @Test
  void weighsTitlesOfBothTradesTogether() {
    assertEquals(0, columns("Sheet1", "Wine vinegar casks\nDate | Density | Temp C" + WAVERING));
  }
}
