package washbook.runner.ask;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintStream;
import java.util.List;
import java.util.Optional;
import washbook.log.Doubt;
import washbook.log.MapAnswer;
import washbook.log.answer.Questions;
import washbook.log.language.ToldException;
import washbook.log.sheet.Grid;
import washbook.log.understand.LogMap;
import washbook.runner.language.Wording;

/**
 * Asks each open question of a log once, with its answers and what would follow from each. What is
 * answered is tried at once, so that a question that it settles is not asked any more.
 */
public final class Asking {
  private final BufferedReader in;
  private final PrintStream out;
  private final Wording words;
  private boolean ended;

  public Asking(BufferedReader in, PrintStream out, Wording words) {
    this.in = in;
    this.out = out;
    this.words = words;
  }

  /** The map with the answers, that of {@code map} where nothing was answered. */
  public LogMap ask(List<Grid> sheets, LogMap map) throws IOException {
    LogMap answered = map;
    for (Grid grid : sheets) {
      Questions questions = new Questions(grid, answered);
      Optional<Doubt> open = questions.next();
      while (open.isPresent() && !ended) {
        if (!askOne(grid, questions, open.get())) {
          questions.leave(open.get());
        }
        open = questions.next();
      }
      answered = questions.map();
    }
    return answered;
  }

  /** Whether it was answered. */
  private boolean askOne(Grid grid, Questions questions, Doubt doubt) throws IOException {
    out.println(words.say("ask.question", grid.name(), doubt.cell(), doubt.asked()));
    List<MapAnswer> answers = doubt.answers();
    if (answers.isEmpty()) {
      out.println("  " + words.say("ask.elsewhere"));
      out.println();
      return false;
    }
    for (int i = 0; i < answers.size(); i++) {
      MapAnswer answer = answers.get(i);
      out.println("  " + (i + 1) + "  " + words.say(answer.told()));
      out.println("     " + words.say(questions.consequence(doubt, answer)));
    }
    while (true) {
      out.print(words.say("ask.prompt") + " ");
      out.flush();
      String typed = in.readLine();
      ended = typed == null;
      if (ended || typed.isBlank()) {
        out.println();
        return false;
      }
      if (take(questions, doubt, typed.strip())) {
        return true;
      }
    }
  }

  private boolean take(Questions questions, Doubt doubt, String typed) {
    List<MapAnswer> answers = doubt.answers();
    boolean number = typed.matches("\\d{1,2}");
    int chosen = number ? Integer.parseInt(typed) : 0;
    if (number && (chosen < 1 || chosen > answers.size())) {
      out.println(words.say("ask.noAnswer", typed));
      return false;
    }
    try {
      List<String> lines = number ? answers.get(chosen - 1).lines() : Questions.lines(typed);
      out.println("  " + words.say(questions.take(doubt, lines)));
      out.println();
      return true;
    } catch (ToldException noStatement) {
      out.println(words.say(noStatement.told()));
      return false;
    }
  }
}
