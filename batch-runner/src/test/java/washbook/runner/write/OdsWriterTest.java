package washbook.runner.write;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;
import washbook.log.sheet.SheetPatch;
import washbook.runner.OdsSamples;
import washbook.runner.Office;
import washbook.runner.TestColumn;
import washbook.runner.corpus.OdsChangeCheck;
import washbook.runner.corpus.ZipParts;
import washbook.runner.file.UnusableFileException;
import washbook.runner.read.OdsReader;

class OdsWriterTest {
  private static final String NUMBER = " office:value-type=\"float\" office:value=\"";
  private static final String CELL = "<table:table-cell" + NUMBER + "1\"/>";

  private static final String WIDTH = "<table:table-column table:style-name=\"washbook-width-7\"/>";

  @TempDir private Path directory;

  /** The sheet markup after a fill; a second fill must give the same file. */
  private String patched(String sheets, ColumnPatch... columns) throws IOException {
    Path source = OdsSamples.pack(directory.resolve("made.ods"), OdsSamples.content("", sheets));
    Path target = directory.resolve("filled.ods");
    fill(source, target, TestColumn.on("A", columns));
    assertEquals(Set.of("content.xml"), ZipParts.changed(source, target));
    String content = new String(ZipParts.content(target, "content.xml"), StandardCharsets.UTF_8);
    int start = content.indexOf("<office:spreadsheet>") + 20;
    return content.substring(start, content.indexOf("</office:spreadsheet>"));
  }

  private void fill(Path source, Path target, List<SheetPatch> patches) throws IOException {
    new OdsWriter().write(source, patches, target);
    Path again = directory.resolve("again.ods");
    new OdsWriter().write(target, patches, again);
    assertArrayEquals(Files.readAllBytes(target), Files.readAllBytes(again), "a second fill");
  }

  private static String table(String inside) {
    return "<table:table table:name=\"A\">" + inside + "</table:table>";
  }

  private static String row(String inside) {
    return "<table:table-row>" + inside + "</table:table-row>";
  }

  private static String text(String text) {
    return "<table:table-cell office:value-type=\"string\"><text:p>"
        + text
        + "</text:p></table:table-cell>";
  }

  private static String number(String style, String value, String shown) {
    return "<table:table-cell table:style-name=\""
        + style
        + "\""
        + NUMBER
        + value
        + "\"><text:p>"
        + shown
        + "</text:p></table:table-cell>";
  }

  private static ColumnPatch[] columns() {
    return new ColumnPatch[] {
      TestColumn.of(
          5, 2, "ABV to date (Washbook)", OdsSamples.LAST, 2, Map.of(3, 1.23456, 4, 3.0, 8, 7.125)),
      TestColumn.of(
          6,
          2,
          "Twice",
          OdsSamples.LAST,
          1,
          Map.of(3, 2.11, 7, "yes"),
          Map.of(3, "B4*2", 7, "IF(AND(B8>1,TRUE),\"yes\",\"a,b\")")),
      TestColumn.of(
          7, 2, "Washbook note", OdsSamples.LAST, -1, Map.of(5, " =1+1  <&>\nnext\t\"x\" "))
    };
  }

  @Test
  void aFillOfAnOfficeFileAddsItsCellsAndNothingElse() throws Exception {
    Path source = OdsSamples.log(directory);
    Path target = directory.resolve("filled.ods");
    fill(source, target, TestColumn.on("Plum 3", columns()));
    OdsChangeCheck.checkParts(source, TestColumn.on("Plum 3", columns()), target);
    Office office = new Office(directory);
    Map<String, List<String>> before = office.shown(source);
    Map<String, List<String>> after = office.shown(target);
    assertEquals(before.get("Same & again"), after.get("Same & again"));
    List<String> log = after.get("Plum 3");
    assertEquals(
        "Date,Gravity,Points,Share,Note,ABV to date (Washbook),Twice,Washbook note", log.get(2));
    String all = String.join("\n", log);
    assertTrue(all.contains(",1.23,2.1,\n"), all);
    assertTrue(all.contains(",,,\" =1+1  <&>\nnext\t\"\"x\"\" \""), all);
    assertTrue(log.get(log.size() - 1).endsWith(",,7.13,,"), all);
    List<Grid> grids = new OdsReader().read(target);
    Grid old = new OdsReader().read(source).get(0);
    for (int row = 0; row < old.rowCount(); row++) {
      for (int column = 0; column < old.columnCount(); column++) {
        assertEquals(old.kind(row, column), grids.get(0).kind(row, column));
        assertEquals(old.number(row, column), grids.get(0).number(row, column));
        assertEquals(old.text(row, column), grids.get(0).text(row, column));
      }
    }
    assertEquals(1.23456, grids.get(0).number(3, 5));
    List<String> formulas = office.formulas(target).get("Plum 3");
    String withFormulas = String.join("\n", formulas);
    assertTrue(withFormulas.contains("=B4*2"), withFormulas);
    assertTrue(withFormulas.contains("AND(B8>1"), withFormulas);
  }

