package washbook.log.layout;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import washbook.log.Role;
import washbook.log.layout.Header.HeaderCell;
import washbook.log.sheet.Grid;
import washbook.log.words.LateWords;

/** What lines above a table say of one of several vessels that stand side by side. */
public final class VesselLines {
  private static final Set<Role> READINGS =
      EnumSet.of(Role.GRAVITY, Role.REFRACTOMETER, Role.OWN_CORRECTED_GRAVITY);

  private final Grid grid;
  private final Header header;
  private final List<Header> headers;

  /**
   * @param header of the vessel
   * @param headers all headers of the sheet
   */
  public VesselLines(Grid grid, Header header, List<Header> headers) {
    this.grid = grid;
    this.header = header;
    this.headers = headers;
  }

  /** What is said of several vessels in one line is said of each in its own column. */
  public List<KeyLine> of(List<KeyLine> all) {
    if (header.vessel().isEmpty()) {
      return all;
    }
    Set<Integer> others = columnsOfOthers();
    List<KeyLine> lines = new ArrayList<>(all);
    lines.removeIf(l -> others.contains(l.column()) && l.hasValue() && !isInOneCell(l));
    int own = reading();
    for (KeyLine line : all) {
      if (others.contains(line.column())
          && !Double.isNaN(line.value())
          && grid.kind(line.row(), own) == Grid.Kind.NUMBER) {
        lines.add(line.in(own, grid.number(line.row(), own)));
      }
    }
    return lines;
  }

  /**
   * The only original gravity stated over tables side by side, above a row with the name of each:
   * it is that of all of them.
   *
   * @param above first row of those that may speak of the table
   */
  public List<KeyLine> originalOfAll(int above) {
    List<Header> beside = headers.stream().filter(h -> h.topRow() == header.topRow()).toList();
    if (beside.size() < 2) {
      return List.of();
    }
    List<KeyLine> stated =
        new KeyLines(grid)
            .find(above, header.topRow() - 1, 0, grid.columnCount() - 1).stream()
                .filter(l -> l.isOriginalGravity() && !Double.isNaN(l.value()))
                .toList();
    boolean named = stated.size() == 1 && areNamedBelow(stated.get(0).row(), beside);
    return named && isSaidOfAll(above, stated.get(0).row()) ? stated : List.of();
  }

  /** Whether a line down to a row tells that one wash was parted. */
  private boolean isSaidOfAll(int firstRow, int lastRow) {
    for (int row = firstRow; row <= lastRow; row++) {
      if (LateWords.sayParted(grid, row, 0, grid.columnsUsed(row))) {
        return true;
      }
    }
    return false;
  }

  private boolean areNamedBelow(int line, List<Header> beside) {
    for (int row = line + 1; row < header.topRow(); row++) {
      int at = row;
      if (beside.stream().allMatch(h -> h.cells().stream().anyMatch(c -> isText(at, c.column())))) {
        return true;
      }
    }
    return false;
  }

  private boolean isText(int row, int column) {
    return grid.kind(row, column) == Grid.Kind.TEXT;
  }

  /** Whether the label stands in one cell with what it says: a sentence about all vessels. */
  private boolean isInOneCell(KeyLine line) {
    return grid.kind(line.row(), line.column()) == Grid.Kind.TEXT
        && grid.text(line.row(), line.column()).contains(line.label().strip());
  }

  /** The names of all vessels side by side; none where the header is about one. */
  public List<String> names() {
    return vessels().stream().map(Header::vessel).toList();
  }

  /** The headers of all vessels of the same rows; none where the header is about one. */
  private List<Header> vessels() {
    return header.vessel().isEmpty()
        ? List.of()
        : headers.stream()
            .filter(h -> h.topRow() == header.topRow() && !h.vessel().isEmpty())
            .toList();
  }

  private int reading() {
    return header.cells().stream()
        .filter(c -> READINGS.contains(c.role()))
        .mapToInt(HeaderCell::column)
        .findFirst()
        .orElse(header.firstColumn());
  }

  /** Whether a column belongs to other vessels of the same rows as well. */
  public boolean isShared(int column) {
    return columnsWithOthers().contains(column);
  }

  /** Columns that other vessels of the same rows have for themselves; none where it is alone. */
  public Set<Integer> columnsOfOthers() {
    Set<Integer> others = columnsWithOthers();
    header.cells().forEach(c -> others.remove(c.column()));
    return others;
  }

  private Set<Integer> columnsWithOthers() {
    Set<Integer> others = new HashSet<>();
    for (Header other : vessels()) {
      if (other != header) {
        other.cells().forEach(c -> others.add(c.column()));
      }
    }
    return others;
  }
}
