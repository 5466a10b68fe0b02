package washbook.runner.extent;

import java.util.function.ToDoubleFunction;

/**
 * How a sheet that new columns made wider is printed: one page wide, turned where that keeps its
 * letters readable; where even that would not, over as few pages side by side as do.
 *
 * @param landscape whether the page lies on its side
 * @param pages how many stand side by side
 */
public record PageFit(boolean landscape, int pages) {
  /** Of its size on the screen: letters of 10 points come out with 8. */
  private static final double SMALLEST = 0.8;

  /**
   * Columns are as wide as a program's font makes them: one without the workbook's own took 1.2
   * times the room.
   */
  private static final double WIDER = 1.2;

  /** Null where the sheet is narrow enough as it is; all lengths in the same unit. */
  public static PageFit of(double narrowest, boolean landscape, ToDoubleFunction<Boolean> page) {
    return exact(WIDER * narrowest, landscape, page);
  }

  /** The same of columns whose width depends on no font. */
  static PageFit exact(double width, boolean landscape, ToDoubleFunction<Boolean> page) {
    if (width <= page.applyAsDouble(landscape)) {
      return null;
    }
    int upright = sides(width, page.applyAsDouble(landscape));
    int turned = sides(width, page.applyAsDouble(true));
    return turned < upright ? new PageFit(true, turned) : new PageFit(landscape, upright);
  }

  private static int sides(double width, double across) {
    return across > 0 ? Math.max(1, (int) Math.ceil(width * SMALLEST / across)) : 1;
  }
}
