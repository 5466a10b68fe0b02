package washbook.samples.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.log.sheet.ColumnPatch;
import washbook.runner.file.UnusableFileException;

/**
 * Workbooks that are difficult to read and hold no ferment: each is refused with a reason or
 * nothing is recognised in it, in the small memory that this module's tests run with. The files lie
 * beside the checkout; without them the test is skipped.
 */
class DifficultWorkbooksTest {
  private static final Path FOLDER = Path.of("../../shared/corpus/workbooks");
  private static final Path REPORT = Path.of("target/difficult-workbooks.txt");

  /** Against hanging only: most take some milliseconds. */
  private static final Duration ENOUGH = Duration.ofMinutes(1);

  @Test
  void nothingIsRecognisedAndNothingBreaks() throws IOException {
    assumeTrue(Files.isDirectory(FOLDER), "no difficult workbooks at " + FOLDER.toAbsolutePath());
    Map<String, Integer> counts = new TreeMap<>();
    List<String> notes = new ArrayList<>();
    List<String> takenForLogs = new ArrayList<>();
    long slowest = 0;
    String slowestName = "";
    for (Path file : files()) {
      long start = System.nanoTime();
      String outcome = assertTimeoutPreemptively(ENOUGH, () -> outcome(file), file.toString());
      long time = System.nanoTime() - start;
      if (time > slowest) {
        slowest = time;
        slowestName = file.getFileName().toString();
      }
      counts.merge(outcome.replaceAll(":.*", ""), 1, Integer::sum);
      if (outcome.contains(":")) {
        notes.add(file.getFileName() + " " + outcome);
      }
      if (outcome.startsWith("filled") || outcome.startsWith("asked")) {
        takenForLogs.add(file.getFileName() + " " + outcome);
      }
    }
    String summary = counts + "; slowest " + slowest / 1_000_000 + " ms: " + slowestName + "\n";
    Files.writeString(REPORT, summary + String.join("\n", notes));
    System.out.println(summary);
    assertEquals(List.of(), takenForLogs);
  }

  private static List<Path> files() throws IOException {
    try (Stream<Path> all = Files.walk(FOLDER)) {
      return all.filter(Files::isRegularFile).sorted().toList();
    }
  }

  private static String outcome(Path file) throws IOException {
    Taken taken;
    try {
      taken = Taken.of(file);
    } catch (UnusableFileException refused) {
      return "refused: " + refused.getMessage();
    }
    for (Taken.Sheet sheet : taken.sheets()) {
      for (ColumnPatch patch : sheet.filling().patch().columns()) {
        for (int row = patch.firstRow(); row <= patch.lastRow(); row++) {
          if (!Double.isNaN(patch.cells().number(row))) {
            return "filled: " + sheet.grid().name() + " " + patch.header();
          }
        }
      }
    }
    boolean tables = taken.sheets().stream().anyMatch(s -> !s.understanding().tables().isEmpty());
    return taken.questions().isEmpty() && !tables
        ? "nothing recognised"
        : "asked: " + taken.questions();
  }

  /** All of them through the command itself, in one process, so that the writers are in it too. */
  @Test
  void oneCommandTakesThemAll(@TempDir Path folder) throws Exception {
    assumeTrue(Files.isDirectory(FOLDER), "no difficult workbooks at " + FOLDER.toAbsolutePath());
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-Xmx512m", "-cp", System.getProperty("java.class.path")));
    command.add("washbook.runner.cli.Main");
    Path report = folder.resolve("report.json");
    Path out = folder.resolve("out");
    command.addAll(List.of("fill", "--out", out.toString(), "--report", report.toString()));
    files().forEach(f -> command.add(f.toString()));
    Path said = folder.resolve("said.txt");
    Process process =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(said.toFile()).start();
    try {
      assertTrue(process.waitFor(10, TimeUnit.MINUTES), "hangs");
      assertEquals(3, process.exitValue(), Files.readString(said));
    } finally {
      process.destroyForcibly();
    }
    Map<String, Integer> statuses = new TreeMap<>();
    Matcher status =
        Pattern.compile("\"status\"\\s*:\\s*\"([^\"]+)\"").matcher(Files.readString(report));
    while (status.find()) {
      statuses.merge(status.group(1), 1, Integer::sum);
    }
    assertEquals(Set.of("failed", "nothing recognised"), statuses.keySet());
    assertEquals(files().size(), statuses.values().stream().mapToInt(n -> n).sum());
    assertTrue(Files.notExists(out) || out.toFile().list().length == 0, "nothing is written");
  }
}
