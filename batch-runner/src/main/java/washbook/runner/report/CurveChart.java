package washbook.runner.report;

import java.util.Locale;

/** A batch's gravity and alcohol over time as an SVG picture inside a page. */
final class CurveChart {
  private static final double WIDTH = 480;
  private static final double LEFT = 58;
  private static final double RIGHT = 436;
  private static final double TOP = 26;
  private static final double BOTTOM = 206;
  private static final double HEIGHT = 248;

  private final BatchSeries series;
  private final StringBuilder svg = new StringBuilder();
  private final Axis x;

  private CurveChart(BatchSeries series) {
    this.series = series;
    this.x = Axis.over(series.x(), 1);
  }

  static String figure(BatchSeries series) {
    return "<figure>\n<figcaption>"
        + Html.text(series.title())
        + "</figcaption>\n"
        + new CurveChart(series).draw()
        + "</figure>\n";
  }

  private String draw() {
    Axis gravity = Axis.over(series.gravity(), 0.001);
    Axis abv = Axis.over(series.abv(), 0.1);
    svg.append("<svg viewBox=\"0 0 ").append(round(WIDTH)).append(' ').append(round(HEIGHT));
    svg.append("\" role=\"img\" aria-label=\"").append(Html.text(described())).append("\">\n");
    for (double tick : gravity.ticks()) {
      double y = gravity.place(tick, BOTTOM, TOP);
      line("grid", LEFT, y, RIGHT, y);
      label("gravity", LEFT - 6, y + 4, "end", gravity.show(tick, 3));
    }
    for (double tick : abv.ticks()) {
      label("abv", RIGHT + 6, abv.place(tick, BOTTOM, TOP) + 4, "start", abv.show(tick, 0));
    }
    for (double tick : x.ticks()) {
      double at = x.place(tick, LEFT, RIGHT);
      line("grid", at, BOTTOM, at, BOTTOM + 4);
      label("", at, BOTTOM + 18, "middle", x.show(tick, 0));
    }
    label("", (LEFT + RIGHT) / 2, BOTTOM + 36, "middle", series.unit());
    label("gravity", 4, 14, "start", "Gravity, SG 20/20");
    label("abv", WIDTH - 4, 14, "end", "Alcohol, % vol");
    curve("gravity", gravity, series.gravity());
    curve("abv", abv, series.abv());
    return svg.append("</svg>\n").toString();
  }

  /** One path, broken where a row was refused; single points are drawn as dots. */
  private void curve(String name, Axis axis, double[] values) {
    StringBuilder path = new StringBuilder();
    StringBuilder dots = new StringBuilder();
    for (int i = 0; i < values.length; i++) {
      if (!Double.isFinite(values[i]) || !Double.isFinite(series.x()[i])) {
        continue;
      }
      boolean joined = i > 0 && Double.isFinite(values[i - 1]);
      String at = round(x.place(series.x()[i], LEFT, RIGHT));
      String up = round(axis.place(values[i], BOTTOM, TOP));
      path.append(joined ? 'L' : 'M').append(at).append(' ').append(up);
      if (values.length <= 60) {
        dots.append("<circle class=\"").append(name).append("\" r=\"2.5\" cx=\"").append(at);
        dots.append("\" cy=\"").append(up).append("\"/>");
      }
    }
    if (!path.isEmpty()) {
      svg.append("<path class=\"").append(name).append("\" d=\"").append(path).append("\"/>");
      svg.append(dots).append('\n');
    }
  }

  private String described() {
    double[] gravity = series.gravity();
    double first = Double.NaN;
    double last = Double.NaN;
    for (double value : gravity) {
      if (Double.isFinite(value)) {
        first = Double.isNaN(first) ? value : first;
        last = value;
      }
    }
    return Double.isNaN(first)
        ? series.title() + ": no row could be computed"
        : String.format(Locale.ROOT, "%s: gravity from %.4f to %.4f", series.title(), first, last);
  }

  private void line(String name, double x1, double y1, double x2, double y2) {
    svg.append("<line class=\"").append(name).append("\" x1=\"").append(round(x1));
    svg.append("\" y1=\"").append(round(y1)).append("\" x2=\"").append(round(x2));
    svg.append("\" y2=\"").append(round(y2)).append("\"/>\n");
  }

  private void label(String name, double x, double y, String anchor, String text) {
    svg.append("<text class=\"").append(name).append("\" x=\"").append(round(x));
    svg.append("\" y=\"").append(round(y)).append("\" text-anchor=\"").append(anchor);
    svg.append("\">").append(Html.text(text)).append("</text>\n");
  }

  private static String round(double value) {
    return String.format(Locale.ROOT, value == Math.rint(value) ? "%.0f" : "%.1f", value);
  }
}
