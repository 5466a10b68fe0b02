package washbook.runner.report;

import java.io.IOException;
import washbook.functions.Numbers;

/** Comma-separated values by RFC 4180, safe to open in a spreadsheet. */
public final class Csv {
  /** Also the wide forms, which some programs take for the plain ones. */
  private static final String FORMULA_STARTS = "=+-@\t\r\uff1d\uff0b\uff0d\uff20";

  private Csv() {}

  /** One line, each value quoted where it has to be. */
  public static void writeLine(Appendable out, String... values) throws IOException {
    for (int i = 0; i < values.length; i++) {
      out.append(i == 0 ? "" : ",").append(field(values[i]));
    }
    out.append("\r\n");
  }

  private static String field(String value) {
    String shown = ShownText.of(value);
    String text = isLikeFormula(shown) ? "'" + shown : shown;
    for (int i = 0; i < text.length(); i++) {
      if (",\"\r\n".indexOf(text.charAt(i)) >= 0) {
        return '"' + text.replace("\"", "\"\"") + '"';
      }
    }
    return text;
  }

  /** A batch named "=..." must not become a formula when the report is opened. */
  private static boolean isLikeFormula(String value) {
    return !value.isEmpty()
        && FORMULA_STARTS.indexOf(value.charAt(0)) >= 0
        && Numbers.parse(value) == null;
  }
}
