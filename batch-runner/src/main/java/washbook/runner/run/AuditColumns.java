package washbook.runner.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import washbook.log.ComputedColumn;
import washbook.log.ComputedHeader;
import washbook.log.WrittenScale;
import washbook.log.audit.Audit;
import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.log.sheet.CellAddress;
import washbook.runner.report.AuditReport.BatchReport;
import washbook.runner.report.AuditReport.ColumnReport;
import washbook.runner.report.AuditReport.Curves;
import washbook.runner.report.AuditReport.RowReport;
import washbook.runner.report.BatchSeries;

/** Turns the audit of a column into its report. */
final class AuditColumns {
  private AuditColumns() {}

  /**
   * @param language in which the causes are told; what names our figures stays English
   */
  static ColumnReport report(String sheet, Audit.Column column, Language language) {
    List<BatchReport> batches = new ArrayList<>();
    String largestCell = "";
    for (Audit.Batch batch : column.batches()) {
      batches.add(report(sheet, column, batch));
      if (batch.worst() >= 0 && batch.largest() == column.largest()) {
        largestCell = cell(sheet, column, batch, batch.worst());
      }
    }
    return new ColumnReport(
        sheet,
        column.tableRange(),
        column.own().header(),
        title(column.ours()),
        column.compared(),
        column.differing(),
        column.largest(),
        largestCell,
        column.causes().stream().map(Enum::name).toList(),
        cause(column, language),
        batches);
  }

  private static BatchReport report(String sheet, Audit.Column column, Audit.Batch batch) {
    List<RowReport> rows = new ArrayList<>();
    for (int i = 0; i < batch.rows().length; i++) {
      double difference = batch.own()[i] - batch.ours()[i];
      if (Math.abs(difference) > batch.limit()) {
        rows.add(
            new RowReport(
                cell(sheet, column, batch, i), batch.own()[i], batch.ours()[i], difference));
      }
    }
    return new BatchReport(
        batch.name(), batch.compared(), batch.differing(), batch.largest(), batch.limit(), rows);
  }

  /** The curves of each batch; thinned where a picture could not show all points. */
  static List<Curves> curves(Audit.Column column) {
    List<Curves> curves = new ArrayList<>();
    for (Audit.Batch batch : column.batches()) {
      if (batch.compared() == 0) {
        continue;
      }
      if (curves.size() == BatchSeries.MOST_BATCHES) {
        return curves;
      }
      boolean timed = Arrays.stream(batch.days()).allMatch(Double::isFinite);
      double start = timed ? batch.days()[0] : 0;
      double[][] points =
          Arrays.stream(SeriesReader.thinned(batch.compared()))
              .mapToObj(
                  i ->
                      new double[] {
                        timed ? BatchSeries.rounded(batch.days()[i] - start) : i + 1,
                        BatchSeries.rounded(batch.own()[i]),
                        BatchSeries.rounded(batch.ours()[i])
                      })
              .toArray(double[][]::new);
      curves.add(
          new Curves(
              batch.name() + ": " + column.own().header(),
              timed ? BatchSeries.DAYS : "reading",
              title(column.ours()),
              points));
    }
    return curves;
  }

  private static String cause(Audit.Column column, Language language) {
    Message causes =
        column.causes().stream()
            .map(Audit.Cause::message)
            .reduce((one, other) -> Message.of("audit.cause.and", one, other))
            .orElse(Message.NONE);
    String told = causes.in(language);
    return column.detail().equals(Message.NONE)
        ? told
        : told + " (" + column.detail().in(language) + ")";
  }

  private static String cell(String sheet, Audit.Column column, Audit.Batch batch, int index) {
    String address = CellAddress.of(batch.rows()[index], column.own().column());
    return ReportBuilder.inSheet(sheet, address);
  }

  private static String title(ComputedColumn computed) {
    return ComputedHeader.title(computed, WrittenScale.SG, Language.EN);
  }
}
