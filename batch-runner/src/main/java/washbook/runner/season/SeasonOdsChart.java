package washbook.runner.season;

import static washbook.functions.XmlText.escaped;

import java.util.List;
import java.util.Locale;
import washbook.functions.Numbers;
import washbook.log.sheet.CellAddress;
import washbook.runner.language.Wording;

/**
 * One chart of the season in an OpenDocument spreadsheet.
 *
 * @param number from 1
 * @param atRow where it stands, from 0
 * @param firstRow of its first batch's numbers, from 0
 * @param column of the values
 * @param words of whom it is for
 */
record SeasonOdsChart(
    int number,
    int atRow,
    String title,
    List<SeasonRow> batches,
    int firstRow,
    int column,
    Wording words) {
  static final String KIND = "application/vnd.oasis.opendocument.chart";
  private static final double WIDTH_CM = 26;
  private static final double HEIGHT_CM = 7.6;

  /** More lines than these make a legend longer than the chart. */
  private static final int MOST_NAMED = 20;

  String folder() {
    return "Curves" + number;
  }

  String frame(double rowCm, double heightCm) {
    return "<draw:frame draw:z-index=\""
        + (number - 1)
        + "\" draw:style-name=\"frame\" draw:name=\""
        + escaped(title)
        + "\" svg:x=\"0cm\" svg:y=\""
        + centimetres(atRow * rowCm)
        + "\" svg:width=\""
        + centimetres(WIDTH_CM)
        + "\" svg:height=\""
        + centimetres(heightCm)
        + "\"><draw:object xlink:href=\"./"
        + folder()
        + "\" xlink:type=\"simple\" xlink:show=\"embed\" xlink:actuate=\"onLoad\"/></draw:frame>";
  }

  String text() {
    StringBuilder text = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    text.append("<office:document-content").append(SeasonOdsContent.NAMES);
    text.append(" office:version=\"1.3\"><office:automatic-styles>");
    text.append("<number:number-style style:name=\"digits\"><number:number");
    text.append(" number:min-integer-digits=\"1\" number:decimal-places=\"");
    text.append(column == 1 ? 3 : 0).append("\"/></number:number-style>");
    style(text, "all", "<style:graphic-properties draw:stroke=\"none\" draw:fill=\"none\"/>");
    style(text, "plot", "<style:chart-properties chart:treat-empty-cells=\"ignore\"/>");
    style(text, "grid", "<style:graphic-properties svg:stroke-color=\"#d9d3c8\"/>");
    text.append("<number:number-style style:name=\"whole\"><number:number");
    text.append(" number:min-integer-digits=\"1\" number:decimal-places=\"0\"/>");
    text.append("</number:number-style><style:style style:name=\"days\" style:family=\"chart\"");
    text.append(" style:data-style-name=\"whole\"><style:chart-properties");
    text.append(" chart:link-data-style-to-source=\"false\" chart:display-label=\"true\"");
    text.append(" chart:minimum=\"0\"/></style:style>");
    text.append("<style:style style:name=\"value\" style:family=\"chart\"");
    text.append(" style:data-style-name=\"digits\"><style:chart-properties");
    text.append(" chart:link-data-style-to-source=\"false\" chart:display-label=\"true\"");
    text.append(" chart:axis-position=\"start\" chart:minimum=\"");
    text.append(Numbers.show(column == 1 ? SeasonXlsxCharts.lowest(batches) : 0));
    text.append("\"/></style:style>");
    for (int i = 0; i < SeasonXlsxCharts.COLOURS.length; i++) {
      style(
          text,
          "line" + i,
          "<style:chart-properties chart:symbol-type=\"none\"/><style:graphic-properties"
              + " draw:stroke=\"solid\" svg:stroke-width=\"0.05cm\" svg:stroke-color=\"#"
              + SeasonXlsxCharts.COLOURS[i]
              + "\"/>");
    }
    text.append("</office:automatic-styles><office:body><office:chart><chart:chart svg:width=\"");
    text.append(centimetres(WIDTH_CM)).append("\" svg:height=\"").append(centimetres(HEIGHT_CM));
    text.append("\" xlink:href=\"..\" xlink:type=\"simple\" chart:class=\"chart:scatter\"");
    text.append(" chart:style-name=\"all\"><chart:title><text:p>").append(escaped(title));
    text.append("</text:p></chart:title>");
    if (batches.size() <= MOST_NAMED) {
      text.append("<chart:legend chart:legend-position=\"end\"/>");
    }
    text.append("<chart:plot-area chart:style-name=\"plot\">");
    text.append("<chart:axis chart:dimension=\"x\" chart:name=\"primary-x\"");
    text.append(" chart:style-name=\"days\"><chart:title><text:p>");
    text.append(escaped(words.say("season.days")))
        .append("</text:p></chart:title></chart:axis><chart:axis chart:dimension=\"y\"");
    text.append(" chart:name=\"primary-y\" chart:style-name=\"value\"><chart:grid");
    text.append(" chart:style-name=\"grid\" chart:class=\"major\"/></chart:axis>");
    int row = firstRow;
    for (int i = 0; i < batches.size(); i++) {
      int last = row + batches.get(i).curve().points().length - 1;
      series(text, i, row, last);
      row = last + 1;
    }
    text.append("<chart:wall chart:style-name=\"all\"/>");
    return text.append("</chart:plot-area></chart:chart></office:chart></office:body>")
        .append("</office:document-content>")
        .toString();
  }

  private void series(StringBuilder text, int index, int first, int last) {
    text.append("<chart:series chart:style-name=\"line");
    text.append(index % SeasonXlsxCharts.COLOURS.length);
    text.append("\" chart:class=\"chart:scatter\" chart:values-cell-range-address=\"");
    text.append(range(first, last, column)).append("\" chart:label-cell-address=\"");
    text.append(range(first, first, 3)).append("\"><chart:domain table:cell-range-address=\"");
    text.append(range(first, last, 0)).append("\"/></chart:series>");
  }

  private String range(int first, int last, int column) {
    String sheet = "'" + SeasonTable.curves(words) + "'.";
    String letters = CellAddress.letters(column);
    return sheet + letters + (first + 1) + ":" + sheet + letters + (last + 1);
  }

  private static void style(StringBuilder text, String name, String properties) {
    text.append("<style:style style:name=\"").append(name);
    text.append("\" style:family=\"chart\">").append(properties).append("</style:style>");
  }

  private static String centimetres(double value) {
    return String.format(Locale.ROOT, "%.3fcm", value);
  }
}
