package washbook.log.fill;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import washbook.functions.Answer.Code;
import washbook.functions.Numbers;
import washbook.log.ComputedColumn;
import washbook.log.LogTable;
import washbook.log.Role;
import washbook.log.StillRun;
import washbook.log.language.Figure;
import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.log.run.JarRows;
import washbook.log.sheet.CellRefusal;
import washbook.log.sheet.Grid;

/**
 * The computed columns of one table of jars. A sum that lacks a jar would be too low without saying
 * so: from a refused jar on the run has no sums and no shares, and a cut that lacks one no mean.
 */
final class ComputedRun implements ComputedCells {
  /** More alcohol than was charged: readings err by less, %. */
  private static final double MOST_SHARE = 103;

  private final StillRun run;
  private final Map<ComputedColumn, double[]> numbers = new EnumMap<>(ComputedColumn.class);
  private final List<CellRefusal> refusals = new ArrayList<>();
  private final Map<Integer, CellRefusal> refusedRows = new HashMap<>();

  /** Rows whose sums lack a jar, with that jar's cell. */
  private final Map<Integer, String> withoutSum = new HashMap<>();

  private final List<Filling.BatchCount> counts = new ArrayList<>();

  ComputedRun(Grid grid, StillRun run) {
    this.run = run;
    int rows = run.table().lastRow() - run.table().firstRow() + 1;
    for (ComputedColumn column : ComputedColumn.values()) {
      if (column.isOfRun()) {
        double[] cells = new double[rows];
        Arrays.fill(cells, Double.NaN);
        numbers.put(column, cells);
      }
    }
    JarRows jars = new JarRows(grid, run);
    run.parts().forEach(part -> fill(jars, part));
  }

  /** Columns that would be blank in all rows: there is no charge, no cut or no head temperature. */
  static void withoutEmpty(StillRun run, Set<ComputedColumn> columns) {
    if (run.parts().stream().allMatch(p -> p.charge().pureAlcohol().isEmpty())) {
      columns.remove(ComputedColumn.CHARGE_SHARE);
    }
    if (run.parts().stream().allMatch(p -> p.cuts().stream().allMatch(String::isEmpty))) {
      columns.remove(ComputedColumn.CUT_STRENGTH);
    }
    if (run.table().column(Role.HEAD_TEMPERATURE).isEmpty()) {
      columns.remove(ComputedColumn.HEAD_STRENGTH);
    }
  }

  private void fill(JarRows jars, StillRun.Part part) {
    double sum = 0;
    double cutPure = 0;
    double cutVolume = 0;
    String missing = "";
    int refused = 0;
    OptionalDouble charged = part.charge().pureAlcohol();
    for (int i = 0; i < part.rows().length; i++) {
      int row = part.rows()[i];
      int at = row - run.table().firstRow();
      boolean read = jars.read(row);
      numbers.get(ComputedColumn.HEAD_STRENGTH)[at] = jars.headStrength;
      numbers.get(ComputedColumn.TRUE_STRENGTH)[at] = jars.trueStrength;
      if (read) {
        numbers.get(ComputedColumn.VOLUME_AT_20)[at] = jars.volumeAt20;
        numbers.get(ComputedColumn.PURE_ALCOHOL)[at] = jars.pureAlcohol;
        if (!missing.isEmpty()) {
          withoutSum.put(row, missing);
        }
      } else {
        refusals.add(jars.refusal);
        refusedRows.put(row, jars.refusal);
        missing = missing.isEmpty() ? jars.refusal.cell() : missing;
        refused++;
      }
      sum += jars.pureAlcohol;
      cutPure += jars.pureAlcohol;
      cutVolume += jars.volumeAt20;
      if (!Double.isNaN(sum)) {
        numbers.get(ComputedColumn.PURE_SUM)[at] = sum;
        if (charged.isPresent()) {
          numbers.get(ComputedColumn.CHARGE_SHARE)[at] = 100 * sum / charged.getAsDouble();
        }
      }
      boolean ends =
          i + 1 == part.rows().length || !part.cuts().get(i + 1).equals(part.cuts().get(i));
      if (ends && !part.cuts().get(i).isEmpty()) {
        numbers.get(ComputedColumn.CUT_STRENGTH)[at] = 100 * cutPure / cutVolume;
      }
      if (ends) {
        cutPure = 0;
        cutVolume = 0;
      }
    }
    checkShare(part);
    int count = part.rows().length;
    counts.add(
        new Filling.BatchCount(
            part.name(), OptionalDouble.empty(), count, count - refused, refused));
  }

  /** More alcohol than the charge held: one of the figures is wrong, so there is no share. */
  private void checkShare(StillRun.Part part) {
    double[] shares = numbers.get(ComputedColumn.CHARGE_SHARE);
    double most =
        Arrays.stream(part.rows())
            .mapToDouble(row -> shares[row - run.table().firstRow()])
            .filter(share -> !Double.isNaN(share))
            .max()
            .orElse(0);
    if (most > MOST_SHARE) {
      for (int row : part.rows()) {
        shares[row - run.table().firstRow()] = Double.NaN;
      }
      refusals.add(
          new CellRefusal(
              part.charge().cell(),
              Code.CONTRADICTION,
              Message.of("run.share", new Figure(Numbers.round(most, 0)))));
    }
  }

  @Override
  public double number(ComputedColumn column, int row) {
    double[] cells = numbers.get(column);
    return cells == null ? Double.NaN : cells[row - run.table().firstRow()];
  }

  @Override
  public String text(ComputedColumn column, int row, Language language) {
    if (column != ComputedColumn.NOTE) {
      return null;
    }
    CellRefusal refusal = refusedRows.get(row);
    String missing = withoutSum.get(row);
    return refusal != null
        ? refusal.cell() + ": " + refusal.reason(language)
        : missing == null ? null : Message.of("run.sum", missing).in(language);
  }

  LogTable table() {
    return run.table();
  }

  /** Rows with a jar, refused ones too. */
  BitSet jars() {
    BitSet rows = new BitSet();
    run.parts().forEach(part -> Arrays.stream(part.rows()).forEach(rows::set));
    return rows;
  }

  int refusedRows() {
    return refusedRows.size();
  }

  boolean hasRefusals() {
    return !refusedRows.isEmpty();
  }

  List<CellRefusal> refusals() {
    return List.copyOf(refusals);
  }

  Filling.TableCount count() {
    return new Filling.TableCount(run.table(), List.copyOf(counts), true);
  }
}
