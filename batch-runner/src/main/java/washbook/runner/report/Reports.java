package washbook.runner.report;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;

/** The kinds of report file, told by the name's ending. */
public final class Reports {
  private Reports() {}

  /** Whether the name ends like a report we can write. */
  public static boolean canWrite(Path target) {
    return !extension(target).isEmpty();
  }

  /** Whether the report shows charts, or one made of it can, so that the curves have to be kept. */
  public static boolean hasCharts(Path target) {
    return !extension(target).equals("csv");
  }

  /** Starts a report on filling; it appears under its name when it is finished. */
  public static ReportWriter<FileResult> open(Path target) throws IOException {
    return switch (extension(target)) {
      case "json" -> new JsonReport<>(target, FileResult::report);
      case "csv" -> new CsvReport(target);
      case "html" -> new HtmlReport(target);
      default -> throw new IllegalArgumentException(target + " is no report name");
    };
  }

  /** The same on an audit. */
  public static ReportWriter<AuditReport> openAudit(Path target) throws IOException {
    return switch (extension(target)) {
      case "json" -> auditJson(target);
      case "csv" -> new AuditCsv(target);
      case "html" -> new AuditHtml(target);
      default -> throw new IllegalArgumentException(target + " is no report name");
    };
  }

  private static ReportWriter<AuditReport> auditJson(Path target) throws IOException {
    AuditTotals totals = new AuditTotals();
    return new JsonReport<>(
        target,
        report -> {
          totals.add(report);
          return report;
        },
        totals::total);
  }

  private static String extension(Path target) {
    String name = target.getFileName().toString().toLowerCase(Locale.ROOT);
    for (String extension : new String[] {"json", "csv", "html"}) {
      if (name.endsWith("." + extension)) {
        return extension;
      }
    }
    return "";
  }
}
