package washbook.runner.extent;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTExtensionList;
import washbook.log.sheet.ColumnPatch;
import washbook.runner.TestColumn;
import washbook.runner.write.XlsxWriter;

/** Tables, filters, print areas and row shading of a workbook grow with the log. */
class XlsxExtentTest {
  private static final ColumnPatch ABV =
      TestColumn.of(3, 1, "ABV to date", 5, 2, Map.of(2, 1.0, 3, 2.0, 4, 3.0, 5, 4.0));
  private static final ColumnPatch NOTE =
      TestColumn.of(4, 1, "Washbook note", 5, -1, Map.of(3, "a reason"));

  @TempDir private Path folder;

  private XSSFWorkbook filled(Consumer<XSSFSheet> with, ColumnPatch... columns) throws IOException {
    Path log = folder.resolve("log.xlsx");
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      XSSFSheet sheet = workbook.createSheet("Plum 3's log");
      String[] headers = {"Day", "SG", "Temp C"};
      for (int row = 0; row < 6; row++) {
        sheet.createRow(row);
        for (int column = 0; column < 3 && row > 0; column++) {
          if (row == 1) {
            sheet.getRow(row).createCell(column).setCellValue(headers[column]);
          } else {
            sheet.getRow(row).createCell(column).setCellValue(row);
          }
        }
      }
      with.accept(sheet);
      try (OutputStream out = Files.newOutputStream(log)) {
        workbook.write(out);
      }
    }
    Path filled = folder.resolve("filled.xlsx");
    new XlsxWriter().write(log, TestColumn.on("Plum 3's log", columns), filled);
    Path again = folder.resolve("again.xlsx");
    new XlsxWriter().write(filled, TestColumn.on("Plum 3's log", columns), again);
    assertEquals(-1, Files.mismatch(filled, again));
    try (InputStream in = Files.newInputStream(filled)) {
      return new XSSFWorkbook(in);
    }
  }

  private static void addTable(XSSFSheet sheet, int lastRow) {
    String area = "A2:C" + lastRow;
    XSSFTable table = sheet.createTable(new AreaReference(area, SpreadsheetVersion.EXCEL2007));
    table.getCTTable().addNewAutoFilter().setRef(area);
  }

  @Test
  void aTableTakesInTheNewColumns() throws IOException {
    try (XSSFWorkbook workbook = filled(sheet -> addTable(sheet, 6), ABV, NOTE)) {
      XSSFTable table = workbook.getSheetAt(0).getTables().get(0);
      assertEquals("A2:E6", table.getCTTable().getRef());
      assertEquals("A2:E6", table.getCTTable().getAutoFilter().getRef());
      assertEquals(5, table.getCTTable().getTableColumns().getCount());
      List<String> names = table.getColumns().stream().map(c -> c.getName()).toList();
      assertEquals(List.of("Day", "SG", "Temp C", "ABV to date", "Washbook note"), names);
      long ids = table.getColumns().stream().map(c -> c.getId()).distinct().count();
      assertEquals(5, ids);
    }
  }

  @Test
  void aTableThatEndsAboveTheLogOrIsFilledFromElsewhereStaysAsItIs() throws IOException {
    try (XSSFWorkbook workbook = filled(sheet -> addTable(sheet, 4), ABV)) {
      assertEquals("A2:C4", workbook.getSheetAt(0).getTables().get(0).getCTTable().getRef());
    }
    Consumer<XSSFSheet> fromElsewhere =
        sheet -> {
          addTable(sheet, 6);
          sheet.getTables().get(0).getCTTable().setConnectionId(1);
        };
    try (XSSFWorkbook workbook = filled(fromElsewhere, ABV)) {
      assertEquals("A2:C6", workbook.getSheetAt(0).getTables().get(0).getCTTable().getRef());
    }
  }

  @Test
  void aFilterAndItsNameReachOverTheNewColumns() throws IOException {
    Consumer<XSSFSheet> with = sheet -> sheet.setAutoFilter(CellRangeAddress.valueOf("A2:C6"));
    try (XSSFWorkbook workbook = filled(with, ABV, NOTE)) {
      XSSFSheet sheet = workbook.getSheetAt(0);
      assertEquals("A2:E6", sheet.getCTWorksheet().getAutoFilter().getRef());
      assertEquals(
          "'Plum 3''s log'!$A$2:$E$6",
          workbook.getName("_xlnm._FilterDatabase").getRefersToFormula());
    }
  }

  @Test
  void thePrintedAreaTakesInTheNewColumnsAndLeavesOthersAsTheyAre() throws IOException {
    Consumer<XSSFSheet> with =
        sheet -> {
          sheet.getWorkbook().createSheet("Other").createRow(1).createCell(2).setCellValue(1);
          sheet.getWorkbook().setPrintArea(0, "$A$1:$C$40");
          sheet.getWorkbook().setPrintArea(1, "$A$1:$C$40");
        };
    try (XSSFWorkbook workbook = filled(with, ABV, NOTE)) {
      assertEquals("'Plum 3''s log'!$A$1:$E$40", workbook.getPrintArea(0));
      assertEquals("Other!$A$1:$C$40", workbook.getPrintArea(1));
    }
    ColumnPatch afterAGap = TestColumn.of(4, 1, "ABV to date", 5, 2, Map.of(2, 1.0));
    try (XSSFWorkbook workbook = filled(with, afterAGap)) {
      assertEquals("'Plum 3''s log'!$A$1:$E$40", workbook.getPrintArea(0));
    }
    Consumer<XSSFSheet> twoAreas =
        sheet -> sheet.getWorkbook().setPrintArea(0, "$A$1:$C$4,$A$9:$C$12");
    try (XSSFWorkbook workbook = filled(twoAreas, ABV)) {
      assertEquals(
          "'Plum 3''s log'!$A$1:$C$4,'Plum 3''s log'!$A$9:$C$12", workbook.getPrintArea(0));
    }
  }

  @Test
  void aRuleThatShadesRowsReachesOverTheNewColumnsAndOneForACellDoesNot() throws IOException {
    Consumer<XSSFSheet> with =
        sheet -> {
          shade(sheet, "MOD(ROW(),2)=0", "A3:C6");
          shade(sheet, "$C3>\"A1\"", "A3:C6", "A9:C9");
          shade(sheet, "C3>4", "A3:C6");
          shade(sheet, "$C3>4", "C3:C6");
        };
    try (XSSFWorkbook workbook = filled(with, ABV, NOTE)) {
      var rules = workbook.getSheetAt(0).getSheetConditionalFormatting();
      List<String> ranges =
          IntStream.range(0, 4)
              .mapToObj(
                  i ->
                      Arrays.stream(rules.getConditionalFormattingAt(i).getFormattingRanges())
                          .map(CellRangeAddress::formatAsString)
                          .toList()
                          .toString())
              .toList();
      assertEquals(List.of("[A3:E6]", "[A3:E6, A9:C9]", "[A3:C6]", "[C3:C6]"), ranges);
    }
  }

  private static void shade(XSSFSheet sheet, String formula, String... ranges) {
    var rules = sheet.getSheetConditionalFormatting();
    CellRangeAddress[] areas =
        Arrays.stream(ranges).map(CellRangeAddress::valueOf).toArray(CellRangeAddress[]::new);
    rules.addConditionalFormatting(areas, rules.createConditionalFormattingRule(formula));
  }

  private static final ColumnPatch[] MANY =
      IntStream.range(3, 11)
          .mapToObj(c -> TestColumn.of(c, 1, "Attenuation " + c, 5, 1, Map.of(2, 1.0 + c)))
          .toArray(ColumnPatch[]::new);

  @Test
  void aSheetThatBecameWideIsPrintedOnePageWideOnItsSide() throws IOException {
    try (XSSFWorkbook workbook = filled(sheet -> {}, MANY)) {
      XSSFSheet sheet = workbook.getSheetAt(0);
      assertTrue(sheet.getFitToPage());
      assertTrue(sheet.getPrintSetup().getLandscape());
      assertEquals(1, sheet.getPrintSetup().getFitWidth());
      assertEquals(0, sheet.getPrintSetup().getFitHeight());
    }
  }

  @Test
  void aSheetThatIsNarrowIsPrintedAsItWas() throws IOException {
    try (XSSFWorkbook workbook = filled(sheet -> {}, ABV)) {
      assertFalse(workbook.getSheetAt(0).getFitToPage());
      assertFalse(workbook.getSheetAt(0).getCTWorksheet().isSetPageSetup());
    }
  }

  @Test
  void lettersBecomeNoSmallerThanEightPointsButTwoPagesStandSideBySide() throws IOException {
    try (XSSFWorkbook workbook = filled(sheet -> sheet.setColumnWidth(0, 120 * 256), MANY)) {
      assertEquals(2, workbook.getSheetAt(0).getPrintSetup().getFitWidth());
    }
  }

  @Test
  void aScaleOrABreakThatAPersonHasSetStays() throws IOException {
    try (XSSFWorkbook workbook =
        filled(sheet -> sheet.getPrintSetup().setScale((short) 60), MANY)) {
      assertFalse(workbook.getSheetAt(0).getFitToPage());
      assertEquals(60, workbook.getSheetAt(0).getPrintSetup().getScale());
    }
    try (XSSFWorkbook workbook = filled(sheet -> sheet.setColumnBreak(2), MANY)) {
      assertFalse(workbook.getSheetAt(0).getFitToPage());
    }
  }

  @Test
  void whatElseAPageAndASheetAreGivenStays() throws IOException {
    Consumer<XSSFSheet> own =
        sheet -> {
          sheet.setTabColor(new XSSFColor(new byte[] {1, 2, 3}, null));
          sheet.getPrintSetup().setPaperSize(PrintSetup.A4_PAPERSIZE);
          sheet.getPrintSetup().setCopies((short) 2);
          sheet.getFooter().setLeft("cellar");
        };
    try (XSSFWorkbook workbook = filled(own, MANY)) {
      XSSFSheet sheet = workbook.getSheetAt(0);
      assertTrue(sheet.getFitToPage());
      assertEquals(3, sheet.getTabColor().getRGB()[2]);
      assertEquals(2, sheet.getPrintSetup().getCopies());
      assertEquals(PrintSetup.A4_PAPERSIZE, sheet.getPrintSetup().getPaperSize());
      assertEquals("cellar", sheet.getFooter().getLeft());
    }
  }

  @Test
  void rowShadingInTheListOfExtensionsReachesOverTheNewColumns() throws Exception {
    assertEquals("A3:D6", reachOfExtension("MOD(ROW(),2)=0"));
    assertEquals("A3:C6", reachOfExtension("A3&gt;2"));
  }

  private String reachOfExtension(String formula) throws Exception {
    String list =
        "<extLst xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><ext"
            + " xmlns:x14=\"http://schemas.microsoft.com/office/spreadsheetml/2009/9/main\""
            + " uri=\"{78C0D931-6437-407d-A8EE-F0AAD7539E65}\"><x14:conditionalFormattings>"
            + "<x14:conditionalFormatting"
            + " xmlns:xm=\"http://schemas.microsoft.com/office/excel/2006/main\"><x14:cfRule"
            + " type=\"expression\" priority=\"1\" id=\"{1}\"><xm:f>"
            + formula
            + "</xm:f></x14:cfRule><xm:sqref>A3:C6</xm:sqref></x14:conditionalFormatting>"
            + "</x14:conditionalFormattings></ext></extLst>";
    CTExtensionList parsed =
        CTExtensionList.Factory.parse(
            list.replace("<extLst xmlns=", "<xml-fragment xmlns=")
                .replace("</extLst>", "</xml-fragment>"));
    try (XSSFWorkbook workbook = filled(sheet -> sheet.getCTWorksheet().setExtLst(parsed), ABV)) {
      String markup = workbook.getSheetAt(0).getCTWorksheet().getExtLst().xmlText();
      return markup.replaceAll("(?s).*sqref>([A-Z0-9:]+)<.*", "$1");
    }
  }
}
