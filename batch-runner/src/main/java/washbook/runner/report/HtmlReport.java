package washbook.runner.report;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import washbook.log.RowAccount;
import washbook.log.overview.BatchOverview;
import washbook.runner.language.Wording;
import washbook.runner.report.FileReport.TableReport;

/** The report as one page for people: a sortable table, the refusals, a chart of each batch. */
final class HtmlReport implements ReportWriter<FileResult> {
  private final Wording words;
  private final List<PendingFile> parts;
  private final PendingFile file;
  private final PendingFile refusals;
  private final PendingFile charts;
  private final PendingFile rows;
  private final PendingFile batches;
  private final PendingFile warnings;
  private final PendingFile accounts;
  private final Totals totals = new Totals();
  private int chartCount;
  private boolean anyRefusal;
  private boolean anyWhole;
  private boolean anyBatch;
  private boolean anyWarning;
  private boolean anyAccount;
  private boolean anyLeftOut;

  HtmlReport(ReportPlace target, Wording words) throws IOException {
    this.words = words;
    parts = PendingFile.several(target, 7);
    file = parts.get(0);
    rows = parts.get(1);
    refusals = parts.get(2);
    charts = parts.get(3);
    batches = parts.get(4);
    warnings = parts.get(5);
    accounts = parts.get(6);
  }

  @Override
  public void add(FileResult result) throws IOException {
    FileReport report = result.report();
    totals.add(report);
    Writer row = rows.writer();
    boolean whole = report.status() == FileReport.Status.FILLED && report.refusals().isEmpty();
    anyWhole |= whole;
    row.write(
        whole
            ? "<tr class=\"whole\">"
            : report.refusals().isEmpty() ? "<tr>" : "<tr class=\"bad\">");
    row.write(Html.cell(report.path()));
    String status = status(report);
    row.write("<td class=\"status\">");
    row.write(Html.text(withMap(report, status)));
    row.write("</td>");
    row.write(Html.number(batches(report)));
    row.write(Html.number(Integer.toString(report.rows())));
    row.write(Html.number(Integer.toString(report.filled())));
    row.write(Html.number(Integer.toString(report.rows() - report.filled())));
    row.write("</tr>\n");
    for (TableReport table : report.tables()) {
      if (table.account() != null) {
        anyAccount = true;
        accounts.writer().write(account(report.path(), table));
      }
    }
    for (BatchOverview batch : report.overview()) {
      anyBatch = true;
      anyWarning |= !batch.warnings().isEmpty();
      OverviewLine line = new OverviewLine(report.path(), batch);
      batches.writer().write(OverviewHtml.row(line, null, words));
      OverviewHtml.writeWarnings(line, words, warnings.writer());
    }
    for (RefusalGroup refusal : RefusalGroup.of(report.refusals())) {
      anyRefusal = true;
      refusals
          .writer()
          .write(
              "<tr>"
                  + Html.cell(report.path())
                  + Html.cell(refusal.cells())
                  + Html.number(Integer.toString(refusal.count()))
                  + Html.cell(refusal.reason())
                  + "</tr>\n");
    }
    anyLeftOut |= BatchSeries.leavesOut(report);
    for (BatchSeries series : report.curves()) {
      if (++chartCount > BatchSeries.MOST_CHARTS) {
        anyLeftOut = true;
        break;
      }
      charts.writer().write(CurveChart.of(series, words).figure(report.path()));
    }
  }

  @Override
  public void finish() throws IOException {
    Writer page = file.writer();
    page.write(Html.head(words.say("report.title"), words));
    page.write("<p class=\"totals\">" + Html.text(totals.sentence(words)) + "</p>\n");
    if (anyBatch) {
      page.write(Html.heading(words.say("report.stand")));
      page.write(OverviewHtml.head(words));
      end(batches, page);
    }
    if (anyWarning) {
      page.write(Html.heading(words.say("report.look")));
      page.write(OverviewHtml.warningsHead(words));
      end(warnings, page);
    }
    page.write(Html.heading(words.say("head.files")));
    page.write(
        anyWhole ? "<p class=\"paper\">" + Html.text(words.say("report.paper")) + "</p>\n" : "");
    page.write(Html.tableHead(heads("file", "status", "batches", "rows", "filled", "refused")));
    end(rows, page);
    if (anyAccount) {
      page.write(Html.heading(words.say("report.rows")));
      page.write(
          Html.tableHead(
              heads("file", "sheet", "range", "rows", "filled", "refused", "passed", "which")));
      end(accounts, page);
    }
    if (anyRefusal) {
      page.write(Html.heading(words.say("report.refused")));
      page.write(Html.tableHead(heads("file", "cells", "count", "reason")));
      end(refusals, page);
    }
    if (chartCount > 0) {
      page.write(Html.heading(words.say("head.batches")));
      page.write(
          anyLeftOut
              ? "<p class=\"totals\">" + Html.text(BatchSeries.limits(words)) + "</p>\n"
              : "");
      page.write("<div class=\"charts\">\n");
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

  /** What became of the rows of a table's range: the three counts add up to them. */
  private String account(String path, TableReport table) {
    RowAccount account = table.account();
    boolean whole = account.refused() == 0 && account.filled() > 0;
    StringBuilder row = new StringBuilder(whole ? "<tr class=\"whole\">" : "<tr>");
    row.append(Html.cell(path)).append(Html.cell(table.sheet())).append(Html.cell(table.range()));
    for (int count :
        new int[] {account.rows(), account.filled(), account.refused(), account.passedOver()}) {
      row.append(Html.number(Integer.toString(count)));
    }
    return row.append(Html.cell(words.say(account.toldOfPassed()))).append("</tr>\n").toString();
  }

  private static void end(PendingFile body, Writer page) throws IOException {
    Html.copy(body.reread(), page);
    page.write("</tbody>\n</table>\n");
  }

  private List<String> heads(String... keys) {
    return OverviewHtml.heads(words, keys);
  }

  /** A file that failed says why where it is listed. */
  private String status(FileReport report) {
    String word = report.status().said(words);
    return report.status() == FileReport.Status.FAILED && !report.refusals().isEmpty()
        ? word + ": " + report.refusals().get(0).reason()
        : word;
  }

  /** How it ended, with the map that was used without being named. */
  private String withMap(FileReport report, String status) {
    if (report.map() == null) {
      return status;
    }
    return report.isMapInside()
        ? words.say("report.map.inside", status)
        : words.say("report.map", status, report.map());
  }

  private static String batches(FileReport report) {
    return Integer.toString(report.tables().stream().mapToInt(t -> t.batches().size()).sum());
  }
}
