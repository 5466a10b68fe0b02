package washbook.runner.archive;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.SortedMap;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import washbook.runner.file.WrittenFile;

/** Packs a new OpenDocument spreadsheet (OASIS OpenDocument 1.3 part 2). */
public final class OpenDocument {
  /** What the file says it is. */
  private static final String KIND = "application/vnd.oasis.opendocument.spreadsheet";

  private static final String NAMES = "urn:oasis:names:tc:opendocument:xmlns:manifest:1.0";
  private static final long FIXED_TIME = 315_532_800_000L;

  private OpenDocument() {}

  /**
   * Writes it.
   *
   * @param parts XML by name
   * @param folders kinds of the documents inside, by their folders, which end in a slash
   */
  public static void write(Path to, SortedMap<String, String> parts, Map<String, String> folders)
      throws IOException {
    try (OutputStream out = WrittenFile.stream(to);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      mark(zip);
      put(zip, "META-INF/manifest.xml", manifest(parts, folders));
      for (Map.Entry<String, String> part : parts.entrySet()) {
        put(zip, part.getKey(), part.getValue());
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

  private static String manifest(SortedMap<String, String> parts, Map<String, String> folders) {
    StringBuilder text = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    text.append("<manifest:manifest xmlns:manifest=\"").append(NAMES);
    text.append("\" manifest:version=\"1.3\">");
    entry(text, "/", KIND);
    parts.keySet().forEach(part -> entry(text, part, "text/xml"));
    folders.forEach((folder, kind) -> entry(text, folder, kind));
    return text.append("</manifest:manifest>").toString();
  }

  private static void entry(StringBuilder text, String path, String kind) {
    text.append("<manifest:file-entry manifest:full-path=\"").append(path);
    text.append("\" manifest:media-type=\"").append(kind).append("\"/>");
  }
}
