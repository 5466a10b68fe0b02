package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reports on a log whose every name is an attack, and how much of a log a report gives away. */
final class HostilePageTest {
  private static final Path BROWSER = Path.of("/usr/bin/chromium");
  private static final String ATTACK =
      "<img src=x onerror=hit()>\"'><svg onload=hit()></title><script>hit()</script>&lt;b&gt;";
  private static final String SHEET = "<img src=x onerror=hit()>\"";
  private static final String SECOND_SHEET = "&lt;b&gt;&#39;&amp;<svg onload>";
  private static final String FILE = "a<img src=x onerror=hit()>&quot;\"'>.xlsx";
  private static final String SECRET = "kept-to-myself";

  @TempDir private Path folder;

  @Test
  void namesAndTextsAreShownAsTextAndNothingOfThemRuns() throws Exception {
    assumeTrue(Files.isExecutable(BROWSER), "no browser on this machine");
    log();
    String file = folder.resolve(FILE).toString();
    List<String> filled = List.of(file, inSheet(SHEET), inSheet(SECOND_SHEET), ATTACK);
    List<String> audited = List.of(file, SHEET, SECOND_SHEET, ATTACK, ATTACK + ": ABV");
    assertShown(filled, report("fill", "html"));
    assertShown(audited, report("audit", "html"));
    assertShown(filled, joined(report("fill", "json")));
    assertShown(audited, joined(report("audit", "json")));
  }

  private static String inSheet(String name) {
    return "'" + name + "'!C5";
  }

  private static Path joined(Path report) {
    Path page = report.resolveSibling("joined.html");
    Cli done = Cli.run("report", "merge", report.toString(), "--out", page.toString());
    assertEquals(0, done.code(), done.err());
    return page;
  }

  /** The browser shows exactly these texts, each as the whole of a cell or a caption. */
  private void assertShown(List<String> texts, Path page) throws Exception {
    assertEquals("hits 0; strangers 0; missing ", seenBy(page, texts), page.toString());
  }

  @Test
  void reportsHoldNoNotesNoOtherColumnsAndNoOtherSheets() throws IOException {
    log();
    for (String command : List.of("fill", "audit")) {
      for (String kind : List.of("html", "json", "csv")) {
        String text = Files.readString(report(command, kind));
        assertFalse(text.contains(SECRET), command + " " + kind);
        assertFalse(text.contains(System.getProperty("user.name") + "@"), command + " " + kind);
      }
    }
  }

  private Path report(String command, String kind) {
    Path page = folder.resolve(command + "." + kind);
    Cli done = Cli.run(command, folder.resolve(FILE).toString(), "--report", page.toString());
    assertTrue(done.code() <= 1, done.out() + done.err());
    return page;
  }

  private void log() throws IOException {
    try (Workbook book = new XSSFWorkbook()) {
      Sheet sheet = book.createSheet(SHEET);
      row(sheet, 0, "Batch", "Day", "SG", "Temp °C", "ABV", "Note", "Supplier");
      for (int i = 0; i < 6; i++) {
        Object gravity = i == 3 ? (Object) 7.5 : (Object) (1.085 - 0.01 * i);
        row(sheet, i + 1, ATTACK, i, gravity, 20, 1.4 * i, SECRET + ATTACK, SECRET);
      }
      Sheet second = book.createSheet(SECOND_SHEET);
      row(second, 0, "Batch", "Day", "SG", "Temp °C", "ABV");
      for (int i = 0; i < 6; i++) {
        row(second, i + 1, ATTACK, i, i == 3 ? 7.5 : 1.085 - 0.01 * i, 20, 1.4 * i);
      }
      row(book.createSheet("Other"), 0, SECRET, 5);
      try (OutputStream out = Files.newOutputStream(folder.resolve(FILE))) {
        book.write(out);
      }
    }
  }

  private static void row(Sheet sheet, int number, Object... cells) {
    Row row = sheet.createRow(number);
    for (int i = 0; i < cells.length; i++) {
      if (cells[i] instanceof Number n) {
        row.createCell(i).setCellValue(n.doubleValue());
      } else {
        row.createCell(i).setCellValue((String) cells[i]);
      }
    }
  }

  /** Counts what ran and what elements are there that are not ours; says which text is missing. */
  private String seenBy(Path page, List<String> texts) throws Exception {
    String probe =
        """
        <script>
        let hits = 0;
        function hit() { hits++; }
        alert = confirm = prompt = hit;
        addEventListener("load", () => setTimeout(() => {
          const strangers = document.querySelectorAll(
            "img, iframe, object, embed, [onload], [onerror], body b").length
            + document.querySelectorAll("script").length - 2;
          const shown = new Set();
          document.querySelectorAll("td").forEach(cell => shown.add(cell.textContent));
          document.querySelectorAll("figcaption").forEach(caption =>
            shown.add(caption.firstChild.textContent.slice(0, -1)));
          const missing = [%s].filter(text => !shown.has(text));
          document.title = "hits " + hits + "; strangers " + strangers
            + "; missing " + missing.join(" and ");
        }, 300));
        </script>
        """
            .formatted(
                texts.stream().map(HostilePageTest::quoted).collect(Collectors.joining(", ")));
    Path probed = folder.resolve("probed.html");
    Files.writeString(probed, Files.readString(page).replace("<title>", probe + "<title>"));
    Path seen = folder.resolve("seen.html");
    Process browser =
        new ProcessBuilder(
                BROWSER.toString(),
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--virtual-time-budget=2000",
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
    assertEquals(1, dom.split("<title>", -1).length - 1, "one title");
    return dom.substring(dom.indexOf("<title>") + 7, dom.indexOf("</title>"));
  }

  /** As a string of the browser's language that does not end the script. */
  private static String quoted(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    for (char c : text.toCharArray()) {
      quoted.append(String.format("\\u%04x", (int) c));
    }
    return quoted.append('"').toString();
  }
}
