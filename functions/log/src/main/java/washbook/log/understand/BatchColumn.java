package washbook.log.understand;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import washbook.functions.Numbers;
import washbook.functions.quantity.Quantity;
import washbook.log.LogColumn;
import washbook.log.ReadingError;
import washbook.log.Role;
import washbook.log.layout.Header.HeaderCell;
import washbook.log.layout.TableRows;
import washbook.log.sheet.Grid;
import washbook.log.words.CellText;
import washbook.log.words.Concept;
import washbook.log.words.DateText;
import washbook.log.words.LateWords;
import washbook.log.words.ReadingScale;
import washbook.log.words.Vocabulary;
import washbook.log.words.WashWords;

/**
 * The column that names the batches though its header does not say so: the readings of the whole
 * table jump up where its values change, and those of each value do not.
 */
final class BatchColumn {
  /** So many rows a batch has at least, on average. */
  private static final int ROWS_PER_BATCH = 3;

  /** Less is the last digit of a reading, SG. */
  private static final double LEAST_RISE = 0.0005;

  /** No more rows stand below the date of their day. */
  private static final int MOST_OF_A_DAY = 30;

  /** The part of the rows that a column must fill. */
  private static final double FILLED = 0.9;

  private final Grid grid;
  private final TableRows rows;
  private final LogColumn reading;
  private final int dateColumn;
  private final boolean newestFirst;

  /**
   * @param dateColumn where the dates or days stand, -1 for nowhere
   */
  BatchColumn(Grid grid, TableRows rows, LogColumn reading, int dateColumn) {
    this.grid = grid;
    this.rows = rows;
    this.reading = reading;
    this.dateColumn = dateColumn;
    this.newestFirst = time(rows.firstRow()) > time(lastRead());
  }

  /** The one among columns of no known meaning that parts the readings so. */
  Optional<HeaderCell> among(List<HeaderCell> cells) {
    int together = rises(-1);
    if (together == 0) {
      return Optional.empty();
    }
    List<HeaderCell> found = new ArrayList<>();
    int fewest = Integer.MAX_VALUE;
    for (HeaderCell cell : cells) {
      if (!namesSeveral(cell.column())
          || !standTogether(cell.column()) && !shareDays(cell.column())) {
        continue;
      }
      int rises = rises(cell.column());
      if (rises * 4 <= together && rises <= fewest) {
        if (rises < fewest) {
          found.clear();
        }
        fewest = rises;
        found.add(cell);
      }
    }
    return found.stream().findFirst();
  }

  /** Whether the values are weekdays, dates or times, and no names. */
  boolean holdsTimes(HeaderCell cell) {
    Map<String, Boolean> judged = new HashMap<>();
    int texts = 0;
    int times = 0;
    for (int row = rows.firstRow(); row <= rows.lastRow(); row++) {
      if (grid.kind(row, cell.column()) == Grid.Kind.DATE) {
        texts++;
        times++;
      } else if (grid.kind(row, cell.column()) == Grid.Kind.TEXT && !rows.isSkipped(row)) {
        texts++;
        times += judged.computeIfAbsent(grid.text(row, cell.column()), BatchColumn::isTime) ? 1 : 0;
      }
    }
    return times > 0 && times >= 0.8 * texts;
  }

  private static boolean isTime(String text) {
    Set<Concept> meanings = Vocabulary.meanings(text);
    return meanings.contains(Concept.WEEKDAY)
        || meanings.contains(Concept.TIME_OF_DAY)
        || !Double.isNaN(DateText.serial(text, DateText.Order.DAY_FIRST));
  }

  /**
   * Whether on most days several rows stand, each with another value, and every value comes again
   * and again: two vessels read one after the other, though their readings hardly differ.
   */
  boolean isReadInTurn(HeaderCell cell) {
    Map<String, Set<String>> byDay = namesByDay(cell.column());
    Map<String, Integer> byName = new HashMap<>();
    int readings = 0;
    for (int row = rows.firstRow(); row <= rows.lastRow(); row++) {
      String name = nameRead(row, cell.column());
      if (!name.isEmpty()) {
        readings++;
        byName.merge(name, 1, Integer::sum);
      }
    }
    boolean once = byDay.values().stream().mapToInt(Set::size).sum() == readings;
    long shared = daysOfSeveral(byDay);
    boolean again = byName.values().stream().allMatch(count -> count >= ROWS_PER_BATCH);
    boolean often = 2 * shared > byDay.size() && goUpAndDown(cell.column(), readings);
    return once && byName.size() >= 2 && again && readings >= 2 * ROWS_PER_BATCH && often;
  }

