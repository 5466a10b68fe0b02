package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.log.answer.KeptAnswers;
import washbook.log.understand.LogMap;
import washbook.runner.read.CustomProperty;

/** Answers that a document keeps are used, and it is said; a map of the log's own comes first. */
class KeptAnswersTest {
  private static final String BRIX = "sheet = Log\nheader row = 2\ncolumn B = GRAVITY in BRIX";
  private static final String REFRACTOMETER = BRIX.replace("GRAVITY", "REFRACTOMETER");
  private static final Object[][] LOG = {
    {"Plum wine, fermentation"},
    {"Day", "Reading", "Temp °C"},
    {0, 20.5, 20},
    {3, 14, 24},
    {6, 9, 21},
    {9, 6, 21}
  };

  @TempDir Path folder;
  private Path log;

  @BeforeEach
  void aLogWithAQuestion() throws IOException {
    log = folder.resolve("plum.xlsx");
    write(null);
  }

  private void write(String answers) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(log)) {
      Sheet sheet = workbook.createSheet("Log");
      for (Object[] values : LOG) {
        Row row = sheet.createRow(sheet.getPhysicalNumberOfRows());
        for (Object value : values) {
          if (value instanceof Number number) {
            row.createCell(Math.max(0, row.getLastCellNum())).setCellValue(number.doubleValue());
          } else {
            row.createCell(Math.max(0, row.getLastCellNum())).setCellValue(value.toString());
          }
        }
      }
      if (answers != null) {
        workbook.getProperties().getCustomProperties().addProperty("Made by", "someone else");
        workbook.getProperties().getCustomProperties().addProperty(KeptAnswers.PROPERTY, answers);
      }
      workbook.write(out);
    }
  }

  private String page() throws IOException {
    Path report = folder.resolve("r.html");
    Cli.run("fill", log.toString(), "--dry-run", "--report", report.toString());
    return Files.readString(report);
  }

  @Test
  void withoutAnswersTheLogIsAskedAbout() {
    Cli filled = Cli.run("fill", log.toString(), "--dry-run");
    assertEquals(ExitCode.REFUSED, filled.code());
    assertTrue(filled.out().contains("On which scale"), filled.out());
  }

  @Test
  void keptAnswersFillTheLogAndItIsSaid() throws IOException {
    write(BRIX);
    Cli filled = Cli.run("fill", log.toString(), "--dry-run");
    assertEquals(ExitCode.DONE, filled.code(), filled.err());
    assertTrue(filled.out().contains("by the answers kept in it"), filled.out());
    assertTrue(filled.out().contains("Rows: 5; filled: 4; refused: 0"), filled.out());
    assertTrue(page().contains("filled, by the answers kept in it"));
    String explained = Cli.run("explain", log.toString()).out();
    assertTrue(explained.contains("in its custom property Washbook answers."), explained);
    assertTrue(explained.contains("gravity in BRIX"), explained);
  }

  @Test
  void theLogsOwnMapGoesBeforeThemAndTheyGoBeforeThatOfTheFolder() throws IOException {
    write(BRIX);
    Files.writeString(folder.resolve("washbook.map"), REFRACTOMETER);
    assertTrue(Cli.run("explain", log.toString()).out().contains("gravity in BRIX"));
    Files.writeString(folder.resolve("plum.map"), REFRACTOMETER);
    String told = Cli.run("explain", log.toString()).out();
    assertTrue(told.contains("plum.map"), told);
    assertFalse(told.contains("gravity in BRIX"), told);
  }

  /** The new map takes the place of what is kept, so it holds that as well. */
  @Test
  void whatIsAnsweredOnTheTerminalIsAddedToThem() throws IOException {
    write("sheet = Log\nheader row = 2\ncalibration = 60 F");
    InputStream before = System.in;
    System.setIn(new ByteArrayInputStream("1\n".getBytes(StandardCharsets.UTF_8)));
    try {
      assertEquals(ExitCode.DONE, Cli.run("explain", log.toString(), "--ask").code());
    } finally {
      System.setIn(before);
    }
    String map = Files.readString(folder.resolve("plum.map"));
    assertTrue(map.contains("calibration = 60 F") || map.contains("calibration = 15.5"), map);
    assertTrue(map.contains("column B = GRAVITY in BRIX"), map);
  }

  @Test
  void answersThatCannotBeReadRefuseTheLog() throws IOException {
    write("warm");
    Cli filled = Cli.run("fill", log.toString(), "--dry-run");
    assertEquals(ExitCode.FILE, filled.code());
    assertTrue(
        filled.out().contains("The answers kept in it, in the custom property"), filled.out());
  }

  @Test
  void theTextOfAnswersIsTheirMapWithoutRemarks() {
    LogMap map = LogMap.parse("# a remark\n" + BRIX);
    assertEquals(map, KeptAnswers.read(KeptAnswers.text(map)));
    assertFalse(KeptAnswers.text(map).contains("#"));
  }

  @Test
  void propertiesOfOpenDocumentsAreReadAndThoseOfEncryptedOnesAreNot() throws IOException {
    String meta =
        """
        <office:document-meta><office:meta>\
        <meta:user-defined meta:name="Made by">someone else</meta:user-defined>\
        <meta:user-defined meta:name="Washbook answers">sheet = Plum &amp; Apple
        column B = <![CDATA[GRAVITY]]></meta:user-defined></office:meta></office:document-meta>""";
    Path plain = document("plain.ods", "<manifest/>", meta);
    assertEquals(
        Optional.of("sheet = Plum & Apple\ncolumn B = GRAVITY"),
        CustomProperty.of(plain, KeptAnswers.PROPERTY));
    assertEquals(Optional.empty(), CustomProperty.of(plain, "Another"));
    Path encrypted = document("encrypted.ods", "<encryption-data/>", "\u0001\u0002");
    assertEquals(Optional.empty(), CustomProperty.of(encrypted, KeptAnswers.PROPERTY));
    assertEquals(Optional.empty(), CustomProperty.of(log, KeptAnswers.PROPERTY));
  }

  private Path document(String name, String manifest, String meta) throws IOException {
    Path file = folder.resolve(name);
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      for (List<String> part :
          List.of(
              List.of("mimetype", "application/vnd.oasis.opendocument.spreadsheet"),
              List.of("META-INF/manifest.xml", manifest),
              List.of("meta.xml", meta))) {
        zip.putNextEntry(new ZipEntry(part.get(0)));
        zip.write(part.get(1).getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
      }
    }
    return file;
  }
}
