package washbook.runner.extent;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.log.sheet.ColumnPatch;
import washbook.runner.OdsSamples;
import washbook.runner.TestColumn;
import washbook.runner.corpus.ZipParts;
import washbook.runner.write.OdsWriter;

/** Print ranges, filters and row shading of an OpenDocument spreadsheet grow with the log. */
class OdsExtentTest {
  private static final String NAME = "Plum 3's & log";
  private static final String MARKUP = "Plum 3's &amp; log";
  private static final String QUOTED = "'Plum 3''s &amp; log'";
  private static final ColumnPatch ABV =
      TestColumn.of(1, 0, "ABV to date", 2, 2, Map.of(1, 1.0, 2, 2.0));
  private static final ColumnPatch NOTE =
      TestColumn.of(2, 0, "Washbook note", 2, -1, Map.of(1, "a reason"));

  @TempDir private Path folder;

  private String filled(String attributes, String behindRows, String behindSheets)
      throws IOException {
    String cell =
        "<table:table-cell office:value-type=\"string\"><text:p>SG</text:p></table:table-cell>";
    String row = "<table:table-row>" + cell + "</table:table-row>";
    Path log =
        OdsSamples.pack(
            folder.resolve("log.ods"),
            OdsSamples.content(
                "",
                "<table:table table:name=\""
                    + MARKUP
                    + "\""
                    + attributes
                    + ">"
                    + row.repeat(3)
                    + behindRows
                    + "</table:table>"
                    + behindSheets));
    Path filled = folder.resolve("filled.ods");
    new OdsWriter().write(log, TestColumn.on(NAME, ABV, NOTE), filled);
    Path again = folder.resolve("again.ods");
    new OdsWriter().write(filled, TestColumn.on(NAME, ABV, NOTE), again);
    assertEquals(-1, Files.mismatch(filled, again));
    return new String(ZipParts.content(filled, "content.xml"), StandardCharsets.UTF_8);
  }

  private static void assertHas(String content, String text) {
    assertTrue(content.contains(text), text + " in " + content);
  }

  @Test
  void thePrintedRangeTakesInTheNewColumns() throws IOException {
    String from = QUOTED + ".A1:" + QUOTED + ".";
    assertHas(
        filled(" table:print-ranges=\"" + from + "A40\"", "", ""),
        " table:print-ranges=\"" + from + "C40\"");
    String two = from + "A2 " + from + "A9";
    assertHas(filled(" table:print-ranges=\"" + two + "\"", "", ""), "\"" + two + "\"");
    assertHas(filled(" table:print-ranges=\"" + from + "B40\"", "", ""), from + "C40\"");
  }

  @Test
  void aRangeBetweenSingleQuotesStaysOne() throws IOException {
    String from = QUOTED.replace("'", "&apos;") + ".A1:" + QUOTED.replace("'", "&apos;") + ".";
    assertHas(
        filled(" table:print-ranges='" + from + "A40'", "", ""),
        " table:print-ranges='" + from + "C40'");
  }

  @Test
  void aFilterReachesOverTheNewColumnsAndANamedRangeDoesNot() throws IOException {
    String range =
        "<table:database-range table:name=\"%s\" table:target-range-address=\""
            + QUOTED
            + ".A1:"
            + QUOTED
            + ".%s\"%s/>";
    String buttons = " table:display-filter-buttons=\"true\"";
    String before =
        String.format(range, "one", "A3", buttons) + String.format(range, "two", "A3", "");
    String after =
        String.format(range, "one", "C3", buttons) + String.format(range, "two", "A3", "");
    assertHas(
        filled("", "", "<table:database-ranges>" + before + "</table:database-ranges>"), after);
  }

  @Test
  void aRuleThatShadesRowsReachesOverTheNewColumnsAndOneForACellDoesNot() throws IOException {
    String rule =
        "<calcext:conditional-format calcext:target-range-address=\"%s\"><calcext:condition"
            + " calcext:apply-style-name=\"Band\""
            + " calcext:value=\"%s\"/></calcext:conditional-format>";
    String wide = "Log.A2:Log.B3";
    String wider = "Log.A2:Log.D3";
    String byRow = "formula-is(MOD(ROW();2)=0)";
    String byCell = "formula-is(A2&gt;4)";
    String value = "&gt;4";
    String narrow = "Log.B2:Log.B3";
    String before =
        String.format(rule, wide, byRow)
            + String.format(rule, wide, byCell)
            + String.format(rule, wide, value)
            + String.format(rule, narrow, byRow);
    String after =
        String.format(rule, wider, byRow)
            + before.substring(before.indexOf("</calcext:conditional-format>") + 29);
    String cell = "<table:table-cell office:value-type=\"float\" office:value=\"1\"/>";
    String row = "<table:table-row>" + cell + cell + "</table:table-row>";
    Path log =
        OdsSamples.pack(
            folder.resolve("log.ods"),
            OdsSamples.content(
                "",
                "<table:table table:name=\"Log\">"
                    + row.repeat(3)
                    + "<calcext:conditional-formats"
                    + " xmlns:calcext=\"urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0\">"
                    + before
                    + "</calcext:conditional-formats></table:table>"));
    Path filled = folder.resolve("filled.ods");
    ColumnPatch abv = TestColumn.of(2, 0, "ABV to date", 2, 2, Map.of(1, 1.0));
    ColumnPatch real = TestColumn.of(3, 0, "Real", 2, 2, Map.of(1, 1.0));
    new OdsWriter().write(log, TestColumn.on("Log", abv, real), filled);
    assertHas(new String(ZipParts.content(filled, "content.xml"), StandardCharsets.UTF_8), after);
  }
}
