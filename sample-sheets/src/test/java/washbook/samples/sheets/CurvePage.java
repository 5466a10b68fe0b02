package washbook.samples.sheets;

import java.util.List;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.PresetColor;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFNoFillProperties;
import org.apache.poi.xddf.usermodel.XDDFShapeProperties;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.DisplayBlanks;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.ScatterStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import washbook.log.sheet.CellAddress;
import washbook.samples.sheets.Book.Look;

/**
 * A sheet with the curves of a log below each other, and under them the numbers drawn. A line of
 * the log that is not filled in yet repeats the point before it, and is #N/A before the first, so
 * that no chart shows a false zero. Two points that are not drawn keep the axes of an empty log
 * sensible; where readings go beyond them, the axes follow the readings.
 */
final class CurvePage {
  private static final int ROWS_PER_CHART = 20;

  /** Where the axes reach stands this far right of the numbers drawn. */
  private static final int REACH = 6;

  private static final float ROW_POINTS = 15;
  private static final int COLUMNS = 8;
  private static final int FULL = 100;

  /** A little less than a column, so that a chart's frame is not cut off on paper. */
  private static final int LAST_COLUMN_EMU = 830_000;

  /**
   * One curve: its column in the log, its title, the digits of its cells and of its axis, where the
   * axis begins, how far it reaches at least (NaN: it always ends at 100), and its colour.
   */
  record Curve(
      String column,
      String title,
      String shown,
      String format,
      double least,
      double reach,
      String colour) {}

  private CurvePage() {}

  static void add(
      Book book,
      String log,
      int rows,
      String timeColumn,
      String timeTitle,
      List<Curve> curves,
      double timeReach,
      int logFirst) {
    XSSFSheet sheet = book.sheet(log.equals("Example") ? "Example charts" : "Charts");
    Form.onPaper(sheet, 1);
    for (int row = 0; row < 1 + curves.size() * ROWS_PER_CHART; row++) {
      sheet.createRow(row).setHeightInPoints(ROW_POINTS);
    }
    book.put(sheet, 0, 0, "Charts of the sheet " + log, Look.HEADLINE);
    int head = 2 + curves.size() * ROWS_PER_CHART;
    int first = head + 1;
    Form.printed(sheet, head - 2, COLUMNS - 1);
    book.put(sheet, head, 0, "Drawn: across", Look.head(Form.HEADING));
    book.put(sheet, head, REACH, "Axes reach: across", Look.head(Form.HEADING));
    for (int c = 0; c < curves.size(); c++) {
      book.put(sheet, head, c + 1, "Drawn: chart " + (c + 1), Look.head(Form.HEADING));
      book.put(sheet, head, REACH + c + 1, "Chart " + (c + 1), Look.head(Form.HEADING));
    }
    sheet.getRow(head).setHeightInPoints(31);
    reach(book, sheet, curves, timeReach, first);
    // Before there are formulas in these cells, which the library would try to evaluate.
    for (int c = 0; c < curves.size(); c++) {
      draw(sheet, curves.get(c), timeTitle, c, 1 + c * ROWS_PER_CHART, first, first + rows - 1);
    }
    hideMissing(sheet, first, first + rows - 1, curves.size());
    for (int i = 0; i < rows; i++) {
      number(
          book,
          sheet,
          log,
          first + i,
          0,
          timeColumn,
          logFirst + i,
          timeColumn,
          curves,
          first,
          "0.0");
      for (int c = 0; c < curves.size(); c++) {
        String column = curves.get(c).column();
        number(
            book,
            sheet,
            log,
            first + i,
            c + 1,
            column,
            logFirst + i,
            timeColumn,
            curves,
            first,
            curves.get(c).shown());
      }
    }
    book.widths(sheet, 12, 12, 12, 12, 12, 12, 12, 12, 12, 12);
  }

  private static void reach(
      Book book, XSSFSheet sheet, List<Curve> curves, double timeReach, int first) {
    book.put(sheet, first, REACH, 0, Look.number("0"));
    book.put(sheet, first + 1, REACH, timeReach, Look.number("0"));
    for (int c = 0; c < curves.size(); c++) {
      Look look = Look.number(curves.get(c).shown());
      book.put(sheet, first, REACH + c + 1, curves.get(c).least(), look);
      double reach = curves.get(c).reach();
      book.put(sheet, first + 1, REACH + c + 1, Double.isNaN(reach) ? FULL : reach, look);
    }
  }

