package washbook.runner.card;

/** Sheets of paper, in mm. */
public enum Paper {
  A4(210, 297),
  LETTER(215.9, 279.4);

  static final double MARGIN = 12;

  private final double width;
  private final double height;

  Paper(double width, double height) {
    this.width = width;
    this.height = height;
  }

  double width() {
    return width;
  }

  double height() {
    return height;
  }
}
