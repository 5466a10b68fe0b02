package washbook.office.menu;

import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.Parameter;
import washbook.functions.catalogue.Parameter.Kind;

/**
 * The question why a call is refused, as formulas.
 *
 * @param formula for all cells of an array formula
 * @param inOwnRow for a plain formula, where Calc takes the row of the formula for single values
 * @param singles the optional arguments that take one value
 */
record ReasonCall(String formula, String inOwnRow, List<Single> singles) {

  /** An argument by its name, and its text in the formula. */
  record Single(String name, String text) {}

  static ReasonCall of(PackCall call) {
    if (call.name().equals("COLUMN")) {
      String same = "WASHBOOK.REASON(" + call.arguments() + ")";
      return new ReasonCall(same, same, List.of());
    }
    String start = "WASHBOOK.REASON(\"" + call.name() + "\";";
    List<Parameter> parameters =
        Catalogue.find(call.name()).map(f -> f.parameters()).orElse(List.of());
    List<String> texts = call.split();
    StringJoiner own = new StringJoiner(";", start, ")");
    List<Single> singles = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      String text = texts.get(i);
      Parameter parameter = i < parameters.size() ? parameters.get(i) : null;
      if (text.isBlank() || parameter == null || takesAnything(parameter)) {
        own.add(text);
      } else if (parameter.optional()) {
        own.add(text);
        singles.add(new Single(parameter.name(), text));
      } else {
        own.add("(" + text + ")&\"\"");
      }
    }
    return new ReasonCall(start + call.arguments() + ")", own.toString(), singles);
  }

  private static boolean takesAnything(Parameter parameter) {
    return parameter.kind() == Kind.NUMBERS
        || parameter.kind() == Kind.ANYTHING
        || parameter.kind() == Kind.REST;
  }
}
