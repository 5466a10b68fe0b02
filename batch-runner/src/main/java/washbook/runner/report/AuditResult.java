package washbook.runner.report;

import java.util.List;

/**
 * A file's audit and what only this run knows.
 *
 * @param curves for the charts; empty unless they were asked for
 */
public record AuditResult(AuditReport report, List<Curves> curves) {

  /**
   * One batch in one column.
   *
   * @param unit of {@code x}
   * @param axis what is shown, with its unit
   */
  public record Curves(
      String title, String unit, String axis, double[] x, double[] own, double[] ours) {}

  public static AuditResult of(AuditReport report) {
    return new AuditResult(report, List.of());
  }
}
