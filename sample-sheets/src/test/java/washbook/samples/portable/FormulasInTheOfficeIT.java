package washbook.samples.portable;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.PropertyValue;
import com.sun.star.table.TableSortField;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.util.XSortable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
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

/** Filled logs on machines with and without the extension. */
class FormulasInTheOfficeIT {
  private static final double[][] READINGS = {
    {1.085, 24}, {1.062, 27}, {1.041, 26}, {1.030, 25.5}, {1.012, 22}, {0.998, 19}
  };
  private static final int FIRST = 4;
  private static final int LAST = FIRST + READINGS.length - 1;

  @TempDir static Path folder;
  private static Office plain;
  private static Path log;

  @BeforeAll
  static void writeTheLog() throws IOException {
    plain = Office.plain();
    log = folder.resolve("Plum 3.xlsx");
    try (Workbook book = new XSSFWorkbook()) {
      Sheet sheet = book.createSheet("Plum 3");
      Row stated = sheet.createRow(0);
      stated.createCell(0).setCellValue("Original gravity");
      stated.createCell(1).setCellValue(1.087);
      Row header = sheet.createRow(FIRST - 2);
      List<String> words = List.of("Day", "SG", "Temp (°C)");
      for (int c = 0; c < words.size(); c++) {
        header.createCell(c).setCellValue(words.get(c));
      }
      for (int r = 0; r < READINGS.length; r++) {
        Row row = sheet.createRow(FIRST - 1 + r);
        row.createCell(0).setCellValue(r + 1);
        row.createCell(1).setCellValue(READINGS[r][0]);
        row.createCell(2).setCellValue(READINGS[r][1]);
      }
      try (OutputStream out = Files.newOutputStream(log)) {
        book.write(out);
      }
    }
  }

  @AfterAll
  static void endTheOffice() {
    plain.close();
  }

  private static Path filled(FormulaStyle style) throws IOException {
    return filled(style, log);
  }

  private static Path filled(FormulaStyle style, Path log) throws IOException {
    boolean ods = log.toString().endsWith(".ods");
    Grid grid = (ods ? new OdsReader() : new XlsxReader()).read(log).get(0);
    FillOptions options = new FillOptions(FillOptions.usual().columns(), style);
    var filling = LogFiller.fill(grid, SheetUnderstanding.understand(grid, LogMap.none()), options);
    assertEquals(List.of(), List.copyOf(filling.refusals()));
    Path target = folder.resolve(style + (ods ? ".ods" : ".xlsx"));
    (ods ? new OdsWriter() : new XlsxWriter()).write(log, List.of(filling.patch()), target);
    return target;
  }

  private static double calc(String name, Object... arguments) {
    return ((Answer.Number) Catalogue.get(name).call(arguments)).value();
  }

  /** Corrected gravity and alcohol of a reading. */
  private static double[] exact(double reading, double temperatureC) {
    double gravity = calc("CORRECTEDGRAVITY", reading, temperatureC, 20.0, 1.087);
    return new double[] {gravity, calc("ABV", 1.087, gravity)};
  }

  /** Corrected gravity and alcohol by day, as the sheet shows them now. */
  private static Map<Double, double[]> byDay(Book book, int last) {
    Map<Double, double[]> rows = new TreeMap<>();
    for (int row = FIRST; row <= last; row++) {
      if (book.number("B" + row) != 0) {
        assertEquals(0, book.error("D" + row), "D" + row);
        assertEquals(0, book.error("E" + row), "E" + row);
        rows.put(
            book.number("A" + row), new double[] {book.number("D" + row), book.number("E" + row)});
      }
    }
    return rows;
  }

  private static void assertRight(Book book, int last) {
    Map<Double, double[]> rows = byDay(book, last);
    assertEquals(READINGS.length, rows.size());
    rows.forEach(
        (day, shown) -> {
          double[] reading = READINGS[(int) (day - 1)];
          double[] right = exact(reading[0], reading[1]);
          assertEquals(right[0], shown[0], 0.0001, "gravity of day " + day);
          assertEquals(right[1], shown[1], 0.02, "alcohol of day " + day);
        });
  }

