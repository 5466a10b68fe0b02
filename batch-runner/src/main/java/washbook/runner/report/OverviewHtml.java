package washbook.runner.report;

import java.io.IOException;
import java.io.Writer;
import java.net.URI;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import washbook.log.overview.Warning;
import washbook.runner.language.Wording;

/** The table of batches and that of their warnings on our pages. */
public final class OverviewHtml {
  private static final Set<String> KINDS = Set.of("MALT", "FRUIT", "SUGAR", "HONEY", "MOLASSES");

  private static final String[] HEADS = {
    "batch",
    "state",
    "alcohol",
    "gravity",
    "left",
    "falls",
    "done",
    "attenuation",
    "wash",
    "read",
    "refused",
    "warnings"
  };

  private OverviewHtml() {}

  /** The heads of these columns. */
  public static List<String> heads(Wording words, String... keys) {
    return Arrays.stream(keys).map(key -> words.say("head." + key)).toList();
  }

  /** What the table of batches begins with. */
  public static String head(Wording words) {
    return "<p class=\"totals\">"
        + Html.text(words.say("overview.legend"))
        + "</p>\n"
        + Html.tableHead(heads(words, HEADS))
            .replace("<table class=\"", "<table class=\"overview ");
  }

  /**
   * One row.
   *
   * @param link to the file; null for none
   */
  public static String row(OverviewLine line, URI link, Wording words) {
    StringBuilder row =
        new StringBuilder(line.batch().warnings().isEmpty() ? "<tr>" : "<tr class=\"bad\">");
    String file =
        link == null
            ? Html.text(line.file())
            : "<a href=\""
                + Html.text(link.toASCIIString())
                + "\">"
                + Html.text(line.file())
                + "</a>";
    String sheet = line.batch().sheet();
    boolean told =
        sheet.isEmpty() || sheet.equals(line.batch().batch()) || line.file().contains(sheet + ".");
    row.append("<td class=\"name\"><strong>")
        .append(Html.text(line.batch().batch()))
        .append("</strong> <small>");
    row.append(Html.text(wash(line.batch().wash(), words))).append(", ");
    row.append(file).append(told ? "" : ", " + Html.text(sheet)).append("</small></td>");
    row.append("<td class=\"status\">")
        .append(Html.text(OverviewColumn.STATE.shown(line, words)))
        .append("</td>");
    row.append(number(line, words, " \u00b1 ", OverviewColumn.ALCOHOL, OverviewColumn.PLUS_MINUS));
    row.append(number(line, words, " \u2192 ", OverviewColumn.ORIGINAL, OverviewColumn.LATEST));
    row.append(number(line, words, "", OverviewColumn.EXTRACT));
    row.append(number(line, words, "", OverviewColumn.RATE));
    row.append(number(line, words, "", OverviewColumn.TO_FINISH));
    row.append(number(line, words, " / ", OverviewColumn.APPARENT, OverviewColumn.REAL));
    String coldest = OverviewColumn.COLDEST.shown(line, words);
    row.append(
        Html.number(
            coldest.isEmpty()
                ? ""
                : words.say("overview.to", coldest, OverviewColumn.WARMEST.shown(line, words))));
    row.append(read(line, words));
    row.append(number(line, words, "", OverviewColumn.REFUSED));
    row.append("<td class=\"warn\">").append(Html.text(OverviewColumn.WARNINGS.shown(line, words)));
    return row.append("</td>").append("</tr>\n").toString();
  }

  /** The warnings of a batch as rows of the table that {@link #warningsHead} begins. */
  public static void writeWarnings(OverviewLine line, Wording words, Writer to) throws IOException {
    for (Warning warning : line.batch().warnings()) {
      to.write(
          "<tr class=\"bad\"><td class=\"name\"><strong>"
              + Html.text(line.batch().batch())
              + "</strong> <small>"
              + Html.text(line.file())
              + "</small></td><td class=\"status\">"
              + Html.text(words.say(warning.kind().message()))
              + "</td>"
              + Html.cell(warning.cell())
              + Html.cell(warning.reason())
              + Html.cell(warning.source())
              + "</tr>\n");
    }
  }

  /** What the table of warnings begins with. */
  public static String warningsHead(Wording words) {
    return Html.tableHead(heads(words, "batch", "warning", "cell", "reason", "limit"));
  }

  /** A kind of wash, which may also be a yield. */
  public static String wash(String word, Wording words) {
    return KINDS.contains(word) ? words.say("wash." + word) : words.decimal(word);
  }

  private static String read(OverviewLine line, Wording words) {
    String first = OverviewColumn.FIRST.shown(line, words);
    String days = OverviewColumn.DAYS.shown(line, words);
    String times = OverviewColumn.READINGS.text(line) + "\u00d7";
    String span = days.isEmpty() ? "" : ", " + words.say("overview.days", days);
    String day = OverviewColumn.FIRST.text(line);
    String cell = Html.cell(first.isEmpty() ? times + span : first + span + ", " + times);
    return first.equals(day) ? cell : cell.replace("<td>", "<td data-sort=\"" + day + "\">");
  }

  private static String number(
      OverviewLine line, Wording words, String between, OverviewColumn... columns) {
    StringBuilder text = new StringBuilder();
    for (OverviewColumn column : columns) {
      String one = column.shown(line, words);
      text.append(text.isEmpty() || one.isEmpty() ? "" : between).append(one);
    }
    return Html.number(text.toString());
  }
}
