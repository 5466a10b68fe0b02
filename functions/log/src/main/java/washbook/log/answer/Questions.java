package washbook.log.answer;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import washbook.log.Doubt;
import washbook.log.MapAnswer;
import washbook.log.language.Message;
import washbook.log.language.ToldException;
import washbook.log.sheet.Grid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/**
 * The open questions of a sheet one after the other, each asked once. What is answered is tried at
 * once, so that a question that it settles is not asked any more.
 */
public final class Questions {
  private final Grid grid;
  private final Set<Message> left = new HashSet<>();
  private LogMap map;

  /**
   * @param map what was said before
   */
  public Questions(Grid grid, LogMap map) {
    this.grid = grid;
    this.map = map;
  }

  /** The same after something else was said; what was left open is not asked again. */
  public Questions over(LogMap other) {
    Questions questions = new Questions(grid, other);
    questions.left.addAll(left);
    return questions;
  }

  /** What was said before with the answers. */
  public LogMap map() {
    return map;
  }

  /** The next question, empty when none is open but those left open. */
  public Optional<Doubt> next() {
    return SheetUnderstanding.understand(grid, map).doubts().stream()
        .filter(doubt -> !left.contains(doubt.asked()))
        .findFirst();
  }

  /** Leaves a question open. */
  public void leave(Doubt doubt) {
    left.add(doubt.asked());
  }

  /** What would follow from an answer, {@link Message#NONE} where it cannot be tried. */
  public Message consequence(Doubt doubt, MapAnswer answer) {
    try {
      return AnswerTrial.of(grid, map, doubt, answer.lines()).told();
    } catch (ToldException untried) {
      return Message.NONE;
    }
  }

  /**
   * Takes an answer.
   *
   * @param lines statements of a map
   * @return what follows from it
   * @throws ToldException when they are none, with what is wrong
   */
  public Message take(Doubt doubt, List<String> lines) {
    AnswerTrial trial = AnswerTrial.of(grid, map, doubt, lines);
    map = trial.map();
    return trial.told();
  }

  /** The statements of a map in a line that a person typed, which semicolons part. */
  public static List<String> lines(String typed) {
    return List.of(typed.strip().split("\\s*;\\s*"));
  }
}
