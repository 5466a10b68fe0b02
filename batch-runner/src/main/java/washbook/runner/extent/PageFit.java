package washbook.runner.extent;

import java.util.function.ToDoubleFunction;

/**
 * How a sheet that new columns made wider is printed: one page wide, turned where that keeps its
 * letters readable, then with narrow margins; where even that would not, over as few pages side by
 * side as do.
 *
 * @param landscape whether the page lies on its side
 * @param pages how many stand side by side
 * @param narrow whether {@link #MARGIN} is left at either side
 * @param scale in per cent where drawings begin a page of their own; 0 where the pages decide
 * @param breakBefore the column that begins that page; -1 for none
 */
public record PageFit(boolean landscape, int pages, boolean narrow, int scale, int breakBefore) {
  /** A quarter of an inch, in points, which printers can do without. */
  public static final double MARGIN = 18;

  /** Of this width, in points, are margins that a program sets by itself: 0.7 inch to 2 cm. */
  private static final double LEAST_USUAL = 50;

  private static final double MOST_USUAL = 58;

  /** Of its size on the screen: letters of 10 points come out with 8. */
  private static final double SMALLEST = 0.8;

  /**
   * Columns are as wide as a program's font makes them: one without the workbook's own took 1.27
   * times the room, and rounds each up.
   */
  private static final double WIDER = 1.32;

  /** How many pages side by side a sheet takes; none said is one. */
  public static int pages(PageFit fit) {
    return fit == null ? 1 : fit.pages;
  }

  /** As large as so many pages side by side allow. */
  public PageFit(boolean landscape, int pages, boolean narrow) {
    this(landscape, pages, narrow, 0, -1);
  }

  /**
   * Null where the sheet is narrow enough as it is; lengths in points.
   *
   * @param spare what narrow margins would add to a page, see {@link #spare}
   */
  public static PageFit of(
      double narrowest, boolean landscape, ToDoubleFunction<Boolean> page, double spare) {
    return exact(WIDER * narrowest, landscape, page, spare);
  }

  /**
   * Columns that fit on a page without the drawings right of them, which begin the next one: a fit
   * to pages would break the columns wherever a page ends. Null where the columns alone are too
   * wide as well.
   *
   * @param end the first column right of all cells
   */
  public static PageFit apart(
      double narrowest, boolean landscape, ToDoubleFunction<Boolean> page, double spare, int end) {
    return exactApart(WIDER * narrowest, landscape, page, spare, end);
  }

  /** As {@link #apart}, of columns whose width depends on no font. */
  static PageFit exactApart(
      double width, boolean landscape, ToDoubleFunction<Boolean> page, double spare, int end) {
    PageFit alone = exact(width, landscape, page, spare);
    if (alone == null) {
      return new PageFit(landscape, 1, false, 100, end);
    }
    // As small as may be: a column that another font pushes off the page stands on one alone.
    int scale = (int) Math.round(100 * SMALLEST);
    return alone.pages > 1 ? null : new PageFit(alone.landscape, 1, alone.narrow, scale, end);
  }

  /** As {@link #of}, of columns whose width depends on no font. */
  static PageFit exact(
      double width, boolean landscape, ToDoubleFunction<Boolean> page, double spare) {
    if (width <= page.applyAsDouble(landscape)) {
      return null;
    }
    PageFit best = null;
    for (boolean narrow : new boolean[] {false, true}) {
      for (boolean lies : new boolean[] {landscape, true}) {
        int pages = sides(width, page.applyAsDouble(lies) + (narrow ? spare : 0));
        if (best == null || pages < best.pages) {
          best = new PageFit(lies, pages, narrow);
        }
      }
    }
    return best;
  }

  /** What narrow margins would add to a page; nothing where a person has set others. */
  public static double spare(double left, double right) {
    return isUsual(left) && isUsual(right) ? left + right - 2 * MARGIN : 0;
  }

  private static boolean isUsual(double margin) {
    return margin >= LEAST_USUAL && margin <= MOST_USUAL;
  }

  private static int sides(double width, double across) {
    return across > 0 ? Math.max(1, (int) Math.ceil(width * SMALLEST / across)) : 1;
  }
}
