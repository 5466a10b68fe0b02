package washbook.office.call;

import java.util.Arrays;
import java.util.Optional;
import washbook.functions.Answer;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.functions.catalogue.Parameter;

/** The function that says why another one refuses, for arguments as Calc hands them over. */
final class Reason {
  private static final String NAME = "REASON";

  private Reason() {}

  static boolean is(CatalogueFunction function) {
    return function.name().equals(NAME);
  }

  /** Takes the name of the function in question, then its arguments as one array. */
  static Object cells(CatalogueFunction reason, Object... arguments) {
    Object name = Given.loose(reason.parameters().get(0), arguments[0]);
    Optional<CatalogueFunction> asked =
        name instanceof String text ? Catalogue.find(text) : Optional.empty();
    Object[] rest = (Object[]) arguments[1];
    if (asked.isEmpty() || rest.length > asked.get().parameters().size()) {
      return Call.cell(reason, withRest(name, rest));
    }
    CatalogueFunction function = asked.get();
    Object[] read = new Object[rest.length];
    for (int i = 0; i < read.length; i++) {
      read[i] = Given.loose(function.parameters().get(i), rest[i]);
    }
    return Sweep.over(read, values -> why(function, values));
  }

  private static Object[] withRest(Object name, Object... rest) {
    Object[] all = new Object[rest.length + 1];
    all[0] = name;
    System.arraycopy(rest, 0, all, 1, rest.length);
    return all;
  }

  /**
   * A single 0 may be a blank cell here for every argument that may be 0, also where the function
   * itself can tell: then both are answered.
   */
  private static String why(CatalogueFunction function, Object... values) {
    for (int i = 0; i < values.length; i++) {
      if (values[i] instanceof OtherNotation other) {
        return other.reason(function.parameters().get(i));
      }
    }
    int unclear = Arrays.asList(values).indexOf(Given.BLANK_OR_ZERO);
    if (unclear < 0) {
      return refusal(function.call(values));
    }
    Parameter parameter = function.parameters().get(unclear);
    if (parameter.optional()) {
      return parameter.name()
          + " is 0 or a blank cell, and Calc does not say which. Write the cell as a range, such as"
          + " B2:B2, so that a 0 in it counts, or leave the argument out.";
    }
    String ifZero = why(function, with(values, unclear, 0.0));
    String ifBlank = why(function, with(values, unclear, null));
    if (ifZero.equals(ifBlank)) {
      return ifZero;
    }
    return "If "
        + parameter.name()
        + " is a blank cell: "
        + (ifBlank.isEmpty() ? "nothing is refused." : ifBlank)
        + " If it is 0: "
        + (ifZero.isEmpty() ? "nothing is refused." : ifZero);
  }

  private static Object[] with(Object[] values, int index, Object value) {
    Object[] changed = values.clone();
    changed[index] = value;
    return changed;
  }

  private static String refusal(Answer answer) {
    return answer instanceof Answer.Refusal refusal ? refusal.reason() : "";
  }
}
