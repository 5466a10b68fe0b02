package washbook.runner.report;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import washbook.runner.language.Wording;

/**
 * Curves over one horizontal axis as an SVG picture inside a page.
 *
 * @param title stands above it
 * @param unit of {@code x}
 * @param left the curves of the left axis
 * @param right those of the right axis; no curves where there is none
 * @param words of whom it is for
 */
record CurveChart(String title, String unit, double[] x, Side left, Side right, Wording words) {

  /**
   * One vertical axis.
   *
   * @param title with its unit
   * @param leastSpan how much it shows at least, so that noise is not blown up
   * @param decimals decimal places of its numbers, at least
   */
  record Side(String title, double leastSpan, int decimals, List<Curve> curves) {
    static final Side NONE = new Side("", 1, 0, List.of());

    Axis axis() {
      return Axis.over(
          curves.stream().flatMapToDouble(c -> Arrays.stream(c.values())).toArray(), leastSpan);
    }
  }

  /**
   * One curve.
   *
   * @param style a class of the page's style sheet
   * @param values NaN where there is none
   */
  record Curve(String style, double[] values) {}

  private static final double WIDTH = 480;
  private static final double HEIGHT = 248;
  private static final double LEFT = 58;
  private static final double TOP = 26;
  private static final double BOTTOM = 206;
  private static final int MOST_DOTS = 60;

  /** Gravity on the left, alcohol on the right. */
  static CurveChart of(BatchSeries series, Wording words) {
    double[] gravity = BatchSeries.values(series.points(), 1);
    double[] abv = BatchSeries.values(series.points(), 2);
    return new CurveChart(
        series.batch(),
        BatchSeries.unit(series.unit(), words),
        BatchSeries.values(series.points(), 0),
        new Side(words.say("charts.gravity"), 0.001, 3, List.of(new Curve("gravity", gravity))),
        new Side(words.say("charts.alcohol"), 0.1, 0, List.of(new Curve("abv", abv))),
        words);
  }

  /**
   * The picture with its caption.
   *
   * @param path the file that it is about
   */
  String figure(String path) {
    StringBuilder svg = new StringBuilder("<figure>\n<figcaption>");
    svg.append(Html.text(title)).append(" <span>").append(Html.text(path));
    svg.append("</span></figcaption>\n<svg viewBox=\"0 0 ");
    svg.append(number(WIDTH)).append(' ').append(number(HEIGHT)).append("\" role=\"img\" ");
    svg.append("aria-label=\"").append(Html.text(described())).append("\">\n");
    double end = right.curves().isEmpty() ? WIDTH - 12 : WIDTH - 44;
    Axis across = Axis.over(x, 1);
    for (double tick : across.ticks()) {
      double at = across.place(tick, LEFT, end);
      line(svg, at, BOTTOM, at, BOTTOM + 4);
      label(svg, "", at, BOTTOM + 18, "middle", words.decimal(across.show(tick, 0)));
    }
    label(svg, "", (LEFT + end) / 2, BOTTOM + 36, "middle", unit);
    side(svg, left, across, end, true);
    side(svg, right, across, end, false);
    return svg.append("</svg>\n</figure>\n").toString();
  }

  private void side(StringBuilder svg, Side side, Axis across, double end, boolean isLeft) {
    if (side.curves().isEmpty()) {
      return;
    }
    Axis axis = side.axis();
    String style = side.curves().size() == 1 ? side.curves().get(0).style() : "";
    for (double tick : axis.ticks()) {
      double y = axis.place(tick, BOTTOM, TOP);
      if (isLeft) {
        line(svg, LEFT, y, end, y);
      }
      label(
          svg,
          style,
          isLeft ? LEFT - 6 : end + 6,
          y + 4,
          isLeft ? "end" : "start",
          words.decimal(axis.show(tick, side.decimals())));
    }
    label(svg, style, isLeft ? 4 : WIDTH - 4, 14, isLeft ? "start" : "end", side.title());
    for (Curve curve : side.curves()) {
      draw(svg, curve, across, axis, end);
    }
  }

  /** One path, broken where a value is missing; the points are shown where they are few. */
  private void draw(StringBuilder svg, Curve curve, Axis across, Axis axis, double end) {
    StringBuilder path = new StringBuilder();
    StringBuilder dots = new StringBuilder();
    boolean joined = false;
    String[] last = {};
    for (int i = 0; i < x.length; i++) {
      if (!Double.isFinite(curve.values()[i]) || !Double.isFinite(x[i])) {
        joined = false;
        continue;
      }
      String at = number(across.place(x[i], LEFT, end));
      String up = number(axis.place(curve.values()[i], BOTTOM, TOP));
      path.append(joined ? 'L' : 'M').append(at).append(' ').append(up);
      if (!joined && last.length > 0) {
        gap(svg, curve, last, at, up);
      }
      joined = true;
      last = new String[] {at, up};
      if (x.length <= MOST_DOTS) {
        dots.append("<circle class=\"").append(curve.style()).append("\" r=\"2.5\" cx=\"");
        dots.append(at).append("\" cy=\"").append(up).append("\"/>");
      }
    }
    if (!path.isEmpty()) {
      svg.append("<path class=\"").append(curve.style()).append("\" d=\"").append(path);
      svg.append("\"/>").append(dots).append('\n');
    }
  }

  /** Where readings were refused the curve goes on as a thin dotted line. */
  private static void gap(StringBuilder svg, Curve curve, String[] from, String x, String y) {
    svg.append("<line class=\"gap ").append(curve.style()).append("\" x1=\"").append(from[0]);
    svg.append("\" y1=\"").append(from[1]).append("\" x2=\"").append(x).append("\" y2=\"");
    svg.append(y).append("\"/>\n");
  }

  private String described() {
    double[] known =
        left.curves().isEmpty()
            ? new double[0]
            : Arrays.stream(left.curves().get(0).values()).filter(Double::isFinite).toArray();
    return known.length == 0
        ? words.say("charts.empty", title)
        : words.say(
            "charts.described",
            title,
            words.number("%.4f", known[0]),
            words.number("%.4f", known[known.length - 1]));
  }

  private static void line(StringBuilder svg, double x1, double y1, double x2, double y2) {
    svg.append("<line class=\"grid\" x1=\"").append(number(x1));
    svg.append("\" y1=\"").append(number(y1)).append("\" x2=\"").append(number(x2));
    svg.append("\" y2=\"").append(number(y2)).append("\"/>\n");
  }

  private static void label(
      StringBuilder svg, String style, double x, double y, String anchor, String text) {
    svg.append("<text class=\"").append(style).append("\" x=\"").append(number(x));
    svg.append("\" y=\"").append(number(y)).append("\" text-anchor=\"").append(anchor);
    svg.append("\">").append(Html.text(text)).append("</text>\n");
  }

  private static String number(double value) {
    return BigDecimal.valueOf(Math.round(value * 10), 1).stripTrailingZeros().toPlainString();
  }
}
