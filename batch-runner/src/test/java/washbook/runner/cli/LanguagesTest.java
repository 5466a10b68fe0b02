package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipFile;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.language.Language;
import washbook.runner.TestLogs;
import washbook.runner.report.OverviewColumn;

/** What people read is in their language, whatever wrote the file before. */
final class LanguagesTest {
  private static final Pattern ENGLISH =
      Pattern.compile(
          "\\b(the|and|with|files|row|rows|batch|batches|filled|refused|reading|gravity"
              + "|since|warnings|compared|column|differing)\\b",
          Pattern.CASE_INSENSITIVE);

  @TempDir private Path folder;

  private static String page(Path page) throws IOException {
    return Files.readString(page)
        .replaceAll("(?s)<(script|style)>.*?</\\1>", "")
        .replaceAll("<[^>]*>", " ");
  }

  private static void assertNoEnglish(String text) {
    Matcher found = ENGLISH.matcher(text);
    assertFalse(
        found.find(), () -> text.substring(Math.max(0, found.start() - 60), found.end() + 20));
  }

  @ParameterizedTest
  @EnumSource(value = Language.class, names = "EN", mode = EnumSource.Mode.EXCLUDE)
  void aReportAndWhatIsShownHaveNoEnglishInThem(Language language) throws IOException {
    Path log = TestLogs.withBadRow(folder.resolve("Plum 3.xlsx"), 1.0852, 9, 4);
    Path report = folder.resolve("r.html");
    Cli run =
        Cli.run(
            "fill", log.toString(), "--language", language.code(), "--report", report.toString());
    assertTrue(Files.readString(report).contains("<html lang=\"" + language.code() + "\">"));
    String text = page(report).replace("1.0852", "") + run.out() + run.err();
    assertNoEnglish(text.replace(folder.toString(), "").replace(".filled.xlsx", ""));
    assertTrue(text.contains("1,085"), text);
    Cli season =
        Cli.run(
            "season",
            folder.toString(),
            "--language",
            language.code(),
            "--out",
            folder.resolve("s.html").toString());
    assertEquals(ExitCode.REFUSED, season.code(), season.err());
    assertNoEnglish((page(folder.resolve("s.html")) + season.out()).replace(folder.toString(), ""));
  }

  @ParameterizedTest
  @EnumSource(value = Language.class, names = "EN", mode = EnumSource.Mode.EXCLUDE)
  void anAuditHasNoEnglishInItButTheLogsOwnWords(Language language) throws IOException {
    Path log = TestLogs.withOwnAbv(folder.resolve("Plum 3.xlsx"), 1.100, 12, 131.25);
    Path report = folder.resolve("r.html");
    Cli run =
        Cli.run(
            "audit", log.toString(), "--language", language.code(), "--report", report.toString());
    assertEquals(ExitCode.DONE, run.code(), run.err());
    assertNoEnglish((page(report) + run.out() + run.err()).replace(folder.toString(), ""));
  }

