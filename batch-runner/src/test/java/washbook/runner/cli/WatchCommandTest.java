package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.runner.TestLogs;

final class WatchCommandTest {
  @TempDir private Path folder;

  @Test
  void onceDoesEveryFileAndASecondRoundDoesNothing() throws IOException {
    Path logs = folder.resolve("logs");
    TestLogs.plain(logs.resolve("a.xlsx"), 1.085, 9);
    TestLogs.plain(logs.resolve("b.xlsx"), 1.060, 5);
    Cli first = watch(logs, "--in-place", "--backup");
    assertEquals(ExitCode.DONE, first.code(), first.err());
    assertEquals(2, first.out().split("; wrote ", -1).length - 1, first.out());
    List<String> after = names(logs);
    assertEquals(List.of("a.xlsx", "a.xlsx.bak", "b.xlsx", "b.xlsx.bak"), after);

    Cli second = watch(logs, "--in-place", "--backup");
    assertFalse(second.out().contains(": filled"), second.out());
    TestLogs.plain(logs.resolve("b.xlsx"), 1.070, 6);
    Cli third = watch(logs, "--in-place", "--backup");
    assertTrue(third.out().contains("b.xlsx: filled, 6 of 6 rows"), third.out());
    assertFalse(third.out().contains("a.xlsx: filled"), third.out());
  }

  @Test
  void itsOwnCopiesAreNeverReadAgain() throws IOException {
    Path logs = folder.resolve("logs");
    TestLogs.plain(logs.resolve("a.xlsx"), 1.085, 9);
    watch(logs);
    watch(logs);
    assertEquals(List.of("a.filled.xlsx", "a.xlsx"), names(logs));
  }

  @Test
  void aWorkbookOpenInAnOfficeIsLeftAloneUntilItIsClosed() throws IOException {
    Path logs = folder.resolve("logs");
    TestLogs.plain(logs.resolve("a.xlsx"), 1.085, 9);
    Path lock = Files.writeString(logs.resolve(".~lock.a.xlsx#"), "someone");
    Cli open = watch(logs);
    assertTrue(open.out().contains("open in an office program; waiting"), open.out());
    Files.delete(lock);
    Cli closed = watch(logs);
    assertTrue(closed.out().contains("a.xlsx: filled"), closed.out());
  }

  @Test
  void jsonLinesAreJson() throws IOException {
    Path logs = folder.resolve("logs");
    TestLogs.plain(logs.resolve("a.xlsx"), 1.085, 9);
    List<String> events = new ArrayList<>();
    for (String line : watch(logs, "--log", "json").out().lines().toList()) {
      JsonObject json = JsonParser.parseString(line).getAsJsonObject();
      assertTrue(json.has("time") && json.has("path") && json.has("message"), line);
      events.add(json.get("event").getAsString());
    }
    assertEquals(List.of("started", "done", "stopped"), events);
  }

  @Test
  void aFolderThatIsNoneIsAUsageError() {
    assertEquals(ExitCode.USAGE, Cli.run("watch", folder.resolve("gone").toString()).code());
  }

  private Cli watch(Path logs, String... options) {
    return Cli.run(
        Stream.concat(
                Stream.of(
                    "watch",
                    logs.toString(),
                    "--once",
                    "--settle",
                    "0",
                    "--interval",
                    "0.05",
                    "--journal",
                    folder.resolve("journal.jsonl").toString()),
                Stream.of(options))
            .toArray(String[]::new));
  }

  private static List<String> names(Path logs) throws IOException {
    try (Stream<Path> files = Files.list(logs)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
