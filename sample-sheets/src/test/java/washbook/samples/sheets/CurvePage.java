package washbook.samples.sheets;

import java.util.List;
import org.apache.poi.ss.usermodel.ClientAnchor;
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
import org.openxmlformats.schemas.drawingml.x2006.chart.CTTitle;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTValAx;
import org.openxmlformats.schemas.drawingml.x2006.main.CTRegularTextRun;
import org.openxmlformats.schemas.drawingml.x2006.main.CTTextCharacterProperties;
import washbook.log.sheet.CellAddress;
import washbook.samples.sheets.Book.Look;

/**
 * The curves of a log, right of it on its own sheet. The numbers drawn are in hidden columns beside
 * them. A line of the log that is not filled in yet repeats the point before it, and is #N/A before
 * the first, so that no chart shows a false zero. Two points that are not drawn keep the axes of an
 * empty log sensible; where readings go beyond them, the axes follow the readings.
 */
final class CurvePage {
  /** The first column of the charts, right of the log and its hidden columns. */
  static final int FIRST_COLUMN = 16;

  private static final int COLUMNS_PER_CHART = 4;
  private static final int ROWS_PER_CHART = 15;
  private static final int CHART_ROWS = 12;

  /** Of the charts and what is free between them. */
  private static final int PRINTED_ROWS = 30;

  private static final int COLUMN_WIDTH = 16;

  /** Behind this one stands what the charts draw: hidden, and not printed. */
  static final int LAST_COLUMN = FIRST_COLUMN + 2 * COLUMNS_PER_CHART - 1;

  private static final int DRAWN = LAST_COLUMN + 2;

  /** Where the axes reach stands this far right of the numbers drawn. */
  private static final int REACH = DRAWN + 5;

  static final int END = REACH + 5;
  private static final int FULL = 100;

  private static final double LETTERS = 10.5;

  private static final double TITLE = 14;

  /** A little less than a column, so that a chart's frame is not cut off on paper. */
  private static final int LAST_COLUMN_EMU = 1_000_000;

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

  private final Book book;
  private final XSSFSheet sheet;
  private final int first;
  private final int rows;
  private final String timeColumn;
  private final List<Curve> curves;

  /**
   * @param first the first row of the log, from 0
   */
  CurvePage(
      Book book, XSSFSheet sheet, int first, int rows, String timeColumn, List<Curve> curves) {
    this.book = book;
    this.sheet = sheet;
    this.first = first;
    this.rows = rows;
    this.timeColumn = timeColumn;
    this.curves = curves;
  }

  /** Draws two charts beside each other, the third below, headed by the batch of this cell. */
  void add(String batch, String timeTitle, double timeReach) {
    reach(timeReach);
    // Before there are formulas in these cells, which the library would try to evaluate.
    for (int c = 0; c < curves.size(); c++) {
      draw(c, timeTitle);
    }
    for (int i = 0; i < rows; i++) {
      number(first + i, 0, timeColumn, "0.0");
      for (int c = 0; c < curves.size(); c++) {
        number(first + i, c + 1, curves.get(c).column(), curves.get(c).shown());
      }
    }
    book.put(sheet, first - 1, FIRST_COLUMN, null, Look.HEADLINE)
        .setCellFormula("IF(" + batch + "=\"\",\"Charts\",\"Charts: \"&" + batch + ")");
    sheet.setColumnWidth(FIRST_COLUMN - 1, 2 * 256);
    for (int column = FIRST_COLUMN; column <= LAST_COLUMN; column++) {
      sheet.setColumnWidth(column, COLUMN_WIDTH * 256);
    }
    for (int column = LAST_COLUMN + 1; column < END; column++) {
      sheet.setColumnHidden(column, true);
    }
    Form.alsoPrinted(sheet, first, FIRST_COLUMN, first + PRINTED_ROWS - 1, LAST_COLUMN);
  }

  private void reach(double timeReach) {
    book.put(sheet, first, REACH, 0, Look.number("0"));
    book.put(sheet, first + 1, REACH, timeReach, Look.number("0"));
    for (int c = 0; c < curves.size(); c++) {
      Look look = Look.number(curves.get(c).shown());
      book.put(sheet, first, REACH + c + 1, curves.get(c).least(), look);
      double reach = curves.get(c).reach();
      book.put(sheet, first + 1, REACH + c + 1, Double.isNaN(reach) ? FULL : reach, look);
    }
  }

