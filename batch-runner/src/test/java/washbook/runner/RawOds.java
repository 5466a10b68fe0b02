package washbook.runner;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** A small OpenDocument log put together by hand, with room for what no program would write. */
public final class RawOds {
  private static final String KIND = "application/vnd.oasis.opendocument.spreadsheet";
  private static final String NAMESPACE = "urn:oasis:names:tc:opendocument:xmlns:";

  private final Map<String, String> parts = new LinkedHashMap<>();
  private final String rows;
  private String prolog = "";
  private String styles = "";
  private String inTable = "";
  private String behindTables = "";

  private RawOds(String rows) {
    this.rows = rows;
  }

  /** Three readings; {@code note} stands in a cell of the first, {@code more} are further rows. */
  public static RawOds log(String note, String... more) {
    return new RawOds(
        row(1, text("Day") + text("SG") + text("Temp °C") + text("Note"))
            + row(1, number("0") + number("1.085") + number("20") + noteCell(note))
            + row(1, number("3") + number("1.050") + number("20"))
            + row(1, number("6") + number("1.020") + number("20"))
            + String.join("", more));
  }

  public static String row(int repeated, String cells) {
    String count = repeated == 1 ? "" : " table:number-rows-repeated=\"" + repeated + "\"";
    return "<table:table-row" + count + ">" + cells + "</table:table-row>";
  }

  private static String noteCell(String note) {
    return "<table:table-cell office:value-type=\"string\">" + note + "</table:table-cell>";
  }

  private static String text(String text) {
    return noteCell("<text:p>" + text + "</text:p>");
  }

  private static String number(String number) {
    return "<table:table-cell office:value-type=\"float\" office:value=\"" + number + "\"/>";
  }

  /** What stands before the root element. */
  public RawOds prolog(String text) {
    prolog = text;
    return this;
  }

  /** The automatic styles. */
  public RawOds styles(String markup) {
    styles = markup;
    return this;
  }

  /** What stands first in the sheet. */
  public RawOds inTable(String markup) {
    inTable = markup;
    return this;
  }

  /** What stands behind the sheets. */
  public RawOds behindTables(String markup) {
    behindTables = markup;
    return this;
  }

  public RawOds part(String name, String content) {
    parts.put(name, content);
    return this;
  }

  public Path write(Path file) throws IOException {
    try (OutputStream out = Files.newOutputStream(file);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      byte[] kind = KIND.getBytes(StandardCharsets.US_ASCII);
      ZipEntry mimetype = new ZipEntry("mimetype");
      CRC32 crc = new CRC32();
      crc.update(kind);
      mimetype.setMethod(ZipEntry.STORED);
      mimetype.setSize(kind.length);
      mimetype.setCrc(crc.getValue());
      zip.putNextEntry(mimetype);
      zip.write(kind);
      zip.closeEntry();
      put(zip, "content.xml", content());
      put(
          zip,
          "META-INF/manifest.xml",
          "<manifest:manifest xmlns:manifest=\""
              + NAMESPACE
              + "manifest:1.0\"><manifest:file-entry manifest:full-path=\"/\" manifest:media-type=\""
              + KIND
              + "\"/></manifest:manifest>");
      for (Map.Entry<String, String> part : parts.entrySet()) {
        put(zip, part.getKey(), part.getValue());
      }
    }
    return file;
  }

  private String content() {
    StringBuilder xml = new StringBuilder(prolog).append("<office:document-content");
    for (String name : new String[] {"office", "table", "text", "style"}) {
      xml.append(" xmlns:" + name + "=\"" + NAMESPACE + name + ":1.0\"");
    }
    return xml.append(" xmlns:number=\"" + NAMESPACE + "datastyle:1.0\"")
        .append(" xmlns:of=\"" + NAMESPACE + "of:1.2\"")
        .append(" xmlns:xlink=\"http://www.w3.org/1999/xlink\"")
        .append(" xmlns:fo=\"" + NAMESPACE + "xsl-fo-compatible:1.0\"")
        .append(" office:version=\"1.3\"><office:automatic-styles")
        .append(styles.isEmpty() ? "/>" : ">" + styles + "</office:automatic-styles>")
        .append("<office:body><office:spreadsheet>")
        .append("<table:table table:name=\"Log\">" + inTable + "<table:table-column/>")
        .append(rows + "</table:table>" + behindTables)
        .append("</office:spreadsheet></office:body></office:document-content>")
        .toString();
  }

  private static void put(ZipOutputStream zip, String name, String content) throws IOException {
    zip.putNextEntry(new ZipEntry(name));
    zip.write(content.getBytes(StandardCharsets.UTF_8));
    zip.closeEntry();
  }
}
