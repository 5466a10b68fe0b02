package washbook.runner.chart;

import static washbook.runner.chart.ChartPage.escaped;
import static washbook.runner.chart.ChartPage.number;

import java.util.List;
import washbook.log.fill.BatchCurve;
import washbook.log.sheet.CellAddress;
import washbook.runner.chart.ChartPage.Chart;

/** The parts of the sheet with charts in a workbook of the kind .xlsx. */
final class XlsxChartMarkup {
  static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  static final String STRICT_MAIN = "http://purl.oclc.org/ooxml/spreadsheetml/main";
  static final String RELATIONS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  static final String STRICT_RELATIONS = "http://purl.oclc.org/ooxml/officeDocument/relationships";
  private static final String DRAWING = "http://schemas.openxmlformats.org/drawingml/2006/";
  private static final String STRICT_DRAWING = "http://purl.oclc.org/ooxml/drawingml/";
  private static final String FOLDED = " outlineLevel=\"1\" hidden=\"1\"";
  private static final String START =
      "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";

  /** English Metric Units: 360000 to the centimetre. */
  private static final int EMU_PER_CM = 360_000;

  private XlsxChartMarkup() {}

  /** The same markup in the namespaces of the workbook's kind. */
  static String kind(String markup, boolean strict) {
    return strict
        ? markup
            .replace(MAIN, STRICT_MAIN)
            .replace(RELATIONS, STRICT_RELATIONS)
            .replace(DRAWING, STRICT_DRAWING)
        : markup;
  }

