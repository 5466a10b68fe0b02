package washbook.runner.extent;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import washbook.runner.archive.PartOutput;
import washbook.runner.markup.XmlScanner.Token;
import washbook.runner.markup.XmlSplicer;

/**
 * The names of a workbook that say what is printed and what is filtered (ECMA-376-1:2016, 18.2.5
 * definedName). One that names several areas stays as it is.
 */
public final class XlsxNames {
  private static final byte[] DEFINED_NAME = ascii("definedName");
  private static final byte[] NAME = ascii("name");
  private static final String PRINTED = "_xlnm.Print_Area";
  private static final String FILTERED = "_xlnm._FilterDatabase";

  private XlsxNames() {}

  /** Writes the part that lists the sheets, given what comes into each sheet. */
  public static void patch(
      InputStream old, String partName, PartOutput to, Map<String, NewColumns> columns)
      throws IOException {
    XmlSplicer splicer = new XmlSplicer(old, partName, to);
    String name = "";
    for (Token token = splicer.next(); token != Token.DONE; token = splicer.next()) {
      if (token == Token.TEXT && !name.isEmpty()) {
        widen(splicer, name, columns);
      }
      boolean named = token == Token.START && splicer.is(DEFINED_NAME) && splicer.attribute(NAME);
      name = named ? splicer.value() : "";
    }
    splicer.finish();
  }

  private static void widen(XmlSplicer splicer, String name, Map<String, NewColumns> columns)
      throws IOException {
    int start = splicer.tokenStart();
    String text =
        new String(splicer.bytes(), start, splicer.tokenEnd() - start, StandardCharsets.UTF_8);
    int sheetEnd = text.lastIndexOf('!');
    CellRange range = CellRange.of(text.substring(sheetEnd + 1));
    boolean isOurs = name.equals(PRINTED) || name.equals(FILTERED);
    if (!isOurs || sheetEnd < 0 || range == null) {
      return;
    }
    NewColumns beside = columns.get(sheet(text.substring(0, sheetEnd)));
    if (beside != null) {
      int end =
          name.equals(PRINTED) ? beside.endOfPage(range.area()) : beside.endOfFilter(range.area());
      byte[] now =
          (text.substring(0, sheetEnd + 1) + range.upTo(end)).getBytes(StandardCharsets.UTF_8);
      splicer.replace(start, splicer.tokenEnd(), now);
    }
  }

  private static String sheet(String markup) {
    String name =
        markup
            .replace("&apos;", "'")
            .replace("&lt;", "<")
            .replace("&gt;", ">")
            .replace("&quot;", "\"")
            .replace("&amp;", "&");
    boolean quoted = name.length() > 1 && name.startsWith("'") && name.endsWith("'");
    return quoted ? name.substring(1, name.length() - 1).replace("''", "'") : name;
  }
}
