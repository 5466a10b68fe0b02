package washbook.office.call;

import com.sun.star.uno.Any;
import java.util.ArrayList;
import java.util.List;
import washbook.functions.catalogue.Parameter;
import washbook.functions.catalogue.Parameter.Kind;

/**
 * Reads what Calc hands over for one argument. A result is a value as the catalogue takes it (null
 * when blank or left out), or a {@link Table} of such values.
 *
 * <p>Calc hands a single blank cell over as the number 0, unless the argument's type is text: then
 * a blank cell is "" and a 0 is "0". So arguments that must be given and may be 0 are declared as
 * rows of text; for all others a 0 is no possible value and means a blank cell. What is left are
 * optional arguments that may be 0: see {@link #BLANK_OR_ZERO}.
 */
final class Given {
  /** A 0 of which nobody can say whether it is a blank cell, where that makes a difference. */
  static final Object BLANK_OR_ZERO = new Object();

  private Given() {}

  /** An argument as its declared type brings it. */
  static Object read(Parameter parameter, Object value) {
    if (value instanceof String[][] texts) {
      return Table.of(texts, Given::number);
    }
    if (!parameter.optional()
        && value instanceof Object[][] rows
        && rows.length == 1
        && rows[0].length == 1) {
      return whole(parameter, alone(parameter, rows[0][0]));
    }
    return readLoose(parameter, value);
  }

  /** An argument that is rows only when the user gave a range. */
  static Object readLoose(Parameter parameter, Object value) {
    return whole(
        parameter,
        value instanceof Object[][] rows ? Table.of(rows, Given::inside) : alone(parameter, value));
  }

  /** A single argument, which is a blank cell when it is 0 and cannot be 0. */
  private static Object alone(Parameter parameter, Object value) {
    return value instanceof Double number && number == 0 ? zero(parameter) : inside(value);
  }

  /** An element of a range, where Calc tells a blank from a 0. */
  private static Object inside(Object value) {
    return value instanceof Any || value instanceof String text && text.isBlank() ? null : value;
  }

  private static Object number(String text) {
    if (text.isBlank()) {
      return null;
    }
    Double number = DecimalText.parse(text);
    return number == null ? text : number;
  }

  private static Object zero(Parameter parameter) {
    if (parameter.kind() == Kind.ANYTHING) {
      return 0.0;
    }
    if (parameter.quantity() == null || !parameter.quantity().zeroIsPossible()) {
      return null;
    }
    return Double.valueOf(0).equals(parameter.fallback()) ? 0.0 : BLANK_OR_ZERO;
  }

  /** A range that the function takes as one argument. */
  private static Object whole(Parameter parameter, Object value) {
    if (parameter.kind() != Kind.NUMBERS || value == null || value == BLANK_OR_ZERO) {
      return value;
    }
    List<Object> cells = new ArrayList<>();
    if (value instanceof Table table) {
      table.forEach(cells::add);
    } else {
      cells.add(value);
    }
    return cells;
  }
}
