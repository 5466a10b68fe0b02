package washbook.runner.card;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import washbook.functions.Numbers;
import washbook.functions.XmlText;
import washbook.runner.archive.OpenDocument;
import washbook.runner.card.CardLayout.Line;
import washbook.runner.card.CardLayout.Look;
import washbook.runner.card.CardLayout.Placed;

/** A card as an OpenDocument spreadsheet (OASIS OpenDocument 1.3). */
final class CardOds {
  /** Ground of a cell to type into. */
  static final String TINT = "#eef3f5";

  private static final double LINE_MM = 4.4;
  private static final String OASIS = "urn:oasis:names:tc:opendocument:xmlns:";

  private final CardLayout layout;
  private final Map<String, String> styles = new TreeMap<>();
  private final Map<String, String> formats = new TreeMap<>();

  private CardOds(CardLayout layout) {
    this.layout = layout;
  }

  static void write(CardLayout layout, Paper paper, Path to) throws IOException {
    CardOds card = new CardOds(layout);
    SortedMap<String, String> parts = new TreeMap<>();
    parts.put("content.xml", card.content());
    parts.put("styles.xml", paper(paper));
    OpenDocument.write(to, parts, Map.of());
  }

  private static String names() {
    StringBuilder names = new StringBuilder();
    for (String[] name :
        new String[][] {
          {"office", "office"},
          {"table", "table"},
          {"text", "text"},
          {"style", "style"},
          {"number", "datastyle"},
          {"fo", "xsl-fo-compatible"}
        }) {
      names.append(" xmlns:").append(name[0]).append("=\"").append(OASIS);
      names.append(name[1]).append(":1.0\"");
    }
    return names.append(" xmlns:of=\"").append(OASIS).append("of:1.2\"").toString();
  }

  private static String paper(Paper paper) {
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<office:document-styles"
        + names()
        + " office:version=\"1.3\"><office:automatic-styles><style:page-layout style:name=\"paper\">"
        + "<style:page-layout-properties fo:page-width=\""
        + paper.width()
        + "mm\" fo:page-height=\""
        + paper.height()
        + "mm\" style:print-orientation=\"portrait\" style:scale-to-X=\"1\" style:scale-to-Y=\"0\""
        + " fo:margin=\"12mm\"/></style:page-layout></office:automatic-styles>"
        + "<office:master-styles><style:master-page style:name=\"Default\""
        + " style:page-layout-name=\"paper\"><style:header style:display=\"false\"/>"
        + "<style:footer style:display=\"false\"/></style:master-page></office:master-styles>"
        + "</office:document-styles>";
  }

  private String content() {
    StringBuilder rows = new StringBuilder();
    for (int i = 0; i < layout.lines().size(); i++) {
      boolean repeated = i == layout.repeatedRow();
      rows.append(repeated ? "<table:table-header-rows>" : "");
      row(rows, layout.lines().get(i));
      rows.append(repeated ? "</table:table-header-rows>" : "");
    }
    StringBuilder all = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    all.append("<office:document-content").append(names()).append(" office:version=\"1.3\">");
    all.append("<office:automatic-styles>");
    formats.values().forEach(all::append);
    styles.values().forEach(all::append);
    width(all, "first", layout.firstMm());
    width(all, "other", layout.otherMm());
    all.append("<style:style style:name=\"sheet\" style:family=\"table\"");
    all.append(" style:master-page-name=\"Default\"/></office:automatic-styles>");
    all.append("<office:body><office:spreadsheet><table:table table:name=\"Card\"");
    all.append(" table:style-name=\"sheet\"><table:table-column table:style-name=\"first\"/>");
    all.append("<table:table-column table:style-name=\"other\" table:number-columns-repeated=\"");
    all.append(layout.columns() - 1).append("\"/>").append(rows);
    return all.append("</table:table></office:spreadsheet></office:body>")
        .append("</office:document-content>")
        .toString();
  }

  private static void width(StringBuilder all, String name, double mm) {
    all.append("<style:style style:name=\"").append(name);
    all.append("\" style:family=\"table-column\"><style:table-column-properties");
    all.append(" style:column-width=\"").append(mm).append("mm\"/></style:style>");
  }

  private void row(StringBuilder rows, Line line) {
    boolean title = line.cells().get(0).look() == Look.TITLE;
    double height = title ? 8 : LINE_MM * line.lines();
    String name = "h" + (title ? "t" : line.lines()) + (line.newPage() ? "b" : "");
    styles.computeIfAbsent(
        name,
        key ->
            "<style:style style:name=\""
                + key
                + "\" style:family=\"table-row\"><style:table-row-properties style:row-height=\""
                + Numbers.round(height, 2)
                + "mm\" style:use-optimal-row-height=\"false\" fo:break-before=\""
                + (line.newPage() ? "page" : "auto")
                + "\"/></style:style>");
    rows.append("<table:table-row table:style-name=\"").append(name).append("\">");
    for (Placed cell : line.cells()) {
      cell(rows, cell, line.across());
    }
    rows.append("</table:table-row>");
  }

