package washbook.runner.report;

import java.io.IOException;
import java.io.Writer;
import java.net.URI;
import java.util.List;
import java.util.Locale;
import washbook.log.overview.Warning;

/** The table of batches and that of their warnings on our pages. */
public final class OverviewHtml {
  private static final List<String> HEADS =
      List.of(
          "Batch",
          "State",
          "Alcohol, % vol",
          "Gravity, SG",
          "Left, %",
          "Falls, points a day",
          "Done in, days",
          "Attenuation, %",
          "Wash, \u00b0C",
          "Read from",
          "Refused",
          "Warnings");

  private OverviewHtml() {}

  /** What the table of batches begins with. */
  public static String head() {
    return "<p class=\"totals\">Alcohol with one standard deviation; gravity from the original to"
        + " the latest; left is extract by mass; attenuation apparent and real; wash the coldest"
        + " and the warmest reading.</p>\n"
        + Html.tableHead(HEADS).replace("<table class=\"", "<table class=\"overview ");
  }

  /**
   * One row.
   *
   * @param link to the file; null for none
   */
  public static String row(OverviewLine line, URI link) {
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
    row.append(Html.text(line.batch().wash().toLowerCase(Locale.ROOT))).append(", ");
    row.append(file).append(told ? "" : ", " + Html.text(sheet)).append("</small></td>");
    row.append("<td class=\"status\">").append(Html.text(line.batch().state())).append("</td>");
    row.append(number(line, " \u00b1 ", OverviewColumn.ALCOHOL, OverviewColumn.PLUS_MINUS));
    row.append(number(line, " \u2192 ", OverviewColumn.ORIGINAL, OverviewColumn.LATEST));
    row.append(number(line, "", OverviewColumn.EXTRACT));
    row.append(number(line, "", OverviewColumn.RATE));
    row.append(number(line, "", OverviewColumn.TO_FINISH));
    row.append(number(line, " / ", OverviewColumn.APPARENT, OverviewColumn.REAL));
    row.append(number(line, " to ", OverviewColumn.COLDEST, OverviewColumn.WARMEST));
    row.append(Html.cell(read(line)));
    row.append(number(line, "", OverviewColumn.REFUSED));
    row.append("<td class=\"warn\">").append(Html.text(OverviewColumn.WARNINGS.text(line)));
    return row.append("</td>").append("</tr>\n").toString();
  }

  /** The warnings of a batch as rows of the table that {@link #warningsHead} begins. */
  public static void writeWarnings(OverviewLine line, Writer to) throws IOException {
    for (Warning warning : line.batch().warnings()) {
      to.write(
          "<tr class=\"bad\"><td class=\"name\"><strong>"
              + Html.text(line.batch().batch())
              + "</strong> <small>"
              + Html.text(line.file())
              + "</small></td><td class=\"status\">"
              + Html.text(warning.kind().word())
              + "</td>"
              + Html.cell(warning.cell())
              + Html.cell(warning.reason())
              + Html.cell(warning.source())
              + "</tr>\n");
    }
  }

  /** What the table of warnings begins with. */
  public static String warningsHead() {
    return Html.tableHead(List.of("Batch", "Warning", "Cell", "Reason", "Limit"));
  }

  private static String read(OverviewLine line) {
    String first = OverviewColumn.FIRST.text(line);
    String days = OverviewColumn.DAYS.text(line);
    String times = OverviewColumn.READINGS.text(line) + "\u00d7";
    String span = days.isEmpty() ? "" : ", " + days + " days";
    return first.isEmpty() ? times + span : first + span + ", " + times;
  }

  private static String number(OverviewLine line, String between, OverviewColumn... columns) {
    StringBuilder text = new StringBuilder();
    for (OverviewColumn column : columns) {
      String one = column.text(line);
      text.append(text.isEmpty() || one.isEmpty() ? "" : between).append(one);
    }
    return Html.number(text.toString());
  }
}
