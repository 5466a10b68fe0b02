package washbook.log.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import washbook.functions.scale.PotentialAlcohol;
import washbook.log.Batch;
import washbook.log.ComputedColumn;
import washbook.log.LogColumn;
import washbook.log.LogTable;
import washbook.log.OriginalGravity.FirstReading;
import washbook.log.Role;
import washbook.log.Understanding;
import washbook.log.fill.ComputedTable;
import washbook.log.language.Message;
import washbook.log.reading.HydrometerRows;
import washbook.log.reading.RowTimes;
import washbook.log.sheet.Grid;
import washbook.log.words.CellText;
import washbook.log.words.ReadingScale;

/**
 * Compares a log's own columns with ours. The cause is decided by recomputing the whole column in
 * every way that people use, and seeing which fits best.
 */
public final class LogAuditor {
  /** Difference of alcohol that counts, % vol. */
  public static final double LIMIT_PERCENT_VOL = 0.1;

  /** 0.1 % vol as a difference of gravity: 131.25 % vol go with 1; common practice, no source. */
  private static final double LIMIT_GRAVITY = LIMIT_PERCENT_VOL / 131.25;

  /** A cause must leave no more than this share of the difference unexplained. */
  private static final double MOST_LEFT_OVER = 0.4;

  private static final Map<Role, ComputedColumn> COMPARED =
      Map.of(
          Role.OWN_CORRECTED_GRAVITY, ComputedColumn.CORRECTED_GRAVITY,
          Role.OWN_ABV, ComputedColumn.ABV,
          Role.OWN_APPARENT_ATTENUATION, ComputedColumn.APPARENT_ATTENUATION,
          Role.OWN_REAL_ATTENUATION, ComputedColumn.REAL_ATTENUATION);

  private LogAuditor() {}

  /** Compares every own column of every table and every still run that is understood. */
  public static Audit audit(Grid sheet, Understanding understanding) {
    Grid grid = understanding.seen(sheet);
    List<Audit.Column> columns = new ArrayList<>();
    for (LogTable table : understanding.tables()) {
      if (!table.settled()) {
        continue;
      }
      ComputedTable fill = null;
      for (LogColumn use : table.columns()) {
        ComputedColumn ours = COMPARED.get(use.role());
        if (ours == null) {
          continue;
        }
        if (fill == null) {
          fill = new ComputedTable(grid, table, EnumSet.copyOf(COMPARED.values()));
        }
        Audit.Column column = new ColumnAudit(grid, table, use, ours, fill).make();
        if (column.compared() > 0) {
          columns.add(column);
        }
      }
    }
    understanding.runs().forEach(run -> columns.addAll(RunAuditor.audit(grid, run)));
    return new Audit(understanding.sheet(), List.copyOf(columns));
  }

  /** The comparison of one column. */
  private static final class ColumnAudit {
    private final Grid grid;
    private final LogTable table;
    private final LogColumn use;
    private final ComputedColumn ours;
    private final ComputedTable fill;
    private final List<AuditRow> rows = new ArrayList<>();
    private final List<Double> figures = new ArrayList<>();

    ColumnAudit(Grid grid, LogTable table, LogColumn use, ComputedColumn ours, ComputedTable fill) {
      this.grid = grid;
      this.table = table;
      this.use = use;
      this.ours = ours;
      this.fill = fill;
    }

    Audit.Column make() {
      RowTimes order = RowTimes.of(grid, table);
      double factor = isShare() ? 100 : 1;
      List<Audit.Batch> batches = new ArrayList<>();
      for (Batch batch : table.batches()) {
        Audit.Batch compared = compare(batch, order, factor);
        if (compared.compared() > 0) {
          batches.add(compared);
        }
      }
      boolean agrees = batches.stream().allMatch(b -> b.differing() == 0);
      WayOfCalculating best = agrees ? null : best();
      Set<Audit.Cause> causes = best == null ? Set.of() : best.causes();
      return new Audit.Column(
          table.range(),
          use,
          ours,
          List.copyOf(batches),
          causes.isEmpty()
              ? List.of(agrees ? Audit.Cause.AGREES : Audit.Cause.UNKNOWN)
              : List.copyOf(causes),
          best == null ? Message.NONE : best.detail(),
          best == null
              ? leftOver(WayOfCalculating.of(ours, calibration()).get(0))
              : leftOver(best));
    }

    private double calibration() {
      return table.settings().calibrationC();
    }

    /** Percentages kept as shares: 0.064 shown as 6.4 %. */
    private boolean isShare() {
      if (ours == ComputedColumn.CORRECTED_GRAVITY) {
        return false;
      }
      double largest = 0;
      double largestOurs = 0;
      for (int row = table.firstRow(); row <= table.lastRow(); row++) {
        double own = CellText.plainNumber(grid, row, use.column());
        double number = fill.number(ours, row);
        if (!Double.isNaN(own) && !Double.isNaN(number)) {
          largest = Math.max(largest, Math.abs(own));
          largestOurs = Math.max(largestOurs, number);
        }
      }
      return largest > 0 && largest <= 1.5 && largestOurs > 20 * largest;
    }

