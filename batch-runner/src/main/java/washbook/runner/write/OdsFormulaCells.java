package washbook.runner.write;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import washbook.runner.markup.XmlScanner;
import washbook.runner.markup.XmlScanner.Token;
import washbook.runner.markup.XmlSplicer;

/** Goes over the cells of an OpenDocument sheet that hold something (OpenDocument 1.3, 9.1.4). */
final class OdsFormulaCells {
  private static final byte[] TABLE = ascii("table");
  private static final byte[] ROW = ascii("table-row");
  private static final byte[] CELL = ascii("table-cell");
  private static final byte[] COVERED = ascii("covered-table-cell");
  private static final byte[] NAME = ascii("table:name");
  private static final byte[] ROWS_REPEATED = ascii("table:number-rows-repeated");
  private static final byte[] COLUMNS_REPEATED = ascii("table:number-columns-repeated");
  private static final Pattern RESULT =
      Pattern.compile(
          "\\s(?:office:(?:value-type|value|string-value|date-value|time-value|boolean-value"
              + "|currency)|calcext:value-type)=(?:\"[^\"]*\"|'[^']*')");
  private static final Pattern FORMULA = Pattern.compile("\\stable:formula=(?:\"[^\"]*\"|'[^']*')");

  /** Sees each cell with an attribute of its own. */
  interface Visitor {
    void visit(OdsFormulaCells cell) throws IOException;
  }

  private final XmlScanner scanner;
  private String sheet = "";
  private int row;
  private int rowsRepeated = 1;
  private int column;
  private int columnsRepeated = 1;
  private boolean empty;
  private String startTag = "";
  private String content = "";

  OdsFormulaCells(XmlScanner scanner) {
    this.scanner = scanner;
  }

  FormulaCell.Place place() {
    return new FormulaCell.Place(sheet, row, column);
  }

  int columnsRepeated() {
    return columnsRepeated;
  }

  int rowsRepeated() {
    return rowsRepeated;
  }

  /** The value of an attribute by its usual name; null when there is none. */
  String attribute(String name) {
    Matcher found =
        Pattern.compile("\\s" + Pattern.quote(name) + "=(?:\"([^\"]*)\"|'([^']*)')")
            .matcher(startTag);
    if (!found.find()) {
      return null;
    }
    String value = found.group(1) == null ? found.group(2) : found.group(1);
    return value
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&quot;", "\"")
        .replace("&apos;", "'")
        .replace("&amp;", "&");
  }

  /** The markup inside the cell. */
  String content() {
    return content;
  }

  void visitAll(Visitor visitor) throws IOException {
    for (Token token = scanner.next(); token != Token.DONE; token = scanner.next()) {
      if (token != Token.START && token != Token.EMPTY) {
        continue;
      }
      if (scanner.is(TABLE)) {
        sheet = scanner.attribute(NAME) ? scanner.value() : "";
        row = 0;
        rowsRepeated = 0;
      } else if (scanner.is(ROW)) {
        row += rowsRepeated;
        rowsRepeated = scanner.attribute(ROWS_REPEATED) ? Integer.parseInt(scanner.value()) : 1;
        column = 0;
        columnsRepeated = 0;
      } else if (scanner.is(CELL) || scanner.is(COVERED)) {
        column += columnsRepeated;
        columnsRepeated =
            scanner.attribute(COLUMNS_REPEATED) ? Integer.parseInt(scanner.value()) : 1;
        readCell(token, visitor);
      }
    }
  }

  private void readCell(Token token, Visitor visitor) throws IOException {
    XmlSplicer splicer = scanner instanceof XmlSplicer s ? s : null;
    if (splicer != null) {
      splicer.holdFrom(splicer.tokenStart());
    }
    startTag = token();
    empty = token == Token.EMPTY;
    StringBuilder inside = new StringBuilder();
    if (!empty) {
      int outside = scanner.depth() - 1;
      for (Token part = scanner.next();
          part != Token.END || scanner.depth() > outside;
          part = scanner.next()) {
        if (part == Token.DONE) {
          throw scanner.damaged("a cell is not closed");
        }
        inside.append(token());
      }
    }
    content = inside.toString();
    visitor.visit(this);
    if (splicer != null) {
      splicer.release();
    }
  }

  private String token() {
    return new String(
        scanner.bytes(),
        scanner.tokenStart(),
        scanner.tokenEnd() - scanner.tokenStart(),
        StandardCharsets.UTF_8);
  }

  /** Puts another formula in; the stored result stays. */
  void replaceFormula(String formula) throws IOException {
    write(withFormula(startTag, formula), content);
  }

  /** Puts another formula in with its result. */
  void replace(String formula, String resultAttributes, String shown) throws IOException {
    String tag = RESULT.matcher(withFormula(startTag, formula)).replaceAll("");
    int end = tag.length() - (empty ? 2 : 1);
    boolean plain =
        content.isEmpty()
            || content.matches("(?s)\\s*<text:p[ >].*")
                && !content.contains("office:annotation")
                && !content.contains("<draw:");
    boolean sameKind =
        "float".equals(attribute("office:value-type"))
            && shown != null
            && resultAttributes.contains("\"float\"")
            && !content.isEmpty();
    String inside = content;
    if (plain && !sameKind) {
      inside = shown == null ? "" : "<text:p>" + shown + "</text:p>";
    }
    write(tag.substring(0, end) + " " + resultAttributes + tag.substring(end), inside);
  }

  private static String withFormula(String tag, String formula) {
    String escaped =
        formula
            .replace("&", "&amp;")
            .replace("<", "&lt;")
            .replace(">", "&gt;")
            .replace("\"", "&quot;");
    return FORMULA
        .matcher(tag)
        .replaceFirst(Matcher.quoteReplacement(" table:formula=\"" + escaped + "\""));
  }

  private void write(String tag, String inside) throws IOException {
    XmlSplicer splicer = (XmlSplicer) scanner;
    String name = tag.substring(1).split("[\\s/>]", 2)[0];
    String cell =
        inside.isEmpty()
            ? empty ? tag : tag + "</" + name + ">"
            : (empty ? tag.substring(0, tag.length() - 2) + ">" : tag) + inside + "</" + name + ">";
    splicer.replace(splicer.held(), splicer.tokenEnd(), cell.getBytes(StandardCharsets.UTF_8));
  }
}
