package washbook.runner.season;

import static washbook.functions.XmlText.escaped;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import washbook.functions.Numbers;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;
import washbook.runner.language.Wording;
import washbook.runner.report.OverviewColumn;

/** The sheets of the season in an OpenDocument spreadsheet. */
final class SeasonOdsContent {
  private static final String OASIS = "urn:oasis:names:tc:opendocument:xmlns:";
  private static final double ROW_CM = 0.452;
  private static final double CHARACTER_CM = 0.235;
  private static final int HEAD_ROW = 3;
  private static final List<String> WARNING_WIDTHS =
      List.of("wide", "wide", "wide", "narrow", "broad", "wide");

  /** As many columns of the usual width reach over a page. */
  private static final int DRAWN_OVER = 11;

  /** Two charts stand on a page. */
  private static final int ROWS_PER_CHART = 18;

  /** Pages of the table, and of the curves, which are printed as large as they are. */
  static final String TABLE = "Table";

  static final String DRAWN = "Drawn";

  /** Of a row that begins a page. */
  private static final String PAGE = " table:style-name=\"page\"";

  static final String NAMES =
      names("office", "office:1.0")
          + names("table", "table:1.0")
          + names("text", "text:1.0")
          + names("draw", "drawing:1.0")
          + names("svg", "svg-compatible:1.0")
          + names("chart", "chart:1.0")
          + names("style", "style:1.0")
          + names("number", "datastyle:1.0")
          + names("fo", "xsl-fo-compatible:1.0")
          + " xmlns:xlink=\"http://www.w3.org/1999/xlink\"";

  private final Season season;
  private final Wording words;
  private final OlderSeason older;
  private final List<SeasonOdsChart> charts = new ArrayList<>();
  private final String text;

  SeasonOdsContent(Season season, OlderSeason older) {
    this.season = season;
    words = season.words();
    this.older = older;
    StringBuilder all = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    all.append("<office:document-content").append(NAMES).append(" office:version=\"1.3\">");
    all.append("<office:automatic-styles>");
    styles(all);
    all.append("</office:automatic-styles><office:body><office:spreadsheet>");
    table(all);
    curves(all);
    warnings(all);
    all.append("</office:spreadsheet></office:body></office:document-content>");
    text = all.toString();
  }

  private static String names(String prefix, String space) {
    return " xmlns:" + prefix + "=\"" + OASIS + space + "\"";
  }

  /** How many pages of the table stand side by side. */
  int pages() {
    return SeasonPage.pages(words, older.own().heads().size());
  }

  String text() {
    return text;
  }

  List<SeasonOdsChart> charts() {
    return charts;
  }

