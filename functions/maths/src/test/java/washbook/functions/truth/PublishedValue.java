package washbook.functions.truth;

import java.util.Arrays;
import washbook.functions.Answer;
import washbook.functions.Numbers;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.functions.catalogue.CommandWords;

/**
 * One published figure and the call that must give it.
 *
 * @param arguments as the command line takes them, separated by semicolons
 * @param allowed largest difference that the check lets pass
 */
public record PublishedValue(
    String function, String arguments, double published, double allowed, String source) {

  /** What the function gives less what is published. */
  double deviation() {
    CatalogueFunction called = Catalogue.get(function);
    Answer answer = called.call(CommandWords.read(called, Arrays.asList(arguments.split(";"))));
    if (answer instanceof Answer.Number number) {
      return number.value() - published;
    }
    throw new AssertionError(this + ": " + answer);
  }

  String line() {
    return String.join(
        "\t", function, arguments, Numbers.show(published), Numbers.show(allowed), source);
  }
}
