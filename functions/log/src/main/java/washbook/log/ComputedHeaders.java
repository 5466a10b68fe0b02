package washbook.log;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import washbook.log.sheet.Grid;

/**
 * Which headers of a row are ours. A header that names this program is. The plain ones can be a
 * person's own, so they count only in company:
 *
 * <ol>
 *   <li>left of a note of ours, in the order in which we write them, as far as the corrected
 *       reading, of a still run as far as the true strength;
 *   <li>at least three of the usual columns, in their order: four of a ferment, six of a run.
 * </ol>
 *
 * Columns of a person between ours are stepped over, a blank one ends the company. Headers are
 * written plain only where this rule finds them again and no other with them.
 */
public final class ComputedHeaders {
  private static final int FEWEST_USUAL = 3;

  private final TreeMap<Integer, ComputedHeader> candidates = new TreeMap<>();
  private final TreeMap<Integer, String> texts;
  private final Map<Integer, ComputedHeader> ours = new HashMap<>();

  /**
   * @param texts the row's texts by column; blank cells left out
   */
  public ComputedHeaders(Map<Integer, String> texts) {
    this.texts = new TreeMap<>(texts);
    for (Map.Entry<Integer, String> cell : this.texts.entrySet()) {
      Optional<ComputedHeader> read = ComputedHeader.read(cell.getValue().strip());
      if (read.isPresent() && read.get().isMarked()) {
        ours.put(cell.getKey(), read.get());
      } else {
        read.ifPresent(header -> candidates.put(cell.getKey(), header));
      }
    }
    if (!candidates.isEmpty()) {
      List<Integer> notes =
          ours.entrySet().stream()
              .filter(e -> e.getValue().column() == ComputedColumn.NOTE)
              .filter(e -> e.getValue().label().isEmpty())
              .map(Map.Entry::getKey)
              .toList();
      notes.forEach(this::takeLeftOfNote);
      takeUsual();
    }
  }

  /** Those of a row of a sheet. */
  public static ComputedHeaders in(Grid grid, int row) {
    return new ComputedHeaders(texts(grid, row));
  }

  /** The texts of a row by column. */
  public static Map<Integer, String> texts(Grid grid, int row) {
    Map<Integer, String> texts = new TreeMap<>();
    int columns = Math.min(grid.columnsUsed(row), Grid.MOST_COLUMNS);
    for (int column = 0; column < columns; column++) {
      if (grid.kind(row, column) != Grid.Kind.BLANK) {
        texts.put(column, grid.text(row, column));
      }
    }
    return texts;
  }

  /** The header of ours in a column. */
  public Optional<ComputedHeader> at(int column) {
    return Optional.ofNullable(ours.get(column));
  }

  /** The columns that are ours. */
  public Set<Integer> columns() {
    return Set.copyOf(ours.keySet());
  }

  private void takeLeftOfNote(int note) {
    List<Integer> found = new ArrayList<>();
    int before = ComputedColumn.NOTE.ordinal();
    Boolean ofRun = null;
    for (int column = note - 1; !isFirst(before) && texts.containsKey(column); column--) {
      if (ours.containsKey(column) && ours.get(column).column() == ComputedColumn.NOTE) {
        return;
      }
      ComputedHeader header = candidates.get(column);
      header =
          header != null && ofRun != null && header.column().isOfRun() != ofRun ? null : header;
      int ordinal = header == null ? before : header.column().ordinal();
      if (header != null && isSpecificGravity(column, before)) {
        ordinal = ComputedColumn.SPECIFIC_GRAVITY.ordinal();
      }
      if (header != null && ordinal < before) {
        found.add(column);
        before = ordinal;
        ofRun = header.column().isOfRun();
      }
    }
    if (isFirst(before)) {
      found.forEach(column -> ours.putIfAbsent(column, candidates.get(column)));
    }
  }

  /** Whether a column is the first that we write. */
  private static boolean isFirst(int ordinal) {
    return ordinal == ComputedColumn.CORRECTED_GRAVITY.ordinal()
        || ordinal == ComputedColumn.TRUE_STRENGTH.ordinal();
  }

  /**
   * SG beside the same on another scale further left: both are corrected readings by their text.
   */
  private boolean isSpecificGravity(int column, int before) {
    ComputedHeader header = candidates.get(column);
    if (header.column() != ComputedColumn.CORRECTED_GRAVITY
        || !header.scale().isPlainGravity()
        || before <= ComputedColumn.SPECIFIC_GRAVITY.ordinal()) {
      return false;
    }
    for (int left = column - 1; texts.containsKey(left); left--) {
      ComputedHeader other = candidates.get(left);
      if (other != null
          && other.column() == ComputedColumn.CORRECTED_GRAVITY
          && !other.scale().isPlainGravity()) {
        return true;
      }
    }
    return false;
  }

  private void takeUsual() {
    List<Integer> run = new ArrayList<>();
    EnumSet<ComputedColumn> seen = EnumSet.noneOf(ComputedColumn.class);
    int last = Integer.MIN_VALUE;
    for (int column : candidates.keySet()) {
      ComputedColumn what = candidates.get(column).column();
      if (!what.byDefault() || ours.containsKey(column)) {
        continue;
      }
      boolean goesOn =
          !run.isEmpty()
              && seen.stream().allMatch(s -> s.ordinal() < what.ordinal())
              && seen.stream().allMatch(s -> s.isOfRun() == what.isOfRun())
              && noBlank(last, column);
      if (!goesOn) {
        takeRun(run);
        seen.clear();
      }
      run.add(column);
      seen.add(what);
      last = column;
    }
    takeRun(run);
  }

  private void takeRun(List<Integer> run) {
    if (run.size() >= FEWEST_USUAL) {
      run.forEach(column -> ours.put(column, candidates.get(column)));
    }
    run.clear();
  }

  private boolean noBlank(int first, int last) {
    return texts.subMap(first, true, last, true).size() == last - first + 1;
  }
}
