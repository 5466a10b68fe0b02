package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.ServerSocket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.zip.ZipFile;
import org.apache.poi.hssf.record.crypto.Biff8EncryptionKey;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import washbook.runner.RawOds;
import washbook.runner.RawXlsx;

/** Files made to do harm: what cannot be taken safely is refused with the reason. */
@Timeout(120)
final class HostileFilesTest {
  private static final String ROWS =
      "<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>Day</t></is></c>"
          + "<c r=\"B1\" t=\"inlineStr\"><is><t>SG</t></is></c>"
          + "<c r=\"C1\" t=\"inlineStr\"><is><t>Temp °C</t></is></c></row>"
          + "<row r=\"2\"><c r=\"A2\"><v>0</v></c><c r=\"B2\"><v>1.085</v></c><c r=\"C2\"><v>20</v></c></row>"
          + "<row r=\"3\"><c r=\"A3\"><v>3</v></c><c r=\"B3\"><v>1.050</v></c><c r=\"C3\"><v>20</v></c></row>"
          + "<row r=\"4\"><c r=\"A4\"><v>6</v></c><c r=\"B4\"><v>1.020</v></c><c r=\"C4\"><v>20</v></c></row>";
  private static final String DATA = "<sheetData>" + ROWS + "</sheetData>";
  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

  @TempDir private Path folder;

  // Archives

  @Test
  void aPartOutOfProportionIsRefused() throws IOException {
    refused(
        RawXlsx.withSheet(DATA).part("xl/worksheets/sheet1.xml", new byte[80 << 20]),
        "out of proportion");
  }

  @Test
  void manyPartsThatAreOutOfProportionTogetherAreRefused() throws IOException {
    StringBuilder sheets = new StringBuilder();
    StringBuilder relations = new StringBuilder();
    RawXlsx raw = RawXlsx.withSheet(DATA);
    String blank = "<worksheet xmlns=\"" + MAIN + "\"><sheetData>" + "<!---->".repeat(4 << 20);
    byte[] sheet = (blank + "</sheetData></worksheet>").getBytes(StandardCharsets.UTF_8);
    for (int i = 2; i < 6; i++) {
      raw.part("xl/worksheets/sheet" + i + ".xml", sheet);
      sheets.append("<sheet name=\"S").append(i).append("\" sheetId=\"").append(i);
      sheets.append("\" r:id=\"s").append(i).append("\"/>");
      relations.append("<Relationship Id=\"s").append(i).append("\" Type=\"x/worksheet\" ");
      relations.append("Target=\"worksheets/sheet").append(i).append(".xml\"/>");
    }
    insert(raw, "xl/workbook.xml", "</sheets>", sheets.toString());
    insert(raw, "xl/_rels/workbook.xml.rels", "</Relationships>", relations.toString());
    refused(raw, "Its parts would grow out of proportion");
  }

  @Test
  void onePartReadAsManySheetsIsRefusedToo() throws IOException {
    StringBuilder sheets = new StringBuilder();
    for (int i = 2; i < 400; i++) {
      sheets.append("<sheet name=\"S").append(i).append("\" sheetId=\"").append(i);
      sheets.append("\" r:id=\"b\"/>");
    }
    RawXlsx raw = RawXlsx.withSheet(DATA + "<!--" + " ".repeat(8 << 20) + "-->");
    insert(raw, "xl/workbook.xml", "</sheets>", sheets.toString());
    refused(raw, "Its parts would grow out of proportion");
  }

  @Test
  void anEntryThatLiesAboutItsSizeIsRefused() throws IOException {
    Path file = RawXlsx.withSheet(DATA + " ".repeat(100_000)).write(folder.resolve("lie.xlsx"));
    byte[] bytes = Files.readAllBytes(file);
    byte[] name = "xl/worksheets/sheet1.xml".getBytes(StandardCharsets.UTF_8);
    int record = lastIndexOf(bytes, name) - 46;
    bytes[record + 24] = 100;
    bytes[record + 25] = 0;
    bytes[record + 26] = 0;
    refused(Files.write(file, bytes), "damaged");
  }

