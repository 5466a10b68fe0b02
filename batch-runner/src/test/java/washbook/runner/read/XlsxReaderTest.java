package washbook.runner.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;
import washbook.runner.FileFormats;
import washbook.runner.RawXlsx;
import washbook.runner.XlsxSamples;
import washbook.runner.file.UnusableFileException;

class XlsxReaderTest {
  @TempDir private Path folder;

  private List<Grid> read(Path file) throws Exception {
    return FileFormats.of(file).reader().read(file);
  }

  private Grid read(RawXlsx raw) throws Exception {
    return read(raw.write(folder.resolve("raw.xlsx"))).get(0);
  }

  private String refusal(Path file) {
    return assertThrows(UnusableFileException.class, () -> read(file)).getMessage();
  }

  @Test
  void readsWhatAGeneralLibraryWrote() throws Exception {
    List<Grid> grids = read(XlsxSamples.log(folder.resolve("log.xlsx")));
    assertEquals(List.of("Plum 3", "Apple 7", "Empty"), grids.stream().map(Grid::name).toList());
    Grid grid = grids.get(0);
    assertEquals(13, grid.rowCount());
    assertEquals(5, grid.columnCount());
    assertEquals(List.of(new Grid.Area(0, 0, 0, 4)), grid.merged());
    assertEquals("Plum 3, main press & racking <cellar 2>", grid.text(0, 0));
    assertEquals(Kind.DATE, grid.kind(3, 0));
    // 2026-01-03 18:30
    assertEquals(
        ChronoUnit.DAYS.between(LocalDate.of(1899, 12, 30), LocalDate.of(2026, 1, 3)) + 18.5 / 24,
        grid.number(3, 0),
        1e-9);
    assertEquals(1.085, grid.number(3, 1));
    assertFalse(grid.isFormula(3, 1));
    assertEquals(Kind.NUMBER, grid.kind(3, 3));
    assertTrue(grid.isFormula(3, 3));
    assertEquals(85, grid.number(3, 3), 1e-9);
    assertEquals(" racked, \"clear\" \u00E9\u6885\uD83C\uDF4E ", grid.text(4, 4));
    assertEquals(Kind.BLANK, grid.kind(7, 1));
    assertEquals(Kind.LOGICAL, grids.get(1).kind(4, 2));
    assertEquals(0, grids.get(2).rowCount());
  }

  @Test
  void datesOfThe1904SystemErrorsAndFormulasWithoutResult() throws Exception {
    Path file = folder.resolve("old.xlsx");
    try (XSSFWorkbook workbook = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      workbook.getCTWorkbook().getWorkbookPr().setDate1904(true);
      CellStyle date = workbook.createCellStyle();
      date.setDataFormat((short) 14);
      Row row = workbook.createSheet("Sugar 4").createRow(0);
      row.createCell(0).setCellValue(LocalDateTime.of(2026, 1, 3, 12, 0));
      row.getCell(0).setCellStyle(date);
      row.createCell(1).setCellErrorValue(FormulaError.DIV0.getCode());
      row.createCell(2).setCellFormula("A1+1");
      workbook.createSheet("Hidden");
      workbook.setSheetHidden(1, true);
      workbook.write(out);
    }
    List<Grid> grids = read(file);
    assertEquals(2, grids.size());
    Grid grid = grids.get(0);
    assertEquals(Kind.DATE, grid.kind(0, 0));
    assertEquals(
        ChronoUnit.DAYS.between(LocalDate.of(1899, 12, 30), LocalDate.of(2026, 1, 3)) + 0.5,
        grid.number(0, 0));
    assertEquals(Kind.ERROR, grid.kind(0, 1));
    assertEquals(Kind.ERROR, grid.kind(0, 2));
    assertTrue(grid.isFormula(0, 2));
  }

