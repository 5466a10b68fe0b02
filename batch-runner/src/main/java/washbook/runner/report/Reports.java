package washbook.runner.report;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Locale;
import washbook.runner.language.Wording;

/** The kinds of report file, told by the name's ending. */
public final class Reports {
  /** How many bytes tell a report of ours from another file. */
  private static final int BEGIN = 1024;

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
  public static ReportWriter<FileResult> open(ReportPlace target, Wording words)
      throws IOException {
    return switch (extension(target.file())) {
      case "json" -> new JsonReport<>(target, FileResult::report);
      case "csv" -> new CsvReport(target, words);
      case "html" -> new HtmlReport(target, words);
      default -> throw new IllegalArgumentException(target.file() + " is no report name");
    };
  }

  /** The same on an audit. */
  public static ReportWriter<AuditReport> openAudit(ReportPlace target, Wording words)
      throws IOException {
    return switch (extension(target.file())) {
      case "json" -> auditJson(target);
      case "csv" -> new AuditCsv(target, words);
      case "html" -> new AuditHtml(target, words);
      default -> throw new IllegalArgumentException(target.file() + " is no report name");
    };
  }

  /**
   * Whether a report can take this name: nothing is there, or a report of this program, by how it
   * begins. Anything else, links too, is somebody's.
   */
  public static boolean mayReplace(Path target) {
    if (!Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
      return true;
    }
    if (!Files.isRegularFile(target, LinkOption.NOFOLLOW_LINKS)) {
      return false;
    }
    try (InputStream in = Files.newInputStream(target)) {
      String begin = new String(in.readNBytes(BEGIN), StandardCharsets.UTF_8);
      return switch (extension(target)) {
        case "json" -> begin.replaceAll("\\s", "").startsWith("{\"files\":[");
        case "csv" ->
            CsvHeads.begin(begin, CsvReport.FIRST_COLUMNS)
                || CsvHeads.begin(begin, AuditCsv.COLUMNS);
        default -> Html.isOurs(begin);
      };
    } catch (IOException unreadable) {
      return false;
    }
  }

  private static ReportWriter<AuditReport> auditJson(ReportPlace target) throws IOException {
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
