package washbook.log.understand;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import washbook.functions.Numbers;
import washbook.log.Batch;
import washbook.log.Doubts;
import washbook.log.LogTable;
import washbook.log.MapAnswer;
import washbook.log.OriginalGravity.FirstReading;
import washbook.log.OriginalGravity.Stated;
import washbook.log.Role;
import washbook.log.language.Figure;
import washbook.log.language.Message;
import washbook.log.reading.HydrometerRows;
import washbook.log.reading.RowTimes;
import washbook.log.sheet.Grid;
import washbook.log.words.Concept;
import washbook.log.words.LateWords;
import washbook.log.words.Vocabulary;

/**
 * Batches that begin in the middle of a ferment: parted from another, blended, or noted too late.
 * Their first reading is no original gravity; which it was must be stated. Limits are common
 * practice, no source.
 */
final class PartedBatches {
  /** Hardly any wash begins lower, SG. */
  private static final double LEAST_START = 1.025;

  /** One that begins higher is taken for a fresh wash, SG. */
  private static final double MOST_PARTED = 1.065;

  /** One that begins higher while the other goes on is taken for a fresh wash, SG. */
  private static final double MOST_BESIDE = 1.045;

  /** Two vessels of one wash do not differ by more, SG. */
  private static final double SAME = 0.004;

  /** One begun on the day when the other ends, with something put in, may differ by more, SG. */
  private static final double NEAR = 0.015;

  /** The part of its extract that the other batch has lost by then. */
  private static final double LOST = 0.3;

  /** Days between what a note tells and the first reading of what it tells of. */
  private static final double DAYS_TOLD = 7;

  /** What a note tells of begins no higher, SG. */
  private static final double MOST_TOLD = 1.120;

  /** More batches are not compared with one another: none is parted from so many. */
  private static final int MOST_BATCHES = 300;

  private final Grid grid;
  private final LogTable table;
  private final RowTimes order;
  private final Doubts doubts;

  PartedBatches(Grid grid, LogTable table, RowTimes order, Doubts doubts) {
    this.grid = grid;
    this.table = table;
    this.order = order;
    this.doubts = doubts;
  }

  /** The batches, those that begin in mid ferment with an unknown original gravity. */
  List<Batch> withoutTheirStart(List<Batch> batches) {
    List<Batch> checked = new ArrayList<>();
    for (Batch batch : batches) {
      checked.add(
          batch.original() instanceof FirstReading first
              ? checked(batch, first, batches)
              : sharedByPart(batch, batches));
    }
    return besides(batches, checked);
  }

  /** A part under the one original gravity that is stated for all: something may have gone in. */
  private Batch sharedByPart(Batch batch, List<Batch> batches) {
    if (batches.size() > MOST_BATCHES) {
      return batch;
    }
    boolean shared =
        batch.original() instanceof Stated stated
            && !stated.cell().isEmpty()
            && table.column(Role.ORIGINAL_GRAVITY).isEmpty()
            && batches.stream()
                .anyMatch(
                    b ->
                        b != batch
                            && b.original() instanceof Stated other
                            && other.cell().equals(stated.cell()));
    HydrometerRows reading = new HydrometerRows(grid, table);
    int first = shared ? firstRead(reading, batch) : -1;
    if (first < 0) {
      return batch;
    }
    FirstReading start = new FirstReading(reading.asSugarSolution(), reading.cell(first), first);
    Batch told = toldApart(batch, start, order.days(first), batches);
    return told == null ? batch : parted(batch, start, told);
  }

  private static int firstRead(HydrometerRows reading, Batch batch) {
    for (int row : batch.rows()) {
      if (isReading(reading, row)) {
        return row;
      }
    }
    return -1;
  }

  /** Batches that begin low on the day when another one is parted are parts as well. */
  private List<Batch> besides(List<Batch> batches, List<Batch> checked) {
    if (batches.size() > MOST_BATCHES) {
      return checked;
    }
    List<Batch> all = new ArrayList<>();
    for (int i = 0; i < batches.size(); i++) {
      Batch batch = checked.get(i);
      if (batch.original() instanceof FirstReading first && first.sg() <= MOST_PARTED) {
        for (int j = 0; j < batches.size(); j++) {
          if (checked.get(j) != batches.get(j)
              && batches.get(j).original() instanceof FirstReading other
              && other.sg() >= LEAST_START
              && Math.abs(order.days(first.row()) - order.days(other.row())) < 1) {
            batch =
                batch.withoutOriginal(
                    first.cell(),
                    Message.of(
                        "original.beside", first.cell(), batches.get(j).name(), batch.name()));
          }
        }
      }
      all.add(batch);
    }
    return all;
  }

  private Batch checked(Batch batch, FirstReading first, List<Batch> batches) {
    double day = order.days(first.row());
    boolean compared = !Double.isNaN(day) && batches.size() <= MOST_BATCHES;
    Batch told = compared && first.sg() <= MOST_TOLD ? toldApart(batch, first, day, batches) : null;
    if (told != null) {
      return parted(batch, first, told);
    }
    if (first.sg() < LEAST_START) {
      return batch.withoutOriginal(
          first.cell(),
          Message.of(
              "original.low",
              new Figure(String.format(Locale.ROOT, "%.4f", first.sg())),
              first.cell(),
              batch.name()));
    }
    if (!compared) {
      return batch;
    }
    for (Batch other : batches) {
      if (other != batch && stoodSo(other, first, day)) {
        return parted(batch, first, other);
      }
    }
    return first.sg() > MOST_PARTED ? batch : blended(batch, first, day, batches);
  }

