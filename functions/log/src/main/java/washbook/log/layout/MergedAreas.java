package washbook.log.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.TreeMap;
import washbook.log.sheet.Grid;

/**
 * Merged cells by place. No two areas of an honest sheet overlap; of those that do the upper one
 * counts, then the left one. Making it takes n log n steps for n areas, however tall they are.
 */
final class MergedAreas {
  /** Areas of more rows than this are known by their rows only up to it. */
  private static final int TALLEST = 5000;

  /** None overlaps another; by their first rows. */
  private final List<Grid.Area> areas = new ArrayList<>();

  /** A tree over the areas: node n holds the largest last row of its children 2n and 2n + 1. */
  private final int[] lastRows;

  private final int leaves;

  /** What was looked up last: the areas that touch a row, by their first columns. */
  private int lookedUp = -1;

  private final TreeMap<Integer, Grid.Area> inRow = new TreeMap<>();

  MergedAreas(List<Grid.Area> given) {
    List<Grid.Area> sorted = new ArrayList<>(given);
    if (sorted.size() > 1) {
      sorted.sort(
          Comparator.comparingInt(Grid.Area::firstRow).thenComparingInt(Grid.Area::firstColumn));
    }
    TreeMap<Integer, Grid.Area> open = new TreeMap<>();
    PriorityQueue<Grid.Area> ends =
        new PriorityQueue<>((a, b) -> Integer.compare(last(a), last(b)));
    for (Grid.Area area : sorted) {
      while (!ends.isEmpty() && last(ends.peek()) < area.firstRow()) {
        open.remove(ends.remove().firstColumn());
      }
      Map.Entry<Integer, Grid.Area> left = open.floorEntry(area.lastColumn());
      if (left == null || left.getValue().lastColumn() < area.firstColumn()) {
        open.put(area.firstColumn(), area);
        ends.add(area);
        areas.add(area);
      }
    }
    leaves = Math.max(1, Integer.highestOneBit(Math.max(1, areas.size() - 1)) * 2);
    lastRows = new int[2 * leaves];
    for (int i = 0; i < leaves; i++) {
      lastRows[leaves + i] = i < areas.size() ? last(areas.get(i)) : -1;
    }
    for (int i = leaves - 1; i > 0; i--) {
      lastRows[i] = Math.max(lastRows[2 * i], lastRows[2 * i + 1]);
    }
  }

  boolean touches(int row) {
    return !in(row).isEmpty();
  }

  /** The area that a cell lies in, or null. */
  Grid.Area at(int row, int column) {
    Map.Entry<Integer, Grid.Area> left = in(row).floorEntry(column);
    return left != null && column <= left.getValue().lastColumn() ? left.getValue() : null;
  }

  /** The areas that touch a row; rows are mostly asked for in turn. */
  private TreeMap<Integer, Grid.Area> in(int row) {
    if (row != lookedUp) {
      lookedUp = row;
      inRow.clear();
      collect(1, 0, leaves, row);
    }
    return inRow;
  }

  private void collect(int node, int from, int size, int row) {
    if (from >= areas.size() || lastRows[node] < row || areas.get(from).firstRow() > row) {
      return;
    }
    if (size == 1) {
      inRow.put(areas.get(from).firstColumn(), areas.get(from));
      return;
    }
    collect(2 * node, from, size / 2, row);
    collect(2 * node + 1, from + size / 2, size / 2, row);
  }

  private static int last(Grid.Area area) {
    return Math.min(area.lastRow(), area.firstRow() + TALLEST);
  }
}
