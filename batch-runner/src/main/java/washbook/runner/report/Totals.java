package washbook.runner.report;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import washbook.runner.report.FileReport.Status;

/** Counts over all files of a run. */
public final class Totals {
  /** Files, rows, filled and refused rows. */
  private final Map<Status, long[]> byStatus = new EnumMap<>(Status.class);

  private int count;
  private long rows;
  private long filled;
  private long refusals;

  public void add(FileReport report) {
    long[] of = byStatus.computeIfAbsent(report.status(), status -> new long[4]);
    of[0]++;
    of[1] += report.rows();
    of[2] += report.filled();
    of[3] += report.rows() - report.filled();
    count++;
    rows += report.rows();
    filled += report.filled();
    refusals += report.refusals().size();
  }

  public int count() {
    return count;
  }

  public int count(Status status) {
    return byStatus.containsKey(status) ? (int) byStatus.get(status)[0] : 0;
  }

  public long refusals() {
    return refusals;
  }

  /** As {@code 3 files: 2 filled, 1 failed; 120 of 124 rows filled, 4 refusals.} */
  public String sentence() {
    StringBuilder sentence = new StringBuilder(plural(count, "file"));
    String separator = ": ";
    for (Map.Entry<Status, long[]> entry : byStatus.entrySet()) {
      sentence.append(separator).append(entry.getValue()[0]).append(' ');
      sentence.append(entry.getKey().word());
      separator = ", ";
    }
    return sentence
        .append("; ")
        .append(filled)
        .append(" of ")
        .append(plural(rows, "row"))
        .append(" filled, ")
        .append(rows - filled)
        .append(" refused")
        .append(others() == 0 ? "" : "; " + plural(others(), "other remark"))
        .append('.')
        .toString();
  }

  /** The totals as a table for a terminal. */
  public String table() {
    StringBuilder table = new StringBuilder(line("", "files", "rows", "filled", "refused"));
    byStatus.forEach((status, of) -> table.append(line(status.word(), of[0], of[1], of[2], of[3])));
    table.append(line("all", count, rows, filled, rows - filled));
    return others() == 0
        ? table.toString()
        : table
            .append(String.format("and %s about files and tables%n", plural(others(), "remark")))
            .toString();
  }

  /** Refusals that are about no row: open questions and files that failed. */
  private long others() {
    return Math.max(0, refusals - (rows - filled));
  }

  private static String line(Object... cells) {
    return String.format(Locale.ROOT, "%-20s%9s%9s%9s%9s%n", cells);
  }

  private static String plural(long number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }
}
