package washbook.runner.card;

/** How to read a glass that floats: our own drawing of liquid, stem and eye. */
final class Meniscus {
  static final double WIDTH = 46;
  static final double HEIGHT = 36;

  private static final double LEVEL = 19;
  private static final double CREEP = 2.6;

  private Meniscus() {}

  /** Draws it with its upper left corner there. */
  static void draw(Drawing page, double x, double y) {
    double left = x + 1;
    double right = x + 21;
    double stemLeft = x + 9;
    double stemRight = x + 13;
    double level = y + LEVEL;
    double top = level - CREEP;
    String surface =
        at(left, top)
            + curve(left + 1, level, left + 2.5, level, left + 4, level)
            + " L "
            + point(stemLeft - 3, level)
            + curve(stemLeft - 1.5, level, stemLeft - 0.4, level, stemLeft, top);
    String mirrored =
        at(stemRight, top)
            + curve(stemRight + 0.4, level, stemRight + 1.5, level, stemRight + 3, level)
            + " L "
            + point(right - 4, level)
            + curve(right - 2.5, level, right - 1, level, right, top);
    String bottom = y + HEIGHT - 1 + "";
    page.path(
        surface + " L " + stemLeft + " " + bottom + " L " + left + " " + bottom + " Z",
        "#dfe9ec",
        "none",
        0.1);
    page.path(
        mirrored + " L " + right + " " + bottom + " L " + stemRight + " " + bottom + " Z",
        "#dfe9ec",
        "none",
        0.1);
    page.path(surface, "none", Drawing.ACCENT, 0.4);
    page.path(mirrored, "none", Drawing.ACCENT, 0.4);
    jar(page, left, right, y);
    stem(page, stemLeft, stemRight, y, level);
    page.line(stemRight + 3, level, x + 27, level, 0.35, Drawing.INK);
    words(page, "card.read.here", x + 28, level + 1, true);
    page.line(stemRight + 0.6, top, x + 27, top - 4, 0.2, Drawing.INK);
    words(page, "card.read.rim", x + 28, top - 6.2, false);
    words(page, "card.read.eye", x + 28, level + 6.4, false);
  }

  /** In short lines, which have strokes between them in the text. */
  private static void words(Drawing page, String key, double x, double y, boolean bold) {
    double at = y;
    for (String line : page.words().say(key).split("\\|", -1)) {
      page.text(line, x, at, Drawing.SMALL, "start", bold);
      at += 3.5;
    }
  }

  private static void jar(Drawing page, double left, double right, double y) {
    double foot = y + HEIGHT - 1;
    page.line(left, y + 4, left, foot, 0.5, Drawing.INK);
    page.line(right, y + 4, right, foot, 0.5, Drawing.INK);
  }

  /** The stem with marks; those below the level are seen through the liquid. */
  private static void stem(Drawing page, double left, double right, double y, double level) {
    page.line(left, y, left, y + HEIGHT - 1, 0.3, Drawing.INK);
    page.line(right, y, right, y + HEIGHT - 1, 0.3, Drawing.INK);
    page.line(left, y, right, y, 0.3, Drawing.INK);
    for (int mark = -8; mark <= 7; mark++) {
      double at = level + mark * 2;
      page.line(left, at, left + (mark % 4 == 0 ? 2.6 : 1.4), at, 0.2, Drawing.INK);
    }
  }

  private static String at(double x, double y) {
    return "M " + point(x, y);
  }

  private static String curve(double x1, double y1, double x2, double y2, double x, double y) {
    return " C " + point(x1, y1) + " " + point(x2, y2) + " " + point(x, y);
  }

  private static String point(double x, double y) {
    return x + " " + y;
  }
}
