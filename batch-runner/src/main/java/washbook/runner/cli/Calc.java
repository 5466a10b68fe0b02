package washbook.runner.cli;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import washbook.functions.Answer;
import washbook.functions.Numbers;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.Function;
import washbook.functions.catalogue.Parameter;

/** One call of one function from command-line words. */
final class Calc {
  private Calc() {}

  /** Calls the function named by {@code words[from]} with the words behind it. */
  static int run(String[] words, int from, PrintStream out, PrintStream err) {
    Optional<Function> found = Catalogue.find(words[from]);
    if (found.isEmpty()) {
      err.println(
          "There is no function '" + words[from] + "'; 'washbook functions' lists them all.");
      return ExitCode.USAGE;
    }
    Function function = found.get();
    Object[] raw = new Object[words.length - from - 1];
    for (int i = 0; i < raw.length; i++) {
      raw[i] = argument(kind(function, i), words[from + 1 + i]);
    }
    Answer answer = function.call(raw);
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

  private static Parameter.Kind kind(Function function, int index) {
    List<Parameter> parameters = function.parameters();
    return index < parameters.size() ? parameters.get(index).kind() : Parameter.Kind.REST;
  }

  /** "-" is a missing value; a comma separates the cells of a range. */
  private static Object argument(Parameter.Kind kind, String word) {
    if (word.equals("-")) {
      return null;
    }
    if (kind == Parameter.Kind.NUMBERS || (kind == Parameter.Kind.REST && isRange(word))) {
      return cells(word);
    }
    return word;
  }

  private static boolean isRange(String word) {
    if (word.indexOf(',') < 0) {
      return false;
    }
    for (Object cell : cells(word)) {
      if (cell instanceof String text && Numbers.parse(text) == null) {
        return false;
      }
    }
    return true;
  }

  private static List<Object> cells(String word) {
    List<Object> cells = new ArrayList<>();
    int start = 0;
    while (start <= word.length()) {
      int comma = word.indexOf(',', start);
      int end = comma < 0 ? word.length() : comma;
      String cell = word.substring(start, end).strip();
      cells.add(cell.isEmpty() || cell.equals("-") ? null : cell);
      start = end + 1;
    }
    return cells;
  }
}
