package washbook.runner.run;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
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
import washbook.runner.TestLogs;
import washbook.runner.report.FileReport;
import washbook.runner.report.FileReport.Status;
import washbook.runner.report.FileResult;

/** Files that change or vanish under our hands, and a clock that cannot be trusted. */
@Timeout(120)
final class ChangingFilesTest {
  @TempDir private Path folder;
  private Path log;
  private final SheetFiller real = new LogSheetFiller(LogMap.none(), FillOptions.usual());

  @BeforeEach
  void oneLog() throws IOException {
    log = TestLogs.plain(folder.resolve("log.xlsx"), 1.085, 9);
  }

  private interface Meanwhile {
    void happens() throws IOException;
  }

  private FileReport filledWhile(Meanwhile event, Destination destination) {
    SheetFiller filler =
        new SheetFiller() {
          @Override
          public Understanding understand(Grid grid) {
            try {
              event.happens();
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
    FillJob job = new FillJob(filler, destination, false, false, false, false);
    WorkItem item = FileList.of(List.of(log), destination, Shard.WHOLE, Language.EN).get(0);
    List<FileReport> reports = new ArrayList<>();
    try {
      new FolderRun<>(new FileFiller(job), null, Stop.byHand())
          .run(List.of(item), 1, (result, earlier) -> reports.add(result.report()));
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return reports.get(0);
  }

  @Test
  void aFileThatVanishesIsReportedAndNothingIsMade() throws IOException {
    for (Destination to : List.of(Destination.BESIDE, new Destination(null, true, true))) {
      FileReport report = filledWhile(() -> Files.delete(log), to);
      assertEquals(Status.FAILED, report.status());
      String reason = report.refusals().get(0).reason();
      assertTrue(reason.contains("no such file"), reason);
      assertEquals(List.of(), names());
      oneLog();
    }
  }

  @Test
  void aFileThatIsChangedIsLeftToTheOtherProgram() throws IOException {
    Path other = TestLogs.plain(folder.resolve("other.xlsx"), 1.070, 12);
    byte[] saved = Files.readAllBytes(other);
    Files.delete(other);
    for (Destination to : List.of(Destination.BESIDE, new Destination(null, true, true))) {
      FileReport report = filledWhile(() -> Files.write(log, saved), to);
      assertEquals(Status.FAILED, report.status(), report.toString());
      assertEquals(List.of("log.xlsx"), names());
      assertEquals(saved.length, Files.size(log));
      oneLog();
    }
  }

  @Test
  void aWorkbookThatAnOfficeOpensWhileTheWorkRunsIsNotReplaced() throws IOException {
    byte[] old = Files.readAllBytes(log);
    Path lock = folder.resolve(".~lock.log.xlsx#");
    FileReport report =
        filledWhile(
            () -> Files.writeString(lock, ",a person,desk,"), new Destination(null, true, true));
    assertEquals(Status.FAILED, report.status(), report.toString());
    assertTrue(report.refusals().get(0).reason().contains("open"), report.toString());
    assertEquals(List.of(".~lock.log.xlsx#", "log.xlsx"), names());
    assertArrayEquals(old, Files.readAllBytes(log));
  }

  @Test
  void aFileCutShortWhileItIsReadIsRefused() throws IOException {
    byte[] half = Files.readAllBytes(log);
    FileReport report =
        filledWhile(
            () -> Files.write(log, Arrays.copyOf(half, half.length / 2)), Destination.BESIDE);
    assertEquals(Status.FAILED, report.status());
    assertEquals(List.of("log.xlsx"), names());
  }

  @Test
  void aWatcherFillsAlsoWhenTheClockGoesBackOrTheFileIsFromTheFuture() throws IOException {
    for (int hours : new int[] {-1, 1}) {
      Path copy = folder.resolve("log.filled.xlsx");
      Files.deleteIfExists(copy);
      Instant future = Instant.now().plus(Duration.ofDays(30_000));
      Files.setLastModifiedTime(log, FileTime.from(hours < 0 ? Instant.now() : future));
      AtomicLong clock = new AtomicLong(System.currentTimeMillis());
      Stop stop = Stop.byHand();
      List<FileResult> results = new ArrayList<>();
      FillJob job = new FillJob(real, Destination.BESIDE, false, false, false, false);
      Watcher.Pace pace =
          new Watcher.Pace(Duration.ofMillis(20), Duration.ofMillis(100), Duration.ofMinutes(1));
      new Watcher(
              folder,
              job,
              Shard.WHOLE,
              null,
              pace,
              stop,
              () -> clock.addAndGet(hours * 60L * 60_000 * (hours < 0 ? 1 : 0)),
              () -> System.nanoTime() / 1_000_000)
          .run(
              1,
              true,
              new Watcher.Listener() {
                @Override
                public void done(FileResult result) {
                  results.add(result);
                }

                @Override
                public void notice(String path, String message) {
                  throw new AssertionError(message);
                }
              });
      assertEquals(1, results.size());
      assertTrue(Files.exists(copy));
    }
  }

  @Test
  void aJournalHasOneWriter() throws IOException {
    Path place = folder.resolve("j");
    try (Journal first = Journal.open(place, "s", true)) {
      assertFalse(first.done(new WorkItem(log, "log.xlsx", log, null)).isPresent());
      IOException taken = assertThrows(IOException.class, () -> Journal.open(place, "s", true));
      assertTrue(taken.getMessage().contains("in use by another run"), taken.getMessage());
    }
    Journal.open(place, "s", true).close();
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
