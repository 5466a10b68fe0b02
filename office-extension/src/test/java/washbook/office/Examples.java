package washbook.office;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import washbook.functions.Numbers;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.functions.catalogue.Parameter;
import washbook.functions.catalogue.Parameter.Kind;

/** A worked example of the catalogue as values for Java and as text for a formula. */
record Examples(CatalogueFunction function, List<Object> values) {

  static Examples of(CatalogueFunction function) {
    List<Object> values = new ArrayList<>();
    for (int i = 0; i < function.example().size(); i++) {
      List<Parameter> parameters = function.parameters();
      Parameter parameter = parameters.get(Math.min(i, parameters.size() - 1));
      values.add(value(parameter, function.example().get(i)));
    }
    return new Examples(function, values);
  }

  private static Object value(Parameter parameter, String text) {
    if (text.equals("-")) {
      return null;
    }
    if (parameter.kind() == Kind.NUMBERS) {
      return Arrays.stream(text.split(",", -1))
          .map(Numbers::parse)
          .map(Object.class::cast)
          .toList();
    }
    Double number = Numbers.parse(text);
    return number == null ? text : number;
  }

  /**
   * The call with its arguments written out, as typed into a cell. A function of ranges takes cells
   * only; for constants in their place there is COLUMN.
   */
  String formula() {
    return values.stream().map(Examples::written).collect(Collectors.joining(";", start(), ")"));
  }

  /** The formula up to its first constant. */
  String start() {
    boolean ranges = function.parameters().stream().anyMatch(p -> p.kind() == Kind.NUMBERS);
    return "=WASHBOOK." + (ranges ? "COLUMN(\"" + function.name() + "\";" : function.name() + "(");
  }

  static String written(Object value) {
    if (value == null) {
      return "";
    }
    if (value instanceof Double number) {
      return Numbers.show(number);
    }
    if (value instanceof List<?> list) {
      return list.stream().map(Examples::written).collect(Collectors.joining("|", "{", "}"));
    }
    return "\"" + value + "\"";
  }
}
