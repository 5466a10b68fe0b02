package washbook.functions.catalogue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import washbook.functions.Answer.Code;
import washbook.functions.Numbers;
import washbook.functions.RefusedException;
import washbook.functions.Sentence;
import washbook.functions.catalogue.Parameter.Kind;

/** Reads raw call values (numbers, texts, ranges, blanks) into checked arguments. */
final class ArgumentReader {
  private ArgumentReader() {}

  static Arguments read(List<Parameter> parameters, Object[] raw) {
    int last = parameters.size() - 1;
    boolean open = last >= 0 && parameters.get(last).kind() == Kind.REST;
    if (!open && raw.length > parameters.size()) {
      throw new RefusedException(
          Code.CONTRADICTION, "arguments.many", raw.length, parameters.size());
    }
    double[] numbers = new double[parameters.size()];
    Object[] others = new Object[parameters.size()];
    for (int i = 0; i < numbers.length; i++) {
      if (open && i == last) {
        numbers[i] = Double.NaN;
        others[i] = Arrays.copyOfRange(raw, Math.min(i, raw.length), raw.length);
      } else {
        readOne(parameters.get(i), i < raw.length ? raw[i] : null, i, numbers, others);
      }
    }
    return new Arguments(numbers, others);
  }

  private static void readOne(Parameter p, Object given, int i, double[] numbers, Object[] others) {
    numbers[i] = Double.NaN;
    Object value = isBlank(given) ? p.fallback() : given;
    if (value == null) {
      if (p.optional()) {
        return;
      }
      throw refused(Code.BLANK, "argument.blank", p);
    }
    switch (p.kind()) {
      case NUMBER -> numbers[i] = p.quantity().check(p.told(), number(p, value));
      case WORD -> others[i] = word(p, value);
      case WORD_OR_NUMBER -> {
        if (value instanceof String text && Numbers.parse(text) == null) {
          others[i] = word(p, text);
        } else {
          numbers[i] = p.quantity().check(p.told(), number(p, value));
        }
      }
      case NUMBERS -> others[i] = numbers(p, value);
      case ANYTHING, REST -> others[i] = value;
    }
  }

  /** A cell of a range; what names it is made only where it is refused. */
  private static double cell(Parameter p, int index, double value) {
    return p.quantity().accepts(value)
        ? value
        : p.quantity().check(Sentence.of("cell.of", p.told(), index + 1), value);
  }

  /**
   * Three texts each: with what else may stand there as a range, as a list of words, not at all.
   */
  private static RefusedException refused(Code code, String key, Parameter p, Object... given) {
    List<Object> values = new ArrayList<>(List.of(p.told()));
    values.addAll(List.of(given));
    if (p.quantity() != null) {
      values.add(p.quantity().valid());
      return new RefusedException(code, key + ".range", values.toArray());
    }
    if (p.words().isEmpty()) {
      return new RefusedException(code, key, values.toArray());
    }
    values.add(p.words());
    return new RefusedException(code, key + ".words", values.toArray());
  }

  private static boolean isBlank(Object value) {
    return value == null || (value instanceof String text && text.isBlank());
  }

  private static double number(Parameter p, Object value) {
    if (value instanceof Double d) {
      return d;
    }
    if (value instanceof Number n) {
      return n.doubleValue();
    }
    if (value instanceof String text) {
      Double parsed = Numbers.parse(text);
      if (parsed != null) {
        return parsed;
      }
      throw refused(Code.NOT_A_NUMBER, "argument.text", p, text);
    }
    throw refused(Code.NOT_A_NUMBER, "argument.several", p);
  }

  private static String word(Parameter p, Object value) {
    String word = value.toString().strip().toUpperCase(Locale.ROOT);
    if (value instanceof Number n) {
      word = Numbers.show(n.doubleValue());
    }
    if (!p.words().contains(word)) {
      throw new RefusedException(Code.UNKNOWN_WORD, "argument.word", p.told(), word, p.words());
    }
    return word;
  }

  private static double[] numbers(Parameter p, Object value) {
    Object[] cells;
    if (value instanceof double[] given) {
      cells = new Object[given.length];
      for (int i = 0; i < given.length; i++) {
        cells[i] = given[i];
      }
    } else if (value instanceof List<?> list) {
      cells = list.toArray();
    } else {
      cells = new Object[] {value};
    }
    double[] result = new double[cells.length];
    for (int i = 0; i < cells.length; i++) {
      result[i] = isBlank(cells[i]) ? Double.NaN : cell(p, i, number(p, cells[i]));
    }
    return result;
  }
}
