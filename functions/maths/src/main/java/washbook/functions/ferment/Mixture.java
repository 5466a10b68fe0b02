package washbook.functions.ferment;

import java.util.ArrayList;
import java.util.List;

/** A probability law made of weighted normal laws. */
final class Mixture {
  private static final int HALVINGS = 20;

  private record Part(double weight, double mean, double deviation) {}

  private final List<Part> parts = new ArrayList<>();
  private double sum;

  void add(double weight, double mean, double deviation) {
    parts.add(new Part(weight, mean, Math.max(1e-9, deviation)));
    sum += weight;
  }

  /** Probability of a value below {@code x}. */
  double below(double x) {
    double below = 0;
    for (Part part : parts) {
      below += part.weight * normal((x - part.mean) / part.deviation);
    }
    return below / sum;
  }

  /** The value that is not passed with probability {@code p}. */
  double quantile(double p) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Part part : parts) {
      low = Math.min(low, part.mean - 6 * part.deviation);
      high = Math.max(high, part.mean + 6 * part.deviation);
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (below(middle) < p) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /** Standard normal distribution within 0.0002. */
  private static double normal(double z) {
    return 1 / (1 + Math.exp(-z * (1.5976 + 0.070566 * z * z)));
  }
}
