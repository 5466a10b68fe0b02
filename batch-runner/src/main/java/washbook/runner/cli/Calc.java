package washbook.runner.cli;

import java.io.PrintStream;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import washbook.functions.Answer;
import washbook.functions.Numbers;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.functions.catalogue.CommandWords;
import washbook.runner.language.Wording;

/** One call of one function from command-line words. */
final class Calc {
  private Calc() {}

  /**
   * Calls the function named by {@code words[from]} with the words after it.
   *
   * @param spoken asked only where something is said: a number is the same in all languages
   */
  static int run(
      String[] words, int from, Supplier<Wording> spoken, PrintStream out, PrintStream err) {
    Optional<CatalogueFunction> found = Catalogue.find(words[from]);
    if (found.isEmpty()) {
      err.println(spoken.get().say("calc.noFunction", words[from]));
      return ExitCode.USAGE;
    }
    CatalogueFunction function = found.get();
    List<String> arguments = Arrays.asList(words).subList(from + 1, words.length);
    Answer answer = function.call(CommandWords.read(function, arguments));
    if (answer instanceof Answer.Refusal refusal) {
      err.println(refusal.told().in(spoken.get().language().code()));
      return ExitCode.REFUSED;
    }
    if (answer instanceof Answer.Number number) {
      out.println(Numbers.show(number.value()));
    } else if (answer instanceof Answer.Told told) {
      out.println(told.told().in(spoken.get().language().code()));
    } else {
      out.println(((Answer.Text) answer).text());
    }
    return ExitCode.DONE;
  }
}
