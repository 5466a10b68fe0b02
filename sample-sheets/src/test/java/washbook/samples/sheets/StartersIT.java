package washbook.samples.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.UnoRuntime;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.functions.Answer;
import washbook.functions.SafetyNote;
import washbook.functions.catalogue.Catalogue;
import washbook.office.testing.Office;

/** The starter workbooks in the real office: what they hold is what the office calculates. */
class StartersIT {
  private static final Path FOLDER = Path.of("starters");
  private static final int ROWS = 120;
  private static final int COLUMNS = CurvePage.END;

  @Test
  void storedResultsAreWhatTheOfficeCalculates() throws IOException {
    int formulas = 0;
    try (Office office = Office.with(Path.of(System.getProperty("washbook.oxt")))) {
      for (Path file : starters()) {
        if (file.getFileName().toString().startsWith("proof")) {
          // Its thousands of cells are read at once, by ProofSheetIT.
          continue;
        }
        try (washbook.office.testing.Book book = office.open(file)) {
          Map<String, Object> stored = results(book);
          book.recalculate();
          same(file.toString(), stored, results(book));
          formulas += stored.size();
        }
      }
    }
    // 8 calculated cells in each of 60 rows of two log sheets alone, in two formats and forms.
    assertTrue(formulas > 3800, formulas + " formulas");
  }

  private static List<Path> starters() throws IOException {
    try (Stream<Path> files = Files.walk(FOLDER)) {
      List<Path> all = files.filter(Files::isRegularFile).sorted().toList();
      assertEquals(40, all.size());
      return all;
    }
  }

  /** Numbers may differ as much as another way of solving the same equation does. */
  private static void same(
      String file, Map<String, Object> stored, Map<String, Object> calculated) {
    assertEquals(stored.keySet(), calculated.keySet(), file);
    stored.forEach(
        (where, value) -> {
          if (value.equals(0.0) && calculated.get(where).equals("")) {
            // A formula whose stored result is an empty text is loaded without a kind of result.
            return;
          }
          if (value instanceof Double number) {
            double now =
                calculated.get(where) instanceof Double calculatedNumber
                    ? calculatedNumber
                    : fail(file + " " + where + ": " + value + ", " + calculated.get(where));
            assertEquals(number, now, 1e-8 * Math.max(1, Math.abs(number)), file + " " + where);
          } else {
            assertEquals(value, calculated.get(where), file + " " + where);
          }
        });
  }

  /** Address and result of every formula. */
  private static Map<String, Object> results(washbook.office.testing.Book book) {
    Map<String, Object> results = new TreeMap<>();
    int sheets = book.as(XSpreadsheetDocument.class).getSheets().getElementNames().length;
    for (int i = 0; i < sheets; i++) {
      XCellRange cells = cells(Starters.sheet(book, i));
      String[][] formulas =
          UnoRuntime.queryInterface(XCellRangeFormula.class, cells).getFormulaArray();
      Object[][] shown = UnoRuntime.queryInterface(XCellRangeData.class, cells).getDataArray();
      for (int row = 0; row < ROWS; row++) {
        for (int column = 0; column < COLUMNS; column++) {
          if (formulas[row][column].matches("(?s)\\{?=.*")) {
            String where = i + " " + (row + 1) + " " + column;
            boolean number = shown[row][column] instanceof Double;
            boolean known = number || shown[row][column] instanceof String;
            // Only what a chart is not to draw may be missing.
            assertTrue(known || column > CurvePage.LAST_COLUMN, where);
            results.put(where, known ? shown[row][column] : "#N/A");
          }
        }
      }
    }
    return results;
  }

