package washbook.runner.read;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Pattern;
import washbook.runner.file.UnusableFileException;

/** The first records of a text table, split at one candidate separator and counted. */
final class CsvSample {
  private static final int MOST_RECORDS = 1000;

  private static final Pattern DATE_OR_TIME =
      Pattern.compile(
          "\\d{1,4}([-/.])\\d{1,2}\\1\\d{1,4}([ T]\\d{1,2}:\\d{2}.{0,6})?|\\d{1,2}:\\d{2}(:\\d{2})?");
  private final Charset charset;
  private final char separator;
  private final Map<Integer, Integer> recordsByFieldCount = new HashMap<>();
  private String lineEnd;
  private int records;
  private int dividedRecords;
  private int fields;
  private int typedFields;
  private int commas;
  private int points;
  private int doubtfulCommas;
  private int doubtfulPoints;
  private int numbers;
  private int quotedNumbers;
  private int texts;
  private int quotedTexts;

  private CsvSample(Charset charset, char separator) {
    this.charset = charset;
    this.separator = separator;
  }

  /**
   * @param whole whether {@code in} is the whole file, so that its last record is complete
   */
  static CsvSample take(InputStream in, Charset charset, char separator, boolean whole)
      throws IOException {
    CsvSample sample = new CsvSample(charset, separator);
    CsvScanner scanner = new CsvScanner(in, charset, separator);
    try {
      while (sample.records < MOST_RECORDS && scanner.next()) {
        if (whole || !scanner.lineEnd().isEmpty()) {
          sample.add(scanner);
        }
      }
    } catch (UnusableFileException e) {
      if (whole || sample.records == 0) {
        throw e;
      }
    }
    return sample;
  }

  private void add(CsvScanner scanner) {
    if (lineEnd == null) {
      lineEnd = scanner.lineEnd();
    }
    if (scanner.isEmptyLine()) {
      return;
    }
    records++;
    int count = scanner.fieldCount();
    recordsByFieldCount.merge(count, 1, Integer::sum);
    dividedRecords += count > 1 ? 1 : 0;
    for (int i = 0; i < count; i++) {
      String field = scanner.text(i).strip();
      if (!field.isEmpty()) {
        add(field, scanner.isQuoted(i));
      }
    }
  }

  private void add(String field, boolean quoted) {
    fields++;
    int sign = field.charAt(0) == '+' || field.charAt(0) == '-' ? 1 : 0;
    int whole = digits(field, sign);
    int end = sign + whole;
    int decimals = digits(field, end + 1);
    boolean marked = decimals > 0 && end + 1 + decimals == field.length();
    boolean comma = marked && field.charAt(end) == ',';
    boolean point = marked && field.charAt(end) == '.';
    boolean number = comma || point || whole > 0 && end == field.length();
    boolean typed =
        number || sign == 0 && whole > 0 && whole < 5 && DATE_OR_TIME.matcher(field).matches();
    boolean doubtful = whole >= 1 && whole <= 3 && decimals == 3;
    typedFields += typed ? 1 : 0;
    commas += comma && !doubtful ? 1 : 0;
    points += point && !doubtful ? 1 : 0;
    doubtfulCommas += comma && doubtful ? 1 : 0;
    doubtfulPoints += point && doubtful ? 1 : 0;
    if (number) {
      numbers++;
      quotedNumbers += quoted ? 1 : 0;
    } else if (!typed) {
      texts++;
      quotedTexts += quoted ? 1 : 0;
    }
  }

  private static int digits(String field, int from) {
    int at = from;
    while (at < field.length() && field.charAt(at) >= '0' && field.charAt(at) <= '9') {
      at++;
    }
    return at - from;
  }

  char separator() {
    return separator;
  }

  /** How well the separator fits: 0 when it divides nothing, 2 at most. */
  double score() {
    if (dividedRecords == 0) {
      return 0;
    }
    int alike = 0;
    for (Map.Entry<Integer, Integer> entry : recordsByFieldCount.entrySet()) {
      alike = entry.getKey() > 1 ? Math.max(alike, entry.getValue()) : alike;
    }
    double divided = dividedRecords / (double) records;
    return (divided + alike / (double) records) / 2 + typedFields / (double) fields * divided;
  }

  private boolean decimalComma() {
    if (commas != points) {
      return commas > points;
    }
    if (separator == ',') {
      return false;
    }
    return doubtfulCommas != doubtfulPoints ? doubtfulCommas > doubtfulPoints : separator == ';';
  }

  CsvDialect dialect(int prefixLength) {
    boolean quotesTexts = texts > 1 && quotedTexts == texts;
    boolean quotesNumbers = quotesTexts && numbers > 0 && quotedNumbers == numbers;
    String end = lineEnd == null || lineEnd.isEmpty() ? "\n" : lineEnd;
    return new CsvDialect(
        charset, prefixLength, separator, decimalComma(), quotesTexts, quotesNumbers, end);
  }
}