  static String relations(String kind, List<String> targets, boolean strict) {
    StringBuilder text = new StringBuilder(START);
    text.append(
        "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">");
    for (int i = 0; i < targets.size(); i++) {
      text.append("<Relationship Id=\"rId")
          .append(i + 1)
          .append("\" Type=\"")
          .append(strict ? STRICT_RELATIONS : RELATIONS)
          .append('/')
          .append(kind)
          .append("\" Target=\"")
          .append(targets.get(i))
          .append("\"/>");
    }
    return text.append("</Relationships>").toString();
  }

  static String sheet(ChartPage page) {
    StringBuilder text = new StringBuilder(START);
    text.append("<worksheet xmlns=\"").append(MAIN).append("\" xmlns:r=\"").append(RELATIONS);
    text.append(
        "\"><sheetPr><outlinePr summaryBelow=\"0\"/><pageSetUpPr fitToPage=\"1\"/></sheetPr>");
    text.append("<sheetFormatPr defaultRowHeight=\"12.8\" customHeight=\"1\"");
    text.append(" outlineLevelRow=\"1\"/>");
    text.append("<cols><col min=\"1\" max=\"4\" width=\"12\" customWidth=\"1\"/>");
    text.append("<col min=\"5\" max=\"5\" width=\"2\" customWidth=\"1\"/>");
    text.append("<col min=\"6\" max=\"6\" width=\"14\" customWidth=\"1\"/></cols><sheetData>");
    words(text, 0, List.of(page.title()), true);
    words(text, 1, List.of(page.note()), false);
    for (int i = 0; i < page.curves().size(); i++) {
      words(text, page.headingRow(i), List.of(ChartPage.heading(page.curves().get(i))), true);
    }
    words(text, page.tableRow() - 1, " collapsed=\"1\"", List.of(page.folded()), false);
    words(text, page.tableRow(), FOLDED, page.heads(), true);
    int row = page.tableRow() + 1;
    for (BatchCurve curve : page.curves()) {
      for (int point = 0; point < curve.days().length; point++) {
        point(text, row++, curve, point);
      }
    }
    text.append("</sheetData><pageMargins left=\"0.5\" right=\"0.5\" top=\"0.6\" bottom=\"0.6\"");
    text.append(" header=\"0.3\" footer=\"0.3\"/>");
    text.append("<pageSetup orientation=\"portrait\" fitToWidth=\"1\" fitToHeight=\"0\"/>");
    breaks(text, page);
    return text.append("<drawing r:id=\"rId1\"/></worksheet>").toString();
  }

  /** Every batch on a page of its own. */
  private static void breaks(StringBuilder text, ChartPage page) {
    int count = page.curves().size() - 1;
    if (count < 1) {
      return;
    }
    text.append("<rowBreaks count=\"").append(count);
    text.append("\" manualBreakCount=\"").append(count).append("\">");
    for (int i = 1; i <= count; i++) {
      text.append("<brk id=\"").append(page.headingRow(i)).append("\" max=\"16383\" man=\"1\"/>");
    }
    text.append("</rowBreaks>");
  }

  private static void words(StringBuilder text, int row, List<String> words, boolean bold) {
    words(text, row, "", words, bold);
  }

  private static void words(
      StringBuilder text, int row, String attributes, List<String> words, boolean bold) {
    text.append("<row r=\"").append(row + 1).append('"').append(attributes).append('>');
    for (int column = 0; column < words.size(); column++) {
      if (!words.get(column).isEmpty()) {
        word(text, row, column, words.get(column), bold);
      }
    }
    text.append("</row>");
  }

  private static void word(StringBuilder text, int row, int column, String word, boolean bold) {
    text.append("<c r=\"").append(CellAddress.of(row, column)).append("\" t=\"inlineStr\"><is>");
    text.append(bold ? "<r><rPr><b/><sz val=\"10\"/><rFont val=\"Arial\"/></rPr>" : "")
        .append("<t xml:space=\"preserve\">");
    text.append(escaped(word)).append("</t>").append(bold ? "</r>" : "").append("</is></c>");
  }

  private static void point(StringBuilder text, int row, BatchCurve curve, int point) {
    text.append("<row r=\"").append(row + 1).append('"').append(FOLDED).append('>');
    for (int column = 0; column < 4; column++) {
      double number = Chart.number(curve, point, column);
      if (!Double.isNaN(number)) {
        text.append("<c r=\"").append(CellAddress.of(row, column)).append("\"><v>");
        text.append(number(number)).append("</v></c>");
      }
    }
    word(text, row, ChartPage.BATCH_COLUMN, curve.batch(), false);
    text.append("</row>");
  }

  static String drawing(ChartPage page) {
    StringBuilder text = new StringBuilder(START);
    text.append("<xdr:wsDr xmlns:xdr=\"").append(DRAWING).append("spreadsheetDrawing\" xmlns:a=\"");
    text.append(DRAWING).append("main\">");
    for (Chart chart : page.charts()) {
      text.append(
          """
          <xdr:oneCellAnchor><xdr:from><xdr:col>0</xdr:col><xdr:colOff>0</xdr:colOff>\
          <xdr:row>%d</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:from><xdr:ext cx="%d" cy="%d"/>\
          <xdr:graphicFrame macro=""><xdr:nvGraphicFramePr><xdr:cNvPr id="%d" name="%s"/>\
          <xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr><xdr:xfrm><a:off x="0" y="0"/>\
          <a:ext cx="0" cy="0"/></xdr:xfrm><a:graphic><a:graphicData uri="%schart">\
          <c:chart xmlns:c="%schart" xmlns:r="%s" r:id="rId%d"/></a:graphicData></a:graphic>\
          </xdr:graphicFrame><xdr:clientData/></xdr:oneCellAnchor>\
          """
              .formatted(
                  chart.atRow(),
                  (long) (ChartPage.WIDTH_CM * EMU_PER_CM),
                  (long) (ChartPage.HEIGHT_CM * EMU_PER_CM),
                  chart.number() + 1,
                  escaped(chart.title()),
                  DRAWING,
                  DRAWING,
                  RELATIONS,
                  chart.number()));
    }
    return text.append("</xdr:wsDr>").toString();
  }

  static String chart(Chart chart) {
    ChartPage.Quantity quantity = chart.quantity();
    double[] days = chart.curve().days();
    String colour = "<a:solidFill><a:srgbClr val=\"" + quantity.colour + "\"/></a:solidFill>";
    return START
        + "<c:chartSpace xmlns:c=\"%schart\" xmlns:a=\"%smain\">".formatted(DRAWING, DRAWING)
        + "<c:roundedCorners val=\"0\"/><c:chart>"
        + title(chart.title(), true)
        + "<c:autoTitleDeleted val=\"0\"/><c:plotArea><c:layout/><c:scatterChart>"
        + "<c:scatterStyle val=\"lineMarker\"/><c:varyColors val=\"0\"/><c:ser>"
        + "<c:idx val=\"0\"/><c:order val=\"0\"/><c:tx><c:v>"
        + escaped(chart.name())
        + "</c:v></c:tx><c:spPr><a:ln w=\"22225\">"
        + colour
        + "</a:ln></c:spPr><c:marker><c:symbol val=\""
        + quantity.symbol
        + "\"/><c:size val=\"6\"/><c:spPr>"
        + colour
        + "</c:spPr></c:marker><c:xVal>"
        + numbers(chart, 0)
        + "</c:xVal><c:yVal>"
        + numbers(chart, quantity.column)
        + "</c:yVal><c:smooth val=\"0\"/></c:ser>"
        + "<c:axId val=\"1\"/><c:axId val=\"2\"/></c:scatterChart>"
        + axis(1, 2, "b", days[0], days[days.length - 1], "General", chart.timeTitle(), false)
        + axis(2, 1, "l", chart.from(), chart.to(), quantity.format(chart.curve()), "", true)
        + "</c:plotArea><c:plotVisOnly val=\"0\"/><c:dispBlanksAs val=\"span\"/></c:chart>"
        + "</c:chartSpace>";
  }

  private static String cell(Chart chart, int row, int column) {
    return "'" + escaped(chart.sheet()) + "'!$" + CellAddress.letters(column) + "$" + (row + 1);
  }

  private static String numbers(Chart chart, int column) {
    StringBuilder text = new StringBuilder("<c:numRef><c:f>");
    text.append(cell(chart, chart.firstRow(), column))
        .append(":$")
        .append(CellAddress.letters(column));
    text.append('$').append(chart.lastRow() + 1).append("</c:f><c:numCache><c:formatCode>General");
    int count = chart.curve().days().length;
    text.append("</c:formatCode><c:ptCount val=\"").append(count).append("\"/>");
    for (int point = 0; point < count; point++) {
      double number = Chart.number(chart.curve(), point, column);
      if (!Double.isNaN(number)) {
        text.append("<c:pt idx=\"").append(point).append("\"><c:v>").append(number(number));
        text.append("</c:v></c:pt>");
      }
    }
    return text.append("</c:numCache></c:numRef>").toString();
  }

  private static String title(String words, boolean bold) {
    return """
    <c:title><c:tx><c:rich><a:bodyPr/><a:p><a:pPr><a:defRPr sz="%d" b="%d"/></a:pPr><a:r>\
    <a:rPr lang="en" sz="%d" b="%d"/><a:t>%s</a:t></a:r></a:p></c:rich></c:tx>\
    <c:overlay val="0"/></c:title>\
    """
        .formatted(
            bold ? 1100 : 900, bold ? 1 : 0, bold ? 1100 : 900, bold ? 1 : 0, escaped(words));
  }

  private static String axis(
      int id,
      int crosses,
      String side,
      double from,
      double to,
      String format,
      String words,
      boolean lines) {
    return "<c:valAx><c:axId val=\"%d\"/><c:scaling><c:orientation val=\"minMax\"/>".formatted(id)
        + "<c:max val=\"%s\"/><c:min val=\"%s\"/></c:scaling>".formatted(number(to), number(from))
        + "<c:delete val=\"0\"/><c:axPos val=\"%s\"/>".formatted(side)
        + (lines
            ? "<c:majorGridlines><c:spPr><a:ln w=\"6350\"><a:solidFill><a:srgbClr val=\"C8C8C8\"/>"
                + "</a:solidFill></a:ln></c:spPr></c:majorGridlines>"
            : "")
        + (words.isEmpty() ? "" : title(words, false))
        + "<c:numFmt formatCode=\"%s\" sourceLinked=\"0\"/>".formatted(format)
        + "<c:majorTickMark val=\"out\"/><c:minorTickMark val=\"none\"/>"
        + "<c:tickLblPos val=\"low\"/><c:crossAx val=\"%d\"/>".formatted(crosses)
        + "<c:crosses val=\"min\"/><c:crossBetween val=\"midCat\"/></c:valAx>";
  }
}
