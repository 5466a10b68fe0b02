package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.runner.RawOds;
import washbook.runner.corpus.ZipParts;

/** A log that fits on a page is not cut because of a chart right of it. */
class ChartBesideALogOnPaperTest {
  private static final Path LOG = Path.of("../sample-sheets/samples/molasses-2-messy.xlsx");

  @TempDir private Path folder;

  @Test
  void theLogIsOnePageWideAndTheChartBeginsTheNext() throws IOException {
    Path filled = filled(LOG, "once");
    try (InputStream in = Files.newInputStream(filled);
        XSSFWorkbook book = new XSSFWorkbook(in)) {
      XSSFSheet sheet = book.getSheet("winter");
      int end = sheet.getRow(5).getLastCellNum();
      assertEquals("Washbook note", sheet.getRow(5).getCell(end - 1).getStringCellValue());
      // The library names the column before a break.
      assertArrayEquals(new int[] {end - 1}, sheet.getColumnBreaks());
      var chart = (XSSFClientAnchor) sheet.getDrawingPatriarch().getShapes().get(0).getAnchor();
      assertTrue(chart.getCol1() >= end, "the chart begins in column " + chart.getCol1());
      assertFalse(sheet.getFitToPage());
      assertEquals(80, sheet.getPrintSetup().getScale());
      assertTrue(sheet.getPrintSetup().getLandscape());
    }
    assertEquals(-1, Files.mismatch(filled, filled(filled, "twice")));
  }

  @Test
  void soItIsInAnOpenDocumentLog() throws IOException {
    Path log = OpenDocument.log("300mm").write(folder.resolve("log.ods"));
    Path filled = filled(log, "once");
    String styles = new String(ZipParts.content(filled, "styles.xml"), StandardCharsets.UTF_8);
    String page = styles.substring(styles.indexOf("style:name=\"washbook-page-1\""));
    String properties = page.substring(0, page.indexOf("/>"));
    assertTrue(properties.contains("style:scale-to=\"80%\""), properties);
    assertFalse(properties.contains("style:scale-to-X"), properties);
    String content = new String(ZipParts.content(filled, "content.xml"), StandardCharsets.UTF_8);
    String style = "style:name=\"washbook-page-column\" style:family=\"table-column\">";
    assertTrue(content.contains(style + OpenDocument.BREAK), content);
    List<String> header = OpenDocument.texts(content.split("<table:table-row")[1]);
    assertEquals(header.size(), OpenDocument.columnsBefore(content, "washbook-page-column"));
    assertEquals(-1, Files.mismatch(filled, filled(filled, "twice")));
  }

  /** A drawing that begins above the new columns would be cut by such a break. */
  @Test
  void whatIsDrawnAboveTheCellsAsWellBeginsNoPage() throws IOException {
    Path log = OpenDocument.log("80mm").write(folder.resolve("log.ods"));
    Path filled = filled(log, "once");
    String styles = new String(ZipParts.content(filled, "styles.xml"), StandardCharsets.UTF_8);
    assertTrue(styles.contains("style:scale-to-X=\"2\""), styles);
    String content = new String(ZipParts.content(filled, "content.xml"), StandardCharsets.UTF_8);
    assertFalse(content.contains("fo:break-before=\"page\""), content);
  }

  /** A log put together by hand. */
  private static final class OpenDocument {
    private static final String BREAK =
        "<style:table-column-properties fo:break-before=\"page\" style:column-width=\"22.58mm\"/>";
    private static final Pattern COLUMN =
        Pattern.compile(
            "<table:table-column(?: table:style-name=\"([^\"]*)\")?"
                + "(?: table:number-columns-repeated=\"(\\d+)\")?/>");

    /** With a rectangle of 300 mm so far from the sheet's left, below the readings. */
    static RawOds log(String x) {
      String shape =
          "<table:shapes xmlns:draw=\"urn:oasis:names:tc:opendocument:xmlns:drawing:1.0\""
              + " xmlns:svg=\"urn:oasis:names:tc:opendocument:xmlns:svg-compatible:1.0\">"
              + "<draw:rect svg:x=\"%s\" svg:y=\"80mm\" svg:width=\"300mm\""
              + " svg:height=\"60mm\"/></table:shapes>";
      return RawOds.log("<text:p>clear</text:p>")
          .inTable(shape.formatted(x))
          .part("Pictures/one.png", "")
          .part(
              "styles.xml",
              "<office:document-styles><office:automatic-styles><style:page-layout"
                  + " style:name=\"L\"><style:page-layout-properties fo:page-width=\"21cm\""
                  + " fo:page-height=\"29.7cm\" fo:margin=\"2cm\"/></style:page-layout>"
                  + "</office:automatic-styles><office:master-styles><style:master-page"
                  + " style:name=\"Default\" style:page-layout-name=\"L\"/>"
                  + "</office:master-styles></office:document-styles>");
    }

    static List<String> texts(String markup) {
      return Pattern.compile("<text:p>([^<]*)")
          .matcher(markup)
          .results()
          .map(m -> m.group(1))
          .toList();
    }

    static int columnsBefore(String content, String style) {
      int columns = 0;
      Matcher column = COLUMN.matcher(content);
      while (column.find() && !style.equals(column.group(1))) {
        columns += column.group(2) == null ? 1 : Integer.parseInt(column.group(2));
      }
      return columns;
    }
  }

  private Path filled(Path log, String into) {
    Cli run = Cli.run("fill", log.toString(), "--out", folder.resolve(into).toString());
    assertTrue(run.code() <= 1, run.out() + run.err());
    return folder.resolve(into).resolve(log.getFileName());
  }
}
