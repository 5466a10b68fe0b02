package washbook.runner.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A chart's axis with round numbers on it. */
public record Axis(double low, double high, double step) {

  /** An axis that holds all finite values and spans at least {@code leastSpan}. */
  public static Axis over(double[] values, double leastSpan) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double value : values) {
      if (Double.isFinite(value)) {
        low = Math.min(low, value);
        high = Math.max(high, value);
      }
    }
    if (low > high) {
      low = 0;
      high = leastSpan;
    }
    double step = roundStep(Math.max(high - low, leastSpan) / 4);
    double start = Math.floor(low / step + 1e-9) * step;
    double end = Math.ceil(high / step - 1e-9) * step;
    return new Axis(start, end > start ? end : start + step, step);
  }

  /** The place of {@code value} between the ends {@code from} (low) and {@code to} (high). */
  public double place(double value, double from, double to) {
    return from + (value - low) / (high - low) * (to - from);
  }

  /** The numbers on it. */
  public List<Double> ticks() {
    List<Double> ticks = new ArrayList<>();
    for (int i = 0; low + i * step <= high + step / 2; i++) {
      ticks.add(low + i * step);
    }
    return ticks;
  }

  /** A number on it as text. */
  public String show(double tick, int leastDecimals) {
    int needed = (int) Math.max(leastDecimals, Math.ceil(-Math.log10(step) - 1e-9));
    return String.format(Locale.ROOT, "%." + needed + "f", tick == 0 ? 0.0 : tick);
  }

  private static double roundStep(double rough) {
    double power = Math.pow(10, Math.floor(Math.log10(rough)));
    double digits = rough / power;
    return (digits <= 1 ? 1 : digits <= 2 ? 2 : digits <= 5 ? 5 : 10) * power;
  }
}
