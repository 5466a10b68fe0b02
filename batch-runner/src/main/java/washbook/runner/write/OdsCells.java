package washbook.runner.write;

import washbook.runner.markup.ByteBuilder;
import washbook.runner.markup.Decimal;
import washbook.runner.sheet.CellContent;

/** Writes the content of single cells of an OpenDocument sheet. */
final class OdsCells {
  private OdsCells() {}

  /** The text that comes back from the file: what XML cannot hold is replaced. */
  static String clean(String text) {
    StringBuilder clean = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\r') {
        if (i + 1 == text.length() || text.charAt(i + 1) != '\n') {
          clean.append('\n');
        }
      } else if (c < ' ' && c != '\n' && c != '\t' || c == '\ufffe' || c == '\uffff') {
        clean.append('\ufffd');
      } else if (Character.isSurrogate(c)) {
        boolean pair =
            Character.isHighSurrogate(c)
                && i + 1 < text.length()
                && Character.isLowSurrogate(text.charAt(i + 1));
        clean.append(pair ? text.substring(i, i + 2) : "\ufffd");
        i += pair ? 1 : 0;
      } else {
        clean.append(c);
      }
    }
    return clean.toString();
  }

  /** Adds the attributes that say what the cell holds. */
  static void attributes(ByteBuilder to, CellContent content) {
    if (content.isBlank()) {
      return;
    }
    if (content.formula() != null) {
      to.raw(" table:formula=\"").text(OpenFormula.of(content.formula())).raw("\"");
    }
    if (!Double.isNaN(content.number())) {
      to.raw(" office:value-type=\"float\" office:value=\"");
      to.raw(Decimal.format(content.number())).raw("\"");
    } else {
      to.raw(" office:value-type=\"string\"");
      if (content.text() == null || content.text().isEmpty()) {
        to.raw(" office:string-value=\"\"");
      }
    }
  }

  /** Adds what the cell shows. */
  static void paragraphs(ByteBuilder to, CellContent content, int decimals) {
    if (!Double.isNaN(content.number())) {
      String shown =
          decimals < 0
              ? Decimal.format(content.number())
              : Decimal.shown(content.number(), decimals);
      to.raw("<text:p>").raw(shown).raw("</text:p>");
    } else if (content.text() != null && !content.text().isEmpty()) {
      for (String paragraph : clean(content.text()).split("\n", -1)) {
        to.raw("<text:p>");
        spaced(to, paragraph);
        to.raw("</text:p>");
      }
    }
  }

  /**
   * Writes spaces that some would swallow as elements (OpenDocument 1.3 part 3, 6.1.2). A tabulator
   * stays plain: LibreOffice drops the element for it in cells.
   */
  private static void spaced(ByteBuilder to, String text) {
    int at = 0;
    while (at < text.length()) {
      int end = at;
      while (end < text.length() && text.charAt(end) == ' ') {
        end++;
      }
      if (end > at) {
        boolean atEnd = at == 0 || end == text.length();
        int elements = atEnd ? end - at : end - at - 1;
        if (!atEnd) {
          to.raw(" ");
        }
        if (elements > 0) {
          to.raw("<text:s text:c=\"").number(elements).raw("\"/>");
        }
        at = end;
        continue;
      }
      while (end < text.length() && text.charAt(end) != ' ') {
        end++;
      }
      to.text(text.substring(at, end));
      at = end;
    }
  }
}
