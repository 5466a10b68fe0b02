package washbook.log.layout;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import washbook.log.ComputedHeader;
import washbook.log.ComputedHeaders;
import washbook.log.Role;
import washbook.log.layout.Header.HeaderCell;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;
import washbook.log.words.Concept;
import washbook.log.words.DateText;

/**
 * Finds the headers of tables: rows where at least two cells side by side name something of a log
 * and one of them a reading.
 */
public final class Headers {

  private static final int LONGEST_HEADER = 60;

  private static final Set<Role> TIMES =
      EnumSet.of(Role.TEMPERATURE, Role.DATE, Role.DAY, Role.HOURS);

  private static final Pattern AMOUNT = Pattern.compile("[~+-]?\\d+([.,]\\d+)?(\\s*[\\p{L}°%].*)?");

  /** Distinct texts whose judgement is remembered. */
  private static final int REMEMBERED = 4096;

  private final Grid grid;
  private final MergedAreas merged;
  private final Map<String, HeaderCell> judged = new HashMap<>();
  private final Map<String, Boolean> dates = new HashMap<>();
  private final HeaderCredibility weak;
  private final ReadingWithTemperature pairs;
  private final ReadingByValues byValues;
  private final Legend legend;

  /** Our headers in the row asked about last. */
  private ComputedHeaders ours;

  private int oursRow = -1;

  public Headers(Grid grid) {
    this.grid = grid;
    this.merged = new MergedAreas(grid.merged());
    this.weak = new HeaderCredibility(grid);
    this.pairs = new ReadingWithTemperature(grid);
    this.byValues = new ReadingByValues(grid);
    this.legend = new Legend(grid);
  }

  public List<Header> find() {
    List<Header> found = new ArrayList<>();
    for (int row = 0; row < grid.rowCount(); row++) {
      int columns = Math.min(grid.columnsUsed(row), Grid.MOST_COLUMNS);
      if (!merged.touches(row) && (texts(row, columns) < 2 || !isPromising(row, columns))) {
        continue;
      }
      for (Header header : inRow(row, columns)) {
        if (isRowOfReadings(header, found)) {
          continue;
        }
        Header above = directlyAbove(header, found);
        if (above != null) {
          found.remove(above);
          found.add(
              isKeyLine(above) || standsAlone(header, above)
                  ? withGroupRow(header)
                  : joined(above, header));
        } else {
          found.add(withGroupRow(header));
        }
      }
    }
    found.removeIf(header -> isKeyLine(header) && !hasReadingBelow(header));
    return found.stream()
        .map(this::withUnitRow)
        .map(header -> TimesOfDayBelow.joined(grid, header))
        .filter(weak::isEnough)
        .toList();
  }

  private int texts(int row, int columns) {
    int texts = 0;
    for (int column = 0; column < columns; column++) {
      if (grid.kind(row, column) == Kind.TEXT) {
        texts++;
      }
    }
    return texts;
  }

  /** Whether a row has at least two cells that name something, one of them a reading. */
  private boolean isPromising(int row, int columns) {
    int named = 0;
    boolean reading = false;
    for (int column = 0; column < columns; column++) {
      if (grid.kind(row, column) == Kind.TEXT) {
        Role role = cell(row, column, grid.text(row, column)).role();
        named += role == Role.OTHER ? 0 : 1;
        reading |= HeaderRuns.isReading(role);
      }
    }
    return reading ? named >= 2 : named >= 1 && isOverGravities(row, columns);
  }

  private boolean isOverGravities(int row, int columns) {
    for (int column = 0; column < columns; column++) {
      if (grid.kind(row, column) == Kind.TEXT && byValues.mayBegin(row, column)) {
        return true;
      }
    }
    return false;
  }

  /** The text that a reader sees over a column, also inside a merged cell. */
  private String shown(int row, int column) {
    if (grid.kind(row, column) == Kind.TEXT) {
      return grid.text(row, column);
    }
    Grid.Area area = merged.at(row, column);
    return area != null && grid.kind(area.firstRow(), area.firstColumn()) == Kind.TEXT
        ? grid.text(area.firstRow(), area.firstColumn())
        : "";
  }

  private List<Header> inRow(int row, int columns) {
    List<List<HeaderCell>> runs = new ArrayList<>();
    int last = -2;
    boolean broken = true;
    for (int column = 0; column < columns; column++) {
      String text = shown(row, column);
      if (text.isBlank()) {
        broken |= grid.kind(row, column) != Kind.BLANK;
        continue;
      }
      if (broken || column - last > 1) {
        runs.add(new ArrayList<>());
      }
      broken = false;
      last = column;
      runs.get(runs.size() - 1).add(cell(row, column, text));
    }
    runs.replaceAll(run -> byValues.over(row, run));
    return HeaderRuns.toHeaders(grid, row, runs);
  }

