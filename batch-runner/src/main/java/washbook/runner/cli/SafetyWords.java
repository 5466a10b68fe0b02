package washbook.runner.cli;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import picocli.CommandLine;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.RunLast;
import washbook.runner.language.Caution;
import washbook.runner.language.Wording;

/** The caution: whole in the help of every command, one line at the end of a person's command. */
final class SafetyWords {
  /** Commands after which the line stands; a service and single figures go without. */
  private static final Set<String> WITH_LINE =
      Set.of("fill", "explain", "audit", "season", "card", "portable");

  private SafetyWords() {}

  /**
   * @param words of the note in the help; null where no help is asked for
   */
  static void addTo(CommandLine line, PrintStream err, Wording words) {
    if (words != null) {
      addNote(line, words);
      line.getSubcommands().values().forEach(command -> addNote(command, words));
    }
    line.setExecutionStrategy(
        given -> {
          int code = new RunLast().execute(given);
          ParseResult last = last(given);
          if (hasLine(last)) {
            err.println(
                Wording.ofUser(last.matchedOptionValue("--language", "")).say("safety.pointer"));
          }
          return code;
        });
  }

  private static void addNote(CommandLine command, Wording words) {
    if (command.getCommandName().equals("help")) {
      return;
    }
    List<String> footer =
        new ArrayList<>(List.of(command.getCommandSpec().usageMessage().footer()));
    footer.add("");
    footer.add(Caution.title(words) + ":");
    Caution.lines(words).forEach(sentence -> footer.add("  " + sentence));
    command.getCommandSpec().usageMessage().footer(footer.toArray(String[]::new));
  }

  private static ParseResult last(ParseResult given) {
    ParseResult last = given;
    while (last.hasSubcommand()) {
      last = last.subcommand();
    }
    return last;
  }

  private static boolean hasLine(ParseResult last) {
    return WITH_LINE.contains(last.commandSpec().name())
        && !last.isUsageHelpRequested()
        && !last.isVersionHelpRequested()
        && !last.hasMatchedOption("--quiet");
  }
}
