package washbook.runner.write;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.log.sheet.ColumnPatch;
import washbook.runner.OdsSamples;
import washbook.runner.TestColumn;
import washbook.runner.corpus.ZipParts;

/** New columns of an OpenDocument sheet look like the log that they stand beside. */
class OdsLookTest {
  private static final String STYLES =
      "<office:automatic-styles>"
          + style("head", "", "<style:text-properties fo:font-weight=\"bold\"/>")
          + style(
              "band",
              "fo:background-color=\"#ddffdd\" fo:border-bottom=\"0.74pt solid #000000\""
                  + " fo:wrap-option=\"no-wrap\" style:rotation-angle=\"90\"",
              "<style:paragraph-properties fo:text-align=\"center\"/>"
                  + "<style:text-properties fo:font-size=\"12pt\"/>"
                  + "<style:map style:condition=\"cell-content()&gt;1\""
                  + " style:apply-style-name=\"Bad\"/>")
          + "</office:automatic-styles>";

  @TempDir private Path folder;

  private static String style(String name, String cell, String others) {
    return "<style:style style:name=\""
        + name
        + "\" style:family=\"table-cell\" style:parent-style-name=\"Default\""
        + " style:data-style-name=\"N30\"><style:table-cell-properties "
        + cell
        + "/>"
        + others
        + "</style:style>";
  }

  private static String row(String style, String content) {
    return "<table:table-row><table:table-cell table:style-name=\""
        + style
        + "\" office:value-type=\"string\"><text:p>"
        + content
        + "</text:p></table:table-cell></table:table-row>";
  }

  private String filled() throws IOException {
    String rows =
        row("head", "SG") + row("band", "1.05") + row("Heading", "1.04") + row("band", "");
    Path log =
        OdsSamples.pack(
            folder.resolve("log.ods"),
            OdsSamples.content(STYLES, "<table:table table:name=\"A\">" + rows + "</table:table>"));
    List<ColumnPatch> columns =
        List.of(
            TestColumn.of(1, 0, "ABV to date", 3, 2, Map.of(1, 4.5, 2, 5.5)),
            TestColumn.of(2, 0, "Note", 3, -1, Map.of(1, "temperature is blank; give one.")),
            TestColumn.of(3, 0, "State", 3, -1, Map.of(1, "done")));
    Path filled = folder.resolve("filled.ods");
    ColumnPatch[] all = columns.toArray(ColumnPatch[]::new);
    new OdsWriter().write(log, TestColumn.on("A", all), filled);
    Path again = folder.resolve("again.ods");
    new OdsWriter().write(filled, TestColumn.on("A", all), again);
    assertEquals(-1, Files.mismatch(filled, again));
    return new String(ZipParts.content(filled, "content.xml"), StandardCharsets.UTF_8);
  }

  private static String style(String content, String name) {
    Matcher found =
        Pattern.compile("<style:style style:name=\"" + name + "\".*?(/>|</style:style>)")
            .matcher(content);
    assertTrue(found.find(), name + " in " + content);
    return content.substring(found.start(), content.indexOf("</style:style>", found.start()) + 14);
  }

  @Test
  void headersKeepTheirNeighboursLookAndWrap() throws IOException {
    String content = filled();
    assertTrue(content.contains("\"washbook-wrap-head\" office:value-type=\"string\"><text:p>ABV"));
    String look = style(content, "washbook-wrap-head");
    assertTrue(look.contains("fo:font-weight=\"bold\""), look);
    assertTrue(look.contains("fo:wrap-option=\"wrap\""), look);
  }

  @Test
  void numbersTakeBackgroundBorderAndFontAndNothingThatDependsOnTheContent() throws IOException {
    String content = filled();
    assertTrue(content.contains("\"washbook-2-band\" office:value-type=\"float\""), content);
    String look = style(content, "washbook-2-band");
    assertTrue(look.contains("fo:background-color=\"#ddffdd\""), look);
    assertTrue(look.contains("fo:border-bottom="), look);
    assertTrue(look.contains("fo:font-size=\"12pt\""), look);
    assertTrue(look.contains("style:data-style-name=\"washbook-number-2\""), look);
    for (String left : List.of("rotation", "text-align", "style:map", "wrap-option", "N30")) {
      assertFalse(look.contains(left), look);
    }
  }

  @Test
  void sentencesWrapInAWideColumnAndWordsDoNot() throws IOException {
    String content = filled();
    assertTrue(style(content, "washbook-note-band").contains("fo:wrap-option=\"wrap\""));
    assertFalse(style(content, "washbook-text-band").contains("wrap"));
    assertTrue(content.contains("washbook-width-36"), content);
    assertTrue(content.contains("washbook-width-7"), content);
  }

  @Test
  void aStyleThatTheUserHasNamedBecomesTheParent() throws IOException {
    String look = style(filled(), "washbook-2-Heading");
    assertTrue(look.contains("style:parent-style-name=\"Heading\""), look);
  }
}
