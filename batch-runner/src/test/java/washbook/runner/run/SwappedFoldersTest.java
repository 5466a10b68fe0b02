package washbook.runner.run;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import washbook.log.Understanding;
import washbook.log.fill.FillOptions;
import washbook.log.fill.Filling;
import washbook.log.language.Language;
import washbook.log.sheet.Grid;
import washbook.log.understand.LogMap;
import washbook.runner.file.SourceFile;
import washbook.runner.file.WrittenFile;
import washbook.runner.report.FileReport;
import washbook.runner.report.FileReport.Status;

/** Another user swaps folders for links, or for other folders, at the worst moments of a run. */
@Timeout(120)
final class SwappedFoldersTest {
  private static final String LOG = "Day,SG,Temp C\n0,1.085,20\n1,1.080,21\n2,1.070,21\n";
  private static final Destination IN_PLACE = new Destination(null, true, false);
  private static final Destination WITH_BACKUP = new Destination(null, true, true);
  private static final List<Destination> ALL = List.of(IN_PLACE, WITH_BACKUP, Destination.BESIDE);

  @TempDir private Path folder;
  private Path logs;
  private Path inner;
  private Path elsewhere;

  @FunctionalInterface
  private interface Swap {
    void happens() throws IOException;
  }

  @BeforeEach
  void twoFoldersWithLogsOfOneName() throws IOException {
    logs = folder.resolve("logs");
    inner = Files.createDirectories(logs.resolve("inner"));
    elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
    Files.writeString(inner.resolve("plum.csv"), LOG);
    Files.writeString(elsewhere.resolve("plum.csv"), LOG);
  }

  @Test
  void aFolderThatBecameALinkAfterItWasFoundIsNotFollowed() throws IOException {
    for (Destination to : ALL) {
      assertLeavesElsewhereAlone(to, this::swapForALink, () -> {});
    }
  }

  @Test
  void aFolderThatBecomesALinkWhileItsLogIsUnderstoodIsNotFollowed() throws IOException {
    for (Destination to : ALL) {
      assertLeavesElsewhereAlone(to, () -> {}, this::swapForALink);
    }
  }

  @Test
  void aFolderThatIsSwappedForAnotherWhileItsLogIsUnderstoodIsLeftAlone() throws IOException {
    for (Destination to : ALL) {
      assertLeavesElsewhereAlone(
          to,
          () -> {},
          () -> {
            Files.move(inner, folder.resolve("away"));
            Files.move(elsewhere, inner);
            Files.createSymbolicLink(elsewhere, inner);
          });
    }
  }

  /** And not one that has its name for a while. */
  @Test
  void whatIsReadToBeReplacedIsTheFileThatWasOpened() throws IOException {
    Path secret = Files.writeString(folder.resolve("secret.csv"), LOG.replace("1.070", "1.010"));
    Path log = inner.resolve("plum.csv");
    Path kept = folder.resolve("kept.csv");
    try (SourceFile held = SourceFile.open(logs, log)) {
      SafeReplace.Job job =
          new SafeReplace.Job(logs, log, FileStamp.of(log), held.key(), null, log, false);
      boolean changed =
          SafeReplace.put(
              job,
              to -> {
                Files.move(log, kept);
                Files.createSymbolicLink(log, secret);
                WrittenFile.copy(log, to);
                Files.delete(log);
                Files.move(kept, log);
              },
              written -> {});
      assertFalse(changed);
    }
    assertEquals(LOG, Files.readString(log));
  }

  private void swapForALink() throws IOException {
    Files.move(inner, folder.resolve("away"));
    Files.createSymbolicLink(inner, elsewhere);
  }

  private void assertLeavesElsewhereAlone(Destination to, Swap before, Swap during)
      throws IOException {
    Map<String, byte[]> were = contents(elsewhere);
    FileReport report = run(to, before, during);
    assertEquals(Status.FAILED, report.status(), to + " " + report);
    Map<String, byte[]> are = contents(elsewhere);
    assertEquals(were.keySet(), are.keySet(), to.toString());
    assertArrayEquals(were.get("plum.csv"), are.get("plum.csv"), to.toString());
    Path away = folder.resolve("away");
    assertEquals(List.of("plum.csv"), List.copyOf(contents(away).keySet()), to.toString());
    assertEquals(LOG, Files.readString(away.resolve("plum.csv")));
    if (Files.isSymbolicLink(elsewhere)) {
      Files.delete(elsewhere);
      Files.move(inner, elsewhere);
    } else {
      Files.delete(inner);
    }
    Files.move(away, inner);
  }

  private FileReport run(Destination to, Swap before, Swap during) throws IOException {
    SheetFiller real = new LogSheetFiller(LogMap.none(), FillOptions.usual());
    SheetFiller filler =
        new SheetFiller() {
          @Override
          public Understanding understand(Grid grid) {
            try {
              during.happens();
            } catch (IOException impossible) {
              throw new UncheckedIOException(impossible);
            }
            return real.understand(grid);
          }

          @Override
          public Filling fill(Grid grid, Understanding understanding) {
            return real.fill(grid, understanding);
          }
        };
    List<WorkItem> items = FileList.of(List.of(logs), to, Shard.WHOLE, Language.EN);
    assertEquals(1, items.size());
    before.happens();
    FillJob job = new FillJob(filler, to, false, false, false, false);
    List<FileReport> reports = new ArrayList<>();
    new FolderRun<>(new FileFiller(job), null, Stop.byHand())
        .run(items, 1, (result, earlier) -> reports.add(result.report()));
    return reports.get(0);
  }

  private static Map<String, byte[]> contents(Path of) throws IOException {
    Map<String, byte[]> all = new TreeMap<>();
    try (Stream<Path> files = Files.list(of)) {
      for (Path file : files.toList()) {
        all.put(file.getFileName().toString(), Files.readAllBytes(file));
      }
    }
    return all;
  }
}
