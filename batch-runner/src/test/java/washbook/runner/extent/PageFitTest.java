package washbook.runner.extent;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PageFitTest {
  private static final double MARGIN = 54;

  private static double letter(boolean landscape) {
    return (landscape ? 792 : 612) - 2 * MARGIN;
  }

  /** Before a second page beside the first a sheet is turned, then its margins become narrow. */
  @ParameterizedTest
  @CsvSource({
    "381, , , ",
    "383, false, 1, false",
    "477, false, 1, false",
    "478, true, 1, false",
    "647, true, 1, false",
    "649, true, 1, true",
    "715, true, 1, true",
    "717, false, 2, false"
  })
  void aSheetIsTurnedAndThenItsMarginsGrowNarrow(
      double width, Boolean landscape, Integer pages, Boolean narrow) {
    double spare = PageFit.spare(MARGIN, MARGIN);
    PageFit fit = PageFit.of(width, false, PageFitTest::letter, spare);
    assertEquals(pages == null ? null : new PageFit(landscape, pages, narrow), fit);
  }

  /** The columns end where they would be cut by a page's end if the drawings counted. */
  @ParameterizedTest
  @CsvSource({
    "390, false, 80, false",
    "300, false, 100, false",
    "486, true, 80, false",
    "715, true, 80, true"
  })
  void drawingsRightOfColumnsThatFitBeginAPage(
      double width, boolean landscape, int scale, boolean narrow) {
    double spare = PageFit.spare(MARGIN, MARGIN);
    assertEquals(
        new PageFit(landscape, 1, narrow, scale, 11),
        PageFit.apart(width, false, PageFitTest::letter, spare, 11));
  }

  @Test
  void drawingsRightOfColumnsThatAreTooWideAloneChangeNothing() {
    double spare = PageFit.spare(MARGIN, MARGIN);
    assertNull(PageFit.apart(728, false, PageFitTest::letter, spare, 11));
  }

  @ParameterizedTest
  @CsvSource({"36, 54", "54, 72", "0, 0"})
  void marginsThatAPersonHasSetStayAsTheyAre(double left, double right) {
    double spare = PageFit.spare(left, right);
    assertEquals(new PageFit(false, 2, false), PageFit.of(700, false, PageFitTest::letter, spare));
    assertNull(PageFit.of(300, false, PageFitTest::letter, spare));
  }
}