  private static XCellRange cells(XSpreadsheet sheet) {
    try {
      return sheet.getCellRangeByPosition(0, 0, COLUMNS - 1, ROWS - 1);
    } catch (com.sun.star.lang.IndexOutOfBoundsException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void thePlainFormHasNoCallsAndIsCloseToTheFunctions() throws IOException {
    for (String name :
        List.of(
            "ferment-log",
            "ferment-log-fahrenheit",
            "ferment-log-brix",
            "ferment-log-oechsle",
            "still-run-log",
            "dilution-and-blending",
            "making-up",
            "plan",
            "class")) {
      try (XSSFWorkbook pack = open("pack/" + name);
          XSSFWorkbook plain = open("portable/" + name)) {
        plain.forEach(
            sheet ->
                sheet.forEach(
                    row ->
                        row.forEach(
                            cell ->
                                assertTrue(
                                    cell.getCellType() != CellType.FORMULA
                                        || !cell.getCellFormula().contains("WASHBOOK"),
                                    name + " " + cell.getAddress()))));
        if (name.equals("ferment-log")) {
          for (int row = 13; row < 22; row++) {
            XSSFSheet exact = pack.getSheet("Example");
            XSSFSheet close = plain.getSheet("Example");
            assertEquals(at(exact, row, 5), at(close, row, 5), 0.0001);
            assertEquals(at(exact, row, 6), at(close, row, 6), 0.03);
          }
        }
        if (name.equals("making-up")) {
          assertEquals(at(pack.getSheetAt(0), 9, 1), at(plain.getSheetAt(0), 9, 1), 0.01);
          assertEquals(at(pack.getSheetAt(0), 10, 1), at(plain.getSheetAt(0), 10, 1), 0.01);
        }
      }
    }
  }

  /** Every figure that stands in both forms, within what the plain formulas promise. */
  @ParameterizedTest
  @CsvSource({"plan, 0.0005", "class, 0.0002"})
  void theTwoFormsOfASheetAgreeInEveryFigure(String name, double share) throws IOException {
    int compared = 0;
    try (XSSFWorkbook pack = open("pack/" + name);
        XSSFWorkbook plain = open("portable/" + name)) {
      for (int i = 0; i < pack.getNumberOfSheets(); i++) {
        for (Row row : pack.getSheetAt(i)) {
          for (Cell cell : row) {
            if (cell.getCellType() == CellType.FORMULA
                && cell.getCachedFormulaResultType() == CellType.NUMERIC) {
              double exact = cell.getNumericCellValue();
              double close = at(plain.getSheetAt(i), row.getRowNum(), cell.getColumnIndex());
              String where = name + " " + i + " " + cell.getAddress();
              // The water of a dilution is good to 0.03 mL for each litre; column E is in mL.
              boolean millilitres =
                  pack.getSheetName(i).equals("Mixing") && cell.getColumnIndex() == 4;
              double allowed =
                  millilitres
                      ? 0.03 * at(pack.getSheetAt(i), row.getRowNum(), 3)
                      : 0.003 + share * Math.abs(exact);
              assertEquals(exact, close, allowed, where);
              compared++;
            }
          }
        }
      }
    }
    assertTrue(compared >= 19, compared + " figures");
  }

  /** With no fruit the plan's sugar and water are those of the making-up functions. */
  @Test
  void thePlanIsWhatTheFunctionsSayOneByOne() throws IOException {
    try (XSSFWorkbook pack = open("pack/plan")) {
      XSSFSheet sheet = pack.getSheetAt(0);
      double wash = value(sheet, "Wash");
      double original = value(sheet, "Gravity to start with");
      assertEquals(call("PUREALCOHOL", 5.0, 42.0) / 0.65 / 0.10, wash, 1e-9);
      assertEquals(call("ORIGINALFORABV", 10.0, 0.994, "SUGAR"), original, 1e-9);
      assertEquals(call("SUGARFORVOLUME", wash, original, "SUCROSE"), value(sheet, "Sugar"), 1e-6);
      assertEquals(call("WATERFORVOLUME", wash, original, "SUCROSE"), value(sheet, "Water"), 1e-6);
      double gas = call("CARBONDIOXIDE", original, 0.994, wash, "SUGAR") / 1000;
      assertEquals(gas, value(sheet, "Carbon dioxide"), 1e-9);
    }
  }

  /** The number beside the first label of these words. */
  private static double value(XSSFSheet sheet, String label) {
    for (Row row : sheet) {
      Cell cell = row.getCell(0);
      if (cell != null
          && cell.getCellType() == CellType.STRING
          && cell.getStringCellValue().equals(label)) {
        return row.getCell(1).getNumericCellValue();
      }
    }
    throw new AssertionError(label);
  }

  private static XSSFWorkbook open(String name) throws IOException {
    try (InputStream in = Files.newInputStream(FOLDER.resolve(name + ".xlsx"))) {
      return new XSSFWorkbook(in);
    }
  }

  /** The example's last line against the catalogue, and the safety note on every sheet. */
  @Test
  void theExampleIsRightAndEverySheetCarriesTheNote() throws IOException {
    try (InputStream in = Files.newInputStream(FOLDER.resolve("pack/ferment-log.xlsx"));
        XSSFWorkbook workbook = new XSSFWorkbook(in)) {
      XSSFSheet sheet = workbook.getSheet("Example");
      int first = 13;
      int last = first + 8;
      double og = call("CORRECTEDGRAVITY", at(sheet, first, 2), at(sheet, first, 3), 20.0);
      double sg = call("CORRECTEDGRAVITY", at(sheet, last, 2), at(sheet, last, 3), 20.0, og);
      assertEquals(og, at(sheet, 9, 3), 1e-9);
      assertEquals(sg, at(sheet, last, 5), 1e-9);
      assertEquals(call("ABV", og, sg), at(sheet, last, 6), 1e-8);
      assertEquals(call("ABVPLUSMINUS", og, sg), at(sheet, last, 7), 1e-8);
      assertEquals(call("SUGARLEFT", og, sg), at(sheet, last, 10), 1e-8);
    }
    for (Path file : starters()) {
      if (file.toString().endsWith(".xlsx")) {
        try (InputStream in = Files.newInputStream(file);
            XSSFWorkbook workbook = new XSSFWorkbook(in)) {
          workbook.forEach(
              sheet -> {
                List<String> texts = new ArrayList<>();
                for (int row = 0; row < 4; row++) {
                  texts.add(sheet.getRow(row) == null ? "" : sheet.getRow(row).getCell(0) + "");
                }
                assertTrue(texts.contains(SafetyNote.text()), file + " " + sheet.getSheetName());
              });
        }
      }
    }
  }

  /** What a person is invited to fill in is understood without a question. */
  @Test
  void theExampleIsUnderstoodAsALog() throws IOException, InterruptedException {
    for (String name :
        List.of(
            "pack/ferment-log.xlsx",
            "portable/ferment-log.ods",
            "pack/ferment-log-oechsle.xlsx",
            "portable/ferment-log-brix.xlsx")) {
      Washbook.Run run = Washbook.run("explain", FOLDER.resolve(name));
      assertEquals(0, run.exitCode(), run.output());
      assertTrue(run.output().contains("Plum 3"), run.output());
      assertTrue(run.output().contains("stated in D10"), run.output());
      assertTrue(run.output().contains("20 °C: stated in D6"), run.output());
    }
  }

  /** Its cuts and their sums are not taken for a run of their own. */
  @Test
  void theExampleOfARunIsUnderstoodAsOneRun() throws IOException, InterruptedException {
    Washbook.Run run = Washbook.run("explain", FOLDER.resolve("pack/still-run-log.xlsx"));
    assertEquals(0, run.exitCode(), run.output());
    assertTrue(run.output().contains("still run A13:"), run.output());
    assertEquals(1, run.output().split("still run ", -1).length - 1, run.output());
    assertTrue(run.output().contains("Rows: 10; filled: 9; refused: 0"), run.output());
  }

  /** On paper: the log with its notes, and its charts; not the numbers drawn, nor blank pages. */
  @Test
  void everySheetSaysWhatIsPrinted() throws IOException {
    int charts = 0;
    for (Path file : starters()) {
      if (!file.toString().endsWith(".xlsx")) {
        continue;
      }
      try (InputStream in = Files.newInputStream(file);
          XSSFWorkbook workbook = new XSSFWorkbook(in)) {
        for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
          String area = workbook.getPrintArea(i);
          String where = file + " " + workbook.getSheetName(i) + " " + area;
          assertTrue(area != null, where);
          var drawn = workbook.getSheetAt(i).getDrawingPatriarch();
          boolean isDrawn = drawn != null && !drawn.getCharts().isEmpty();
          assertEquals(isDrawn, area.endsWith(":$X$43"), where);
          charts += isDrawn ? 1 : 0;
        }
      }
    }
    assertEquals(4 * 5 * 2, charts);
  }

  private static double at(XSSFSheet sheet, int row, int column) {
    return sheet.getRow(row).getCell(column).getNumericCellValue();
  }

  private static double call(String name, Object... arguments) {
    return ((Answer.Number) Catalogue.get(name).call(arguments)).value();
  }
}