  /** #N/A keeps a chart from drawing a point; nobody has to see it. */
  private static void hideMissing(XSSFSheet sheet, int first, int last, int curves) {
    var formats = sheet.getSheetConditionalFormatting();
    var missing = formats.createConditionalFormattingRule("ISNA(A" + (first + 1) + ")");
    missing.createFontFormatting().setFontColorIndex(IndexedColors.WHITE.getIndex());
    formats.addConditionalFormatting(
        new CellRangeAddress[] {new CellRangeAddress(first, last, 0, curves)}, missing);
  }

  private static void number(
      Book book,
      XSSFSheet sheet,
      String log,
      int row,
      int column,
      String from,
      int logRow,
      String timeColumn,
      List<Curve> curves,
      int first,
      String shown) {
    StringBuilder all = new StringBuilder(log + "!" + timeColumn + logRow);
    curves.forEach(
        curve -> all.append(',').append(log).append('!').append(curve.column() + logRow));
    String none = column == 0 ? "0" : "NA()";
    String before = row == first ? none : CellAddress.letters(column) + row;
    String text =
        "IF(COUNT("
            + all
            + ")="
            + (curves.size() + 1)
            + ","
            + log
            + "!"
            + from
            + logRow
            + ","
            + before
            + ")";
    book.put(sheet, row, column, null, Look.number(shown)).setCellFormula(text);
  }

  private static void draw(
      XSSFSheet sheet, Curve curve, String timeTitle, int index, int atRow, int first, int last) {
    var drawing = sheet.createDrawingPatriarch();
    XSSFChart chart =
        drawing.createChart(
            drawing.createAnchor(
                0, 0, LAST_COLUMN_EMU, 0, 0, atRow, COLUMNS - 1, atRow + ROWS_PER_CHART - 1));
    chart.setTitleText(curve.title());
    chart.getGraphicFrame().setName(curve.title());
    chart.setTitleOverlay(false);
    chart.displayBlanksAs(DisplayBlanks.GAP);
    XDDFValueAxis bottom = chart.createValueAxis(AxisPosition.BOTTOM);
    bottom.setTitle(timeTitle);
    XDDFValueAxis left = chart.createValueAxis(AxisPosition.LEFT);
    left.setNumberFormat(curve.format());
    left.setMinimum(curve.least());
    if (Double.isNaN(curve.reach())) {
      left.setMaximum(FULL);
    }
    left.setCrosses(AxisCrosses.MIN);
    bottom.setCrosses(AxisCrosses.MIN);
    left.getOrAddMajorGridProperties()
        .setLineProperties(
            new XDDFLineProperties(
                new XDDFSolidFillProperties(XDDFColor.from(PresetColor.LIGHT_GRAY))));
    var data = (XDDFScatterChartData) chart.createData(ChartTypes.SCATTER, bottom, left);
    data.setStyle(ScatterStyle.LINE_MARKER);
    var series =
        (XDDFScatterChartData.Series)
            data.addSeries(
                XDDFDataSourcesFactory.fromNumericCellRange(
                    sheet, new CellRangeAddress(first, last, 0, 0)),
                XDDFDataSourcesFactory.fromNumericCellRange(
                    sheet, new CellRangeAddress(first, last, index + 1, index + 1)));
    series.setTitle(curve.title(), null);
    series.setSmooth(false);
    series.setMarkerStyle(MarkerStyle.CIRCLE);
    int rgb = Integer.parseInt(curve.colour(), 16);
    var fill =
        new XDDFSolidFillProperties(
            XDDFColor.from(new byte[] {(byte) (rgb >> 16), (byte) (rgb >> 8), (byte) rgb}));
    XDDFShapeProperties shape = new XDDFShapeProperties();
    shape.setLineProperties(new XDDFLineProperties(fill));
    series.setShapeProperties(shape);
    var reach =
        (XDDFScatterChartData.Series)
            data.addSeries(
                XDDFDataSourcesFactory.fromNumericCellRange(
                    sheet, new CellRangeAddress(first, first + 1, REACH, REACH)),
                XDDFDataSourcesFactory.fromNumericCellRange(
                    sheet,
                    new CellRangeAddress(first, first + 1, REACH + index + 1, REACH + index + 1)));
    reach.setTitle("reach of the axes", null);
    reach.setSmooth(false);
    reach.setMarkerStyle(MarkerStyle.NONE);
    XDDFShapeProperties unseen = new XDDFShapeProperties();
    unseen.setLineProperties(new XDDFLineProperties(new XDDFNoFillProperties()));
    reach.setShapeProperties(unseen);
    chart.plot(data);
  }
}
