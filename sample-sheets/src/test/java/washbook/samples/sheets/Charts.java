package washbook.samples.sheets;

import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFLineChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** A line chart of readings, as a person draws it. */
final class Charts {
  private Charts() {}

  /** Draws the values of one column over the categories of another, below or beside the table. */
  static void line(
      XSSFSheet sheet,
      String title,
      int categories,
      int values,
      int firstRow,
      int lastRow,
      int atColumn,
      int atRow) {
    XSSFDrawing drawing = sheet.createDrawingPatriarch();
    XSSFClientAnchor anchor =
        drawing.createAnchor(0, 0, 0, 0, atColumn, atRow, atColumn + 6, atRow + 15);
    XSSFChart chart = drawing.createChart(anchor);
    chart.setTitleText(title);
    chart.getOrAddLegend().setPosition(LegendPosition.BOTTOM);
    var bottom = chart.createCategoryAxis(AxisPosition.BOTTOM);
    XDDFValueAxis left = chart.createValueAxis(AxisPosition.LEFT);
    left.setMinimum(0.98);
    XDDFLineChartData data = (XDDFLineChartData) chart.createData(ChartTypes.LINE, bottom, left);
    XDDFChartData.Series series =
        data.addSeries(
            XDDFDataSourcesFactory.fromNumericCellRange(
                sheet, new CellRangeAddress(firstRow, lastRow, categories, categories)),
            XDDFDataSourcesFactory.fromNumericCellRange(
                sheet, new CellRangeAddress(firstRow, lastRow, values, values)));
    series.setTitle("Gravity", null);
    ((XDDFLineChartData.Series) series).setMarkerStyle(MarkerStyle.CIRCLE);
    chart.plot(data);
  }
}
