package washbook.office.call;

import java.util.function.Supplier;
import washbook.functions.Numbers;

/** Reads a number that Calc has turned into text, with the decimal sign of the office's locale. */
final class DecimalText {
  private static volatile Supplier<String> office = () -> ".";
  private static volatile String sign = ".";

  private DecimalText() {}

  /** Says how to ask for the office's decimal sign; it can change while the office runs. */
  static void askFor(Supplier<String> decimalSign) {
    office = decimalSign;
    sign = decimalSign.get();
  }

  /** The number, or null when the text is none. */
  static Double parse(String text) {
    Double number = parse(text, sign);
    if (number == null) {
      String now = office.get();
      if (!now.equals(sign)) {
        sign = now;
        number = parse(text, now);
      }
    }
    return number;
  }

  private static Double parse(String text, String decimalSign) {
    return Numbers.parse(decimalSign.equals(".") ? text : text.replace(decimalSign, "."));
  }
}
