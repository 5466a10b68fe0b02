package washbook.runner.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;
import washbook.runner.OdsSamples;
import washbook.runner.Office;
import washbook.runner.file.UnusableFileException;

class OdsReaderTest {
  @TempDir private Path directory;

  private List<Grid> read(String sheets) throws IOException {
    Path file = OdsSamples.pack(directory.resolve("made.ods"), OdsSamples.content("", sheets));
    return new OdsReader().read(file);
  }

  private Grid readRows(String rows) throws IOException {
    return read("<table:table table:name=\"A\">" + rows + "</table:table>").get(0);
  }

  @Test
  void aLogOfTheOfficeIsRead() throws Exception {
    List<Grid> grids = new OdsReader().read(OdsSamples.log(directory));
    assertEquals(List.of("Plum 3", "Same & again"), grids.stream().map(Grid::name).toList());
    Grid log = grids.get(0);
    assertEquals(OdsSamples.LAST + 1, log.rowCount());
    assertEquals(5, log.columnCount());
    assertEquals(List.of(new Grid.Area(0, 0, 0, 3)), log.merged());
    assertEquals("Gravity", log.text(OdsSamples.HEADER, 1));
    assertEquals(Kind.DATE, log.kind(3, 0));
    assertEquals(
        LocalDate.of(2024, 9, 3).toEpochDay() - LocalDate.of(1899, 12, 30).toEpochDay(),
        log.number(3, 0));
    assertEquals(1.085 - 0.03, log.number(3, 1));
    assertEquals(55, log.number(3, 2), 1e-9);
    assertTrue(log.isFormula(3, 2));
    assertEquals(Kind.ERROR, log.kind(5, 2));
    assertTrue(log.isFormula(5, 2));
    assertEquals(0.3, log.number(3, 3));
    assertEquals("two  spaces\nand a line ", log.text(3, 4));
    assertEquals(1, log.number(4, 4), "the office keeps the truth as a formula");
    assertEquals("a < b & c", log.text(5, 4));
    assertEquals(Kind.BLANK, log.kind(6, 0));
    assertEquals("yes", log.text(7, 4));
    assertTrue(log.isFormula(7, 4));
    Grid same = grids.get(1);
    assertEquals(12, same.rowCount());
    assertEquals(8, same.number(11, 4));
  }

  @Test
  void repeatedRowsAndCellsAreSpreadAndBlankOnesCostNothing() throws IOException {
    Grid grid =
        readRows(
            "<table:table-row table:number-rows-repeated=\"3\">"
                + "<table:table-cell table:number-columns-repeated=\"2\"/>"
                + "<table:table-cell table:number-columns-repeated=\"2\""
                + " office:value-type=\"float\" office:value=\"1.5\"/>"
                + "<table:table-cell table:number-columns-repeated=\"16380\"/></table:table-row>"
                + "<table:table-row table:number-rows-repeated=\"1048570\"><table:table-cell"
                + " table:number-columns-repeated=\"16384\"/></table:table-row>"
                + "<table:table-row><table:table-cell table:style-name=\"x\"/></table:table-row>");
    assertEquals(3, grid.rowCount());
    assertEquals(4, grid.columnCount());
    assertEquals(1.5, grid.number(2, 3));
    assertEquals(Kind.BLANK, grid.kind(2, 1));
  }

  @Test
  void aSheetFullOfRepeatsIsRefusedAndDoesNotEndUs() {
    UnusableFileException refusal =
        assertThrows(
            UnusableFileException.class,
            () ->
                readRows(
                    "<table:table-row table:number-rows-repeated=\"1048576\"><table:table-cell"
                        + " table:number-columns-repeated=\"16384\" office:value-type=\"float\""
                        + " office:value=\"1\"/></table:table-row>"));
    assertTrue(refusal.getMessage().contains("memory"), refusal.getMessage());
  }

  @Test
  void everyValueTypeIsUnderstood() throws IOException {
    Grid grid =
        readRows(
            "<table:table-header-rows><table:table-row>"
                + "<table:table-cell office:value-type=\"currency\" office:currency=\"EUR\" office:value=\"2\"/>"
                + "<table:table-cell office:value-type=\"time\" office:time-value=\"PT06H00M00S\"/>"
                + "<table:table-cell office:value-type=\"date\" office:date-value=\"2024-09-03T18:00:00\"/>"
                + "<table:table-cell office:value-type=\"date\" office:date-value=\"soon\"/>"
                + "<table:table-cell table:formula=\"of:=[.A1]\"/>"
                + "<table:table-cell table:formula=\"of:=[.A1]\" office:value-type=\"string\""
                + " office:string-value=\"\" calcext:value-type=\"error\"><text:p>#N/A</text:p></table:table-cell>"
                + "<table:table-cell table:formula=\"of:=1/0\" office:value-type=\"float\" office:value=\"0\"><text:p>#DIV/0!</text:p></table:table-cell>"
                + "<table:table-cell office:value-type=\"string\" office:string-value=\"stored\"/>"
                + "<table:table-cell office:value-type=\"boolean\" office:boolean-value=\"false\"/>"
                + "<table:table-cell><text:p>no type</text:p></table:table-cell>"
                + "<table:table-cell office:value-type=\"string\"/>"
                + "</table:table-row></table:table-header-rows>");
    assertEquals(2, grid.number(0, 0));
    assertEquals(0.25, grid.number(0, 1));
    assertEquals(Kind.DATE, grid.kind(0, 1));
    assertEquals(0.75, grid.number(0, 2) % 1);
    for (int column = 3; column < 7; column++) {
      assertEquals(Kind.ERROR, grid.kind(0, column));
    }
    assertEquals("stored", grid.text(0, 7));
    assertEquals(Kind.LOGICAL, grid.kind(0, 8));
    assertEquals("no type", grid.text(0, 9));
    assertEquals(Kind.BLANK, grid.kind(0, 10));
  }

