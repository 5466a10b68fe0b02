package washbook.runner.extent;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OdsPagesTest {
  private static final String A4 = "fo:page-width=\"21cm\" fo:page-height=\"29.7cm\"";

  private static OdsPages pages(String properties) {
    return new OdsPages(styles(properties));
  }

  private static String styles(String properties) {
    return "<office:document-styles><office:automatic-styles><style:page-layout style:name=\"L\">"
        + "<style:page-layout-properties "
        + properties
        + "/></style:page-layout></office:automatic-styles><office:master-styles>"
        + "<style:master-page style:name=\"Other\" style:page-layout-name=\"M\"/>"
        + "<style:master-page style:name=\"Default\" style:page-layout-name=\"L\">"
        + "<style:header/></style:master-page></office:master-styles></office:document-styles>";
  }

  /**
   * A4 with margins of 2 cm is 170 mm wide, 257 mm on its side, with narrow ones 284 mm; letters of
   * 10 points stay at 8.
   */
  @ParameterizedTest
  @CsvSource({
    "169, , ",
    "172, portrait, 1",
    "212, portrait, 1",
    "213, landscape, 1",
    "321, landscape, 1",
    "322, landscape, 1",
    "354, landscape, 1",
    "356, portrait, 2"
  })
  void aSheetGrownTooWideIsPrintedOnePageWideWhereThatCanBeRead(
      double width, String lies, String pages) {
    OdsPages all = pages(A4 + " fo:margin=\"2cm\" style:print-orientation=\"portrait\"");
    String name = all.fitting("Default", width);
    if (lies == null) {
      assertNull(name);
      assertNull(all.patched());
      return;
    }
    String after = new String(all.patched(), StandardCharsets.UTF_8);
    String layout = after.substring(after.indexOf("<style:page-layout style:name=\"" + name));
    layout = layout.substring(0, layout.indexOf("</style:page-layout>"));
    assertTrue(layout.contains("style:print-orientation=\"" + lies + "\""), layout);
    assertTrue(layout.contains("style:scale-to-X=\"" + pages + "\""), layout);
    assertEquals(width > 321 && turned(lies), layout.contains("fo:margin-left=\"18.0pt\""), layout);
    boolean turned = turned(lies);
    assertTrue(layout.contains("fo:page-width=\"" + (turned ? "841.9" : "595.3") + "pt\""), layout);
    // The copy keeps what else the page has, and the pages of other sheets stay as they are.
    String copy =
        "<style:master-page style:page-layout-name=\"%s\" style:name=\"%s\"><style:header/>"
            .formatted(name, name);
    assertTrue(after.contains(copy), after);
    String old = styles(A4 + " fo:margin=\"2cm\" style:print-orientation=\"portrait\"");
    assertTrue(after.startsWith(old.substring(0, old.indexOf("</office:automatic"))), after);
  }

  private static boolean turned(String lies) {
    return lies.equals("landscape");
  }

  /** The cells' letters stay at 8 points, the drawings right of them begin a page. */
  @ParameterizedTest
  @CsvSource({"160, 500, 100%", "250, 500, 80%", "340, 500, 80%", "400, 500, ", "160, 300, "})
  void cellsThatFitOnAPageWithoutDrawingsDoSo(double cells, double whole, String scale) {
    OdsPages all = pages(A4 + " fo:margin=\"2cm\"");
    String name = all.apart("Default", whole, cells);
    assertEquals(scale == null, name == null);
    if (name != null) {
      String after = new String(all.patched(), StandardCharsets.UTF_8);
      assertTrue(after.contains("style:scale-to=\"" + scale + "\""), after);
      assertTrue(!after.contains("style:scale-to-X"), after);
    }
  }

  @Test
  void marginsThatAPersonHasSetStayAsTheyAre() {
    OdsPages all = pages(A4 + " fo:margin=\"2.5cm\"");
    assertNotNull(all.fitting("Default", 340));
    String after = new String(all.patched(), StandardCharsets.UTF_8);
    assertTrue(after.contains("style:scale-to-X=\"2\""), after);
    assertTrue(!after.contains("fo:margin-left"), after);
  }

  @Test
  void twoSheetsOfOneWidthShareTheirPage() {
    OdsPages all = pages(A4);
    assertEquals("washbook-page-1", all.fitting("Default", 260));
    assertEquals("washbook-page-1", all.fitting("Default", 261));
    assertEquals("washbook-page-2", all.fitting("Default", 500));
  }

  @ParameterizedTest
  @CsvSource({
    "style:scale-to=\"80%\"",
    "style:scale-to-pages=\"2\"",
    "style:scale-to-X=\"1\"",
    "style:scale-to-Y=\"3\"",
    "fo:page-width=\"29.7cm\" fo:page-height=\"42cm\""
  })
  void howAPersonHasSetItIsLeftAlone(String properties) {
    assertNull(pages(properties).fitting("Default", 400));
  }

  @Test
  void aFullScaleIsNobodysSetting() {
    assertNotNull(pages("style:scale-to=\"100%\"").fitting("Default", 400));
  }

  @Test
  void withoutASizePaperIsThatOfTheDocumentsCountry() {
    assertTrue(wide(styles("")).contains("fo:page-height=\"595.3pt\""));
    assertTrue(wide(styles("fo:country=\"US\"")).contains("fo:page-height=\"612.0pt\""));
    assertTrue(wide(styles("fo:country=\"ZA\"")).contains("fo:page-height=\"595.3pt\""));
  }

  private static String wide(String styles) {
    OdsPages pages = new OdsPages(styles);
    assertNotNull(pages.fitting("Default", 250));
    return new String(pages.patched(), StandardCharsets.UTF_8);
  }

  @Test
  void unknownPagesStayAsTheyAre() {
    assertNull(pages(A4).fitting("Other", 400), "a page without its layout");
    assertNull(pages(A4).fitting("None", 400));
    assertNull(new OdsPages("").fitting("Default", 400));
  }
}
