package washbook.log.layout;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import washbook.log.layout.Header.HeaderCell;
import washbook.log.sheet.Grid;
import washbook.log.words.CellText;
import washbook.log.words.Concept;

/** One sample read several times side by side, with the mean of what was read in a column too. */
public final class Replicates {
  /** Fewer rows do not show that one column is the mean of the others. */
  private static final int FEWEST = 3;

  /** One row in so many may hold replicates that differ more than those of one sample. */
  private static final int SPOILT = 5;

  /** Figures beyond are degrees of sugar or points, not gravities. */
  private static final double HIGHEST_GRAVITY = 2;

  private final Grid grid;
  private final TableRows rows;

  public Replicates(Grid grid, TableRows rows) {
    this.grid = grid;
    this.rows = rows;
  }

  /**
   * The column that is called a mean and is that of all readings, with what their headers mean;
   * empty where none is, or where the readings differ as those of several vessels do.
   */
  public Optional<HeaderCell> mean(List<HeaderCell> readings, List<HeaderCell> others) {
    for (List<HeaderCell> cells : List.of(readings, others)) {
      for (HeaderCell cell : cells) {
        List<HeaderCell> read = readings.stream().filter(c -> c != cell).toList();
        if (cell.meanings().contains(Concept.TOTAL) && read.size() > 1 && isMean(cell, read)) {
          Set<Concept> meanings = EnumSet.copyOf(cell.meanings());
          meanings.addAll(read.get(0).meanings());
          meanings.remove(Concept.TOTAL);
          return Optional.of(new HeaderCell(cell.column(), cell.text(), meanings, cell.role()));
        }
      }
    }
    return Optional.empty();
  }

  private boolean isMean(HeaderCell mean, List<HeaderCell> cells) {
    IntStream read =
        IntStream.rangeClosed(rows.firstRow(), rows.lastRow()).filter(r -> !rows.isSkipped(r));
    Held held = Held.of(grid, read, mean, cells);
    return held.rows >= FEWEST && held.apart * SPOILT <= held.rows;
  }

  /** Whether a column is row by row the mean of others that differ as several vessels do. */
  static boolean isMeanOfSeveral(
      Grid grid, int firstRow, int endRow, HeaderCell mean, List<HeaderCell> cells) {
    IntStream read = IntStream.range(firstRow, Math.min(endRow, grid.rowCount()));
    Held held = Held.of(grid, read, mean, cells);
    return held.rows >= FEWEST && held.apart * SPOILT > held.rows;
  }

  /**
   * In how many rows a column is the mean of others; none where it is not in one.
   *
   * @param apart in how many of them those differ by more than one sample that is read twice
   */
  private record Held(int rows, int apart) {
    static Held of(Grid grid, IntStream rows, HeaderCell mean, List<HeaderCell> cells) {
      int held = 0;
      int apart = 0;
      for (int row : rows.toArray()) {
        double shown = CellText.number(grid, row, mean.column());
        double sum = 0;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (HeaderCell cell : cells) {
          double value = CellText.number(grid, row, cell.column());
          sum += value;
          least = Math.min(least, value);
          most = Math.max(most, value);
        }
        if (Double.isNaN(sum) || Double.isNaN(shown)) {
          continue;
        }
        // What rounding explains.
        boolean gravity = shown < HIGHEST_GRAVITY;
        if (Math.abs(sum / cells.size() - shown) > (gravity ? 0.0006 : 0.06)) {
          return new Held(0, 0);
        }
        held++;
        apart += most - least > (gravity ? 0.003 : shown > 900 ? 3 : 0.6) ? 1 : 0;
      }
      return new Held(held, apart);
    }
  }
}
