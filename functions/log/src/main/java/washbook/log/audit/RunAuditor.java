package washbook.log.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import washbook.log.ComputedColumn;
import washbook.log.LogColumn;
import washbook.log.Role;
import washbook.log.StillRun;
import washbook.log.language.Message;
import washbook.log.run.JarRows;
import washbook.log.run.OwnAlcohol;
import washbook.log.run.RunStrengthUnit;
import washbook.log.sheet.Grid;

/**
 * Compares a still run's own columns with ours: strengths at 20 °C, pure alcohol and its sums. The
 * cause is decided by recomputing the column as people do without a correction.
 */
final class RunAuditor {
  /** A cause must leave no more than this share of the difference unexplained. */
  private static final double MOST_LEFT_OVER = 0.4;

  /** Temperatures to which people bring a strength, °C. */
  private static final double[] CALIBRATIONS = {20, 140.0 / 9, 15};

  private final Grid grid;
  private final StillRun run;

  /** The jars of each part, refused ones as null. */
  private final List<List<Jar>> parts = new ArrayList<>();

  /**
   * What is known of one jar.
   *
   * @param volumeAt20 litres
   */
  record Jar(
      int row,
      double readStrength,
      double readLitres,
      double temperatureC,
      double strength,
      double volumeAt20) {
    double pure() {
      return volumeAt20 * strength / 100;
    }
  }

  private RunAuditor(Grid grid, StillRun run) {
    this.grid = grid;
    this.run = run;
    JarRows jars = new JarRows(grid, run);
    for (StillRun.Part part : run.parts()) {
      List<Jar> here = new ArrayList<>();
      for (int row : part.rows()) {
        here.add(
            jars.read(row)
                ? new Jar(
                    row,
                    jars.readStrength,
                    jars.readLitres,
                    jars.temperatureC,
                    jars.trueStrength,
                    jars.volumeAt20)
                : null);
      }
      parts.add(here);
    }
  }

  /** The comparison of each of its own columns that has figures. */
  static List<Audit.Column> audit(Grid grid, StillRun run) {
    List<Audit.Column> columns = new ArrayList<>();
    if (!run.table().settled()) {
      return columns;
    }
    RunAuditor auditor = new RunAuditor(grid, run);
    for (LogColumn use : run.table().columns()) {
      Audit.Column column =
          switch (use.role()) {
            case OWN_TRUE_STRENGTH -> auditor.strengths(use);
            case OWN_PURE_ALCOHOL -> auditor.alcohol(use);
            default -> null;
          };
      if (column != null && column.compared() > 0) {
        columns.add(column);
      }
    }
    return columns;
  }

  private Audit.Column strengths(LogColumn use) {
    double parts = RunStrengthUnit.of(use.unit()).ofPercent(1);
    OwnAlcohol.Scale scale = new OwnAlcohol.Scale(parts, false);
    List<RunWay> ways = new ArrayList<>();
    ways.add(RunWay.right(Jar::strength));
    if (!run.settings().corrected()) {
      ways.add(RunWay.asRead("strengthAsRead", Jar::readStrength));
      RunWay.perDegree(paired(use, scale)).ifPresent(ways::add);
      for (double other : CALIBRATIONS) {
        if (Math.abs(other - run.settings().calibrationC()) > 0.3) {
          ways.add(RunWay.calibrated(other));
        }
      }
    }
    return column(use, ComputedColumn.TRUE_STRENGTH, scale, ways);
  }

  private Audit.Column alcohol(LogColumn use) {
    List<Jar> all = parts.stream().flatMap(List::stream).filter(j -> j != null).toList();
    OwnAlcohol.Scale scale =
        OwnAlcohol.scale(
                grid, use, rows(all), all.stream().mapToDouble(Jar::pure).toArray(), firstRows())
            .orElse(null);
    if (scale == null) {
      return null;
    }
    List<RunWay> ways = new ArrayList<>();
    ways.add(RunWay.right(Jar::pure));
    ways.add(RunWay.asRead("volumesAsRead", jar -> jar.readLitres() * jar.strength() / 100));
    ways.add(RunWay.asRead("strengthAsRead", jar -> jar.volumeAt20() * jar.readStrength() / 100));
    ways.add(RunWay.asRead("asRead", jar -> jar.readLitres() * jar.readStrength() / 100));
    return column(
        use, scale.isSum() ? ComputedColumn.PURE_SUM : ComputedColumn.PURE_ALCOHOL, scale, ways);
  }

