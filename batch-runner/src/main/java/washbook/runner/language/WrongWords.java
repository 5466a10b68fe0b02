package washbook.runner.language;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import washbook.log.language.Language;
import washbook.log.language.Message;

/**
 * What is wrong with a command line, told from the exceptions of the command-line library, whose
 * own sentences are English. Whoever reads English gets those.
 */
public final class WrongWords {
  private WrongWords() {}

  /** The lines to show; the last one says where help is, unless another word is suggested. */
  public static List<String> lines(ParameterException wrong, Wording words) {
    String perhaps = suggested(wrong);
    String command = wrong.getCommandLine().getCommandSpec().qualifiedName();
    return List.of(
        sentence(wrong, words),
        perhaps.isEmpty() ? words.say("usage.help", command) : words.say("wrong.perhaps", perhaps));
  }

  /** Whether the library's own suggestion is to be printed instead of the last line. */
  public static boolean isLeftToTheLibrary(Wording words) {
    return words.language() == Language.EN;
  }

  private static String sentence(ParameterException wrong, Wording words) {
    if (wrong instanceof UsageException ours) {
      return words.say(ours.told());
    }
    return words.language() == Language.EN ? wrong.getMessage() : words.say(message(wrong));
  }

  private static Message message(ParameterException wrong) {
    if (wrong instanceof UnmatchedArgumentException unmatched) {
      String key = unmatched.isUnknownOption() ? "wrong.option" : "wrong.word";
      return Wording.message(key, unmatched.getUnmatched().get(0));
    }
    if (wrong instanceof MissingParameterException missing) {
      List<ArgSpec> all = missing.getMissing();
      boolean value = all.size() == 1 && all.get(0).isOption() && isNamed(wrong, all.get(0));
      return value
          ? Wording.message("wrong.noValue", name(all.get(0)))
          : Wording.message(
              "wrong.missing",
              all.stream().map(WrongWords::name).collect(Collectors.joining(", ")));
    }
    ArgSpec argument = wrong.getArgSpec();
    if (argument == null) {
      return Wording.message("wrong.other");
    }
    if (wrong instanceof OverwrittenOptionException) {
      return Wording.message("wrong.twice", name(argument));
    }
    if (wrong.getValue() == null) {
      return Wording.message("wrong.noValue", name(argument));
    }
    Object[] choices = argument.auxiliaryTypes()[0].getEnumConstants();
    return choices == null
        ? Wording.message("wrong.value", name(argument), wrong.getValue())
        : Wording.message(
            "wrong.choice",
            name(argument),
            wrong.getValue(),
            Stream.of(choices)
                .map(choice -> choice.toString().toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(", ")));
  }

  /** Whether the option stands in the command line, so that only its value is missing. */
  private static boolean isNamed(ParameterException wrong, ArgSpec argument) {
    return Stream.of(((OptionSpec) argument).names())
        .anyMatch(wrong.getCommandLine().getParseResult().originalArgs()::contains);
  }

  private static String name(ArgSpec argument) {
    return argument.isOption()
        ? ((OptionSpec) argument).longestName() + " (" + argument.paramLabel() + ")"
        : argument.paramLabel();
  }

  private static String suggested(ParameterException wrong) {
    return wrong instanceof UnmatchedArgumentException unmatched
        ? String.join(", ", unmatched.getSuggestions())
        : "";
  }
}
