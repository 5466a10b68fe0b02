package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCellFormula;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STCellFormulaType;
import washbook.functions.Answer;
import washbook.functions.catalogue.Catalogue;
import washbook.runner.RawOds;
import washbook.runner.RawXlsx;

/** Workbooks with formulas of the pack before and after. */
class PortableCommandTest {
  private static final String SPACE = "urn:oasis:names:tc:opendocument:xmlns:";
  private static final String ROOT =
      ("<office:document-content xmlns:office='%1$soffice:1.0' xmlns:table='%1$stable:1.0'"
              + " xmlns:text='%1$stext:1.0' xmlns:style='%1$sstyle:1.0'"
              + " xmlns:calcext='urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0'>")
          .formatted(SPACE);
  private static final String BEGIN = ROOT + "<office:body><office:spreadsheet>";

  @TempDir Path folder;

  private static double calc(String name, Object... arguments) {
    return ((Answer.Number) Catalogue.get(name).call(arguments)).value();
  }

  private static void formula(Row row, int column, String text, double stored) {
    Cell cell = row.createCell(column);
    cell.setCellFormula(text);
    cell.setCellValue(stored);
  }

  private Path workbook() throws IOException {
    Path file = folder.resolve("Plum 3.xlsx");
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      Sheet sheet = book.createSheet("My log");
      double[][] readings = {{1.085, 24}, {1.062, 27}, {1.030, 25.5}, {0.998, 19}};
      for (int r = 0; r < readings.length; r++) {
        Row row = sheet.createRow(r);
        row.createCell(0).setCellValue(readings[r][0]);
        row.createCell(1).setCellValue(readings[r][1]);
        formula(row, 2, "WASHBOOK.CORRECTEDGRAVITY(A" + (r + 1) + ",B" + (r + 1) + ")", 1);
        formula(row, 4, "ROUND(washbook.abv($A$1,A" + (r + 1) + "),1)", 7.7);
        shared((XSSFCell) row.createCell(3), r);
      }
      Row last = sheet.createRow(5);
      formula(last, 0, "WASHBOOK.ABV(A1,A6+Z9)", 5);
      formula(last, 1, "WASHBOOK.ABV(A1,Z9)", 5);
      formula(last, 2, "WASHBOOK.ABV(A1,1.2*'My log'!A1)", 5);
      formula(last, 3, "WASHBOOK.ABV(A4,A1)", 5);
      formula(last, 4, "WASHBOOK.ABVBYPOTENTIAL(A1,A2)", 5);
      formula(last, 5, "SUM(A1:A4)", 4.175);
      Row other = book.createSheet("Other").createRow(0);
      formula(other, 0, "WASHBOOK.ABV('My log'!$A$1,'My log'!A4)", 1);
      try (OutputStream out = Files.newOutputStream(file)) {
        book.write(out);
      }
    }
    return file;
  }

  /** One text for D1:D4, as spreadsheet programs store a filled column. */
  private static void shared(XSSFCell cell, int row) {
    CTCellFormula formula = cell.getCTCell().addNewF();
    formula.setT(STCellFormulaType.SHARED);
    formula.setSi(0);
    if (row == 0) {
      formula.setRef("D1:D4");
      formula.setStringValue("WASHBOOK.ABV($C$1,C1)");
    }
    cell.getCTCell().setV("3");
  }

  @Test
  void turnsEveryCallThatCanBeTurned() throws IOException {
    Path file = workbook();
    byte[] before = Files.readAllBytes(file);
    Cli run = Cli.run("portable", file.toString());
    assertEquals(1, run.code(), run.out() + run.err());
    assertTrue(
        run.out().contains("  My log!E6 stays: ABVBYPOTENTIAL has no portable form."), run.out());
    assertTrue(run.out().contains(": 17 formulas are portable now"), run.out());
    assertEquals(-1, Arrays.mismatch(before, Files.readAllBytes(file)));
    Path copy = folder.resolve("Plum 3.portable.xlsx");
    try (Workbook book = WorkbookFactory.create(copy.toFile(), null, true)) {
      Sheet sheet = book.getSheet("My log");
      FormulaEvaluator evaluator = book.getCreationHelper().createFormulaEvaluator();
      for (int r = 0; r < 4; r++) {
        for (int c = 2; c < 4; c++) {
          Cell cell = sheet.getRow(r).getCell(c);
          assertFalse(cell.getCellFormula().contains("WASHBOOK"), cell.getCellFormula());
          double stored = cell.getNumericCellValue();
          assertEquals(stored, evaluator.evaluate(cell).getNumberValue(), 1e-9);
        }
        Cell nested = sheet.getRow(r).getCell(4);
        assertTrue(nested.getCellFormula().startsWith("ROUND(IF("), nested.getCellFormula());
        assertEquals(7.7, nested.getNumericCellValue());
      }
      double original = calc("CORRECTEDGRAVITY", 1.085, 24.0);
      double gravity = calc("CORRECTEDGRAVITY", 0.998, 19.0);
      assertEquals(
          calc("ABV", original, gravity), sheet.getRow(3).getCell(3).getNumericCellValue(), 0.01);
      Row last = sheet.getRow(5);
      assertEquals("", last.getCell(1).getStringCellValue());
      assertEquals(CellType.ERROR, last.getCell(3).getCachedFormulaResultType());
      assertEquals("SUM(A1:A4)", last.getCell(5).getCellFormula());
      Cell other = book.getSheet("Other").getRow(0).getCell(0);
      assertEquals(other.getNumericCellValue(), evaluator.evaluate(other).getNumberValue(), 1e-9);
    }
  }

  @Test
  void aSecondRunFindsOnlyWhatStays() throws IOException {
    Path file = workbook();
    assertEquals(1, Cli.run("portable", "--in-place", "--backup", file.toString()).code());
    assertTrue(Files.exists(folder.resolve("Plum 3.xlsx.bak")));
    byte[] once = Files.readAllBytes(file);
    Cli again = Cli.run("portable", "--in-place", file.toString());
    assertEquals(1, again.code(), again.out());
    assertEquals(-1, Arrays.mismatch(once, Files.readAllBytes(file)));
  }

  @Test
  void turnsOpenDocumentFormulas() throws IOException {
    Path file = folder.resolve("Apple 7.ods");
    String cells =
        """
        <table:table table:name="Log"><table:table-row>
        <table:table-cell office:value-type="float" office:value="1.085"/>\
        <table:table-cell office:value-type="float" office:value="0.998"/>\
        <table:table-cell table:style-name="a" \
        table:formula="of:=washbook.abv([.$A$1];[.B1])" office:value-type="string" \
        office:string-value="" calcext:value-type="error"><text:p>#NAME?</text:p></table:table-cell>\
        <table:table-cell table:formula="of:=SUM(WASHBOOK.ABV([.A1];[.B1]);&quot;&amp;&quot;=1)" \
        office:value-type="float" office:value="11.65"><text:p>11.65</text:p></table:table-cell>\
        <table:table-cell table:formula="of:=WASHBOOK.ABV([.A1];[.Z9])"/>
        </table:table-row></table:table>\
        """;
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      kind(zip);
      zip.putNextEntry(new ZipEntry("content.xml"));
      zip.write(
          (BEGIN + cells + "</office:spreadsheet></office:body></office:document-content>")
              .getBytes(StandardCharsets.UTF_8));
      zip.closeEntry();
    }
    Cli run = Cli.run("portable", file.toString());
    assertEquals(0, run.code(), run.out() + run.err());
    try (ZipFile zip = new ZipFile(folder.resolve("Apple 7.portable.ods").toFile())) {
      String content =
          new String(
              zip.getInputStream(zip.getEntry("content.xml")).readAllBytes(),
              StandardCharsets.UTF_8);
      assertFalse(content.toUpperCase(Locale.ROOT).contains("WASHBOOK"), content);
      assertFalse(content.contains("#NAME?"), content);
      assertTrue(content.contains("table:formula=\"of:=IF(OR([.$A$1]=&quot;&quot;;"), content);
      assertTrue(content.contains("of:=SUM(IF(OR([.A1]="), content);
      assertTrue(content.contains("office:value=\"11.65\"><text:p>11.65"), content);
      assertTrue(content.contains("office:value-type=\"float\" office:value=\"11.65"), content);
      assertTrue(
          content.contains("office:value-type=\"string\" office:string-value=\"\"/>"), content);
    }
  }

  @Test
  void listsWhatNoCellHoldsAndTurnsArraysOfSingleCells() throws IOException {
    Path file = folder.resolve("Sugar 4.xlsx");
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      XSSFSheet sheet = book.createSheet("Log");
      for (int r = 0; r < 2; r++) {
        XSSFCell array = sheet.createRow(r).createCell(2);
        CTCellFormula formula = array.getCTCell().addNewF();
        formula.setT(STCellFormulaType.ARRAY);
        formula.setRef("C" + (r + 1));
        formula.setStringValue(r == 0 ? "SUM(WASHBOOK.ABV(A1,B1)*2)" : "WASHBOOK.ABV(A1:A2,B2)");
        array.getCTCell().setV("3");
      }
      var name = book.createName();
      name.setNameName("Strength");
      name.setRefersToFormula("WASHBOOK.ABV(Log!$A$1,Log!$B$1)");
      var formats = sheet.getSheetConditionalFormatting();
      formats.addConditionalFormatting(
          new CellRangeAddress[] {CellRangeAddress.valueOf("A1:A9")},
          formats.createConditionalFormattingRule("WASHBOOK.ABV(A1,B1)>5"));
      var checks = sheet.getDataValidationHelper();
      sheet.addValidationData(
          checks.createValidation(
              checks.createCustomConstraint("WASHBOOK.ABV(A1,B1)<20"),
              new CellRangeAddressList(0, 3, 1, 1)));
      try (OutputStream out = Files.newOutputStream(file)) {
        book.write(out);
      }
    }
    Cli run = Cli.run("portable", file.toString());
    assertEquals(1, run.code(), run.out() + run.err());
    assertTrue(run.out().contains(": 1 formula is portable now"), run.out());
    for (String place :
        List.of(
            "Log!C2",
            "Strength (name)",
            "Log!A1:A9 (conditional format)",
            "Log!B1:B4 (check of entries)")) {
      assertTrue(run.out().contains("  " + place + " stays: "), run.out());
    }
    try (XSSFWorkbook book = new XSSFWorkbook(folder.resolve("Sugar 4.portable.xlsx").toString())) {
      XSSFCell array = book.getSheet("Log").getRow(0).getCell(2);
      assertTrue(array.isPartOfArrayFormulaGroup());
      assertTrue(array.getCellFormula().startsWith("SUM(IF(OR(A1="), array.getCellFormula());
      assertEquals(3, array.getNumericCellValue());
    }
  }

  @Test
  void listsWhatNoCellOfAnOpenDocumentHolds() throws IOException {
    Path file = folder.resolve("Sugar 4.ods");
    String content =
        """
        <style:style style:name="ce1">\
        <style:map style:condition="is-true-formula(WASHBOOK.ABV([.A1];[.B1])&gt;5)"/></style:style>\
        <office:body><office:spreadsheet><table:content-validation table:name="val1" \
        table:condition="of:is-true-formula(WASHBOOK.ABV([.A1];[.B1])&lt;20)"/>\
        <table:table table:name="Log"><table:table-row>\
        <table:table-cell table:number-matrix-columns-spanned="1" \
        table:number-matrix-rows-spanned="1" office:value-type="float" office:value="3" \
        table:formula="of:=SUM(WASHBOOK.ABV([.B1];[.C1])*2)"/>\
        <table:table-cell table:number-matrix-columns-spanned="1" \
        table:number-matrix-rows-spanned="1" office:value-type="float" office:value="3" \
        table:formula="of:=SUM(WASHBOOK.ABV([.B1:.B3];[.C1])*2)"/>\
        </table:table-row></table:table>\
        <calcext:conditional-format calcext:target-range-address="Log.A1:Log.A9">\
        <calcext:condition calcext:value="formula-is(WASHBOOK.ABV([.A1];[.B1])&gt;5)"/>\
        </calcext:conditional-format>\
        <table:named-expression table:name="Strength" \
        table:expression="of:=WASHBOOK.ABV([.A1];[.B1])"/></office:spreadsheet></office:body></office:document-content>\
        """;
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      kind(zip);
      zip.putNextEntry(new ZipEntry("content.xml"));
      zip.write((ROOT + content).getBytes(StandardCharsets.UTF_8));
      zip.closeEntry();
    }
    Cli run = Cli.run("portable", file.toString());
    assertEquals(1, run.code(), run.out() + run.err());
    assertTrue(run.out().contains(": 1 formula is portable now"), run.out());
    for (String place :
        List.of(
            "Log!B1",
            "ce1 (conditional format)",
            "val1 (check of entries)",
            "Strength (name)",
            "Log.A1:Log.A9 (conditional format)")) {
      assertTrue(run.out().contains("  " + place + " stays: "), run.out());
    }
  }

  @ParameterizedTest
  @CsvSource({
    "<row r=\"x\">, <c r=\"A1\">, a row is outside of any sheet",
    "<row r=\"1\">, <c r=\"x\">, a cell has no valid address",
  })
  void anAddressThatIsNoneIsRefusedWithASentence(String row, String cell, String why)
      throws IOException {
    Path file = folder.resolve("bad.xlsx");
    RawXlsx.withSheet("<sheetData>" + row + cell + "<f>1+1</f><v>2</v></c></row></sheetData>")
        .write(file);
    Cli run = Cli.run("portable", file.toString());
    assertEquals(ExitCode.FILE, run.code());
    assertTrue(run.err().contains(why), run.err());
  }

  @Test
  void aCountOfCellsThatIsNoneIsRefusedWithASentence() throws IOException {
    Path file = folder.resolve("bad.ods");
    RawOds.log(
            "",
            "<table:table-row table:number-rows-repeated=\"many\"><table:table-cell/>"
                + "</table:table-row>")
        .write(file);
    Cli run = Cli.run("portable", file.toString());
    assertEquals(ExitCode.FILE, run.code());
    assertTrue(run.err().contains("a count is not a number"), run.err());
  }

  @Test
  void saysWhenThereIsNothingToDoOrToRead() throws IOException {
    Path plain = folder.resolve("plain.xlsx");
    try (Workbook book = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(plain)) {
      book.createSheet("a").createRow(0).createCell(0).setCellValue(1);
      book.write(out);
    }
    assertEquals(4, Cli.run("portable", plain.toString()).code());
    assertFalse(Files.exists(folder.resolve("plain.portable.xlsx")));
    assertEquals(3, Cli.run("portable", folder.resolve("none.xlsx").toString()).code());
    Path text = Files.writeString(folder.resolve("a.csv"), "1,2\n");
    assertEquals(3, Cli.run("portable", text.toString()).code());
    assertEquals(2, Cli.run("portable").code());
  }

  /** What tells a file of this kind from other archives, uncompressed as it has to be. */
  private static void kind(ZipOutputStream zip) throws IOException {
    zip.setLevel(0);
    zip.putNextEntry(new ZipEntry("mimetype"));
    zip.write("application/vnd.oasis.opendocument.spreadsheet".getBytes(StandardCharsets.UTF_8));
    zip.closeEntry();
  }
}
