package washbook.functions.portable.form;

import java.util.ArrayList;
import java.util.List;
import washbook.functions.portable.form.Expression.Absolute;
import washbook.functions.portable.form.Expression.Argument;
import washbook.functions.portable.form.Expression.Constant;
import washbook.functions.portable.form.Expression.IfGiven;
import washbook.functions.portable.form.Expression.IfLess;
import washbook.functions.portable.form.Expression.Larger;
import washbook.functions.portable.form.Expression.Operation;
import washbook.functions.portable.form.Expression.Polynomial;

/** Builds expressions, with everything that is constant already worked out. */
public final class Expressions {
  public static final Expression ZERO = new Constant(0);
  static final Expression ONE = new Constant(1);

  private Expressions() {}

  static Expression constant(double number) {
    return new Constant(number);
  }

  static Expression argument(int index) {
    return new Argument(index);
  }

  static Expression sum(Expression left, Expression right) {
    return operation('+', left, right);
  }

  static Expression difference(Expression left, Expression right) {
    return operation('-', left, right);
  }

  static Expression difference(Expression left, double right) {
    return operation('-', left, constant(right));
  }

  static Expression product(Expression left, Expression right) {
    return operation('*', left, right);
  }

  static Expression quotient(Expression left, Expression right) {
    return operation('/', left, right);
  }

  public static Expression operation(char sign, Expression left, Expression right) {
    if (left instanceof Constant a && right instanceof Constant b) {
      return constant(Operation.apply(sign, a.number(), b.number()));
    }
    boolean additive = sign == '+' || sign == '-';
    if (right.equals(additive ? ZERO : ONE)) {
      return left;
    }
    if (left.equals(sign == '+' ? ZERO : ONE) && (sign == '+' || sign == '*')) {
      return right;
    }
    if (sign == '*' && (left.equals(ZERO) || right.equals(ZERO))) {
      return ZERO;
    }
    return new Operation(sign, left, right);
  }

  static Expression larger(Expression left, Expression right) {
    return left instanceof Constant a && right instanceof Constant b
        ? constant(Math.max(a.number(), b.number()))
        : new Larger(left, right);
  }

  static Expression absolute(Expression value) {
    return value instanceof Constant c ? constant(Math.abs(c.number())) : new Absolute(value);
  }

  static Expression ifLess(
      Expression left, Expression right, Expression then, Expression otherwise) {
    if (left instanceof Constant a && right instanceof Constant b) {
      return a.number() < b.number() ? then : otherwise;
    }
    return new IfLess(left, right, then, otherwise);
  }

  static Expression ifGiven(int index, Expression given, Expression otherwise) {
    return new IfGiven(index, given, otherwise);
  }

  /** A polynomial still to be fitted, known by its key. */
  static Expression fitted(String key, Expression... variables) {
    return new Polynomial(key, List.of(variables), null);
  }

  /** A polynomial; constant variables and scale factors go into its coefficients. */
  static Expression polynomial(String key, List<Expression> variables, Terms terms) {
    if (terms == null) {
      return new Polynomial(key, variables, null);
    }
    List<Expression> left = new ArrayList<>(variables);
    Terms reduced = terms;
    for (int i = left.size() - 1; i >= 0; i--) {
      if (left.get(i) instanceof Constant c) {
        reduced = reduced.with(i, c.number());
        left.remove(i);
        continue;
      }
      Affine affine = Affine.of(left.get(i));
      if (affine.isWorthTaking(reduced.degree(i))) {
        left.set(i, affine.unscaled());
        reduced = reduced.scaled(i, affine);
      }
    }
    return left.isEmpty()
        ? constant(reduced.value(new double[0]))
        : new Polynomial(key, List.copyOf(left), reduced);
  }
}
