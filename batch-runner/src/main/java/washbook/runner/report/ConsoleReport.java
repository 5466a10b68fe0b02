package washbook.runner.report;

import java.io.PrintStream;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import washbook.functions.Numbers;
import washbook.runner.language.Wording;
import washbook.runner.report.FileReport.BatchReport;
import washbook.runner.report.FileReport.Refusal;
import washbook.runner.report.FileReport.Status;
import washbook.runner.report.FileReport.TableReport;

/** What a person at the terminal reads. */
public final class ConsoleReport {
  private static final int MOST_REFUSALS = 20;
  private static final int WIDTH = 80;

  private final PrintStream out;
  private final Wording words;
  private final boolean dryRun;
  private final boolean quiet;
  private final Totals totals = new Totals();
  private final Set<String> sheets = new HashSet<>();
  private int earlierFiles;

  /**
   * @param quiet whether only what was refused or failed is said
   */
  public ConsoleReport(PrintStream out, Wording words, boolean dryRun, boolean quiet) {
    this.out = out;
    this.words = words;
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
        String kept = words.say("console.map.inside");
        out.println("  " + (report.isMapInside() ? kept : words.say("console.map", report.map())));
      }
      for (TableReport table : report.tables()) {
        for (BatchReport batch : table.batches()) {
          out.println("  " + line(table, batch));
        }
        if (table.account() != null) {
          out.println(
              "  "
                  + words.say(
                      "console.rows.table",
                      table.sheet(),
                      table.range(),
                      words.say(table.account().told())));
        }
      }
    }
    List<Refusal> refusals = report.refusals();
    for (Refusal refusal : refusals.subList(0, Math.min(MOST_REFUSALS, refusals.size()))) {
      out.println("  " + refused(refusal, words));
    }
    if (refusals.size() > MOST_REFUSALS) {
      out.println("  " + words.say("console.more", refusals.size() - MOST_REFUSALS));
    }
  }

  /** One refusal with its cell. */
  public static String refused(Refusal refusal, Wording words) {
    String cell = refusal.cell().isEmpty() ? "" : refusal.cell() + ": ";
    return words.say("console.refused", cell + refusal.reason());
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
      out.println(words.say("console.none"));
    }
    if (totals.count() > 1) {
      out.println();
      out.print(totals.table(words));
      if (earlierFiles > 0) {
        out.println(words.say("console.earlier", earlierFiles));
      }
    }
  }

  private static boolean isUnrecognised(FileReport report) {
    return report.status() == Status.NOTHING_RECOGNISED;
  }

  private String headline(FileResult result) {
    FileReport report = result.report();
    String status = status(report, words);
    if (result.written() == null) {
      return dryRun && report.filled() > 0 ? words.say("console.dryRun", status) : status;
    }
    return words.say(
        result.changed() ? "console.wrote" : "console.upToDate", status, result.written());
  }

  /** How it ended for a file and for how many of its rows. */
  public static String status(FileReport report, Wording words) {
    String status = report.status().said(words);
    return report.rows() == 0
        ? status
        : words.say("console.rows", status, report.filled(), report.rows());
  }

  private String line(TableReport table, BatchReport batch) {
    if (table.isRun()) {
      return words.say(
          "console.run",
          table.sheet(),
          table.range(),
          batch.name(),
          batch.rows(),
          batch.filled(),
          batch.refused());
    }
    String gravity =
        batch.originalGravity() == null
            ? words.say("console.unknown")
            : words.decimal(Numbers.fixed(batch.originalGravity(), 4));
    return words.say(
        "console.batch",
        table.sheet(),
        table.range(),
        batch.name(),
        gravity,
        batch.rows(),
        batch.filled(),
        batch.refused());
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
