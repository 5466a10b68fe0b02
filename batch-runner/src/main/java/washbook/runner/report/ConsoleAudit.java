package washbook.runner.report;

import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import washbook.runner.report.AuditReport.BatchReport;
import washbook.runner.report.AuditReport.ColumnReport;
import washbook.runner.report.AuditReport.RowReport;
import washbook.runner.report.AuditReport.Status;
import washbook.runner.report.FileReport.Refusal;

/** The audit as a person at the terminal reads it. */
public final class ConsoleAudit {
  private static final int MOST_ROWS = 10;

  private final PrintStream out;
  private final boolean quiet;
  private int earlierFiles;
  private final AuditTotals totals = new AuditTotals();

  /**
   * @param quiet whether only what differs, is open or failed is said
   */
  public ConsoleAudit(PrintStream out, boolean quiet) {
    this.out = out;
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
            + report.status().word()
            + (report.status() == Status.COMPARED
                ? ", " + report.differing() + " of " + report.compared() + " figures differ"
                : ""));
    for (ColumnReport column : report.columns()) {
      print(column);
    }
    for (Refusal refusal : report.refusals()) {
      String cell = refusal.cell().isEmpty() ? "" : refusal.cell() + ": ";
      out.println("  open: " + cell + refusal.reason());
    }
  }

  /** Prints the totals. */
  public void finish() {
    if (quiet) {
      return;
    }
    if (earlierFiles > 0) {
      out.println(earlierFiles + " of the files were done by an earlier run and have not changed.");
    }
    out.println();
    out.print(ConsoleReport.wrapped(totals.sentence()));
  }

  private void print(ColumnReport column) {
    out.println(
        String.format(
            Locale.ROOT,
            "  %s, column %s against %s: %d of %d differ%s",
            column.sheet(),
            column.header(),
            column.comparedWith(),
            column.differing(),
            column.compared(),
            column.differing() == 0
                ? ""
                : String.format(
                    Locale.ROOT,
                    ", at most by %+.4g (%s)",
                    column.largest(),
                    column.largestCell())));
    if (column.differing() == 0) {
      return;
    }
    out.println("    likely cause: " + column.cause());
    for (BatchReport batch : column.batches()) {
      List<RowReport> rows = batch.rows();
      for (RowReport row : rows.subList(0, Math.min(MOST_ROWS, rows.size()))) {
        out.println(
            String.format(
                Locale.ROOT,
                "    %s, %s: %.5g in the log, %.5g by Washbook, %+.3g",
                batch.name(),
                row.cell(),
                row.own(),
                row.ours(),
                row.difference()));
      }
      if (rows.size() > MOST_ROWS) {
        out.println(
            "    " + batch.name() + ": " + (rows.size() - MOST_ROWS) + " more; --report lists all");
      }
    }
  }
}
