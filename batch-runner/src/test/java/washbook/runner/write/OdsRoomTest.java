package washbook.runner.write;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.Grid.Area;
import washbook.runner.OdsSamples;
import washbook.runner.TestColumn;
import washbook.runner.corpus.ZipParts;
import washbook.runner.read.OdsReader;

/** Charts and pictures of an OpenDocument sheet keep their places and sizes. */
class OdsRoomTest {
  private static final String STYLES =
      "<office:automatic-styles><style:style style:name=\"co\" style:family=\"table-column\">"
          + "<style:table-column-properties style:column-width=\"2cm\"/></style:style>"
          + "</office:automatic-styles>";
  private static final String COLUMNS =
      "<table:table-column table:style-name=\"co\" table:number-columns-repeated=\"16384\"/>";
  private static final ColumnPatch ABV =
      TestColumn.of(1, 0, "Apparent attenuation", 2, 2, Map.of(1, 1.0, 2, 2.0));
  private static final String WIDE = "washbook-width-12\"";

  @TempDir private Path folder;

  private static String row(String cells) {
    return "<table:table-row>" + cells + "</table:table-row>";
  }

  private static String cell(String inside) {
    return "<table:table-cell office:value-type=\"float\" office:value=\"1\">"
        + inside
        + "</table:table-cell>";
  }

  private static String frame(String end, String x) {
    return "<draw:frame table:end-cell-address=\"A."
        + end
        + "\" table:end-x=\""
        + x
        + "\" svg:width=\"1cm\" svg:height=\"1cm\"><draw:image/></draw:frame>";
  }

  /** The sheet's markup; a second look at the drawings is worth it where there is a picture. */
  private Path log(String inside) throws IOException {
    Path plain =
        OdsSamples.pack(
            folder.resolve("plain.ods"),
            OdsSamples.content(
                STYLES, "<table:table table:name=\"A\">" + inside + "</table:table>"));
    Path log = folder.resolve("log.ods");
    try (OutputStream out = Files.newOutputStream(log);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.putNextEntry(new ZipEntry("Pictures/one.png"));
      zip.closeEntry();
      zip.putNextEntry(new ZipEntry("content.xml"));
      String content = new String(ZipParts.content(plain, "content.xml"), StandardCharsets.UTF_8);
      String prefixes =
          " xmlns:draw=\"urn:oasis:names:tc:opendocument:xmlns:drawing:1.0\""
              + " xmlns:svg=\"urn:oasis:names:tc:opendocument:xmlns:svg-compatible:1.0\"";
      zip.write(
          content
              .replaceFirst("<office:document-content", "<office:document-content" + prefixes)
              .getBytes(StandardCharsets.UTF_8));
      zip.closeEntry();
    }
    return log;
  }

  private String filled(String inside) throws IOException {
    Path log = log(inside);
    Path filled = folder.resolve("filled.ods");
    new OdsWriter().write(log, TestColumn.on("A", ABV), filled);
    Path again = folder.resolve("again.ods");
    new OdsWriter().write(filled, TestColumn.on("A", ABV), again);
    assertEquals(-1, Files.mismatch(filled, again));
    return new String(ZipParts.content(filled, "content.xml"), StandardCharsets.UTF_8);
  }

  /** Of columns of 20 mm the second becomes 29.6 mm wide; what ended at 50 mm still does. */
  @Test
  void aPictureBelowTheLogIsTiedAnewToTheWidenedColumns() throws IOException {
    String rows = row(cell("")).repeat(3);
    String content =
        filled(
            COLUMNS
                + rows
                + row("<table:table-cell>" + frame("C9", "10mm") + "</table:table-cell>"));
    assertTrue(content.contains(WIDE), content);
    assertTrue(content.contains("\"A.C9\" table:end-x=\"0.4mm\""), content);
    content =
        filled(
            COLUMNS
                + rows
                + row("<table:table-cell>" + frame("B9", "1cm") + "</table:table-cell>"));
    assertTrue(content.contains("\"A.B9\" table:end-x=\"1cm\""), content);
  }

  @Test
  void whereAPictureWouldBeMovedColumnsKeepTheirWidth() throws IOException {
    String right =
        "<table:table-cell table:number-columns-repeated=\"4\"/><table:table-cell>"
            + frame("F9", "1cm")
            + "</table:table-cell>";
    String content = filled(COLUMNS + row(cell("")).repeat(3) + row(right));
    assertFalse(content.contains("table:style-name=\"" + WIDE), content);
    assertTrue(content.contains("\"A.F9\" table:end-x=\"1cm\""), content);
  }

  /** It states its size, which the end of its tie to the cells no longer changes. */
  @Test
  void aPictureBesideARowThatHeadersMakeHigherKeepsItsSize() throws IOException {
    String content = filled(COLUMNS + row(cell(frame("A2", "1cm"))) + row(cell("")).repeat(2));
    assertTrue(content.contains("\"washbook-wrap\" office:value-type"), content);
    assertFalse(content.contains("table:end-"), content);
    assertTrue(content.contains("<draw:frame svg:width=\"1cm\" svg:height=\"1cm\">"), content);
  }

  @Test
  void besideAShapeOfTheSheetHeadersDoNotMakeTheirRowHigher() throws IOException {
    String shapes =
        "<table:shapes><draw:rect svg:x=\"3cm\" svg:y=\"0mm\" svg:width=\"3cm\""
            + " svg:height=\"1cm\"/></table:shapes>";
    String content = filled(shapes + COLUMNS + row(cell("")).repeat(3));
    assertFalse(content.contains("\"washbook-wrap\" office:value-type"), content);
  }

  @Test
  void theReaderSeesWhereDrawingsStand() throws IOException {
    String shapes =
        "<table:shapes><draw:rect svg:x=\"3cm\" svg:y=\"10mm\" svg:width=\"3cm\""
            + " svg:height=\"1cm\"/></table:shapes>";
    String sheet = shapes + COLUMNS + row(cell("")) + row(cell(frame("C9", "10mm")));
    List<Area> drawings = new OdsReader().read(log(sheet)).get(0).drawings();
    assertEquals(List.of(new Area(2, 1, 4, 2), new Area(1, 0, 8, 2)), drawings);
  }
}
