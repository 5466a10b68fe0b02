package washbook.log.fill;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import washbook.functions.Answer;
import washbook.functions.Answer.Code;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.functions.ferment.Balance;
import washbook.functions.liquid.FermentingWash;
import washbook.functions.liquid.SucroseSolution;
import washbook.functions.liquid.WashKind;
import washbook.functions.quantity.Quantity;
import washbook.log.Batch;
import washbook.log.ComputedColumn;
import washbook.log.LogTable;
import washbook.log.RowStatement;
import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.log.reading.HydrometerRows;
import washbook.log.reading.RiseWatch;
import washbook.log.reading.RowTimes;
import washbook.log.sheet.CellRefusal;
import washbook.log.sheet.Grid;

/**
 * The computed columns of one table. Numbers are kept in one array a column; of a refused row only
 * its number is kept, and its reason is worked out again when it is asked for.
 */
public final class ComputedTable implements ComputedCells {
  /** A higher rise without sugar is another batch or a wrong reading, SG. */
  private static final double LARGEST_RISE = 0.020;

  /** Looked for when a table first wants it: most do not. */
  private static final class PlusMinus {
    static final CatalogueFunction FUNCTION = Catalogue.get("ABVPLUSMINUS");
  }

  private final LogTable table;
  private final WashKind kind;
  private final HydrometerRows reading;
  private final Map<ComputedColumn, double[]> numbers = new EnumMap<>(ComputedColumn.class);
  private final List<Filling.BatchCount> counts = new ArrayList<>();

  /** Row in the upper half, batch in the lower; sorted when all rows are done. */
  private long[] refused = new long[16];

  private int refusedCount;

  /** Rows with a reading, refused ones too. */
  private final BitSet read = new BitSet();

  /** Batches whose readings go up and down as only those of several batches do. */
  private final BitSet mixed = new BitSet();

  /** For each batch the position from which a rise puts its readings in question. */
  private final int[] openFrom;

  /** Rows that such a rise puts in question. */
  private final BitSet open = new BitSet();

  private double gravityNow;
  private final RowTimes order;
  private final String[] states;
  private final boolean ratesWanted;

  public ComputedTable(Grid grid, LogTable table, Set<ComputedColumn> wanted) {
    this.table = table;
    this.kind = table.settings().wash().kind();
    this.reading = new HydrometerRows(grid, table);
    int rows = table.lastRow() - table.firstRow() + 1;
    ratesWanted = wanted.contains(ComputedColumn.RATE);
    states = wanted.contains(ComputedColumn.STATE) ? new String[rows] : null;
    order = ratesWanted || states != null ? RowTimes.of(grid, table) : null;
    for (ComputedColumn column : wanted) {
      if (column.decimals() >= 0) {
        double[] cells = new double[rows];
        Arrays.fill(cells, Double.NaN);
        numbers.put(column, cells);
      }
    }
    openFrom = new int[table.batches().size()];
    for (int i = 0; i < table.batches().size(); i++) {
      counts.add(fill(i, table.batches().get(i)));
    }
    Arrays.sort(refused, 0, refusedCount);
  }

  private Filling.BatchCount fill(int index, Batch batch) {
    int readHere = 0;
    int refusedBefore = refusedCount;
    double originalGravity = Double.NaN;
    double originalExtract = Double.NaN;
    int begun = 0;
    int[] rows = batch.rows();
    double lowest = Double.POSITIVE_INFINITY;
    RiseWatch watch = new RiseWatch();
    ProgressToDate course = order == null ? null : new ProgressToDate();
    for (int position = 0; position < rows.length; position++) {
      int row = rows[position];
      int begunHere = batch.stepsBegun(position, begun);
      if (position == 0 || begunHere != begun) {
        begun = begunHere;
        reading.begin(batch, begun);
        originalGravity = batch.originalGravity(begun).orElse(Double.NaN);
        originalExtract =
            Double.isNaN(originalGravity) ? Double.NaN : SucroseSolution.brix(originalGravity);
        lowest = Double.POSITIVE_INFINITY;
        watch.begin();
      }
      HydrometerRows.State state = reading.read(row);
      if (state == HydrometerRows.State.NOTHING) {
        continue;
      }
      readHere++;
      read.set(row);
      gravityNow = Double.NaN;
      if (state == HydrometerRows.State.REFUSED
          || !compute(row, batch, originalGravity, originalExtract, lowest)) {
        refuse(row, index);
      } else {
        lowest = Math.min(lowest, gravityNow);
        if (course != null) {
          follow(course, row);
        }
      }
      if (!Double.isNaN(gravityNow)) {
        watch.read(position, gravityNow);
      }
    }
    openFrom[index] = watch.openFrom();
    if (watch.isMixed(readHere)) {
      mixed.set(index);
      refuseFrom(index, batch, 0, refusedBefore);
    } else if (openFrom[index] < rows.length) {
      for (int position = openFrom[index]; position < rows.length; position++) {
        open.set(rows[position]);
      }
      refuseFrom(index, batch, openFrom[index], refusedBefore);
    }
    int refusedHere = refusedCount - refusedBefore;
    return new Filling.BatchCount(
        batch.name(), batch.originalGravity(), readHere, readHere - refusedHere, refusedHere);
  }