  private void number(int row, int column, String from, String shown) {
    String line = Integer.toString(row + 1);
    StringBuilder all = new StringBuilder(timeColumn + line);
    curves.forEach(curve -> all.append(',').append(curve.column()).append(line));
    String none = column == 0 ? "0" : "NA()";
    String before = row == first ? none : CellAddress.letters(DRAWN + column) + row;
    String text = "IF(COUNT(%s)=%d,%s,%s)".formatted(all, curves.size() + 1, from + line, before);
    book.put(sheet, row, DRAWN + column, null, Look.number(shown)).setCellFormula(text);
  }

  private void draw(int index, String timeTitle) {
    Curve curve = curves.get(index);
    int atColumn = FIRST_COLUMN + index % 2 * COLUMNS_PER_CHART;
    int atRow = first + index / 2 * ROWS_PER_CHART;
    var drawing = sheet.createDrawingPatriarch();
    var anchor =
        drawing.createAnchor(
            0,
            0,
            LAST_COLUMN_EMU,
            0,
            atColumn,
            atRow,
            atColumn + COLUMNS_PER_CHART - 1,
            atRow + CHART_ROWS);
    // Rows grow with their notes, and an .ods file's are lower: a chart keeps its size.
    anchor.setAnchorType(ClientAnchor.AnchorType.MOVE_DONT_RESIZE);
    XSSFChart chart = drawing.createChart(anchor);
    chart.setTitleText(curve.title());
    chart.getGraphicFrame().setName(curve.title());
    chart.setTitleOverlay(false);
    chart.displayBlanksAs(DisplayBlanks.GAP);
    chart.setPlotOnlyVisibleCells(false);
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
    left.getOrAddTextProperties().setFontSize(LETTERS);
    bottom.getOrAddTextProperties().setFontSize(LETTERS);
    left.getOrAddMajorGridProperties()
        .setLineProperties(
            new XDDFLineProperties(
                new XDDFSolidFillProperties(XDDFColor.from(PresetColor.LIGHT_GRAY))));
    var data = (XDDFScatterChartData) chart.createData(ChartTypes.SCATTER, bottom, left);
    data.setStyle(ScatterStyle.LINE_MARKER);
    var series = series(data, first + rows - 1, DRAWN, index);
    series.setTitle(curve.title(), null);
    series.setMarkerStyle(MarkerStyle.CIRCLE);
    int rgb = Integer.parseInt(curve.colour(), 16);
    var fill =
        new XDDFSolidFillProperties(
            XDDFColor.from(new byte[] {(byte) (rgb >> 16), (byte) (rgb >> 8), (byte) rgb}));
    XDDFShapeProperties shape = new XDDFShapeProperties();
    shape.setLineProperties(new XDDFLineProperties(fill));
    series.setShapeProperties(shape);
    var reach = series(data, first + 1, REACH, index);
    reach.setTitle("reach of the axes", null);
    reach.setMarkerStyle(MarkerStyle.NONE);
    XDDFShapeProperties unseen = new XDDFShapeProperties();
    unseen.setLineProperties(new XDDFLineProperties(new XDDFNoFillProperties()));
    reach.setShapeProperties(unseen);
    chart.plot(data);
    sized(chart.getCTChart().getTitle(), TITLE);
    for (CTValAx axis : chart.getCTChart().getPlotArea().getValAxList()) {
      if (axis.isSetTitle()) {
        sized(axis.getTitle(), LETTERS);
      }
    }
  }

  private static void sized(CTTitle title, double points) {
    CTRegularTextRun run = title.getTx().getRich().getPArray(0).getRArray(0);
    CTTextCharacterProperties letters = run.isSetRPr() ? run.getRPr() : run.addNewRPr();
    letters.setSz((int) (100 * points));
    letters.setB(true);
  }

  /** Points from the first row to the last: across in this column, the curve's right of it. */
  private XDDFScatterChartData.Series series(
      XDDFScatterChartData data, int last, int across, int index) {
    int up = across + index + 1;
    var series =
        (XDDFScatterChartData.Series)
            data.addSeries(
                XDDFDataSourcesFactory.fromNumericCellRange(
                    sheet, new CellRangeAddress(first, last, across, across)),
                XDDFDataSourcesFactory.fromNumericCellRange(
                    sheet, new CellRangeAddress(first, last, up, up)));
    series.setSmooth(false);
    return series;
  }
}
