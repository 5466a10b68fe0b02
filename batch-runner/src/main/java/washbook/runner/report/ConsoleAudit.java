package washbook.runner.report;

import java.io.PrintStream;
import java.util.List;
import washbook.runner.language.Wording;
import washbook.runner.report.AuditReport.BatchReport;
import washbook.runner.report.AuditReport.ColumnReport;
import washbook.runner.report.AuditReport.RowReport;
import washbook.runner.report.AuditReport.Status;
import washbook.runner.report.FileReport.Refusal;

/** The audit as a person at the terminal reads it. */
public final class ConsoleAudit {
  private static final int MOST_ROWS = 10;

  private final PrintStream out;
  private final Wording words;
  private final boolean quiet;
  private int earlierFiles;
  private final AuditTotals totals = new AuditTotals();

  /**
   * @param quiet whether only what differs, is open or failed is said
   */
  public ConsoleAudit(PrintStream out, Wording words, boolean quiet) {
    this.out = out;
    this.words = words;
    this.quiet = quiet;
  }

  public AuditTotals totals() {
    return totals;
  }

  /**
   * Prints one file's audit.
   *
   * @param earlier whether an earlier run made it
   */
  public void add(AuditReport report, boolean earlier) {
    totals.add(report);
    earlierFiles += earlier ? 1 : 0;
    boolean fine = report.status() == Status.COMPARED && report.differing() == 0;
    if (earlier || (quiet && fine && report.refusals().isEmpty())) {
      return;
    }
    out.println(
        report.path()
            + ": "
            + (report.status() == Status.COMPARED
                ? words.say(
                    "audit.differ",
                    report.status().said(words),
                    report.differing(),
                    report.compared())
                : report.status().said(words)));
    for (ColumnReport column : report.columns()) {
      print(column);
    }
    for (Refusal refusal : report.refusals()) {
      String cell = refusal.cell().isEmpty() ? "" : refusal.cell() + ": ";
      out.println("  " + words.say("audit.open", cell + refusal.reason()));
    }
  }

  /** Prints the totals. */
  public void finish() {
    if (quiet) {
      return;
    }
    if (earlierFiles > 0) {
      out.println(words.say("audit.earlier", earlierFiles));
    }
    out.println();
    out.print(ConsoleReport.wrapped(totals.sentence(words)));
  }

  private void print(ColumnReport column) {
    String line =
        words.say(
            "audit.column",
            column.sheet(),
            column.header(),
            AuditReport.comparedWith(column.comparedWith(), words),
            column.differing(),
            column.compared());
    out.println(
        "  "
            + (column.differing() == 0
                ? line
                : words.say(
                    "audit.atMost",
                    line,
                    words.number("%+.4g", column.largest()),
                    column.largestCell())));
    if (column.differing() == 0) {
      return;
    }
    out.println("    " + words.say("audit.cause", column.cause()));
    for (BatchReport batch : column.batches()) {
      List<RowReport> rows = batch.rows();
      for (RowReport row : rows.subList(0, Math.min(MOST_ROWS, rows.size()))) {
        out.println(
            "    "
                + words.say(
                    "audit.row",
                    batch.name(),
                    row.cell(),
                    words.number("%.5g", row.own()),
                    words.number("%.5g", row.ours()),
                    words.number("%+.3g", row.difference())));
      }
      if (rows.size() > MOST_ROWS) {
        out.println("    " + words.say("audit.more", batch.name(), rows.size() - MOST_ROWS));
      }
    }
  }
}
