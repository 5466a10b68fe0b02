package washbook.functions.portable.form;

import java.util.List;
import java.util.function.UnaryOperator;

/**
 * Plain arithmetic over numbered arguments. It can be evaluated here and written as a formula by
 * {@link FormulaText}; both do the same steps, so their results agree to rounding.
 */
public sealed interface Expression {

  /** The value; an argument that is NaN counts as not given. */
  double value(double[] arguments);

  /** Replaces the parts below by {@code change}, then folds what has become constant. */
  Expression mapParts(UnaryOperator<Expression> change);

  /** Replaces every argument by another expression. */
  default Expression substitute(UnaryOperator<Expression> change) {
    return this instanceof Argument || this instanceof IfGiven
        ? change.apply(this)
        : mapParts(part -> part.substitute(change));
  }

  /** A literal number. */
  record Constant(double number) implements Expression {
    @Override
    public double value(double[] arguments) {
      return number;
    }

    @Override
    public Expression mapParts(UnaryOperator<Expression> change) {
      return this;
    }
  }

  /** The argument with that number. */
  record Argument(int index) implements Expression {
    @Override
    public double value(double[] arguments) {
      return arguments[index];
    }

    @Override
    public Expression mapParts(UnaryOperator<Expression> change) {
      return this;
    }
  }

  /** One of {@code + - * /}. */
  record Operation(char sign, Expression left, Expression right) implements Expression {
    @Override
    public double value(double[] arguments) {
      return apply(sign, left.value(arguments), right.value(arguments));
    }

    static double apply(char sign, double a, double b) {
      return switch (sign) {
        case '+' -> a + b;
        case '-' -> a - b;
        case '*' -> a * b;
        default -> a / b;
      };
    }

    @Override
    public Expression mapParts(UnaryOperator<Expression> change) {
      return Expressions.operation(sign, change.apply(left), change.apply(right));
    }
  }

  /** The larger of two values. */
  record Larger(Expression left, Expression right) implements Expression {
    @Override
    public double value(double[] arguments) {
      return Math.max(left.value(arguments), right.value(arguments));
    }

    @Override
    public Expression mapParts(UnaryOperator<Expression> change) {
      return Expressions.larger(change.apply(left), change.apply(right));
    }
  }

  /** A value without its sign. */
  record Absolute(Expression inner) implements Expression {
    @Override
    public double value(double[] arguments) {
      return Math.abs(inner.value(arguments));
    }

    @Override
    public Expression mapParts(UnaryOperator<Expression> change) {
      return Expressions.absolute(change.apply(inner));
    }
  }

  /** {@code then} where {@code left < right}, else {@code otherwise}. */
  record IfLess(Expression left, Expression right, Expression then, Expression otherwise)
      implements Expression {
    @Override
    public double value(double[] arguments) {
      return (left.value(arguments) < right.value(arguments) ? then : otherwise).value(arguments);
    }

    @Override
    public Expression mapParts(UnaryOperator<Expression> change) {
      return Expressions.ifLess(
          change.apply(left), change.apply(right), change.apply(then), change.apply(otherwise));
    }
  }

  /** {@code given} where the argument is given, else {@code otherwise}. */
  record IfGiven(int index, Expression given, Expression otherwise) implements Expression {
    @Override
    public double value(double[] arguments) {
      return (Double.isNaN(arguments[index]) ? otherwise : given).value(arguments);
    }

    @Override
    public Expression mapParts(UnaryOperator<Expression> change) {
      return new IfGiven(index, change.apply(given), change.apply(otherwise));
    }
  }

  /** A polynomial of some variables; {@code terms} is null until it has been fitted. */
  record Polynomial(String key, List<Expression> variables, Terms terms) implements Expression {
    @Override
    public double value(double[] arguments) {
      double[] values = new double[variables.size()];
      for (int i = 0; i < values.length; i++) {
        values[i] = variables.get(i).value(arguments);
      }
      return terms.value(values);
    }

    @Override
    public Expression mapParts(UnaryOperator<Expression> change) {
      return Expressions.polynomial(key, variables.stream().map(change).toList(), terms);
    }
  }
}
