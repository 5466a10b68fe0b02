package washbook.functions.log;

import java.util.Set;
import washbook.functions.log.Header.HeaderCell;

/**
 * Tables of other things than a ferment. A word that has another use beside a ferment, as the
 * battery of a sensor or the cells of the sheet, counts only where the readings do not fall as
 * those of a ferment do.
 */
final class OtherThings {
  /** Rows above a header that may be its title. */
  private static final int TITLE_ROWS = 3;

  /** Fewer readings show no course. */
  private static final int FEWEST_READINGS = 4;

  /** What a wash begins with at least and at most, and a fall that only a ferment makes, SG. */
  private static final double LEAST_START = 1.035;

  private static final double MOST_START = 1.17;

  private static final double FALL = 0.010;

  /** The acid of a battery is never so light; common practice, no source. SG. */
  private static final double LIGHTEST_ACID = 1.10;

  /** Another reading of the same wash is not higher by more, SG. */
  private static final double RISE = 0.003;

  /** Points of SG that a degree of a scale of sugar is roughly. */
  private static final double PER_DEGREE = 0.004;

  private final Grid grid;
  private final Header header;
  private final TableRows rows;

  private int readings;
  private int rises;
  private double highest = Double.NEGATIVE_INFINITY;
  private double lowest = Double.POSITIVE_INFINITY;
  private boolean fallsToLowest;

  private OtherThings(Grid grid, Header header, TableRows rows) {
    this.grid = grid;
    this.header = header;
    this.rows = rows;
  }

  /** Whether headers or the title above speak of other things, and the readings do not deny it. */
  static boolean speaksOfThem(Grid grid, Header header, TableRows rows) {
    return new OtherThings(grid, header, rows).isOther();
  }

  private boolean isOther() {
    boolean doubtfulHeader = false;
    for (HeaderCell cell : header.cells()) {
      if (cell.meanings().contains(Concept.FOREIGN)) {
        return true;
      }
      doubtfulHeader |= cell.meanings().contains(Concept.TWO_USES);
    }
    boolean doubtfulTitle = false;
    for (int row = Math.max(0, header.topRow() - TITLE_ROWS); row < header.topRow(); row++) {
      for (int column = 0; column <= header.firstColumn(); column++) {
        Set<Concept> meanings = Words.meanings(grid.text(row, column));
        if (meanings.contains(Concept.FOREIGN)) {
          return true;
        }
        doubtfulTitle |= meanings.contains(Concept.TWO_USES);
      }
    }
    if (!doubtfulHeader && !doubtfulTitle) {
      return false;
    }
    followReadings();
    boolean begun = readings < FEWEST_READINGS && highest <= MOST_START && lowest < LIGHTEST_ACID;
    return !isFerment() && (doubtfulHeader || !begun);
  }

  private boolean isFerment() {
    return highest >= LEAST_START
        && highest <= MOST_START
        && lowest < LIGHTEST_ACID
        && fallsToLowest
        && highest - lowest >= FALL
        && rises * 4 <= readings;
  }

  /** Takes the readings in as gravities; those on other scales roughly. */
  private void followReadings() {
    HeaderCell reading =
        header.cells().stream().filter(c -> Runs.isReading(c.role())).findFirst().orElse(null);
    double before = Double.POSITIVE_INFINITY;
    for (int row = rows.firstRow(); reading != null && row <= rows.lastRow(); row++) {
      double value = ColumnFacts.plainNumber(grid, row, reading.column());
      if (rows.isSkipped(row) || Double.isNaN(value) || value == 0) {
        continue;
      }
      double gravity =
          value >= 900 ? value / 1000 : value > 0.9 && value < 1.5 ? value : 1 + value * PER_DEGREE;
      readings++;
      rises += gravity > before + RISE ? 1 : 0;
      before = gravity;
      if (gravity > highest) {
        highest = gravity;
        fallsToLowest = false;
      }
      if (gravity <= lowest) {
        lowest = gravity;
        fallsToLowest = readings > 1;
      }
    }
  }
}