  @Test
  void theReportForProgramsKeepsItsNamesAndCodes() throws IOException {
    Path log = TestLogs.withOwnAbv(folder.resolve("Plum 3.xlsx"), 1.100, 12, 131.25);
    Path report = folder.resolve("r.json");
    Cli.run("audit", log.toString(), "--language", "de", "--report", report.toString());
    JsonObject file =
        JsonParser.parseString(Files.readString(report))
            .getAsJsonObject()
            .getAsJsonArray("files")
            .get(0)
            .getAsJsonObject();
    assertEquals("compared", file.get("status").getAsString());
    JsonObject column = file.getAsJsonArray("columns").get(0).getAsJsonObject();
    assertEquals("Alcohol to date (% vol)", column.get("comparedWith").getAsString());
    assertEquals("RULE_OF_THUMB", column.getAsJsonArray("causes").get(0).getAsString());
    assertEquals(
        "eine Faustformel, etwa 131 mal die Differenz der Dichten"
            + " (131,25 x (Anfangsdichte - jetzige Dichte))",
        column.get("cause").getAsString());
    Path page = folder.resolve("whole.html");
    Cli merged =
        Cli.run("report", "merge", report.toString(), "--language", "fr", "--out", page.toString());
    assertEquals(ExitCode.DONE, merged.code(), merged.err());
    assertTrue(Files.readString(page).contains("Alcool à ce jour (% vol)"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"html", "csv"})
  void aReportInOneLanguageTakesThePlaceOfOneInAnother(String kind) throws IOException {
    Path log = TestLogs.withOwnAbv(folder.resolve("Plum 3.xlsx"), 1.100, 12, 131.25);
    Path report = folder.resolve("r." + kind);
    for (String command : List.of("fill", "audit")) {
      for (String language : List.of("en", "de", "en")) {
        Cli run =
            Cli.run(command, log.toString(), "--language", language, "--report", report.toString());
        assertEquals(ExitCode.DONE, run.code(), run.err());
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"xlsx", "ods", "csv", "html"})
  void aSeasonGoesOnInAnotherLanguage(String kind) throws IOException {
    TestLogs.plain(folder.resolve("logs/Plum 3.xlsx"), 1.085, 9);
    Path out = folder.resolve("season." + kind);
    for (String language : List.of("en", "pt", "en")) {
      Cli run = season(out, language);
      assertEquals(ExitCode.DONE, run.code(), language + run.err());
    }
    assertTrue(Files.size(out) > 0);
  }

  private Cli season(Path out, String language) {
    String logs = folder.resolve("logs").toString();
    return Cli.run("season", logs, "--language", language, "--out", out.toString());
  }

  @Test
  void whatThePersonAddedToASeasonIsKeptInAnotherLanguage() throws IOException {
    TestLogs.plain(folder.resolve("logs/Plum 3.xlsx"), 1.085, 9);
    Path out = folder.resolve("season.xlsx");
    season(out, "de");
    int ours = OverviewColumn.values().length;
    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(out))) {
      XSSFSheet sheet = book.getSheet("Saison");
      sheet.getRow(3).createCell(ours).setCellValue("State");
      sheet.getRow(4).createCell(ours).setCellValue("in the barn");
      try (OutputStream to = Files.newOutputStream(folder.resolve("edited.xlsx"))) {
        book.write(to);
      }
    }
    Path edited = folder.resolve("edited.xlsx");
    Cli run = season(edited, "nl");
    assertEquals(ExitCode.DONE, run.code(), run.err());
    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(edited))) {
      XSSFSheet sheet = book.getSheetAt(0);
      assertEquals("Washbook-seizoen", sheet.getRow(0).getCell(0).getStringCellValue());
      assertEquals("Partij", sheet.getRow(3).getCell(0).getStringCellValue());
      assertEquals("State", sheet.getRow(3).getCell(ours).getStringCellValue());
      assertEquals("in the barn", sheet.getRow(4).getCell(ours).getStringCellValue());
      assertEquals(3, book.getNumberOfSheets());
    }
  }

  @Test
  void chartsAreInTheLanguageOfTheirLogAndAreFoundAgain() throws IOException {
    Path log = folder.resolve("Pflaume.xlsx");
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      XSSFSheet sheet = book.createSheet("Gärung");
      Object[][] rows = new Object[9][];
      rows[0] = new Object[] {"Datum", "Dichte", "Temperatur"};
      for (int i = 1; i < rows.length; i++) {
        rows[i] = new Object[] {45_000.0 + i, 1.09 - 0.01 * i, 20.0};
      }
      for (int i = 0; i < rows.length; i++) {
        var row = sheet.createRow(i);
        for (int column = 0; column < 3; column++) {
          if (rows[i][column] instanceof Double number) {
            row.createCell(column).setCellValue(number);
          } else {
            row.createCell(column).setCellValue((String) rows[i][column]);
          }
        }
      }
      try (OutputStream to = Files.newOutputStream(log)) {
        book.write(to);
      }
    }
    for (int i = 0; i < 2; i++) {
      Cli run = Cli.run("fill", log.toString(), "--in-place", "--chart");
      assertEquals(ExitCode.DONE, run.code(), run.out() + run.err());
    }
    StringBuilder charts = new StringBuilder();
    try (ZipFile zip = new ZipFile(log.toFile())) {
      for (var entry : zip.stream().filter(e -> e.getName().contains("chart")).toList()) {
        charts.append(new String(zip.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8));
      }
    }
    assertTrue(charts.toString().contains("Korrigierte Dichte (SG)"), charts.toString());
    assertFalse(charts.toString().contains("since the first"), "the axis of time");
    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(log))) {
      assertEquals(2, book.getNumberOfSheets());
      assertTrue(
          book.getSheetAt(1).getRow(0).getCell(0).getStringCellValue().startsWith("Washbook-D"));
    }
  }

  @Test
  void aLanguageThatIsNoneOfOursIsRefused() {
    Cli run = Cli.run("audit", folder.toString(), "--language", "xx");
    assertEquals(ExitCode.USAGE, run.code());
    assertTrue(run.err().contains("There is no language 'xx'"), run.err());
  }
}
