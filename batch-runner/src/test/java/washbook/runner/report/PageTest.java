package washbook.runner.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.functions.SafetyNote;
import washbook.log.language.Language;
import washbook.runner.language.Wording;
import washbook.runner.report.AuditReport.ColumnReport;
import washbook.runner.report.AuditReport.RowReport;
import washbook.runner.report.FileReport.BatchReport;
import washbook.runner.report.FileReport.Refusal;
import washbook.runner.report.FileReport.Status;
import washbook.runner.report.FileReport.TableReport;

/** The HTML pages, in a real browser where there is one. */
final class PageTest {
  private static final String NASTY = "<script>alert(1)</script> & \"Plum\" 'n'";
  private static final Wording ENGLISH = new Wording(Language.EN);
  private static final Path BROWSER = Path.of("/usr/bin/chromium");

  @TempDir private Path folder;

  @Test
  void thePageOnFillingHasARowForEachFileAndRefusalAndAChartForEachBatch() throws Exception {
    Path page = folder.resolve("r.html");
    try (ReportWriter<FileResult> writer =
        Reports.open(ReportPlace.about(page, List.of()), ENGLISH)) {
      for (int i = 0; i < 3; i++) {
        writer.add(filled("log " + i + " " + NASTY));
      }
      writer.finish();
    }
    assertEquals(List.of("r.html"), names());
    assertNothingIsFetched(page);
    String text = Files.readString(page);
    assertFalse(text.contains("<script>alert"));
    for (String line : SafetyNote.LINES) {
      assertTrue(text.contains(Html.text(line)), line);
    }
    assertEquals("rows 3, 3; charts 3; curves 6; first log 2; errors 0", seenBy(page));
  }

  @Test
  void aPageHasACertainNumberOfChartsAtMost() throws Exception {
    Path page = folder.resolve("r.html");
    try (ReportWriter<FileResult> writer =
        Reports.open(ReportPlace.about(page, List.of()), ENGLISH)) {
      for (int i = 0; i <= BatchSeries.MOST_CHARTS; i++) {
        writer.add(filled("log " + i));
      }
      writer.finish();
    }
    String text = Files.readString(page);
    assertEquals(BatchSeries.MOST_CHARTS, text.split("<figure>", -1).length - 1);
    assertEquals(BatchSeries.MOST_CHARTS + 1, text.split("<td class=\"status\"", -1).length - 1);
    assertTrue(text.contains("500 of all files"));
  }

  @Test
  void thePageOfAnAuditHasARowForEachColumnAndDifference() throws Exception {
    Path page = folder.resolve("r.html");
    try (ReportWriter<AuditReport> writer =
        Reports.openAudit(ReportPlace.about(page, List.of()), ENGLISH)) {
      for (int i = 0; i < 3; i++) {
        writer.add(audited("log " + i + " " + NASTY));
      }
      writer.finish();
    }
    assertEquals(List.of("r.html"), names());
    assertNothingIsFetched(page);
    assertEquals("rows 3, 6, 3; charts 3; curves 6; first log 2; errors 0", seenBy(page));
  }

  /** Clicks the first head of the first table twice, so that the last file comes first. */
  private String seenBy(Path page) throws Exception {
    assumeTrue(Files.isExecutable(BROWSER), "no browser on this machine");
    String probe =
        """
        <script>
        let errors = 0;
        addEventListener("error", () => errors++);
        addEventListener("securitypolicyviolation", () => errors++);
        addEventListener("load", () => {
          const head = document.querySelector("th button");
          head.click();
          head.click();
          const tables = [...document.querySelectorAll("table")];
          document.title = "rows " + tables.map(t => t.tBodies[0].rows.length).join(", ")
            + "; charts " + document.querySelectorAll("figure svg").length
            + "; curves " + document.querySelectorAll("figure path").length
            + "; first " + tables[0].tBodies[0].rows[0].cells[0].textContent.slice(0, 5)
            + "; errors " + errors;
        });
        </script>
        """;
    Path probed = folder.resolve("probed.html");
    Files.writeString(probed, Files.readString(page).replace("<title>", probe + "<title>"));
    Path seen = folder.resolve("seen.html");
    Process browser =
        new ProcessBuilder(
                BROWSER.toString(),
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--user-data-dir=" + folder.resolve("profile"),
                "--dump-dom",
                probed.toUri().toString())
            .redirectOutput(seen.toFile())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    try {
      assertTrue(browser.waitFor(120, TimeUnit.SECONDS), "the browser hangs");
    } finally {
      browser.descendants().forEach(ProcessHandle::destroyForcibly);
      browser.destroyForcibly();
    }
    String dom = Files.readString(seen);
    return dom.substring(dom.indexOf("<title>") + 7, dom.indexOf("</title>"));
  }

  private static void assertNothingIsFetched(Path page) throws IOException {
    String text = Files.readString(page);
    assertFalse(text.contains("http:") || text.contains("https:"), "an outside address");
    assertFalse(text.contains("src=") || text.contains("@import"), "something is fetched");
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  private static FileResult filled(String path) {
    FileReport report =
        new FileReport(
            path,
            Status.PARTLY_FILLED,
            List.of(
                new TableReport("Log", "A1:C4", List.of(new BatchReport(NASTY, 1.085, 4, 3, 1)))),
            List.of(new Refusal("Log!B3", "TOO_HIGH", "reading 7.5 is too high " + NASTY)),
            List.of(
                new BatchSeries(
                    NASTY,
                    "days",
                    new double[][] {
                      {0, 1.085, 0}, {1, 1.06, 3.2}, {2, Double.NaN, Double.NaN}, {3, 1.01, 9.9}
                    })));
    return new FileResult(report, null, false);
  }

  private static AuditReport audited(String path) {
    List<RowReport> rows =
        List.of(new RowReport("Log!D3", 5, 5.2, -0.2), new RowReport("Log!D4", 6, 6.3, -0.3));
    ColumnReport column =
        new ColumnReport(
            "Log",
            "A1:D4",
            "ABV",
            "ABV to date",
            3,
            2,
            -0.3,
            "Log!D4",
            List.of("RULE_OF_THUMB"),
            "a rule of thumb",
            List.of(new AuditReport.BatchReport(NASTY, 3, 2, -0.3, 0.1, rows)));
    return new AuditReport(
        path,
        AuditReport.Status.COMPARED,
        List.of(column),
        List.of(new Refusal("Log!A1", Refusal.NOT_SETTLED, "which scale?")),
        List.of(
            new AuditReport.Curves(
                NASTY,
                "days",
                "ABV to date",
                new double[][] {{0, 0, 0}, {1, 5, 5.2}, {2, 6, 6.3}})));
  }
}
