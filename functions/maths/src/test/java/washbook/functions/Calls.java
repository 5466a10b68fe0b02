package washbook.functions;

import static org.junit.jupiter.api.Assertions.fail;

import washbook.functions.catalogue.Catalogue;

/** Short calls for tests. */
public final class Calls {
  private Calls() {}

  /** The number that a call gives; fails when it is refused. */
  public static double value(String name, Object... arguments) {
    Answer answer = Catalogue.get(name).call(arguments);
    return answer instanceof Answer.Number number ? number.value() : fail(name + ": " + answer);
  }

  public static String text(String name, Object... arguments) {
    Answer answer = Catalogue.get(name).call(arguments);
    if (answer instanceof Answer.Told told) {
      return told.told().english();
    }
    return answer instanceof Answer.Text text ? text.text() : fail(name + ": " + answer);
  }

  /** The refusal that a call gives; fails when it has an answer. */
  public static Answer.Refusal refusal(String name, Object... arguments) {
    Answer answer = Catalogue.get(name).call(arguments);
    return answer instanceof Answer.Refusal refusal ? refusal : fail(name + ": " + answer);
  }
}
