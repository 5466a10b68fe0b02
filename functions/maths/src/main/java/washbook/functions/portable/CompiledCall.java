package washbook.functions.portable;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import washbook.functions.Answer;
import washbook.functions.Answer.Code;
import washbook.functions.Sentence;
import washbook.functions.portable.form.Expression;
import washbook.functions.portable.form.FormulaText;

/**
 * A call as plain arithmetic with its guards: a blank cell gives "", a value outside its range and
 * values that contradict each other give #N/A. Text counts as above every number, as spreadsheets
 * compare it, and so is out of range.
 *
 * @param cells the texts that the numbered arguments of the expressions stand for
 * @param needed the arguments that must not be blank; true where 0 is blank as well
 * @param stages conditions; those of a stage can be worked out once the stages before it hold
 * @param core the result
 */
record CompiledCall(
    List<String> cells,
    Map<Integer, Boolean> needed,
    List<List<Condition>> stages,
    Expression core) {

  /** Holds when {@code low <= high}. */
  record Condition(Expression low, Expression high) {}

  /** The formula without "=", with that separator between arguments. */
  String text(char separator) {
    FormulaText writer = new FormulaText(cells, separator);
    String text = writer.write(core);
    for (int i = stages.size() - 1; i >= 0; i--) {
      List<String> tests =
          stages.get(i).stream().map(c -> test(writer, c)).distinct().collect(Collectors.toList());
      if (!tests.isEmpty()) {
        text = "IF(" + all("AND", tests, separator) + separator + text + separator + "NA())";
      }
    }
    List<String> blanks = new ArrayList<>();
    needed.forEach(
        (index, zero) -> {
          blanks.add(cells.get(index) + "=\"\"");
          if (zero) {
            blanks.add(cells.get(index) + "=0");
          }
        });
    return blanks.isEmpty()
        ? text
        : "IF(" + all("OR", blanks, separator) + separator + "\"\"" + separator + text + ")";
  }

  /** The shorter side first: "x >= 0.98" reads better than "0.98 <= x". */
  private static String test(FormulaText writer, Condition condition) {
    String low = writer.write(condition.low());
    String high = writer.write(condition.high());
    return condition.low() instanceof Expression.Constant ? high + ">=" + low : low + "<=" + high;
  }

  private static String all(String function, List<String> tests, char separator) {
    return tests.size() == 1
        ? tests.get(0)
        : function + "(" + String.join(String.valueOf(separator), tests) + ")";
  }

  /**
   * What the formula gives for these cells: Double, String, or null for a blank one; the same steps
   * as the formula's. A text result is "".
   */
  Answer answer(List<?> values) {
    double[] arguments = new double[cells.size()];
    boolean text = false;
    for (int i = 0; i < arguments.length; i++) {
      Object value = values.get(i);
      boolean blank = value == null || value.equals("");
      if (needed.containsKey(i) && (blank || (value.equals(0.0) && needed.get(i)))) {
        return new Answer.Text("");
      }
      text |= !blank && !(value instanceof Double);
      arguments[i] = value instanceof Double number ? number : Double.NaN;
    }
    if (text) {
      return new Answer.Refusal(Code.NOT_A_NUMBER, Sentence.of("portable.text"));
    }
    for (List<Condition> stage : stages) {
      for (Condition condition : stage) {
        if (!(condition.low().value(arguments) <= condition.high().value(arguments))) {
          return new Answer.Refusal(Code.CONTRADICTION, Sentence.of("portable.outside"));
        }
      }
    }
    return new Answer.Number(core.value(arguments));
  }
}
