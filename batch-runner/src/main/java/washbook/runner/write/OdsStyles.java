package washbook.runner.write;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import washbook.log.sheet.ColumnPatch;
import washbook.runner.markup.ByteBuilder;
import washbook.runner.markup.XmlScanner.Token;
import washbook.runner.markup.XmlSplicer;

/** The styles that patched columns need, each added once to the automatic styles. */
final class OdsStyles {
  static final byte[] AUTOMATIC = ascii("automatic-styles");
  private static final byte[] NAME = ascii("style:name");

  /** Millimetres for a letter of a header, and for the narrowest column. */
  private static final int LETTER = 2;

  private static final int NARROWEST = 23;

  /** Markup by the name of the style. */
  private final Map<String, String> missing = new TreeMap<>();

  OdsStyles(Map<String, ? extends Iterable<ColumnPatch>> patches) {
    for (Iterable<ColumnPatch> columns : patches.values()) {
      for (ColumnPatch column : columns) {
        if (column.decimals() >= 0) {
          missing.put(name(column.decimals()), numberStyle(column.decimals()));
        }
        missing.put(widthName(column.header()), widthStyle(column.header()));
      }
    }
  }

  /** The style of a number with so many digits behind the point. */
  static String name(int decimals) {
    return "washbook-" + decimals;
  }

  /** The style of a column that is wide enough for its header. */
  static String widthName(String header) {
    return "washbook-width-" + width(header);
  }

  private static int width(String header) {
    return Math.max(NARROWEST, LETTER * header.length());
  }

  private static String widthStyle(String header) {
    return "<style:style style:name=\""
        + widthName(header)
        + "\" style:family=\"table-column\"><style:table-column-properties style:column-width=\""
        + width(header)
        + "mm\"/></style:style>";
  }

  private static String numberStyle(int decimals) {
    String number = "washbook-number-" + decimals;
    return "<number:number-style style:name=\""
        + number
        + "\"><number:number number:decimal-places=\""
        + decimals
        + "\" number:min-decimal-places=\""
        + decimals
        + "\" number:min-integer-digits=\"1\"/></number:number-style>"
        + "<style:style style:name=\""
        + name(decimals)
        + "\" style:family=\"table-cell\" style:parent-style-name=\"Default\""
        + " style:data-style-name=\""
        + number
        + "\"/>";
  }

  /** Adds what is missing; the present token begins the automatic styles. */
  void patch(XmlSplicer splicer, boolean empty) throws IOException {
    if (empty) {
      byte[] added = markup();
      if (added.length > 0) {
        ByteBuilder whole = new ByteBuilder();
        whole.raw(">").raw(added, 0, added.length).raw("</office:automatic-styles>");
        int end = splicer.tokenEnd();
        splicer.replace(end - 2, end, whole.bytes(), whole.length());
      }
      return;
    }
    Set<String> names = new HashSet<>();
    int outside = splicer.depth() - 1;
    while (true) {
      Token token = splicer.next();
      if (token == Token.DONE) {
        throw splicer.damaged("the styles are not closed");
      }
      if (token == Token.END && splicer.depth() == outside) {
        break;
      }
      if ((token == Token.START || token == Token.EMPTY) && splicer.attribute(NAME)) {
        names.add(splicer.value());
      }
    }
    missing.keySet().removeAll(names);
    byte[] added = markup();
    splicer.insert(splicer.tokenStart(), added, added.length);
  }

  /** Adds automatic styles before the present token of a document that has none. */
  void insertAll(XmlSplicer splicer) throws IOException {
    byte[] added = markup();
    if (added.length > 0) {
      ByteBuilder whole = new ByteBuilder();
      whole.raw("<office:automatic-styles>").raw(added, 0, added.length);
      whole.raw("</office:automatic-styles>");
      splicer.insert(splicer.tokenStart(), whole.bytes(), whole.length());
    }
  }

  private byte[] markup() {
    return ascii(String.join("", missing.values()));
  }
}
