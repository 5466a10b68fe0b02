package washbook.runner.card;

import washbook.runner.card.CardTable.Column;

/** A table of a card drawn on paper. */
final class TableDrawing {
  private static final double HIGHEST_ROW = 5.4;
  private static final double FIRST = 20;
  private static final double BETWEEN = 6;
  private static final int MARKED = 5;

  private final Drawing page;
  private final CardTable table;
  private final double pitch;

  private TableDrawing(Drawing page, CardTable table, double pitch) {
    this.page = page;
    this.table = table;
    this.pitch = Math.min(HIGHEST_ROW, pitch);
  }

  /** Over the whole width, with the readings as heads. */
  static void whole(Drawing page, CardTable table, double top, double bottom) {
    double heads = 14;
    double pitch = (bottom - top - heads) / table.rows().length;
    TableDrawing drawing = new TableDrawing(page, table, pitch);
    double width = page.paper().width() - 2 * Paper.MARGIN;
    page.text(table.title(), Paper.MARGIN, top + 4, Drawing.USUAL, "start", true, Drawing.ACCENT);
    page.text(table.across(), Paper.MARGIN + FIRST + 2, top + 9, Drawing.SMALL, "start", false);
    drawing.block(0, table.rows().length, Paper.MARGIN, width, top + heads, FIRST, false);
  }

  /** In two halves side by side. */
  static void twoBlocks(Drawing page, CardTable table, double top, double bottom) {
    double heads = 15;
    int half = (table.rows().length + 1) / 2;
    TableDrawing drawing = new TableDrawing(page, table, (bottom - top - heads) / half);
    double width = (page.paper().width() - 2 * Paper.MARGIN - BETWEEN) / 2;
    double first = width / (table.columns().size() + 1);
    drawing.block(0, half, Paper.MARGIN, width, top + heads, first, true);
    drawing.block(
        half, table.rows().length, Paper.MARGIN + width + BETWEEN, width, top + heads, first, true);
  }

  private void block(
      int from, int to, double left, double width, double top, double first, boolean words) {
    double each = (width - first) / table.columns().size();
    head(
        words ? GravityScale.GRAVITY.narrow(page.words()) : table.corner(),
        left + first - 2,
        top,
        words);
    for (int c = 0; c < table.columns().size(); c++) {
      double right = left + first + (c + 1) * each - 1;
      String text =
          words
              ? GravityScale.values()[c + 1].narrow(page.words())
              : page.words().decimal(table.columns().get(c).headText());
      head(text, right, top, words);
    }
    page.line(left, top, left + width, top, 0.4, Drawing.INK);
    for (int row = from; row < to; row++) {
      double foot = top + (row - from + 1) * pitch;
      double y = foot - pitch / 2 + 1;
      boolean marked = (row - from) % MARKED == MARKED - 1;
      page.line(
          left,
          foot,
          left + width,
          foot,
          marked ? 0.3 : 0.12,
          marked ? Drawing.INK : Drawing.HAIRLINE);
      String name = page.words().decimal(CardNumber.plain(table.rows()[row], table.rowDecimals()));
      page.text(name, left + first - 2, y, Drawing.SMALL, "end", true);
      for (int c = 0; c < table.columns().size(); c++) {
        Column column = table.columns().get(c);
        double right = left + first + (c + 1) * each - 1;
        page.text(page.words().decimal(column.text(row)), right, y, Drawing.SMALL, "end", false);
      }
    }
    page.line(
        left + first - 0.6, top, left + first - 0.6, top + (to - from) * pitch, 0.3, Drawing.INK);
  }

  /** Words go over each other where there is no room beside each other. */
  private void head(String text, double right, double top, boolean words) {
    if (!words) {
      page.text(text, right, top - 1.5, Drawing.SMALL, "end", true);
      return;
    }
    String[] lines = text.split("\\|", -1);
    for (int i = 0; i < lines.length; i++) {
      double y = top - 1.5 - (lines.length - 1 - i) * 3.4;
      page.text(lines[i], right, y, Drawing.SMALL, "end", true);
    }
  }
}
