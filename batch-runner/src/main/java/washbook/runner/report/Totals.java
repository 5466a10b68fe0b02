package washbook.runner.report;

import java.util.EnumMap;
import java.util.Map;
import washbook.runner.report.FileReport.Status;

/** Counts over all files of a run. */
public final class Totals {
  private final Map<Status, Integer> files = new EnumMap<>(Status.class);
  private int count;
  private long rows;
  private long filled;
  private long refusals;

  public void add(FileReport report) {
    count++;
    files.merge(report.status(), 1, Integer::sum);
    rows += report.rows();
    filled += report.filled();
    refusals += report.refusals().size();
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

  /** As {@code 3 files: 2 filled, 1 failed; 120 of 124 rows filled, 4 refusals.} */
  public String sentence() {
    StringBuilder sentence = new StringBuilder(plural(count, "file"));
    String separator = ": ";
    for (Map.Entry<Status, Integer> entry : files.entrySet()) {
      sentence.append(separator).append(entry.getValue()).append(' ').append(entry.getKey().word());
      separator = ", ";
    }
    return sentence
        .append("; ")
        .append(filled)
        .append(" of ")
        .append(plural(rows, "row"))
        .append(" filled, ")
        .append(plural(refusals, "refusal"))
        .append('.')
        .toString();
  }

  private static String plural(long number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }
}