    private Audit.Batch compare(Batch batch, RowTimes order, double factor) {
      HydrometerRows reading = new HydrometerRows(grid, table);
      reading.begin(batch);
      double originalReading = batch.originalGravity().orElse(Double.NaN);
      double originalTemperature = Double.NaN;
      if (batch.original() instanceof FirstReading first
          && reading.read(first.row()) == HydrometerRows.State.READ
          && !reading.byRefractometer()) {
        originalReading = reading.gravity;
        originalTemperature = reading.temperatureC;
      }
      double unfed = batch.original().gravity().orElse(Double.NaN);
      int count = 0;
      int size = batch.rows().length;
      int[] at = new int[size];
      double[] days = new double[size];
      double[] own = new double[size];
      double[] right = new double[size];
      int begun = 0;
      for (int position = 0; position < size; position++) {
        int row = batch.rows()[position];
        begun = batch.stepsBegun(position, begun);
        double number = fill.number(ours, row);
        double figure = own(row) * factor;
        if (Double.isNaN(number) || Double.isNaN(figure)) {
          continue;
        }
        at[count] = row;
        days[count] = order.days(row);
        own[count] = figure;
        right[count++] = number;
        if (reading.read(row) == HydrometerRows.State.READ && !reading.byRefractometer()) {
          figures.add(figure);
          rows.add(
              new AuditRow(
                  reading.gravity,
                  reading.temperatureC,
                  originalReading,
                  originalTemperature,
                  batch.originalGravity(begun).orElse(Double.NaN),
                  unfed,
                  fill.number(ComputedColumn.CORRECTED_GRAVITY, row),
                  table.settings().offset()));
        }
      }
      return new Audit.Batch(
          batch.name(),
          Arrays.copyOf(at, count),
          Arrays.copyOf(days, count),
          Arrays.copyOf(own, count),
          Arrays.copyOf(right, count),
          limit(batch));
    }

    /** 0.1 % vol in the unit of this column. */
    private double limit(Batch batch) {
      return switch (ours) {
        case ABV -> LIMIT_PERCENT_VOL;
        case CORRECTED_GRAVITY -> LIMIT_GRAVITY;
        default ->
            100
                * LIMIT_PERCENT_VOL
                / PotentialAlcohol.model(batch.originalGravity().orElse(Double.NaN));
      };
    }

    private double own(int row) {
      double value = CellText.plainNumber(grid, row, use.column());
      if (Double.isNaN(value) && grid.kind(row, use.column()) == Grid.Kind.TEXT) {
        CellText cell = CellText.read(grid.text(row, use.column()).replace("%", "").strip());
        value = cell.form == CellText.Form.VALUE ? cell.value : Double.NaN;
      }
      if (ours != ComputedColumn.CORRECTED_GRAVITY || Double.isNaN(value)) {
        return value;
      }
      if (value == 0) {
        return Double.NaN;
      }
      return ReadingScale.of(use.unit()).toGravity(value);
    }

    /** The way that leaves least over; a simpler one when it is nearly as good. */
    private WayOfCalculating best() {
      List<WayOfCalculating> all = WayOfCalculating.of(ours, calibration());
      double right = leftOver(all.get(0));
      double noise = limit(table.batches().get(0)) / 20;
      WayOfCalculating best = null;
      double least = MOST_LEFT_OVER * right;
      for (WayOfCalculating one : all) {
        double left = one.causes().isEmpty() ? Double.NaN : leftOver(one);
        boolean more = best != null && one.causes().size() > best.causes().size();
        if (left < (more ? Math.min(0.5 * least, least - noise) : least - 1e-9)) {
          least = left;
          best = one;
        }
      }
      return ours == ComputedColumn.ABV ? measured(best, least, noise) : best;
    }

    /** A multiplier measured from the figures, where the usual ones fit clearly worse. */
    private WayOfCalculating measured(WayOfCalculating usual, double usualLeft, double noise) {
      WayOfCalculating best = usual;
      double least = usualLeft;
      for (WayOfCalculating one : WayOfCalculating.measured(rows, figures, calibration())) {
        double left = leftOver(one);
        boolean more = best != null && one.causes().size() > best.causes().size();
        if (left < (more ? Math.min(0.5 * least, least - noise) : least - noise)) {
          least = left;
          best = one;
        }
      }
      return best;
    }

    /** Root mean square of own less recomputed. */
    private double leftOver(WayOfCalculating way) {
      double sum = 0;
      int count = 0;
      int lost = 0;
      for (int i = 0; i < rows.size(); i++) {
        double figure = way.figure().applyAsDouble(rows.get(i));
        if (Double.isNaN(figure)) {
          lost++;
        } else {
          double left = figures.get(i) - figure;
          sum += left * left;
          count++;
        }
      }
      return count <= lost ? Double.NaN : Math.sqrt(sum / count);
    }
  }
}
