package washbook.functions.portable.form;

/** Linear least squares by Householder's QR, in a fixed order of operations. */
final class LeastSquares {
  private LeastSquares() {}

  /**
   * The x that makes {@code rows x - right} smallest in the mean square; columns are scaled to
   * length 1 first. Both arrays are overwritten.
   */
  static double[] solve(double[][] rows, double[] right) {
    int n = rows[0].length;
    double[] scale = new double[n];
    for (int j = 0; j < n; j++) {
      scale[j] = norm(rows, j, 0);
      if (scale[j] == 0) {
        throw new IllegalArgumentException("column " + j + " is zero");
      }
      for (double[] row : rows) {
        row[j] /= scale[j];
      }
    }
    double[] diagonal = new double[n];
    for (int j = 0; j < n; j++) {
      reflect(rows, right, j, diagonal);
    }
    double[] x = new double[n];
    for (int j = n - 1; j >= 0; j--) {
      double sum = right[j];
      for (int k = j + 1; k < n; k++) {
        sum -= rows[j][k] * x[k];
      }
      x[j] = sum / diagonal[j];
    }
    for (int j = 0; j < n; j++) {
      x[j] /= scale[j];
    }
    return x;
  }

  private static void reflect(double[][] rows, double[] right, int j, double[] diagonal) {
    double length = norm(rows, j, j);
    double alpha = rows[j][j] > 0 ? -length : length;
    diagonal[j] = alpha;
    rows[j][j] -= alpha;
    double half = -alpha * rows[j][j];
    for (int k = j + 1; k < rows[0].length; k++) {
      double dot = 0;
      for (int i = j; i < rows.length; i++) {
        dot += rows[i][j] * rows[i][k];
      }
      dot /= half;
      for (int i = j; i < rows.length; i++) {
        rows[i][k] -= dot * rows[i][j];
      }
    }
    double dot = 0;
    for (int i = j; i < rows.length; i++) {
      dot += rows[i][j] * right[i];
    }
    dot /= half;
    for (int i = j; i < rows.length; i++) {
      right[i] -= dot * rows[i][j];
    }
  }

  private static double norm(double[][] rows, int column, int from) {
    double sum = 0;
    for (int i = from; i < rows.length; i++) {
      sum += rows[i][column] * rows[i][column];
    }
    return Math.sqrt(sum);
  }
}
