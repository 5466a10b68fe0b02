package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import washbook.runner.TestLogs;

/** One file under several names: what was given to be read is never written without --in-place. */
@Timeout(120)
final class OtherSpellingsTest {
  @TempDir private Path folder;
  private Path logs;
  private Path log;
  private byte[] before;

  @BeforeEach
  void oneLog() throws IOException {
    logs = Files.createDirectory(folder.resolve("logs"));
    log = TestLogs.plain(logs.resolve("log.xlsx"), 1.085, 9);
    before = Files.readAllBytes(log);
  }

  @Test
  void resultsThroughALinkToTheInputAreRefused() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("link"), logs);
    for (Path out : List.of(link, logs, logs.resolve("../logs"), link.resolve("../logs/."))) {
      Cli done = Cli.run("fill", logs.toString(), "--out", out.toString());
      assertEquals(ExitCode.FILE, done.code(), done.out());
      assertTrue(done.out().contains("itself one of the files to read"), done.out());
      Cli other = Cli.run("fill", link.toString(), "--out", logs.toString());
      assertEquals(ExitCode.FILE, other.code(), other.out());
      untouched();
    }
  }

  @Test
  void whatALinkAmongTheInputsLeadsToIsAnInputToo() throws IOException {
    Path real = Files.createDirectory(folder.resolve("real"));
    Path target = Files.copy(log, real.resolve("plum.xlsx"));
    Files.createSymbolicLink(logs.resolve("plum.xlsx"), target);
    Cli done = Cli.run("fill", logs.toString(), "--out", real.toString());
    assertEquals(ExitCode.FILE, done.code(), done.out());
    assertArrayEquals(before, Files.readAllBytes(target));
  }

  @Test
  void aFileGivenThroughALinkedFolderIsReplacedWhereItLies() throws IOException {
    Path deep = Files.createDirectories(folder.resolve("far/deep"));
    Path far = TestLogs.plain(folder.resolve("far/log.xlsx"), 1.070, 6);
    Files.createSymbolicLink(folder.resolve("link"), deep);
    Path spelt = folder.resolve("link/../log.xlsx");
    Path other = TestLogs.plain(folder.resolve("log.xlsx"), 1.050, 5);
    byte[] kept = Files.readAllBytes(other);
    long size = Files.size(far);
    assertEquals(ExitCode.DONE, Cli.run("fill", spelt.toString(), "--in-place").code());
    assertArrayEquals(kept, Files.readAllBytes(other));
    assertFalse(size == Files.size(far));
  }

  @Test
  void aWatchWhoseResultsLeadIntoItsOwnInputEnds() throws IOException {
    Path inner = Files.createDirectory(logs.resolve("inner"));
    Path link = Files.createSymbolicLink(folder.resolve("link"), inner);
    for (int i = 0; i < 3; i++) {
      assertEquals(ExitCode.DONE, watch("--out", link.toString()).code());
    }
    assertEquals(List.of("inner", "inner/log.xlsx", "log.xlsx"), names());
    Path self = Files.createSymbolicLink(folder.resolve("self"), logs);
    Cli done = watch("--out", self.toString());
    assertTrue(done.out().contains("itself one of the files to read"), done.out());
    untouched();
  }

  @Test
  void aReportNeverReplacesWhatIsNoReport() throws IOException {
    for (String kind : List.of("csv", "json", "html")) {
      Path mine = Files.writeString(logs.resolve("mine." + kind), "Day,SG,Temp C\n0,1.085,20\n");
      Path link = Files.createSymbolicLink(folder.resolve("link." + kind), mine);
      for (String command : List.of("fill", "audit")) {
        for (Path taken : List.of(mine, link)) {
          Cli done = Cli.run(command, log.toString(), "--report", taken.toString());
          assertEquals(ExitCode.USAGE, done.code(), done.out());
          assertTrue(done.err().contains("is there already"), done.err());
        }
      }
      assertEquals("Day,SG,Temp C\n0,1.085,20\n", Files.readString(mine));
      for (int i = 0; i < 2; i++) {
        Path report = folder.resolve("again." + kind);
        Cli done = Cli.run("fill", log.toString(), "--dry-run", "--report", report.toString());
        assertEquals(ExitCode.DONE, done.code(), done.err());
      }
      Cli told =
          Cli.run("fill", "--dry-run", log.toString(), "--report", mine.toString(), "--overwrite");
      assertEquals(ExitCode.DONE, told.code(), told.err());
      assertFalse(Files.readString(mine).startsWith("Day"));
      Files.delete(mine);
      Files.delete(link);
    }
    untouched();
  }

  @Test
  void joinedReportsReplaceNoOtherFileAndNoneOfTheirParts() throws IOException {
    Path part = folder.resolve("part.json");
    Cli.run("fill", log.toString(), "--dry-run", "--report", part.toString());
    byte[] report = Files.readAllBytes(part);
    Path mine = Files.writeString(folder.resolve("mine.html"), "mine");
    Path link = Files.createSymbolicLink(folder.resolve("link.json"), part);
    for (Path taken : List.of(part, mine, link)) {
      Cli done = Cli.run("report", "merge", part.toString(), "--out", taken.toString());
      assertEquals(ExitCode.USAGE, done.code(), done.err());
    }
    assertArrayEquals(report, Files.readAllBytes(part));
    assertEquals("mine", Files.readString(mine));
  }

  @Test
  void aJournalNeverReplacesWhatIsNoJournal() throws IOException {
    Path mine = Files.writeString(logs.resolve("mine.csv"), "Day,SG,Temp C\n0,1.085,20\n");
    for (String command : List.of("fill", "audit", "watch")) {
      Cli done = Cli.run(command, logs.toString(), "--journal", mine.toString());
      assertEquals(ExitCode.USAGE, done.code(), done.out());
      assertTrue(done.err().contains("is no journal"), done.err());
      done = Cli.run(command, logs.toString(), "--journal", log.toString());
      assertEquals(ExitCode.USAGE, done.code(), done.out());
    }
    assertEquals("Day,SG,Temp C\n0,1.085,20\n", Files.readString(mine));
    Files.delete(mine);
    untouched();
  }

  @Test
  void aWatcherStartsAgainAfterATornJournal() throws IOException {
    assertEquals(ExitCode.DONE, watch().code());
    Path journal = folder.resolve("journal.jsonl");
    Files.write(journal, new byte[] {'{', '"', (byte) 0xc3}, StandardOpenOption.APPEND);
    Cli again = watch();
    assertEquals(ExitCode.DONE, again.code(), again.out() + again.err());
    assertTrue(again.out().contains("1 line of the journal"), again.out());
    assertFalse(again.out().contains(": filled"), again.out());
  }

  private Cli watch(String... options) {
    List<String> words =
        new ArrayList<>(List.of("watch", logs.toString(), "--once", "--settle", "0"));
    words.addAll(List.of("--journal", folder.resolve("journal.jsonl").toString()));
    words.addAll(List.of(options));
    return Cli.run(words.toArray(String[]::new));
  }

  private void untouched() throws IOException {
    assertArrayEquals(before, Files.readAllBytes(log));
    assertEquals(List.of(), names().stream().filter(n -> n.contains("filled")).toList());
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.walk(logs)) {
      return files.skip(1).map(file -> logs.relativize(file).toString()).sorted().toList();
    }
  }
}
