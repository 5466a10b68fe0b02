package washbook.runner.chart;

import static washbook.runner.chart.ChartPage.centimetres;
import static washbook.runner.chart.ChartPage.escaped;
import static washbook.runner.chart.ChartPage.number;

import java.util.List;
import washbook.log.fill.BatchCurve;
import washbook.log.sheet.CellAddress;
import washbook.runner.chart.ChartPage.Chart;

/** The table and the chart objects of the sheet with charts in an OpenDocument spreadsheet. */
final class OdsChartMarkup {
  static final String KIND = "application/vnd.oasis.opendocument.chart";

  /** Rows of this style begin a page. */
  static final String PAGE_STYLE = "washbook-page";

  static final String PAGE_STYLE_MARKUP =
      "<style:style style:name=\""
          + PAGE_STYLE
          + "\" style:family=\"table-row\"><style:table-row-properties"
          + " xmlns:fo=\"urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0\""
          + " fo:break-before=\"page\" style:row-height=\"4.516mm\""
          + " style:use-optimal-row-height=\"false\"/></style:style>";

  /** Without the blue line that the office draws around what has no style. */
  static final String FRAME_STYLE = "washbook-chart";

  static final String FRAME_STYLE_MARKUP =
      "<style:style style:name=\""
          + FRAME_STYLE
          + "\" style:family=\"graphic\"><style:graphic-properties"
          + " xmlns:draw=\"urn:oasis:names:tc:opendocument:xmlns:drawing:1.0\""
          + " draw:stroke=\"none\" draw:fill=\"none\"/></style:style>";

  private static final String HIDDEN = " table:visibility=\"collapse\"";
  private static final String OASIS = "urn:oasis:names:tc:opendocument:xmlns:";
  private static final String NAMES =
      names("office", "office:1.0")
          + names("table", "table:1.0")
          + names("text", "text:1.0")
          + names("draw", "drawing:1.0")
          + names("svg", "svg-compatible:1.0")
          + " xmlns:xlink=\"http://www.w3.org/1999/xlink\"";
  private static final String CHART_NAMES =
      NAMES
          + names("chart", "chart:1.0")
          + names("style", "style:1.0")
          + names("number", "datastyle:1.0")
          + names("fo", "xsl-fo-compatible:1.0");

  private OdsChartMarkup() {}

  private static String names(String prefix, String space) {
    return " xmlns:" + prefix + "=\"" + OASIS + space + "\"";
  }

  /** The folder of a chart's object in the package. */
  static String object(Chart chart, String series) {
    return "WashbookChart" + series + chart.number();
  }

  static String table(ChartPage page, String series) {
    StringBuilder text = new StringBuilder("<table:table").append(NAMES);
    text.append(" table:name=\"").append(escaped(page.sheetName())).append("\"><table:shapes>");
    for (Chart chart : page.charts()) {
      frame(text, chart, series);
    }
    text.append("</table:shapes><table:table-column table:number-columns-repeated=\"6\"/>");
    int row = words(text, 0, 0, "", List.of(page.title()));
    row = words(text, row, 1, "", List.of(page.note()));
    for (int i = 0; i < page.curves().size(); i++) {
      String heading = ChartPage.heading(page.curves().get(i));
      String onNewPage = i == 0 ? "" : " table:style-name=\"" + PAGE_STYLE + "\"";
      row = words(text, row, page.headingRow(i), onNewPage, List.of(heading));
    }
    row = words(text, row, page.tableRow() - 1, "", List.of(page.folded()));
    text.append("<table:table-row-group table:display=\"false\">");
    words(text, row, page.tableRow(), HIDDEN, page.heads());
    for (BatchCurve curve : page.curves()) {
      for (int point = 0; point < curve.days().length; point++) {
        point(text, curve, point);
      }
    }
    return text.append("</table:table-row-group></table:table>").toString();
  }

  private static void frame(StringBuilder text, Chart chart, String series) {
    text.append("<draw:frame draw:z-index=\"").append(chart.number() - 1);
    text.append("\" draw:style-name=\"").append(FRAME_STYLE);
    text.append("\" draw:name=\"").append(escaped(chart.title()));
    text.append("\" svg:x=\"0cm\" svg:y=\"");
    text.append(centimetres(chart.atRow() * ChartPage.ROW_CM)).append("\" svg:width=\"");
    text.append(centimetres(ChartPage.WIDTH_CM)).append("\" svg:height=\"");
    text.append(centimetres(ChartPage.HEIGHT_CM)).append("\"><draw:object");
    text.append(" draw:notify-on-update-of-ranges=\"").append(range(chart, 0)).append(' ');
    text.append(range(chart, chart.quantity().column)).append("\" xlink:href=\"./");
    text.append(object(chart, series)).append("\" xlink:type=\"simple\" xlink:show=\"embed\"");
    text.append(" xlink:actuate=\"onLoad\"/></draw:frame>");
  }

  /** A row of texts, with the blank rows before it; gives the row behind it. */
  private static int words(
      StringBuilder text, int next, int row, String attributes, List<String> words) {
    if (row > next) {
      text.append("<table:table-row table:number-rows-repeated=\"").append(row - next);
      text.append("\"><table:table-cell/></table:table-row>");
    }
    text.append("<table:table-row").append(attributes).append('>');
    words.forEach(word -> word(text, word));
    text.append("</table:table-row>");
    return row + 1;
  }

  private static void word(StringBuilder text, String word) {
    if (word.isEmpty()) {
      text.append("<table:table-cell/>");
      return;
    }
    text.append("<table:table-cell office:value-type=\"string\"><text:p>");
    text.append(escaped(word)).append("</text:p></table:table-cell>");
  }

