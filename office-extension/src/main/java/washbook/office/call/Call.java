package washbook.office.call;

import com.sun.star.table.XCellRange;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import washbook.functions.Answer;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.functions.catalogue.Parameter;

/** One call from a formula: arguments as Calc hands them over, results as cells take them. */
final class Call {
  private static final RepeatedCalls REPEATED = new RepeatedCalls();

  private Call() {}

  static Object cells(CatalogueFunction function, Object... arguments) {
    if (Reason.is(function)) {
      return Reason.cells(function, arguments);
    }
    try {
      return cell(function, read(function.parameters(), arguments));
    } catch (CellErrorException error) {
      return CalcError.of(error.number());
    }
  }

  private static Object[] read(List<Parameter> parameters, Object... arguments)
      throws CellErrorException {
    Object[] read = new Object[arguments.length];
    Map<Integer, XCellRange> ranges = new TreeMap<>();
    for (int i = 0; i < read.length; i++) {
      if (arguments[i] instanceof XCellRange range) {
        ranges.put(i, range);
      } else {
        read[i] = Given.read(parameters.get(i), arguments[i]);
      }
    }
    if (!ranges.isEmpty()) {
      FilledCells.of(parameters, ranges).forEach((place, cells) -> read[place] = cells);
    }
    return read;
  }

  /** A number, a text, "" where something needed is blank, or an error. */
  static Object cell(CatalogueFunction function, Object... values) {
    for (Object value : values) {
      if (value == Given.BLANK_OR_ZERO) {
        return CalcError.NOT_AVAILABLE;
      }
      if (value == SeveralCells.GIVEN || hasOtherNotation(value)) {
        return CalcError.VALUE;
      }
    }
    Answer answer = REPEATED.answer(function.name(), values, () -> function.call(values));
    if (answer instanceof Answer.Number number) {
      return number.value();
    }
    if (answer instanceof Answer.Text text) {
      return text.text();
    }
    return CalcError.of(((Answer.Refusal) answer).code());
  }

  private static boolean hasOtherNotation(Object value) {
    return value instanceof OtherNotation
        || value instanceof List<?> list && list.stream().anyMatch(OtherNotation.class::isInstance);
  }
}
