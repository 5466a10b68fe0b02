package washbook.log.understand;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import washbook.log.Batch;
import washbook.log.Doubts;
import washbook.log.LogColumn;
import washbook.log.LogTable;
import washbook.log.MapAnswer;
import washbook.log.OriginalGravity.FirstReading;
import washbook.log.OriginalGravity.Unknown;
import washbook.log.Role;
import washbook.log.language.Message;
import washbook.log.sheet.Grid;
import washbook.log.words.CellText;
import washbook.log.words.LateWords;

/**
 * Batches that were read only when they had fermented for days: because the log says so, or because
 * it counts the days and begins late. Their first reading is no original gravity. Limits are common
 * practice, no source.
 */
final class LateStart {
  /** One that begins higher on a day of which no date is given may be a fresh one, SG. */
  private static final double MOST_BEGUN = 1.065;

  /** One that begins higher is taken for parts of a fresh must, SG. */
  private static final double MOST_PARTED = 1.060;

  /** The first reading of a log that counts the days is taken before. */
  private static final double LATE_DAY = 3;

  private static final double HOURS = 24;

  /** Rows below a table in which something may be said of it. */
  private static final int LINES_BELOW = 20;

  private final Grid grid;
  private final LogTable table;
  private final Doubts doubts;

  LateStart(Grid grid, LogTable table, Doubts doubts) {
    this.grid = grid;
    this.table = table;
    this.doubts = doubts;
  }

  /**
   * The batches; those that begin late with an unknown original gravity.
   *
   * @param above first row of those that may speak of the table
   * @param topRow first row of its header
   * @param end one past the last row below that may speak of it
   * @param columns first and last column of those above
   */
  List<Batch> without(List<Batch> batches, int above, int topRow, int end, int[] columns) {
    String said = "";
    if (batches.stream().noneMatch(b -> b.original() instanceof Unknown)) {
      said = said(above, topRow, columns, LateWords::in);
      if (said.isEmpty()) {
        int last = Math.min(end, table.lastRow() + LINES_BELOW);
        said = said(table.lastRow() + 1, last, columns, LateWords::in);
      }
    }
    String parted = said(above, topRow, columns, LateWords::sayParted);
    String already = said(above, topRow, columns, LateWords::sayAlready);
    int firstRow =
        batches.stream()
            .filter(b -> b.original() instanceof FirstReading)
            .mapToInt(b -> ((FirstReading) b.original()).row())
            .min()
            .orElse(0);
    for (int row = table.headerRow() + 1; already.isEmpty() && row < firstRow; row++) {
      already = grid.filled(row) == 1 ? said(row, row + 1, columns, LateWords::sayAlready) : "";
    }
    int begun = parted.isEmpty() ? Integer.MAX_VALUE : readTwice(batches);
    boolean inTurn = batches.stream().anyMatch(b -> b.rows()[0] > begun);
    List<Batch> checked = new ArrayList<>();
    for (Batch batch : batches) {
      String cell =
          batch.original() instanceof FirstReading first
              ? said.isEmpty()
                  ? lateCell(
                      first, batch.rows(), inTurn && batch.rows()[0] < begun ? "" : parted, already)
                  : said
              : "";
      if (cell.isEmpty()) {
        checked.add(batch);
        continue;
      }
      doubts.ask(
          cell,
          Message.of("ask.late", batch.name(), cell),
          MapAnswer.like(
              batches.size() == 1
                  ? "original gravity = 1.085 SG"
                  : "original gravity of " + batch.name() + " = 1.085 SG"),
          MapAnswer.of("original gravity = first reading"));
      checked.add(batch.withoutOriginal(cell, Message.of("why.late", cell)));
    }
    return checked;
  }

  /** The first row by which a batch was read twice: what is parted from it comes after it. */
  private static int readTwice(List<Batch> batches) {
    return batches.stream()
        .filter(b -> b.rows().length > 1)
        .mapToInt(b -> b.rows()[1])
        .min()
        .orElse(Integer.MAX_VALUE);
  }

  private String said(int from, int end, int[] columns, Predicate<String> says) {
    for (int row = from; row < end; row++) {
      for (int column = columns[0]; column <= columns[1]; column++) {
        if (grid.kind(row, column) == Grid.Kind.TEXT && says.test(grid.text(row, column))) {
          return grid.address(row, column);
        }
      }
    }
    return "";
  }

  /**
   * The cell by which a batch begins late; "" for none.
   *
   * @param rows of the batch
   * @param parted cell of a line above that tells of parts, "" for none
   * @param already cell of a line above by which it fermented by then, "" for none
   */
  private String lateCell(FirstReading first, int[] rows, String parted, String already) {
    for (int row : rows) {
      if (row == first.row()) {
        break;
      }
      String cell = said(row, row + 1, columns(), LateWords::sayLost);
      if (!cell.isEmpty()) {
        return cell;
      }
    }
    if (first.sg() <= MOST_BEGUN && !already.isEmpty()) {
      return already;
    }
    if (first.sg() <= MOST_PARTED && !parted.isEmpty()) {
      return parted;
    }
    for (int column = table.firstColumn(); column <= table.lastColumn(); column++) {
      if (grid.kind(first.row(), column) == Grid.Kind.TEXT
          && saysLate(grid.text(first.row(), column), first)) {
        return grid.address(first.row(), column);
      }
    }
    for (Role role : List.of(Role.DAY, Role.HOURS)) {
      LogColumn counted = table.column(role).orElse(null);
      double day = counted == null ? Double.NaN : days(first.row(), counted);
      boolean counts = table.column(Role.DATE).isPresent();
      if (day >= LATE_DAY && (counts || first.sg() <= MOST_BEGUN)) {
        return grid.address(first.row(), counted.column());
      }
    }
    return "";
  }

  private int[] columns() {
    return new int[] {table.firstColumn(), table.lastColumn()};
  }

  private static boolean saysLate(String note, FirstReading first) {
    return LateWords.in(note) || first.sg() <= MOST_BEGUN && LateWords.sayAlready(note);
  }

  private double days(int row, LogColumn counted) {
    double value = CellText.plainNumber(grid, row, counted.column());
    return counted.role() == Role.HOURS ? value / HOURS : value;
  }
}