  private void styles(StringBuilder all) {
    for (int i = 0; i <= 4; i++) {
      all.append("<number:number-style style:name=\"n").append(i);
      all.append("\"><number:number number:min-integer-digits=\"1\" number:decimal-places=\"");
      all.append(i).append("\"/></number:number-style>");
      cell(all, "d" + i, " style:data-style-name=\"n" + i + "\"", "");
    }
    all.append("<style:style style:name=\"frame\" style:family=\"graphic\">");
    all.append("<style:graphic-properties draw:stroke=\"none\" draw:fill=\"none\"/></style:style>");
    all.append("<number:date-style style:name=\"iso\"><number:year number:style=\"long\"/>");
    all.append("<number:text>-</number:text><number:month number:style=\"long\"/>");
    all.append("<number:text>-</number:text><number:day number:style=\"long\"/>");
    all.append("</number:date-style>");
    cell(all, "date", " style:data-style-name=\"iso\"", "");
    cell(
        all, "title", "", "<style:text-properties fo:font-size=\"14pt\" fo:font-weight=\"bold\"/>");
    cell(
        all,
        "head",
        "",
        "<style:table-cell-properties fo:background-color=\"#f4efe6\" fo:wrap-option=\"wrap\""
            + " fo:border-bottom=\"0.05pt solid #6b645b\"/>"
            + "<style:text-properties fo:font-weight=\"bold\"/>");
    String wraps =
        "<style:table-cell-properties fo:wrap-option=\"wrap\" style:vertical-align=\"top\"/>";
    cell(all, "name", "", wraps + "<style:text-properties fo:font-weight=\"bold\"/>");
    // Clear of the number left of it.
    String clear = "<style:paragraph-properties fo:margin-left=\"2mm\"/>";
    cell(all, "warning", "", wraps + clear + "<style:text-properties fo:color=\"#a3231b\"/>");
    cell(all, "wrap", "", wraps);
    for (String page : List.of("Default", TABLE, DRAWN)) {
      all.append("<style:style style:name=\"").append(page).append("\" style:family=\"table\"");
      all.append(" style:master-page-name=\"").append(page).append("\"/>");
    }
    all.append("<style:style style:name=\"page\" style:family=\"table-row\">");
    all.append("<style:table-row-properties fo:break-before=\"page\"/></style:style>");
    all.append("<style:style style:name=\"two\" style:family=\"table-row\">");
    all.append("<style:table-row-properties style:row-height=\"0.95cm\"");
    all.append(" style:use-optimal-row-height=\"false\"/></style:style>");
    for (OverviewColumn column : SeasonPage.COLUMNS) {
      double width = SeasonPage.width(column, words) * CHARACTER_CM;
      column(all, column.name(), String.format(Locale.ROOT, "%.2fcm", width));
    }
    column(all, "narrow", "2.5cm");
    column(all, "wide", "5.2cm");
    column(all, "broad", "10cm");
  }

  private static void cell(StringBuilder all, String name, String more, String properties) {
    all.append("<style:style style:name=\"").append(name);
    all.append("\" style:family=\"table-cell\"").append(more).append('>');
    all.append(properties).append("</style:style>");
  }

  private static void column(StringBuilder all, String name, String width) {
    all.append("<style:style style:name=\"").append(name);
    all.append("\" style:family=\"table-column\"><style:table-column-properties");
    all.append(" style:column-width=\"").append(width).append("\"/></style:style>");
  }

  private void table(StringBuilder all) {
    List<OlderSeason.Place> places = older.places(season);
    int lastRow = HEAD_ROW + places.size();
    String sheet = SeasonTable.sheet(words);
    String printed =
        SeasonPage.printed(older.own().heads().size()).stream()
            .map(part -> range(sheet, part[0], part[0] == 0 ? 0 : HEAD_ROW, part[1], lastRow))
            .collect(Collectors.joining(" "));
    begin(all, TABLE, sheet, printed);
    for (OverviewColumn column : SeasonPage.COLUMNS) {
      boolean named = column == SeasonPage.COLUMNS.get(0);
      all.append(named ? "<table:table-header-columns>" : "");
      all.append("<table:table-column table:style-name=\"");
      all.append(column).append("\"/>").append(named ? "</table:table-header-columns>" : "");
    }
    row(all, "title", List.of(season.title()));
    row(all, "", List.of(season.sentence()));
    across(all, SeasonPage.LAST_OF_FIRST + 1, SeasonTable.note(words));
    List<String> heads = new ArrayList<>();
    for (OverviewColumn column : SeasonPage.COLUMNS) {
      heads.add(column.head(words));
    }
    heads.addAll(older.own().heads().keySet());
    all.append("<table:table-header-rows>");
    row(all, "head", heads);
    all.append("</table:table-header-rows>");
    for (OlderSeason.Place place : places) {
      all.append("<table:table-row>");
      for (OverviewColumn column : SeasonPage.COLUMNS) {
        value(all, place, column);
      }
      for (int column : older.own().heads().values()) {
        own(all, place.olderRow(), column);
      }
      all.append("</table:table-row>");
    }
    all.append("</table:table>");
  }

