package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import washbook.log.language.Language;
import washbook.runner.language.HelpWords;

/** The help of every command is whole in every language; options keep their names. */
class HelpWordsTest {
  private static final Pattern ENGLISH =
      Pattern.compile(
          "\\b(the|and|with|which|files|folder|write|writes|reading|default|nothing|what)\\b");

  private static String help(Language language, String... command) {
    String[] words = new String[command.length + 3];
    System.arraycopy(command, 0, words, 0, command.length);
    words[command.length] = "--language";
    words[command.length + 1] = language.code();
    words[command.length + 2] = "--help";
    CommandLine line = WashbookCommand.commandLine(words, System.out, System.err);
    for (String name : command) {
      line = line.getSubcommands().get(name);
    }
    return line.getUsageMessage(CommandLine.Help.Ansi.OFF);
  }

  private static Set<String[]> commands(CommandLine line, String... path) {
    Set<String[]> all = new HashSet<>();
    all.add(path);
    line.getSubcommands()
        .forEach(
            (name, command) -> {
              String[] longer = Arrays.copyOf(path, path.length + 1);
              longer[path.length] = name;
              all.addAll(commands(command, longer));
            });
    return all;
  }

  @ParameterizedTest
  @EnumSource(value = Language.class, names = "EN", mode = EnumSource.Mode.EXCLUDE)
  void noHelpHasEnglishInIt(Language language) {
    for (String[] command : commands(new CommandLine(new WashbookCommand.Whole()))) {
      String help = help(language, command);
      String shown = String.join(" ", command) + " " + language;
      String words =
          help.replaceAll("(?m)^ +washbook .*", "").replaceAll("(?m)^.*: washbook .*", "");
      assertFalse(ENGLISH.matcher(words.replaceAll("--[a-z-]+", "")).find(), shown + ": " + words);
      assertTrue(help.contains("--help"), shown);
      assertFalse(help.contains("%%") || help.contains("%n"), shown + help);
    }
  }

  @Test
  void alsoTheHelpOfACommandThatKnowsNoLanguageIsGivenInOne() {
    Cli card = Cli.run("card", "--help", "--language", "de");
    assertEquals(ExitCode.DONE, card.code(), card.err());
    assertTrue(card.out().contains("Schreibt eine Karte zum Drucken"), card.out());
    assertTrue(Cli.run("help", "fill", "--language=fr").out().startsWith("Utilisation"));
  }

  /** What the library has of a command and its options is in the file, and nothing else. */
  @ParameterizedTest
  @EnumSource(value = Language.class, names = "EN", mode = EnumSource.Mode.EXCLUDE)
  void everyTextIsThereAndNoneIsLeftOver(Language language) {
    Set<String> open = new TreeSet<>(HelpWords.keys(language));
    Set<String> missing = new TreeSet<>();
    for (String[] path : commands(new CommandLine(new WashbookCommand.Whole()))) {
      CommandLine line = new CommandLine(new WashbookCommand.Whole());
      for (String name : path) {
        line = line.getSubcommands().get(name);
      }
      String command = line.getCommandSpec().qualifiedName(".") + ".";
      Set<String> all = HelpWords.keys(language);
      String[] description = line.getCommandSpec().usageMessage().description();
      for (int i = 0; i < description.length; i++) {
        String key = command + "usage.description" + (description.length == 1 ? "" : "." + i);
        found(all.contains(key), key, open, missing);
      }
      for (ArgSpec argument : line.getCommandSpec().args()) {
        String key = key(argument);
        boolean own = all.contains(command + key);
        found(own || all.contains(key), own ? command + key : key, open, missing);
      }
    }
    open.removeIf(
        key -> key.startsWith("footer.") || key.matches(".*usage\\.\\w*(Heading|header)"));
    assertEquals(Set.of(), missing);
    assertEquals(Set.of(), open);
  }

  private static void found(boolean there, String key, Set<String> open, Set<String> missing) {
    open.remove(key);
    if (!there) {
      missing.add(key);
    }
  }

  private static String key(ArgSpec argument) {
    if (argument.descriptionKey() != null && !argument.descriptionKey().isEmpty()) {
      return argument.descriptionKey();
    }
    return argument.isOption()
        ? ((CommandLine.Model.OptionSpec) argument).longestName().replaceFirst("^-+", "")
        : argument.paramLabel()
            + "["
            + ((CommandLine.Model.PositionalParamSpec) argument).index()
            + "]";
  }
}
