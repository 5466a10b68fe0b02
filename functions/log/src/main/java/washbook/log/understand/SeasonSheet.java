package washbook.log.understand;

import washbook.log.sheet.Grid;

/** A sheet of the season's file, which lists the batches of many logs. It is no log. */
public final class SeasonSheet {
  /** Stands in the first cell of the table; the other sheets go on after a colon. */
  public static final String TITLE = "Washbook season";

  private SeasonSheet() {}

  public static boolean isOne(Grid grid) {
    String first = grid.text(0, 0);
    return first.equals(TITLE) || first.startsWith(TITLE + ": ");
  }
}
