package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;
import washbook.runner.OdsSamples;
import washbook.runner.corpus.ZipParts;

/** The columns that come into an OpenDocument log are as readable as {@link ContrastTest} wants. */
class OdsContrastTest {
  private static final double LEAST = 4.5;
  private static final int FARTHEST = 200;
  private static final Path SHEETS = Path.of("../sample-sheets");

  @TempDir private Path folder;

  /** What a cell shows, by its address, and the colours of its letters and its ground. */
  private record Shown(String text, String letters, String ground) {}

  @Test
  void theColumnsOfAFilledLogAreAsReadableAsItsOwn() throws Exception {
    int cells = 0;
    for (Path from :
        List.of(SHEETS.resolve("samples"), SHEETS.resolve("src/test/resources/corpus"))) {
      try (var logs = Files.newDirectoryStream(from, "*.ods")) {
        for (Path log : logs) {
          cells += filled(log);
        }
      }
    }
    assertTrue(cells > 300, cells + " cells");
  }

  /** Light letters on dark grounds, which differ between head and rows. */
  @Test
  void theColumnsOfADarkLogAreReadable() throws Exception {
    String styles =
        style("head", "#ffffff", "#1f3a4d")
            + style("even", "#f4efe6", "#23201c")
            + style("odd", "#ffe9a8", "#3b352d");
    StringBuilder rows = new StringBuilder(row("head", text("Day"), text("SG"), text("Temp C")));
    String[][] readings = {{"0", "1.085"}, {"3", "1.05"}, {"6", "1.02"}, {"9", "1.004"}};
    for (int i = 0; i < readings.length; i++) {
      rows.append(
          row(
              i % 2 == 0 ? "odd" : "even",
              number(readings[i][0]),
              number(readings[i][1]),
              number("20")));
    }
    Path log = folder.resolve("dark.ods");
    Path plain = OdsSamples.pack(log, content(styles, rows.toString()));
    assertEquals(20, filled(plain));
  }

  private static String content(String styles, String rows) {
    return OdsSamples.content(
            "<office:automatic-styles>" + styles + "</office:automatic-styles>",
            "<table:table table:name=\"Log\"><table:table-column"
                + " table:number-columns-repeated=\"3\"/>"
                + rows
                + "</table:table>")
        .replaceFirst(
            "<office:document-content",
            "<office:document-content"
                + " xmlns:fo=\"urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0\"");
  }

  private static String style(String name, String letters, String ground) {
    return "<style:style style:name=\""
        + name
        + "\" style:family=\"table-cell\"><style:table-cell-properties fo:background-color=\""
        + ground
        + "\"/><style:text-properties fo:color=\""
        + letters
        + "\"/></style:style>";
  }

  private static String row(String style, String... cells) {
    String all = String.join("", cells).replace("<table:table-cell", "<table:table-cell@");
    String name = " table:style-name=\"" + style + "\"";
    return "<table:table-row>" + all.replace("@", name) + "</table:table-row>";
  }

  private static String text(String text) {
    return "<table:table-cell office:value-type=\"string\"><text:p>"
        + text
        + "</text:p></table:table-cell>";
  }

  private static String number(String number) {
    return "<table:table-cell office:value-type=\"float\" office:value=\"" + number + "\"/>";
  }

  /** The number of cells that were put in, each of which is readable. */
  private int filled(Path log) throws Exception {
    Path done = folder.resolve("looks").resolve(log.getFileName());
    Cli.run("fill", log.toString(), "--out", done.getParent().toString());
    if (!Files.exists(done)) {
      return 0;
    }
    Map<String, Shown> before = cells(log);
    int count = 0;
    for (Map.Entry<String, Shown> one : cells(done).entrySet()) {
      Shown cell = one.getValue();
      if (!before.containsKey(one.getKey())) {
        double ratio = ContrastTest.ratio(cell.letters, cell.ground);
        assertTrue(ratio >= LEAST, log + " " + one + " is " + ratio);
        count++;
      }
    }
    return count;
  }

