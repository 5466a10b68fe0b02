package washbook.runner.write;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.log.sheet.Grid;
import washbook.log.sheet.SheetPatch;
import washbook.runner.RawXlsx;
import washbook.runner.TestColumn;
import washbook.runner.file.UnusableFileException;
import washbook.runner.read.XlsxReader;

/** Our columns after a spreadsheet program has saved them in its own way. */
class XlsxFormulaTest {
  private static final String HEADER = "ABV to date (Washbook)";

  @TempDir private Path folder;

  private static RawXlsx workbook(String cellsBelowHeader) {
    return RawXlsx.withSheet(
            "<sheetData><row r=\"1\"><c r=\"A1\" t=\"s\"><v>0</v></c><c r=\"B1\" t=\"s\"><v>1</v>"
                + "</c></row>"
                + cellsBelowHeader
                + "</sheetData>")
        .part("xl/sharedStrings.xml", "<sst><si><t>SG</t></si><si><t>" + HEADER + "</t></si></sst>")
        .part("xl/calcChain.xml", "<calcChain><c r=\"B2\" i=\"1\"/><c r=\"B3\"/></calcChain>");
  }

  private Path fill(RawXlsx raw, List<SheetPatch> patches) throws Exception {
    Path filled = folder.resolve("filled.xlsx");
    new XlsxWriter().write(raw.write(folder.resolve("raw.xlsx")), patches, filled);
    return filled;
  }

  private static String part(Path file, String name) throws Exception {
    try (ZipFile zip = new ZipFile(file.toFile())) {
      return new String(
          zip.getInputStream(zip.getEntry(name)).readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static List<SheetPatch> values(int lastRow, Map<Integer, Object> content) {
    return TestColumn.on("Log", TestColumn.of(1, 0, HEADER, lastRow, 2, content));
  }

  @Test
  void aFormulaThatBecomesAValueLeavesTheOrderOfCalculation() throws Exception {
    Path filled =
        fill(
            workbook(
                "<row r=\"2\"><c r=\"B2\"><f>A2*2</f><v>2.2</v></c></row>"
                    + "<row r=\"3\"><c r=\"B3\"><f>A3*2</f><v>2.2</v></c></row>"),
            values(2, Map.of(1, 5.5, 2, 6.5)));
    try (ZipFile zip = new ZipFile(filled.toFile())) {
      assertEquals(null, zip.getEntry("xl/calcChain.xml"));
    }
    assertFalse(part(filled, "xl/_rels/workbook.xml.rels").contains("calcChain"));
    assertTrue(part(filled, "xl/_rels/workbook.xml.rels").contains("sharedStrings"));
    Grid grid = new XlsxReader().read(filled).get(0);
    assertEquals(6.5, grid.number(2, 1));
    assertFalse(grid.isFormula(2, 1));
  }

  @Test
  void aFormulaThatStaysKeepsTheOrderOfCalculation() throws Exception {
    List<SheetPatch> patches =
        TestColumn.on("Log", TestColumn.of(1, 0, HEADER, 1, 2, Map.of(1, 5.5), Map.of(1, "A2*5")));
    Path filled =
        fill(workbook("<row r=\"2\"><c r=\"B2\"><f>A2*2</f><v>2.2</v></c></row>"), patches);
    assertTrue(part(filled, "xl/calcChain.xml").contains("B2"));
    assertTrue(part(filled, "xl/worksheets/sheet1.xml").contains("<f>A2*5</f><v>5.5</v>"));
  }

  @Test
  void formulasSharedWithinOurColumnAreReplacedAndOthersRefused() throws Exception {
    String shared =
        "<row r=\"2\"><c r=\"B2\"><f t=\"shared\" ref=\"B2:%s\""
            + " si=\"0\">A2*2</f><v>2.2</v></c></row><row r=\"3\"><c r=\"B3\"><f t=\"shared\""
            + " si=\"0\"/><v>2.2</v></c></row>";
    Path filled = fill(workbook(String.format(shared, "B3")), values(2, Map.of(1, 5.5, 2, 6.5)));
    assertFalse(part(filled, "xl/worksheets/sheet1.xml").contains("shared"));
    UnusableFileException refused =
        assertThrows(
            UnusableFileException.class,
            () -> fill(workbook(String.format(shared, "C3")), values(2, Map.of(1, 5.5))));
    assertTrue(refused.getMessage().contains("B2"), refused.getMessage());
  }

  @Test
  void whatIsThereInAnotherSpellingStays() throws Exception {
    RawXlsx raw =
        workbook(
            "<row r=\"2\"><c r=\"B2\" s=\"0\"><v>0.55E1</v></c></row>"
                + "<row r=\"3\"><c r=\"B3\" t=\"s\"><v>0</v></c></row>");
    Path filled = fill(raw, values(2, Map.of(1, 5.5, 2, "SG")));
    String sheet = part(filled, "xl/worksheets/sheet1.xml");
    assertTrue(sheet.contains("<c r=\"B2\" s=\"0\"><v>0.55E1</v></c>"), sheet);
    assertTrue(sheet.contains("<c r=\"B3\" t=\"s\"><v>0</v></c>"), sheet);
  }

  @Test
  void prefixesAndRowsWithoutNumbersAreFollowed() throws Exception {
    RawXlsx raw =
        RawXlsx.strict(
            "<x:worksheet xmlns:x=\"http://purl.oclc.org/ooxml/spreadsheetml/main\"><x:sheetData>"
                + "<x:row spans='1:1'><x:c><x:v>1</x:v></x:c></x:row><x:row/></x:sheetData>"
                + "</x:worksheet>");
    Path filled =
        fill(raw, TestColumn.on("Log", TestColumn.of(2, 0, HEADER, 3, 1, Map.of(1, 2.5, 3, 4.5))));
    assertEquals(
        "<x:worksheet xmlns:x=\"http://purl.oclc.org/ooxml/spreadsheetml/main\"><x:cols><x:col"
            + " min=\"3\" max=\"3\" width=\"11.7109375\""
            + " customWidth=\"1\"/></x:cols><x:sheetData><x:row spans='1:3'"
            + " ht=\"30\"><x:c><x:v>1</x:v></x:c><x:c r=\"C1\" t=\"inlineStr\"><x:is><x:t>ABV to"
            + " date (Washbook)</x:t></x:is></x:c></x:row><x:row><x:c"
            + " r=\"C2\"><x:v>2.5</x:v></x:c></x:row><x:row r=\"4\"><x:c"
            + " r=\"C4\"><x:v>4.5</x:v></x:c></x:row></x:sheetData></x:worksheet>",
        part(filled, "xl/worksheets/sheet1.xml"));
  }

  @Test
  void widthsOfOtherColumnsStay() throws Exception {
    RawXlsx raw =
        RawXlsx.withSheet(
            "<cols><col min=\"1\" max=\"1\" width=\"8\" customWidth=\"1\"/><col min=\"2\" "
                + "max=\"1024\" width=\"11.53\" style=\"0\"/></cols><sheetData/>");
    Path filled = fill(raw, values(1, Map.of(1, 2.5)));
    String sheet = part(filled, "xl/worksheets/sheet1.xml");
    assertTrue(
        sheet.contains(
            "<cols><col min=\"1\" max=\"1\" width=\"8\" customWidth=\"1\"/><col min=\"2\" max=\"2\""
                + " width=\"11.7109375\" style=\"0\" customWidth=\"1\"/><col min=\"3\" "
                + "max=\"1024\" width=\"11.53\" style=\"0\"/></cols>"),
        sheet);
  }
}
