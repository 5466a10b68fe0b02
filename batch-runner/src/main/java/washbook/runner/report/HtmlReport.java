package washbook.runner.report;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import washbook.runner.report.FileReport.Refusal;

/** The report as one page for people: a sortable table, the refusals, a chart of each batch. */
final class HtmlReport implements ReportWriter<FileResult> {
  private final PendingFile file;
  private final PendingFile refusals;
  private final PendingFile charts;
  private final PendingFile rows;
  private final Totals totals = new Totals();
  private int chartCount;
  private boolean anyRefusal;

  HtmlReport(ReportPlace target) throws IOException {
    file = new PendingFile(target);
    rows = new PendingFile(target);
    refusals = new PendingFile(target);
    charts = new PendingFile(target);
  }

  @Override
  public void add(FileResult result) throws IOException {
    FileReport report = result.report();
    totals.add(report);
    Writer row = rows.writer();
    row.write(report.refusals().isEmpty() ? "<tr>" : "<tr class=\"bad\">");
    row.write(Html.cell(report.path()));
    row.write("<td class=\"status\">" + Html.text(report.status().word()) + "</td>");
    row.write(Html.number(batches(report)));
    row.write(Html.number(Integer.toString(report.rows())));
    row.write(Html.number(Integer.toString(report.filled())));
    row.write(Html.number(Integer.toString(report.refusals().size())));
    row.write("</tr>\n");
    for (Refusal refusal : report.refusals()) {
      anyRefusal = true;
      refusals
          .writer()
          .write(
              "<tr>"
                  + Html.cell(report.path())
                  + Html.cell(refusal.cell())
                  + Html.cell(refusal.code())
                  + Html.cell(refusal.reason())
                  + "</tr>\n");
    }
    for (BatchSeries series : report.curves()) {
      if (++chartCount > BatchSeries.MOST_CHARTS) {
        break;
      }
      charts.writer().write(CurveChart.of(series).figure(report.path()));
    }
  }

  @Override
  public void finish() throws IOException {
    Writer page = file.writer();
    page.write(Html.head("Washbook: filled logs"));
    page.write("<p class=\"totals\">" + Html.text(totals.sentence()) + "</p>\n");
    page.write("<h2>Files</h2>\n");
    page.write(Html.tableHead(List.of("File", "Status", "Batches", "Rows", "Filled", "Refused")));
    Html.copy(rows.reread(), page);
    page.write("</tbody>\n</table>\n");
    if (anyRefusal) {
      page.write("<h2>What was refused</h2>\n");
      page.write(Html.tableHead(List.of("File", "Cell", "Code", "Reason")));
      Html.copy(refusals.reread(), page);
      page.write("</tbody>\n</table>\n");
    }
    if (chartCount > 0) {
      page.write("<h2>Batches</h2>\n");
      page.write("<p class=\"totals\">" + BatchSeries.LIMITS + "</p>\n");
      page.write("<div class=\"charts\">\n");
      Html.copy(charts.reread(), page);
      page.write("</div>\n");
    }
    page.write(Html.foot());
    file.finish();
    close();
  }

  @Override
  public void close() throws IOException {
    PendingFile.closeAll(List.of(file, rows, refusals, charts));
  }

  private static String batches(FileReport report) {
    return Integer.toString(report.tables().stream().mapToInt(t -> t.batches().size()).sum());
  }
}
