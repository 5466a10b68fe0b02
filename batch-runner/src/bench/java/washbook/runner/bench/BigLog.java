package washbook.runner.bench;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * A log of a million readings in eight columns, written as spreadsheet programs write it: dates as
 * styled numbers, words as shared strings, every cell with its address.
 */
final class BigLog {
  static final int ROWS = 1_000_000;
  static final int ROWS_OF_BATCH = 100;

  private static final String[] BATCHES = {"Plum 3", "Apple 7", "Molasses 2", "Sugar 4"};
  private static final String[] NOTES = {"", "", "", "racked", "stirred", "", "cooled", ""};
  static final String[] HEADERS = {
    "Date", "Batch", "SG", "Temp (\u00B0C)", "Volume (L)", "pH", "Vessel", "Note"
  };
  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  private static final String DOCUMENT =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String PACKAGE = "http://schemas.openxmlformats.org/package/2006/";
  private static final String TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.";

  private BigLog() {}

  static double originalGravity(int batch) {
    return (1060 + batch % 50) / 1000.0;
  }

  /** The reading of a row, counted from 0 without the header: falls evenly within the batch. */
  static double gravity(int row) {
    double original = originalGravity(row / ROWS_OF_BATCH);
    double share = row % ROWS_OF_BATCH / (ROWS_OF_BATCH - 1.0);
    return Math.round((original - share * (original - 1.002)) * 1e4) / 1e4;
  }

  static double temperatureC(int row) {
    return 15 + row * 7 % 160 / 10.0;
  }

  /** Days since 1899-12-30. */
  static double day(int row) {
    return 46000 + row / ROWS_OF_BATCH % 300 + row % 100 * 0.25;
  }

  static double litres(int row) {
    return 24 + row % 37 * 0.05;
  }

  static double acidity(int row) {
    return 3.2 + row * 11 % 53 * 0.01;
  }

  static int vessel(int row) {
    return 1 + row / ROWS_OF_BATCH % 12;
  }

  static String batch(int row) {
    return batchName(row / ROWS_OF_BATCH);
  }

  private static String batchName(int batch) {
    return BATCHES[batch % BATCHES.length] + " of week " + batch / BATCHES.length;
  }

  static String note(int row) {
    return NOTES[row % NOTES.length];
  }

  static void write(Path file) throws IOException {
    write(file, ROWS);
  }

  static void write(Path file, int rows) throws IOException {
    write(file, rows, 1);
  }

