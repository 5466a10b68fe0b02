package washbook.runner.report;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import washbook.runner.language.Wording;
import washbook.runner.report.AuditReport.BatchReport;
import washbook.runner.report.AuditReport.ColumnReport;
import washbook.runner.report.AuditReport.RowReport;
import washbook.runner.report.CurveChart.Curve;
import washbook.runner.report.CurveChart.Side;

/** The audit as one page for people. */
final class AuditHtml implements ReportWriter<AuditReport> {
  private final Wording words;
  private final List<PendingFile> parts;
  private final PendingFile file;
  private final PendingFile columns;
  private final PendingFile rows;
  private final PendingFile questions;
  private final PendingFile charts;
  private final PendingFile failures;
  private final PendingFile silent;
  private final AuditTotals totals = new AuditTotals();
  private boolean anyRow;
  private boolean anyQuestion;
  private boolean anyFailure;
  private boolean anyLeftOut;
  private int silentCount;
  private int chartCount;

  AuditHtml(ReportPlace target, Wording words) throws IOException {
    this.words = words;
    parts = PendingFile.several(target, 7);
    file = parts.get(0);
    columns = parts.get(1);
    rows = parts.get(2);
    questions = parts.get(3);
    charts = parts.get(4);
    failures = parts.get(5);
    silent = parts.get(6);
  }

  @Override
  public void add(AuditReport report) throws IOException {
    totals.add(report);
    anyLeftOut |= report.curves().size() >= BatchSeries.MOST_BATCHES;
    if (report.status() == AuditReport.Status.FAILED) {
      anyFailure = true;
      String reason = report.refusals().isEmpty() ? "" : report.refusals().get(0).reason();
      failures.writer().write("<tr class=\"bad\">" + Html.cell(report.path()));
      failures.writer().write("<td class=\"status\">" + Html.text(reason) + "</td></tr>\n");
      return;
    }
    if (report.columns().isEmpty()) {
      silentCount++;
      silent.writer().write("<li>" + Html.text(report.path()) + ": ");
      silent.writer().write(Html.text(report.status().said(words)) + "</li>\n");
    }
    for (ColumnReport column : report.columns()) {
      add(report.path(), column);
    }
    for (RefusalGroup refusal : RefusalGroup.of(report.refusals())) {
      anyQuestion = true;
      String row = Html.cell(report.path()) + Html.cell(refusal.cells());
      questions.writer().write("<tr>" + row + Html.cell(refusal.reason()) + "</tr>\n");
    }
    for (AuditReport.Curves curves : report.curves()) {
      if (++chartCount > BatchSeries.MOST_CHARTS) {
        anyLeftOut = true;
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
    page.write(Html.head(words.say("audit.title"), words));
    page.write("<p class=\"totals\">" + Html.text(totals.sentence(words)) + "</p>\n");
    page.write(Html.heading(words.say("audit.columns")));
    page.write(
        Html.tableHead(
            heads("file", "sheet", "column", "compared", "differing", "largest", "at", "cause")));
    end(columns, page);
    if (silentCount > 0) {
      page.write("<details><summary>" + Html.text(words.count("audit.silent", silentCount)));
      page.write("</summary>\n<ul>\n");
      Html.copy(silent.reread(), page);
      page.write("</ul>\n</details>\n");
    }
    if (anyFailure) {
      page.write(Html.heading(words.say("audit.failed")));
      page.write(Html.tableHead(heads("file", "reason")));
      end(failures, page);
    }
    if (anyRow) {
      page.write(Html.heading(words.say("audit.rows")));
      page.write("<p class=\"totals\">" + Html.own(words.say("audit.difference")) + "</p>\n");
      page.write(
          Html.tableHead(heads("file", "batch", "column", "cell", "inLog", "ours", "difference")));
      end(rows, page);
    }
    if (anyQuestion) {
      page.write(Html.heading(words.say("audit.questions")));
      page.write(Html.tableHead(heads("file", "cell", "question")));
      end(questions, page);
    }
    if (chartCount > 0) {
      page.write(Html.heading(words.say("head.batches")));
      page.write(
          anyLeftOut
              ? "<p class=\"totals\">" + Html.text(BatchSeries.limits(words)) + "</p>\n"
              : "");
      page.write("<p class=\"legend\"><span class=\"ours\">Washbook</span> ");
      page.write("<span class=\"own\">" + Html.own(words.say("audit.own")));
      page.write("</span></p>\n<div class=\"charts\">\n");
      Html.copy(charts.reread(), page);
      page.write("</div>\n");
    }
    page.write(Html.foot(words));
    file.finish();
    close();
  }

  @Override
  public void close() throws IOException {
    PendingFile.closeAll(parts);
  }

  private List<String> heads(String... keys) {
    return OverviewHtml.heads(words, keys);
  }

  private static void end(PendingFile body, Writer page) throws IOException {
    Html.copy(body.reread(), page);
    page.write("</tbody>\n</table>\n");
  }

  private CurveChart chart(AuditReport.Curves curves) {
    double[] own = BatchSeries.values(curves.points(), 1);
    double[] ours = BatchSeries.values(curves.points(), 2);
    Side left =
        new Side(
            AuditReport.comparedWith(curves.axis(), words),
            0.001,
            0,
            List.of(new Curve("ours", ours), new Curve("own", own)));
    return new CurveChart(
        curves.title(),
        BatchSeries.unit(curves.unit(), words),
        BatchSeries.values(curves.points(), 0),
        left,
        Side.NONE,
        words);
  }

  /** A gravity says something only in its fourth digit. */
  private String shown(String sign, ColumnReport column, double value) {
    int digits = column.comparedWith().matches(".*(gravity|\\(L\\)).*") ? 4 : 2;
    return words.number(sign + digits + "f", value);
  }
}
