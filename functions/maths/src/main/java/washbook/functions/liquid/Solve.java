package washbook.functions.liquid;

import java.util.function.DoubleUnaryOperator;

/** Safeguarded Newton: a root of a monotone function inside a bracket. */
public final class Solve {
  private static final int MOST_STEPS = 100;
  private static final int FREE_STEPS = 8;

  /** Newton doubles its digits each step: after a step this small the root is exact. */
  private static final double LAST_STEP = 1e-9;

  private Solve() {}

  /**
   * Finds x between {@code low} and {@code high} with {@code f(x) = 0}; f must change sign there.
   * Steps that leave the bracket are replaced by halving, so it always ends.
   *
   * @return the root, or NaN when f has the same sign at both ends
   */
  public static double root(
      DoubleUnaryOperator f, DoubleUnaryOperator slope, double start, double low, double high) {
    double x = start >= low && start <= high ? start : (low + high) / 2;
    double a = low;
    double b = high;
    boolean bracketed = false;
    double signAtLow = 0;
    for (int step = 0; step < MOST_STEPS; step++) {
      double fx = f.applyAsDouble(x);
      if (fx == 0) {
        return x;
      }
      double next = x - fx / slope.applyAsDouble(x);
      if (next >= a && next <= b) {
        if (Math.abs(next - x) <= LAST_STEP * (1 + Math.abs(next))) {
          return next;
        }
      } else {
        next = Double.NaN;
      }
      if (Double.isNaN(next) || step >= FREE_STEPS) {
        if (!bracketed) {
          signAtLow = Math.signum(f.applyAsDouble(a));
          if (signAtLow == 0) {
            return a;
          }
          double signAtHigh = Math.signum(f.applyAsDouble(b));
          if (signAtHigh == 0) {
            return b;
          }
          if (!(signAtLow * signAtHigh < 0)) {
            return Double.NaN;
          }
          bracketed = true;
        }
        if (Math.signum(fx) == signAtLow) {
          a = x;
        } else {
          b = x;
        }
        if (!(next > a && next < b)) {
          next = (a + b) / 2;
        }
        if (b - a <= 1e-15 * (1 + Math.abs(x))) {
          return next;
        }
      }
      x = next;
    }
    return x;
  }

  /** As {@link #root}, with the slope taken from a small step. */
  public static double root(DoubleUnaryOperator f, double start, double low, double high) {
    double step = 1e-7 * (high - low);
    return root(
        f,
        x -> {
          double to = x + step <= high ? x + step : x - step;
          return (f.applyAsDouble(to) - f.applyAsDouble(x)) / (to - x);
        },
        start,
        low,
        high);
  }
}
