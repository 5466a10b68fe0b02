package washbook.log.understand;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import washbook.functions.Numbers;
import washbook.log.LogColumn;
import washbook.log.ReadingError;
import washbook.log.Role;
import washbook.log.layout.Header.HeaderCell;
import washbook.log.layout.TableRows;
import washbook.log.sheet.Grid;
import washbook.log.words.CellText;
import washbook.log.words.Concept;
import washbook.log.words.DateText;
import washbook.log.words.ReadingScale;
import washbook.log.words.Vocabulary;

/**
 * The column that names the batches though its header does not say so: the readings of the whole
 * table jump up where its values change, and those of each value do not.
 */
final class BatchColumn {
  /** So many rows a batch has at least, on average. */
  private static final int ROWS_PER_BATCH = 3;

  /** The part of the rows that a column must fill. */
  private static final double FILLED = 0.9;

  private final Grid grid;
  private final TableRows rows;
  private final LogColumn reading;

  BatchColumn(Grid grid, TableRows rows, LogColumn reading) {
    this.grid = grid;
    this.rows = rows;
    this.reading = reading;
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
      if (!namesSeveral(cell.column())) {
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

  /** Whether the values count the readings, one up or down in each row. */
  boolean countsRows(HeaderCell cell) {
    int counted = 0;
    double before = Double.NaN;
    double step = 0;
    for (int row = rows.firstRow(); row <= rows.lastRow(); row++) {
      double value = CellText.plainNumber(grid, row, cell.column());
      if (rows.isSkipped(row) || Double.isNaN(value)) {
        continue;
      }
      double moved = value - before;
      if (!Double.isNaN(moved)) {
        if (Math.abs(moved) != 1 || (step != 0 && moved != step)) {
          return false;
        }
        step = moved;
        counted++;
      }
      before = value;
    }
    return counted >= ROWS_PER_BATCH;
  }

  private static boolean isTime(String text) {
    Set<Concept> meanings = Vocabulary.meanings(text);
    return meanings.contains(Concept.WEEKDAY)
        || meanings.contains(Concept.TIME_OF_DAY)
        || !Double.isNaN(DateText.serial(text, DateText.Order.DAY_FIRST));
  }

  private boolean namesSeveral(int column) {
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
        }
      }
    }
    return filled >= FILLED * readings
        && names.size() >= 2
        && names.size() * ROWS_PER_BATCH <= readings;
  }

  /** How often a reading stands clearly above the one before it of the same name. */
  private int rises(int column) {
    Map<String, Double> last = new HashMap<>();
    int rises = 0;
    for (int row = rows.firstRow(); row <= rows.lastRow(); row++) {
      double gravity = gravity(row);
      if (!Double.isNaN(gravity)) {
        Double before = last.put(column < 0 ? "" : name(row, column), gravity);
        rises += before != null && gravity > before + ReadingError.BEYOND ? 1 : 0;
      }
    }
    return rises;
  }

  private double gravity(int row) {
    if (rows.isSkipped(row) || reading.role() != Role.GRAVITY || reading.unit().isEmpty()) {
      return Double.NaN;
    }
    double value = CellText.number(grid, row, reading.column());
    return value == 0 ? Double.NaN : ReadingScale.of(reading.unit()).toGravity(value);
  }

  private String name(int row, int column) {
    return switch (grid.kind(row, column)) {
      case TEXT -> grid.text(row, column).strip();
      case NUMBER -> Numbers.show(grid.number(row, column));
      default -> "";
    };
  }
}
