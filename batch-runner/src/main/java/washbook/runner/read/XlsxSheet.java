package washbook.runner.read;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import washbook.log.sheet.Grid;
import washbook.runner.file.UnusableFileException;
import washbook.runner.markup.TextBuffer;
import washbook.runner.markup.XmlScanner;
import washbook.runner.markup.XmlScanner.Token;
import washbook.runner.sheet.CellReference;
import washbook.runner.sheet.CompactGrid;
import washbook.runner.sheet.Texts;

/** Reads the cells of one sheet part (ECMA-376-1:2016, 18.3.1.80 sheetData and below). */
final class XlsxSheet {
  private static final byte[] SHEET_DATA = ascii("sheetData");
  private static final byte[] MERGE_CELL = ascii("mergeCell");
  private static final byte[] REF = ascii("ref");
  private static final byte[] ROW = ascii("row");
  private static final byte[] COLUMN = ascii("col");
  private static final byte[] FORMAT = ascii("sheetFormatPr");
  private static final byte[] IS = ascii("is");

  private enum Type {
    NUMBER,
    SHARED,
    INLINE,
    TEXT,
    LOGICAL,
    ERROR,
    ISO_DATE
  }

  private final XmlScanner scanner;
  private final CompactGrid grid;
  private final Texts shared;
  private final XlsxDates.Styles styles;
  private final double dateOffset;
  private final TextBuffer content = new TextBuffer();
  private final XlsxPosition position = new XlsxPosition();
  private final XlsxSizes sizes = new XlsxSizes();

  /** {@code shared} must be the texts that the grid was made with. */
  XlsxSheet(
      XmlScanner scanner,
      CompactGrid grid,
      Texts shared,
      XlsxDates.Styles styles,
      boolean date1904) {
    this.scanner = scanner;
    this.grid = grid;
    this.shared = shared;
    this.styles = styles;
    this.dateOffset = date1904 ? XlsxDates.DAYS_TO_1904 : 0;
  }

  void read(int sharedCount) throws IOException {
    boolean seen = false;
    for (Token token = scanner.next(); token != Token.DONE; token = scanner.next()) {
      if (token == Token.START && !seen && scanner.depth() == 2 && scanner.is(SHEET_DATA)) {
        seen = true;
        readRows(sharedCount);
      } else if (!seen && token != Token.END && token != Token.TEXT) {
        readSizes(token);
      } else if ((token == Token.START || token == Token.EMPTY) && scanner.is(MERGE_CELL)) {
        readMerged();
      }
    }
  }

  private void readSizes(Token token) throws IOException {
    if (token == Token.EMPTY || token == Token.START) {
      if (scanner.is(COLUMN)) {
        sizes.readColumns(scanner);
      } else if (scanner.is(FORMAT)) {
        sizes.readUsual(scanner);
      }
    }
  }

  XlsxSizes sizes() {
    return sizes;
  }

  private void readRows(int sharedCount) throws IOException {
    while (true) {
      Token token = scanner.next();
      if (token == Token.END && scanner.depth() == 1) {
        return;
      }
      boolean tag = token == Token.START || token == Token.EMPTY;
      if (tag && scanner.is('c')) {
        readCell(token == Token.EMPTY, sharedCount);
      } else if (tag && scanner.is(ROW)) {
        position.startRow(scanner);
      }
    }
  }

  private void readCell(boolean empty, int sharedCount) throws IOException {
    Type type = Type.NUMBER;
    int style = 0;
    position.nextCell();
    while (scanner.nextAttribute()) {
      byte[] bytes = scanner.bytes();
      int start = scanner.valueStart();
      switch (scanner.attributeLetter()) {
        case 'r' -> position.goToAddress(scanner);
        case 's' -> style = CellReference.number(bytes, start, scanner.valueEnd());
        case 't' -> type = type(bytes, start, scanner.valueEnd());
        default -> {}
      }
    }
    position.check(scanner);
    if (!empty) {
      readContent(type, style, sharedCount);
    }
  }

