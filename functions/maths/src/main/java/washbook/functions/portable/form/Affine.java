package washbook.functions.portable.form;

import java.math.BigDecimal;
import java.math.MathContext;
import washbook.functions.portable.form.Expression.Constant;
import washbook.functions.portable.form.Expression.Operation;

/**
 * An expression as {@code scale x inner + shift}. With it a change of unit, such as °F to °C, goes
 * into a polynomial's coefficients instead of standing in the formula at each use.
 */
record Affine(double scale, Expression inner, double shift) {
  private static final MathContext SHIFT_DIGITS = new MathContext(12);
  private static final MathContext COEFFICIENT_DIGITS = new MathContext(8);

  static Affine of(Expression expression) {
    if (expression instanceof Operation o) {
      if (o.right() instanceof Constant c) {
        Affine left = of(o.left());
        double number = c.number();
        return switch (o.sign()) {
          case '+' -> new Affine(left.scale, left.inner, left.shift + number);
          case '-' -> new Affine(left.scale, left.inner, left.shift - number);
          case '*' -> new Affine(left.scale * number, left.inner, left.shift * number);
          default -> new Affine(left.scale / number, left.inner, left.shift / number);
        };
      }
      if (o.left() instanceof Constant c && o.sign() != '/') {
        Affine right = of(o.right());
        double number = c.number();
        return switch (o.sign()) {
          case '+' -> new Affine(right.scale, right.inner, right.shift + number);
          case '-' -> new Affine(-right.scale, right.inner, number - right.shift);
          default -> new Affine(right.scale * number, right.inner, right.shift * number);
        };
      }
    }
    return new Affine(1, expression, 0);
  }

  /** High powers and large scales would leave coefficients with too few digits. */
  boolean isWorthTaking(int degree) {
    double size = Math.abs(scale);
    return scale != 1 && degree <= 8 && size > 0.1 && size < 10;
  }

  /** The expression over its scale: {@code inner + shift / scale}. */
  Expression unscaled() {
    return Expressions.difference(inner, -round(shift / scale, SHIFT_DIGITS));
  }

  /** The coefficient of a power of {@link #unscaled} for one of the whole. */
  double coefficient(double coefficient, int exponent) {
    return round(coefficient * Terms.power(scale, exponent), COEFFICIENT_DIGITS);
  }

  private static double round(double value, MathContext digits) {
    return new BigDecimal(value).round(digits).doubleValue();
  }
}
