package washbook.log.layout;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import washbook.log.Role;
import washbook.log.layout.Header.HeaderCell;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;
import washbook.log.words.CellText;
import washbook.log.words.Concept;
import washbook.log.words.ReadingScale;
import washbook.log.words.Vocabulary;

/**
 * Columns of gravities whose headers do not say so: the names of vessels, an abbreviation, a slip
 * of the pen. They count beside a column of dates, days or temperatures, where no header in the row
 * names a reading.
 */
final class ReadingByValues {
  private static final int ROWS_SEEN = 60;

  private static final int FEWEST = 4;

  private static final Pattern DOSE =
      Pattern.compile("\\d ?(?:\u00b5|m|k)?g ?/ ?(?:l|hl)\\b", Pattern.CASE_INSENSITIVE);

  /** Rows that show units in the cells. */
  private static final int ROWS_WITH_SCALE = 20;

  private static final int LONGEST_FIGURE = 20;

  private static final int LINES_ABOVE = 8;

  /** Rows below a header within which its readings begin. */
  private static final int LATEST = 8;

  /** Degrees of sugar that a wash begins with, on any scale, and the part left in the end. */
  private static final double LEAST_DEGREES = 5;

  private static final double MOST_DEGREES = 150;

  private static final double DEGREES_LEFT = 0.65;

  /** What gravities fall by at least to be those of a ferment, from either end on, SG. */
  private static final double FALL = 0.010;

  /** So many figures that never rise by more than a slip are no list of originals, SG. */
  private static final int FEWEST_ORIGINALS = 6;

  private static final double SLIP = 0.001;

  private static final Set<Role> BESIDE =
      EnumSet.of(Role.DATE, Role.DAY, Role.HOURS, Role.TIME, Role.TEMPERATURE);

  private static final Set<Role> OPEN = EnumSet.of(Role.OTHER, Role.BATCH, Role.DAY, Role.HOURS);

  private final Grid grid;

  ReadingByValues(Grid grid) {
    this.grid = grid;
  }

  /** Whether a column of gravities begins right below a cell. */
  boolean mayBegin(int row, int column) {
    return row + 1 < grid.rowCount()
        && (!isGravity(row - 1, column)
                && (isGravity(row + 2, column) || isGravity(firstBelow(row, column), column))
                && holdsGravities(row, column)
            || namesVessel(row, column) && isScaleSaid(row) && fallsAsDegrees(row, column)
            || haveScales(row, column));
  }

  /** Whether cells below are figures with the unit of a scale of sugar, as {@code 11 Bé}. */
  private boolean haveScales(int row, int column) {
    boolean begins = isWithScale(row + 1, column) || isWithScale(row + 2, column);
    if (!begins || isWithScale(row, column)) {
      return false;
    }
    int with = 0;
    int filled = 0;
    int end = Math.min(grid.rowCount() - 1, row + ROWS_WITH_SCALE);
    for (int at = row + 1; at <= end; at++) {
      with += isWithScale(at, column) ? 1 : 0;
      filled += grid.kind(at, column) == Kind.BLANK ? 0 : 1;
    }
    return with >= FEWEST && 3 * with >= filled;
  }

  private boolean isWithScale(int row, int column) {
    if (row >= grid.rowCount() || grid.kind(row, column) != Kind.TEXT) {
      return false;
    }
    String text = grid.text(row, column).strip();
    if (text.isEmpty() || text.length() > LONGEST_FIGURE || !HeaderWords.isValue(text)) {
      return false;
    }
    String unit = CellText.read(text).unit;
    return !unit.isEmpty() && ReadingScale.in(Vocabulary.meanings(unit)).isPresent();
  }

  /** The first row below with something in a column: a vessel may have been begun later. */
  private int firstBelow(int row, int column) {
    int last = Math.min(grid.rowCount() - 1, row + LATEST);
    int at = row + 1;
    while (at < last && grid.kind(at, column) == Kind.BLANK) {
      at++;
    }
    return at;
  }

  private boolean namesVessel(int row, int column) {
    if (grid.kind(row, column) != Kind.TEXT) {
      return false;
    }
    Set<Concept> meanings = Vocabulary.meanings(grid.text(row, column));
    boolean degrees = meanings.equals(EnumSet.of(Concept.DEGREES));
    return degrees || meanings.contains(Concept.VESSEL) || meanings.contains(Concept.BATCH);
  }

