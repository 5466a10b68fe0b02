package washbook.samples.corpus;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import washbook.log.sheet.Grid;

/** Writes the first page as delimited text. */
final class TextFiles {
  private TextFiles() {}

  static void write(Log log, Path file) throws IOException {
    Page page = log.pages().get(0);
    Dialect dialect = log.dialect();
    int width = page.cells().values().stream().mapToInt(l -> l.lastKey() + 1).max().orElse(0);
    for (Grid.Area area : page.merged()) {
      width = Math.max(width, area.lastColumn() + 1);
    }
    StringBuilder text = new StringBuilder();
    for (int row = 0; row <= page.cells().lastKey(); row++) {
      for (int column = 0; column < width; column++) {
        text.append(column == 0 ? "" : dialect.separator());
        text.append(quoted(shown(page.at(row, column), dialect), dialect));
      }
      text.append(dialect.lineEnd());
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    if (dialect.mark()) {
      bytes.writeBytes("\uFEFF".getBytes(dialect.charset()));
    }
    bytes.writeBytes(text.toString().getBytes(dialect.charset()));
    Files.write(file, bytes.toByteArray());
  }

  private static String shown(Object value, Dialect dialect) {
    if (value == null) {
      return "";
    }
    if (value instanceof Page.Shown shown && shown.value() instanceof Number number) {
      return decimal(shown.format(), dialect).format(number.doubleValue());
    }
    if (value instanceof Page.Shown shown) {
      return shown(shown.value(), dialect);
    }
    if (value instanceof Page.Formula formula) {
      return decimal("0.00", dialect).format(formula.result());
    }
    if (value instanceof Number number) {
      return BigDecimal.valueOf(number.doubleValue())
          .stripTrailingZeros()
          .toPlainString()
          .replace('.', dialect.decimal());
    }
    if (value instanceof LocalDate date) {
      return DateTimeFormatter.ofPattern(dialect.date(), Locale.ROOT).format(date);
    }
    if (value instanceof LocalDateTime time) {
      return DateTimeFormatter.ofPattern(dialect.time(), Locale.ROOT).format(time);
    }
    if (value instanceof LocalTime time) {
      return DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT).format(time);
    }
    return value.toString();
  }

  private static DecimalFormat decimal(String format, Dialect dialect) {
    DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(Locale.ROOT);
    symbols.setDecimalSeparator(dialect.decimal());
    symbols.setGroupingSeparator(dialect.decimal() == ',' ? '.' : ',');
    return new DecimalFormat(format, symbols);
  }

  private static String quoted(String text, Dialect dialect) {
    boolean needed =
        dialect.quoteAll()
            || text.indexOf(dialect.separator()) >= 0
            || text.indexOf('"') >= 0
            || text.indexOf('\n') >= 0;
    return needed ? '"' + text.replace("\"", "\"\"") + '"' : text;
  }
}
