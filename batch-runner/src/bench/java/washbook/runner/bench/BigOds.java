package washbook.runner.bench;

import static washbook.runner.bench.BigLog.decimal;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * The log of {@link BigLog} in OpenDocument as an office writes it: every value as attribute and as
 * text, the empty rest of a row as one repeated cell.
 */
final class BigOds {
  private static final String TYPE = "application/vnd.oasis.opendocument.spreadsheet";
  private static final String NAMES = "urn:oasis:names:tc:opendocument:xmlns:";
  private static final int COLUMNS = 16_384;
  private static final LocalDateTime DAY_0 = LocalDateTime.of(1899, 12, 30, 0, 0);
  private static final DateTimeFormatter SHOWN = DateTimeFormatter.ofPattern("M/d/yyyy H:mm");
  private static final DateTimeFormatter STORED = DateTimeFormatter.ISO_LOCAL_DATE_TIME;

  private static final String BEGINNING =
      """
      <?xml version="1.0" encoding="UTF-8"?>
      <office:document-content xmlns:office="%1$soffice:1.0" xmlns:style="%1$sstyle:1.0" \
      xmlns:text="%1$stext:1.0" xmlns:table="%1$stable:1.0" xmlns:number="%1$sdatastyle:1.0" \
      xmlns:calcext="urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0" \
      office:version="1.3"><office:automatic-styles><number:date-style style:name="N51" \
      number:automatic-order="true" number:format-source="language"><number:month/>\
      <number:text>/</number:text><number:day/><number:text>/</number:text>\
      <number:year number:style="long"/><number:text> </number:text><number:hours/>\
      <number:text>:</number:text><number:minutes number:style="long"/></number:date-style>\
      <style:style style:name="ce1" style:family="table-cell" style:data-style-name="N51"/>\
      </office:automatic-styles><office:body><office:spreadsheet><table:table table:name="Log">\
      <table:table-column table:default-cell-style-name="ce1"/>\
      <table:table-column table:number-columns-repeated="16383"/><table:table-row>\
      """
          .formatted(NAMES);
  private static final String END =
      "</table:table></office:spreadsheet></office:body></office:document-content>";
  private static final String MANIFEST =
      """
      <?xml version="1.0" encoding="UTF-8"?>
      <manifest:manifest xmlns:manifest="%smanifest:1.0" manifest:version="1.3">
       <manifest:file-entry manifest:full-path="/" manifest:version="1.3" manifest:media-type="%s"/>
       <manifest:file-entry manifest:full-path="content.xml" manifest:media-type="text/xml"/>
      </manifest:manifest>
      """
          .formatted(NAMES, TYPE);

  private BigOds() {}

  static void write(Path file, int rows) throws IOException {
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file), 1 << 16);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      stored(zip, "mimetype", TYPE);
      zip.putNextEntry(new ZipEntry("content.xml"));
      StringBuilder line = new StringBuilder(BEGINNING);
      for (String header : BigLog.HEADERS) {
        text(line, header);
      }
      rest(line, BigLog.HEADERS.length);
      for (int row = 0; row < rows; row++) {
        line.append("<table:table-row>");
        row(line, row);
        zip.write(line.toString().getBytes(StandardCharsets.UTF_8));
        line.setLength(0);
      }
      zip.write(line.append(END).toString().getBytes(StandardCharsets.UTF_8));
      zip.closeEntry();
      zip.putNextEntry(new ZipEntry("META-INF/manifest.xml"));
      zip.write(MANIFEST.getBytes(StandardCharsets.UTF_8));
      zip.closeEntry();
    }
  }

  /** The first part says what the file is, and is not deflated. */
  private static void stored(ZipOutputStream zip, String name, String content) throws IOException {
    byte[] bytes = content.getBytes(StandardCharsets.US_ASCII);
    CRC32 sum = new CRC32();
    sum.update(bytes);
    ZipEntry entry = new ZipEntry(name);
    entry.setMethod(ZipEntry.STORED);
    entry.setSize(bytes.length);
    entry.setCrc(sum.getValue());
    zip.putNextEntry(entry);
    zip.write(bytes);
    zip.closeEntry();
  }

  private static void row(StringBuilder to, int row) {
    LocalDateTime day = DAY_0.plusMinutes(Math.round(BigLog.day(row) * 24 * 60));
    to.append("<table:table-cell office:value-type=\"date\" office:date-value=\"");
    to.append(STORED.format(day)).append("\" calcext:value-type=\"date\"><text:p>");
    to.append(SHOWN.format(day)).append("</text:p></table:table-cell>");
    text(to, BigLog.batch(row));
    number(to, decimal(BigLog.gravity(row), 4));
    number(to, decimal(BigLog.temperatureC(row), 1));
    number(to, decimal(BigLog.litres(row), 2));
    number(to, decimal(BigLog.acidity(row), 2));
    number(to, Integer.toString(BigLog.vessel(row)));
    String note = BigLog.note(row);
    if (!note.isEmpty()) {
      text(to, note);
    }
    rest(to, note.isEmpty() ? 7 : 8);
  }

  private static void text(StringBuilder to, String text) {
    to.append("<table:table-cell office:value-type=\"string\" calcext:value-type=\"string\">");
    to.append("<text:p>").append(text).append("</text:p></table:table-cell>");
  }

  private static void number(StringBuilder to, String number) {
    to.append("<table:table-cell office:value-type=\"float\" office:value=\"").append(number);
    to.append("\" calcext:value-type=\"float\"><text:p>").append(number);
    to.append("</text:p></table:table-cell>");
  }

  private static void rest(StringBuilder to, int used) {
    to.append("<table:table-cell table:number-columns-repeated=\"").append(COLUMNS - used);
    to.append("\"/></table:table-row>");
  }
}
