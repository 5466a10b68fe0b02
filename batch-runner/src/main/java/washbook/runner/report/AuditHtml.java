package washbook.runner.report;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Locale;
import washbook.runner.report.AuditReport.BatchReport;
import washbook.runner.report.AuditReport.ColumnReport;
import washbook.runner.report.AuditReport.RowReport;
import washbook.runner.report.CurveChart.Curve;
import washbook.runner.report.CurveChart.Side;
import washbook.runner.report.FileReport.Refusal;

/** The audit as one page for people. */
final class AuditHtml implements ReportWriter<AuditReport> {
  private final PendingFile file;
  private final PendingFile columns;
  private final PendingFile rows;
  private final PendingFile questions;
  private final PendingFile charts;
  private final AuditTotals totals = new AuditTotals();
  private boolean anyRow;
  private boolean anyQuestion;
  private int chartCount;

  AuditHtml(ReportPlace target) throws IOException {
    file = new PendingFile(target);
    columns = new PendingFile(target);
    rows = new PendingFile(target);
    questions = new PendingFile(target);
    charts = new PendingFile(target);
  }

  @Override
  public void add(AuditReport report) throws IOException {
    totals.add(report);
    if (report.columns().isEmpty()) {
      String status = "<td class=\"status\">" + Html.text(report.status().word()) + "</td>";
      String blank = "<td></td>";
      columns.writer().write("<tr>" + Html.cell(report.path()) + blank + blank);
      columns.writer().write(blank.repeat(4) + status + "</tr>\n");
    }
    for (ColumnReport column : report.columns()) {
      add(report.path(), column);
    }
    for (Refusal refusal : report.refusals()) {
      anyQuestion = true;
      String row = Html.cell(report.path()) + Html.cell(refusal.cell());
      questions.writer().write("<tr>" + row + Html.cell(refusal.reason()) + "</tr>\n");
    }
    for (AuditReport.Curves curves : report.curves()) {
      if (++chartCount > BatchSeries.MOST_CHARTS) {
        break;
      }
      charts.writer().write(chart(curves).figure(report.path()));
    }
  }

  private void add(String path, ColumnReport column) throws IOException {
    Writer writer = columns.writer();
    writer.write(column.differing() == 0 ? "<tr>" : "<tr class=\"bad\">");
    writer.write(Html.cell(path) + Html.cell(column.sheet()) + Html.cell(column.header()));
    writer.write(Html.number(Integer.toString(column.compared())));
    writer.write("<td class=\"number status\">" + column.differing() + "</td>");
    writer.write(
        Html.number(shown("%+.", column, column.largest())) + Html.cell(column.largestCell()));
    writer.write(Html.cell(column.cause()) + "</tr>\n");
    for (BatchReport batch : column.batches()) {
      for (RowReport row : batch.rows()) {
        anyRow = true;
        Writer line = rows.writer();
        line.write("<tr>" + Html.cell(path) + Html.cell(batch.name()));
        line.write(Html.cell(column.header()) + Html.cell(row.cell()));
        line.write(Html.number(shown("%.", column, row.own())));
        line.write(Html.number(shown("%.", column, row.ours())));
        line.write(Html.number(shown("%+.", column, row.difference())) + "</tr>\n");
      }
    }
  }

  @Override
  public void finish() throws IOException {
    Writer page = file.writer();
    page.write(Html.head("Washbook: logs checked"));
    page.write("<p class=\"totals\">" + Html.text(totals.sentence()) + "</p>\n");
    page.write("<h2>Columns</h2>\n");
    page.write(
        Html.tableHead(
            List.of(
                "File",
                "Sheet",
                "Column",
                "Compared",
                "Differing",
                "Largest",
                "At",
                "Likely cause")));
    end(columns, page);
    if (anyRow) {
      page.write("<h2>Rows that differ</h2>\n");
      page.write(
          Html.tableHead(
              List.of("File", "Batch", "Column", "Cell", "In the log", "Washbook", "Difference")));
      end(rows, page);
    }
    if (anyQuestion) {
      page.write("<h2>Open questions and refusals</h2>\n");
      page.write(Html.tableHead(List.of("File", "Cell", "Question or reason")));
      end(questions, page);
    }
    if (chartCount > 0) {
      page.write("<h2>Batches</h2>\n<p class=\"totals\">" + BatchSeries.LIMITS + "</p>\n");
      page.write("<p class=\"legend\"><span class=\"ours\">Washbook</span> ");
      page.write("<span class=\"own\">the log's own figures</span></p>\n<div class=\"charts\">\n");
      Html.copy(charts.reread(), page);
      page.write("</div>\n");
    }
    page.write(Html.foot());
    file.finish();
    close();
  }

  @Override
  public void close() throws IOException {
    PendingFile.closeAll(List.of(file, columns, rows, questions, charts));
  }

  private static void end(PendingFile body, Writer page) throws IOException {
    Html.copy(body.reread(), page);
    page.write("</tbody>\n</table>\n");
  }

  private static CurveChart chart(AuditReport.Curves curves) {
    double[] own = BatchSeries.values(curves.points(), 1);
    double[] ours = BatchSeries.values(curves.points(), 2);
    Side left =
        new Side(curves.axis(), 0.001, 0, List.of(new Curve("ours", ours), new Curve("own", own)));
    return new CurveChart(
        curves.title(), curves.unit(), BatchSeries.values(curves.points(), 0), left, Side.NONE);
  }

  /** A gravity says something only in its fourth digit. */
  private static String shown(String sign, ColumnReport column, double value) {
    int digits = column.comparedWith().contains("gravity") ? 4 : 2;
    return String.format(Locale.ROOT, sign + digits + "f", value);
  }
}
