package washbook.runner.card;

/** The scales as rulers side by side, the lightest liquid at the top as on a stem. */
final class ScaleDrawing {
  private static final double HEADS = 15;
  private static final double SHORT = 1.6;
  private static final double LONGER = 2.8;
  private static final double LONGEST = 3.8;
  private static final double LABEL_ROOM = 10.5;
  private static final double LEVELS = 0.01;

  private final Drawing page;
  private final double top;
  private final double bottom;

  private ScaleDrawing(Drawing page, double top, double bottom) {
    this.page = page;
    this.top = top;
    this.bottom = bottom;
  }

  static void draw(Drawing page, double top, double bottom) {
    new ScaleDrawing(page, top + HEADS, bottom - 2).all(top + Drawing.USUAL);
  }

  private void all(double headAt) {
    double width = page.paper().width() - 2 * Paper.MARGIN;
    double each = width / GravityScale.values().length;
    for (double level : CardNumber.steps(GravityScale.LIGHTEST, GravityScale.HEAVIEST, LEVELS)) {
      double y = place(level);
      page.line(
          Paper.MARGIN, y, Paper.MARGIN + width, y, level == 1 ? 0.35 : 0.15, Drawing.HAIRLINE);
    }
    double x = Paper.MARGIN;
    for (GravityScale scale : GravityScale.values()) {
      head(scale, x, each, headAt);
      ruler(scale, x + 3);
      x += each;
    }
  }

  private void head(GravityScale scale, double x, double width, double y) {
    double at = y;
    for (String line : Drawing.wrapped(scale.title(page.words()), width, Drawing.USUAL)) {
      page.text(line, x, at, Drawing.USUAL, "start", true, Drawing.ACCENT);
      at += 3.8;
    }
    page.text(scale.unit(page.words()), x, y + 7.6, Drawing.SMALL, "start", false);
  }

  private void ruler(GravityScale scale, double x) {
    page.line(x, top, x, bottom, 0.3, Drawing.INK);
    double tick = scale.tick();
    long first = (long) Math.ceil(scale.at(GravityScale.LIGHTEST) / tick - 1e-9);
    long last = (long) Math.floor(scale.at(GravityScale.HEAVIEST) / tick + 1e-9);
    for (long i = first; i <= last; i++) {
      double value = i * tick;
      double y = place(scale.gravityAt(value));
      boolean labelled = isStep(value, scale.labelled());
      double length = labelled ? LONGEST : isStep(value, scale.longer()) ? LONGER : SHORT;
      page.line(x, y, x + length, y, labelled ? 0.25 : 0.15, Drawing.INK);
      if (labelled) {
        int decimals = scale == GravityScale.GRAVITY ? 3 : 0;
        page.box(x + LONGEST + 0.6, y - 1.5, LABEL_ROOM, 3, "#ffffff");
        page.text(
            page.words().decimal(CardNumber.plain(value, decimals)),
            x + LONGEST + 1.2,
            y + 1,
            Drawing.SMALL,
            "start",
            false);
      }
    }
  }

  private static boolean isStep(double value, double step) {
    return Math.abs(value / step - Math.rint(value / step)) < 1e-6;
  }

  private double place(double gravity) {
    return top
        + (bottom - top)
            * (gravity - GravityScale.LIGHTEST)
            / (GravityScale.HEAVIEST - GravityScale.LIGHTEST);
  }
}
