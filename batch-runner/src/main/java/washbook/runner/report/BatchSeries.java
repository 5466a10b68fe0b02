package washbook.runner.report;

import com.google.gson.annotations.JsonAdapter;
import java.util.Arrays;
import java.util.stream.Collectors;
import washbook.runner.language.Wording;

/**
 * The course of one batch, for a chart. The names of the components are those of the JSON report.
 *
 * @param batch its name
 * @param unit of the first values: days or readings
 * @param points ascending: time, gravity (SG 20/20), alcohol (% vol), rounded by {@link #rounded};
 *     NaN where refused
 */
public record BatchSeries(
    String batch, String unit, @JsonAdapter(PointsJson.class) double[][] points) {
  /** More points than these cannot be told apart in a chart. */
  public static final int MOST_POINTS = 400;

  /** More charts on one page take a browser very long and nobody looks at them. */
  static final int MOST_CHARTS = 500;

  /** More charts of one sheet than these nobody looks at. */
  public static final int MOST_BATCHES = 50;

  /** How many charts a page has. */
  static String limits(Wording words) {
    return words.say("charts.limits", MOST_BATCHES, MOST_CHARTS);
  }

  /** The unit of the first values as a person reads it. */
  static String unit(String unit, Wording words) {
    return words.say(unit.equals(DAYS) ? "charts.days" : "charts.reading");
  }

  /** What the times are when the log states them. */
  public static final String DAYS = "days since the first reading";

  /** Whether the log states times. */
  public boolean isOverDays() {
    return unit.equals(DAYS);
  }

  /** Whether there is nothing to draw. */
  public boolean isEmpty() {
    return Arrays.stream(points)
        .noneMatch(point -> Double.isFinite(point[1]) || Double.isFinite(point[2]));
  }

  /** Whether a file has more batches on a sheet than are drawn. */
  static boolean leavesOut(FileReport report) {
    return report.tables().stream()
        .collect(
            Collectors.groupingBy(
                FileReport.TableReport::sheet, Collectors.summingInt(t -> t.batches().size())))
        .values()
        .stream()
        .anyMatch(batches -> batches > MOST_BATCHES);
  }

  /** Five decimal places: finer than a chart shows and short in a report. */
  public static double rounded(double value) {
    return Double.isFinite(value) ? Math.rint(value * 1e5) / 1e5 + 0.0 : Double.NaN;
  }

  /** One of a point's values for all points. */
  static double[] values(double[][] points, int index) {
    double[] values = new double[points.length];
    for (int i = 0; i < values.length; i++) {
      values[i] = points[i][index];
    }
    return values;
  }
}