  private static int[] rows(List<Jar> jars) {
    return jars.stream().mapToInt(Jar::row).toArray();
  }

  private int[] firstRows() {
    return run.parts().stream().mapToInt(part -> part.rows()[0]).toArray();
  }

  /** The column's own figures with the jars beside them. */
  private List<RunWay.Pair> paired(LogColumn use, OwnAlcohol.Scale scale) {
    List<RunWay.Pair> pairs = new ArrayList<>();
    for (List<Jar> part : parts) {
      for (Jar jar : part) {
        double own = jar == null ? Double.NaN : own(use, scale, jar.row());
        if (!Double.isNaN(own)) {
          pairs.add(new RunWay.Pair(jar, own));
        }
      }
    }
    return pairs;
  }

  private double own(LogColumn use, OwnAlcohol.Scale scale, int row) {
    return OwnAlcohol.figure(grid, use, row) / scale.parts();
  }

  private Audit.Column column(
      LogColumn use, ComputedColumn ours, OwnAlcohol.Scale scale, List<RunWay> ways) {
    double step = OwnAlcohol.step(grid, use, run.table()) / scale.parts();
    List<Audit.Batch> batches = new ArrayList<>();
    double[] left = new double[ways.size()];
    int[] compared = new int[ways.size()];
    for (int i = 0; i < parts.size(); i++) {
      Audit.Batch batch = null;
      for (int w = 0; w < left.length; w++) {
        Audit.Batch made = batch(i, use, scale, ways.get(w).figure(), step);
        left[w] += squares(made);
        compared[w] += made.compared();
        batch = batch == null ? made : batch;
      }
      if (batch != null && batch.compared() > 0) {
        batches.add(batch);
      }
    }
    int count = batches.stream().mapToInt(Audit.Batch::compared).sum();
    boolean agrees = batches.stream().allMatch(b -> b.differing() == 0);
    int best = 0;
    for (int w = 1; w < left.length && !agrees; w++) {
      boolean explains =
          compared[w] == compared[0] && Math.sqrt(left[w]) < MOST_LEFT_OVER * Math.sqrt(left[0]);
      best = explains && left[w] < left[best] ? w : best;
    }
    List<Audit.Cause> causes =
        agrees
            ? List.of(Audit.Cause.AGREES)
            : best == 0 ? List.of(Audit.Cause.UNKNOWN) : List.of(ways.get(best).cause());
    return new Audit.Column(
        run.table().range(),
        use,
        ours,
        List.copyOf(batches),
        causes,
        best == 0 ? Message.NONE : ways.get(best).detail(),
        count == 0 ? 0 : Math.sqrt(left[best] / count));
  }

  private static double squares(Audit.Batch batch) {
    double sum = 0;
    for (int i = 0; i < batch.compared(); i++) {
      double difference = batch.own()[i] - batch.ours()[i];
      sum += difference * difference;
    }
    return sum;
  }

  /** One run against a way to calculate; its sums end at a refused jar. */
  private Audit.Batch batch(
      int part, LogColumn use, OwnAlcohol.Scale scale, ToDoubleFunction<Jar> way, double step) {
    List<Jar> jars = parts.get(part);
    int[] rows = new int[jars.size()];
    double[] own = new double[jars.size()];
    double[] ours = new double[jars.size()];
    int count = 0;
    double sum = 0;
    double litres = 0;
    for (Jar jar : jars) {
      if (jar == null) {
        if (scale.isSum()) {
          break;
        }
        continue;
      }
      double figure = way.applyAsDouble(jar);
      sum += figure;
      litres += scale.isSum() ? jar.volumeAt20() / 2 : jar.volumeAt20() / jars.size();
      double shown = own(use, scale, jar.row());
      if (!Double.isNaN(shown) && !Double.isNaN(figure)) {
        rows[count] = jar.row();
        own[count] = shown;
        ours[count++] = scale.isSum() ? sum : figure;
      }
    }
    double limit = LogAuditor.LIMIT_PERCENT_VOL;
    double[] days = new double[count];
    Arrays.fill(days, Double.NaN);
    return new Audit.Batch(
        run.parts().get(part).name(),
        Arrays.copyOf(rows, count),
        days,
        Arrays.copyOf(own, count),
        Arrays.copyOf(ours, count),
        (use.role() == Role.OWN_TRUE_STRENGTH ? limit : limit / 100 * litres) + step / 2);
  }
}
