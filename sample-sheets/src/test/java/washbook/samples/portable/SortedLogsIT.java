package washbook.samples.portable;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import com.sun.star.beans.PropertyValue;
import com.sun.star.sheet.XCellAddressable;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeMovement;
import com.sun.star.table.TableSortField;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.table.XTableRows;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.util.XSortable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.functions.Answer;
import washbook.functions.catalogue.Catalogue;
import washbook.log.fill.FillOptions;
import washbook.log.fill.FormulaStyle;
import washbook.log.fill.LogFiller;
import washbook.log.sheet.Grid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;
import washbook.office.testing.Book;
import washbook.office.testing.Office;
import washbook.runner.read.OdsReader;
import washbook.runner.read.XlsxReader;
import washbook.runner.write.OdsWriter;
import washbook.runner.write.XlsxWriter;

/**
 * Logs whose original gravity is the first reading, filled with formulas, then sorted, added to and
 * changed in the office: every row must go on showing what the functions give.
 */
class SortedLogsIT {
  /** Batch, day, reading, °C; the first of a batch is not always its highest reading as shown. */
  private static final Object[][] READINGS = {
    {"Plum 3", 1.0, 1.078, 34.0},
    {"Plum 3", 2.0, 1.0805, 12.0},
    {"Plum 31", 2.0, 1.052, 20.0},
    {"Apple 7", 3.0, 1.055, 17.0},
    {"Plum 3", 4.0, 1.041, 26.0},
    {"Plum 31", 5.0, 1.02, 24.0},
    {"Apple 7", 6.0, 1.03, 16.0},
    {"Plum 3", 8.0, 0.998, 19.0},
    {"Apple 7", 9.0, 1.004, 21.0},
    {"Plum 31", 9.0, 0.997, 18.0},
  };

  private static final double FIRST_DATE = 45930;

  @TempDir static Path folder;
  private static Office plain;
  private static Office withPack;

  @BeforeAll
  static void startTheOffices() {
    plain = Office.plain();
    withPack = Office.with(Path.of(System.getProperty("washbook.oxt")));
  }

  @AfterAll
  static void endTheOffices() {
    plain.close();
    withPack.close();
  }

  /** A log open in the office, and what its rows must show. */
  private static final class Log {
    final Book book;
    final boolean batches;
    final Map<String, double[]> readings = new HashMap<>();
    int last;

    Log(Book book, boolean batches) {
      this.book = book;
      this.batches = batches;
      for (Object[] r : rows(batches)) {
        readings.put(r[0] + " " + r[1], new double[] {(double) r[2], (double) r[3]});
        last++;
      }
      last++;
    }

    String column(String header) {
      for (char c = 'A'; c < 'Z'; c++) {
        if (book.shown(c + "1").equals(header)) {
          return "" + c;
        }
      }
      throw new AssertionError("no column " + header);
    }

    XTableRows rowsOfSheet() {
      return UnoRuntime.queryInterface(XColumnRowRange.class, book.sheet()).getRows();
    }

    void sort(String header, boolean ascending) throws Exception {
      TableSortField field = new TableSortField();
      field.Field = column(header).charAt(0) - 'A';
      field.IsAscending = ascending;
      PropertyValue fields = new PropertyValue();
      fields.Name = "SortFields";
      fields.Value = new TableSortField[] {field};
      String range = "A2:" + column("First gravity (SG, Washbook)") + last;
      UnoRuntime.queryInterface(XSortable.class, book.sheet().getCellRangeByName(range))
          .sort(new PropertyValue[] {fields});
    }

    void assertRight(String when) {
      int seen = 0;
      for (int row = 2; row <= last; row++) {
        String date = column("Date");
        if (book.number(date + row) == 0) {
          continue;
        }
        String batch = batches ? book.shown(column("Batch") + row) : "Plum 3";
        double day = book.number(date + row) - FIRST_DATE;
        assertRow(row, batch, day, when + ", " + batch + " day " + day);
        seen++;
      }
      assertEquals(readings.size(), seen, when);
    }

    private void assertRow(int row, String batch, double day, String message) {
      double[] own = readings.get(batch + " " + day);
      assertEquals(own[0], book.number(column("SG") + row), 1e-12, message);
      double firstDay = batch.equals("Plum 3") ? 1 : batch.equals("Plum 31") ? 2 : 3;
      double[] first = readings.get(batch + " " + firstDay);
      double original = calc("CORRECTEDGRAVITY", first[0], first[1]);
      double gravity = calc("CORRECTEDGRAVITY", own[0], own[1], 20.0, original);
      assertShown("Corrected gravity (SG)", row, gravity, 0.0001, message);
      // An original gravity and a gravity that are off by their formulas' errors.
      assertShown("Alcohol to date (% vol)", row, calc("ABV", original, gravity), 0.05, message);
      double apparent = calc("APPARENTATTENUATION", original, gravity);
      assertShown("Apparent attenuation (%)", row, apparent, 0.4, message);
      double real = calc("REALATTENUATION", original, gravity);
      assertShown("Real attenuation (%)", row, real, 0.4, message);
    }

    private void assertShown(String header, int row, double right, double bound, String message) {
      String cell = column(header) + row;
      assertEquals(0, book.error(cell), message + ", " + cell);
      assertEquals(right, book.number(cell), bound, message + ", " + cell);
    }
  }

  private static List<Object[]> rows(boolean batches) {
    List<Object[]> rows = new ArrayList<>();
    for (Object[] reading : READINGS) {
      if (batches || reading[0].equals("Plum 3")) {
        rows.add(reading);
      }
    }
    return rows;
  }

