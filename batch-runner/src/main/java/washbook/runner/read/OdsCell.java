package washbook.runner.read;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.util.regex.Pattern;
import washbook.log.sheet.Grid.Kind;
import washbook.runner.file.UnusableFileException;
import washbook.runner.markup.Decimal;
import washbook.runner.markup.RepeatedWord;
import washbook.runner.markup.XmlScanner;
import washbook.runner.markup.XmlScanner.Token;

/**
 * One cell of an OpenDocument sheet (OpenDocument 1.3 part 3, 9.1.4 table:table-cell and 19.384 to
 * 19.390 for the values). The same object reads one cell after the other.
 */
public final class OdsCell {
  public static final byte[] CELL = ascii("table-cell");
  public static final byte[] COVERED = ascii("covered-table-cell");

  /** Attributes that say what a cell holds, and not how it looks. */
  private static final byte[][] CONTENT_ATTRIBUTES = {
    ascii("office:value-type"), ascii("office:value"), ascii("office:date-value"),
    ascii("office:time-value"), ascii("office:boolean-value"), ascii("office:string-value"),
    ascii("office:currency"), ascii("table:formula"), ascii("calcext:value-type"),
    ascii("table:number-matrix-columns-spanned"), ascii("table:number-matrix-rows-spanned")
  };

  private static final int VALUE_TYPE = 0;
  private static final int VALUE = 1;
  private static final int DATE_VALUE = 2;
  private static final int TIME_VALUE = 3;
  private static final int BOOLEAN_VALUE = 4;
  private static final int STRING_VALUE = 5;
  private static final int FORMULA = 7;
  private static final int CALCEXT_TYPE = 8;
  private static final int MATRIX_COLUMNS = 9;
  private static final int MATRIX_ROWS = 10;

  private static final byte[] REPEATED = ascii("table:number-columns-repeated");
  private static final byte[] COLUMNS_SPANNED = ascii("table:number-columns-spanned");
  private static final byte[] ROWS_SPANNED = ascii("table:number-rows-spanned");
  private static final byte[] STYLE = ascii("table:style-name");
  private static final byte[] P = ascii("p");
  private static final byte[] H = ascii("h");
  private static final byte[] TEXT = ascii("text:");
  private static final byte[] ERROR = ascii("error");
  private static final String[] TYPES = {"float", "string", "date"};
  private static final byte[][] TYPE_BYTES = {ascii("float"), ascii("string"), ascii("date")};

  private static final Pattern SHOWN_ERROR =
      Pattern.compile("#(DIV/0!|N/A|NAME\\?|NULL!|NUM!|REF!|VALUE!)|Err:\\d{3}");
  private static final long DAY_ZERO = LocalDate.of(1899, 12, 30).toEpochDay();
  private static final String PLAIN = "0000-00-00T00:00:00";
  private static final Pattern ZONED = Pattern.compile(".*T.*(Z|[+-]\\d{2}:\\d{2})");
  private static final double NANOS_A_DAY = 86400e9;

  private final OdsText text = new OdsText();
  private final RepeatedWord styleNames = new RepeatedWord();
  private String type;
  private String stringValue;
  private String formula;
  private boolean error;
  private boolean matrix;
  private Kind kind = Kind.BLANK;
  private double number;
  private int repeated;
  private int columnsSpanned;
  private int rowsSpanned;
  private String style;

  /** What else stands in a cell; told by where its bytes are. */
  public interface Children {
    /** The element that begins with the current token; the scanner must be left at its end. */
    void skip(XmlScanner scanner, Token token) throws IOException;
  }

  /** Passes over elements. */
  public static void skip(XmlScanner scanner, Token token) throws IOException {
    if (token == Token.EMPTY) {
      return;
    }
    int outside = scanner.depth() - 1;
    while (scanner.depth() > outside) {
      if (scanner.next() == Token.DONE) {
        throw scanner.damaged("how.elementOpen");
      }
    }
  }

  /** Reads the cell whose tag is the current token, to the end of its element. */
  public void read(XmlScanner scanner, Token token, Children others) throws IOException {
    type = null;
    stringValue = null;
    formula = null;
    error = false;
    matrix = false;
    number = Double.NaN;
    repeated = 1;
    columnsSpanned = 1;
    rowsSpanned = 1;
    style = null;
    text.clear();
    scanner.rewindAttributes();
    String moment = null;
    while (scanner.nextAttribute()) {
      switch (contentAttribute(scanner)) {
        case VALUE_TYPE -> type = known(scanner);
        case VALUE ->
            number = Decimal.parse(scanner.bytes(), scanner.valueStart(), scanner.valueEnd());
        case DATE_VALUE, TIME_VALUE, BOOLEAN_VALUE -> moment = scanner.value();
        case STRING_VALUE -> stringValue = scanner.value();
        case FORMULA -> formula = scanner.value();
        case CALCEXT_TYPE -> error = scanner.valueIs(ERROR);
        case MATRIX_COLUMNS, MATRIX_ROWS -> matrix = true;
        default -> readOther(scanner);
      }
    }
    boolean textCounts = formula != null || type == null || type.equals("string");
    if (token == Token.START) {
      readChildren(scanner, textCounts, others);
    }
    kind = settle(moment);
  }

  private void readOther(XmlScanner scanner) throws UnusableFileException {
    if (scanner.attributeIs(REPEATED)) {
      repeated = count(scanner);
    } else if (scanner.attributeIs(STYLE)) {
      style = styleNames.of(scanner);
    } else if (scanner.attributeIs(COLUMNS_SPANNED)) {
      columnsSpanned = count(scanner);
    } else if (scanner.attributeIs(ROWS_SPANNED)) {
      rowsSpanned = count(scanner);
    }
  }

