package washbook.office.menu;

import com.sun.star.awt.Rectangle;
import com.sun.star.beans.XPropertySet;
import com.sun.star.chart.X3DDisplay;
import com.sun.star.chart.XAxisXSupplier;
import com.sun.star.chart.XChartDocument;
import com.sun.star.chart.XDiagram;
import com.sun.star.document.XEmbeddedObjectSupplier;
import com.sun.star.drawing.FillStyle;
import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XTableChart;
import com.sun.star.table.XTableCharts;
import com.sun.star.table.XTableChartsSupplier;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.util.XModifiable;
import java.util.List;
import washbook.office.dialog.StoppedException;

/** Draws columns of numbers against the first one, each into a chart of its own. */
final class SheetCharts {
  /** In hundredths of a millimetre: beside the numbers. */
  private static final int LEFT = 13_000;

  private static final int WIDTH = 15_600;
  private static final int HEIGHT = 5_700;
  private static final int GAP = 200;

  /** Of gravity, alcohol and temperature, as in the charts that the command line makes. */
  private static final int[] COLOURS = {0x1F4E5F, 0x9C3D10, 0x3F6B1F};

  private final NewSheet sheet;
  private final XTableCharts charts;
  private int count;

  SheetCharts(NewSheet sheet) {
    this.sheet = sheet;
    this.charts = UnoRuntime.queryInterface(XTableChartsSupplier.class, sheet.sheet()).getCharts();
  }

  int count() {
    return count;
  }

  /** Draws columns below a row of heads; the first column, 0, is the time. */
  void draw(String title, int headRow, int lastRow, List<Integer> columns) {
    try {
      for (int column : columns) {
        draw(title, headRow, lastRow, column);
      }
    } catch (com.sun.star.uno.Exception e) {
      throw new StoppedException("stopped.write", e);
    }
  }

  private void draw(String title, int headRow, int lastRow, int column)
      throws com.sun.star.uno.Exception {
    String name = "Washbook " + ++count;
    Rectangle place = new Rectangle(LEFT, 1000 + (count - 1) * (HEIGHT + GAP), WIDTH, HEIGHT);
    CellRangeAddress[] cells = {address(0, headRow, lastRow), address(column, headRow, lastRow)};
    charts.addNewByName(name, place, cells, true, true);
    XTableChart made = UnoRuntime.queryInterface(XTableChart.class, charts.getByName(name));
    XChartDocument chart =
        UnoRuntime.queryInterface(
            XChartDocument.class,
            UnoRuntime.queryInterface(XEmbeddedObjectSupplier.class, made).getEmbeddedObject());
    XDiagram diagram =
        UnoRuntime.queryInterface(
            XDiagram.class,
            UnoRuntime.queryInterface(XMultiServiceFactory.class, chart)
                .createInstance("com.sun.star.chart.XYDiagram"));
    chart.setDiagram(diagram);
    X3DDisplay walls = UnoRuntime.queryInterface(X3DDisplay.class, diagram);
    set(walls.getWall(), "FillStyle", FillStyle.NONE);
    set(diagram, "Lines", true);
    set(chart, "HasLegend", false);
    set(chart, "HasMainTitle", true);
    set(chart.getTitle(), "String", title + ": " + text(column, headRow));
    set(chart.getTitle(), "CharHeight", 11f);
    XAxisXSupplier axes = UnoRuntime.queryInterface(XAxisXSupplier.class, diagram);
    set(diagram, "HasXAxisTitle", true);
    set(axes.getXAxisTitle(), "String", text(0, headRow));
    set(diagram.getDataRowProperties(0), "Color", COLOURS[column - 1]);
    UnoRuntime.queryInterface(XModifiable.class, chart).setModified(false);
  }

  private String text(int column, int row) throws com.sun.star.uno.Exception {
    return sheet.sheet().getCellByPosition(column, row).getFormula();
  }

  private CellRangeAddress address(int column, int from, int to) throws com.sun.star.uno.Exception {
    return UnoRuntime.queryInterface(
            XCellRangeAddressable.class,
            sheet.sheet().getCellRangeByPosition(column, from, column, to))
        .getRangeAddress();
  }

  private static void set(Object object, String property, Object value)
      throws com.sun.star.uno.Exception {
    UnoRuntime.queryInterface(XPropertySet.class, object).setPropertyValue(property, value);
  }
}
