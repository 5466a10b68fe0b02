package washbook.runner.read;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.Charset;
import java.util.regex.Pattern;

/**
 * How one text table is written.
 *
 * @param charset UTF-8, UTF-16 (either order, with a byte order mark) or Windows-1252
 * @param prefixLength bytes before the first record: byte order mark and a "sep=" line
 * @param decimalComma whether its numbers are written with a decimal comma
 * @param quotesTexts whether all its texts stand in quotation marks
 * @param quotesNumbers whether its numbers do so too
 * @param lineEnd of its first record
 */
public record CsvDialect(
    Charset charset,
    int prefixLength,
    char separator,
    boolean decimalComma,
    boolean quotesTexts,
    boolean quotesNumbers,
    String lineEnd) {

  private static final Pattern POINT_NUMBER =
      Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d{1,3})?");
  private static final Pattern COMMA_NUMBER =
      Pattern.compile("[+-]?(\\d+(,\\d*)?|,\\d+)([eE][+-]?\\d{1,3})?");
  private static final Pattern GROUPED_BY_POINT = Pattern.compile("[+-]?\\d{1,3}(\\.\\d{3})+");

  /** First characters that make a spreadsheet take a field for a formula, also the wide forms. */
  private static final String STARTS_FORMULA = "=+-@\uff1d\uff0b\uff0d\uff20";

  /**
   * The number that a field holds, or NaN. A number with the decimal mark that this file does not
   * use counts too when it cannot be misread: with a decimal comma, 1.085 may be one thousand and
   * eighty-five, and stays a text for the log to judge.
   */
  public double number(String field) {
    String text = field.strip();
    if (text.isEmpty() || text.length() > 40) {
      return Double.NaN;
    }
    double number = Double.NaN;
    if (decimalComma && COMMA_NUMBER.matcher(text).matches()) {
      number = Double.parseDouble(text.replace(',', '.'));
    } else if (POINT_NUMBER.matcher(text).matches()
        && !(decimalComma && GROUPED_BY_POINT.matcher(text).matches())) {
      number = Double.parseDouble(text);
    }
    return Double.isFinite(number) ? number : Double.NaN;
  }

  /**
   * A number as this file writes it.
   *
   * @param decimals decimal places; negative for as many as the number has
   */
  public String numberField(double number, int decimals) {
    BigDecimal exact = BigDecimal.valueOf(number);
    BigDecimal shown =
        decimals < 0 ? exact.stripTrailingZeros() : exact.setScale(decimals, RoundingMode.HALF_UP);
    String text = shown.toPlainString();
    return decimalComma ? text.replace('.', ',') : text;
  }

  /** A text that no spreadsheet takes for a formula: an apostrophe in front where it would. */
  public static String harmless(String text) {
    String start = text.stripLeading();
    boolean formula = !start.isEmpty() && STARTS_FORMULA.indexOf(start.charAt(0)) >= 0;
    return formula ? "'" + text : text;
  }

  /** The field's content with quotation marks where this file wants or needs them. */
  public String quoted(String content, boolean isNumber) {
    boolean habit = !content.isEmpty() && (isNumber ? quotesNumbers : quotesTexts);
    boolean need =
        content.indexOf(separator) >= 0
            || content.indexOf('"') >= 0
            || content.indexOf('\n') >= 0
            || content.indexOf('\r') >= 0
            || !content.equals(content.strip());
    return habit || need ? '"' + content.replace("\"", "\"\"") + '"' : content;
  }

  /** One line for people, such as "UTF-8, semicolons, decimal comma". */
  public String describe() {
    String mark = separator == '\t' ? "tabs" : separator == ';' ? "semicolons" : "commas";
    return charset.name() + ", " + mark + ", decimal " + (decimalComma ? "comma" : "point");
  }
}
