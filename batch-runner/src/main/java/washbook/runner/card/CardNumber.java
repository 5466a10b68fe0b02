package washbook.runner.card;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import washbook.functions.Answer;
import washbook.functions.Sentence;
import washbook.functions.catalogue.Catalogue;

/** Numbers of a card: asked of the catalogue, and as they are printed. */
final class CardNumber {
  private static final char MINUS = '\u2212';

  private CardNumber() {}

  /** What a function gives; NaN where it refuses. */
  static double of(String function, Object... arguments) {
    return Catalogue.get(function).call(arguments) instanceof Answer.Number number
        ? number.value()
        : Double.NaN;
  }

  /** Why a function refuses; empty when it does not. */
  static Optional<Sentence> reason(String function, Object... arguments) {
    return Catalogue.get(function).call(arguments) instanceof Answer.Refusal refusal
        ? Optional.of(refusal.told())
        : Optional.empty();
  }

  static String plain(double value, int decimals) {
    BigDecimal rounded = rounded(value, decimals);
    return rounded.signum() < 0
        ? MINUS + rounded.negate().toPlainString()
        : rounded.toPlainString();
  }

  /** NaN stays what it is. */
  static double round(double value, int decimals) {
    return Double.isNaN(value) ? value : rounded(value, decimals).doubleValue();
  }

  static String signed(double value, int decimals) {
    return (rounded(value, decimals).signum() > 0 ? "+" : "") + plain(value, decimals);
  }

  private static BigDecimal rounded(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
  }

  /** Numbers from the first to the last, in steps that do not add up their rounding. */
  static double[] steps(double first, double last, double step) {
    BigDecimal at = BigDecimal.valueOf(first);
    int count = (int) Math.floor((last - first) / step + 1e-9) + 1;
    double[] steps = new double[count];
    for (int i = 0; i < count; i++) {
      steps[i] = at.add(BigDecimal.valueOf(step).multiply(BigDecimal.valueOf(i))).doubleValue();
    }
    return steps;
  }
}
