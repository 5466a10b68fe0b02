package washbook.office.call;

import com.sun.star.uno.Any;
import java.util.ArrayList;
import java.util.List;
import washbook.functions.Numbers;
import washbook.functions.catalogue.Parameter;
import washbook.functions.catalogue.Parameter.Kind;

/**
 * Reads what Calc hands over for one argument. A result is a value as the catalogue takes it (null
 * when blank or left out), or a {@link Table} of such values.
 *
 * <p>Single values that must be given are declared as text. Calc then takes the formula's own row
 * of a column, hands a blank cell over as "" and a 0 as "0". Only an argument of any type can be
 * left out; for it a blank cell is a 0, and a range comes as a whole. So an optional argument that
 * may be 0 is not always clear: see {@link #BLANK_OR_ZERO}.
 */
final class Given {
  /** A 0 of which nobody can say whether it is a blank cell, where that makes a difference. */
  static final Object BLANK_OR_ZERO = new Object();

  private Given() {}

  /** An argument of a plain call, which is one value unless the function takes ranges. */
  static Object read(Parameter parameter, Object value) {
    Object read = value instanceof String text ? text(parameter, text) : loose(parameter, value);
    return read instanceof Table ? SeveralCells.GIVEN : read;
  }

  /** An argument that may be a whole range, of which each cell is a value of its own. */
  static Object loose(Parameter parameter, Object value) {
    Object read =
        value instanceof Object[][] rows
            ? Table.of(rows, cell -> inside(parameter, cell))
            : alone(parameter, value);
    return parameter.kind() == Kind.NUMBERS ? whole(read) : read;
  }

  /** An element of a range, where Calc tells a blank from a 0. */
  static Object inside(Parameter parameter, Object value) {
    if (value instanceof String text) {
      return text(parameter, text);
    }
    return value instanceof Any ? null : value;
  }

  /** A single argument, which is a blank cell when it is 0 and cannot be 0. */
  private static Object alone(Parameter parameter, Object value) {
    return value instanceof Double number && number == 0
        ? zero(parameter)
        : inside(parameter, value);
  }

  private static Object text(Parameter parameter, String text) {
    if (text.isBlank()) {
      return null;
    }
    boolean word =
        switch (parameter.kind()) {
          case WORD, ANYTHING, REST -> true;
          case WORD_OR_NUMBER -> Character.isLetter(text.strip().charAt(0));
          case NUMBER, NUMBERS -> false;
        };
    if (word) {
      return text;
    }
    Double number = DecimalText.parse(text);
    if (number != null) {
      return number;
    }
    return Numbers.parse(text) == null ? text : new OtherNotation(text);
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
  private static Object whole(Object value) {
    if (value == null || value == BLANK_OR_ZERO) {
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
