package washbook.runner.report;

import java.io.PrintStream;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import washbook.functions.Numbers;
import washbook.runner.report.FileReport.BatchReport;
import washbook.runner.report.FileReport.Refusal;
import washbook.runner.report.FileReport.Status;
import washbook.runner.report.FileReport.TableReport;

/** What a person at the terminal reads. */
public final class ConsoleReport {
  private static final int MOST_REFUSALS = 20;
  private static final int WIDTH = 80;

  private final PrintStream out;
  private final boolean dryRun;
  private final boolean quiet;
  private final Totals totals = new Totals();
  private final Set<String> sheets = new HashSet<>();
  private int earlierFiles;

  /**
   * @param quiet whether only what was refused or failed is said
   */
  public ConsoleReport(PrintStream out, boolean dryRun, boolean quiet) {
    this.out = out;
    this.quiet = quiet;
    this.dryRun = dryRun;
  }

  /**
   * Prints one file's result.
   *
   * @param earlier whether an earlier run did it
   */
  public void add(FileResult result, boolean earlier) {
    FileReport report = result.report();
    totals.add(report);
    report.tables().forEach(table -> sheets.add(table.sheet()));
    report.refusals().forEach(refusal -> sheets.add(sheetOf(refusal.cell())));
    earlierFiles += earlier ? 1 : 0;
    if (earlier || (quiet && report.refusals().isEmpty() && !isUnrecognised(report))) {
      return;
    }
    out.println(report.path() + ": " + headline(result));
    if (!quiet) {
      if (report.map() != null) {
        out.println("  by the map " + report.map() + " beside it");
      }
      for (TableReport table : report.tables()) {
        for (BatchReport batch : table.batches()) {
          out.println("  " + line(table, batch));
        }
      }
    }
    List<Refusal> refusals = report.refusals();
    for (Refusal refusal : refusals.subList(0, Math.min(MOST_REFUSALS, refusals.size()))) {
      String cell = refusal.cell().isEmpty() ? "" : refusal.cell() + ": ";
      out.println("  refused: " + cell + refusal.reason());
    }
    if (refusals.size() > MOST_REFUSALS) {
      out.println(
          "  and " + (refusals.size() - MOST_REFUSALS) + " more refusals; --report lists them all");
    }
  }

  public Totals totals() {
    return totals;
  }

  /** Whether a log on a sheet of this name was filled or refused. */
  public boolean hasSeen(String sheet) {
    return sheets.contains(sheet);
  }

  private static String sheetOf(String cell) {
    String sheet = cell.substring(0, Math.max(0, cell.lastIndexOf('!')));
    return sheet.length() > 1 && sheet.startsWith("'")
        ? sheet.substring(1, sheet.length() - 1).replace("''", "'")
        : sheet;
  }

  /** Prints the totals. */
  public void finish() {
    if (quiet && totals.count() > 0) {
      return;
    }
    if (totals.count() == 0) {
      out.println("No files of a kind that Washbook reads were found.");
    }
    if (totals.count() > 1) {
      out.println();
      out.print(totals.table());
      if (earlierFiles > 0) {
        out.println(earlierFiles + " of them were done by an earlier run and have not changed.");
      }
    }
  }

  private static boolean isUnrecognised(FileReport report) {
    return report.status() == Status.NOTHING_RECOGNISED;
  }

  private String headline(FileResult result) {
    FileReport report = result.report();
    String rows =
        report.rows() == 0 ? "" : ", " + report.filled() + " of " + report.rows() + " rows";
    String status = report.status().word() + rows;
    if (result.written() == null) {
      return dryRun && report.filled() > 0 ? status + " (dry run: nothing written)" : status;
    }
    return status
        + (result.changed()
            ? "; wrote " + result.written()
            : "; " + result.written() + " is up to date");
  }

  private static String line(TableReport table, BatchReport batch) {
    if (table.isRun()) {
      return String.format(
          Locale.ROOT,
          "%s, %s, still run %s: %d jars, %d filled, %d refused",
          table.sheet(),
          table.range(),
          batch.name(),
          batch.rows(),
          batch.filled(),
          batch.refused());
    }
    String gravity =
        batch.originalGravity() == null ? "unknown" : Numbers.fixed(batch.originalGravity(), 4);
    return table.sheet()
        + ", "
        + table.range()
        + ", batch "
        + batch.name()
        + ": original gravity "
        + gravity
        + ", "
        + batch.rows()
        + " rows, "
        + batch.filled()
        + " filled, "
        + batch.refused()
        + " refused";
  }

  /** Breaks a paragraph into lines for a terminal. */
  static String wrapped(String text) {
    StringBuilder lines = new StringBuilder();
    int width = 0;
    for (String word : text.split(" ", -1)) {
      if (width > 0 && width + 1 + word.length() > WIDTH) {
        lines.append(System.lineSeparator());
        width = 0;
      }
      lines.append(width == 0 ? "" : " ").append(word);
      width += word.length() + (width == 0 ? 0 : 1);
    }
    return lines.append(System.lineSeparator()).toString();
  }
}