  private void follow(ProgressToDate course, int row) {
    course.add(order.days(row), gravityNow);
    int at = row - table.firstRow();
    if (ratesWanted) {
      numbers.get(ComputedColumn.RATE)[at] = course.rate();
    }
    if (states != null) {
      states[at] = course.state();
    }
  }

  /** Computes the row just read; false when its gravity does not go with the original one. */
  private boolean compute(
      int row, Batch batch, double originalGravity, double originalExtract, double lowest) {
    if (Double.isNaN(originalGravity)) {
      return false;
    }
    double gravity = corrected(row, batch, originalExtract);
    if (gravity > originalGravity && gravity <= originalGravity + HydrometerRows.SAME) {
      gravity = originalGravity;
    }
    double before =
        gravity <= originalGravity || batch.isFirstReading(row)
            ? Double.NaN
            : reading.beforeFerment(originalGravity);
    double shown = Double.isNaN(before) ? gravity : before;
    if (!Double.isNaN(before)) {
      gravity = originalGravity;
    }
    gravityNow = shown;
    if (shown > lowest + LARGEST_RISE) {
      return false;
    }
    if (!(gravity <= originalGravity && gravity >= Quantity.GRAVITY.min())) {
      return false;
    }
    double trueExtract =
        gravity == originalGravity
            ? originalExtract
            : FermentingWash.trueExtract(originalExtract, gravity, kind);
    if (!(trueExtract >= FermentingWash.LOWEST_TRUE_EXTRACT)) {
      return false;
    }
    Balance balance =
        new Balance(originalExtract, SucroseSolution.brix(gravity), trueExtract, gravity, kind);
    int at = row - table.firstRow();
    numbers.forEach((column, cells) -> cells[at] = value(column, originalGravity, balance));
    put(ComputedColumn.CORRECTED_GRAVITY, at, shown);
    put(ComputedColumn.SPECIFIC_GRAVITY, at, shown);
    if (!OriginalGravityLookUp.isTheFirst(batch, row)) {
      put(ComputedColumn.FIRST_GRAVITY, at, Double.NaN);
    }
    return true;
  }

  private void put(ComputedColumn column, int at, double value) {
    double[] cells = numbers.get(column);
    if (cells != null) {
      cells[at] = value;
    }
  }

  private double corrected(int row, Batch batch, double originalExtract) {
    return batch.isFirstReading(row) ? reading.asSugarSolution() : reading.asWash(originalExtract);
  }

  private static double value(ComputedColumn column, double originalGravity, Balance balance) {
    return switch (column) {
      case CORRECTED_GRAVITY, SPECIFIC_GRAVITY -> balance.gravity();
      case ABV -> balance.percentVolume();
      case APPARENT_ATTENUATION -> balance.apparentAttenuation();
      case REAL_ATTENUATION -> balance.realAttenuation();
      case TRUE_EXTRACT -> balance.trueExtract();
      case SUGAR_LEFT -> balance.sugarLeftGramsPerLitre();
      case PLUS_MINUS -> plusMinus(originalGravity, balance);
      case ORIGINAL_GRAVITY, FIRST_GRAVITY -> originalGravity;
      default -> Double.NaN;
    };
  }

  private static double plusMinus(double originalGravity, Balance balance) {
    Answer answer =
        PlusMinus.FUNCTION.call(
            originalGravity, balance.gravity(), null, null, balance.kind().word());
    return answer instanceof Answer.Number number ? number.value() : Double.NaN;
  }

  /** The text of a cell, null for none. */
  @Override
  public String text(ComputedColumn column, int row, Language language) {
    if (column == ComputedColumn.NOTE) {
      return note(row, language);
    }
    String state =
        column == ComputedColumn.STATE && states != null ? states[row - table.firstRow()] : null;
    return state == null ? null : Message.of("state." + state.replace(' ', '-')).in(language);
  }

