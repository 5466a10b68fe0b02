package washbook.runner.write;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import washbook.functions.log.ColumnPatch;
import washbook.runner.markup.ByteBuilder;
import washbook.runner.markup.XmlScanner.Token;
import washbook.runner.markup.XmlSplicer;

/** The cell styles that patched columns need, each added once to the automatic styles. */
final class OdsStyles {
  static final byte[] AUTOMATIC = ascii("automatic-styles");
  private static final byte[] NAME = ascii("style:name");

  private final Set<Integer> missing = new TreeSet<>();

  OdsStyles(Map<String, ? extends Iterable<ColumnPatch>> patches) {
    for (Iterable<ColumnPatch> columns : patches.values()) {
      for (ColumnPatch column : columns) {
        if (column.decimals() >= 0) {
          missing.add(column.decimals());
        }
      }
    }
  }

  /** The style of a number with so many digits behind the point. */
  static String name(int decimals) {
    return "washbook-" + decimals;
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
    missing.removeIf(decimals -> names.contains(name(decimals)));
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
    StringBuilder markup = new StringBuilder();
    for (int decimals : missing) {
      String number = "washbook-number-" + decimals;
      markup.append("<number:number-style style:name=\"").append(number);
      markup.append("\"><number:number number:decimal-places=\"").append(decimals);
      markup.append("\" number:min-decimal-places=\"").append(decimals);
      markup.append("\" number:min-integer-digits=\"1\"/></number:number-style>");
      markup.append("<style:style style:name=\"").append(name(decimals));
      markup.append("\" style:family=\"table-cell\" style:parent-style-name=\"Default\"");
      markup.append(" style:data-style-name=\"").append(number).append("\"/>");
    }
    return ascii(markup.toString());
  }
}
