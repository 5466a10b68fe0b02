package washbook.samples.corpus;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/**
 * How a text file is written.
 *
 * @param separator between the cells
 * @param decimal point or comma
 * @param charset encoding
 * @param mark whether a byte order mark stands in front
 * @param lineEnd end of each line
 * @param date pattern of dates
 * @param time pattern of dates with a time
 * @param quoteAll whether every cell is quoted
 */
record Dialect(
    char separator,
    char decimal,
    Charset charset,
    boolean mark,
    String lineEnd,
    String date,
    String time,
    boolean quoteAll) {
  static final Dialect COMMA =
      new Dialect(
          ',', '.', StandardCharsets.UTF_8, false, "\n", "yyyy-MM-dd", "yyyy-MM-dd HH:mm", false);
  static final Dialect SEMICOLON =
      new Dialect(
          ';', ',', StandardCharsets.UTF_8, true, "\r\n", "dd.MM.yyyy", "dd.MM.yyyy HH:mm", false);
  static final Dialect TAB =
      new Dialect(
          '\t', '.', StandardCharsets.UTF_8, false, "\n", "d/M/yyyy", "d/M/yyyy HH:mm", false);

  Dialect in(Charset other) {
    return new Dialect(separator, decimal, other, mark, lineEnd, date, time, quoteAll);
  }

  Dialect marked(boolean with) {
    return new Dialect(separator, decimal, charset, with, lineEnd, date, time, quoteAll);
  }

  Dialect dates(String pattern) {
    return new Dialect(
        separator, decimal, charset, mark, lineEnd, pattern, pattern + " HH:mm", quoteAll);
  }

  Dialect lines(String end) {
    return new Dialect(separator, decimal, charset, mark, end, date, time, quoteAll);
  }

  Dialect decimals(char point) {
    return new Dialect(separator, point, charset, mark, lineEnd, date, time, quoteAll);
  }

  Dialect quoted() {
    return new Dialect(separator, decimal, charset, mark, lineEnd, date, time, true);
  }
}
