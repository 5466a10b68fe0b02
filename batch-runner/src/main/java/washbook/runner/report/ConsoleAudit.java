package washbook.runner.report;

import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import washbook.functions.SafetyNote;
import washbook.runner.report.AuditReport.BatchReport;
import washbook.runner.report.AuditReport.ColumnReport;
import washbook.runner.report.AuditReport.RowReport;
import washbook.runner.report.AuditReport.Status;
import washbook.runner.report.FileReport.Refusal;

/** The audit as a person at the terminal reads it. */
public final class ConsoleAudit {
  private static final int MOST_ROWS = 10;

  private final PrintStream out;
  private final AuditTotals totals = new AuditTotals();

  public ConsoleAudit(PrintStream out) {
    this.out = out;
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
    out.println(
        report.path()
            + ": "
            + report.status().word()
            + (report.status() == Status.COMPARED
                ? ", " + report.differing() + " of " + report.compared() + " figures differ"
                : "")
            + (earlier ? " (done by an earlier run)" : ""));
    if (earlier) {
      return;
    }
    for (ColumnReport column : report.columns()) {
      print(column);
    }
    for (Refusal refusal : report.refusals()) {
      String cell = refusal.cell().isEmpty() ? "" : refusal.cell() + ": ";
      out.println("  open: " + cell + refusal.reason());
    }
  }

  /** Prints the totals and the caution. */
  public void finish() {
    out.println();
    out.print(ConsoleReport.wrapped(totals.sentence()));
    out.println();
    out.print(ConsoleReport.wrapped(SafetyNote.text()));
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