  /**
   * Takes back the readings of a batch from a position on.
   *
   * @param firstRefused where the batch's own refusals begin
   */
  private void refuseFrom(int index, Batch batch, int position, int firstRefused) {
    BitSet done = new BitSet();
    for (int i = firstRefused; i < refusedCount; i++) {
      done.set((int) (refused[i] >>> 32));
    }
    for (int i = position; i < batch.rows().length; i++) {
      int row = batch.rows()[i];
      if (!done.get(row) && reading.read(row) == HydrometerRows.State.READ) {
        numbers.values().forEach(cells -> cells[row - table.firstRow()] = Double.NaN);
        if (states != null) {
          states[row - table.firstRow()] = null;
        }
        refuse(row, index);
      }
    }
  }

  private void refuse(int row, int batch) {
    if (refusedCount == refused.length) {
      refused = Arrays.copyOf(refused, refusedCount * 2);
    }
    refused[refusedCount++] = (long) row << 32 | batch;
  }

  private CellRefusal refusal(long key) {
    int row = (int) (key >>> 32);
    Batch batch = table.batches().get((int) key);
    reading.begin(batch);
    if (reading.read(row) == HydrometerRows.State.REFUSED) {
      return reading.refusal;
    }
    if (mixed.get((int) key)) {
      return new CellRefusal(
          reading.cell(row), Code.CONTRADICTION, Message.of("batch.mixed", batch.name()));
    }
    if (open.get(row)) {
      return new CellRefusal(reading.cell(row), Code.CONTRADICTION, askAboutRise((int) key));
    }
    int begun = batch.stepsBegunAt(row);
    reading.begin(batch, begun);
    if (batch.isSlip(begun)) {
      return new CellRefusal(
          reading.cell(row), Code.CONTRADICTION, batch.originalGravityMissing(begun));
    }
    double originalGravity = batch.originalGravity(begun).orElse(Double.NaN);
    if (Double.isNaN(originalGravity)) {
      return new CellRefusal(
          reading.cell(row),
          Code.BLANK,
          Message.of("original.unknown", batch.name(), batch.originalGravityMissing(begun)));
    }
    double gravity = corrected(row, batch, SucroseSolution.brix(originalGravity));
    double before = reading.beforeFerment(originalGravity);
    boolean goesWithOriginal =
        gravity <= originalGravity + HydrometerRows.SAME || !Double.isNaN(before);
    return goesWithOriginal && gravity > Quantity.GRAVITY.min()
        ? new CellRefusal(
            reading.cell(row),
            Code.CONTRADICTION,
            Message.of(
                "batch.rise",
                reading.shown(gravity),
                reading.shownDifference(LARGEST_RISE),
                batch.name()))
        : reading.contradiction(row, originalGravity);
  }

  private Message askAboutRise(int index) {
    Batch batch = table.batches().get(index);
    int row = batch.rows()[openFrom[index]];
    return Message.of(
        "batch.open",
        reading.cell(row),
        batch.name(),
        RowStatement.sugarByTheRise(row),
        RowStatement.batch(row, batch.name() + " B"));
  }

  /** The refusals in the order of rows, made when asked for. */
  List<CellRefusal> refusals() {
    return new AbstractList<>() {
      @Override
      public CellRefusal get(int index) {
        Objects.checkIndex(index, refusedCount);
        return refusal(refused[index]);
      }

      @Override
      public int size() {
        return refusedCount;
      }
    };
  }

  boolean fillsAnyRow() {
    return counts.stream().anyMatch(count -> count.filled() > 0);
  }

  boolean hasRefusals() {
    return refusedCount > 0;
  }

  /** Rows with a reading, refused ones too. */
  BitSet read() {
    return (BitSet) read.clone();
  }

  int refusedRows() {
    return refusedCount;
  }

  /** Why a row was refused, null when it was not. */
  String note(int row, Language language) {
    int at = Arrays.binarySearch(refused, 0, refusedCount, (long) row << 32);
    at = at < 0 ? -at - 1 : at;
    if (at >= refusedCount || (int) (refused[at] >>> 32) != row) {
      return null;
    }
    CellRefusal refusal = refusal(refused[at]);
    return refusal.cell() + ": " + refusal.reason(language);
  }

  @Override
  public double number(ComputedColumn column, int row) {
    double[] cells = numbers.get(column);
    return cells == null ? Double.NaN : cells[row - table.firstRow()];
  }

  /** Whether it was made with that column. */
  public boolean has(ComputedColumn column) {
    return numbers.containsKey(column);
  }

  public Filling.TableCount count() {
    return new Filling.TableCount(table, counts);
  }
}
