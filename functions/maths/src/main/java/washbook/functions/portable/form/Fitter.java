package washbook.functions.portable.form;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import washbook.functions.portable.form.Expression.Polynomial;

/** Finds the polynomial with the fewest terms that keeps a wanted error. */
final class Fitter {
  /** Share of the wanted error that rounding one coefficient may cost. */
  private static final double ROUNDING = 0.003;

  private final Map<String, Terms> known;

  Fitter(Map<String, Terms> known) {
    this.known = known;
  }

  /** One point of the fit: {@code base + slope x polynomial(variables)} should be {@code exact}. */
  private record Point(double[] variables, double base, double slope, double exact) {}

  Terms fit(Fit fit) {
    List<Point> points = points(fit);
    double best = Double.POSITIVE_INFINITY;
    for (List<int[]> basis : bases(fit.mostDegrees())) {
      Terms terms = rounded(basis, solve(points, basis), points, fit.wanted());
      double error = largestError(points, terms);
      best = Math.min(best, error);
      if (error <= fit.wanted()) {
        return terms;
      }
    }
    throw new IllegalStateException(
        fit.key() + ": no polynomial within " + fit.wanted() + "; the best misses by " + best);
  }

  private List<Point> points(Fit fit) {
    Polynomial polynomial = find(fit.whole(), fit.key());
    Expression others = resolve(fit.whole());
    Expression without = Fitted.resolve(others, Map.of(fit.key(), flat(polynomial, 0)));
    Expression with = Fitted.resolve(others, Map.of(fit.key(), flat(polynomial, 1)));
    List<Expression> variables = polynomial.variables().stream().map(this::resolve).toList();
    int each = new int[] {0, 240, 40, 17, 10}[fit.domain().dimensions()];
    int[] counts = new int[fit.domain().dimensions()];
    Arrays.fill(counts, each);
    List<Point> points = new ArrayList<>();
    for (double[] arguments : fit.domain().nodes(counts)) {
      double exact = fit.exact().applyAsDouble(arguments);
      if (!Double.isNaN(exact)) {
        double base = without.value(arguments);
        double[] at = variables.stream().mapToDouble(v -> v.value(arguments)).toArray();
        points.add(new Point(at, base, with.value(arguments) - base, exact));
      }
    }
    return points;
  }

  private Expression resolve(Expression expression) {
    return Fitted.resolve(expression, known);
  }

  private static Terms flat(Polynomial polynomial, double value) {
    return Terms.of(new int[][] {new int[polynomial.variables().size()]}, new double[] {value});
  }

  private static Polynomial find(Expression expression, String key) {
    List<Polynomial> found = new ArrayList<>();
    Fitted.visit(
        expression,
        p -> {
          if (p.key().equals(key)) {
            found.add(p);
          }
        });
    return found.get(0);
  }

  /** Sets of exponents under a plane, fewest terms first. */
  private static List<List<int[]>> bases(int[] most) {
    List<List<int[]>> bases = new ArrayList<>();
    int[] degrees = new int[most.length];
    collect(bases, degrees, 0, most);
    bases.sort(Comparator.comparingInt(List::size));
    return bases;
  }

  private static void collect(List<List<int[]>> bases, int[] degrees, int at, int[] most) {
    if (at == most.length) {
      List<int[]> basis = new ArrayList<>();
      under(basis, new int[most.length], 0, degrees, 1);
      bases.add(basis);
      return;
    }
    for (degrees[at] = 0; degrees[at] <= most[at]; degrees[at]++) {
      collect(bases, degrees, at + 1, most);
    }
  }

  private static void under(List<int[]> basis, int[] term, int at, int[] degrees, double room) {
    if (at == term.length) {
      basis.add(term.clone());
      return;
    }
    for (int e = 0; e <= degrees[at] && e / (degrees[at] + 0.5) <= room; e++) {
      term[at] = e;
      under(basis, term, at + 1, degrees, room - e / (degrees[at] + 0.5));
    }
    term[at] = 0;
  }

  private static double[] solve(List<Point> points, List<int[]> basis) {
    double[][] rows = new double[points.size()][basis.size()];
    double[] right = new double[points.size()];
    for (int i = 0; i < rows.length; i++) {
      Point point = points.get(i);
      for (int j = 0; j < basis.size(); j++) {
        rows[i][j] = point.slope * monomial(basis.get(j), point.variables);
      }
      right[i] = point.exact - point.base;
    }
    return LeastSquares.solve(rows, right);
  }

  private static double monomial(int[] exponents, double[] variables) {
    double product = 1;
    for (int v = 0; v < exponents.length; v++) {
      product *= Terms.power(variables[v], exponents[v]);
    }
    return product;
  }

  /** Cuts each coefficient to the decimals that matter. */
  private static Terms rounded(
      List<int[]> basis, double[] coefficients, List<Point> points, double wanted) {
    double[] cut = new double[coefficients.length];
    for (int j = 0; j < cut.length; j++) {
      int[] term = basis.get(j);
      double size =
          points.stream()
              .mapToDouble(p -> Math.abs(p.slope * monomial(term, p.variables)))
              .max()
              .orElseThrow();
      int decimals = (int) Math.ceil(-StrictMath.log10(wanted * ROUNDING / size));
      cut[j] =
          new BigDecimal(coefficients[j]).setScale(decimals, RoundingMode.HALF_EVEN).doubleValue();
    }
    return Terms.of(basis.toArray(new int[0][]), cut);
  }

  private static double largestError(List<Point> points, Terms terms) {
    return points.stream()
        .mapToDouble(p -> Math.abs(p.base + p.slope * terms.value(p.variables) - p.exact))
        .max()
        .orElseThrow();
  }
}
