package washbook.runner;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** A workbook put together part by part, for what no program would write the same way twice. */
public final class RawXlsx {
  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  private static final String OFFICE =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String STRICT = "http://purl.oclc.org/ooxml/officeDocument/relationships";
  private static final String PACKAGE = "http://schemas.openxmlformats.org/package/2006/";

  private final Map<String, byte[]> parts = new LinkedHashMap<>();

  /** One sheet, "Log", with this markup inside its worksheet element. */
  public static RawXlsx withSheet(String inside) {
    return new RawXlsx(OFFICE, "worksheets/sheet1.xml")
        .part(
            "xl/worksheets/sheet1.xml",
            "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<worksheet xmlns=\""
                + MAIN
                + "\">"
                + inside
                + "</worksheet>");
  }

  /** The same in the Strict namespaces, with an absolute target. */
  public static RawXlsx strict(String sheet) {
    return new RawXlsx(STRICT, "/xl/worksheets/sheet1.xml").part("xl/worksheets/sheet1.xml", sheet);
  }

  private RawXlsx(String relations, String sheetTarget) {
    part(
        "[Content_Types].xml",
        "<Types xmlns=\""
            + PACKAGE
            + "content-types\"><Default Extension=\"xml\" ContentType=\""
            + "application/xml\"/></Types>");
    part(
        "_rels/.rels",
        "<Relationships xmlns=\""
            + PACKAGE
            + "relationships\"><Relationship Id=\"a\" Type=\""
            + relations
            + "/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>");
    part(
        "xl/workbook.xml",
        "<workbook xmlns=\""
            + MAIN
            + "\" xmlns:r=\""
            + relations
            + "\"><sheets><sheet name=\"Log\" sheetId=\"1\" r:id=\"b\"/></sheets></workbook>");
    part(
        "xl/_rels/workbook.xml.rels",
        "<Relationships xmlns=\""
            + PACKAGE
            + "relationships\"><Relationship Id=\"b\" Type=\""
            + relations
            + "/worksheet\" Target=\""
            + sheetTarget
            + "\"/><Relationship Id=\"c\" "
            + "Type=\""
            + relations
            + "/sharedStrings\" Target=\"sharedStrings.xml\"/>"
            + "<Relationship Id=\"d\" Type=\""
            + relations
            + "/calcChain\" Target=\"calcChain.xml\"/></Relationships>");
  }

  public RawXlsx part(String name, String content) {
    return part(name, content, StandardCharsets.UTF_8);
  }

  public RawXlsx part(String name, String content, Charset charset) {
    parts.put(name, content.getBytes(charset));
    return this;
  }

  public byte[] bytes(String name) {
    return parts.get(name);
  }

  public RawXlsx part(String name, byte[] content) {
    parts.put(name, content);
    return this;
  }

  public Path write(Path file) throws IOException {
    try (OutputStream out = Files.newOutputStream(file);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getValue());
        zip.closeEntry();
      }
    }
    return file;
  }
}