  private Type type(byte[] bytes, int start, int end) throws UnusableFileException {
    int length = end - start;
    if (length == 1) {
      switch (bytes[start]) {
        case 's':
          return Type.SHARED;
        case 'n':
          return Type.NUMBER;
        case 'b':
          return Type.LOGICAL;
        case 'e':
          return Type.ERROR;
        case 'd':
          return Type.ISO_DATE;
        default:
      }
    } else if (length == 3 && bytes[start] == 's') {
      return Type.TEXT;
    } else if (length == 9 && bytes[start] == 'i') {
      return Type.INLINE;
    }
    throw scanner.damaged("how.cellType");
  }

  private void readContent(Type type, int style, int sharedCount) throws IOException {
    int outside = scanner.depth() - 1;
    boolean formula = false;
    boolean inValue = false;
    boolean hasValue = false;
    content.clear();
    while (true) {
      Token token = scanner.next();
      switch (token) {
        case START -> {
          if (scanner.is(IS)) {
            hasValue = true;
            XlsxStrings.readString(scanner, content);
          } else {
            inValue = scanner.is('v');
            hasValue |= inValue;
            formula |= scanner.is('f');
          }
        }
        case EMPTY -> formula |= scanner.is('f');
        case TEXT, CDATA -> {
          if (inValue) {
            XlsxStrings.append(scanner, token, content);
          }
        }
        case END -> {
          inValue = false;
          if (scanner.depth() == outside) {
            if (hasValue || formula) {
              put(type, style, formula, sharedCount);
            }
            return;
          }
        }
        case DONE -> throw scanner.damaged("how.cellOpen");
      }
    }
  }

  private void put(Type type, int style, boolean formula, int sharedCount) throws IOException {
    int row = position.row();
    int column = position.column();
    boolean text = type == Type.SHARED || type == Type.INLINE || type == Type.TEXT;
    if (text && style >= 0 && styles.inside().get(style)) {
      grid.keepInside(row, column);
    }
    switch (type) {
      case NUMBER -> putNumber(style, formula);
      case SHARED -> {
        int number = CellReference.number(content.bytes(), 0, content.length());
        if (number < 0 || number >= sharedCount) {
          if (content.length() > 0) {
            throw scanner.damaged("how.cellText");
          }
        } else {
          grid.putText(row, column, number, formula);
        }
      }
      case INLINE, TEXT -> {
        if (type == Type.TEXT) {
          content.unescape();
        }
        grid.putText(row, column, shared.intern(content.bytes(), 0, content.length()), formula);
      }
      case LOGICAL -> putLogical(formula);
      case ERROR -> grid.putError(row, column, formula);
      case ISO_DATE -> {
        double days = XlsxDates.fromIso(content.toString());
        if (Double.isNaN(days)) {
          grid.putText(row, column, content.toString(), formula);
        } else {
          grid.putDate(row, column, days, formula);
        }
      }
    }
  }

  private void putNumber(int style, boolean formula) throws IOException {
    if (content.length() == 0 && !formula) {
      return;
    }
    int row = position.row();
    int column = position.column();
    double number = content.number();
    if (Double.isNaN(number)) {
      grid.putError(row, column, formula);
    } else if (style >= 0 && styles.dates().get(style)) {
      grid.putDate(row, column, number + dateOffset, formula);
    } else {
      grid.putNumber(row, column, number, formula);
    }
  }

  private void putLogical(boolean formula) throws IOException {
    int row = position.row();
    int column = position.column();
    String word = content.toString().strip();
    if (word.equals("1") || word.equals("true")) {
      grid.putLogical(row, column, true, formula);
    } else if (word.equals("0") || word.equals("false")) {
      grid.putLogical(row, column, false, formula);
    } else {
      grid.putError(row, column, formula);
    }
  }

  private void readMerged() throws UnusableFileException {
    if (!scanner.attribute(REF)) {
      return;
    }
    byte[] bytes = scanner.bytes();
    int start = scanner.valueStart();
    int end = scanner.valueEnd();
    int colon = start;
    while (colon < end && bytes[colon] != ':') {
      colon++;
    }
    long first = CellReference.parse(bytes, start, colon);
    long last = colon < end ? CellReference.parse(bytes, colon + 1, end) : first;
    if (first < 0 || last < 0) {
      throw scanner.damaged("how.mergedAddress");
    }
    grid.merge(
        new Grid.Area(
            CellReference.row(first),
            CellReference.column(first),
            CellReference.row(last),
            CellReference.column(last)));
  }
}
