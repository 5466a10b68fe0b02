package washbook.runner.report;

import java.io.IOException;
import java.util.List;
import washbook.functions.Numbers;
import washbook.runner.language.Caution;
import washbook.runner.language.Wording;
import washbook.runner.report.AuditReport.BatchReport;
import washbook.runner.report.AuditReport.ColumnReport;
import washbook.runner.report.AuditReport.RowReport;
import washbook.runner.report.FileReport.Refusal;

/**
 * The audit as comma-separated values: a line for each file, column, differing row and question.
 */
final class AuditCsv implements ReportWriter<AuditReport> {
  static final List<String> COLUMNS =
      List.of(
          "kind",
          "path",
          "status",
          "sheet",
          "column",
          "batch",
          "cell",
          "own",
          "ours",
          "difference",
          "compared",
          "differing",
          "reason");

  private final PendingFile file;
  private final Wording words;
  private final AuditTotals totals = new AuditTotals();

  AuditCsv(ReportPlace target, Wording words) throws IOException {
    file = new PendingFile(target);
    this.words = words;
    line(CsvHeads.of(COLUMNS, words).toArray(String[]::new));
  }

  @Override
  public void add(AuditReport report) throws IOException {
    totals.add(report);
    String path = report.path();
    line(
        "file",
        path,
        report.status().said(words),
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        Integer.toString(report.compared()),
        Integer.toString(report.differing()),
        "");
    for (ColumnReport column : report.columns()) {
      String sheet = column.sheet();
      line(
          "column",
          path,
          "",
          sheet,
          column.header(),
          "",
          column.largestCell(),
          "",
          "",
          Numbers.show(column.largest()),
          Integer.toString(column.compared()),
          Integer.toString(column.differing()),
          column.cause());
      for (BatchReport batch : column.batches()) {
        for (RowReport row : batch.rows()) {
          line(
              "row",
              path,
              "",
              sheet,
              column.header(),
              batch.name(),
              row.cell(),
              Numbers.show(row.own()),
              Numbers.show(row.ours()),
              Numbers.show(row.difference()),
              "",
              "",
              "");
        }
      }
    }
    for (Refusal refusal : report.refusals()) {
      line("refusal", path, "", "", "", "", refusal.cell(), "", "", "", "", "", refusal.reason());
    }
  }

  @Override
  public void finish() throws IOException {
    AuditTotals.Total total = totals.total();
    line(
        "total",
        total.largestPath(),
        words.count("totals.files", total.files()),
        "",
        "",
        "",
        total.largestCell(),
        "",
        "",
        total.largestAbv() == null ? "" : Numbers.show(total.largestAbv()),
        Long.toString(total.compared()),
        Long.toString(total.differing()),
        total.cause());
    line(CsvHeads.SAFETY, "", "", "", "", "", "", "", "", "", "", "", Caution.text(words));
    file.finish();
  }

  @Override
  public void close() throws IOException {
    file.close();
  }

  private void line(String... values) throws IOException {
    Csv.writeLine(file.writer(), values);
  }
}
