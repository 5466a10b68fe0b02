package washbook.runner.season;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import washbook.runner.file.WrittenFile;
import washbook.runner.language.Wording;
import washbook.runner.report.Html;
import washbook.runner.report.OverviewHtml;

/** The season as one page for people. */
final class SeasonHtml {
  private static final String END = "</tbody>\n</table>\n";

  private SeasonHtml() {}

  static void write(Season season, Path to) throws IOException {
    Wording words = season.words();
    try (Writer page = new OutputStreamWriter(WrittenFile.stream(to), StandardCharsets.UTF_8)) {
      page.write(Html.head(season.title(), words));
      page.write("<p class=\"totals\">" + Html.text(season.sentence()) + "</p>\n");
      page.write(OverviewHtml.head(words));
      for (SeasonRow row : season.rows()) {
        page.write(OverviewHtml.row(row.line(), row.link(), words));
      }
      page.write(END);
      if (season.rows().stream().anyMatch(row -> !row.line().batch().warnings().isEmpty())) {
        page.write(Html.heading(words.say("report.look")) + OverviewHtml.warningsHead(words));
        for (SeasonRow row : season.rows()) {
          OverviewHtml.writeWarnings(row.line(), words, page);
        }
        page.write(END);
      }
      if (!season.left().isEmpty()) {
        page.write(Html.heading(words.say("season.left")));
        page.write(Html.tableHead(OverviewHtml.heads(words, "file", "cells", "reason")));
        for (Season.LeftOut left : season.left()) {
          page.write("<tr>" + Html.cell(left.file()) + Html.cell(left.refusal().cells()));
          page.write(Html.cell(left.refusal().reason()) + "</tr>\n");
        }
        page.write(END);
      }
      charts(season, page);
      page.write(Html.foot(words));
    }
  }

  private static void charts(Season season, Writer page) throws IOException {
    Wording words = season.words();
    Map<String, List<SeasonRow>> drawn = season.byWash(SeasonTable.MOST_CURVES);
    if (drawn.isEmpty()) {
      return;
    }
    page.write(Html.heading(words.say("season.kinds")) + "<p class=\"totals\">");
    page.write(OverlayChart.legend(words) + Html.text(season.notDrawn(SeasonTable.MOST_CURVES)));
    page.write("</p>\n<div class=\"charts wide\">\n");
    for (Map.Entry<String, List<SeasonRow>> kind : drawn.entrySet()) {
      page.write(
          new OverlayChart(SeasonTable.chartTitle(kind.getKey(), words), 1, 3, 0.001, words)
              .figure(kind.getValue()));
      page.write(
          new OverlayChart(SeasonTable.alcoholTitle(kind.getKey(), words), 2, 0, 0.1, words)
              .figure(kind.getValue()));
    }
    page.write("</div>\n");
  }
}
