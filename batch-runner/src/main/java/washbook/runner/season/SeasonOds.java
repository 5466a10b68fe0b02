package washbook.runner.season;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import washbook.log.sheet.Grid;
import washbook.runner.FileFormats;
import washbook.runner.file.UnusableFileException;
import washbook.runner.file.WrittenFile;

/**
 * The season as an OpenDocument spreadsheet (OASIS OpenDocument 1.3). It is written as a whole, so
 * an older one with sheets or formulas of the person's is refused.
 */
final class SeasonOds {
  static final String KIND = "application/vnd.oasis.opendocument.spreadsheet";

  /** Printed across a page of paper that lies on its side. */
  private static final String STYLES =
      "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<office:document-styles"
          + SeasonOdsContent.NAMES
          + " office:version=\"1.3\"><office:automatic-styles><style:page-layout style:name=\"wide\">"
          + "<style:page-layout-properties fo:page-width=\"29.7cm\" fo:page-height=\"21cm\""
          + " style:print-orientation=\"landscape\" style:scale-to-X=\"1\" style:scale-to-Y=\"0\""
          + " fo:margin=\"1.2cm\"/></style:page-layout></office:automatic-styles>"
          + "<office:master-styles><style:master-page style:name=\"Default\""
          + " style:page-layout-name=\"wide\"/></office:master-styles></office:document-styles>";

  private static final String MANIFEST_NAMES = "urn:oasis:names:tc:opendocument:xmlns:manifest:1.0";
  private static final long FIXED_TIME = 315_532_800_000L;

  private SeasonOds() {}

  static void write(Season season, OlderSeason older, Path file, Path to) throws IOException {
    if (file != null) {
      refuseToLose(file);
    }
    SeasonOdsContent content = new SeasonOdsContent(season, older);
    Map<String, String> parts = new TreeMap<>();
    parts.put("content.xml", content.text());
    parts.put("styles.xml", STYLES);
    for (SeasonOdsChart chart : content.charts()) {
      parts.put(chart.folder() + "/content.xml", chart.text());
    }
    try (OutputStream out = WrittenFile.stream(to);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      mark(zip);
      put(zip, "META-INF/manifest.xml", manifest(parts.keySet(), content.charts()));
      for (Map.Entry<String, String> part : parts.entrySet()) {
        put(zip, part.getKey(), part.getValue());
      }
    }
  }

  private static void refuseToLose(Path file) throws IOException {
    for (Grid grid : FileFormats.of(file).reader().read(file)) {
      if (!grid.text(0, 0).startsWith(Season.TITLE) && grid.rowCount() > 0) {
        throw new UnusableFileException(
            "The older file has a sheet of yours, '"
                + grid.name()
                + "', which an .ods season cannot keep; move it to another file or take .xlsx."
                + " Nothing was written.");
      }
    }
    try (ZipFile zip = new ZipFile(file.toFile())) {
      String content =
          new String(
              zip.getInputStream(zip.getEntry("content.xml")).readAllBytes(),
              StandardCharsets.UTF_8);
      if (content.contains(" table:formula=")) {
        throw new UnusableFileException(
            "The older file has formulas of yours, which an .ods season cannot keep; make them"
                + " values or take .xlsx. Nothing was written.");
      }
    }
  }

  /** The first entry, stored as it is, so that programs know the kind by its bytes. */
  private static void mark(ZipOutputStream zip) throws IOException {
    byte[] kind = KIND.getBytes(StandardCharsets.US_ASCII);
    CRC32 check = new CRC32();
    check.update(kind);
    ZipEntry entry = new ZipEntry("mimetype");
    entry.setMethod(ZipEntry.STORED);
    entry.setSize(kind.length);
    entry.setCrc(check.getValue());
    entry.setTime(FIXED_TIME);
    zip.putNextEntry(entry);
    zip.write(kind);
    zip.closeEntry();
  }

  private static void put(ZipOutputStream zip, String name, String text) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTime(FIXED_TIME);
    zip.putNextEntry(entry);
    zip.write(text.getBytes(StandardCharsets.UTF_8));
    zip.closeEntry();
  }

  private static String manifest(Set<String> parts, List<SeasonOdsChart> charts) {
    StringBuilder text = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    text.append("<manifest:manifest xmlns:manifest=\"").append(MANIFEST_NAMES);
    text.append("\" manifest:version=\"1.3\">");
    entry(text, "/", KIND);
    parts.forEach(part -> entry(text, part, "text/xml"));
    charts.forEach(chart -> entry(text, chart.folder() + "/", SeasonOdsChart.KIND));
    return text.append("</manifest:manifest>").toString();
  }

  private static void entry(StringBuilder text, String path, String kind) {
    text.append("<manifest:file-entry manifest:full-path=\"").append(path);
    text.append("\" manifest:media-type=\"").append(kind).append("\"/>");
  }
}
