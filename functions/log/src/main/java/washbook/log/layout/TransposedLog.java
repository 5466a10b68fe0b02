package washbook.log.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import washbook.log.ComputedHeader;
import washbook.log.Doubts;
import washbook.log.Role;
import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.log.sheet.AcrossGrid;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;
import washbook.log.words.CellText;
import washbook.log.words.Concept;
import washbook.log.words.DateText;
import washbook.log.words.ReadingScale;
import washbook.log.words.TradeWords;
import washbook.log.words.Vocabulary;

/** Finds a log that runs across: its dates to the right in one row, its readings in another. */
public final class TransposedLog {
  private static final int FEWEST = 3;

  /** The part of its extract that a wash has left in the end, at most. */
  private static final double LEFT = 0.65;

  /** As many dates side by side need no word before them, and as many gravities below them. */
  private static final int FEWEST_DATES = 4;

  private static final int ROWS_BETWEEN = 12;
  private static final int TOP_ROWS = 30;
  private static final int MOST_COLUMNS = 64;

  /** What the row above ours begins with, in all languages. */
  private static final Set<String> HEADINGS =
      Stream.of(Language.values())
          .map(language -> Message.of("header.across").in(language))
          .collect(Collectors.toUnmodifiableSet());

  private final Grid grid;
  private final int time;
  private final int gravity;
  private final int label;

  private TransposedLog(Grid grid, int time, int gravity, int label) {
    this.grid = grid;
    this.time = time;
    this.gravity = gravity;
    this.label = label;
  }

  /** The one that a sheet without a table holds. */
  public static Optional<TransposedLog> in(Grid grid) {
    int time = -1;
    int gravity = -1;
    int label = -1;
    boolean words = speaksOfFerment(grid);
    for (int row = 0; row < grid.rowCount(); row++) {
      int column = firstText(grid, row);
      if (column < 0) {
        continue;
      }
      Set<Concept> meanings = Vocabulary.meanings(grid.text(row, column));
      Role role = HeaderRoles.role(meanings);
      boolean degrees =
          HeaderRoles.hasScaleOrGravity(meanings) && !meanings.equals(Set.of(Concept.GRAVITY));
      if (isTime(role)
              && (values(grid, row, column, false) >= FEWEST || dates(grid, row, column) >= FEWEST)
          || words && dates(grid, row, column) >= FEWEST_DATES) {
        time = row;
        label = label < 0 ? column : label;
      } else if ((role == Role.GRAVITY || role == Role.REFRACTOMETER)
              && values(grid, row, column, !degrees) >= FEWEST
          || words && time >= 0 && values(grid, row, column, true) >= FEWEST_DATES) {
        gravity = row;
        label = column;
      }
      if (time >= 0 && gravity >= 0) {
        return Math.abs(time - gravity) <= ROWS_BETWEEN && falls(grid, gravity, label)
            ? Optional.of(new TransposedLog(grid, time, gravity, label))
            : Optional.empty();
      }
    }
    return Optional.empty();
  }

  /** Asks to turn it. */
  public void askToTurn(Doubts doubts) {
    doubts.ask(CellAddress.of(gravity, label), Message.of("ask.across", time + 1, gravity + 1));
  }

  /**
   * The sheet with the log turned; empty where merged cells, what stands left of it or figures
   * below it forbid. Of what stands below only single texts are looked at.
   */
  public Optional<AcrossGrid> turned() {
    int top = Math.min(time, gravity);
    int bottom = Math.max(time, gravity);
    int last = Math.max(lastColumn(top), lastColumn(bottom));
    while (top > 0
        && Math.max(figures(top - 1, last), dates(grid, top - 1, label)) * 2 > last - label) {
      top--;
    }
    while (bottom + 1 < grid.rowCount() && isPart(bottom + 1, last)) {
      bottom++;
    }
    for (int row = top; row <= bottom; row++) {
      last = Math.max(last, lastColumn(row));
    }
    int heading = headingBelow(bottom);
    int lastOurs = heading;
    for (int row = heading + 1; row < grid.rowCount(); row++) {
      lastOurs = isOurs(row) ? row : lastOurs;
    }
    List<Integer> block = new ArrayList<>();
    List<Integer> below = new ArrayList<>();
    boolean endsWithOurs = true;
    for (int row = top; row < grid.rowCount(); row++) {
      boolean ours = row > heading && row <= lastOurs && (isOurs(row) || isBlank(row));
      if (row <= bottom || ours) {
        block.add(row);
      } else if (row != heading && !isBlank(row)) {
        if (row < heading && figures(row, MOST_COLUMNS) >= FEWEST) {
          return Optional.empty();
        }
        endsWithOurs &= row < lastOurs;
        if (row < heading && isLoneText(row)) {
          below.add(row);
        }
      }
    }
    int firstNew = endsWithOurs ? lastOurs + 1 : grid.rowCount() + 1;
    return isWhole(top, bottom, last)
        ? Optional.of(
            new AcrossGrid(grid, label, last, numbers(block), numbers(below), heading, firstNew))
        : Optional.empty();
  }

  /** Whether a sheet holds rows that we have written below such a log. */
  public static boolean isFilled(Grid grid) {
    for (int row = 0; row < grid.rowCount(); row++) {
      int column = firstText(grid, row);
      if (column >= 0 && isHeading(grid.text(row, column).strip())) {
        return true;
      }
    }
    return false;
  }

  private boolean isBlank(int row) {
    return grid.filled(row) == 0;
  }

  private boolean isLoneText(int row) {
    return grid.filled(row) == 1 && firstText(grid, row) >= 0;
  }