  @Test
  void namesThatLeadElsewhereAreOnlyNames() throws IOException {
    byte[] evil = "evil".getBytes(StandardCharsets.UTF_8);
    RawXlsx raw = RawXlsx.withSheet(DATA);
    String[] names = {"../../evil.txt", "/tmp/washbook-evil.txt", "..\\evil.txt", "C:\\evil.txt"};
    for (String name : names) {
      raw.part(name, evil);
    }
    Path copy = filled(raw.write(folder.resolve("log.xlsx")));
    try (ZipFile zip = new ZipFile(copy.toFile())) {
      for (String name : names) {
        assertArrayEquals(evil, zip.getInputStream(zip.getEntry(name)).readAllBytes());
      }
    }
    assertFalse(Files.exists(folder.getParent().resolve("evil.txt")));
    assertFalse(Files.exists(Path.of("/tmp/washbook-evil.txt")));
    assertFalse(Files.exists(folder.resolve("evil.txt")));
  }

  @Test
  void aRelationThatLeadsOutOfTheArchiveFindsNothing() throws IOException {
    Path secret = Files.writeString(folder.resolve("sheet9.xml"), "secret");
    RawXlsx raw = RawXlsx.withSheet(DATA);
    String relations = text(raw, "xl/_rels/workbook.xml.rels");
    raw.part(
        "xl/_rels/workbook.xml.rels",
        relations.replace("worksheets/sheet1.xml", "../../../.." + secret));
    refused(raw, "is missing");
  }

  @Test
  void twoPartsOfTheSameNameAreRefused() throws IOException {
    refused(
        RawXlsx.withSheet(DATA).part("XL/Workbook.xml", "<workbook/>"), "two parts of the same");
  }

  // XML

  @Test
  void entitiesAreNeverExpandedNorFetched() throws IOException {
    StringBuilder laughs = new StringBuilder("<!DOCTYPE x [<!ENTITY a0 \"ha\">");
    for (int i = 1; i < 30; i++) {
      laughs.append("<!ENTITY a" + i + " \"&a" + (i - 1) + ";&a" + (i - 1) + ";\">");
    }
    String external =
        "<!DOCTYPE x SYSTEM \"http://127.0.0.1:%d/x.dtd\" [<!ENTITY a29 SYSTEM \"%s\">";
    try (ServerSocket server = new ServerSocket(0)) {
      Path secret = Files.writeString(folder.resolve("secret.txt"), "secret");
      for (String type :
          new String[] {
            laughs + "]>", external.formatted(server.getLocalPort(), secret.toUri()) + "]>"
          }) {
        String sheet = "<worksheet xmlns=\"" + MAIN + "\">" + DATA.replace("Day", "Day&a29;");
        refused(
            RawXlsx.withSheet("").part("xl/worksheets/sheet1.xml", type + sheet + "</worksheet>"),
            "document type");
        RawXlsx raw = RawXlsx.withSheet(DATA);
        raw.part("xl/workbook.xml", type + text(raw, "xl/workbook.xml").replace("Log", "&a29;"));
        refused(raw, "document type");
        RawOds ods = RawOds.log("").prolog(type);
        refused(ods.write(folder.resolve("hostile.ods")), "document type");
      }
      assertNobodyCalled(server);
    }
  }

  @Test
  void hugeAttributesAndTextsAreRefused() throws IOException {
    String huge = "x".repeat(20 << 20);
    refused(
        RawXlsx.withSheet("<sheetPr a=\"" + randomLike(20 << 20) + "\"/>" + DATA), "longer than");
    refused(RawXlsx.withSheet("<!--" + huge + "-->" + DATA), "longer than");
  }

  @Test
  void hundredThousandsOfAttributesAndElementsInsideEachOtherDoNoHarm() throws IOException {
    StringBuilder attributes = new StringBuilder("<sheetPr");
    for (int i = 0; i < 300_000; i++) {
      attributes.append(" a").append(i).append("=\"\"");
    }
    filled(RawXlsx.withSheet(attributes + "/>" + DATA).write(folder.resolve("attributes.xlsx")));
    int depth = 500_000;
    String deep = "<a>".repeat(depth) + "</a>".repeat(depth);
    filled(RawXlsx.withSheet(DATA + deep).write(folder.resolve("deep.xlsx")));
    RawXlsx raw = RawXlsx.withSheet(DATA);
    insert(raw, "xl/workbook.xml", "</workbook>", deep);
    Cli deepBook = Cli.run("fill", raw.write(folder.resolve("book.xlsx")).toString());
    assertTrue(deepBook.code() == 0 || deepBook.code() == 3, deepBook.out());
    filled(
        RawOds.log(
                "<text:p>"
                    + "<text:span>".repeat(depth)
                    + "</text:span>".repeat(depth)
                    + "</text:p>")
            .write(folder.resolve("deep.ods")));
  }

  // Dimensions

