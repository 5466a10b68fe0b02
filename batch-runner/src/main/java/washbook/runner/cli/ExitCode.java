package washbook.runner.cli;

import washbook.runner.report.AuditReport;
import washbook.runner.report.AuditTotals;
import washbook.runner.report.FileReport.Status;
import washbook.runner.report.Totals;

/** What the program's exit code says. */
final class ExitCode {
  static final int DONE = 0;

  /** Done, but something was refused; it is listed. */
  static final int REFUSED = 1;

  /** The command line makes no sense. */
  static final int USAGE = 2;

  /** A file could not be read or written. */
  static final int FILE = 3;

  /** Nothing was recognised. */
  static final int NOTHING_RECOGNISED = 4;

  private ExitCode() {}

  /** The worst that happened to the files of a run. */
  static int of(Totals totals) {
    int unrecognised = totals.count(Status.NOTHING_RECOGNISED);
    if (totals.count(Status.FAILED) > 0) {
      return FILE;
    }
    if (unrecognised == totals.count()) {
      return NOTHING_RECOGNISED;
    }
    return totals.refusals() > 0 || unrecognised > 0 ? REFUSED : DONE;
  }

  /** The same for an audit; a difference is a finding, not a refusal. */
  static int of(AuditTotals totals) {
    int unrecognised = totals.count(AuditReport.Status.NOTHING_RECOGNISED);
    if (totals.count(AuditReport.Status.FAILED) > 0) {
      return FILE;
    }
    if (unrecognised == totals.count()) {
      return NOTHING_RECOGNISED;
    }
    return totals.refusals() > 0 || unrecognised > 0 ? REFUSED : DONE;
  }
}
