package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.runner.TestLogs;

/** What is written about a log is read by nobody who may not read the log. */
final class ReadersTest {
  @TempDir private Path folder;

  @Test
  void reportsJournalsAndMapsOfAPrivateLogArePrivate() throws IOException {
    Path logs = folder.resolve("logs");
    TestLogs.plain(logs.resolve("open.xlsx"), 1.060, 9);
    Path log = TestLogs.plain(logs.resolve("private.xlsx"), 1.085, 9);
    for (String mode : new String[] {"rw-------", "rw-r-----", "rw-r--r--"}) {
      Files.setPosixFilePermissions(log, PosixFilePermissions.fromString(mode));
      for (String kind : new String[] {"json", "csv", "html"}) {
        Path report = folder.resolve(mode + "." + kind);
        Path out = folder.resolve("out" + mode);
        Cli.run(
            "fill",
            logs.toString(),
            "--out",
            out.toString(),
            "--report",
            report.toString(),
            "--journal",
            folder.resolve("j.jsonl").toString());
        assertEquals(mode, mode(report));
        Cli.run("audit", logs.toString(), "--report", report.toString());
        assertEquals(mode, mode(report));
      }
      Path map = folder.resolve(mode + ".map");
      Cli.run("explain", log.toString(), "--write-map", map.toString());
      assertEquals(mode, mode(map));
      assertEquals("rw-------", mode(folder.resolve("j.jsonl")));
      assertEquals(mode, mode(folder.resolve("out" + mode + "/private.xlsx")));
    }
  }

  private static String mode(Path file) throws IOException {
    return PosixFilePermissions.toString(Files.getPosixFilePermissions(file));
  }
}