  @Test
  void statedDimensionsAreNotBelieved() throws IOException {
    String merged = "<mergeCells><mergeCell ref=\"E1:XFD1048576\"/></mergeCells>";
    filled(
        RawXlsx.withSheet("<dimension ref=\"A1:XFD1048576\"/>" + DATA)
            .write(folder.resolve("dimension.xlsx")));
    ended(RawXlsx.withSheet(DATA + merged).write(folder.resolve("merged.xlsx")));
    String corner = "<row r=\"1048576\"><c r=\"XFD1048576\"><v>1</v></c></row>";
    ended(
        RawXlsx.withSheet("<sheetData>" + ROWS + corner + "</sheetData>")
            .write(folder.resolve("corner.xlsx")));
    String outside = "<row r=\"1048577\"><c r=\"A1048577\"><v>1</v></c></row>";
    refused(
        RawXlsx.withSheet("<sheetData>" + ROWS + outside + "</sheetData>"), "outside of any sheet");
  }

  @Test
  void repeatedRowsAndColumnsAreCountedNotBelieved() throws IOException {
    String blank = RawOds.row(1_048_000, "<table:table-cell/>");
    filled(RawOds.log("", blank).write(folder.resolve("blank.ods")));
    String wide =
        "<table:table-cell table:number-columns-repeated=\"%d\" office:value-type=\"float\""
            + " office:value=\"1\"/>";
    ended(RawOds.log("", RawOds.row(1, wide.formatted(16_000))).write(folder.resolve("wide.ods")));
    refused(
        RawOds.log("", RawOds.row(1_000_000, wide.formatted(16_384)))
            .write(folder.resolve("full.ods")),
        "more memory");
    refused(
        RawOds.log("", RawOds.row(1, wide.formatted(2_000_000_000)))
            .write(folder.resolve("far.ods")),
        "out of range");
    refused(
        RawOds.log("", RawOds.row(2_000_000_000, wide.formatted(1)))
            .write(folder.resolve("long.ods")),
        "out of range");
  }

  @Test
  void linksToOtherFilesAndProgramsStayAndAreNeverFollowed() throws IOException {
    try (ServerSocket server = new ServerSocket(0)) {
      String url = "http://127.0.0.1:" + server.getLocalPort() + "/other.xlsx";
      String dde =
          "<externalLink xmlns=\""
              + MAIN
              + "\"><ddeLink ddeService=\"cmd\" ddeTopic=\"/C calc\"/></externalLink>";
      String relation =
          "<Relationships><Relationship Id=\"x\" Type=\"x/externalLinkPath\" Target=\""
              + url
              + "\" TargetMode=\"External\"/></Relationships>";
      RawXlsx raw =
          RawXlsx.withSheet(DATA.replace("<v>20</v>", "<f>[1]Other!A1</f><v>20</v>"))
              .part("xl/externalLinks/externalLink1.xml", dde)
              .part("xl/externalLinks/_rels/externalLink1.xml.rels", relation);
      insert(
          raw,
          "xl/_rels/workbook.xml.rels",
          "</Relationships>",
          "<Relationship Id=\"w\" Type=\"x/sharedStrings\" TargetMode=\"External\" Target=\""
              + url
              + "\"/>");
      Path copy = filled(raw.write(folder.resolve("links.xlsx")));
      try (ZipFile zip = new ZipFile(copy.toFile())) {
        for (String name :
            new String[] {
              "xl/externalLinks/externalLink1.xml", "xl/externalLinks/_rels/externalLink1.xml.rels"
            }) {
          assertArrayEquals(raw.bytes(name), zip.getInputStream(zip.getEntry(name)).readAllBytes());
        }
        String sheet =
            new String(
                zip.getInputStream(zip.getEntry("xl/worksheets/sheet1.xml")).readAllBytes(),
                StandardCharsets.UTF_8);
        assertTrue(sheet.contains("<f>[1]Other!A1</f>"), sheet);
      }
      String link =
          "<table:table-source xlink:type=\"simple\" xlink:href=\""
              + url
              + "\" table:table-name=\"A\"/>";
      String ddeOds =
          "<table:dde-links><table:dde-link><office:dde-source office:dde-application=\"cmd\""
              + " office:dde-topic=\""
              + url
              + "\" office:dde-item=\"A1\" office:automatic-update=\"true\"/>"
              + "<table:table><table:table-column/><table:table-row><table:table-cell/>"
              + "</table:table-row></table:table></table:dde-link></table:dde-links>";
      Path ods =
          filled(
              RawOds.log("").inTable(link).behindTables(ddeOds).write(folder.resolve("links.ods")));
      try (ZipFile zip = new ZipFile(ods.toFile())) {
        String content =
            new String(
                zip.getInputStream(zip.getEntry("content.xml")).readAllBytes(),
                StandardCharsets.UTF_8);
        assertTrue(content.contains(link) && content.contains(ddeOds), content);
      }
      assertNobodyCalled(server);
    }
  }

