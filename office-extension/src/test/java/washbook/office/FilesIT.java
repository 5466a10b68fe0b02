package washbook.office;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.functions.Answer;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.office.testing.Book;
import washbook.office.testing.Office;

/** Formulas of the pack through files, with and without the extension. */
class FilesIT {
  private static final String CORRECTED = "=WASHBOOK.CORRECTEDGRAVITY(1.04;30)";

  @TempDir Path directory;

  private static double expected(String name, Object... values) {
    return ((Answer.Number) Catalogue.get(name).call(values)).value();
  }

  @ParameterizedTest
  @ValueSource(strings = {"every.ods", "every.xlsx"})
  void everyFunctionOutlivesSavingAndLoading(String name) {
    Path file = directory.resolve(name);
    try (Book book = SharedOffice.get().newBook()) {
      int row = 1;
      for (CatalogueFunction function : Catalogue.all()) {
        book.formula("A" + row++, Examples.of(function).formula());
      }
      book.save(file);
    }
    try (Book book = SharedOffice.get().open(file)) {
      book.recalculate();
      int row = 1;
      for (CatalogueFunction function : Catalogue.all()) {
        Examples example = Examples.of(function);
        String cell = "A" + row++;
        Answer answer = function.call(example.values().toArray());
        assertTrue(
            book.cell(cell).getFormula().startsWith(example.start()), book.cell(cell).getFormula());
        if (answer instanceof Answer.Number number) {
          assertEquals(number.value(), book.number(cell), function.name());
        } else if (answer instanceof Answer.Told told) {
          assertEquals(told.told().english(), book.shown(cell), function.name());
        } else {
          assertEquals(((Answer.Text) answer).text(), book.shown(cell), function.name());
        }
      }
    }
  }

  /** Offices from 25.2 on write C1:C1 as C1 into .xlsx, but not a range with a $ in one corner. */
  @ParameterizedTest
  @ValueSource(strings = {"blank.ods", "blank.xlsx"})
  void rangesOfOneCellAndArrayFormulasStayThem(String name) {
    Path file = directory.resolve(name);
    try (Book book = SharedOffice.get().newBook()) {
      book.data("A1:A2", new Object[][] {{1.05}, {1.04}});
      book.formula("B1", "=WASHBOOK.ABVPLUSMINUS(1.085;A1;;C1:$C1)");
      book.array("D1:D2", "=WASHBOOK.ABV(1.085;A1:A2)");
      book.save(file);
    }
    try (Book book = SharedOffice.get().open(file)) {
      assertTrue(book.cell("B1").getFormula().contains("C1:$C1"), book.cell("B1").getFormula());
      book.recalculate();
      assertEquals(expected("ABVPLUSMINUS", 1.085, 1.05), book.number("B1"));
      book.number("C1", 0);
      assertEquals(expected("ABVPLUSMINUS", 1.085, 1.05, null, 0.0), book.number("B1"));
      assertEquals(expected("ABV", 1.085, 1.04), book.number("D2"));
    }
  }

  @Test
  void aFileWrittenByAnotherLibraryIsComputed() throws Exception {
    Path file = directory.resolve("written.xlsx");
    try (XSSFWorkbook workbook = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      Row row = workbook.createSheet("Plum 3").createRow(0);
      row.createCell(0).setCellValue(1.085);
      row.createCell(1).setCellValue(0.998);
      row.createCell(2).setCellFormula("WASHBOOK.ABV(A1,B1)");
      row.createCell(3).setCellFormula("IF(WASHBOOK.ABV(A1,B1)>10,\"strong\",\"weak\")");
      row.createCell(4).setCellFormula("WASHBOOK.CORRECTEDGRAVITY(A1,F1)");
      workbook.write(out);
    }
    try (Book book = SharedOffice.get().open(file)) {
      assertEquals(expected("ABV", 1.085, 0.998), book.number("C1"));
      assertEquals("strong", book.shown("D1"));
      assertEquals("", book.shown("E1"));
    }
  }

  /** A machine without the extension shows the numbers of an .xlsx, and loses nothing. */
  @Test
  void withoutTheExtensionNumbersAreShownAndFormulasKept() {
    Path first = directory.resolve("first.xlsx");
    Path second = directory.resolve("second.xlsx");
    double corrected = expected("CORRECTEDGRAVITY", 1.04, 30.0);
    try (Book book = SharedOffice.get().newBook()) {
      book.formula("A1", CORRECTED).save(first);
    }
    try (Office plain = Office.plain();
        Book book = plain.open(first)) {
      assertEquals(corrected, book.number("A1"), 1e-14);
      book.number("B1", 5).save(second);
    }
    try (Book book = SharedOffice.get().open(second)) {
      assertEquals(corrected, book.number("A1"), 1e-14);
      book.recalculate();
      assertEquals(corrected, book.number("A1"));
      assertEquals(5, book.number("B1"));
    }
  }

  /** What README says of a machine without the extension. */
  @Test
  void withoutTheExtensionLittleIsNotShown() {
    Path xlsx = directory.resolve("shown.xlsx");
    Path ods = directory.resolve("shown.ods");
    try (Book book = SharedOffice.get().newBook()) {
      book.data("A1:A2", new Object[][] {{1.05}, {1.04}});
      book.formula("B1", "=WASHBOOK.ABV(1.085;A1)");
      book.formula("B2", "=WASHBOOK.REASON(\"ABV\";1.085;1.3)");
      book.formula("B3", "=WASHBOOK.ABV(1.085;A3)");
      book.formula("B4", "=WASHBOOK.ABV(1.085;1.3)");
      book.array("C1:C2", "=WASHBOOK.ABV(1.085;A1:A2)");
      book.save(xlsx);
      book.save(ods);
    }
    try (Office plain = Office.plain();
        Book shown = plain.open(xlsx);
        Book unknown = plain.open(ods)) {
      assertEquals(expected("ABV", 1.085, 1.05), shown.number("B1"), 1e-12);
      assertTrue(shown.shown("B2").startsWith("gravity 1.3 is too high"), shown.shown("B2"));
      assertEquals("#NAME?", shown.shown("B3"));
      assertEquals("#NAME?", shown.shown("B4"));
      assertEquals("#NAME?", shown.shown("C2"));
      assertEquals("#NAME?", unknown.shown("B1"));
    }
  }
}