  @Test
  void textIsWhatTheCellShows() throws IOException {
    Grid grid =
        readRows(
            "<table:table-row><table:table-cell office:value-type=\"string\">"
                + "<office:annotation><text:p>a comment</text:p></office:annotation>"
                + "<text:p>one <text:span>two</text:span><text:s text:c=\"2\"/>x<text:tab/>y"
                + "<text:line-break/>&#x41;&amp;<![CDATA[<b>]]></text:p><text:p/>"
                + "<text:p>end<office:annotation><text:p>no</text:p></office:annotation></text:p>"
                + "</table:table-cell></table:table-row>");
    assertEquals("one two  x\ty\nA&<b>\n\nend", grid.text(0, 0));
  }

  @Test
  void mergedCellsNestedTablesAndShapesAreNoTrouble() throws IOException {
    List<Grid> grids =
        read(
            "<table:tracked-changes><table:cell-content-change><table:table-cell/>"
                + "</table:cell-content-change></table:tracked-changes>"
                + "<table:table table:name=\"A\"><table:shapes><table:table><table:table-row/>"
                + "</table:table></table:shapes><table:table-column/><table:table-row-group>"
                + "<table:table-row><table:table-cell table:number-columns-spanned=\"2\""
                + " table:number-rows-spanned=\"3\" office:value-type=\"float\" office:value=\"1\">"
                + "<table:table table:name=\"inner\"><table:table-row><table:table-cell"
                + " office:value-type=\"float\" office:value=\"9\"/></table:table-row></table:table>"
                + "</table:table-cell><table:covered-table-cell/><table:table-cell"
                + " office:value-type=\"float\" office:value=\"2\"/></table:table-row>"
                + "</table:table-row-group></table:table><table:table table:name=\"B\"/>");
    assertEquals(List.of("A", "B"), grids.stream().map(Grid::name).toList());
    assertEquals(List.of(new Grid.Area(0, 0, 2, 1)), grids.get(0).merged());
    assertEquals(2, grids.get(0).number(0, 2));
    assertEquals(1, grids.get(0).rowCount());
    assertEquals(0, grids.get(1).rowCount());
  }

  @Test
  void encryptedFilesOfTheOfficeAreRefused() throws Exception {
    Path file = OdsSamples.log(directory);
    Path locked = directory.resolve("locked.ods");
    // The office encrypts on its command line only through a filter option it does not have, so
    // the mark of encryption is put into the manifest that it wrote.
    Files.copy(file, locked);
    edit(
        locked,
        "META-INF/manifest.xml",
        "/>",
        "><manifest:encryption-data/></manifest:file-entry>");
    refused(locked, "encrypted");
  }

  @Test
  void signedForeignAndDamagedFilesAreRefused() throws IOException {
    String sheet = "<table:table table:name=\"A\"/>";
    Path signed = OdsSamples.pack(directory.resolve("s.ods"), OdsSamples.content("", sheet));
    try (FileSystem zip = FileSystems.newFileSystem(signed, Map.of())) {
      Files.writeString(zip.getPath("META-INF/documentsignatures.xml"), "<x/>");
    }
    refused(signed, "signed");
    Path text = OdsSamples.pack(directory.resolve("t.ods"), OdsSamples.content("", sheet));
    edit(text, "mimetype", "spreadsheet", "text");
    refused(text, "no OpenDocument spreadsheet");
    Path none = OdsSamples.pack(directory.resolve("n.ods"), OdsSamples.content("", sheet));
    try (FileSystem zip = FileSystems.newFileSystem(none, Map.of())) {
      Files.delete(zip.getPath("content.xml"));
    }
    refused(none, "content.xml");
    refused(OdsSamples.pack(directory.resolve("e.ods"), OdsSamples.content("", "")), "no sheets");
    refused(OdsSamples.pack(directory.resolve("x.ods"), OdsSamples.content("", "<a>")), "damaged");
    Path odd = OdsSamples.pack(directory.resolve("p.ods"), OdsSamples.content("", sheet));
    edit(odd, "content.xml", "xmlns:text=\"urn:oasis", "xmlns:text=\"urn:other");
    refused(odd, "prefix");
  }

  private static void edit(Path file, String part, String old, String by) throws IOException {
    try (FileSystem zip = FileSystems.newFileSystem(file, Map.of())) {
      Path path = zip.getPath(part);
      String before = Files.readString(path, StandardCharsets.UTF_8);
      assertTrue(before.contains(old));
      Files.writeString(path, before.replace(old, by), StandardCharsets.UTF_8);
    }
  }

  private static void refused(Path file, String word) {
    UnusableFileException refusal =
        assertThrows(UnusableFileException.class, () -> new OdsReader().read(file));
    assertTrue(refusal.getMessage().contains(word), refusal.getMessage());
    assertTrue(refusal.getMessage().endsWith("."), refusal.getMessage());
  }

  @Test
  void theOfficeShowsWhatIsRead() throws Exception {
    Path file = OdsSamples.log(directory);
    List<String> shown = new Office(directory).shown(file).get("Same & again");
    assertEquals(12, shown.size());
    assertEquals("7,8,8,8,8", shown.get(11));
  }
}
