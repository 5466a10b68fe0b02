package washbook.functions.portable;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.functions.catalogue.Parameter;
import washbook.functions.portable.CallArgument.Call;
import washbook.functions.portable.CallArgument.Cell;
import washbook.functions.portable.CallArgument.Literal;
import washbook.functions.portable.CallArgument.Omitted;
import washbook.functions.portable.CallArgument.Scaled;
import washbook.functions.portable.CallArgument.Word;
import washbook.functions.portable.CompiledCall.Condition;
import washbook.functions.portable.form.Expression;
import washbook.functions.portable.form.Expression.Argument;
import washbook.functions.portable.form.Expression.Constant;
import washbook.functions.portable.form.Expression.IfGiven;
import washbook.functions.portable.form.Expressions;
import washbook.functions.portable.form.Fitted;
import washbook.functions.portable.form.Form;
import washbook.functions.portable.form.Form.Check;
import washbook.functions.portable.form.Form.Range;
import washbook.functions.portable.form.Forms;
import washbook.functions.portable.form.FormulaText;
import washbook.functions.portable.form.NotPortableException;
import washbook.functions.portable.form.StrengthForm;
import washbook.functions.quantity.Quantity;

/** Puts the form of a call, and of the calls inside it, together. */
final class CallCompiler {
  /** 60 °F is written with few or many digits. */
  private static final double SAME_CALIBRATION = 0.01;

  private final List<String> cells = new ArrayList<>();
  private final Map<Integer, Boolean> needed = new LinkedHashMap<>();
  private final List<List<Condition>> stages = new ArrayList<>();

  private CallCompiler() {}

  static CompiledCall compile(Call call) throws NotPortableException {
    CallCompiler compiler = new CallCompiler();
    Expression core = compiler.known(compiler.core(call));
    List<List<Condition>> stages = new ArrayList<>();
    for (List<Condition> stage : compiler.stages) {
      stages.add(
          stage.stream()
              .map(c -> new Condition(compiler.known(c.low()), compiler.known(c.high())))
              .toList());
    }
    return new CompiledCall(compiler.cells, compiler.needed, stages, core);
  }

  /** Drops the question whether an argument is given that must not be blank anyway. */
  private Expression known(Expression expression) {
    return expression.substitute(
        part ->
            part instanceof IfGiven choice
                ? needed.containsKey(choice.index())
                    ? known(choice.given())
                    : choice.mapParts(this::known)
                : part);
  }

  private Expression core(Call call) throws NotPortableException {
    CatalogueFunction function = call.function();
    List<Parameter> parameters = function.parameters();
    if (!function.portable()) {
      throw new NotPortableException("portable.none", function.name());
    }
    if (call.arguments().size() > parameters.size()) {
      throw new NotPortableException("portable.many", function.name());
    }
    List<CallArgument> arguments = new ArrayList<>(call.arguments());
    while (arguments.size() < parameters.size()) {
      arguments.add(new Omitted());
    }
    Form form = Forms.find(function, words(function, arguments));
    Expression[] values = new Expression[arguments.size()];
    for (int i = 0; i < values.length; i++) {
      if (parameters.get(i).words().isEmpty() || isNumber(parameters.get(i), arguments.get(i))) {
        values[i] = value(function, parameters.get(i), arguments.get(i));
      }
    }
    addRanges(form, parameters, values);
    addChecks(form, values);
    return place(Fitted.resolve(form.core(), Fitted.all().terms()), values);
  }

  private static List<String> words(CatalogueFunction function, List<CallArgument> arguments)
      throws NotPortableException {
    List<String> words = new ArrayList<>();
    for (int i = 0; i < arguments.size(); i++) {
      Parameter parameter = function.parameters().get(i);
      if (!parameter.words().isEmpty()) {
        words.add(word(function, parameter, arguments.get(i)));
      } else if (parameter.quantity() == Quantity.CALIBRATION_TEMPERATURE
          && !Forms.calibrations(function).isEmpty()) {
        words.add(calibration(function, parameter, arguments.get(i)));
      }
    }
    return words;
  }

  /** Whether a number stands where a word or a number may. */
  private static boolean isNumber(Parameter parameter, CallArgument argument) {
    return parameter.kind() == Parameter.Kind.WORD_OR_NUMBER && argument instanceof Literal;
  }

  private static String calibration(
      CatalogueFunction function, Parameter parameter, CallArgument argument)
      throws NotPortableException {
    Map<String, Double> known = Forms.calibrations(function);
    Object given = argument instanceof Literal l ? (Object) l.number() : parameter.fallback();
    if (argument instanceof Literal || argument instanceof Omitted) {
      for (Map.Entry<String, Double> entry : known.entrySet()) {
        if (Math.abs(entry.getValue() - (Double) given) < SAME_CALIBRATION) {
          return entry.getKey();
        }
      }
    } else {
      return StrengthForm.IN_A_CELL;
    }
    throw new NotPortableException(
        "portable.calibration",
        function.name(),
        parameter.told(),
        known.values().stream().map(FormulaText::number).map(Double::valueOf).toList());
  }