  private static Map<String, Shown> cells(Path file) throws Exception {
    Map<String, Element> styles = new HashMap<>();
    for (String part : new String[] {"styles.xml", "content.xml"}) {
      Document document = part(file, part);
      if (document != null) {
        for (Element style : all(document.getDocumentElement(), "style:style")) {
          if (style.getAttribute("style:family").equals("table-cell")) {
            styles.put(style.getAttribute("style:name"), style);
          }
        }
      }
    }
    Map<String, Shown> cells = new TreeMap<>();
    for (Element table : all(part(file, "content.xml").getDocumentElement(), "table:table")) {
      String[] columns = columns(table);
      int row = 0;
      for (Element line : all(table, "table:table-row")) {
        int repeated = count(line, "table:number-rows-repeated");
        for (int copy = 0; copy < Math.min(repeated, FARTHEST); copy++) {
          row(table, line, row + copy, columns, styles, cells);
        }
        row += repeated;
      }
    }
    return cells;
  }

  private static void row(
      Element table,
      Element line,
      int row,
      String[] columns,
      Map<String, Element> styles,
      Map<String, Shown> cells) {
    int column = 0;
    for (Node node = line.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element cell && cell.getTagName().endsWith("table-cell")) {
        int repeated = count(cell, "table:number-columns-repeated");
        boolean holds = !cell.getAttribute("office:value-type").isEmpty();
        for (int i = column; holds && i < Math.min(column + repeated, FARTHEST); i++) {
          String style = cell.getAttribute("table:style-name");
          style = style.isEmpty() ? line.getAttribute("table:default-cell-style-name") : style;
          style = style.isEmpty() && columns[i] != null ? columns[i] : style;
          cells.put(
              table.getAttribute("table:name") + " " + row + " " + i,
              new Shown(
                  cell.getTextContent(),
                  colour(styles, style, "fo:color", "000000"),
                  colour(styles, style, "fo:background-color", "FFFFFF")));
        }
        column += repeated;
      }
    }
  }

  /** The styles of cells that have none, by column. */
  private static String[] columns(Element table) {
    String[] columns = new String[FARTHEST];
    int column = 0;
    for (Element one : all(table, "table:table-column")) {
      int end = column + count(one, "table:number-columns-repeated");
      for (; column < Math.min(end, FARTHEST); column++) {
        columns[column] = one.getAttribute("table:default-cell-style-name");
      }
      column = end;
    }
    return columns;
  }

  private static String colour(
      Map<String, Element> styles, String name, String attribute, String otherwise) {
    Element style = styles.get(name.isEmpty() ? "Default" : name);
    while (style != null) {
      for (String properties :
          new String[] {"style:text-properties", "style:table-cell-properties"}) {
        for (Element one : all(style, properties)) {
          Matcher colour = Pattern.compile("#(\\w{6})").matcher(one.getAttribute(attribute));
          if (colour.matches()) {
            return colour.group(1).toUpperCase(Locale.ROOT);
          }
          if (!one.getAttribute(attribute).isEmpty()) {
            return otherwise;
          }
        }
      }
      style = styles.get(style.getAttribute("style:parent-style-name"));
    }
    return otherwise;
  }

  private static int count(Element element, String attribute) {
    String count = element.getAttribute(attribute);
    return count.isEmpty() ? 1 : Integer.parseInt(count);
  }

  private static List<Element> all(Element from, String name) {
    var found = from.getElementsByTagName(name);
    return IntStream.range(0, found.getLength()).mapToObj(i -> (Element) found.item(i)).toList();
  }

  /** Null where a file does not have it. */
  private static Document part(Path file, String name)
      throws IOException, ParserConfigurationException, SAXException {
    byte[] bytes;
    try {
      bytes = ZipParts.content(file, name);
    } catch (IOException | RuntimeException none) {
      return null;
    }
    if (bytes == null || bytes.length == 0) {
      return null;
    }
    String text = new String(bytes, StandardCharsets.UTF_8);
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
  }
}