  private void cell(StringBuilder rows, Placed cell, boolean across) {
    rows.append("<table:table-cell table:style-name=\"").append(style(cell)).append('"');
    if (across) {
      rows.append(" table:number-columns-spanned=\"").append(layout.columns());
      rows.append("\" table:number-rows-spanned=\"1\"");
    }
    if (!cell.formula().isEmpty()) {
      rows.append(" table:formula=\"of:=");
      rows.append(XmlText.escaped(cell.formula().replace("[", "[.").replace(",", ";")));
      rows.append('"');
    }
    if (Double.isNaN(cell.number())) {
      rows.append(" office:value-type=\"string\"><text:p>");
      rows.append(XmlText.escaped(cell.text())).append("</text:p></table:table-cell>");
    } else {
      rows.append(" office:value-type=\"float\" office:value=\"");
      rows.append(Numbers.show(cell.number())).append("\"><text:p>");
      rows.append(
          cell.signed()
              ? CardNumber.signed(cell.number(), cell.decimals())
              : CardNumber.plain(cell.number(), cell.decimals()));
      rows.append("</text:p></table:table-cell>");
    }
  }

  private String style(Placed cell) {
    boolean number = !Double.isNaN(cell.number()) || cell.look() == Look.VALUE;
    String format = number ? "n" + cell.decimals() + (cell.signed() ? "s" : "") : "";
    if (number) {
      formats.computeIfAbsent(format, name -> format(name, cell.decimals(), cell.signed()));
    }
    String name = cell.look().name() + format;
    styles.computeIfAbsent(name, key -> look(key, cell.look(), format));
    return name;
  }

  private static String format(String name, int decimals, boolean signed) {
    String digits =
        "<number:number number:min-integer-digits=\"1\" number:decimal-places=\""
            + decimals
            + "\" number:min-decimal-places=\""
            + decimals
            + "\"/>";
    String begin = "<number:number-style style:name=\"";
    if (!signed) {
      return begin + name + "\">" + digits + "</number:number-style>";
    }
    String part = "\" style:volatile=\"true\">";
    return begin
        + (name + "p" + part + "<number:text>+</number:text>" + digits + "</number:number-style>")
        + (begin + name + "m" + part + "<number:text>-</number:text>" + digits)
        + ("</number:number-style>" + begin + name + "\">" + digits)
        + ("<style:map style:condition=\"value()&gt;0\" style:apply-style-name=\"" + name + "p\"/>")
        + ("<style:map style:condition=\"value()&lt;0\" style:apply-style-name=\"" + name + "m\"/>")
        + "</number:number-style>";
  }

  private static String look(String name, Look look, String format) {
    String align = "end";
    String cell = " style:vertical-align=\"middle\"";
    switch (look) {
      case NOTE -> cell = " fo:wrap-option=\"wrap\" style:vertical-align=\"top\"";
      case INPUT ->
          cell += " fo:background-color=\"" + TINT + "\" fo:border-bottom=\"0.75pt solid #000000\"";
      case HEAD ->
          cell =
              " fo:wrap-option=\"wrap\" style:vertical-align=\"bottom\""
                  + " fo:border-bottom=\"1.5pt solid #000000\"";
      case ROW, VALUE -> cell += " fo:border-bottom=\"0.25pt solid " + Drawing.HAIRLINE + "\"";
      default -> {}
    }
    if (look == Look.TITLE || look == Look.NOTE || look == Look.LABEL || look == Look.CAPTION) {
      align = "start";
    }
    boolean bold =
        look == Look.TITLE || look == Look.CAPTION || look == Look.HEAD || look == Look.ROW;
    return "<style:style style:name=\""
        + name
        + "\" style:family=\"table-cell\""
        + (format.isEmpty() ? "" : " style:data-style-name=\"" + format + "\"")
        + "><style:table-cell-properties style:text-align-source=\"fix\""
        + cell
        + "/><style:paragraph-properties fo:text-align=\""
        + align
        + "\"/><style:text-properties fo:font-family=\"Liberation Sans\" fo:font-size=\""
        + (look == Look.TITLE ? 15 : 9)
        + "pt\""
        + (bold ? " fo:font-weight=\"bold\"" : "")
        + (look == Look.CAPTION ? " fo:color=\"" + Drawing.ACCENT + "\"" : "")
        + "/></style:style>";
  }
}