  /**
   * The batch of which a note says, shortly before this one begins, that it was parted; or null.
   */
  private Batch toldApart(Batch batch, FirstReading first, double day, List<Batch> batches) {
    for (Batch other : batches) {
      double original = begun(other);
      if (other == batch || !(original > first.sg() + SAME)) {
        continue;
      }
      boolean ofItself = tellsOfParts(first.row()) && other.rows()[0] < first.row();
      if (ofItself && lastDay(new HydrometerRows(grid, table), other.rows()) >= day - DAYS_TOLD) {
        return other;
      }
      for (int row : other.rows()) {
        double since = day - order.days(row);
        if (since >= 0 && since <= DAYS_TOLD && row != other.rows()[0] && tellsOfParts(row)) {
          return other;
        }
      }
    }
    return null;
  }

  /** Whether a note of a row, also one right of the table, says that something was parted. */
  private boolean tellsOfParts(int row) {
    for (int column = table.firstColumn(); column <= table.lastColumn() + 2; column++) {
      if (grid.kind(row, column) == Grid.Kind.TEXT && LateWords.sayParted(grid.text(row, column))) {
        return true;
      }
    }
    return false;
  }

  private static String stated(Batch batch, String gravity) {
    return "original gravity of " + batch.name() + " = " + gravity + " SG";
  }

  /** What a batch began with, also where nobody knows what was put in later; SG, or NaN. */
  private static double begun(Batch batch) {
    return batch.original() instanceof FirstReading first
        ? first.sg()
        : batch.originalGravity().orElse(Double.NaN);
  }

  private Batch parted(Batch batch, FirstReading first, Batch other) {
    double original = begun(other);
    List<MapAnswer> answers = new ArrayList<>();
    if (!Double.isNaN(original)) {
      answers.add(
          MapAnswer.of(stated(batch, Numbers.round(original, 4)))
              .with(Message.of("answer.nothingElse")));
    }
    answers.add(MapAnswer.like(stated(batch, "1.085")));
    doubts.ask(
        first.cell(),
        Message.of("ask.parted", batch.name(), other.name(), first.cell()),
        answers.toArray(MapAnswer[]::new));
    return batch.withoutOriginal(
        first.cell(), Message.of("original.parted", first.cell(), other.name(), batch.name()));
  }

  /** One that begins when several end, between their last readings, was put together of them. */
  private Batch blended(Batch batch, FirstReading first, double day, List<Batch> batches) {
    HydrometerRows reading = new HydrometerRows(grid, table);
    Batch highest = null;
    int ends = 0;
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Batch other : batches) {
      int row = other == batch ? -1 : reading.lastRead(other.rows(), other.rows().length - 1);
      double original = begun(other);
      if (row < 0 || !(Math.abs(order.days(row) - day) <= 1) || !(original > first.sg() + NEAR)) {
        continue;
      }
      double end = reading.asSugarSolution();
      highest = end > high ? other : highest;
      high = Math.max(high, end);
      low = Math.min(low, end);
      ends++;
    }
    boolean between = low <= first.sg() + SAME && high >= first.sg() - SAME;
    boolean called = Vocabulary.meanings(batch.name()).contains(Concept.BLENDED);
    return ends >= 2 && between || ends > 0 && called ? parted(batch, first, highest) : batch;
  }

  /** Whether another batch had fallen to the first reading of this one when it was taken. */
  private boolean stoodSo(Batch other, FirstReading first, double day) {
    double original = begun(other);
    if (!(original - first.sg() > LOST * (original - 1))) {
      return false;
    }
    HydrometerRows reading = new HydrometerRows(grid, table);
    int[] rows = other.rows();
    int later = 0;
    while (later < rows.length && !(isLater(rows[later], day) && isReading(reading, rows[later]))) {
      later++;
    }
    double before = last(reading, rows, later - 1);
    if (later == rows.length) {
      return Math.abs(before - first.sg()) <= SAME && lastDay(reading, rows) >= day - DAYS_TOLD
          || first.sg() <= MOST_BESIDE
              && Math.abs(before - first.sg()) <= NEAR
              && lastDay(reading, rows) >= day - 1;
    }
    return first.sg() <= MOST_BESIDE
        && before >= first.sg() - SAME
        && last(reading, rows, later) <= first.sg() + SAME;
  }

  private double lastDay(HydrometerRows reading, int[] rows) {
    int row = reading.lastRead(rows, rows.length - 1);
    return row < 0 ? Double.NaN : order.days(row);
  }

  private boolean isLater(int row, double day) {
    return !(order.days(row) <= day);
  }

  private static boolean isReading(HydrometerRows reading, int row) {
    return reading.read(row) == HydrometerRows.State.READ;
  }

  /** The last reading up to a position; NaN where there is none. */
  private static double last(HydrometerRows reading, int[] rows, int position) {
    return reading.lastRead(rows, position) < 0 ? Double.NaN : reading.asSugarSolution();
  }
}