  /** A header cell, judged with a look at the values below where its words leave two ways. */
  private HeaderCell cell(int row, int column, String text) {
    if (isOurs(row, column, text)) {
      return new HeaderCell(column, text.strip(), EnumSet.noneOf(Concept.class), Role.COMPUTED);
    }
    HeaderCell cell = cell(column, text);
    boolean open = cell.role() == Role.OTHER && cell.meanings().isEmpty();
    if (open && isOverDates(row, column) && HeaderWords.isWord(text)) {
      return new HeaderCell(column, cell.text(), EnumSet.of(Concept.DATE), Role.DATE);
    }
    boolean instrument =
        cell.meanings().contains(Concept.HYDROMETER) && byValues.mayBegin(row, column);
    return cell.role() == Role.TEMPERATURE && (instrument || pairs.standBelow(row, cell))
        ? new HeaderCell(column, cell.text(), cell.meanings(), Role.GRAVITY)
        : cell;
  }

  /** Whether dates begin right below a cell, one in each of three rows. */
  private boolean isOverDates(int row, int column) {
    for (int below = row + 1; below <= row + 3; below++) {
      if (below >= grid.rowCount() || !isDate(below, column)) {
        return false;
      }
    }
    return true;
  }

  private boolean isDate(int row, int column) {
    if (grid.kind(row, column) != Kind.TEXT) {
      return DateText.isDate(grid, row, column);
    }
    if (dates.size() >= REMEMBERED) {
      dates.clear();
    }
    return dates.computeIfAbsent(grid.text(row, column), DateText::isDate);
  }

  /** Whether an earlier run has written a header, which its neighbours may have to tell. */
  private boolean isOurs(int row, int column, String text) {
    Optional<ComputedHeader> read = ComputedHeader.read(text.strip());
    if (read.isEmpty() || read.get().isMarked()) {
      return read.isPresent();
    }
    if (oursRow != row) {
      ours = ComputedHeaders.in(grid, row);
      oursRow = row;
    }
    return ours.at(column).isPresent();
  }

  private HeaderCell cell(int column, String text) {
    if (text.length() > LONGEST_HEADER) {
      return new HeaderCell(column, text, EnumSet.noneOf(Concept.class), Role.OTHER);
    }
    if (judged.size() >= REMEMBERED) {
      judged.clear();
    }
    HeaderCell cell = judged.computeIfAbsent(text, legend::judge);
    return new HeaderCell(column, cell.text(), cell.meanings(), cell.role());
  }

  /** Whether the words are those of a row of readings, as a weekday beside somebody's initials. */
  private boolean isRowOfReadings(Header header, List<Header> found) {
    for (int i = found.size() - 1; i >= 0; i--) {
      Header above = found.get(i);
      if (above.overlaps(header) && above.bottomRow() < header.topRow()) {
        return above.cells().stream()
            .filter(c -> HeaderRuns.isReading(c.role()))
            .anyMatch(c -> holdsValue(header.bottomRow(), c.column()));
      }
    }
    return false;
  }

  private boolean holdsValue(int row, int column) {
    return switch (grid.kind(row, column)) {
      case NUMBER -> true;
      case TEXT -> {
        String text = grid.text(row, column).strip();
        yield !text.isEmpty() && HeaderWords.isValue(text);
      }
      default -> false;
    };
  }

  /** A header over the same columns that ends in the row above, or in this row after a joining. */
  private static Header directlyAbove(Header header, List<Header> found) {
    for (Header other : found) {
      boolean touches =
          other.bottomRow() == header.topRow() - 1 || other.bottomRow() == header.topRow();
      if (touches && other.overlaps(header)) {
        return other;
      }
    }
    return null;
  }

  /** Whether a row is labels with their values, as {@code Volume | 15 l | Spindle | 20 °C}. */
  private static boolean isKeyLine(Header row) {
    return row.topRow() == row.bottomRow()
        && row.cells().stream().anyMatch(c -> AMOUNT.matcher(c.text()).matches());
  }