  @Test
  void portableFormulasStayRightWhenARowIsPutInAndWhenTheLogIsSorted() throws Exception {
    try (Book book = plain.open(filled(FormulaStyle.PORTABLE))) {
      assertRight(book, LAST);
      book.recalculate();
      assertRight(book, LAST);
      UnoRuntime.queryInterface(XColumnRowRange.class, book.sheet()).getRows().insertByIndex(5, 1);
      assertRight(book, LAST + 1);
      UnoRuntime.queryInterface(XColumnRowRange.class, book.sheet()).getRows().insertByIndex(0, 2);
      UnoRuntime.queryInterface(XColumnRowRange.class, book.sheet()).getRows().removeByIndex(0, 2);
      sortByGravity(book, LAST + 1);
      assertEquals(READINGS.length, book.number("A" + FIRST), "the last day is first now");
      book.recalculate();
      assertRight(book, LAST + 1);
    }
  }

  private static void sortByGravity(Book book, int last) throws Exception {
    TableSortField field = new TableSortField();
    field.Field = 1;
    field.IsAscending = true;
    PropertyValue fields = new PropertyValue();
    fields.Name = "SortFields";
    fields.Value = new TableSortField[] {field};
    UnoRuntime.queryInterface(
            XSortable.class, book.sheet().getCellRangeByName("A" + FIRST + ":G" + last))
        .sort(new PropertyValue[] {fields});
  }

  @Test
  void aChangedReadingIsComputedWithoutTheExtension() throws Exception {
    try (Book book = plain.open(filled(FormulaStyle.PORTABLE))) {
      book.number("B5", 1.055).number("C5", 35);
      double[] right = exact(1.055, 35);
      assertEquals(right[0], book.number("D5"), 0.0001);
      assertEquals(right[1], book.number("E5"), 0.02);
      book.text("B5", "");
      assertEquals("", book.shown("D5"));
      assertEquals("", book.shown("E5"));
      book.text("B5", "n/a");
      assertEquals("#N/A", book.shown("D5"));
    }
  }

  @Test
  void packFormulasShowTheirStoredValuesWithoutTheExtensionAndReviveWithIt() throws Exception {
    Path saved = folder.resolve("saved.xlsx");
    try (Book book = plain.open(filled(FormulaStyle.PACK))) {
      assertTrue(
          book.cell("E5").getFormula().toUpperCase(Locale.ROOT).contains("WASHBOOK.ABV("),
          book.cell("E5").getFormula());
      assertRight(book, LAST);
      book.save(saved);
    }
    Path oxt = Path.of(System.getProperty("washbook.oxt"));
    try (Office office = Office.with(oxt);
        Book book = office.open(saved)) {
      book.number("B5", 1.055).number("C5", 35);
      book.recalculate();
      double[] right = exact(1.055, 35);
      assertEquals(right[0], book.number("D5"), 1e-12);
      assertEquals(right[1], book.number("E5"), 1e-9);
    }
  }

  /**
   * In .ods the office does not show a stored number of a function that it does not know; the
   * formula and, in the file as filled, the number are kept, and the extension revives them.
   */
  @Test
  void packFormulasOfAnOpenDocumentReviveWithTheExtension() throws Exception {
    Path ods = folder.resolve("Plum 3.ods");
    Path saved = folder.resolve("saved.ods");
    try (Book book = plain.open(log)) {
      book.save(ods);
    }
    Path filled = filled(FormulaStyle.PACK, ods);
    double[] right = exact(READINGS[1][0], READINGS[1][1]);
    assertEquals(right[1], new OdsReader().read(filled).get(0).number(FIRST, 4), 1e-9);
    try (Book book = plain.open(filled)) {
      String formula = book.cell("E5").getFormula().toUpperCase(Locale.ROOT);
      assertTrue(formula.contains("WASHBOOK.ABV("), formula);
      book.save(saved);
    }
    try (Office office = Office.with(Path.of(System.getProperty("washbook.oxt")))) {
      for (Path file : List.of(filled, saved)) {
        try (Book book = office.open(file)) {
          assertRight(book, LAST);
          book.number("B5", 1.055).number("C5", 35);
          assertEquals(exact(1.055, 35)[1], book.number("E5"), 1e-9, "" + file);
        }
      }
    }
  }
}
