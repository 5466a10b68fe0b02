package washbook.functions.portable.form;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import washbook.functions.portable.form.Expression.Absolute;
import washbook.functions.portable.form.Expression.Argument;
import washbook.functions.portable.form.Expression.Constant;
import washbook.functions.portable.form.Expression.IfGiven;
import washbook.functions.portable.form.Expression.IfLess;
import washbook.functions.portable.form.Expression.Larger;
import washbook.functions.portable.form.Expression.Operation;
import washbook.functions.portable.form.Expression.Polynomial;

/**
 * Writes expressions as formula text. Numbers are written without an exponent, because {@code 1E-7}
 * is not understood everywhere, and with at most 15 digits.
 */
public final class FormulaText {
  private static final MathContext DIGITS = new MathContext(15);

  private final List<String> arguments;
  private final char separator;

  /** {@code arguments} are references, calls or numbers, or stand in brackets. */
  public FormulaText(List<String> arguments, char separator) {
    this.arguments = arguments;
    this.separator = separator;
  }

  /** Text and whether it must be put into brackets as part of a sum, product or quotient. */
  private record Piece(String text, int binding) {
    private static final int SUM = 1;
    private static final int PRODUCT = 2;
    private static final int ATOM = 3;

    String in(int least) {
      return binding >= least ? text : "(" + text + ")";
    }
  }

  public String write(Expression expression) {
    return piece(expression).text;
  }

  private Piece piece(Expression expression) {
    if (expression instanceof Constant c) {
      return new Piece(number(c.number()), c.number() < 0 ? Piece.SUM : Piece.ATOM);
    }
    if (expression instanceof Argument a) {
      return new Piece(arguments.get(a.index()), Piece.ATOM);
    }
    if (expression instanceof Operation o) {
      return operation(o);
    }
    if (expression instanceof Polynomial p) {
      return polynomial(p.variables(), p.terms());
    }
    return new Piece(call(expression), Piece.ATOM);
  }

  private String call(Expression expression) {
    if (expression instanceof Absolute a) {
      return call("ABS", write(a.inner()));
    }
    if (expression instanceof Larger l) {
      return call("MAX", write(l.left()), write(l.right()));
    }
    if (expression instanceof IfLess i) {
      return call(
          "IF", write(i.left()) + "<" + write(i.right()), write(i.then()), write(i.otherwise()));
    }
    if (expression instanceof IfGiven g) {
      String blank = arguments.get(g.index()) + "=\"\"";
      return call("IF", blank, write(g.otherwise()), write(g.given()));
    }
    throw new IllegalArgumentException("cannot be written: " + expression);
  }

  private String call(String function, String... parts) {
    return function + "(" + String.join(String.valueOf(separator), parts) + ")";
  }

  private Piece operation(Operation o) {
    Piece left = piece(o.left());
    Piece right = piece(o.right());
    return switch (o.sign()) {
      case '+' -> new Piece(join(left.text, right.text), Piece.SUM);
      case '-' ->
          o.right() instanceof Constant c && c.number() < 0
              ? new Piece(left.text + "+" + number(-c.number()), Piece.SUM)
              : new Piece(left.text + "-" + right.in(Piece.PRODUCT), Piece.SUM);
      case '*' -> new Piece(left.in(Piece.PRODUCT) + "*" + right.in(Piece.PRODUCT), Piece.PRODUCT);
      default -> new Piece(left.in(Piece.PRODUCT) + "/" + right.in(Piece.ATOM), Piece.PRODUCT);
    };
  }

  private static String join(String left, String right) {
    return right.startsWith("-") ? left + right : left + "+" + right;
  }

  /** Horner's scheme, the variable with the longest text outermost: it is repeated least. */
  private Piece polynomial(List<Expression> variables, Terms terms) {
    if (variables.isEmpty()) {
      return piece(Expressions.constant(terms.value(new double[0])));
    }
    List<String> texts = variables.stream().map(v -> piece(v).in(Piece.PRODUCT)).toList();
    int outer =
        IntStream.range(0, texts.size())
            .boxed()
            .max(Comparator.comparing(i -> texts.get(i).length()))
            .orElseThrow();
    List<Expression> others =
        IntStream.range(0, texts.size()).filter(i -> i != outer).mapToObj(variables::get).toList();
    Piece sum = null;
    for (int power = terms.degree(outer); power >= 0; power--) {
      Terms here = terms.ofPower(outer, power);
      Piece coefficient = here.coefficients().isEmpty() ? null : polynomial(others, here);
      if (sum == null) {
        sum = coefficient;
      } else {
        String higher =
            sum.binding == Piece.SUM && !isNumber(sum.text)
                ? texts.get(outer) + "*(" + sum.text + ")"
                : sum.text + "*" + texts.get(outer);
        sum =
            coefficient == null
                ? new Piece(higher, Piece.PRODUCT)
                : new Piece(join(coefficient.text, higher), Piece.SUM);
      }
    }
    return sum;
  }

  private static boolean isNumber(String text) {
    return text.chars().allMatch(c -> c == '-' || c == '.' || (c >= '0' && c <= '9'));
  }

  /** A number as a formula holds it. */
  public static String number(double value) {
    if (value == 0) {
      return "0";
    }
    return new BigDecimal(value).round(DIGITS).stripTrailingZeros().toPlainString();
  }
}