  private void value(StringBuilder all, OlderSeason.Place place, OverviewColumn column) {
    if (place.row() == null) {
      word(
          all,
          "",
          switch (column) {
            case FILE -> place.key().file();
            case SHEET -> place.key().sheet();
            case BATCH -> place.key().batch();
            case STATE -> SeasonTable.gone(words);
            default -> "";
          });
    } else if (column.isNumber()) {
      Double number = column.number(place.row().line());
      number(all, "d" + column.decimals(), number == null ? Double.NaN : number);
    } else if (column.isDate()) {
      date(all, column.text(place.row().line()));
    } else if (column == OverviewColumn.FILE) {
      open(all, "wrap").append(" office:value-type=\"string\"><text:p><text:a xlink:href=\"");
      // Links count from inside the package.
      all.append(escaped("../" + place.row().link().toASCIIString()));
      all.append("\" xlink:type=\"simple\">").append(escaped(place.row().line().file()));
      all.append("</text:a></text:p></table:table-cell>");
    } else {
      String style =
          column == OverviewColumn.BATCH
              ? "name"
              : column == OverviewColumn.WARNINGS ? "warning" : "wrap";
      word(all, style, column.shown(place.row().line(), words));
    }
  }

  private void own(StringBuilder all, int row, int column) {
    Grid grid = older.grid();
    double number = row < 0 ? Double.NaN : grid.number(row, column);
    if (Double.isNaN(number)) {
      word(all, "", row < 0 ? "" : grid.text(row, column));
    } else if (grid.kind(row, column) == Grid.Kind.DATE) {
      date(all, LocalDate.of(1899, 12, 30).plusDays((long) number).toString());
    } else {
      number(all, "", number);
    }
  }

  private void curves(StringBuilder all) {
    Map<String, List<SeasonRow>> byWash = season.byWash(SeasonTable.MOST_CURVES);
    int row = 3 + ROWS_PER_CHART * 2 * byWash.size();
    int at = 3;
    for (Map.Entry<String, List<SeasonRow>> kind : byWash.entrySet()) {
      String gravity = SeasonTable.chartTitle(kind.getKey(), words);
      charts.add(
          new SeasonOdsChart(charts.size() + 1, at, gravity, kind.getValue(), row, 1, words));
      at += ROWS_PER_CHART;
      String alcohol = SeasonTable.alcoholTitle(kind.getKey(), words);
      charts.add(
          new SeasonOdsChart(charts.size() + 1, at, alcohol, kind.getValue(), row, 2, words));
      at += ROWS_PER_CHART;
      row += kind.getValue().stream().mapToInt(b -> b.curve().points().length).sum();
    }
    // The numbers are for the screen.
    String sheet = SeasonTable.curves(words);
    int lastRow = 2 + ROWS_PER_CHART * 2 * byWash.size();
    begin(all, DRAWN, sheet, range(sheet, 0, 0, DRAWN_OVER, lastRow - 1));
    all.append("<table:shapes>");
    charts.forEach(chart -> all.append(chart.frame(ROW_CM, (ROWS_PER_CHART - 1) * ROW_CM)));
    all.append("</table:shapes><table:table-column table:number-columns-repeated=\"4\"/>");
    row(all, "title", List.of(season.title() + ": " + words.say("season.curves")));
    row(all, "", List.of(season.notDrawn(SeasonTable.MOST_CURVES)));
    for (int i = 0; i < byWash.size(); i++) {
      blankRows(all, 1, i == 0 ? "" : PAGE);
      blankRows(all, ROWS_PER_CHART * 2 - 1, "");
    }
    all.append("<table:table-row").append(PAGE).append('>');
    SeasonTable.curveHeads(words).forEach(head -> word(all, "head", head));
    all.append("</table:table-row>");
    for (List<SeasonRow> batches : byWash.values()) {
      for (SeasonRow batch : batches) {
        for (double[] point : batch.curve().points()) {
          all.append("<table:table-row>");
          number(all, "d2", point[0]);
          number(all, "d4", point[1]);
          number(all, "d2", point[2]);
          word(all, "", batch.line().batch().batch());
          all.append("</table:table-row>");
        }
      }
    }
    all.append("</table:table>");
  }

