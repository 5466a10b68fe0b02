package washbook.samples.sheets;

import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.PresetColor;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFShapeProperties;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.ScatterStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import washbook.functions.log.CellAddress;
import washbook.samples.sheets.Book.Look;

/**
 * A sheet with the curves of a log below each other, and under them the numbers drawn. A line of
 * the log that is not filled in yet repeats the point before it, so that no chart shows a false
 * zero.
 */
final class CurvePage {
  private static final int ROWS_PER_CHART = 14;
  private static final int COLUMNS = 8;

  /**
   * One curve: its column in the log, its title, the digits of its cells and of its axis, where the
   * axis begins, and its colour.
   */
  record Curve(
      String column, String title, String shown, String format, double least, String colour) {}

  private CurvePage() {}

  static void add(
      Book book,
      String log,
      int rows,
      String timeColumn,
      String timeTitle,
      List<Curve> curves,
      int logFirst) {
    XSSFSheet sheet = book.sheet(log.equals("Example") ? "Example charts" : "Charts");
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setFitWidth((short) 1);
    sheet.getPrintSetup().setFitHeight((short) 0);
    book.put(sheet, 0, 0, "Charts of the sheet " + log, Look.TITLE);
    int head = 2 + curves.size() * ROWS_PER_CHART;
    int first = head + 1;
    book.put(sheet, head, 0, timeTitle, Look.head("D9E4E8"));
    for (int c = 0; c < curves.size(); c++) {
      book.put(sheet, head, c + 1, curves.get(c).title(), Look.head("D9E4E8"));
    }
    sheet.getRow(head).setHeightInPoints(44);
    sheet.setRowBreak(head - 1);
    // Before there are formulas in these cells, which the library would try to evaluate.
    for (int c = 0; c < curves.size(); c++) {
      draw(sheet, curves.get(c), timeTitle, c, 1 + c * ROWS_PER_CHART, first, first + rows - 1);
    }
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
    book.widths(sheet, 12, 12, 12, 12, 12, 12, 12, 12);
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
    String before = row == first ? "\"\"" : CellAddress.letters(column) + row;
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
            drawing.createAnchor(0, 0, 0, 0, 0, atRow, COLUMNS, atRow + ROWS_PER_CHART - 1));
    chart.setTitleText(curve.title());
    chart.setTitleOverlay(false);
    XDDFValueAxis bottom = chart.createValueAxis(AxisPosition.BOTTOM);
    bottom.setTitle(timeTitle);
    XDDFValueAxis left = chart.createValueAxis(AxisPosition.LEFT);
    left.setNumberFormat(curve.format());
    left.setMinimum(curve.least());
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
    chart.plot(data);
  }
}
