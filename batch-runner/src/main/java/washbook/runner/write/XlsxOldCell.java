package washbook.runner.write;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import washbook.runner.markup.TextBuffer;
import washbook.runner.markup.XmlScanner;
import washbook.runner.markup.XmlScanner.Token;
import washbook.runner.read.XlsxStrings;
import washbook.runner.sheet.CellContent;
import washbook.runner.sheet.CellReference;
import washbook.runner.sheet.Texts;

/** What a cell of a sheet part holds before it is patched. */
final class XlsxOldCell {
  private static final byte[] IS = ascii("is");
  private static final byte[] T = ascii("t");
  private static final byte[] REF = ascii("ref");

  /** Gives the shared strings when one is needed. */
  interface SharedStrings {
    Texts get() throws IOException;
  }

  private final SharedStrings sharedStrings;
  private final TextBuffer value = new TextBuffer();
  private final TextBuffer formulaText = new TextBuffer();
  private int style;
  private String type = "n";
  private boolean formula;
  private String formulaKind = "";
  private String formulaArea = "";
  private boolean inlineText;

  XlsxOldCell(SharedStrings sharedStrings) {
    this.sharedStrings = sharedStrings;
  }

  /** Reads the cell whose tag is the current token, up to its end tag. */
  void read(XmlScanner scanner, boolean empty) throws IOException {
    style = 0;
    type = "n";
    formula = false;
    formulaKind = "";
    formulaArea = "";
    inlineText = false;
    value.clear();
    formulaText.clear();
    while (scanner.nextAttribute()) {
      switch (scanner.attributeLetter()) {
        case 's' ->
            style =
                Math.max(
                    0,
                    CellReference.number(
                        scanner.bytes(), scanner.valueStart(), scanner.valueEnd()));
        case 't' -> type = scanner.value();
        default -> {}
      }
    }
    if (!empty) {
      readContent(scanner);
    }
  }

  private void readContent(XmlScanner scanner) throws IOException {
    int outside = scanner.depth() - 1;
    TextBuffer target = null;
    while (true) {
      Token token = scanner.next();
      switch (token) {
        case START -> {
          target = null;
          if (scanner.is(IS)) {
            inlineText = true;
            XlsxStrings.readString(scanner, value);
          } else if (scanner.is('v')) {
            target = value;
          } else if (scanner.is('f')) {
            readFormulaTag(scanner);
            target = formulaText;
          }
        }
        case EMPTY -> {
          if (scanner.is('f')) {
            readFormulaTag(scanner);
          }
        }
        case TEXT, CDATA -> {
          if (target != null) {
            XlsxStrings.append(scanner, token, target);
          }
        }
        case END -> {
          target = null;
          if (scanner.depth() == outside) {
            return;
          }
        }
        case DONE -> throw scanner.damaged("how.cellOpen");
      }
    }
  }

  private void readFormulaTag(XmlScanner scanner) throws IOException {
    formula = true;
    formulaKind = scanner.attribute(T) ? scanner.value() : "";
    formulaArea = scanner.attribute(REF) ? scanner.value() : "";
  }

  int style() {
    return style;
  }

  boolean isFormula() {
    return formula;
  }

  /** "" for a plain formula, else "shared", "array" or "dataTable". */
  String formulaKind() {
    return formulaKind.equals("normal") ? "" : formulaKind;
  }

  /** The cells that a shared formula of this cell serves; "" when it serves none. */
  String formulaArea() {
    return formulaArea;
  }

  /** Whether the cell shows nothing and computes nothing. */
  boolean isBlank() throws IOException {
    return !formula && (value.length() == 0 || isText() && text().isEmpty());
  }

  private boolean isText() {
    return inlineText || type.equals("s") || type.equals("str") || type.equals("inlineStr");
  }

  /** The cell's text, or null when it holds no text. */
  String text() throws IOException {
    if (!isText()) {
      return null;
    }
    if (!type.equals("s")) {
      if (!type.equals("str")) {
        return value.toString();
      }
      TextBuffer copy = new TextBuffer();
      copy.appendPlain(value.bytes(), 0, value.length());
      copy.unescape();
      return copy.toString();
    }
    int number = CellReference.number(value.bytes(), 0, value.length());
    Texts texts = sharedStrings.get();
    return number >= 0 && number < texts.size() ? texts.get(number) : null;
  }

  /** Whether the cell already holds just this, whatever it looks like in the file. */
  boolean holds(CellContent content) throws IOException {
    if (content.isBlank()) {
      return isBlank();
    }
    if (formula != (content.formula() != null)) {
      return false;
    }
    if (formula
        && (!formulaKind().isEmpty() || !formulaText.toString().equals(content.formula()))) {
      return false;
    }
    if (!Double.isNaN(content.number())) {
      return type.equals("n") && value.number() == content.number();
    }
    return (content.text() == null ? "" : content.text()).equals(text());
  }
}
