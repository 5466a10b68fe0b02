package washbook.functions.ferment;

/** Small symmetric positive systems of equations. */
final class Cholesky {
  private Cholesky() {}

  /** x of {@code matrix x = right}; neither is changed. */
  static double[] solve(double[][] matrix, double[] right) {
    int n = right.length;
    double[][] lower = lower(matrix);
    double[] x = new double[n];
    for (int i = 0; i < n; i++) {
      double sum = right[i];
      for (int k = 0; k < i; k++) {
        sum -= lower[i][k] * x[k];
      }
      x[i] = sum / lower[i][i];
    }
    for (int i = n - 1; i >= 0; i--) {
      double sum = x[i];
      for (int k = i + 1; k < n; k++) {
        sum -= lower[k][i] * x[k];
      }
      x[i] = sum / lower[i][i];
    }
    return x;
  }

  /** Natural log of the determinant. */
  static double logDeterminant(double[][] matrix) {
    double[][] lower = lower(matrix);
    double log = 0;
    for (int i = 0; i < lower.length; i++) {
      log += 2 * Math.log(lower[i][i]);
    }
    return log;
  }

  private static double[][] lower(double[][] matrix) {
    int n = matrix.length;
    double[][] lower = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = matrix[i][j];
        for (int k = 0; k < j; k++) {
          sum -= lower[i][k] * lower[j][k];
        }
        lower[i][j] = i == j ? Math.sqrt(Math.max(sum, 1e-300)) : sum / lower[j][j];
      }
    }
    return lower;
  }
}
