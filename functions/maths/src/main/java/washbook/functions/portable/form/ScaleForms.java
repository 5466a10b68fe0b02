package washbook.functions.portable.form;

import static washbook.functions.portable.form.Expressions.argument;
import static washbook.functions.portable.form.Expressions.constant;
import static washbook.functions.portable.form.Expressions.difference;
import static washbook.functions.portable.form.Expressions.fitted;
import static washbook.functions.portable.form.Expressions.ifLess;
import static washbook.functions.portable.form.Expressions.product;
import static washbook.functions.portable.form.Expressions.quotient;
import static washbook.functions.portable.form.Expressions.sum;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import washbook.functions.portable.form.Form.Range;
import washbook.functions.quantity.Quantity;
import washbook.functions.scale.Conversion;
import washbook.functions.scale.StrengthScale;
import washbook.functions.scale.SugarScale;

/** CONVERT, one form for each pair of words. */
final class ScaleForms {
  private static final String NAME = "CONVERT";
  private static final Expression VALUE = argument(0);

  /** What a sugar scale may be off, as a difference of SG. */
  private static final double GRAVITY_ERROR = 3e-5;

  private static final int MOST_DEGREES = 26;

  static final List<Form> ALL = all();

  private ScaleForms() {}

  private static List<Form> all() {
    List<Form> forms = new ArrayList<>();
    for (SugarScale from : SugarScale.values()) {
      for (SugarScale to : SugarScale.values()) {
        forms.add(sugar(from, to));
      }
    }
    for (StrengthScale from : StrengthScale.values()) {
      for (StrengthScale to : StrengthScale.values()) {
        // Both kinds of scale have a KGM3 of their own; as a pair it is that of sugar.
        if (from != StrengthScale.KGM3 || to != StrengthScale.KGM3) {
          forms.add(strength(from, to));
        }
      }
    }
    for (List<String> kind :
        List.of(List.of("C", "F"), List.of("L", "GALUS", "GALUK"), List.of("KG", "LB"))) {
      for (String from : kind) {
        for (String to : kind) {
          Range any = new Range(Quantity.ANY.min(), Quantity.ANY.max());
          DoubleUnaryOperator exact = value -> Conversion.convert(value, from, to);
          forms.add(form(from, to, new Range(-100, 100), 1e-9, line(exact, -1, 1)).range(0, any));
        }
      }
    }
    return List.copyOf(forms);
  }

  private static Form sugar(SugarScale from, SugarScale to) {
    boolean potential = from == SugarScale.POTENTIAL || to == SugarScale.POTENTIAL;
    Range range =
        new Range(
            from.fromGravity(Conversion.LOWEST_GRAVITY),
            from.fromGravity(
                potential ? Conversion.HIGHEST_POTENTIAL_GRAVITY : Conversion.HIGHEST_GRAVITY));
    double wanted = to.fromGravity(1 + GRAVITY_ERROR) - to.fromGravity(1);
    DoubleUnaryOperator exact = value -> to.fromGravity(from.toGravity(value));
    double water = from.fromGravity(1);
    Expression variable = difference(VALUE, nearby(water));
    return potential && from != to
        ? split(from.name(), to.name(), range, wanted, exact, water, variable)
        : curve(from.name(), to.name(), range, wanted, exact, variable);
  }

  private static Form strength(StrengthScale from, StrengthScale to) {
    double water = from.fromMassFraction(0);
    double ethanol = from.fromMassFraction(1);
    Range range = new Range(Math.min(water, ethanol), Math.max(water, ethanol));
    Expression variable =
        quotient(difference(VALUE, from == StrengthScale.KGM3 ? 900 : 0), constant(100));
    DoubleUnaryOperator exact = value -> to.fromMassFraction(from.toMassFraction(value));
    return curve(from.name(), to.name(), range, 0.01, exact, variable);
  }

  private static Form curve(
      String from,
      String to,
      Range range,
      double wanted,
      DoubleUnaryOperator exact,
      Expression variable) {
    if (isStraight(exact, range)) {
      return form(from, to, range, wanted, line(exact, range.low(), range.high()));
    }
    String key = key(from, to);
    return form(from, to, range, wanted, fitted(key, variable)).fitCore(key, MOST_DEGREES);
  }

  /** The potential-alcohol scale has a straight part below water. */
  private static Form split(
      String from,
      String to,
      Range range,
      double wanted,
      DoubleUnaryOperator exact,
      double water,
      Expression variable) {
    Expression below = fitted(key(from, to) + "/BELOW", variable);
    Expression above = fitted(key(from, to) + "/ABOVE", variable);
    return form(from, to, range, wanted, ifLess(VALUE, constant(nearby(water)), below, above))
        .fit(part(below, exact, range.low(), water, wanted))
        .fit(part(above, exact, water, range.high(), wanted));
  }

  private static Fit part(
      Expression part, DoubleUnaryOperator exact, double low, double high, double wanted) {
    return new Fit(
        ((Expression.Polynomial) part).key(),
        part,
        at -> exact.applyAsDouble(at[0]),
        Domain.box(low, high),
        wanted / 2,
        MOST_DEGREES);
  }

  private static Form form(String from, String to, Range range, double wanted, Expression core) {
    return Form.of(NAME, Domain.box(range.low(), range.high()), wanted, core, from, to)
        .range(0, range);
  }

  private static String key(String from, String to) {
    return NAME + "/" + from + "/" + to;
  }

  private static boolean isStraight(DoubleUnaryOperator f, Range range) {
    double third = range.low() + (range.high() - range.low()) / 3;
    double low = f.applyAsDouble(range.low());
    double high = f.applyAsDouble(range.high());
    return Math.abs(f.applyAsDouble(third) - (low + (high - low) / 3))
        < 1e-10 * Math.abs(high - low);
  }

  private static Expression line(DoubleUnaryOperator f, double low, double high) {
    double slope = (f.applyAsDouble(high) - f.applyAsDouble(low)) / (high - low);
    double atZero = f.applyAsDouble(low) - slope * low;
    double largest = Math.max(Math.abs(low), Math.abs(high)) * Math.abs(slope);
    Expression term = product(constant(digits(slope, 14)), VALUE);
    return Math.abs(atZero) < 1e-11 * largest ? term : sum(term, constant(digits(atZero, 14)));
  }

  private static double nearby(double value) {
    return Math.rint(value * 100) / 100;
  }

  private static double digits(double value, int count) {
    return new BigDecimal(value).round(new MathContext(count)).doubleValue();
  }
}
