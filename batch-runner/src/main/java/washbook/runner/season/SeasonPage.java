package washbook.runner.season;

import java.util.Arrays;
import java.util.List;
import washbook.runner.language.Wording;
import washbook.runner.report.OverviewColumn;

/**
 * Where the columns of the season's table stand in a workbook and how wide they are, in characters:
 * what one looks at first fits on a page, the others stand right of it and on pages of their own.
 */
final class SeasonPage {
  /** All columns, from the left. */
  static final List<OverviewColumn> COLUMNS =
      List.of(
          OverviewColumn.BATCH,
          OverviewColumn.STATE,
          OverviewColumn.WASH,
          OverviewColumn.LAST,
          OverviewColumn.DAYS,
          OverviewColumn.ORIGINAL,
          OverviewColumn.LATEST,
          OverviewColumn.ALCOHOL,
          OverviewColumn.APPARENT,
          OverviewColumn.TO_FINISH,
          OverviewColumn.WARMEST,
          OverviewColumn.WARNINGS,
          OverviewColumn.FIRST,
          OverviewColumn.PLUS_MINUS,
          OverviewColumn.REAL,
          OverviewColumn.EXTRACT,
          OverviewColumn.RATE,
          OverviewColumn.COLDEST,
          OverviewColumn.READINGS,
          OverviewColumn.REFUSED,
          OverviewColumn.SHEET,
          OverviewColumn.FILE);

  /** The last one of the first page. */
  static final int LAST_OF_FIRST = COLUMNS.indexOf(OverviewColumn.WARNINGS);

  private static final int LAST_OF_SECOND = COLUMNS.indexOf(OverviewColumn.REFUSED);

  /** With letters of at least eight points on A4 paper that lies on its side, whatever the font. */
  static final int ACROSS = 140;

  /** What a spreadsheet program gives a column that nobody has made wider. */
  private static final int USUAL_WIDTH = 11;

  private SeasonPage() {}

  static int at(OverviewColumn column) {
    return COLUMNS.indexOf(column);
  }

  /** Wide enough for the longest word of the head, which is bold and wraps. */
  static int width(OverviewColumn column, Wording words) {
    int least =
        switch (column) {
          case FILE -> 30;
          case WARNINGS -> 18;
          case BATCH -> 16;
          case STATE -> 13;
          case SHEET -> 12;
          case FIRST, LAST -> 11;
          case ALCOHOL, RATE -> 10;
          case DAYS -> 6;
          default -> 8;
        };
    int longest =
        Arrays.stream(column.head(words).split(" ")).mapToInt(String::length).max().orElse(0);
    return Math.max(least, longest + 1);
  }

  /**
   * First and last column of what is printed on pages of its own; each further one begins with the
   * names again. Where a batch comes from is said on paper beside columns of the person's only.
   */
  static List<int[]> printed(int further) {
    int[] first = {0, LAST_OF_FIRST};
    int[] second = {LAST_OF_FIRST + 1, LAST_OF_SECOND};
    int[] third = {LAST_OF_SECOND + 1, COLUMNS.size() - 1 + further};
    return further == 0 ? List.of(first, second) : List.of(first, second, third);
  }

  /** How many pages stand side by side: one, unless the person has many columns. */
  static int pages(Wording words, int further) {
    int names = width(OverviewColumn.BATCH, words);
    int own = width(COLUMNS.subList(LAST_OF_SECOND + 1, COLUMNS.size()), words);
    double wanted = further == 0 ? 0 : own + USUAL_WIDTH * further;
    return (int) Math.max(1, Math.ceil(wanted / (ACROSS - names)));
  }

  private static int width(List<OverviewColumn> columns, Wording words) {
    return columns.stream().mapToInt(column -> width(column, words)).sum();
  }
}
