package washbook.runner.report;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import washbook.runner.language.Wording;
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
  public String sentence(Wording words) {
    List<String> each = new ArrayList<>();
    files.forEach((status, of) -> each.add(words.say("totals.each", of, status.said(words))));
    String all = words.count("totals.files", count);
    String first =
        words.say(
            "audit.totals",
            each.isEmpty() ? all : words.say("totals.list", all, String.join(", ", each)),
            compared,
            differing);
    return worst == null || worst.compared() == 0
        ? first
        : first
            + " "
            + words.say(
                "audit.largest",
                words.number("%+.2f", worst.largest()),
                worstPath,
                worst.largestCell());
  }
}
