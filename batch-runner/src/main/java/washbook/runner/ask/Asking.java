package washbook.runner.ask;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintStream;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import washbook.log.Doubt;
import washbook.log.MapAnswer;
import washbook.log.answer.AnswerTrial;
import washbook.log.language.Message;
import washbook.log.language.ToldException;
import washbook.log.sheet.Grid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;
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
      Set<Message> left = new HashSet<>();
      Optional<Doubt> open = next(grid, answered, left);
      while (open.isPresent() && !ended) {
        Doubt doubt = open.get();
        Optional<LogMap> with = askOne(grid, answered, doubt);
        if (with.isEmpty()) {
          left.add(doubt.asked());
        }
        answered = with.orElse(answered);
        open = next(grid, answered, left);
      }
    }
    return answered;
  }

  private static Optional<Doubt> next(Grid grid, LogMap map, Set<Message> left) {
    return SheetUnderstanding.understand(grid, map).doubts().stream()
        .filter(doubt -> !left.contains(doubt.asked()))
        .findFirst();
  }

  private Optional<LogMap> askOne(Grid grid, LogMap map, Doubt doubt) throws IOException {
    out.println(words.say("ask.question", grid.name(), doubt.cell(), doubt.asked()));
    List<MapAnswer> answers = doubt.answers();
    if (answers.isEmpty()) {
      out.println("  " + words.say("ask.elsewhere"));
      out.println();
      return Optional.empty();
    }
    for (int i = 0; i < answers.size(); i++) {
      MapAnswer answer = answers.get(i);
      out.println("  " + (i + 1) + "  " + words.say(answer.told()));
      out.println("     " + consequence(grid, map, doubt, answer));
    }
    while (true) {
      out.print(words.say("ask.prompt") + " ");
      out.flush();
      String typed = in.readLine();
      ended = typed == null;
      if (ended || typed.isBlank()) {
        out.println();
        return Optional.empty();
      }
      Optional<LogMap> taken = take(grid, map, doubt, typed.strip());
      if (taken.isPresent()) {
        return taken;
      }
    }
  }

  private Optional<LogMap> take(Grid grid, LogMap map, Doubt doubt, String typed) {
    List<MapAnswer> answers = doubt.answers();
    boolean number = typed.matches("\\d{1,2}");
    int chosen = number ? Integer.parseInt(typed) : 0;
    if (number && (chosen < 1 || chosen > answers.size())) {
      out.println(words.say("ask.noAnswer", typed));
      return Optional.empty();
    }
    try {
      List<String> lines =
          number ? answers.get(chosen - 1).lines() : List.of(typed.split("\\s*;\\s*"));
      AnswerTrial trial = AnswerTrial.of(grid, map, doubt, lines);
      out.println("  " + words.say(trial.told()));
      out.println();
      return Optional.of(trial.map());
    } catch (ToldException noStatement) {
      out.println(words.say(noStatement.told()));
      return Optional.empty();
    }
  }

  private String consequence(Grid grid, LogMap map, Doubt doubt, MapAnswer answer) {
    try {
      return words.say(AnswerTrial.of(grid, map, doubt, answer.lines()).told());
    } catch (ToldException untried) {
      return "";
    }
  }
}
