package washbook.runner.card;

import java.util.ArrayList;
import java.util.List;
import washbook.functions.Numbers;
import washbook.functions.XmlText;
import washbook.runner.language.Wording;

/** One page as a picture in SVG 1.1; lengths in mm from the upper left corner. */
final class Drawing {
  /** 8 pt, the least that is read on paper. */
  static final double SMALL = 2.83;

  static final double USUAL = 3.2;
  static final double HEADLINE = 5.6;
  static final String INK = "#000000";

  /** The one colour; 7.6 to 1 on white. */
  static final String ACCENT = "#0b5566";

  static final String HAIRLINE = "#b8b8b8";
  private static final String FONT = "Liberation Sans, DejaVu Sans, Arial, sans-serif";

  /** How wide a character of that font is on average, as a share of its size. */
  private static final double CHARACTER = 0.55;

  private static final double LEADING = 1.3;
  private static final int DECIMALS = 3;

  private final Paper paper;
  private final Wording words;
  private final StringBuilder svg = new StringBuilder();

  Drawing(Paper paper, Wording words, String title) {
    this.paper = paper;
    this.words = words;
    String size = number(paper.width()) + " " + number(paper.height());
    svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"")
        .append(number(paper.width()))
        .append("mm\" height=\"")
        .append(number(paper.height()))
        .append("mm\" viewBox=\"0 0 ")
        .append(size)
        .append("\" role=\"img\">\n<title>")
        .append(XmlText.escaped(title))
        .append("</title>\n<rect x=\"0\" y=\"0\" width=\"")
        .append(number(paper.width()))
        .append("\" height=\"")
        .append(number(paper.height()))
        .append("\" fill=\"#ffffff\"/>\n");
  }

  Paper paper() {
    return paper;
  }

  /** Of its reader. */
  Wording words() {
    return words;
  }

  void line(double x1, double y1, double x2, double y2, double thick, String colour) {
    svg.append("<line x1=\"").append(number(x1)).append("\" y1=\"").append(number(y1));
    svg.append("\" x2=\"").append(number(x2)).append("\" y2=\"").append(number(y2));
    svg.append("\" stroke=\"").append(colour).append("\" stroke-width=\"");
    svg.append(number(thick)).append("\"/>\n");
  }

  void box(double x, double y, double width, double height, String colour) {
    svg.append("<rect x=\"").append(number(x)).append("\" y=\"").append(number(y));
    svg.append("\" width=\"").append(number(width)).append("\" height=\"");
    svg.append(number(height)).append("\" fill=\"").append(colour).append("\"/>\n");
  }

  /** A curve or a filled shape; {@code path} as SVG writes it. */
  void path(String path, String fill, String stroke, double thick) {
    svg.append("<path d=\"").append(path).append("\" fill=\"").append(fill);
    svg.append("\" stroke=\"").append(stroke).append("\" stroke-width=\"");
    svg.append(number(thick)).append("\"/>\n");
  }

  /** {@code anchor} is start, middle or end. */
  void text(String text, double x, double y, double size, String anchor, boolean bold) {
    text(text, x, y, size, anchor, bold, INK);
  }

  void text(
      String text, double x, double y, double size, String anchor, boolean bold, String colour) {
    svg.append("<text x=\"").append(number(x)).append("\" y=\"").append(number(y));
    svg.append("\" font-family=\"").append(FONT).append("\" font-size=\"");
    svg.append(number(size)).append("\" text-anchor=\"").append(anchor).append('"');
    svg.append(bold ? " font-weight=\"bold\"" : "").append(" fill=\"").append(colour);
    svg.append("\">").append(XmlText.escaped(text)).append("</text>\n");
  }

  /** A text in lines of that width; gives the height below it. */
  double lines(String text, double x, double y, double width, double size) {
    double at = y;
    for (String line : wrapped(text, width, size)) {
      text(line, x, at, size, "start", false);
      at += size * LEADING;
    }
    return at;
  }

  /** How high a text is in lines of that width. */
  static double height(String text, double width, double size) {
    return wrapped(text, width, size).size() * size * LEADING;
  }

  static List<String> wrapped(String text, double width, double size) {
    int most = (int) (width / (size * CHARACTER));
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      if (line.length() > 0 && line.length() + 1 + word.length() > most) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() == 0 ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }

  /** The picture, which ends here. */
  String svg() {
    return svg + "</svg>\n";
  }

  private static String number(double value) {
    return Numbers.round(value, DECIMALS);
  }
}
