package washbook.runner.cli;

import java.io.PrintStream;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import washbook.functions.Answer;
import washbook.functions.Numbers;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.functions.catalogue.CommandWords;

/** One call of one function from command-line words. */
final class Calc {
  private Calc() {}

  /** Calls the function named by {@code words[from]} with the words after it. */
  static int run(String[] words, int from, PrintStream out, PrintStream err) {
    Optional<CatalogueFunction> found = Catalogue.find(words[from]);
    if (found.isEmpty()) {
      err.println(
          "There is no function '" + words[from] + "'; 'washbook functions' lists them all.");
      return ExitCode.USAGE;
    }
    CatalogueFunction function = found.get();
    List<String> arguments = Arrays.asList(words).subList(from + 1, words.length);
    Answer answer = function.call(CommandWords.read(function, arguments));
    if (answer instanceof Answer.Refusal refusal) {
      err.println(refusal.code() + ": " + refusal.reason());
      return ExitCode.REFUSED;
    }
    out.println(
        answer instanceof Answer.Number number
            ? Numbers.show(number.value())
            : ((Answer.Text) answer).text());
    return ExitCode.DONE;
  }
}
