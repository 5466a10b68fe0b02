package washbook.runner.card;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import washbook.runner.card.Card.Kind;

/** A card laid out on sheets of paper. */
final class CardPages {
  private static final double TOP = 17;
  private static final double GAP = 4;

  private final Card card;
  private final Paper paper;
  private final double width;

  private CardPages(Card card, Paper paper) {
    this.card = card;
    this.paper = paper;
    width = paper.width() - 2 * Paper.MARGIN;
  }

  /** Each page as a picture. */
  static List<String> of(Card card, Paper paper) {
    CardPages pages = new CardPages(card, paper);
    List<String> all = new ArrayList<>();
    boolean scales = card.kind() == Kind.SCALES;
    int count = card.tables().size() + (scales ? 1 : 0);
    if (scales) {
      all.add(pages.page(null, 1, count));
    }
    for (CardTable table : card.tables()) {
      all.add(pages.page(table, all.size() + 1, count));
    }
    return all;
  }

  private String page(CardTable table, int number, int count) {
    Drawing page = new Drawing(paper, card.words(), card.title());
    double left = Paper.MARGIN;
    page.text(card.title(), left, TOP, Drawing.HEADLINE, "start", true);
    double y = page.lines(card.purpose(), left, TOP + 6, width, Drawing.USUAL);
    if (!card.settings().isEmpty()) {
      String settings =
          card.settings().stream()
              .map(one -> one.text(card.words()))
              .collect(Collectors.joining("  ·  "));
      page.text(settings, left, y + 1.5, Drawing.USUAL, "start", true, Drawing.ACCENT);
      y += 5;
    }
    double bottom = notes(page);
    page.text(
        number + " / " + count, left + width, paper.height() - 6, Drawing.SMALL, "end", false);
    if (table == null) {
      ScaleDrawing.draw(page, y + 2, bottom - GAP);
    } else if (card.kind() == Kind.SCALES) {
      TableDrawing.twoBlocks(page, table, y + 2, bottom - GAP);
    } else {
      TableDrawing.whole(page, table, y + 2, bottom - GAP);
    }
    return page.svg();
  }

  /** Notes at the foot, beside the drawing of how to read; gives where they begin. */
  private double notes(Drawing page) {
    double room = width - Meniscus.WIDTH - GAP;
    double height = -1.2;
    for (String note : card.notes()) {
      height += Drawing.height(note, room, Drawing.SMALL) + 1.2;
    }
    double begin = paper.height() - Paper.MARGIN - Math.max(height, Meniscus.HEIGHT);
    double y = begin + Drawing.SMALL;
    for (String note : card.notes()) {
      y = page.lines(note, Paper.MARGIN, y, room, Drawing.SMALL) + 1.2;
    }
    Meniscus.draw(page, Paper.MARGIN + room + GAP, begin);
    return begin;
  }
}
