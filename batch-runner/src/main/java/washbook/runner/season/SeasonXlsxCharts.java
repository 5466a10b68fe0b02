package washbook.runner.season;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.DisplayBlanks;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.ScatterStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import washbook.runner.language.Wording;

/** Charts of all batches of one kind laid over each other by days, and the numbers drawn. */
final class SeasonXlsxCharts {
  /** Two charts stand on a page. */
  private static final int ROWS_PER_CHART = 16;

  private static final int FIRST_ROW = 2;
  private static final int COLUMNS = 12;

  /** Per cent: room for columns that another font makes wider. */
  private static final short SCALE = 85;

  /** More series than these make a legend longer than the chart. */
  private static final int MOST_NAMED = 20;

  /** Ten colours that differ also for most colour-blind eyes and in print. */
  static final String[] COLOURS = {
    "1F4E5F", "9C3D10", "3F6B1F", "7A3E8E", "8B6508", "A3231B", "4A6FA5", "6B645B", "B0496A",
    "0B7A75"
  };

  private final XSSFSheet sheet;
  private final SeasonStyles styles;
  private final Wording words;
  private int nextRow;

  SeasonXlsxCharts(XSSFSheet sheet, SeasonStyles styles, Wording words) {
    this.sheet = sheet;
    this.styles = styles;
    this.words = words;
  }

  void draw(Map<String, List<SeasonRow>> byWash) {
    nextRow = FIRST_ROW + 2 * ROWS_PER_CHART * byWash.size();
    XSSFRow heads = sheet.createRow(nextRow++);
    for (String head : SeasonTable.curveHeads(words)) {
      SeasonXlsx.text(heads, Math.max(0, heads.getLastCellNum()), head, styles.head);
    }
    heads.setHeightInPoints(SeasonXlsx.HEAD_POINTS);
    int at = FIRST_ROW;
    XSSFDrawing drawing = sheet.createDrawingPatriarch();
    for (Map.Entry<String, List<SeasonRow>> kind : byWash.entrySet()) {
      int first = nextRow;
      kind.getValue().forEach(this::numbers);
      chart(drawing, at, SeasonTable.chartTitle(kind.getKey(), words), kind.getValue(), first, 1);
      at += ROWS_PER_CHART;
      chart(drawing, at, SeasonTable.alcoholTitle(kind.getKey(), words), kind.getValue(), first, 2);
      at += ROWS_PER_CHART;
      sheet.setRowBreak(at - 1);
    }
    sheet.setColumnWidth(3, 26 * 256);
    SeasonXlsx.onPaper(sheet);
    // The numbers are for the screen.
    int lastRow = FIRST_ROW + 2 * ROWS_PER_CHART * byWash.size() - 1;
    int index = sheet.getWorkbook().getSheetIndex(sheet);
    sheet.getWorkbook().setPrintArea(index, 0, COLUMNS, 0, lastRow);
    sheet.getPrintSetup().setScale(SCALE);
  }

  private void numbers(SeasonRow batch) {
    for (double[] point : batch.curve().points()) {
      XSSFRow row = sheet.createRow(nextRow++);
      int[] decimals = {2, 4, 2};
      for (int i = 0; i < decimals.length; i++) {
        if (Double.isFinite(point[i])) {
          row.createCell(i).setCellValue(point[i]);
          row.getCell(i).setCellStyle(styles.number(decimals[i]));
        }
      }
      SeasonXlsx.text(row, 3, batch.line().batch().batch(), styles.plain);
    }
  }

  private void chart(
      XSSFDrawing drawing, int atRow, String title, List<SeasonRow> batches, int first, int value) {
    XSSFChart chart =
        drawing.createChart(
            drawing.createAnchor(0, 0, 0, 0, 0, atRow, COLUMNS, atRow + ROWS_PER_CHART - 1));
    chart.setTitleText(title);
    chart.setTitleOverlay(false);
    if (batches.size() <= MOST_NAMED) {
      chart.getOrAddLegend().setPosition(LegendPosition.RIGHT);
    }
    XDDFValueAxis days = chart.createValueAxis(AxisPosition.BOTTOM);
    days.setTitle(words.say("season.days"));
    days.setNumberFormat("0");
    days.setMinimum(0);
    days.setCrosses(AxisCrosses.MIN);
    XDDFValueAxis values = chart.createValueAxis(AxisPosition.LEFT);
    values.setNumberFormat(value == 1 ? "0.000" : "0");
    values.setCrosses(AxisCrosses.MIN);
    values.setMinimum(value == 1 ? lowest(batches) : 0);
    values.getOrAddMajorGridProperties().setLineProperties(new XDDFLineProperties(fill("D9D3C8")));
    XDDFScatterChartData data =
        (XDDFScatterChartData) chart.createData(ChartTypes.SCATTER, days, values);
    data.setStyle(ScatterStyle.LINE_MARKER);
    data.setVaryColors(false);
    int row = first;
    for (int i = 0; i < batches.size(); i++) {
      int last = row + batches.get(i).curve().points().length - 1;
      XDDFScatterChartData.Series series =
          (XDDFScatterChartData.Series)
              data.addSeries(numbers(row, last, 0), numbers(row, last, value));
      series.setTitle(batches.get(i).line().batch().batch(), null);
      series.setSmooth(false);
      series.setMarkerStyle(MarkerStyle.NONE);
      XDDFLineProperties line = new XDDFLineProperties(fill(COLOURS[i % COLOURS.length]));
      line.setWidth(1.5);
      series.setLineProperties(line);
      row = last + 1;
    }
    chart.displayBlanksAs(DisplayBlanks.SPAN);
    chart.plot(data);
  }

  private XDDFNumericalDataSource<Double> numbers(int first, int last, int column) {
    return XDDFDataSourcesFactory.fromNumericCellRange(
        sheet, new CellRangeAddress(first, last, column, column));
  }

  /** A hundredth of SG at or below all points. */
  static double lowest(List<SeasonRow> batches) {
    double lowest =
        batches.stream()
            .flatMap(batch -> Arrays.stream(batch.curve().points()))
            .mapToDouble(point -> point[1])
            .filter(Double::isFinite)
            .min()
            .orElse(1);
    return Math.floor(lowest * 100) / 100;
  }

  private static XDDFSolidFillProperties fill(String rgb) {
    int value = Integer.parseInt(rgb, 16);
    return new XDDFSolidFillProperties(
        XDDFColor.from(new byte[] {(byte) (value >> 16), (byte) (value >> 8), (byte) value}));
  }
}