  /** The same log on so many sheets. */
  static void write(Path file, int rows, int sheets) throws IOException {
    StringBuilder overrides = new StringBuilder();
    StringBuilder names = new StringBuilder();
    StringBuilder relations = new StringBuilder();
    for (int i = 1; i <= sheets; i++) {
      String name = i == 1 ? "Log" : "Log " + i;
      overrides.append(override("/xl/worksheets/sheet" + i + ".xml", "worksheet"));
      relations.append(relation(i + 2, "worksheet", "worksheets/sheet" + i + ".xml"));
      names.append("<sheet name=\"" + name + "\" sheetId=\"" + i + "\" r:id=\"rId" + (i + 2));
      names.append("\"/>");
    }
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file), 1 << 16);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      entry(
          zip,
          "[Content_Types].xml",
          "<Types xmlns=\""
              + PACKAGE
              + "content-types\"><Default Extension=\"rels\" ContentType=\""
              + "application/vnd.openxmlformats-package.relationships+xml\"/>"
              + override("/xl/workbook.xml", "sheet.main")
              + overrides
              + override("/xl/styles.xml", "styles")
              + override("/xl/sharedStrings.xml", "sharedStrings")
              + "</Types>");
      entry(zip, "_rels/.rels", relations(relation(1, "officeDocument", "xl/workbook.xml")));
      entry(
          zip,
          "xl/workbook.xml",
          "<workbook xmlns=\""
              + MAIN
              + "\" xmlns:r=\""
              + DOCUMENT
              + "\"><sheets>"
              + names
              + "</sheets></workbook>");
      entry(
          zip,
          "xl/_rels/workbook.xml.rels",
          relations(
              relations.toString(),
              relation(1, "styles", "styles.xml"),
              relation(2, "sharedStrings", "sharedStrings.xml")));
      for (int i = 1; i <= sheets; i++) {
        zip.putNextEntry(new ZipEntry("xl/worksheets/sheet" + i + ".xml"));
        writeSheet(zip, rows);
        zip.closeEntry();
      }
      entry(
          zip,
          "xl/styles.xml",
          "<styleSheet xmlns=\""
              + MAIN
              + "\"><fonts count=\"1\"><font/></fonts><fills count=\"1\"><fill/></fills><borders"
              + " count=\"1\"><border/></borders><cellStyleXfs count=\"1\"><xf"
              + " numFmtId=\"0\"/></cellStyleXfs><cellXfs count=\"2\"><xf numFmtId=\"0\""
              + " xfId=\"0\"/><xf numFmtId=\"22\" xfId=\"0\""
              + " applyNumberFormat=\"1\"/></cellXfs></styleSheet>");
      zip.putNextEntry(new ZipEntry("xl/sharedStrings.xml"));
      writeStrings(zip, rows);
      zip.closeEntry();
    }
  }

  private static String override(String part, String type) {
    return "<Override PartName=\"" + part + "\" ContentType=\"" + TYPE + type + "+xml\"/>";
  }

  private static String relations(String... relations) {
    return "<Relationships xmlns=\""
        + PACKAGE
        + "relationships\">"
        + String.join("", relations)
        + "</Relationships>";
  }

  private static String relation(int id, String type, String target) {
    return "<Relationship Id=\"rId"
        + id
        + "\" Type=\""
        + DOCUMENT
        + "/"
        + type
        + "\" Target=\""
        + target
        + "\"/>";
  }

  private static void entry(ZipOutputStream zip, String name, String content) throws IOException {
    zip.putNextEntry(new ZipEntry(name));
    write(zip, "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n" + content);
    zip.closeEntry();
  }

  private static void write(OutputStream to, String text) throws IOException {
    to.write(text.getBytes(StandardCharsets.UTF_8));
  }

  private static void writeStrings(OutputStream to, int rows) throws IOException {
    write(to, "<sst xmlns=\"" + MAIN + "\">");
    for (String header : HEADERS) {
      write(to, "<si><t>" + header + "</t></si>");
    }
    for (String note : NOTES) {
      write(to, "<si><t>" + note + "</t></si>");
    }
    for (int batch = 0; batch < (rows + ROWS_OF_BATCH - 1) / ROWS_OF_BATCH; batch++) {
      write(to, "<si><t>" + batchName(batch) + "</t></si>");
    }
    write(to, "</sst>");
  }

  private static void writeSheet(OutputStream to, int rows) throws IOException {
    write(
        to,
        "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n<worksheet xmlns=\""
            + MAIN
            + "\"><dimension ref=\"A1:H"
            + (rows + 1)
            + "\"/><sheetData><row r=\"1\" spans=\"1:8\">");
    for (int i = 0; i < HEADERS.length; i++) {
      write(to, "<c r=\"" + (char) ('A' + i) + "1\" t=\"s\"><v>" + i + "</v></c>");
    }
    write(to, "</row>");
    StringBuilder line = new StringBuilder();
    for (int row = 0; row < rows; row++) {
      int number = row + 2;
      int batch = row / ROWS_OF_BATCH;
      line.setLength(0);
      line.append("<row r=\"").append(number).append("\" spans=\"1:8\">");
      cell(line, 'A', number, " s=\"1\"", decimal(day(row), 2));
      cell(line, 'B', number, " t=\"s\"", Integer.toString(16 + batch));
      cell(line, 'C', number, "", decimal(gravity(row), 4));
      cell(line, 'D', number, "", decimal(temperatureC(row), 1));
      cell(line, 'E', number, "", decimal(litres(row), 2));
      cell(line, 'F', number, "", decimal(acidity(row), 2));
      cell(line, 'G', number, "", Integer.toString(vessel(row)));
      String note = note(row);
      if (!note.isEmpty()) {
        cell(line, 'H', number, " t=\"s\"", Integer.toString(8 + row % 8));
      }
      write(to, line.append("</row>").toString());
    }
    write(to, "</sheetData></worksheet>");
  }

  private static void cell(StringBuilder to, char column, int row, String more, String value) {
    to.append("<c r=\"").append(column).append(row).append('"').append(more);
    to.append("><v>").append(value).append("</v></c>");
  }

  static String decimal(double number, int digits) {
    return String.format(Locale.ROOT, "%." + digits + "f", number);
  }
}