  private static String word(CatalogueFunction function, Parameter parameter, CallArgument argument)
      throws NotPortableException {
    if (argument instanceof Omitted && parameter.fallback() instanceof String fallback) {
      return fallback;
    }
    if (isNumber(parameter, argument)) {
      return Form.NUMBER;
    }
    if (argument instanceof Literal l) {
      return FormulaText.number(l.number());
    }
    if (argument instanceof Word w) {
      return w.word().strip().toUpperCase(Locale.ROOT);
    }
    throw new NotPortableException(
        parameter.quantity() == null ? "portable.word" : "portable.wordOrNumber",
        function.name(),
        parameter.told());
  }

  /** The expression of one number; null when it is left out and nothing stands in for it. */
  private Expression value(CatalogueFunction function, Parameter parameter, CallArgument argument)
      throws NotPortableException {
    if (argument instanceof Literal l) {
      return new Constant(l.number());
    }
    if (argument instanceof Call nested) {
      return core(nested);
    }
    if (argument instanceof Scaled scaled && !parameter.optional()) {
      Expression cell = value(function, parameter, scaled.cell());
      return Expressions.operation(scaled.sign(), cell, new Constant(scaled.number()));
    }
    if (argument instanceof Scaled scaled) {
      String text = scaled.cell().text() + scaled.sign() + FormulaText.number(scaled.number());
      return value(function, parameter, new Cell("(" + text + ")"));
    }
    if (argument instanceof Cell cell) {
      int index = cells.indexOf(cell.text());
      if (index < 0) {
        index = cells.size();
        cells.add(cell.text());
      }
      if (!parameter.optional()) {
        needed.merge(index, parameter.quantity().zeroIsBlank(), Boolean::logicalOr);
        return new Argument(index);
      }
      return parameter.fallback() instanceof Double fallback
          ? new IfGiven(index, new Argument(index), new Constant(fallback))
          : new IfGiven(index, new Argument(index), null);
    }
    if (argument instanceof Omitted && parameter.optional()) {
      return parameter.fallback() instanceof Double fallback ? new Constant(fallback) : null;
    }
    throw new NotPortableException("portable.number", function.name(), parameter.told());
  }

  private void addRanges(Form form, List<Parameter> parameters, Expression[] values)
      throws NotPortableException {
    List<Condition> stage = new ArrayList<>();
    for (int i = 0; i < values.length; i++) {
      boolean implied = form.impliedRanges().contains(i) && !(values[i] instanceof Argument);
      if (values[i] == null || implied) {
        continue;
      }
      var quantity = parameters.get(i).quantity();
      Range range = form.ranges().getOrDefault(i, new Range(quantity.min(), quantity.max()));
      Expression value = values[i];
      if (value instanceof IfGiven g && g.otherwise() == null) {
        value = new IfGiven(g.index(), g.given(), new Constant(range.low()));
      }
      add(stage, new Constant(range.low()), value, form);
      add(stage, value, new Constant(range.high()), form);
    }
    stages.add(stage);
  }

  private void addChecks(Form form, Expression[] values) throws NotPortableException {
    List<Condition> stage = new ArrayList<>();
    for (Check check : form.checks()) {
      if (check.onlyWith() == Check.ALWAYS || !leftOut(values[check.onlyWith()])) {
        add(
            stage,
            place(Fitted.resolve(check.low(), Fitted.all().terms()), values),
            place(Fitted.resolve(check.high(), Fitted.all().terms()), values),
            form);
      }
    }
    stages.add(stage);
  }

  private static boolean leftOut(Expression value) {
    return value == null || value.equals(Expressions.ZERO);
  }

  private static void add(List<Condition> stage, Expression low, Expression high, Form form)
      throws NotPortableException {
    if (low instanceof Constant a && high instanceof Constant b) {
      if (!(a.number() <= b.number())) {
        throw new NotPortableException("portable.refused", form.function());
      }
      return;
    }
    stage.add(new Condition(low, high));
  }

  /** Puts the arguments of a call into an expression of its form. */
  private static Expression place(Expression expression, Expression[] values) {
    return expression.substitute(
        part -> {
          if (part instanceof Argument a) {
            return values[a.index()];
          }
          IfGiven choice = (IfGiven) part;
          Expression value = values[choice.index()];
          if (value == null) {
            return place(choice.otherwise(), values);
          }
          if (value instanceof IfGiven cell && cell.otherwise() == null) {
            Expression[] given = values.clone();
            given[choice.index()] = cell.given();
            return new IfGiven(
                cell.index(), place(choice.given(), given), place(choice.otherwise(), values));
          }
          return place(choice.given(), values);
        });
  }
}