  /**
   * Whether a row names a reading and a temperature or time itself, while the row above it names a
   * reading over a column that is none: that one says something of the instrument.
   */
  private static boolean standsAlone(Header header, Header above) {
    Set<String> overReadings = new HashSet<>();
    Set<String> elsewhere = new HashSet<>();
    boolean time = false;
    for (HeaderCell cell : header.cells()) {
      HeaderCell over = at(above, cell.column());
      boolean reading = HeaderRuns.isReading(cell.role());
      time |= TIMES.contains(cell.role());
      if (reading) {
        overReadings.add(over == null ? "" : over.text());
      } else if (over != null
          && HeaderRuns.isReading(over.role())
          && !over.text().equals(cell.text())) {
        elsewhere.add(over.text());
      }
    }
    elsewhere.removeAll(overReadings);
    return !overReadings.isEmpty() && time && !elsewhere.isEmpty();
  }

  private boolean hasReadingBelow(Header header) {
    int row = header.bottomRow() + 1;
    return row < grid.rowCount()
        && header.cells().stream()
            .filter(c -> HeaderRuns.isReading(c.role()))
            .anyMatch(c -> holdsValue(row, c.column()));
  }

  private static Header joined(Header upper, Header lower) {
    List<HeaderCell> cells = new ArrayList<>();
    int first = Math.min(upper.firstColumn(), lower.firstColumn());
    int last = Math.max(upper.lastColumn(), lower.lastColumn());
    for (int column = first; column <= last; column++) {
      HeaderCell above = at(upper, column);
      HeaderCell below = at(lower, column);
      if (above != null || below != null) {
        cells.add(joined(above, below));
      }
    }
    return new Header(upper.topRow(), lower.bottomRow(), cells);
  }

  private static HeaderCell joined(HeaderCell above, HeaderCell below) {
    if (above == null || (below != null && above.text().equals(below.text()))) {
      return below;
    }
    if (below == null) {
      return above;
    }
    if (below.role() == Role.COMPUTED || above.role() == Role.COMPUTED) {
      return below.role() == Role.COMPUTED ? below : above;
    }
    Set<Concept> meanings = HeaderRoles.joined(above.meanings(), below.meanings());
    boolean byValues =
        below.role() == Role.GRAVITY && HeaderRoles.role(below.meanings()) != Role.GRAVITY;
    Role role = byValues ? Role.GRAVITY : HeaderRoles.role(meanings);
    return new HeaderCell(below.column(), above.text() + " " + below.text(), meanings, role);
  }

  private static HeaderCell at(Header header, int column) {
    for (HeaderCell cell : header.cells()) {
      if (cell.column() == column) {
        return cell;
      }
    }
    return null;
  }

  /** Adds the words of a row above whose cells span several columns. */
  private Header withGroupRow(Header header) {
    int row = header.topRow() - 1;
    if (row < 0) {
      return header;
    }
    List<HeaderCell> cells = new ArrayList<>();
    boolean any = false;
    for (HeaderCell cell : header.cells()) {
      Grid.Area area = merged.at(row, cell.column());
      boolean group =
          area != null
              && area.lastColumn() > area.firstColumn()
              && area.lastColumn() - area.firstColumn() + 1 < header.cells().size()
              && area.lastRow() == row;
      String text = group ? shown(row, cell.column()).strip() : "";
      if (text.isEmpty() || cell.role() == Role.COMPUTED) {
        cells.add(cell);
      } else {
        any = true;
        cells.add(joined(cell(cell.column(), text), cell));
      }
    }
    return any ? new Header(row, header.bottomRow(), cells) : header;
  }

  /** Adds a row of units directly below. */
  private Header withUnitRow(Header header) {
    int row = header.bottomRow() + 1;
    if (row >= grid.rowCount()) {
      return header;
    }
    List<HeaderCell> cells = new ArrayList<>();
    int units = 0;
    for (HeaderCell cell : header.cells()) {
      Kind kind = grid.kind(row, cell.column());
      if (kind == Kind.BLANK) {
        cells.add(cell);
        continue;
      }
      String text = kind == Kind.TEXT ? grid.text(row, cell.column()).strip() : "";
      if (text.isEmpty() || text.length() > 12 || HeaderWords.isValue(text)) {
        return header;
      }
      HeaderCell below = cell(cell.column(), text);
      if (below.meanings().stream().anyMatch(m -> m.compareTo(Concept.SG) >= 0)) {
        units++;
      } else if (Character.isLetterOrDigit(text.charAt(0))) {
        return header;
      }
      cells.add(joined(cell, below));
    }
    return units == 0 ? header : new Header(header.topRow(), row, cells);
  }
}