  @Test
  void readsXmlInAllItsShapes() throws Exception {
    Grid grid =
        read(
            RawXlsx.strict(
                "\uFEFF<?xml version='1.0' encoding='utf-8'?><!-- <row/> -->"
                    + "<x:worksheet xmlns:x='http://purl.oclc.org/ooxml/spreadsheetml/main'>"
                    + "<x:sheetData ><x:row><x:c><x:v>1.5</x:v></x:c><x:c t = 'str' >"
                    + "<x:f>\"&lt;\"</x:f><x:v>a&#x2B;b &amp;<!-- no -->c<![CDATA[<&]]></x:v></x:c>"
                    + "<x:c\n t='inlineStr'\n><x:is><x:r><x:t>one</x:t></x:r><x:rPh sb='0' eb='1'>"
                    + "<x:t>no</x:t></x:rPh><x:r><x:t> two_x000A_</x:t></x:r></x:is></x:c></x:row>"
                    + "<x:row r='5' a='>'><x:c t='d' r='B5'><x:v>2026-01-03T12:00:00</x:v></x:c>"
                    + "<x:c><x:v>-1.25E-3</x:v></x:c><x:c/><x:c t='b'><x:v>1</x:v></x:c>"
                    + "<x:c t='e'><x:v>#N/A</x:v></x:c></x:row></x:sheetData></x:worksheet>\n"));
    assertEquals(1.5, grid.number(0, 0));
    assertEquals("a+b &c<&", grid.text(0, 1));
    assertTrue(grid.isFormula(0, 1));
    assertEquals("one two\n", grid.text(0, 2));
    assertEquals(Kind.DATE, grid.kind(4, 1));
    assertEquals(
        ChronoUnit.DAYS.between(LocalDate.of(1899, 12, 30), LocalDate.of(2026, 1, 3)) + 0.5,
        grid.number(4, 1));
    assertEquals(-1.25e-3, grid.number(4, 2));
    assertEquals(Kind.BLANK, grid.kind(4, 3));
    assertEquals(Kind.LOGICAL, grid.kind(4, 4));
    assertEquals(Kind.ERROR, grid.kind(4, 5));
    assertEquals(5, grid.rowCount());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          <sheetData><row r="1048577"><c><v>1</v></c></row></sheetData> | a row is outside
          <sheetData><row r="1"><c r="XFE1"><v>1</v></c></row></sheetData> | no valid address
          <sheetData><row r="1"><c r="A1" t="s"><v>7</v></c></row></sheetData> | not there
          <sheetData><row r="1"><c r="A1" t="x"><v>7</v></c></row></sheetData> | unknown type
          <sheetData><row r="1"><c r="A1"><v>7</v></c></row> | element is closed|
          <sheetData><row r="1"><c r=A1><v>7</v></c></row></sheetData> | no quotes
          <sheetData><row r="1"><c t="str"><v>&lol;</v></c></row></sheetData> | unknown entity
          """)
  void refusesWhatIsNoSheet(String inside, String reason) throws Exception {
    Path file = RawXlsx.withSheet(inside).write(folder.resolve("bad.xlsx"));
    String refusal = refusal(file);
    if (reason.startsWith("element")) {
      assertTrue(refusal.contains("damaged"), refusal);
    } else {
      assertTrue(refusal.contains(reason), refusal);
    }
  }

  @Test
  void refusesDocumentTypesUtf16AndBombs() throws Exception {
    String sheet = "<worksheet><sheetData/></worksheet>";
    Path entities =
        RawXlsx.strict("<!DOCTYPE x [<!ENTITY a \"aaaa\">]>" + sheet)
            .write(folder.resolve("entities.xlsx"));
    assertTrue(refusal(entities).contains("document type"));
    Path wide = folder.resolve("wide.xlsx");
    RawXlsx.strict(sheet)
        .part("xl/worksheets/sheet1.xml", sheet, StandardCharsets.UTF_16)
        .write(wide);
    assertTrue(refusal(wide).contains("UTF-16"));
    Path bomb = folder.resolve("bomb.xlsx");
    RawXlsx.strict(sheet).part("xl/worksheets/sheet1.xml", new byte[80 << 20]).write(bomb);
    assertTrue(refusal(bomb).contains("out of proportion"));
  }

  @Test
  void refusesEncryptedSignedAndForeignFiles() throws Exception {
    Path log = XlsxSamples.log(folder.resolve("log.xlsx"));
    Path encrypted = folder.resolve("encrypted.xlsx");
    try (POIFSFileSystem container = new POIFSFileSystem();
        OutputStream file = Files.newOutputStream(encrypted)) {
      Encryptor encryptor = new EncryptionInfo(EncryptionMode.agile).getEncryptor();
      encryptor.confirmPassword("plum");
      try (OutputStream out = encryptor.getDataStream(container)) {
        Files.copy(log, out);
      }
      container.writeFilesystem(file);
    }
    assertTrue(refusal(encrypted).contains("encrypted"));
    Path signed =
        RawXlsx.withSheet("<sheetData/>")
            .part("_xmlsignatures/sig1.xml", "<Signature/>")
            .write(folder.resolve("signed.xlsx"));
    assertTrue(refusal(signed).contains("signed"));
    Path text = Files.writeString(folder.resolve("text.xlsx"), "Date;SG\n2026-01-03;1.085\n");
    assertTrue(refusal(text).contains("none of"));
    Path image = Files.write(folder.resolve("image.xlsx"), new byte[] {1, 2, 3, 0, 0, 9});
    assertTrue(refusal(image).contains("none of"));
  }

  @Test
  void tellsDateFormatsFromOthers() {
    for (String date :
        List.of("d/m/yy", "[$-409]mmm d", "yyyy\\-mm\\-dd", "[h]:mm", "ss", "\"at\" hh", "d;@")) {
      assertTrue(XlsxDates.isDateFormat(date), date);
    }
    for (String other :
        List.of("General", "0.00", "0.0\"d\"", "#,##0\\ \\d", "[Red]0", "0.0E+00", "@", "0;m")) {
      assertFalse(XlsxDates.isDateFormat(other), other);
    }
  }
}
