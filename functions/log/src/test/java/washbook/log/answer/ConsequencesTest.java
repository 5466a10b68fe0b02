package washbook.log.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.Doubt;
import washbook.log.MapAnswer;
import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.log.language.ToldException;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;

/** What follows from an answer, in words, and the questions one after the other. */
class ConsequencesTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "0 ! 0 ! 0 ! nothing is filled",
        "1 ! 0 ! 0 ! alcohol from 0 to 9.5 % vol in 1 row",
        "4 ! 0 ! 0 ! alcohol from 0 to 9.5 % vol in 4 rows",
        "4 ! 2 ! 0 ! alcohol from 0 to 9.5 % vol in 4 rows, 2 refused",
        "4 ! 0 ! 1 ! alcohol from 0 to 9.5 % vol in 4 rows; one question is left",
        "4 ! 1 ! 3 ! alcohol from 0 to 9.5 % vol in 4 rows, 1 refused; 3 questions are left",
        "0 ! 4 ! 0 ! nothing is filled, 4 refused",
      })
  void itIsToldInASentence(String filled, int refused, int questions, String told) {
    AnswerTrial trial =
        new AnswerTrial(LogMap.none(), 0.0, 9.46, Integer.parseInt(filled), refused, questions);
    assertEquals(told, trial.told().in(Language.EN));
  }

  private static final TestGrid TWO =
      TestGrid.of(
          "Two",
          """
          Plum 3
          Day|Brix|Temp C
          0|20|20
          3|14|20
          6|10|20

          Apple 7
          Day|SG|Temp
          0|1.085|50
          4|1.04|49
          8|1.01|51\
          """);

  @Test
  void eachQuestionIsAskedOnceUntilAllAreAnswered() {
    Questions questions = new Questions(TWO, LogMap.none());
    Doubt first = questions.next().orElseThrow();
    assertEquals("B2", first.cell());
    assertEquals(first, questions.next().orElseThrow());
    questions.leave(first);
    Doubt second = questions.next().orElseThrow();
    assertEquals("C8", second.cell());
    Message told = questions.take(second, second.answers().get(0).lines());
    assertTrue(told.in(Language.EN).contains("% vol in 3 rows"), told.in(Language.EN));
    assertTrue(told.in(Language.EN).endsWith("one question is left"), told.in(Language.EN));
    assertTrue(questions.next().isEmpty());
    assertTrue(questions.map().print().contains("TEMPERATURE in C"), questions.map().print());
  }

  @Test
  void whatCannotBeTriedHasNoConsequence() {
    Questions questions = new Questions(TWO, LogMap.none());
    Doubt first = questions.next().orElseThrow();
    assertFalse(questions.consequence(first, first.answers().get(0)).isBlank());
    assertTrue(questions.consequence(first, MapAnswer.of("yes please")).isBlank());
    assertThrows(ToldException.class, () -> questions.take(first, List.of("yes please")));
    assertEquals(LogMap.none(), questions.map());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "corrected = yes ! 1",
        " corrected = yes ; volume = 25 L ! 2",
        "a = 1;b = 2 ;c = 3 ! 3",
      })
  void semicolonsPartTheStatementsOfALine(String typed, int statements) {
    List<String> lines = Questions.lines(typed);
    assertEquals(statements, lines.size());
    lines.forEach(line -> assertEquals(line.strip(), line));
  }

  @Test
  void aDocumentKeepsTheStatementsAlone() {
    LogMap map = LogMap.parse("# mine\nsheet = Log\n\ncorrected = yes\n");
    String text = KeptAnswers.text(map);
    assertFalse(text.contains("#"), text);
    assertTrue(text.lines().noneMatch(String::isBlank), text);
    assertTrue(text.contains("corrected = yes"), text);
    assertEquals(map, KeptAnswers.read(text));
    assertThrows(ToldException.class, () -> KeptAnswers.read("nonsense"));
  }
}
