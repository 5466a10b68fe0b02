package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.runner.TestLogs;
import washbook.runner.report.ShownText;

/** Names from outside neither steer a terminal nor write lines of their own. */
final class ShownTextTest {
  private static final String FORGED =
      "a\n2026-01-01 00:00:00 b.xlsx: filled\u001b[2J\u009b1m\u202e.xlsx";

  @TempDir private Path folder;

  @Test
  void plainTextStaysAndWhatIsUnseenIsWrittenOut() {
    for (String plain : List.of("", "Plüm 梅 🍎", "5 °C - \"x\"", "می‌خواهم")) {
      assertEquals(plain, ShownText.of(plain));
    }
    assertEquals("a\\nb\\r \\u001b[0m\\u202e", ShownText.of("a\nb\r\t\u001b[0m\u202e"));
    assertEquals("\\ud83c!", ShownText.of("\ud83c!"));
    assertEquals("\\u2028\\u0085\\u007f", ShownText.of("\u2028\u0085\u007f"));
  }

  @Test
  void aForgedNameIsOneLineOnTheConsoleInTheLogAndInReports() throws IOException {
    Path logs = folder.resolve("logs");
    TestLogs.plain(logs.resolve(FORGED), 1.085, 9);
    for (String kind : List.of("html", "csv")) {
      Path report = folder.resolve("r." + kind);
      Cli fill = Cli.run("fill", logs.toString(), "--dry-run", "--report", report.toString());
      harmless(fill.out());
      assertEquals(1, fill.out().lines().filter(line -> line.contains("2026-01-01")).count());
      harmless(Files.readString(report));
    }
    harmless(Cli.run("audit", logs.toString()).out());
    harmless(Cli.run("explain", logs.resolve(FORGED).toString()).out());
    harmless(Cli.run("explain", logs.resolve(FORGED + "x").toString()).err());
    harmless(Cli.run("portable", logs.resolve(FORGED).toString()).out());
    harmless(Cli.run("calc", "ABV", FORGED, "1").err());
    for (String form : List.of("text", "json")) {
      String journal = folder.resolve(form).toString();
      Cli watch =
          Cli.run(
              "watch",
              logs.toString(),
              "--once",
              "--settle",
              "0",
              "--log",
              form,
              "--journal",
              journal);
      harmless(watch.out());
      assertFalse(watch.out().lines().anyMatch(line -> line.startsWith("2026-01-01")), watch.out());
      assertTrue(watch.out().contains("filled"), watch.out());
    }
  }

  private static void harmless(String text) {
    assertFalse(text.isEmpty());
    assertFalse(text.chars().anyMatch(c -> c == 0x1b || c == 0x9b || c == 0x202e), text);
  }
}
