package washbook.runner.write;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import washbook.functions.Answer;
import washbook.functions.Numbers;
import washbook.functions.XmlText;
import washbook.runner.markup.XmlScanner;
import washbook.runner.markup.XmlScanner.Token;
import washbook.runner.markup.XmlSplicer;
import washbook.runner.read.OdsCell;
import washbook.runner.read.OdsReader;

/** Goes over the cells of an OpenDocument sheet that hold something (OpenDocument 1.3, 9.1.4). */
final class OdsFormulaCells implements ReplaceableFormula {
  /** The formula language of OpenDocument 1.2 and later. */
  static final String PREFIX = "of:=";

  private static final byte[] TABLE = ascii("table");
  private static final byte[] ROW = ascii("table-row");
  private static final byte[] CELL = ascii("table-cell");
  private static final byte[] COVERED = ascii("covered-table-cell");
  private static final byte[] NAME = ascii("table:name");
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

  /** What may be asked for, by its name. */
  private static final Map<String, byte[]> ATTRIBUTES =
      Stream.of(
              "table:formula",
              "table:number-matrix-columns-spanned",
              "office:value-type",
              "office:value",
              "office:string-value",
              "calcext:value-type")
          .collect(Collectors.toMap(name -> name, XmlScanner::ascii));

  private final XmlScanner scanner;
  private final Map<String, String> attributes = new HashMap<>();
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
    return attributes.get(name);
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
        rowsRepeated = OdsReader.rowsRepeated(scanner);
        column = 0;
        columnsRepeated = 0;
      } else if (scanner.is(CELL) || scanner.is(COVERED)) {
        column += columnsRepeated;
        columnsRepeated = scanner.attribute(COLUMNS_REPEATED) ? OdsCell.count(scanner) : 1;
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
    attributes.clear();
    for (Map.Entry<String, byte[]> one : ATTRIBUTES.entrySet()) {
      if (scanner.attribute(one.getValue())) {
        attributes.put(one.getKey(), scanner.value());
      }
    }
    empty = token == Token.EMPTY;
    StringBuilder inside = new StringBuilder();
    if (!empty) {
      int outside = scanner.depth() - 1;
      for (Token part = scanner.next();
          part != Token.END || scanner.depth() > outside;
          part = scanner.next()) {
        if (part == Token.DONE) {
          throw scanner.damaged("how.cellOpen");
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

  /** Puts another formula in; the stored result stays where no other is told. */
  @Override
  public void replace(String text, Optional<Answer> answer) throws IOException {
    String formula = PREFIX + text;
    if (answer.isEmpty()) {
      write(withFormula(startTag, formula), content);
    } else if (answer.get() instanceof Answer.Number number) {
      String shown = Numbers.show(number.value());
      replace(formula, "office:value-type=\"float\" office:value=\"" + shown + "\"", shown);
    } else if (answer.get() instanceof Answer.Text) {
      replace(formula, "office:value-type=\"string\" office:string-value=\"\"", null);
    } else {
      replace(
          formula,
          "office:value-type=\"string\" office:string-value=\"\" calcext:value-type=\"error\"",
          "#N/A");
    }
  }

  /** Puts another formula in with its result. */
  private void replace(String formula, String resultAttributes, String shown) throws IOException {
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
    return FORMULA
        .matcher(tag)
        .replaceFirst(
            Matcher.quoteReplacement(" table:formula=\"" + XmlText.escaped(formula) + "\""));
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
