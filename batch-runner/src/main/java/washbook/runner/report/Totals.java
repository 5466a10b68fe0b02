package washbook.runner.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import washbook.runner.language.Wording;
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

  /** As {@code 3 files: 2 filled, 1 failed; 120 of 124 rows filled, 4 refused.} */
  public String sentence(Wording words) {
    List<String> each = new ArrayList<>();
    byStatus.forEach((status, of) -> each.add(words.say("totals.each", of[0], status.said(words))));
    String files = words.count("totals.files", count);
    return words.say(
        others() == 0 ? "totals.sentence" : "totals.sentence.remarks",
        each.isEmpty() ? files : words.say("totals.list", files, String.join(", ", each)),
        filled,
        words.count("totals.rows", rows),
        rows - filled,
        words.count("totals.others", others()));
  }

  /** The totals as a table for a terminal. */
  public String table(Wording words) {
    Object[] heads = {
      "",
      words.say("totals.table.files"),
      words.say("totals.table.rows"),
      words.say("totals.table.filled"),
      words.say("totals.table.refused")
    };
    int first =
        byStatus.keySet().stream().mapToInt(s -> s.said(words).length() + 1).max().orElse(0);
    String format =
        "%-"
            + Math.max(20, first)
            + "s"
            + Arrays.stream(heads)
                .skip(1)
                .map(head -> "%" + Math.max(9, head.toString().length() + 1) + "s")
                .collect(Collectors.joining());
    StringBuilder table = new StringBuilder(line(format, heads));
    byStatus.forEach(
        (status, of) -> table.append(line(format, status.said(words), of[0], of[1], of[2], of[3])));
    table.append(line(format, words.say("totals.table.all"), count, rows, filled, rows - filled));
    return others() == 0
        ? table.toString()
        : table
            .append(words.count("totals.remarks", others()))
            .append(System.lineSeparator())
            .toString();
  }

  /** Refusals that are about no row: open questions and files that failed. */
  private long others() {
    return Math.max(0, refusals - (rows - filled));
  }

  private static String line(String format, Object... cells) {
    return String.format(Locale.ROOT, format + "%n", cells);
  }
}
