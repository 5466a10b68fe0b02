package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.runner.TestLogs;

final class ExplainCommandTest {
  @TempDir private Path folder;

  @Test
  void saysWhatEachColumnIsAndWritesItDownAsAMapThatFillReadsBack() throws IOException {
    Path log = TestLogs.plain(folder.resolve("a.xlsx"), 1.085, 9);
    Path map = folder.resolve("a.map");
    Cli run = Cli.run("explain", log.toString(), "--write-map", map.toString());
    assertEquals(ExitCode.DONE, run.code(), run.err());
    assertTrue(run.out().contains("table A1:C10"), run.out());
    assertTrue(run.out().contains("gravity in SG"), run.out());
    assertTrue(run.out().contains("temperature in C"), run.out());
    assertTrue(Files.readString(map).contains("column B = GRAVITY in SG"));
    Cli again = Cli.run("explain", log.toString(), "--map", map.toString());
    assertEquals(ExitCode.DONE, again.code(), again.err());
    Cli fill = Cli.run("fill", log.toString(), "--map", map.toString());
    assertTrue(fill.out().contains("9 of 9 rows"), fill.out());
  }

  @Test
  void neverWritesOverAMap() throws IOException {
    Path log = TestLogs.plain(folder.resolve("a.xlsx"), 1.085, 9);
    Path map = Files.writeString(folder.resolve("a.map"), "# edited by hand\n");
    Cli run = Cli.run("explain", log.toString(), "--write-map", map.toString());
    assertEquals(ExitCode.FILE, run.code());
    assertEquals("# edited by hand\n", Files.readString(map));
  }

  @Test
  void exitCodesTellNothingFoundFromUnreadable() throws IOException {
    Path prices = TestLogs.noLog(folder.resolve("prices.xlsx"));
    assertEquals(ExitCode.NOTHING_RECOGNISED, Cli.run("explain", prices.toString()).code());
    assertEquals(ExitCode.FILE, Cli.run("explain", folder.resolve("gone.xlsx").toString()).code());
    Path map = Files.writeString(folder.resolve("bad.map"), "nonsense\n");
    Cli bad = Cli.run("explain", prices.toString(), "--map", map.toString());
    assertEquals(ExitCode.USAGE, bad.code());
    assertTrue(bad.err().contains("bad.map"), bad.err());
  }
}
