package washbook.functions.liquid;

/** Polynomials by Horner's rule; coefficients in ascending order. */
public final class Polynomial {
  private Polynomial() {}

  public static double value(double[] coefficients, double x) {
    double sum = 0;
    for (int i = coefficients.length - 1; i >= 0; i--) {
      sum = sum * x + coefficients[i];
    }
    return sum;
  }

  static double slope(double[] coefficients, double x) {
    double sum = 0;
    for (int i = coefficients.length - 1; i >= 1; i--) {
      sum = sum * x + i * coefficients[i];
    }
    return sum;
  }
}
