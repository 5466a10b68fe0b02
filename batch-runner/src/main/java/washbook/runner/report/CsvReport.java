package washbook.runner.report;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import washbook.functions.Numbers;
import washbook.functions.SafetyNote;
import washbook.runner.report.FileReport.BatchReport;
import washbook.runner.report.FileReport.Refusal;
import washbook.runner.report.FileReport.TableReport;

/** The report as comma-separated values: a line for each file, batch and refusal. */
final class CsvReport implements ReportWriter<FileResult> {
  static final List<String> COLUMNS =
      List.of(
          "kind",
          "path",
          "status",
          "sheet",
          "range",
          "batch",
          "originalGravity",
          "rows",
          "filled",
          "refused",
          "cell",
          "code",
          "reason");

  private final PendingFile file;

  CsvReport(ReportPlace target) throws IOException {
    file = new PendingFile(target);
    line(COLUMNS.toArray(String[]::new));
  }

  @Override
  public void add(FileResult result) throws IOException {
    FileReport report = result.report();
    String path = report.path();
    String refused = Integer.toString(report.refusals().size());
    line(
        "file",
        path,
        report.status().word(),
        "",
        "",
        "",
        "",
        number(report.rows()),
        number(report.filled()),
        refused,
        "",
        "",
        "");
    for (TableReport table : report.tables()) {
      for (BatchReport batch : table.batches()) {
        Double gravity = batch.originalGravity();
        line(
            "batch",
            path,
            "",
            table.sheet(),
            table.range(),
            batch.name(),
            gravity == null ? "" : Numbers.show(gravity),
            number(batch.rows()),
            number(batch.filled()),
            number(batch.refused()),
            "",
            "",
            "");
      }
    }
    for (Refusal refusal : report.refusals()) {
      line(
          "refusal",
          path,
          "",
          "",
          "",
          "",
          "",
          "",
          "",
          "",
          refusal.cell(),
          refusal.code(),
          refusal.reason());
    }
  }

  @Override
  public void finish() throws IOException {
    line(
        SafetyNote.TITLE.toLowerCase(Locale.ROOT),
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        SafetyNote.text());
    file.finish();
  }

  @Override
  public void close() throws IOException {
    file.close();
  }

  private static String number(int count) {
    return Integer.toString(count);
  }

  private void line(String... values) throws IOException {
    Csv.writeLine(file.writer(), values);
  }
}