  private static int[] numbers(List<Integer> rows) {
    return rows.stream().mapToInt(Integer::intValue).toArray();
  }

  /** Whether no merged cell reaches into it and nothing stands left of its labels. */
  private boolean isWhole(int top, int bottom, int last) {
    for (int row = top; row <= bottom; row++) {
      for (int column = 0; column < label; column++) {
        if (grid.kind(row, column) != Kind.BLANK) {
          return false;
        }
      }
    }
    return last < MOST_COLUMNS
        && grid.merged().stream()
            .noneMatch(
                area ->
                    area.firstRow() <= bottom
                        && area.lastRow() >= top
                        && area.firstColumn() <= last
                        && area.lastColumn() >= label);
  }

  private int lastColumn(int row) {
    int last = label;
    for (int column = label + 1; column < grid.columnsUsed(row); column++) {
      last = grid.kind(row, column) == Kind.BLANK ? last : column;
    }
    return last;
  }

  /** How many cells right of the label hold something that is no plain text. */
  private int figures(int row, int last) {
    int figures = 0;
    for (int column = label + 1; column <= last && column < grid.columnCount(); column++) {
      boolean figure =
          DateText.isDate(grid, row, column)
              || !Double.isNaN(CellText.plainNumber(grid, row, column));
      figures += figure ? 1 : 0;
    }
    return figures;
  }

  /** Whether a row is one of the block: it has a name, and something stands right of that. */
  private boolean isPart(int row, int last) {
    if (grid.kind(row, label) != Kind.TEXT && figures(row, last) == 0) {
      return false;
    }
    for (int column = label + 1; column <= last; column++) {
      if (grid.kind(row, column) != Kind.BLANK) {
        return true;
      }
    }
    return false;
  }

  /** The row above those that an earlier run has written, or where it goes: below everything. */
  private int headingBelow(int bottom) {
    for (int row = bottom + 1; row < grid.rowCount(); row++) {
      if (grid.kind(row, label) == Kind.TEXT && isHeading(grid.text(row, label).strip())) {
        return row;
      }
    }
    int drawn = grid.drawings().stream().mapToInt(Grid.Area::lastRow).max().orElse(-1);
    return Math.max(grid.rowCount(), drawn + 1) + 1;
  }

  private static boolean isHeading(String text) {
    return HEADINGS.contains(text);
  }

  private boolean isOurs(int row) {
    return grid.kind(row, label) == Kind.TEXT
        && ComputedHeader.read(grid.text(row, label).strip()).isPresent();
  }

  /**
   * Whether a word of the trade stands near the top, or a hydrometer in the first row: then labels
   * need not say more.
   */
  private static boolean speaksOfFerment(Grid grid) {
    for (int row = 0; row < Math.min(grid.rowCount(), TOP_ROWS); row++) {
      for (int column = 0; column < Math.min(grid.columnsUsed(row), MOST_COLUMNS); column++) {
        if (grid.kind(row, column) != Kind.TEXT) {
          continue;
        }
        String text = grid.text(row, column);
        if (TradeWords.in(text).equals(Set.of(TradeWords.Side.FERMENT))
            || row == 0 && Vocabulary.meanings(text).contains(Concept.HYDROMETER)) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether the figures right of a label end well below the highest of them. */
  private static boolean falls(Grid grid, int row, int label) {
    double highest = Double.NEGATIVE_INFINITY;
    double last = Double.NaN;
    for (int column = label + 1; column < grid.columnsUsed(row); column++) {
      double value = CellText.plainNumber(grid, row, column);
      if (!Double.isNaN(value)) {
        last =
            ReadingScale.looksLikeGravity(value)
                ? 1000 * (ReadingScale.withoutThousandths(value) - 1)
                : value;
        highest = Math.max(highest, last);
      }
    }
    return last <= LEFT * highest;
  }

  /** How many dates stand right of a label. */
  private static int dates(Grid grid, int row, int label) {
    int dates = 0;
    int columns = Math.min(grid.columnsUsed(row), MOST_COLUMNS);
    for (int column = label + 1; column < columns; column++) {
      boolean weekday =
          grid.kind(row, column) == Kind.TEXT
              && Vocabulary.meanings(grid.text(row, column)).contains(Concept.WEEKDAY);
      dates += weekday || DateText.isDate(grid, row, column) ? 1 : 0;
    }
    return dates;
  }

  private static boolean isTime(Role role) {
    return role == Role.DATE || role == Role.DAY || role == Role.HOURS || role == Role.TIME;
  }

  private static int firstText(Grid grid, int row) {
    int columns = Math.min(grid.columnsUsed(row), MOST_COLUMNS);
    for (int column = 0; column < columns; column++) {
      if (grid.kind(row, column) != Kind.BLANK) {
        return grid.kind(row, column) == Kind.TEXT ? column : -1;
      }
    }
    return -1;
  }

  /** How many values stand right of the label; none when something else does too. */
  private static int values(Grid grid, int row, int label, boolean gravities) {
    int values = 0;
    int columns = Math.min(grid.columnsUsed(row), MOST_COLUMNS);
    for (int column = label + 1; column < columns; column++) {
      Kind kind = grid.kind(row, column);
      double number = CellText.plainNumber(grid, row, column);
      boolean value =
          gravities
              ? ReadingScale.looksLikeGravity(number)
              : kind == Kind.DATE
                  || !Double.isNaN(number)
                  || (kind == Kind.TEXT
                      && !Double.isNaN(
                          DateText.serial(grid.text(row, column), DateText.Order.DAY_FIRST)));
      values += value ? 1 : 0;
    }
    return values;
  }
}