  @Test
  void formulasComputeWhatIsStored() throws Exception {
    Path source = OdsSamples.log(directory);
    Path target = directory.resolve("filled.ods");
    ColumnPatch wrong =
        TestColumn.of(
            5,
            2,
            "New",
            5,
            3,
            Map.of(3, 999.0, 4, 999.0, 5, "stored"),
            Map.of(
                3, "SUM(B4:B5,$D$4)+LOG10(100)",
                4, "IF('Same & again'!A1=7,ROUND(1.23456,2),0)",
                5, "IF(ISNA(#N/A),\"a,\"&\"b\",\"\")"));
    fill(source, target, TestColumn.on("Plum 3", wrong));
    Path user = Files.createDirectories(directory.resolve("profile").resolve("user"));
    Files.writeString(
        user.resolve("registrymodifications.xcu"),
        "<oor:items xmlns:oor=\"http://openoffice.org/2001/registry\"><item"
            + " oor:path=\"/org.openoffice.Office.Calc/Formula/Load\"><prop"
            + " oor:name=\"ODFRecalcMode\" oor:op=\"fuse\"><value>0</value></prop></item>"
            + "</oor:items>");
    String shown = String.join("\n", new Office(directory).shown(target).get("Plum 3"));
    assertTrue(shown.contains(",4.400\n"), shown);
    assertTrue(shown.contains(",1.230\n"), shown);
    assertTrue(shown.contains(",\"a,b\"\n"), shown);
  }

  @Test
  void missingColumnsRowsAndStylesAreDeclaredOnce() throws IOException {
    ColumnPatch column = TestColumn.of(2, 0, "N", 3, 1, Map.of(3, 2.0));
    assertEquals(
        table(
            "<table:table-column table:number-columns-repeated=\"2\"/>"
                + WIDTH
                + row("<table:table-cell table:number-columns-repeated=\"2\"/>" + text("N"))
                + "<table:table-row"
                + " table:number-rows-repeated=\"2\"><table:table-cell/></table:table-row>"
                + row(
                    "<table:table-cell table:number-columns-repeated=\"2\"/>"
                        + number("washbook-1", "2", "2.0"))),
        patched("<table:table table:name=\"A\"/>", column));
    String styles =
        "<office:automatic-styles><style:style style:name=\"x\" style:family=\"table\"/>"
            + "</office:automatic-styles>";
    for (String present : List.of("", styles, "<office:automatic-styles/>")) {
      Path source =
          OdsSamples.pack(
              directory.resolve("styles.ods"), OdsSamples.content(present, table(row(CELL))));
      Path target = directory.resolve("filled.ods");
      fill(source, target, TestColumn.on("A", column));
      String content = new String(ZipParts.content(target, "content.xml"), StandardCharsets.UTF_8);
      assertEquals(2, content.split("style:name=\"washbook-1\"", -1).length, content);
      assertEquals(2, content.split("<office:automatic-styles>", -1).length, content);
    }
  }