  private static void blankRows(StringBuilder all, int rows, String style) {
    all.append("<table:table-row table:number-rows-repeated=\"").append(rows).append('"');
    all.append(style).append("><table:table-cell/></table:table-row>");
  }

  private void warnings(StringBuilder all) {
    begin(all, "Default", SeasonTable.warnings(words), "");
    for (String width : WARNING_WIDTHS) {
      all.append("<table:table-column table:style-name=\"").append(width).append("\"/>");
    }
    row(all, "title", List.of(season.title() + ": " + words.say("season.warnings")));
    all.append("<table:table-header-rows>");
    row(all, "head", SeasonTable.warningHeads(words));
    all.append("</table:table-header-rows>");
    SeasonTable.warnings(season).forEach(line -> row(all, "wrap", line));
    SeasonTable.left(season).forEach(line -> row(all, "wrap", line));
    row(all, "", List.of(""));
    SeasonTable.safety(words).forEach(line -> across(all, WARNING_WIDTHS.size(), line));
    all.append("</table:table>");
  }

  /**
   * The tag of a sheet.
   *
   * @param printed the cells that are printed; "" for all
   */
  private static void begin(StringBuilder all, String page, String name, String printed) {
    all.append("<table:table table:style-name=\"").append(page).append("\" table:name=\"");
    all.append(escaped(name)).append('"');
    if (!printed.isEmpty()) {
      all.append(" table:print-ranges=\"").append(escaped(printed)).append('"');
    }
    all.append('>');
  }

  private static String range(String sheet, int left, int top, int right, int bottom) {
    String name = "'" + sheet.replace("'", "''") + "'.";
    return name + CellAddress.of(top, left) + ":" + name + CellAddress.of(bottom, right);
  }

  private static void row(StringBuilder all, String style, List<String> words) {
    all.append("<table:table-row>");
    words.forEach(one -> word(all, style, one));
    all.append("</table:table-row>");
  }

  /** A sentence over several columns, of two lines at most. */
  private static void across(StringBuilder all, int columns, String sentence) {
    all.append("<table:table-row table:style-name=\"two\"><table:table-cell");
    all.append(" table:style-name=\"wrap\" table:number-columns-spanned=\"").append(columns);
    all.append("\" table:number-rows-spanned=\"1\" office:value-type=\"string\"><text:p>");
    all.append(escaped(sentence)).append("</text:p></table:table-cell><table:covered-table-cell");
    all.append(" table:number-columns-repeated=\"").append(columns - 1);
    all.append("\"/></table:table-row>");
  }

  private static void word(StringBuilder all, String style, String word) {
    if (word.isEmpty()) {
      all.append("<table:table-cell/>");
      return;
    }
    open(all, style).append(" office:value-type=\"string\"><text:p>");
    all.append(escaped(word)).append("</text:p></table:table-cell>");
  }

  private static void number(StringBuilder all, String style, double number) {
    if (!Double.isFinite(number)) {
      all.append("<table:table-cell/>");
      return;
    }
    String shown = Numbers.show(number);
    open(all, style).append(" office:value-type=\"float\" office:value=\"").append(shown);
    all.append("\"><text:p>").append(shown).append("</text:p></table:table-cell>");
  }

  private static void date(StringBuilder all, String day) {
    if (day.isEmpty()) {
      all.append("<table:table-cell/>");
      return;
    }
    open(all, "date").append(" office:value-type=\"date\" office:date-value=\"").append(day);
    all.append("\"><text:p>").append(day).append("</text:p></table:table-cell>");
  }

  private static StringBuilder open(StringBuilder all, String style) {
    all.append("<table:table-cell");
    return style.isEmpty() ? all : all.append(" table:style-name=\"").append(style).append('"');
  }
}
