package washbook.functions.portable.form;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The terms of a polynomial of several variables.
 *
 * @param exponents one list a term, with the exponent of each variable
 * @param coefficients one for each term
 */
record Terms(List<List<Integer>> exponents, List<Double> coefficients) {

  static Terms of(int[][] exponents, double[] coefficients) {
    List<List<Integer>> lists = new ArrayList<>();
    for (int[] term : exponents) {
      lists.add(Arrays.stream(term).boxed().toList());
    }
    return new Terms(
        List.copyOf(lists), Arrays.stream(coefficients).boxed().collect(Collectors.toList()));
  }

  double value(double[] variables) {
    double sum = 0;
    for (int i = 0; i < exponents.size(); i++) {
      sum += coefficients.get(i) * monomial(exponents.get(i), variables);
    }
    return sum;
  }

  private static double monomial(List<Integer> exponents, double[] variables) {
    double product = 1;
    for (int v = 0; v < variables.length; v++) {
      product *= power(variables[v], exponents.get(v));
    }
    return product;
  }

  static double power(double base, int exponent) {
    double product = 1;
    for (int i = 0; i < exponent; i++) {
      product *= base;
    }
    return product;
  }

  /** The polynomial of the other variables when one has a fixed value. */
  Terms with(int variable, double value) {
    Map<List<Integer>, Double> merged = new LinkedHashMap<>();
    for (int i = 0; i < exponents.size(); i++) {
      List<Integer> rest = new ArrayList<>(exponents.get(i));
      double factor = power(value, rest.remove(variable));
      merged.merge(List.copyOf(rest), coefficients.get(i) * factor, Double::sum);
    }
    return new Terms(List.copyOf(merged.keySet()), List.copyOf(merged.values()));
  }

  /** The same polynomial with one variable's scale taken into the coefficients. */
  Terms scaled(int variable, Affine affine) {
    List<Double> values = new ArrayList<>();
    for (int i = 0; i < exponents.size(); i++) {
      values.add(affine.coefficient(coefficients.get(i), exponents.get(i).get(variable)));
    }
    return new Terms(exponents, values);
  }

  /** Those terms with a given exponent of one variable, as a polynomial of the others. */
  Terms ofPower(int variable, int exponent) {
    List<List<Integer>> kept = new ArrayList<>();
    List<Double> values = new ArrayList<>();
    for (int i = 0; i < exponents.size(); i++) {
      List<Integer> rest = new ArrayList<>(exponents.get(i));
      if (rest.remove(variable) == exponent) {
        kept.add(List.copyOf(rest));
        values.add(coefficients.get(i));
      }
    }
    return new Terms(kept, values);
  }

  int degree(int variable) {
    return exponents.stream().mapToInt(term -> term.get(variable)).max().orElse(0);
  }

  /** As one line: exponents with commas, a colon, the coefficient; terms separated by blanks. */
  String line() {
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < exponents.size(); i++) {
      line.append(i == 0 ? "" : " ")
          .append(exponents.get(i).stream().map(String::valueOf).collect(Collectors.joining(",")))
          .append(':')
          .append(coefficients.get(i));
    }
    return line.toString();
  }

  static Terms parse(String line) {
    List<List<Integer>> exponents = new ArrayList<>();
    List<Double> coefficients = new ArrayList<>();
    for (String term : line.split(" ")) {
      int colon = term.indexOf(':');
      exponents.add(
          Arrays.stream(term.substring(0, colon).split(",")).map(Integer::valueOf).toList());
      coefficients.add(Double.valueOf(term.substring(colon + 1)));
    }
    return new Terms(List.copyOf(exponents), List.copyOf(coefficients));
  }
}