  /** The present attribute's place among the content attributes, or -1. */
  private static int contentAttribute(XmlScanner scanner) {
    for (int i = 0; i < CONTENT_ATTRIBUTES.length; i++) {
      if (scanner.attributeIs(CONTENT_ATTRIBUTES[i])) {
        return i;
      }
    }
    return -1;
  }

  /** Whether the present attribute says what the cell holds. */
  public static boolean isContent(XmlScanner scanner) {
    return contentAttribute(scanner) >= 0;
  }

  /** The value type, without a new object for the usual ones. */
  private static String known(XmlScanner scanner) throws UnusableFileException {
    for (int i = 0; i < TYPES.length; i++) {
      if (scanner.valueIs(TYPE_BYTES[i])) {
        return TYPES[i];
      }
    }
    return scanner.value();
  }

  /** The present attribute as a count of at least 1. */
  public static int count(XmlScanner scanner) throws UnusableFileException {
    long count = 0;
    int start = scanner.valueStart();
    for (int i = start; i < scanner.valueEnd(); i++) {
      int digit = scanner.bytes()[i] - '0';
      if (digit < 0 || digit > 9 || count > 1 << 28) {
        throw scanner.damaged("how.count");
      }
      count = 10 * count + digit;
    }
    if (count < 1 || count > Integer.MAX_VALUE / 4) {
      throw scanner.damaged("how.countRange");
    }
    return (int) count;
  }

  private void readChildren(XmlScanner scanner, boolean textCounts, Children others)
      throws IOException {
    int outside = scanner.depth() - 1;
    while (true) {
      Token token = scanner.next();
      if (token == Token.DONE) {
        throw scanner.damaged("how.cellOpen");
      }
      if (token == Token.END && scanner.depth() == outside) {
        return;
      }
      if (token == Token.START || token == Token.EMPTY) {
        if ((scanner.is(P) || scanner.is(H)) && scanner.hasPrefix(TEXT)) {
          if (textCounts) {
            text.readParagraph(scanner, token);
          } else {
            skip(scanner, token);
          }
        } else {
          others.skip(scanner, token);
        }
      }
    }
  }

  private Kind settle(String moment) throws UnusableFileException {
    if (error) {
      return Kind.ERROR;
    }
    if (type == null) {
      if (formula != null) {
        return Kind.ERROR;
      }
      return text.isEmpty() ? Kind.BLANK : Kind.TEXT;
    }
    boolean shownError = formula != null && SHOWN_ERROR.matcher(text.toString()).matches();
    if (shownError && (type.equals("string") || number == 0)) {
      return Kind.ERROR;
    }
    switch (type) {
      case "string":
        return formula == null && text().isEmpty() ? Kind.BLANK : Kind.TEXT;
      case "float", "percentage", "currency":
        return Double.isNaN(number) ? Kind.ERROR : Kind.NUMBER;
      case "boolean":
        number = "true".equals(moment) ? 1 : 0;
        return Kind.LOGICAL;
      case "date", "time":
        number = moment == null ? Double.NaN : days(moment.strip());
        return Double.isNaN(number) ? Kind.ERROR : Kind.DATE;
      default:
        return Kind.ERROR;
    }
  }

  /** Days since 1899-12-30 of a date, a moment or a duration in the forms of XML Schema part 2. */
  static double days(String moment) {
    try {
      if (moment.startsWith("P") || moment.startsWith("-P")) {
        Duration duration = Duration.parse(moment);
        return (duration.getSeconds() * 1e9 + duration.getNano()) / NANOS_A_DAY;
      }
      if (moment.length() == 10) {
        return LocalDate.parse(moment).toEpochDay() - DAY_ZERO;
      }
      if (moment.length() == PLAIN.length() && isPlain(moment)) {
        return LocalDate.of(whole(moment, 0, 4), whole(moment, 5, 7), whole(moment, 8, 10))
                .toEpochDay()
            - DAY_ZERO
            + LocalTime.of(whole(moment, 11, 13), whole(moment, 14, 16), whole(moment, 17, 19))
                    .toNanoOfDay()
                / NANOS_A_DAY;
      }
      boolean zoned = ZONED.matcher(moment).matches();
      LocalDateTime time =
          zoned ? OffsetDateTime.parse(moment).toLocalDateTime() : LocalDateTime.parse(moment);
      return time.toLocalDate().toEpochDay()
          - DAY_ZERO
          + time.toLocalTime().toNanoOfDay() / NANOS_A_DAY;
    } catch (DateTimeException | ArithmeticException e) {
      return Double.NaN;
    }
  }

  /** The form in which programs write moments; the JDK's parser takes several times as long. */
  private static boolean isPlain(String moment) {
    for (int i = 0; i < PLAIN.length(); i++) {
      char expected = PLAIN.charAt(i);
      char c = moment.charAt(i);
      if (expected == '0' ? c < '0' || c > '9' : c != expected) {
        return false;
      }
    }
    return true;
  }

  private static int whole(String digits, int start, int end) {
    return Integer.parseInt(digits, start, end, 10);
  }

  public Kind kind() {
    return kind;
  }

  public double number() {
    return number;
  }

  /** The text as shown, or the stored one where the file has both. */
  public String text() {
    return stringValue == null || !text.isEmpty() ? text.toString() : stringValue;
  }

  /** The formula with its prefix, or null. */
  public String formula() {
    return formula;
  }

  /** Whether the formula serves other cells too. */
  public boolean isMatrix() {
    return matrix;
  }

  /** How many cells in a row this element stands for. */
  public int repeated() {
    return repeated;
  }

  public int columnsSpanned() {
    return columnsSpanned;
  }

  public int rowsSpanned() {
    return rowsSpanned;
  }

  /** The name of the cell's style, or null. */
  public String style() {
    return style;
  }
}