  @Test
  void repeatedCellsAndRowsAreDividedOnlyWhereNeeded() throws IOException {
    String sheet =
        "<table:table-column table:style-name=\"co\" table:number-columns-repeated=\"2\"/>"
            + row(CELL)
            + "<table:table-row table:number-rows-repeated=\"5\" table:style-name=\"ro\">"
            + "<table:table-cell table:number-columns-repeated=\"4\" table:style-name=\"ce\"/>"
            + "</table:table-row>"
            + "<table:named-expressions/>";
    ColumnPatch column = TestColumn.of(2, 0, "N", 4, 1, Map.of(2, 2.0));
    String blank =
        "<table:table-cell table:number-columns-repeated=\"4\" table:style-name=\"ce\"/>";
    assertEquals(
        table(
            "<table:table-column table:style-name=\"co\" table:number-columns-repeated=\"2\"/>"
                + WIDTH
                + row(CELL + "<table:table-cell/>" + text("N"))
                + "<table:table-row table:style-name=\"ro\">"
                + blank
                + "</table:table-row><table:table-row table:style-name=\"ro\">"
                + "<table:table-cell table:number-columns-repeated=\"2\" table:style-name=\"ce\"/>"
                + number("washbook-1-ce", "2", "2.0")
                + "<table:table-cell table:style-name=\"ce\"/></table:table-row>"
                + "<table:table-row table:number-rows-repeated=\"3\" table:style-name=\"ro\">"
                + blank
                + "</table:table-row><table:named-expressions/>"),
        patched(table(sheet), column));
  }

  @Test
  void theRestOfTheSheetIsDividedForTheWidthAndOtherColumnsKeepTheirs() throws IOException {
    String rest =
        "<table:table-column table:style-name=\"co\" table:number-columns-repeated=\"%d\""
            + " table:default-cell-style-name=\"Default\"/>";
    String own =
        "<table:table-column table:style-name=\"own\" table:number-columns-repeated=\"2\"/>";
    ColumnPatch first = TestColumn.of(1, 0, "N", 1, 0, Map.of());
    ColumnPatch second = TestColumn.of(4, 0, "ABV to date (Washbook)", 1, 0, Map.of());
    assertEquals(
        table(
            own
                + String.format(rest, 2)
                + "<table:table-column table:style-name=\"washbook-width-11\""
                + " table:default-cell-style-name=\"Default\"/>"
                + String.format(rest, 16379)
                + row(
                    CELL
                        + text("N")
                        + "<table:table-cell table:number-columns-repeated=\"2\"/>"
                        + text("ABV to date (Washbook)")
                            .replace("cell ", "cell table:style-name=\"washbook-wrap\" "))),
        patched(table(own + String.format(rest, 16382) + row(CELL)), first, second));
  }

  @Test
  void whatElseIsInACellStays() throws IOException {
    String note = "<office:annotation><text:p>mine</text:p></office:annotation>";
    String old =
        row(CELL + text("N"))
            + row(
                CELL
                    + "<table:table-cell table:style-name=\"ce\""
                    + " table:content-validation-name=\"v\" table:formula=\"of:=1\""
                    + NUMBER
                    + "1\">"
                    + note
                    + "<text:p>1</text:p></table:table-cell>")
            + row(CELL + number("ce", "3", "3"));
    assertEquals(
        table(
            "<table:table-column/>"
                + WIDTH
                + row(CELL + text("N"))
                + row(
                    CELL
                        + "<table:table-cell table:style-name=\"ce\""
                        + " table:content-validation-name=\"v\""
                        + NUMBER
                        + "2\">"
                        + note
                        + "<text:p>2.0</text:p></table:table-cell>")
                + row(CELL + "<table:table-cell table:style-name=\"ce\"/>")),
        patched(table(old), TestColumn.of(1, 0, "N", 2, 1, Map.of(1, 2.0))));
  }

  @Test
  void rowGroupsSpacesAndEmptyRowsAreNoTrouble() throws IOException {
    String sheet =
        "\n <table:table-header-rows>\n <table:table-row/>\n </table:table-header-rows>"
            + "<table:table-row-group>"
            + row("\n  " + CELL + "\n  ")
            + "</table:table-row-group>\n";
    assertEquals(
        table(
            "\n <table:table-column/>"
                + WIDTH
                + "<table:table-header-rows>\n <table:table-row><table:table-cell/>"
                + text("N")
                + "</table:table-row>\n </table:table-header-rows><table:table-row-group>"
                + row("\n  " + CELL + number("washbook-0", "5", "5") + "\n  ")
                + "</table:table-row-group>\n"),
        patched(table(sheet), TestColumn.of(1, 0, "N", 1, 0, Map.of(1, 5.0))));
  }

