package washbook.runner.markup;

import static java.nio.charset.StandardCharsets.US_ASCII;

import ch.randelshofer.fastdoubleparser.JavaDoubleParser;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as spreadsheet files write them: digits with a point, in bytes. */
public final class Decimal {
  private static final double[] POWERS = new double[23];

  static {
    for (int i = 0; i < POWERS.length; i++) {
      POWERS[i] = Double.parseDouble("1e" + i);
    }
  }

  /** As many numbers as the JDK has read before the library is set up. */
  private static final int FEW = 500;

  private static int few;

  private Decimal() {}

  /**
   * The number nearest to the decimal, or NaN when the bytes are not a decimal. Up to 15 digits and
   * powers of ten up to 22 are exact in a double, so one operation rounds correctly (Clinger, "How
   * to read floating point numbers accurately", 1990); the rest goes to a library that is several
   * times as fast as the JDK and rounds as correctly.
   */
  public static double parse(byte[] bytes, int start, int end) {
    int i = start;
    int last = end;
    while (i < last && XmlScanner.isSpace(bytes[i])) {
      i++;
    }
    while (last > i && XmlScanner.isSpace(bytes[last - 1])) {
      last--;
    }
    int first = i;
    boolean negative = i < last && bytes[i] == '-';
    if (negative) {
      i++;
    }
    long digits = 0;
    int count = 0;
    int behindPoint = -1;
    for (; i < last; i++) {
      byte b = bytes[i];
      if (b >= '0' && b <= '9') {
        digits = 10 * digits + (b - '0');
        count++;
        if (behindPoint >= 0) {
          behindPoint++;
        }
      } else if (b == '.' && behindPoint < 0) {
        behindPoint = 0;
      } else {
        return slow(bytes, first, last);
      }
      if (count > 15) {
        return slow(bytes, first, last);
      }
    }
    if (count == 0) {
      return Double.NaN;
    }
    double value = behindPoint > 0 ? digits / POWERS[behindPoint] : digits;
    return negative ? -value : value;
  }

  private static double slow(byte[] bytes, int start, int end) {
    for (int i = start; i < end; i++) {
      byte b = bytes[i];
      // It also takes "NaN", "1d" and hexadecimal digits, which no file means.
      if (!(b >= '0' && b <= '9') && b != '.' && b != '-' && b != '+' && b != 'e' && b != 'E') {
        return Double.NaN;
      }
    }
    try {
      if (few < FEW) {
        few++;
        return Double.parseDouble(new String(bytes, start, end - start, US_ASCII));
      }
      return JavaDoubleParser.parseDouble(bytes, start, end - start);
    } catch (NumberFormatException e) {
      return Double.NaN;
    }
  }

  /** The number rounded to that many decimal places, halves away from zero. */
  public static String shown(double number, int decimals) {
    double scaled = decimals < POWERS.length ? Math.abs(number) * POWERS[decimals] : Double.NaN;
    double rest = scaled - Math.floor(scaled);
    // Nearer to a half than this, the decimal digits have to say which way it goes.
    if (!(scaled < 1e9) || Math.abs(rest - 0.5) < 1e-4) {
      return BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
    }
    long digits = (long) Math.floor(scaled + 0.5);
    String text = Long.toString(digits);
    if (decimals > 0) {
      text = text.length() <= decimals ? "0".repeat(decimals + 1 - text.length()) + text : text;
      int point = text.length() - decimals;
      text = text.substring(0, point) + '.' + text.substring(point);
    }
    return number < 0 && digits != 0 ? "-" + text : text;
  }

  /** The shortest text that reads back as the same number, without a needless ".0". */
  public static String format(double number) {
    if (number == Math.rint(number) && Math.abs(number) < 1e15) {
      return Long.toString((long) number);
    }
    return Double.toString(number);
  }
}