  /** Whether the rows of each name follow one another: what comes and goes is who has read. */
  private boolean standTogether(int column) {
    Set<String> seen = new HashSet<>();
    String before = null;
    for (int row = rows.firstRow(); row <= rows.lastRow(); row++) {
      String name = nameRead(row, column);
      if (!name.isEmpty() && !name.equals(before)) {
        if (!seen.add(name)) {
          return false;
        }
        before = name;
      }
    }
    return true;
  }

  /** Whether two names or more stand on half of the days: vessels that are read on one round. */
  private boolean shareDays(int column) {
    if (dateColumn < 0) {
      return takeTurns(column);
    }
    Map<String, Set<String>> byDay = namesByDay(column);
    long shared = daysOfSeveral(byDay);
    return 2 * shared >= byDay.size();
  }

  private static long daysOfSeveral(Map<String, Set<String>> byDay) {
    return byDay.values().stream().filter(names -> names.size() > 1).count();
  }

  private Map<String, Set<String>> namesByDay(int column) {
    Map<String, Set<String>> byDay = new HashMap<>();
    for (int row = rows.firstRow(); row <= rows.lastRow(); row++) {
      String name = nameRead(row, column);
      if (!name.isEmpty()) {
        byDay.computeIfAbsent(day(row), d -> new HashSet<>()).add(name);
      }
    }
    return byDay;
  }

  /** Whether all rows with readings have one name. */
  boolean isOneName(HeaderCell cell) {
    Set<String> names = new HashSet<>();
    for (int row = rows.firstRow(); row <= rows.lastRow(); row++) {
      if (!Double.isNaN(gravity(row))) {
        names.add(name(row, cell.column()));
      }
    }
    return names.size() == 1;
  }

  /** Whether one wash goes on where the name changes: it was moved from vessel to vessel. */
  boolean isMovedOn(HeaderCell cell) {
    return standTogether(cell.column())
        && !isOneName(cell)
        && rises(-1) == 0
        && goesOnWhereItChanges(cell.column())
        && !isParted(cell.column());
  }

  /** Whether no reading stands above the one before where a name changes, and no name is a wash. */
  private boolean goesOnWhereItChanges(int column) {
    String before = "";
    double last = Double.NaN;
    double then = Double.NaN;
    for (int row : inTime().toArray()) {
      double gravity = gravity(row);
      String name = nameRead(row, column);
      if (name.isEmpty()) {
        continue;
      }
      boolean changes = !name.equals(before);
      double at = time(row);
      boolean after = before.isEmpty() || at >= then;
      if (changes
          && (!after || !WashWords.inValue(name).isEmpty() || gravity > last + LEAST_RISE)) {
        return false;
      }
      before = name;
      last = gravity;
      then = at;
    }
    return true;
  }

  /** Whether a text beside the last row of a name or the first of the next tells of parts. */
  private boolean isParted(int column) {
    String before = "";
    int last = rows.firstRow();
    for (int row = rows.firstRow(); row <= rows.lastRow(); row++) {
      String name = name(row, column);
      if (!name.isEmpty() && !name.equals(before) && !before.isEmpty()) {
        for (int at = last; at <= row; at++) {
          if (LateWords.sayParted(grid, at, 0, grid.columnsUsed(at))) {
            return true;
          }
        }
      }
      last = name.isEmpty() ? last : row;
      before = name.isEmpty() ? before : name;
    }
    return false;
  }

  /**
   * Whether two names or more stand on half of the days, and the readings of each rise less often.
   */
  boolean partsDays(HeaderCell cell) {
    return shareDays(cell.column()) && rises(cell.column()) < rises(-1);
  }

