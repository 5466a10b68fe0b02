package washbook.log.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static washbook.log.fill.SimpleLogTest.calc;

import java.util.List;
import org.junit.jupiter.api.Test;
import washbook.log.Doubt;
import washbook.log.MapAnswer;
import washbook.log.Understanding;
import washbook.log.language.Language;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Every answer that a question offers can be taken, and tells what follows from it. */
class AnswerTrialTest {
  private static final TestGrid BRIX =
      TestGrid.of(
          "Wine",
          """
          date | Brix | temp C
          #2025-10-01 | 20 | 20
          #2025-10-03 | 15 | 20
          #2025-10-06 | 10 | 20
          #2025-10-14 | 7.5 | 20\
          """);

  @Test
  void eachAnswerOfTheInstrumentFillsWithItsOwnFigures() {
    Understanding understood = SheetUnderstanding.understand(BRIX, LogMap.none());
    Doubt doubt = understood.doubts().get(0);
    assertEquals(2, doubt.answers().size());
    AnswerTrial refractometer = trial(doubt, doubt.answers().get(0));
    AnswerTrial hydrometer = trial(doubt, doubt.answers().get(1));
    assertEquals(0, refractometer.questions());
    assertEquals(4, refractometer.filled());
    double original = calc("CONVERT", 20.0, "BRIX", "SG");
    assertEquals(
        calc("ABV", original, calc("REFRACTOMETERGRAVITY", 20.0, 7.5)),
        refractometer.lastAbv(),
        1e-6);
    assertEquals(0.0, hydrometer.firstAbv(), 1e-9);
    assertTrue(hydrometer.lastAbv() < refractometer.lastAbv() - 3);
    assertTrue(
        refractometer.told().in(Language.EN).endsWith("% vol in 4 rows"),
        refractometer.told().in(Language.EN));
  }

  private static AnswerTrial trial(Doubt doubt, MapAnswer answer) {
    return AnswerTrial.of(BRIX, LogMap.none(), doubt, answer.lines());
  }

  @Test
  void anAnswerIsAddedToWhatTheMapSaysAlready() {
    Understanding understood = SheetUnderstanding.understand(BRIX, LogMap.none());
    LogMap before = LogMap.parse("original gravity = 1.090 SG");
    AnswerTrial trial =
        AnswerTrial.of(
            BRIX, before, understood.doubts().get(0), List.of("column B = REFRACTOMETER in BRIX"));
    Understanding again = SheetUnderstanding.understand(BRIX, trial.map());
    assertEquals(
        1.090, again.tables().get(0).batches().get(0).originalGravity().orElseThrow(), 1e-9);
    assertEquals(trial.map(), LogMap.parse(trial.map().print()));
  }

  @Test
  void whatIsNoStatementOfAMapIsRefusedWithItsReason() {
    Understanding understood = SheetUnderstanding.understand(BRIX, LogMap.none());
    Doubt doubt = understood.doubts().get(0);
    assertThrows(
        IllegalArgumentException.class,
        () -> AnswerTrial.of(BRIX, LogMap.none(), doubt, List.of("yes please")));
  }
}
