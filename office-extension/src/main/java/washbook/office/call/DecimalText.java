package washbook.office.call;

import java.util.function.Supplier;
import java.util.regex.Pattern;
import washbook.functions.Numbers;

/**
 * Reads a number as Calc itself reads a text: with the signs of the office's locale. Calc hands
 * numbers over as text in the same way, whatever the cell's own format says.
 */
final class DecimalText {

  /**
   * The signs in numbers.
   *
   * @param decimal before the decimal places
   * @param group between groups of three digits
   */
  record Signs(String decimal, String group) {
    static final Signs ENGLISH = new Signs(".", ",");

    private boolean groups(String text) {
      return !group.isEmpty()
          && Pattern.matches(
              "[+-]?\\d{1,3}("
                  + Pattern.quote(group)
                  + "\\d{3})+("
                  + Pattern.quote(decimal)
                  + "\\d*)?",
              text);
    }
  }

  private static volatile Supplier<Signs> office = () -> Signs.ENGLISH;
  private static volatile Signs signs = Signs.ENGLISH;

  private DecimalText() {}

  /** Says how to ask for the office's signs; they can change while the office runs. */
  static void askFor(Supplier<Signs> supplier) {
    office = supplier;
    signs = supplier.get();
  }

  /** The sign before the decimal places. */
  static String decimalSign() {
    return signs.decimal();
  }

  /** The number, or null when the text is none. */
  static Double parse(String text) {
    String bare = text.strip();
    Double number = plain(bare, signs);
    if (number == null) {
      signs = office.get();
      number = plain(bare, signs);
      if (number == null && signs.groups(bare)) {
        number = plain(bare.replace(signs.group(), ""), signs);
      }
    }
    return number;
  }

  /** Without groups: these are read with signs that have just been asked for. */
  private static Double plain(String text, Signs signs) {
    if (signs.decimal().equals(".")) {
      return Numbers.parse(text);
    }
    return text.indexOf('.') >= 0 ? null : Numbers.parse(text.replace(signs.decimal(), "."));
  }
}
