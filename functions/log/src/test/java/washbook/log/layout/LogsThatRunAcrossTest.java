package washbook.log.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.Doubt;
import washbook.log.Doubts;
import washbook.log.MapAnswer;
import washbook.log.language.Message;
import washbook.log.sheet.AcrossGrid;
import washbook.log.sheet.TestGrid;

/** Logs whose dates stand side by side: which are found, which can be turned. */
class LogsThatRunAcrossTest {
  private static TestGrid grid(String text) {
    return TestGrid.of("Log", text.replace('^', '|').replace(" ;", "\n"));
  }

  private static String range(TestGrid grid) {
    return TransposedLog.in(grid)
        .map(log -> log.turned().map(AcrossGrid::range).orElse("not turned"))
        .orElse("none");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Day^0^3^6 ; SG^1.085^1.05^1.02 ! A1:D2",
        "SG^1.085^1.05^1.02 ; Day^0^3^6 ! A1:D2",
        "Plum 3 ; ; Day^0^3^6 ; SG^1.085^1.05^1.02 ! A3:D4",
        "Hours^0^48^96 ; Gravity^1.085^1.05^1.02 ! A1:D2",
        "Date^4 Nov 2025^6 Nov 2025^9 Nov 2025 ; SG^1.085^1.05^1.02 ! A1:D2",
        "Day^0^3^6 ; Brix^20^12^5 ! A1:D2",
        "Day^0^3^6 ; SG^1085^1050^1020 ! A1:D2",
        // three readings, and they fall
        "Day^0^3 ; SG^1.085^1.05 ! none",
        "Day^0^3^6 ; SG^1.085^1.05^ ! none",
        "Day^0^3^6 ; Gravity^85^50^20 ! none",
        "Day^0^3^6 ; SG^1.085^1.08^1.07 ! none",
        "Day^0^3^6 ; SG^1.080^1.06^1.053 ! none",
        "Day^0^3^6 ; SG^1.080^1.06^1.051 ! A1:D2",
        "Day^0^3^6 ; Temp C^20^21^20 ! none",
        // rows around belong to the block
        "Batch^3^3^3 ; Day^0^3^6 ; SG^1.085^1.05^1.02 ; Temp C^20^21^20 ; smell^fruit^^yeast"
            + " ! A1:D5",
        "Day^0^3^6^8 ; SG^1.085^1.05^1.02^ ; Temp C^20^21^20^19 ! A1:E3",
        "Date^Mon 3^Thu 6^Sun 9 ; Day^0^3^6 ; SG^1.085^1.05^1.02 ! A1:D3",
        "Plum 3^25 L ; Day^0^3^6 ; SG^1.085^1.05^1.02 ; racked later ! A2:D3",
        "Day^0^3^6 ; SG^1.085^1.05^1.02 ; ; racked later ! A1:D2",
        "Day^0^3^6 ; SG^1.085^1.05^1.02 ; ^20^21^20 ! A1:D3",
        // what stands left of it, or figures below it, forbid to turn it
        "^Day^0^3^6 ; ^SG^1.085^1.05^1.02 ! B1:E2",
        "^Day^0^3^6 ; x^SG^1.085^1.05^1.02 ! none",
        "^Day^0^3^6 ; ^SG^1.085^1.05^1.02 ; x^Temp C^20^20^20 ! not turned",
        "Day^0^3^6 ; SG^1.085^1.05^1.02 ; ; Rain^1^2^3 ! not turned",
        "Day^0^3^6 ; SG^1.085^1.05^1.02 ; ; Rain^1^2 ! A1:D2",
      })
  void aLogAcrossHasItsDatesInOneRowAndItsReadingsInAnother(String text, String range) {
    assertEquals(range, range(grid(text)));
  }

  @ParameterizedTest
  @CsvSource({"11, A1:D13", "12, none"})
  void datesAndReadingsStandCloseTogether(int between, String range) {
    String log = "Day^0^3^6" + " ; x^1^2^3".repeat(between) + " ; SG^1.085^1.05^1.02";
    assertEquals(range, range(grid(log)));
  }

  /** Where words of the trade stand near the top, four dates need no word before them. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "fermentation of plums",
        "hydrometer",
      })
  void wordsOfTheTradeMakeUpForMissingLabels(String title) {
    String four = " ; x^#2025-11-04^#2025-11-06^#2025-11-09^#2025-11-12 ; y^1.085^1.05^1.02^1.01";
    String three = " ; x^#2025-11-04^#2025-11-06^#2025-11-09 ; y^1.085^1.05^1.02";
    assertEquals("A2:E3", range(grid(title + four)));
    assertEquals("none", range(grid(title + three)));
    assertEquals("none", range(grid("shopping" + four)));
  }

  @Test
  void aMergedCellThatReachesIntoItForbidsToTurnIt() {
    String log = "Plum 3 ; Day^0^3^6 ; SG^1.085^1.05^1.02 ; ; note";
    assertEquals("A2:D3", range(grid(log).merge(0, 0, 0, 3)));
    assertEquals("A2:D3", range(grid(log).merge(3, 0, 4, 3)));
    assertEquals("A2:D3", range(grid(log).merge(1, 4, 2, 5)));
    assertEquals("not turned", range(grid(log).merge(0, 0, 1, 0)));
    assertEquals("not turned", range(grid(log).merge(2, 3, 4, 3)));
    assertEquals("not turned", range(grid(log).merge(1, 3, 2, 5)));
  }

  @ParameterizedTest
  @CsvSource({"62, A1:BK2", "63, A1:BL2", "64, not turned"})
  void ofMoreThanSixtyFourColumnsNoneIsTurned(int readings, String range) {
    StringBuilder days = new StringBuilder("Day");
    StringBuilder gravities = new StringBuilder("SG");
    for (int i = 0; i < readings; i++) {
      days.append("^" + i);
      gravities.append("^" + (1.085 - 0.001 * i));
    }
    assertEquals(range, range(grid(days + " ; " + gravities)));
  }

  /** Ours go below everything with a blank row between, drawings too. */
  @Test
  void ourRowsGoBelowEverything() {
    String log = "Day^0^3^6 ; SG^1.085^1.05^1.02 ; ; note";
    assertEquals(5, TransposedLog.in(grid(log)).orElseThrow().turned().orElseThrow().headingRow());
    assertEquals(
        9,
        TransposedLog.in(grid(log).draw(3, 0, 7, 3))
            .orElseThrow()
            .turned()
            .orElseThrow()
            .headingRow());
    String filled =
        log + " ; ; Computed (Washbook)^1^2^3 ; Corrected gravity (SG, Washbook)^1.085^1.05^1.02";
    AcrossGrid turned = TransposedLog.in(grid(filled)).orElseThrow().turned().orElseThrow();
    assertEquals(5, turned.headingRow());
    assertEquals("A1:D2", turned.range());
    assertEquals(2, turned.column(6));
    assertTrue(TransposedLog.isFilled(grid(filled)));
    assertFalse(TransposedLog.isFilled(grid(log)));
  }

  @Test
  void whatCannotBeTurnedIsAskedAboutAtItsReadings() {
    Doubts doubts = new Doubts();
    TransposedLog.in(grid("Plum 3 ; Day^0^3^6 ; SG^1.085^1.05^1.02"))
        .orElseThrow()
        .askToTurn(doubts);
    assertEquals("A3", doubts.all().get(0).cell());
    String question = doubts.all().get(0).question();
    assertTrue(question.contains("2") && question.contains("3"), question);
  }

  private static Optional<List<Doubt>> turned(String cell, MapAnswer... answers) {
    AcrossGrid grid =
        TransposedLog.in(grid("Plum 3 ; Day^0^3^6 ; SG^1.085^1.05^1.02"))
            .orElseThrow()
            .turned()
            .orElseThrow();
    return new AcrossDoubts(grid)
        .of(List.of(new Doubt(cell, 1, Message.of("plain", "which"), List.of(answers))));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "column A = DAY; row 2 = DAY",
        "column B = REFRACTOMETER in BRIX; row 3 = REFRACTOMETER in BRIX",
        "temperature = 20 C; temperature = 20 C",
        "corrected = yes; corrected = yes",
        "original gravity = 1.085 SG; original gravity = 1.085 SG",
      })
  void anAnswerNamesTheRowsOfTheSheet(String answer, String turned) {
    Doubt doubt = turned("A3", MapAnswer.like(answer)).orElseThrow().get(0);
    assertEquals(List.of(turned), doubt.answers().get(0).lines());
    assertTrue(doubt.answers().get(0).isExample());
    assertEquals("A3", doubt.cell());
    assertEquals(1, doubt.headerRow());
  }

  @ParameterizedTest
  @ValueSource(strings = {"sugar added at row 3 = 2 KG", "batch from row 4 = Plum 9"})
  void anAnswerAboutARowCannotBeGivenOfALogAcross(String answer) {
    assertEquals(Optional.empty(), turned("A3", MapAnswer.of("corrected = yes", answer)));
    assertEquals(Optional.empty(), turned("A3"));
  }

  @Test
  void theQuestionSaysWhichRowAColumnIs() {
    String asked = turned("A3", MapAnswer.of("column A = DAY")).orElseThrow().get(0).question();
    assertTrue(asked.contains("column A here is row 2 of the sheet"), asked);
    assertTrue(asked.contains("column B here is row 3 of the sheet"), asked);
    String other = turned("A1", MapAnswer.of("corrected = yes")).orElseThrow().get(0).question();
    assertFalse(other.contains("here is row"), other);
  }
}
