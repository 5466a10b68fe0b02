package washbook.runner.write;

import java.util.Locale;
import washbook.log.sheet.CellAddress;
import washbook.runner.file.UnusableFileException;
import washbook.runner.markup.ByteBuilder;
import washbook.runner.markup.Decimal;
import washbook.runner.sheet.CellContent;

/** Writes single cells of a sheet part (ECMA-376-1:2016, 18.3.1.4 c). */
final class XlsxCells {
  /** Characters that a cell can hold (a limit of the spreadsheet programs). */
  private static final int LONGEST_TEXT = 32_767;

  private XlsxCells() {}

  /** Adds the cell's element; {@code style} 0 is left out. */
  static void write(
      ByteBuilder to, String prefix, String letters, int row, int style, CellContent content)
      throws UnusableFileException {
    to.raw("<").raw(prefix).raw("c r=\"").raw(letters).number(row + 1).raw("\"");
    if (style > 0) {
      to.raw(" s=\"").number(style).raw("\"");
    }
    if (content.isBlank()) {
      to.raw("/>");
      return;
    }
    if (content.formula() == null && content.text() != null) {
      to.raw(" t=\"inlineStr\"><").raw(prefix).raw("is>");
      text(to, prefix, "t", checked(content.text(), letters, row));
      to.raw("</").raw(prefix).raw("is></").raw(prefix).raw("c>");
      return;
    }
    boolean textResult = content.formula() != null && Double.isNaN(content.number());
    to.raw(textResult ? " t=\"str\">" : ">");
    if (content.formula() != null) {
      to.raw("<").raw(prefix).raw("f>").text(content.formula());
      to.raw("</").raw(prefix).raw("f>");
    }
    if (textResult) {
      String text = content.text() == null ? "" : content.text();
      text(to, prefix, "v", checked(text, letters, row));
    } else {
      to.raw("<").raw(prefix).raw("v>").raw(Decimal.format(content.number()));
      to.raw("</").raw(prefix).raw("v>");
    }
    to.raw("</").raw(prefix).raw("c>");
  }

  private static String checked(String text, String letters, int row) throws UnusableFileException {
    if (text.length() > LONGEST_TEXT) {
      throw UnusableFileException.of("text.long", letters + (row + 1));
    }
    return text;
  }

  private static void text(ByteBuilder to, String prefix, String element, String text) {
    boolean keepSpace = !text.equals(text.strip());
    to.raw("<").raw(prefix).raw(element).raw(keepSpace ? " xml:space=\"preserve\">" : ">");
    to.text(escape(text)).raw("</").raw(prefix).raw(element).raw(">");
  }

  /** Writes what XML cannot hold as {@code _xHHHH_} (ECMA-376-1:2016, 22.9.2.19 ST_Xstring). */
  static String escape(String text) {
    StringBuilder escaped = null;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean illegal = c < 32 && c != '\t' && c != '\n' || c == '\uFFFE' || c == '\uFFFF';
      boolean looksEscaped = c == '_' && text.substring(i).matches("(?s)_x[0-9A-Fa-f]{4}_.*");
      if (escaped == null && (illegal || looksEscaped)) {
        escaped = new StringBuilder(text.substring(0, i));
      }
      if (escaped != null) {
        if (illegal || looksEscaped) {
          escaped.append(String.format(Locale.ROOT, "_x%04X_", (int) c));
        } else {
          escaped.append(c);
        }
      }
    }
    return escaped == null ? text : escaped.toString();
  }

  static String letters(int column) {
    return CellAddress.letters(column);
  }
}