  @Test
  void whatIsNotOursIsNotReplaced() throws IOException {
    ColumnPatch column = TestColumn.of(0, 0, "N", 1, 0, Map.of(1, 5.0));
    for (String sheet :
        List.of(
            row(text("other")),
            row("<table:table-cell/>") + row(CELL),
            row(text("N"))
                + row(
                    "<table:table-cell table:number-matrix-columns-spanned=\"1\""
                        + " table:number-matrix-rows-spanned=\"2\" table:formula=\"of:=1\""
                        + NUMBER
                        + "1\"/>"))) {
      UnusableFileException refusal =
          assertThrows(UnusableFileException.class, () -> patched(table(sheet), column));
      assertTrue(
          refusal.getMessage().contains("Cell A") || refusal.getMessage().contains("cell A"));
    }
  }

  @Test
  void fullAndUnknownSheetsAreRefused() {
    ColumnPatch far = TestColumn.of(16384, 0, "N", 1, 0, Map.of());
    ColumnPatch low = TestColumn.of(0, 0, "N", 1048576, 0, Map.of());
    for (ColumnPatch column : List.of(far, low)) {
      assertThrows(UnusableFileException.class, () -> patched(table(row(CELL)), column));
    }
    assertThrows(
        UnusableFileException.class,
        () -> patched("<table:table table:name=\"B\"/>", TestColumn.of(0, 0, "N", 1, 0, Map.of())));
  }

  @Test
  void damageNeverEscapesAsAnythingButARefusal() throws Exception {
    byte[] good = Files.readAllBytes(OdsSamples.log(directory));
    String content =
        new String(
            ZipParts.content(Files.write(directory.resolve("good.ods"), good), "content.xml"),
            StandardCharsets.UTF_8);
    Random random = new Random(5);
    int refused = 0;
    for (int i = 0; i < 600; i++) {
      Path broken = directory.resolve("broken.ods");
      if (i % 2 == 0) {
        Files.write(broken, damage(good, random));
      } else {
        byte[] part = damage(content.getBytes(StandardCharsets.UTF_8), random);
        OdsSamples.pack(broken, new String(part, StandardCharsets.ISO_8859_1));
      }
      try {
        new OdsReader().read(broken);
        new OdsWriter()
            .write(broken, TestColumn.on("Plum 3", columns()), directory.resolve("t.ods"));
      } catch (UnusableFileException e) {
        refused++;
        assertTrue(e.getMessage().endsWith("."), e.getMessage());
      }
    }
    assertTrue(refused > 200, "refused: " + refused);
  }

  private static byte[] damage(byte[] good, Random random) {
    int length = random.nextInt(3) == 0 ? random.nextInt(good.length) : good.length;
    byte[] bytes = Arrays.copyOf(good, length);
    for (int flips = random.nextInt(5); flips >= 0 && length > 0; flips--) {
      bytes[random.nextInt(length)] ^= (byte) (1 << random.nextInt(8));
    }
    return bytes;
  }

  @Test
  void blankFormulaResultsAndTextsComeBack() throws IOException {
    Path source =
        OdsSamples.pack(directory.resolve("made.ods"), OdsSamples.content("", table(row(CELL))));
    Path target = directory.resolve("filled.ods");
    String odd = "  two  \t\u0001\r\n\n\ud83c\udf52\ud83c end";
    ColumnPatch column =
        TestColumn.of(1, 0, "N", 2, -1, Map.of(1, odd, 2, 1.0e-300), Map.of(2, "1/1E300"));
    fill(source, target, TestColumn.on("A", column));
    Grid grid = new OdsReader().read(target).get(0);
    assertEquals("  two  \t\ufffd\n\n\ud83c\udf52\ufffd end", grid.text(1, 1));
    assertEquals(1.0e-300, grid.number(2, 1));
    assertEquals(Kind.NUMBER, grid.kind(2, 1));
    assertTrue(grid.isFormula(2, 1));
  }
}
