package washbook.runner.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import washbook.functions.Numbers;
import washbook.log.RowAccount;
import washbook.log.overview.BatchOverview;
import washbook.log.overview.Warning;
import washbook.runner.language.Caution;
import washbook.runner.language.Wording;
import washbook.runner.report.FileReport.BatchReport;
import washbook.runner.report.FileReport.Refusal;
import washbook.runner.report.FileReport.TableReport;

/** The report as comma-separated values: a line for each file, batch and refusal. */
final class CsvReport implements ReportWriter<FileResult> {
  /** Columns that reports have always begun with. */
  static final List<String> FIRST_COLUMNS =
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

  /** What only lines of the kind overview have. */
  private static final List<OverviewColumn> MORE =
      Arrays.stream(OverviewColumn.values())
          .filter(column -> !List.of("file", "refused").contains(column.word()))
          .filter(column -> !FIRST_COLUMNS.contains(column.word()))
          .toList();

  private final PendingFile file;
  private final Wording words;

  CsvReport(ReportPlace target, Wording words) throws IOException {
    file = new PendingFile(target);
    this.words = words;
    List<String> columns = CsvHeads.of(FIRST_COLUMNS, words);
    MORE.forEach(column -> columns.add(CsvHeads.of(column, words)));
    columns.addAll(CsvHeads.of(List.of("passedOver"), words));
    Csv.writeLine(file.writer(), columns.toArray(String[]::new));
  }

  @Override
  public void add(FileResult result) throws IOException {
    FileReport report = result.report();
    String path = report.path();
    String refused = Integer.toString(report.rows() - report.filled());
    line(
        "file",
        path,
        report.status().said(words),
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
      add(path, table);
      for (BatchReport batch : table.batches()) {
        Double gravity = batch.originalGravity();
        line(
            table.isRun() ? "run" : "batch",
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
    for (BatchOverview batch : report.overview()) {
      add(new OverviewLine(path, batch));
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

  /** The rows of a table's range; those passed over stand in the last column, and why beside it. */
  private void add(String path, TableReport table) throws IOException {
    RowAccount account = table.account();
    if (account == null) {
      return;
    }
    String[] values = new String[FIRST_COLUMNS.size() + MORE.size() + 1];
    Arrays.fill(values, "");
    values[0] = "table";
    values[1] = path;
    values[3] = table.sheet();
    values[4] = table.range();
    values[7] = number(account.rows());
    values[8] = number(account.filled());
    values[9] = number(account.refused());
    values[12] = words.say(account.toldOfPassed());
    values[values.length - 1] = number(account.passedOver());
    line(values);
  }

  private void add(OverviewLine line) throws IOException {
    List<String> values = new ArrayList<>();
    for (String column : FIRST_COLUMNS) {
      values.add(
          switch (column) {
            case "kind" -> "overview";
            case "path" -> line.file();
            case "sheet" -> OverviewColumn.SHEET.text(line);
            case "batch" -> OverviewColumn.BATCH.text(line);
            case "originalGravity" -> OverviewColumn.ORIGINAL.text(line);
            case "rows" -> OverviewColumn.READINGS.text(line);
            case "refused" -> OverviewColumn.REFUSED.text(line);
            default -> "";
          });
    }
    MORE.forEach(column -> values.add(CsvHeads.value(column, line, words)));
    line(values.toArray(String[]::new));
    for (Warning warning : line.batch().warnings()) {
      line(
          "warning",
          line.file(),
          "",
          line.batch().sheet(),
          "",
          line.batch().batch(),
          "",
          "",
          "",
          "",
          warning.cell(),
          warning.kind().name(),
          warning.reason() + " (" + warning.source() + ")");
    }
  }

  @Override
  public void finish() throws IOException {
    line(CsvHeads.SAFETY, "", "", "", "", "", "", "", "", "", "", "", Caution.text(words));
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
    String[] all = Arrays.copyOf(values, FIRST_COLUMNS.size() + MORE.size() + 1);
    Arrays.fill(all, values.length, all.length, "");
    Csv.writeLine(file.writer(), all);
  }
}
