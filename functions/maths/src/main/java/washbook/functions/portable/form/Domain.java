package washbook.functions.portable.form;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.UnaryOperator;

/**
 * The valid arguments of a function as the image of a unit cube, corners on corners.
 *
 * @param dimensions of the cube
 * @param arguments the arguments that belong to a point of the cube
 */
record Domain(int dimensions, UnaryOperator<double[]> arguments) {

  /** All combinations of arguments between limits: low, high, low, high ... */
  static Domain box(double... limits) {
    return new Domain(
        limits.length / 2,
        unit -> {
          double[] at = new double[unit.length];
          for (int i = 0; i < at.length; i++) {
            at[i] = between(limits[2 * i], limits[2 * i + 1], unit[i]);
          }
          return at;
        });
  }

  static double between(double low, double high, double unit) {
    return unit == 1 ? high : low + unit * (high - low);
  }

  /** Chebyshev's points, ends included: where a fit is made. */
  List<double[]> nodes(int... counts) {
    return grid(counts, u -> (1 - StrictMath.cos(StrictMath.PI * u)) / 2);
  }

  /** Evenly spread points, ends included: where an error is measured. */
  List<double[]> even(int... counts) {
    return grid(counts, u -> u);
  }

  private List<double[]> grid(int[] counts, DoubleUnaryOperator spread) {
    List<double[]> points = new ArrayList<>();
    fill(points, new double[dimensions], 0, counts, spread);
    return points;
  }

  private void fill(
      List<double[]> points, double[] unit, int at, int[] counts, DoubleUnaryOperator spread) {
    if (at == dimensions) {
      points.add(arguments.apply(unit.clone()));
      return;
    }
    for (int i = 0; i < counts[at]; i++) {
      unit[at] = i == counts[at] - 1 ? 1 : spread.applyAsDouble(i / (counts[at] - 1.0));
      fill(points, unit, at + 1, counts, spread);
    }
  }
}