  /** Whether no name stands in two rows one after the other. */
  private boolean takeTurns(int column) {
    String before = "";
    for (int row = rows.firstRow(); row <= rows.lastRow(); row++) {
      String name = nameRead(row, column);
      if (!name.isEmpty() && name.equals(before)) {
        return false;
      }
      before = name.isEmpty() ? before : name;
    }
    return true;
  }

  /** Whether readings stand above those before them in many rows, but in few of one name. */
  private boolean goUpAndDown(int column, int readings) {
    int together = rises(-1, LEAST_RISE);
    return 4 * together >= readings && 2 * rises(column, LEAST_RISE) < together;
  }

  /** The day of a row, without the time; that of a row above where the cell is blank. */
  private String day(int row) {
    int column = dateColumn;
    int at = row;
    while (at > Math.max(rows.firstRow(), row - MOST_OF_A_DAY)
        && grid.kind(at, column) == Grid.Kind.BLANK) {
      at--;
    }
    return switch (grid.kind(at, column)) {
      case NUMBER, DATE -> Double.toString(Math.floor(grid.number(at, column)));
      case TEXT -> grid.text(at, column).strip().replaceAll("[ T]\\d{1,2}[:hu.]\\d{0,2}.*$", "");
      default -> "";
    };
  }

  private boolean namesSeveral(int column) {
    Map<String, Integer> times = new HashMap<>();
    Set<String> names = new HashSet<>();
    int readings = 0;
    int filled = 0;
    for (int row = rows.firstRow(); row <= rows.lastRow(); row++) {
      if (!Double.isNaN(gravity(row))) {
        readings++;
        String name = name(row, column);
        if (!name.isEmpty()) {
          filled++;
          names.add(name);
          times.merge(name, 1, Integer::sum);
        }
      }
    }
    return filled >= FILLED * readings
        && times.values().stream().allMatch(count -> count > 1)
        && names.size() >= 2
        && names.size() * ROWS_PER_BATCH <= readings;
  }

  /** How often a reading stands clearly above the one before it of the same name. */
  private int rises(int column) {
    return rises(column, ReadingError.BEYOND);
  }

  private int rises(int column, double least) {
    Map<String, Double> last = new HashMap<>();
    int rises = 0;
    for (int row : inTime().toArray()) {
      double gravity = gravity(row);
      if (!Double.isNaN(gravity)) {
        Double before = last.put(column < 0 ? "" : name(row, column), gravity);
        rises += before != null && gravity > before + least ? 1 : 0;
      }
    }
    return rises;
  }

  private int lastRead() {
    int row = rows.lastRow();
    while (row > rows.firstRow() && Double.isNaN(gravity(row))) {
      row--;
    }
    return row;
  }

  /** Date or day of a row; NaN for none. */
  private double time(int row) {
    if (dateColumn < 0) {
      return Double.NaN;
    }
    return switch (grid.kind(row, dateColumn)) {
      case NUMBER, DATE -> grid.number(row, dateColumn);
      case TEXT -> DateText.serial(grid.text(row, dateColumn), DateText.Order.DAY_FIRST);
      default -> Double.NaN;
    };
  }

  private double gravity(int row) {
    boolean read = reading.role() == Role.GRAVITY || reading.role() == Role.REFRACTOMETER;
    if (rows.isSkipped(row) || !read || reading.unit().isEmpty()) {
      return Double.NaN;
    }
    double value = CellText.number(grid, row, reading.column());
    double gravity = value == 0 ? Double.NaN : ReadingScale.of(reading.unit()).toGravity(value);
    return gravity <= Quantity.GRAVITY.max() ? gravity : Double.NaN;
  }

  /** The name beside a reading, "" where the row has none of them. */
  private String nameRead(int row, int column) {
    return Double.isNaN(gravity(row)) ? "" : name(row, column);
  }

  /** The rows from the first to the last in time, as far as the sheet's order tells. */
  private IntStream inTime() {
    return IntStream.rangeClosed(rows.firstRow(), rows.lastRow())
        .map(row -> newestFirst ? rows.firstRow() + rows.lastRow() - row : row);
  }

  private String name(int row, int column) {
    return switch (grid.kind(row, column)) {
      case TEXT -> grid.text(row, column).strip().toUpperCase(Locale.ROOT);
      case NUMBER -> Numbers.show(grid.number(row, column));
      default -> "";
    };
  }
}
