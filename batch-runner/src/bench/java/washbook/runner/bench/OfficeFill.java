package washbook.runner.bench;

import com.sun.star.beans.PropertyValue;
import com.sun.star.bridge.XUnoUrlResolver;
import com.sun.star.comp.helper.Bootstrap;
import com.sun.star.connection.NoConnectException;
import com.sun.star.frame.XComponentLoader;
import com.sun.star.frame.XDesktop;
import com.sun.star.frame.XStorable;
import com.sun.star.lang.DisposedException;
import com.sun.star.lang.XMultiComponentFactory;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XSheetCellCursor;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XUsedAreaCursor;
import com.sun.star.table.XCellRange;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import com.sun.star.util.XCloseable;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Path;
import java.util.List;

/**
 * The same job by the office without a window: it loads each log, a UNO program fetches the columns
 * that it needs, calculates and puts the new ones in, and the office stores. The columns are known
 * beforehand.
 */
final class OfficeFill {
  private static final int ROWS_AT_ONCE = 20_000;

  private OfficeFill() {}

  /** The office, its profile, folder of the logs, folder of the results. */
  public static void main(String[] arguments) throws Exception {
    int port;
    try (ServerSocket free = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      port = free.getLocalPort();
    }
    String where = "socket,host=127.0.0.1,port=" + port + ";urp;";
    Process office =
        new ProcessBuilder(
                List.of(
                    arguments[0],
                    "-env:UserInstallation=" + Path.of(arguments[1]).toUri(),
                    "--headless",
                    "--norestore",
                    "--nologo",
                    "--accept=" + where))
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    XComponentContext context = connect(office, where);
    Object desktop =
        context
            .getServiceManager()
            .createInstanceWithContext("com.sun.star.frame.Desktop", context);
    XComponentLoader loader = UnoRuntime.queryInterface(XComponentLoader.class, desktop);
    EachFile.in(
        Path.of(arguments[2]),
        Path.of(arguments[3]),
        1,
        (source, target) -> fill(loader, source, target));
    try {
      UnoRuntime.queryInterface(XDesktop.class, desktop).terminate();
    } catch (DisposedException ended) {
      // The office has gone before it answered.
    }
    office.waitFor();
    System.exit(0);
  }

  private static XComponentContext connect(Process office, String where) throws Exception {
    XComponentContext ours = Bootstrap.createInitialComponentContext(null);
    XMultiComponentFactory factory = ours.getServiceManager();
    XUnoUrlResolver resolver =
        UnoRuntime.queryInterface(
            XUnoUrlResolver.class,
            factory.createInstanceWithContext("com.sun.star.bridge.UnoUrlResolver", ours));
    while (true) {
      try {
        return UnoRuntime.queryInterface(
            XComponentContext.class,
            resolver.resolve("uno:" + where + "StarOffice.ComponentContext"));
      } catch (NoConnectException notYet) {
        if (!office.isAlive()) {
          throw new IllegalStateException(
              "the office has ended with " + office.exitValue(), notYet);
        }
        Thread.sleep(20);
      }
    }
  }

  private static void fill(XComponentLoader loader, Path source, Path target) throws Exception {
    XSpreadsheetDocument book =
        UnoRuntime.queryInterface(
            XSpreadsheetDocument.class,
            loader.loadComponentFromURL(
                source.toUri().toString(), "_blank", 0, properties("Hidden", true)));
    for (String name : book.getSheets().getElementNames()) {
      fill(UnoRuntime.queryInterface(XSpreadsheet.class, book.getSheets().getByName(name)));
    }
    String filter = target.toString().endsWith(".ods") ? "calc8" : "Calc MS Excel 2007 XML";
    UnoRuntime.queryInterface(XStorable.class, book)
        .storeToURL(target.toUri().toString(), properties("FilterName", filter));
    UnoRuntime.queryInterface(XCloseable.class, book).close(true);
  }

  private static PropertyValue[] properties(String name, Object value) {
    PropertyValue property = new PropertyValue();
    property.Name = name;
    property.Value = value;
    return new PropertyValue[] {property};
  }

  private static void fill(XSpreadsheet sheet) throws Exception {
    XSheetCellCursor cursor = sheet.createCursor();
    UnoRuntime.queryInterface(XUsedAreaCursor.class, cursor).gotoEndOfUsedArea(true);
    int rows = UnoRuntime.queryInterface(XColumnRowRange.class, cursor).getRows().getCount();
    put(sheet, 0, new Object[][] {KnownColumns.NEW_HEADERS.toArray()});
    KnownColumns columns = new KnownColumns();
    for (int first = 1; first < rows; first += ROWS_AT_ONCE) {
      int last = Math.min(first + ROWS_AT_ONCE, rows) - 1;
      Object[][] read =
          data(sheet, KnownColumns.BATCH, first, KnownColumns.TEMPERATURE, last).getDataArray();
      Object[][] filled = new Object[read.length][];
      for (int i = 0; i < read.length; i++) {
        double[] row = columns.fill((String) read[i][0], (Double) read[i][1], (Double) read[i][2]);
        filled[i] = new Object[] {row[0], row[1], row[2], row[3]};
      }
      put(sheet, first, filled);
    }
  }

  private static void put(XSpreadsheet sheet, int firstRow, Object[][] cells) throws Exception {
    int last = KnownColumns.FIRST_NEW + cells[0].length - 1;
    data(sheet, KnownColumns.FIRST_NEW, firstRow, last, firstRow + cells.length - 1)
        .setDataArray(cells);
  }

  private static XCellRangeData data(
      XCellRange sheet, int firstColumn, int firstRow, int lastColumn, int lastRow)
      throws Exception {
    return UnoRuntime.queryInterface(
        XCellRangeData.class,
        sheet.getCellRangeByPosition(firstColumn, firstRow, lastColumn, lastRow));
  }
}
