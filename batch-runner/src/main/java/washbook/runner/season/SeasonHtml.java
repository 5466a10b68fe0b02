package washbook.runner.season;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import washbook.runner.file.WrittenFile;
import washbook.runner.report.Html;
import washbook.runner.report.OverviewHtml;

/** The season as one page for people. */
final class SeasonHtml {
  private static final String END = "</tbody>\n</table>\n";

  private SeasonHtml() {}

  static void write(Season season, Path to) throws IOException {
    try (Writer page = new OutputStreamWriter(WrittenFile.stream(to), StandardCharsets.UTF_8)) {
      page.write(Html.head(Season.TITLE));
      page.write("<p class=\"totals\">" + Html.text(season.sentence()) + "</p>\n");
      page.write(OverviewHtml.head());
      for (SeasonRow row : season.rows()) {
        page.write(OverviewHtml.row(row.line(), row.link()));
      }
      page.write(END);
      if (season.rows().stream().anyMatch(row -> !row.line().batch().warnings().isEmpty())) {
        page.write("<h2>What to look at</h2>\n" + OverviewHtml.warningsHead());
        for (SeasonRow row : season.rows()) {
          OverviewHtml.writeWarnings(row.line(), page);
        }
        page.write(END);
      }
      if (!season.left().isEmpty()) {
        page.write("<h2>What was not read</h2>\n");
        page.write(Html.tableHead(List.of("File", "Cells", "Reason")));
        for (Season.LeftOut left : season.left()) {
          page.write("<tr>" + Html.cell(left.file()) + Html.cell(left.refusal().cells()));
          page.write(Html.cell(left.refusal().reason()) + "</tr>\n");
        }
        page.write(END);
      }
      charts(season, page);
      page.write(Html.foot());
    }
  }

  private static void charts(Season season, Writer page) throws IOException {
    Map<String, List<SeasonRow>> drawn = season.byWash(SeasonTable.MOST_CURVES);
    if (drawn.isEmpty()) {
      return;
    }
    page.write("<h2>Batches of one kind over days</h2>\n<p class=\"totals\">");
    page.write(OverlayChart.LEGEND + Html.text(season.notDrawn(SeasonTable.MOST_CURVES)));
    page.write("</p>\n<div class=\"charts wide\">\n");
    for (Map.Entry<String, List<SeasonRow>> kind : drawn.entrySet()) {
      page.write(
          new OverlayChart(SeasonTable.chartTitle(kind.getKey()), 1, 3, 0.001)
              .figure(kind.getValue()));
      page.write(
          new OverlayChart(SeasonTable.alcoholTitle(kind.getKey()), 2, 0, 0.1)
              .figure(kind.getValue()));
    }
    page.write("</div>\n");
  }
}
