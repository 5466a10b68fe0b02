package washbook.runner.write;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.SheetPatch;
import washbook.runner.OdsSamples;
import washbook.runner.TestColumn;
import washbook.runner.corpus.ZipParts;
import washbook.runner.read.OdsReader;

/** Logs that ask in late rows for what has to stand before the first one. */
class OdsForesightTest {
  private static final int ROWS = 6_000;
  private static final String YELLOW =
      "<style:style style:name=\"ce7\" style:family=\"table-cell\"><style:table-cell-properties"
          + " fo:background-color=\"#ffff00\"/></style:style>";

  @TempDir private Path directory;

  @Test
  void aLookThatComesLateInALongLogIsDeclaredAllTheSame() throws IOException {
    String early = fill(sheet("Plum 3", "", 100) + sheet("Apple 7", "", ROWS), "early");
    String late = fill(sheet("Plum 3", "", 100) + sheet("Apple 7", "ce7", ROWS), "late");
    assertTrue(!early.contains("washbook-2-ce7"), "no row asks for it");
    assertEquals(1, count(late, "style:name=\"washbook-2-ce7\""));
    assertTrue(count(late, "table:style-name=\"washbook-2-ce7\"") > 500);
  }

  @Test
  void aSheetBehindALongOneThatIsFilledAlreadyKeepsItsPages() throws IOException {
    String pages = " table:print-ranges=\"'Apple 7'.A1:'Apple 7'.A100\"";
    String first = sheet("Plum 3", "", ROWS);
    String second = sheet("Apple 7", "", 100).replace("\"Apple 7\"", "\"Apple 7\"" + pages);
    String filled = fill(first + second, "both");
    assertTrue(filled.contains("print-ranges=\"'Apple 7'.A1:'Apple 7'.C100\""), "it is widened");
    // As a user narrows it afterwards: a second run has no new columns there.
    String narrowed = filled.replace("'Apple 7'.C100", "'Apple 7'.A100");
    String unfilled = narrowed.substring(narrowed.indexOf("table:name=\"Apple 7\""));
    String again = fill(first + "<table:table " + end(unfilled), "again");
    assertTrue(again.contains("print-ranges=\"'Apple 7'.A1:'Apple 7'.A100\""), "it stays narrow");
  }

  private static String end(String sheet) {
    return sheet.substring(0, sheet.indexOf("</office:spreadsheet>"));
  }

  /** Both sheets filled; a second fill has to give the same bytes. */
  private String fill(String sheets, String name) throws IOException {
    Path source = OdsSamples.pack(directory.resolve(name), OdsSamples.content(YELLOW, sheets));
    Path target = directory.resolve(name + " filled");
    Path again = directory.resolve(name + " again");
    List<SheetPatch> patches =
        List.of(
            new SheetPatch("Plum 3", List.of(column(rows(source, 0)))),
            new SheetPatch("Apple 7", List.of(column(rows(source, 1)))));
    new OdsWriter().write(source, patches, target);
    new OdsWriter().write(target, patches, again);
    assertArrayEquals(Files.readAllBytes(target), Files.readAllBytes(again), "a second fill");
    return new String(ZipParts.content(target, "content.xml"), StandardCharsets.UTF_8);
  }

  private static int rows(Path file, int sheet) throws IOException {
    return new OdsReader().read(file).get(sheet).rowCount();
  }

  private static ColumnPatch column(int rows) {
    Map<Integer, Object> content = new HashMap<>();
    for (int row = 1; row < rows; row++) {
      content.put(row, row / 8.0);
    }
    return TestColumn.of(2, 0, "Alcohol", rows - 1, 2, content);
  }

  private static String sheet(String name, String lateStyle, int rows) {
    StringBuilder markup = new StringBuilder("<table:table table:name=\"" + name + "\">");
    markup.append("<table:table-column/>");
    for (int row = 0; row < rows; row++) {
      boolean late = row > rows - 600 && !lateStyle.isEmpty();
      String style = late ? " table:style-name=\"" + lateStyle + "\"" : "";
      String cell = "<table:table-cell" + style + " office:value-type=\"float\" office:value=\"";
      markup.append("<table:table-row>").append(cell).append(row).append("\"/>");
      markup.append(cell).append("1\"/></table:table-row>");
    }
    return markup.append("</table:table>").toString();
  }

  private static int count(String text, String part) {
    return text.split(Pattern.quote(part), -1).length - 1;
  }
}
