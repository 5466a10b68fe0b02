package washbook.runner.write;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import washbook.functions.Answer;
import washbook.functions.Numbers;
import washbook.functions.XmlText;
import washbook.runner.markup.TextBuffer;
import washbook.runner.markup.XmlScanner;
import washbook.runner.markup.XmlScanner.Token;
import washbook.runner.markup.XmlSplicer;
import washbook.runner.read.XlsxPosition;
import washbook.runner.read.XlsxStrings;

/** Goes over the formula cells of a sheet part (ECMA-376-1:2016, 18.3.1.4 c and 18.3.1.40 f). */
final class XlsxFormulaCells implements ReplaceableFormula {
  private static final byte[] ROW = ascii("row");
  private static final byte[] T = ascii("t");
  private static final byte[] SI = ascii("si");

  /** Sees each formula cell; one whose place is asked for may replace it. */
  interface Visitor {
    void visit(XlsxFormulaCells cell) throws IOException;
  }

  private final XmlScanner scanner;
  private final XlsxPosition position = new XlsxPosition();
  private String prefix = "";
  private String startTag = "";
  private boolean hasFormula;
  private String kind = "";
  private String shared = "";
  private String openingTag = "";
  private final TextBuffer formula = new TextBuffer();
  private String rest = "";

  XlsxFormulaCells(XmlScanner scanner) {
    this.scanner = scanner;
  }

  int row() {
    return position.row();
  }

  int column() {
    return position.column();
  }

  /** "" for a plain formula, else "shared", "array" or "dataTable". */
  String kind() {
    return kind;
  }

  /** Number of the shared formula. */
  String shared() {
    return shared;
  }

  /** The formula's text; "" for a follower of a shared one. */
  String formula() {
    return formula.toString();
  }

  void visitAll(Visitor visitor) throws IOException {
    for (Token token = scanner.next(); token != Token.DONE; token = scanner.next()) {
      if (token == Token.START || token == Token.EMPTY) {
        if (scanner.is(ROW)) {
          position.startRow(scanner);
        } else if (scanner.is('c')) {
          position.startCell(scanner);
          if (token == Token.START) {
            hold();
            readCell();
            if (hasFormula) {
              visitor.visit(this);
            }
            release();
          }
        }
      }
    }
  }

  private void hold() {
    if (scanner instanceof XmlSplicer splicer) {
      splicer.holdFrom(splicer.tokenStart());
    }
  }

  private void release() {
    if (scanner instanceof XmlSplicer splicer) {
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

  /** Reads up to the end tag; keeps what is no formula as it stands. */
  private void readCell() throws IOException {
    startTag = token();
    prefix = scanner.prefix();
    hasFormula = false;
    kind = "";
    shared = "";
    formula.clear();
    StringBuilder others = new StringBuilder();
    int outside = scanner.depth() - 1;
    boolean inFormula = false;
    while (true) {
      Token token = scanner.next();
      if (token == Token.DONE) {
        throw scanner.damaged("how.cellOpen");
      }
      if (token == Token.END && scanner.depth() == outside) {
        rest = others.toString();
        return;
      }
      boolean formulaTag = token != Token.TEXT && token != Token.CDATA && scanner.is('f');
      if (formulaTag && token != Token.END) {
        hasFormula = true;
        kind = scanner.attribute(T) && !scanner.value().equals("normal") ? scanner.value() : "";
        shared = scanner.attribute(SI) ? scanner.value() : "";
        inFormula = token == Token.START;
        openingTag = kind.equals("array") && inFormula ? token() : "<" + prefix + "f>";
      } else if (formulaTag) {
        inFormula = false;
      } else if (inFormula) {
        XlsxStrings.append(scanner, token, formula);
      } else {
        others.append(token());
      }
    }
  }

  /** Puts another formula in; the stored result stays where no other is told. */
  @Override
  public void replace(String text, Optional<Answer> answer) throws IOException {
    if (answer.isEmpty()) {
      write(startTag, text, rest);
    } else if (answer.get() instanceof Answer.Number number) {
      replace(text, "n", Numbers.show(number.value()));
    } else if (answer.get() instanceof Answer.Text) {
      replace(text, "str", "");
    } else {
      replace(text, "e", "#N/A");
    }
  }

  /** Puts another formula in with its result: {@code type} is n, str or e. */
  private void replace(String text, String type, String value) throws IOException {
    String tag = startTag.replaceAll("\\s+t\\s*=\\s*(\"[^\"]*\"|'[^']*')", "");
    if (!type.equals("n")) {
      tag = tag.substring(0, tag.length() - 1) + " t=\"" + type + "\">";
    }
    String open = "<" + prefix + "v>";
    String close = "</" + prefix + "v>";
    String extras =
        rest.replaceAll("(?s)<" + prefix + "(v|is)(>.*?</" + prefix + "\\1>|\\s*/>)", "");
    write(tag, text, open + value + close + extras);
  }

  private void write(String tag, String text, String content) throws IOException {
    XmlSplicer splicer = (XmlSplicer) scanner;
    String cell =
        tag
            + (openingTag + XmlText.escaped(text) + "</" + prefix + "f>")
            + content
            + ("</" + prefix + "c>");
    splicer.replace(splicer.held(), splicer.tokenEnd(), cell.getBytes(StandardCharsets.UTF_8));
  }
}
