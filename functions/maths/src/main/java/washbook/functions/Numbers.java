package washbook.functions;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as people read and write them. */
public final class Numbers {

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

  /** The number with at most that many decimal places, for sentences. */
  public static String round(double value, int digits) {
    return show(rounded(value, digits));
  }

  /** The number rounded to that many decimal places. */
  public static double rounded(double value, int digits) {
    return Double.isFinite(value)
        ? BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_EVEN).doubleValue()
        : value;
  }

  /**
   * A number written with a point, with the decimal mark of a language: of ours English alone has
   * the point.
   */
  public static String written(String plain, String language) {
    return language.equals("en") ? plain : plain.replace('.', ',');
  }

  /** The number with that many decimal places, halves away from zero. */
  public static String fixed(double value, int digits) {
    return Double.isFinite(value)
        ? BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_UP).toPlainString()
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

  /** Sign, digits with one point among or beside them, exponent of up to four digits. */
  private static boolean isPlainNumber(String text) {
    int at = isSign(text, 0) ? 1 : 0;
    int whole = digits(text, at);
    at += whole;
    int fraction = 0;
    if (at < text.length() && text.charAt(at) == '.') {
      fraction = digits(text, at + 1);
      at += 1 + fraction;
    }
    if (whole + fraction == 0) {
      return false;
    }
    if (at < text.length() && (text.charAt(at) | 0x20) == 'e') {
      at += isSign(text, at + 1) ? 2 : 1;
      int exponent = digits(text, at);
      if (exponent < 1 || exponent > 4) {
        return false;
      }
      at += exponent;
    }
    return at == text.length();
  }

  private static boolean isSign(String text, int at) {
    return at < text.length() && (text.charAt(at) == '+' || text.charAt(at) == '-');
  }

  private static int digits(String text, int from) {
    int at = from;
    while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
      at++;
    }
    return at - from;
  }
}
