package washbook.functions.portable.form;

import washbook.functions.liquid.Freezing;
import washbook.functions.liquid.Solve;

/** The freezing curve, read the other way. */
final class Ice {
  /** Above this mass fraction nothing freezes in the valid range. */
  private static final double ALWAYS_LIQUID = 0.3;

  private Ice() {}

  /** The lowest mass fraction that is still liquid at a temperature. */
  static double weakestLiquid(double temperatureC) {
    return temperatureC >= Freezing.point(0)
        ? 0
        : Solve.root(p -> Freezing.point(p) - temperatureC, 0.1, 0, ALWAYS_LIQUID);
  }
}