  @Test
  void strictAndSharedWorkbooksAreFilledAndKeepTheirParts() throws IOException {
    String strict = "http://purl.oclc.org/ooxml/spreadsheetml/main";
    filled(
        RawXlsx.strict("<worksheet xmlns=\"" + strict + "\">" + DATA + "</worksheet>")
            .write(folder.resolve("strict.xlsx")));
    byte[] log = "<headers/>".getBytes(StandardCharsets.UTF_8);
    RawXlsx raw =
        RawXlsx.withSheet(DATA)
            .part("xl/revisions/revisionHeaders.xml", log)
            .part("xl/revisions/userNames.xml", log);
    Path copy = filled(raw.write(folder.resolve("shared.xlsx")));
    try (ZipFile zip = new ZipFile(copy.toFile())) {
      assertArrayEquals(
          log, zip.getInputStream(zip.getEntry("xl/revisions/revisionHeaders.xml")).readAllBytes());
    }
  }

  @Test
  void signedAndEncryptedFilesAreRefused() throws IOException {
    refused(
        RawXlsx.withSheet(DATA).part("_xmlsignatures/origin.sigs", new byte[0]),
        "digitally signed");
    refused(
        RawOds.log("")
            .part("META-INF/documentsignatures.xml", "<x/>")
            .write(folder.resolve("s.ods")),
        "digitally signed");
    Path xls = folder.resolve("locked.xls");
    Biff8EncryptionKey.setCurrentUserPassword("plum");
    try (HSSFWorkbook book = new HSSFWorkbook();
        var out = Files.newOutputStream(xls)) {
      book.createSheet("Log").createRow(0).createCell(0).setCellValue("SG");
      book.write(out);
    } finally {
      Biff8EncryptionKey.setCurrentUserPassword(null);
    }
    refused(xls, "encrypted");
  }

  // Helpers

  private static String randomLike(int length) {
    StringBuilder text = new StringBuilder(length);
    for (int i = 0; text.length() < length; i++) {
      text.append(Integer.toHexString(i * 0x9E3779B9));
    }
    return text.toString();
  }

  private static void insert(RawXlsx raw, String part, String before, String what) {
    raw.part(part, text(raw, part).replace(before, what + before));
  }

  private static String text(RawXlsx raw, String part) {
    return new String(raw.bytes(part), StandardCharsets.UTF_8);
  }

  private static int lastIndexOf(byte[] bytes, byte[] sought) {
    for (int i = bytes.length - sought.length; i >= 0; i--) {
      if (Arrays.equals(bytes, i, i + sought.length, sought, 0, sought.length)) {
        return i;
      }
    }
    throw new IllegalArgumentException("not there");
  }

  private static void assertNobodyCalled(ServerSocket server) throws IOException {
    server.setSoTimeout(200);
    try {
      server.accept().close();
      throw new AssertionError("something was fetched");
    } catch (SocketTimeoutException nobody) {
      // as it should be
    }
  }

  private void refused(RawXlsx raw, String reason) throws IOException {
    refused(raw.write(folder.resolve("hostile.xlsx")), reason);
  }

  private static void refused(Path file, String reason) throws IOException {
    byte[] before = Files.readAllBytes(file);
    Cli done = Cli.run("fill", file.toString());
    assertEquals(3, done.code(), done.out() + done.err());
    assertTrue(done.out().contains(reason), done.out());
    assertFalse(Files.exists(copyOf(file)));
    assertArrayEquals(before, Files.readAllBytes(file));
  }

  private static Path filled(Path file) throws IOException {
    Cli done = Cli.run("fill", file.toString());
    assertEquals(0, done.code(), done.out() + done.err());
    assertTrue(done.out().contains("filled, 3 of 3 rows"), done.out());
    return copyOf(file);
  }

  /** Either way will do, if only it comes to an end. */
  private static void ended(Path file) {
    Cli done = Cli.run("fill", file.toString());
    assertTrue(done.code() == 0 || done.code() == 1 || done.code() == 3, done.out() + done.err());
  }

  private static Path copyOf(Path file) {
    String name = file.getFileName().toString();
    int dot = name.lastIndexOf('.');
    return file.resolveSibling(name.substring(0, dot) + ".filled" + name.substring(dot));
  }
}
