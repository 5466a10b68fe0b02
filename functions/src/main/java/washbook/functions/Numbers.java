package washbook.functions;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Pattern;

/** Numbers as people read and write them. */
public final class Numbers {
  private static final Pattern PLAIN_NUMBER =
      Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,4})?");

  private Numbers() {}

  /** The shortest text that reads back as the same double, without an exponent where sensible. */
  public static String show(double value) {
    if (!Double.isFinite(value)) {
      return Double.toString(value);
    }
    if (value == 0) {
      return "0";
    }
    double size = Math.abs(value);
    if (size >= 1e15 || size < 1e-6) {
      return Double.toString(value);
    }
    String text = Double.toString(value);
    if (text.indexOf('E') >= 0) {
      return new BigDecimal(text).stripTrailingZeros().toPlainString();
    }
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }

  /** The number with at most that many digits behind the point, for sentences. */
  public static String round(double value, int digits) {
    return Double.isFinite(value)
        ? show(BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_EVEN).doubleValue())
        : Double.toString(value);
  }

  /** Reads a number written with a point; null when the text is none. */
  public static Double parse(String text) {
    String trimmed = text.strip();
    if (trimmed.isEmpty() || !isPlainNumber(trimmed)) {
      return null;
    }
    return Double.valueOf(trimmed);
  }

  private static boolean isPlainNumber(String text) {
    return PLAIN_NUMBER.matcher(text).matches();
  }
}
