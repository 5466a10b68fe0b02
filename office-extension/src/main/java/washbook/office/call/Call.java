package washbook.office.call;

import java.util.List;
import washbook.functions.Answer;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.functions.catalogue.Parameter;

/** One call from a formula: arguments as Calc hands them over, results as cells take them. */
final class Call {
  private Call() {}

  static Object cells(CatalogueFunction function, Object... arguments) {
    if (Reason.is(function)) {
      return Reason.cells(function, arguments);
    }
    return Sweep.over(read(function.parameters(), arguments), values -> cell(function, values));
  }

  private static Object[] read(List<Parameter> parameters, Object... arguments) {
    Object[] read = new Object[arguments.length];
    for (int i = 0; i < read.length; i++) {
      read[i] = Given.read(parameters.get(i), arguments[i]);
    }
    return read;
  }

  /** A number, a text, "" where something needed is blank, or an error. */
  static Object cell(CatalogueFunction function, Object... values) {
    for (Object value : values) {
      if (value == Given.BLANK_OR_ZERO) {
        return CalcError.NOT_AVAILABLE;
      }
    }
    Answer answer = function.call(values);
    if (answer instanceof Answer.Number number) {
      return number.value();
    }
    if (answer instanceof Answer.Text text) {
      return text.text();
    }
    return CalcError.of(((Answer.Refusal) answer).code());
  }
}
