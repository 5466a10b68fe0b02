package washbook.log.layout;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import washbook.log.sheet.Grid;

/** Merged cells by place. */
final class MergedAreas {
  /** Areas of more cells than this are known by their rows only up to it. */
  private static final int TALLEST = 5000;

  private final BitSet rows = new BitSet();
  private final Map<Integer, List<Grid.Area>> byRow = new HashMap<>();

  MergedAreas(List<Grid.Area> areas) {
    for (Grid.Area area : areas) {
      int last = Math.min(area.lastRow(), area.firstRow() + TALLEST);
      for (int row = area.firstRow(); row <= last; row++) {
        rows.set(row);
        byRow.computeIfAbsent(row, k -> new java.util.ArrayList<>()).add(area);
      }
    }
  }

  boolean touches(int row) {
    return rows.get(row);
  }

  /** The area that a cell lies in, or null. */
  Grid.Area at(int row, int column) {
    if (!rows.get(row)) {
      return null;
    }
    for (Grid.Area area : byRow.get(row)) {
      if (column >= area.firstColumn() && column <= area.lastColumn()) {
        return area;
      }
    }
    return null;
  }
}
