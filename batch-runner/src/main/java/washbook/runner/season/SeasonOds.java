package washbook.runner.season;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.zip.ZipFile;
import washbook.log.sheet.Grid;
import washbook.log.understand.SeasonSheet;
import washbook.runner.FileFormats;
import washbook.runner.archive.OpenDocument;
import washbook.runner.file.UnusableFileException;

/**
 * The season as an OpenDocument spreadsheet (OASIS OpenDocument 1.3). It is written as a whole, so
 * an older one with sheets or formulas of the person's is refused.
 */
final class SeasonOds {
  private SeasonOds() {}

  /**
   * Printed on paper that lies on its side, as many pages below each other as it takes.
   *
   * @param across how many pages of the table stand side by side
   */
  private static String styles(int across) {
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<office:document-styles"
        + SeasonOdsContent.NAMES
        + " office:version=\"1.3\"><office:automatic-styles>"
        + page("one", " style:scale-to-X=\"1\" style:scale-to-Y=\"0\"")
        + page("table", " style:scale-to-X=\"" + across + "\" style:scale-to-Y=\"0\"")
        + page("drawn", "")
        + "</office:automatic-styles><office:master-styles>"
        + master("Default", "one")
        + master(SeasonOdsContent.TABLE, "table")
        + master(SeasonOdsContent.DRAWN, "drawn")
        + "</office:master-styles></office:document-styles>";
  }

  private static String page(String name, String scale) {
    return "<style:page-layout style:name=\""
        + name
        + "\"><style:page-layout-properties fo:page-width=\"29.7cm\" fo:page-height=\"21cm\""
        + " style:print-orientation=\"landscape\""
        + scale
        + " fo:margin=\"0.8cm\"/></style:page-layout>";
  }

  private static String master(String name, String page) {
    return "<style:master-page style:name=\""
        + name
        + "\" style:page-layout-name=\""
        + page
        + "\"/>";
  }

  static void write(Season season, OlderSeason older, Path file, Path to) throws IOException {
    if (file != null) {
      refuseToLose(file);
    }
    SeasonOdsContent content = new SeasonOdsContent(season, older);
    SortedMap<String, String> parts = new TreeMap<>();
    Map<String, String> folders = new LinkedHashMap<>();
    parts.put("content.xml", content.text());
    parts.put("styles.xml", styles(content.pages()));
    for (SeasonOdsChart chart : content.charts()) {
      parts.put(chart.folder() + "/content.xml", chart.text());
      folders.put(chart.folder() + "/", SeasonOdsChart.KIND);
    }
    OpenDocument.write(to, parts, folders);
  }

  private static void refuseToLose(Path file) throws IOException {
    for (Grid grid : FileFormats.of(file).reader().read(file)) {
      if (!SeasonSheet.isOne(grid) && grid.rowCount() > 0) {
        throw UnusableFileException.of(
            "season.odsSheet", UnusableFileException.quoted(grid.name()));
      }
    }
    try (ZipFile zip = new ZipFile(file.toFile())) {
      String content =
          new String(
              zip.getInputStream(zip.getEntry("content.xml")).readAllBytes(),
              StandardCharsets.UTF_8);
      if (content.contains(" table:formula=")) {
        throw UnusableFileException.of("season.odsFormulas");
      }
    }
  }
}
