package washbook.runner.season;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import washbook.log.language.Message;
import washbook.runner.language.Wording;
import washbook.runner.report.Axis;
import washbook.runner.report.Html;
import washbook.runner.report.OverviewColumn;

/**
 * The curves of many batches over days as one SVG picture.
 *
 * @param value which of a point's values is drawn
 * @param decimals of the numbers on its axis, at least
 * @param leastSpan of that axis
 * @param words of whom it is for
 */
record OverlayChart(String title, int value, int decimals, double leastSpan, Wording words) {
  private static final double WIDTH = 640;
  private static final double HEIGHT = 330;
  private static final double LEFT = 54;
  private static final double RIGHT = 628;
  private static final double TOP = 14;
  private static final double BOTTOM = 290;

  /** What the colours of the lines mean. */
  static String legend(Wording words) {
    String others = key("", words.say("season.others"));
    return key(" at-work", words.say("season.atWork"))
        + " "
        + key(" done", words.say(Message.of("state.done")))
        + " "
        + key(" stuck", words.say(Message.of("state.stuck")))
        + " "
        + others
        + ". "
        + Html.own(words.say("season.point"))
        + " ";
  }

  private static String key(String style, String text) {
    return "<span class=\"key" + style + "\">" + Html.own(text) + "</span>";
  }

  String figure(List<SeasonRow> rows) {
    Axis across = Axis.over(all(rows, 0), 1);
    Axis up = Axis.over(all(rows, value), leastSpan);
    StringBuilder svg = new StringBuilder("<figure>\n<figcaption>").append(Html.text(title));
    svg.append("</figcaption>\n<svg viewBox=\"0 0 ").append((int) WIDTH).append(' ');
    svg.append((int) HEIGHT).append("\" role=\"img\" aria-label=\"");
    svg.append(Html.text(words.say("season.described", title, rows.size()))).append("\">\n");
    for (double tick : up.ticks()) {
      double y = up.place(tick, BOTTOM, TOP);
      line(svg, LEFT, y, RIGHT, y);
      label(svg, LEFT - 6, y + 4, "end", words.decimal(up.show(tick, decimals)));
    }
    for (double tick : across.ticks()) {
      double x = across.place(tick, LEFT, RIGHT);
      line(svg, x, BOTTOM, x, BOTTOM + 4);
      label(svg, x, BOTTOM + 18, "middle", words.decimal(across.show(tick, 0)));
    }
    label(svg, (LEFT + RIGHT) / 2, BOTTOM + 36, "middle", words.say("season.days"));
    for (SeasonRow row : rows) {
      curve(svg, row, across, up);
    }
    return svg.append("</svg>\n</figure>\n").toString();
  }

  private static double[] all(List<SeasonRow> rows, int index) {
    return rows.stream()
        .flatMap(row -> Arrays.stream(row.curve().points()))
        .mapToDouble(point -> point[index])
        .toArray();
  }

  private void curve(StringBuilder svg, SeasonRow row, Axis across, Axis up) {
    StringBuilder path = new StringBuilder();
    for (double[] point : row.curve().points()) {
      if (Double.isFinite(point[0]) && Double.isFinite(point[value])) {
        path.append(path.isEmpty() ? 'M' : 'L');
        path.append(number(across.place(point[0], LEFT, RIGHT))).append(' ');
        path.append(number(up.place(point[value], BOTTOM, TOP)));
      }
    }
    if (!path.isEmpty()) {
      svg.append("<path class=\"over ").append(style(row.line().batch().state()));
      svg.append("\" d=\"").append(path).append("\"><title>");
      svg.append(
          Html.text(
              row.line().batch().batch() + ", " + OverviewColumn.STATE.shown(row.line(), words)));
      svg.append("</title></path>\n");
    }
  }

  private static String style(String state) {
    return switch (state) {
      case "done", "stuck" -> state;
      case "working", "slowing", "restarted" -> "at-work";
      default -> "other";
    };
  }

  private static void line(StringBuilder svg, double x1, double y1, double x2, double y2) {
    svg.append("<line class=\"grid\" x1=\"").append(number(x1));
    svg.append("\" y1=\"").append(number(y1)).append("\" x2=\"").append(number(x2));
    svg.append("\" y2=\"").append(number(y2)).append("\"/>\n");
  }

  private static void label(StringBuilder svg, double x, double y, String anchor, String text) {
    svg.append("<text x=\"").append(number(x)).append("\" y=\"").append(number(y));
    svg.append("\" text-anchor=\"").append(anchor).append("\">").append(Html.text(text));
    svg.append("</text>\n");
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
