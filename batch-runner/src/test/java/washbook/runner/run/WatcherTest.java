package washbook.runner.run;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.LongSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import washbook.log.fill.FillOptions;
import washbook.log.understand.LogMap;
import washbook.runner.TestLogs;
import washbook.runner.report.FileReport.Status;
import washbook.runner.report.FileResult;

/**
 * When a watched file counts as settled; the clocks are the test's own, so nothing is waited for.
 */
@Timeout(60)
final class WatcherTest {
  /** The steady clock moves on so far at each look; the file must stand still for longer. */
  private static final long MILLIS_A_LOOK = 60;

  private static final Duration SETTLE = Duration.ofMillis(100);
  private static final int CHANGES = 5;

  /**
   * Two looks until it has stood still for {@link #SETTLE}, after the one that first sees it so.
   */
  private static final int LOOKS = CHANGES + 3;

  @TempDir private Path folder;
  private Path log;
  private byte[] whole;
  private int looks;
  private final List<FileResult> results = new ArrayList<>();

  private interface Change {
    void happens(int number) throws IOException;
  }

  @BeforeEach
  void oneLog() throws IOException {
    log = TestLogs.plain(folder.resolve("log.xlsx"), 1.085, 9);
    whole = Files.readAllBytes(log);
  }

  @Test
  void aFileThatGrowsIsLeftAloneUntilItIsWhole() throws IOException {
    int piece = whole.length / (CHANGES + 1);
    Files.write(log, Arrays.copyOf(whole, piece));
    watchWhile(
        number -> {
          int to = number == CHANGES ? whole.length : (number + 1) * piece;
          byte[] next = Arrays.copyOfRange(whole, number * piece, to);
          Files.write(log, next, StandardOpenOption.APPEND);
        });
    assertArrayEquals(whole, Files.readAllBytes(log));
    assertFilledOnceAfterAllLooks();
  }

  @Test
  void aFileOfTheSameSizeWhoseTimeMovesIsLeftAlone() throws IOException {
    FileTime start = Files.getLastModifiedTime(log);
    watchWhile(
        number ->
            Files.setLastModifiedTime(log, FileTime.fromMillis(start.toMillis() + 10 * number)));
    assertFilledOnceAfterAllLooks();
  }

  @Test
  void aFileUntouchedForLongIsNotWaitedFor() throws IOException {
    watcher(Destination.BESIDE, System::currentTimeMillis, () -> 0, Duration.ZERO)
        .run(1, true, listener());
    assertEquals(1, results.size());
  }

  @Test
  void itNeverWorksOnItsOwnOutput() throws IOException {
    Path inside = folder.resolve("results");
    for (Destination to :
        List.of(
            Destination.BESIDE,
            new Destination(null, true, true),
            new Destination(inside, false, false))) {
      results.clear();
      Watcher watcher = watcher(to, System::currentTimeMillis, () -> 0, Duration.ZERO);
      for (int round = 0; round < 4; round++) {
        watcher.run(1, true, listener());
      }
      assertEquals(1, results.size(), to + ": " + results);
    }
    try (Stream<Path> files = Files.walk(folder)) {
      assertEquals(
          List.of("log.filled.xlsx", "log.xlsx", "log.xlsx.bak", "results/log.xlsx"),
          files
              .filter(Files::isRegularFile)
              .map(file -> folder.relativize(file).toString())
              .sorted()
              .toList());
    }
  }

  /** Something happens to the file right after each of the first looks at it. */
  private void watchWhile(Change change) throws IOException {
    LongSupplier steady =
        () -> {
          looks++;
          try {
            if (looks <= CHANGES) {
              change.happens(looks);
            }
          } catch (IOException impossible) {
            throw new AssertionError(impossible);
          }
          return looks * MILLIS_A_LOOK;
        };
    // As if every change were from this moment, however slow the machine is.
    LongSupplier wall = () -> log.toFile().lastModified();
    watcher(Destination.BESIDE, wall, steady, SETTLE).run(1, true, listener());
  }

  private void assertFilledOnceAfterAllLooks() {
    assertEquals(1, results.size(), results.toString());
    assertEquals(Status.FILLED, results.get(0).report().status());
    assertEquals(LOOKS, looks);
    assertTrue(Files.exists(folder.resolve("log.filled.xlsx")));
  }

  private Watcher watcher(Destination to, LongSupplier wall, LongSupplier steady, Duration settle) {
    SheetFiller filler = new LogSheetFiller(LogMap.none(), FillOptions.usual());
    FillJob job = new FillJob(filler, to, false, false, false, false);
    Watcher.Pace pace = new Watcher.Pace(Duration.ofMillis(1), settle, Duration.ofMinutes(1));
    return new Watcher(folder, job, Shard.WHOLE, null, pace, Stop.byHand(), wall, steady);
  }

  private Watcher.Listener listener() {
    return new Watcher.Listener() {
      @Override
      public void done(FileResult result) {
        results.add(result);
      }

      @Override
      public void notice(String path, String message) {
        throw new AssertionError(message);
      }
    };
  }
}