  private static void point(StringBuilder text, BatchCurve curve, int point) {
    text.append("<table:table-row").append(HIDDEN).append('>');
    for (int column = 0; column < 4; column++) {
      double number = Chart.number(curve, point, column);
      if (Double.isNaN(number)) {
        text.append("<table:table-cell/>");
      } else {
        text.append("<table:table-cell office:value-type=\"float\" office:value=\"");
        text.append(number(number)).append("\"><text:p>").append(number(number));
        text.append("</text:p></table:table-cell>");
      }
    }
    text.append("<table:table-cell/>");
    word(text, curve.batch());
    text.append("</table:table-row>");
  }

  /** The cells of one column that a chart draws. */
  private static String range(Chart chart, int column) {
    String letters = CellAddress.letters(column);
    String sheet = escaped(chart.sheet());
    return "'%s'.%s%d:'%s'.%s%d"
        .formatted(sheet, letters, chart.firstRow() + 1, sheet, letters, chart.lastRow() + 1);
  }

  static String chart(Chart chart) {
    ChartPage.Quantity quantity = chart.quantity();
    double[] days = chart.curve().days();
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<office:document-content"
        + CHART_NAMES
        + " office:version=\"1.3\"><office:automatic-styles>"
        + numberStyle(quantity.format(chart.curve()))
        + style(
            "all",
            "<style:graphic-properties draw:stroke=\"none\" draw:fill=\"solid\""
                + " draw:fill-color=\"#ffffff\"/>")
        + style("title", words(11, "bold"))
        + style("words", words(9, "normal"))
        + style(
            "plot",
            "<style:chart-properties chart:treat-empty-cells=\"ignore\""
                + " chart:include-hidden-cells=\"true\"/>")
        + style(
            "time",
            axis(days[0], days[days.length - 1])
                + "<style:graphic-properties svg:stroke-color=\"#303030\"/>"
                + words(9, "normal"))
        + "<style:style style:name=\"value\" style:family=\"chart\""
        + " style:data-style-name=\"digits\">"
        + axis(chart.from(), chart.to())
        + "<style:graphic-properties svg:stroke-color=\"#303030\"/>"
        + words(9, "normal")
        + "</style:style>"
        + style("grid", "<style:graphic-properties svg:stroke-color=\"#c8c8c8\"/>")
        + style(
            "line",
            "<style:chart-properties chart:symbol-type=\"named-symbol\" chart:symbol-name=\""
                + quantity.symbol
                + "\" chart:symbol-width=\"0.2cm\" chart:symbol-height=\"0.2cm\"/>"
                + "<style:graphic-properties draw:stroke=\"solid\" svg:stroke-width=\"0.06cm\""
                + " svg:stroke-color=\"#"
                + quantity.colour
                + "\" draw:fill-color=\"#"
                + quantity.colour
                + "\"/>")
        + "</office:automatic-styles><office:body><office:chart><chart:chart svg:width=\""
        + centimetres(ChartPage.WIDTH_CM)
        + "\" svg:height=\""
        + centimetres(ChartPage.HEIGHT_CM)
        + "\" xlink:href=\"..\" xlink:type=\"simple\" chart:class=\"chart:scatter\""
        + " chart:style-name=\"all\"><chart:title chart:style-name=\"title\"><text:p>"
        + escaped(chart.title())
        + "</text:p></chart:title><chart:plot-area chart:style-name=\"plot\">"
        + "<chart:axis chart:dimension=\"x\" chart:name=\"primary-x\" chart:style-name=\"time\">"
        + "<chart:title chart:style-name=\"words\"><text:p>"
        + escaped(chart.timeTitle())
        + "</text:p></chart:title></chart:axis>"
        + "<chart:axis chart:dimension=\"y\" chart:name=\"primary-y\" chart:style-name=\"value\">"
        + "<chart:grid chart:style-name=\"grid\" chart:class=\"major\"/></chart:axis>"
        + "<chart:series chart:style-name=\"line\" chart:class=\"chart:scatter\""
        + " chart:values-cell-range-address=\""
        + range(chart, quantity.column)
        + "\"><chart:domain table:cell-range-address=\""
        + range(chart, 0)
        + "\"/><chart:data-point chart:repeated=\""
        + days.length
        + "\"/></chart:series><chart:wall"
        + " chart:style-name=\"all\"/></chart:plot-area></chart:chart></office:chart></office:body>"
        + "</office:document-content>";
  }

  private static String style(String name, String properties) {
    return "<style:style style:name=\""
        + name
        + "\" style:family=\"chart\">"
        + properties
        + "</style:style>";
  }

  private static String words(int points, String weight) {
    return "<style:text-properties fo:font-size=\"%dpt\" fo:font-weight=\"%s\"/>"
        .formatted(points, weight);
  }

  private static String axis(double from, double to) {
    return "<style:chart-properties chart:link-data-style-to-source=\"false\""
        + " chart:display-label=\"true\" chart:minimum=\""
        + number(from)
        + "\" chart:maximum=\""
        + number(to)
        + "\" chart:axis-position=\"start\" chart:axis-label-position=\"outside-start\"/>";
  }

  private static String numberStyle(String format) {
    int decimals = format.indexOf('.') < 0 ? 0 : format.length() - 2;
    return "<number:number-style style:name=\"digits\"><number:number"
        + " number:min-integer-digits=\"1\" number:decimal-places=\""
        + decimals
        + "\"/></number:number-style>";
  }
}