  private static double calc(String name, Object... arguments) {
    return ((Answer.Number) Catalogue.get(name).call(arguments)).value();
  }

  private static Path write(boolean batches, String kind) throws IOException {
    Path log = folder.resolve("log" + batches + ".xlsx");
    try (Workbook book = new XSSFWorkbook()) {
      Sheet sheet = book.createSheet("Plum 3");
      var date = book.createCellStyle();
      date.setDataFormat(book.createDataFormat().getFormat("yyyy-mm-dd"));
      List<String> words = new ArrayList<>(List.of("Batch", "Date", "SG", "Temp (°C)"));
      int from = batches ? 0 : 1;
      Row header = sheet.createRow(0);
      for (int c = from; c < words.size(); c++) {
        header.createCell(c - from).setCellValue(words.get(c));
      }
      for (Object[] reading : rows(batches)) {
        Row row = sheet.createRow(sheet.getLastRowNum() + 1);
        if (batches) {
          row.createCell(0).setCellValue((String) reading[0]);
        }
        row.createCell(1 - from).setCellValue(FIRST_DATE + (double) reading[1]);
        row.getCell(1 - from).setCellStyle(date);
        row.createCell(2 - from).setCellValue((double) reading[2]);
        row.createCell(3 - from).setCellValue((double) reading[3]);
      }
      try (OutputStream out = Files.newOutputStream(log)) {
        book.write(out);
      }
    }
    if (kind.equals("xlsx")) {
      return log;
    }
    Path ods = folder.resolve("log" + batches + ".ods");
    try (Book book = plain.open(log)) {
      book.save(ods);
    }
    return ods;
  }

  private static Path fill(Path log, FormulaStyle style, String name) throws IOException {
    boolean ods = log.toString().endsWith(".ods");
    Grid grid = (ods ? new OdsReader() : new XlsxReader()).read(log).get(0);
    FillOptions options = new FillOptions(FillOptions.usual().columns(), style);
    var filling = LogFiller.fill(grid, SheetUnderstanding.understand(grid, LogMap.none()), options);
    assertEquals(List.of(), List.copyOf(filling.refusals()));
    Path target = folder.resolve(name + (ods ? ".ods" : ".xlsx"));
    (ods ? new OdsWriter() : new XlsxWriter()).write(log, List.of(filling.patch()), target);
    return target;
  }

  @ParameterizedTest
  @CsvSource({
    "PORTABLE, xlsx, false",
    "PORTABLE, xlsx, true",
    "PORTABLE, ods, false",
    "PORTABLE, ods, true",
    "PACK, xlsx, false",
    "PACK, xlsx, true",
    "PACK, ods, true",
  })
  void everyRowStaysRight(FormulaStyle style, String kind, boolean batches) throws Exception {
    Path filled = fill(write(batches, kind), style, "filled");
    assertArrayEquals(
        Files.readAllBytes(filled),
        Files.readAllBytes(fill(filled, style, "again")),
        "filled a second time");
    try (Book book = (style == FormulaStyle.PACK ? withPack : plain).open(filled)) {
      Log log = new Log(book, batches);
      book.recalculate();
      log.assertRight("as filled");
      log.sort("SG", true);
      book.recalculate();
      log.assertRight("sorted by gravity");
      assertNotEquals(FIRST_DATE + 1, book.number(log.column("Date") + 2), "it is sorted");
      log.sort("Date", false);
      log.assertRight("sorted by date, the last one first");
      log.sort("Temp (°C)", true);
      log.assertRight("sorted by temperature");
      log.sort("Date", true);
      log.assertRight("sorted back");

      log.rowsOfSheet().insertByIndex(0, 2);
      log.rowsOfSheet().removeByIndex(0, 2);
      log.rowsOfSheet().insertByIndex(1, 1);
      log.rowsOfSheet().insertByIndex(4, 1);
      log.last += 2;
      log.assertRight("rows put in under the header and in between");

      append(log);
      log.assertRight("a row added below");
      log.sort("Date", false);
      book.recalculate();
      log.assertRight("sorted with the new rows");

      changeTheFirstReading(log);
      book.recalculate();
      log.assertRight("another first reading");
    }
  }

  /** A new reading below the last one, with the formulas copied down. */
  private static void append(Log log) {
    Book book = log.book;
    int above = log.last;
    int row = ++log.last;
    var copy = UnoRuntime.queryInterface(XCellRangeMovement.class, book.sheet());
    var source =
        UnoRuntime.queryInterface(
                XCellRangeAddressable.class,
                book.sheet().getCellRangeByName("A" + above + ":Z" + above))
            .getRangeAddress();
    var target =
        UnoRuntime.queryInterface(XCellAddressable.class, book.cell("A" + row)).getCellAddress();
    copy.copyRange(target, source);
    String batch = log.batches ? book.shown(log.column("Batch") + row) : "Plum 3";
    book.number(log.column("Date") + row, FIRST_DATE + 20);
    book.number(log.column("SG") + row, 0.9965);
    book.number(log.column("Temp (°C)") + row, 22.0);
    log.readings.put(batch + " 20.0", new double[] {0.9965, 22.0});
  }

  private static void changeTheFirstReading(Log log) {
    for (int row = 2; row <= log.last; row++) {
      boolean plum = !log.batches || log.book.shown(log.column("Batch") + row).equals("Plum 3");
      if (plum && log.book.number(log.column("Date") + row) == FIRST_DATE + 1) {
        log.book.number(log.column("SG") + row, 1.09);
        log.readings.put("Plum 3 1.0", new double[] {1.09, 34.0});
      }
    }
  }
}