  /** Whether a line close above names a scale of sugar, as {@code all in °Brix}. */
  private boolean isScaleSaid(int row) {
    for (int above = Math.max(0, row - LINES_ABOVE); above < row; above++) {
      for (int column = 0; column < grid.columnsUsed(above); column++) {
        if (grid.kind(above, column) == Kind.TEXT && namesScale(grid.text(above, column))) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean namesScale(String text) {
    Set<Concept> meanings = Vocabulary.meanings(text);
    return meanings.contains(Concept.POTENTIAL) || ReadingScale.in(meanings).isPresent();
  }

  private boolean fallsAsDegrees(int row, int column) {
    int numbers = 0;
    int rises = 0;
    double highest = Double.NEGATIVE_INFINITY;
    double last = Double.NaN;
    int end = Math.min(grid.rowCount() - 1, row + ROWS_SEEN);
    for (int at = row + 1; at <= end; at++) {
      double value = CellText.plainNumber(grid, at, column);
      if (!Double.isNaN(value)) {
        rises += value > last ? 1 : 0;
        highest = Math.max(highest, value);
        last = value;
        numbers++;
      }
    }
    return numbers >= FEWEST
        && highest >= LEAST_DEGREES
        && highest <= MOST_DEGREES
        && last <= DEGREES_LEFT * highest
        && rises * 8 <= numbers;
  }

  /** The cells of a row, those over gravities as readings. */
  List<HeaderCell> over(int row, List<HeaderCell> cells) {
    if (cells.stream().anyMatch(c -> HeaderRuns.isReading(c.role()))
        || cells.stream().noneMatch(c -> BESIDE.contains(c.role()))) {
      return cells;
    }
    List<HeaderCell> judged = new ArrayList<>();
    for (HeaderCell cell : cells) {
      boolean original = cell.role() == Role.ORIGINAL_GRAVITY;
      boolean reading =
          original
              ? fallsAsFerment(row, cell.column())
              : isOpen(cell) && mayBegin(row, cell.column());
      judged.add(
          reading
              ? new HeaderCell(cell.column(), cell.text(), cell.meanings(), Role.GRAVITY)
              : cell);
    }
    boolean beside = judged.stream().anyMatch(c -> BESIDE.contains(c.role()));
    return beside ? judged : cells;
  }

  /** A unit of a volume may stand in what was put in, as {@code F2 (+100 mg/L)}. */
  private static boolean isOpen(HeaderCell cell) {
    return OPEN.contains(cell.role())
        || cell.role() == Role.VOLUME && DOSE.matcher(cell.text()).find();
  }

  private boolean holdsGravities(int row, int column) {
    int gravities = 0;
    int others = 0;
    double highest = Double.NEGATIVE_INFINITY;
    double first = Double.NaN;
    double last = Double.NaN;
    int end = Math.min(grid.rowCount() - 1, row + ROWS_SEEN);
    for (int at = row + 1; at <= end; at++) {
      double value = CellText.plainNumber(grid, at, column);
      if (grid.kind(at, column) == Kind.BLANK && gravities >= FEWEST) {
        break;
      }
      if (Double.isNaN(value)) {
        continue;
      }
      if (ReadingScale.looksLikeGravity(value)) {
        gravities++;
        last = ReadingScale.withoutThousandths(value);
        first = Double.isNaN(first) ? last : first;
        highest = Math.max(highest, last);
      } else {
        others++;
      }
    }
    return gravities >= FEWEST
        && others * 8 <= gravities
        && highest - Math.min(first, last) >= FALL;
  }

  /** Whether what is called an original gravity falls row by row as no list of such does. */
  private boolean fallsAsFerment(int row, int column) {
    int numbers = 0;
    double first = Double.NaN;
    double last = Double.NaN;
    int end = Math.min(grid.rowCount() - 1, row + ROWS_SEEN);
    for (int at = row + 1; at <= end; at++) {
      double value = CellText.plainNumber(grid, at, column);
      if (!ReadingScale.looksLikeGravity(value)) {
        continue;
      }
      double gravity = ReadingScale.withoutThousandths(value);
      if (gravity > last + SLIP) {
        return false;
      }
      first = Double.isNaN(first) ? gravity : first;
      last = gravity;
      numbers++;
    }
    return numbers >= FEWEST_ORIGINALS && last - 1 <= DEGREES_LEFT * (first - 1);
  }

  private boolean isGravity(int row, int column) {
    if (row < 0 || row >= grid.rowCount() || grid.kind(row, column) == Kind.BLANK) {
      return false;
    }
    return ReadingScale.looksLikeGravity(CellText.plainNumber(grid, row, column));
  }
}
