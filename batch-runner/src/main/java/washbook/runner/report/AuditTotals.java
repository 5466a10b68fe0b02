package washbook.runner.report;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import washbook.runner.report.AuditReport.ColumnReport;
import washbook.runner.report.AuditReport.Status;

/** Counts over all audited files. */
public final class AuditTotals {
  private final Map<Status, Integer> files = new EnumMap<>(Status.class);
  private int count;
  private long compared;
  private long differing;
  private long refusals;
  private ColumnReport worst;
  private String worstPath = "";

  public void add(AuditReport report) {
    count++;
    files.merge(report.status(), 1, Integer::sum);
    compared += report.compared();
    differing += report.differing();
    refusals += report.refusals().size();
    for (ColumnReport column : report.columns()) {
      if (column.comparedWith().startsWith("Alcohol to date")
          && (worst == null || Math.abs(column.largest()) > Math.abs(worst.largest()))) {
        worst = column;
        worstPath = report.path();
      }
    }
  }

  public int count() {
    return count;
  }

  public int count(Status status) {
    return files.getOrDefault(status, 0);
  }

  public long refusals() {
    return refusals;
  }

  /**
   * The totals for programs.
   *
   * @param differing figures that differ by more than 0.1 % vol, or what that means in their unit
   * @param largestAbv the largest difference in alcohol, % vol, own less ours; null without any
   * @param cause the likely cause of that one
   */
  record Total(
      int files,
      long compared,
      long differing,
      Double largestAbv,
      String largestPath,
      String largestCell,
      String cause) {}

  Total total() {
    boolean any = worst != null && worst.compared() > 0;
    return new Total(
        count,
        compared,
        differing,
        any ? worst.largest() : null,
        any ? worstPath : "",
        any ? worst.largestCell() : "",
        any ? worst.cause() : "");
  }

  /** The totals as two sentences. */
  public String sentence() {
    StringBuilder sentence = new StringBuilder();
    sentence.append(count).append(count == 1 ? " file" : " files");
    String separator = ": ";
    for (Map.Entry<Status, Integer> entry : files.entrySet()) {
      sentence.append(separator).append(entry.getValue()).append(' ').append(entry.getKey().word());
      separator = ", ";
    }
    sentence.append("; ").append(compared).append(" figures compared, ").append(differing);
    sentence.append(" differ by more than 0.1 % vol or what that means in their unit.");
    if (worst != null && worst.compared() > 0) {
      sentence.append(
          String.format(
              Locale.ROOT,
              " The largest difference in alcohol is %+.2f %% vol, in %s, %s.",
              worst.largest(),
              worstPath,
              worst.largestCell()));
    }
    return sentence.toString();
  }
}
