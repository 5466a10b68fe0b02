package washbook.log.understand;

import java.util.ArrayList;
import java.util.List;
import washbook.log.Batch;
import washbook.log.LogTable;
import washbook.log.OriginalGravity.FirstReading;
import washbook.log.language.Message;
import washbook.log.reading.HydrometerRows;
import washbook.log.reading.RowTimes;
import washbook.log.sheet.Grid;

/**
 * Tables that begin in the middle of a ferment, where other tables of the sheet end: parted from
 * one, or blended of several. Limits are common practice, no source.
 */
final class PartedTables {
  /** One that begins higher is taken for a fresh wash, SG. */
  private static final double MOST_PARTED = 1.065;

  /** By how much the other's original gravity must be higher, SG. */
  private static final double HIGHER = 0.015;

  /** What a blend may lie above its parts by, SG. */
  private static final double SAME = 0.004;

  /** What it may have lost since their last readings, SG. */
  private static final double SINCE = 0.010;

  /** Days between the last reading of one and the first of the other. */
  private static final double CLOSE = 2;

  /** More tables are not compared with one another. */
  private static final int MOST_TABLES = 40;

  private final Grid grid;
  private final List<LogTable> tables;

  PartedTables(Grid grid, List<LogTable> tables) {
    this.grid = grid;
    this.tables = List.copyOf(tables);
  }

  /** The last reading of a batch. */
  private record End(String batch, double sg) {}

  /** The tables; batches that begin in mid ferment have an unknown original gravity. */
  List<LogTable> withoutTheirStart() {
    if (tables.size() < 2 || tables.size() > MOST_TABLES) {
      return tables;
    }
    List<LogTable> checked = new ArrayList<>();
    for (LogTable table : tables) {
      List<Batch> batches = new ArrayList<>();
      for (Batch batch : table.batches()) {
        batches.add(
            batch.original() instanceof FirstReading first && first.sg() <= MOST_PARTED
                ? checked(table, batch, first)
                : batch);
      }
      checked.add(batches.equals(table.batches()) ? table : table.with(batches));
    }
    return besides(checked);
  }

  /** Tables that begin low on the day when another one is parted hold parts as well. */
  private List<LogTable> besides(List<LogTable> checked) {
    List<LogTable> all = new ArrayList<>();
    for (LogTable table : checked) {
      List<Batch> batches = new ArrayList<>();
      for (Batch batch : table.batches()) {
        batches.add(
            batch.original() instanceof FirstReading first && first.sg() <= MOST_PARTED
                ? beside(table, batch, first, checked)
                : batch);
      }
      all.add(batches.equals(table.batches()) ? table : table.with(batches));
    }
    return List.copyOf(all);
  }

  private Batch beside(LogTable table, Batch batch, FirstReading first, List<LogTable> checked) {
    double day = RowTimes.of(grid, table).days(first.row());
    for (int i = 0; i < checked.size(); i++) {
      LogTable other = tables.get(i);
      for (int j = 0; j < other.batches().size(); j++) {
        Batch before = other.batches().get(j);
        boolean parted = checked.get(i).batches().get(j) != before;
        if (parted
            && before.original() instanceof FirstReading start
            && Math.abs(RowTimes.of(grid, other).days(start.row()) - day) < 1) {
          return batch.withoutOriginal(
              first.cell(),
              Message.of("original.beside", first.cell(), before.name(), batch.name()));
        }
      }
    }
    return batch;
  }

  private Batch checked(LogTable table, Batch batch, FirstReading first) {
    double day = RowTimes.of(grid, table).days(first.row());
    if (Double.isNaN(day)) {
      return batch;
    }
    String stood = stoodSo(table, first, day);
    if (!stood.isEmpty()) {
      return batch.withoutOriginal(
          first.cell(), Message.of("original.parted", first.cell(), stood, batch.name()));
    }
    List<End> ends = endsBefore(table, first, day);
    double lowest = ends.stream().mapToDouble(End::sg).min().orElse(Double.NaN);
    double highest = ends.stream().mapToDouble(End::sg).max().orElse(Double.NaN);
    if (!(first.sg() >= lowest - SINCE && first.sg() <= highest + SAME)) {
      return batch;
    }
    Message why = Message.of("original.parted", first.cell(), ends.get(0).batch(), batch.name());
    return batch.withoutOriginal(first.cell(), why);
  }

  /** A batch of a table above that stood where this one begins, on that very day; "" for none. */
  private String stoodSo(LogTable table, FirstReading first, double day) {
    for (LogTable other : tables) {
      if (other == table || other.firstRow() > table.firstRow()) {
        continue;
      }
      RowTimes times = RowTimes.of(grid, other);
      HydrometerRows reading = new HydrometerRows(grid, other);
      for (Batch batch : other.batches()) {
        if (!(batch.originalGravity().orElse(Double.NaN) >= first.sg() + HIGHER)) {
          continue;
        }
        for (int row : batch.rows()) {
          boolean sameDay = Math.abs(times.days(row) - day) < 1;
          if (sameDay
              && reading.read(row) == HydrometerRows.State.READ
              && Math.abs(reading.asSugarSolution() - first.sg()) <= SAME) {
            return batch.name();
          }
        }
      }
    }
    return "";
  }

  private List<End> endsBefore(LogTable table, FirstReading first, double day) {
    List<End> ends = new ArrayList<>();
    for (LogTable other : tables) {
      if (other == table || other.firstRow() > table.firstRow()) {
        continue;
      }
      RowTimes times = RowTimes.of(grid, other);
      HydrometerRows reading = new HydrometerRows(grid, other);
      for (Batch batch : other.batches()) {
        double original = batch.originalGravity().orElse(Double.NaN);
        int row =
            original >= first.sg() + HIGHER
                ? reading.lastRead(batch.rows(), batch.rows().length - 1)
                : -1;
        if (row >= 0 && Math.abs(times.days(row) - day) <= CLOSE) {
          ends.add(new End(batch.name(), reading.asSugarSolution()));
        }
      }
    }
    return ends;
  }
}
