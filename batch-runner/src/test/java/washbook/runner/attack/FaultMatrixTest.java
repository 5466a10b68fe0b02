package washbook.runner.attack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInfo;
import org.junit.jupiter.api.io.TempDir;

/**
 * The process is killed, or gets an error, at each of its system calls that write, force, name or
 * remove a file. Afterwards every file is the old or the new one, and the next run completes. A few
 * moments in each build; all of them with {@code -Pattack}. Errors strike a process that goes on
 * living, as a watcher does, and that makes the next run too: without Java's start all of them take
 * minutes.
 */
final class FaultMatrixTest {
  private static final String[] IN_PLACE = {
    "fill",
    "logs",
    "--in-place",
    "--backup",
    "--journal",
    "j.jsonl",
    "--continue",
    "--report",
    "r.html",
    "--threads",
    "1"
  };
  private static final String[] IN_PLACE_ALONE = {
    "fill", "logs", "--in-place", "--journal", "j.jsonl", "--continue", "--report", "r.json"
  };
  private static final String[] OUT = {
    "fill", "logs", "--out", "out", "--journal", "j.jsonl", "--continue", "--report", "r.json"
  };
  private static final String[] WATCH = {
    "watch", "logs", "--in-place", "--backup", "--once", "--settle", "0", "--journal", "j.jsonl"
  };

  @TempDir private Path folder;
  private Path here;
  private Path library;
  private Path log;
  private Attack attack;
  private Map<String, byte[]> old;
  private Map<String, byte[]> filled;
  private int tried;
  private int met;
  private Attack.Struck runner;

  @BeforeEach
  void begin(TestInfo info) throws Exception {
    library = Attack.faults(folder);
    attack = new Attack(folder);
    here = folder.resolve("here");
    log = folder.resolve("calls.txt");
    runner = (at, error, command) -> attack.runWithFault(here, library, at, error, log, command);
    Attack.logs(
        here.resolve("logs"),
        Attack.MOMENTS == 0 && info.getDisplayName().contains("killed") ? 8 : 0);
    old = Attack.contents(here.resolve("logs"));
    assertEquals(0, attack.run(here, Map.of(), "fill", "logs", "--out", "../filled").code());
    filled = Attack.contents(folder.resolve("filled"));
    assertEquals(old.keySet(), filled.keySet());
  }

  @Test
  void killedAtAnyCallAnInPlaceRunLosesNothing() throws Exception {
    matrix(Map.of("kill", 0), IN_PLACE, Attack.MOMENTS);
  }

  @Test
  void killedAtAnyCallAnInPlaceRunWithoutBackupsLosesNothing() throws Exception {
    matrix(Map.of("kill", 0), IN_PLACE_ALONE, Math.min(Attack.MOMENTS, 2));
  }

  @Test
  void killedAtAnyCallARunIntoAFolderChangesNoInput() throws Exception {
    matrix(Map.of("kill", 0), OUT, Attack.MOMENTS);
  }

  @Test
  void killedAtAnyCallAWatcherGoesOnWhenItIsStartedAgain() throws Exception {
    matrix(Map.of("kill", 0), WATCH, Attack.MOMENTS);
  }

  @Test
  void anErrorInAProcessOfItsOwnEndsItWithItsCode() throws Exception {
    matrix(Map.of("EIO", 5), IN_PLACE, 1);
  }

  @Test
  void anErrorAtAnyCallOfAnInPlaceRunLosesNothing() throws Exception {
    errors(IN_PLACE);
  }

  @Test
  void anErrorAtAnyCallOfAnInPlaceRunWithoutBackupsLosesNothing() throws Exception {
    errors(IN_PLACE_ALONE);
  }

  @Test
  void anErrorAtAnyCallOfARunIntoAFolderLosesNothing() throws Exception {
    errors(OUT);
  }

  @Test
  void anErrorAtAnyCallOfAWatcherLosesNothing() throws Exception {
    errors(WATCH);
  }

  private void errors(String[] command) throws IOException, InterruptedException {
    try (LivingRunner living = attack.living(here, Attack.faultAt(here, library, 0, 1, log))) {
      runner = (at, error, words) -> struckOnce(living, at, error, words);
      matrix(Attack.errors(), command, Math.min(Attack.MOMENTS, 2));
      assertTrue(met > tried * 3 / 4, "only " + met + " calls failed of " + tried);
    }
  }

  /** How many calls there are depends a little on the clock: the last ones may not come. */
  private Attack.Ended struckOnce(LivingRunner living, int at, int error, String... command)
      throws IOException, InterruptedException {
    Files.writeString(log, "");
    Attack.Ended ended = living.run(at, error, command);
    if (Files.readAllLines(log).size() >= at) {
      met++;
    }
    return ended;
  }

  private void matrix(Map<String, Integer> faults, String[] command, int moments)
      throws IOException, InterruptedException {
    int calls = countCalls(command);
    assertTrue(calls > 20, calls + " calls");
    for (Map.Entry<String, Integer> fault : faults.entrySet()) {
      for (int at : Attack.moments(calls, moments, fault.getKey())) {
        String what = fault.getKey() + " at call " + at + " of " + command[0] + " " + command[2];
        try {
          attackAt(at, fault.getValue(), command);
          tried++;
        } catch (AssertionError wrong) {
          throw new AssertionError(what + ": " + wrong.getMessage(), wrong);
        }
      }
    }
    System.out.println(
        command[0]
            + " "
            + command[2]
            + ", "
            + faults.keySet()
            + ": "
            + calls
            + " calls, "
            + tried
            + " moments");
  }

  private int countCalls(String[] command) throws IOException, InterruptedException {
    reset();
    Files.writeString(log, "");
    Attack.Ended whole = runner.run(0, 1, command);
    assertEquals(0, whole.code(), whole.said());
    return Files.readAllLines(log).size();
  }

  private void attackAt(int at, int error, String[] command)
      throws IOException, InterruptedException {
    reset();
    Attack.Ended ended = runner.run(at, error, command);
    if (error == 0) {
      assertTrue(ended.code() == 137 || ended.code() == 0, ended.code() + " " + ended.said());
    } else {
      assertTrue(ended.code() == 0 || ended.code() == 3, ended.code() + " " + ended.said());
    }
    assertTrue(!ended.said().contains("Exception"), ended.said());
    boolean inPlace = command[2].equals("--in-place");
    boolean backup = List.of(command).contains("--backup");
    nothingIsLost(inPlace, backup);
    reportsAreWhole();
    Attack.Ended again = runner.run(0, 1, command);
    assertEquals(0, again.code(), "the next run: " + again.said());
    complete(inPlace, backup, command);
  }

  private void reset() throws IOException {
    Attack.empty(here);
    for (Map.Entry<String, byte[]> file : old.entrySet()) {
      Path path = here.resolve("logs").resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.write(path, file.getValue());
    }
  }

  private void nothingIsLost(boolean inPlace, boolean backup) throws IOException {
    Map<String, byte[]> logs = Attack.contents(here.resolve("logs"));
    for (String name : old.keySet()) {
      byte[] now = logs.get(name);
      boolean isOld = Arrays.equals(now, old.get(name));
      boolean isNew = Arrays.equals(now, filled.get(name));
      assertTrue(isOld || (inPlace && isNew), name + " is neither old nor new");
      byte[] kept = logs.get(name + ".bak");
      assertTrue(!backup || isOld || Arrays.equals(kept, old.get(name)), name + " has no backup");
      assertTrue(kept == null || Arrays.equals(kept, old.get(name)), name + ".bak is not whole");
    }
    for (Map.Entry<String, byte[]> result : Attack.contents(here.resolve("out")).entrySet()) {
      String name = result.getKey();
      assertTrue(
          name.contains(".washbook-") || Arrays.equals(result.getValue(), filled.get(name)),
          name + " is not whole");
    }
  }

  private void reportsAreWhole() throws IOException {
    for (Map.Entry<String, String> end : Map.of("r.html", "</html>", "r.json", "}").entrySet()) {
      Path report = here.resolve(end.getKey());
      assertTrue(
          !Files.exists(report) || Files.readString(report).strip().endsWith(end.getValue()),
          end.getKey() + " is not whole");
    }
  }

  private void complete(boolean inPlace, boolean backup, String[] command) throws IOException {
    Map<String, byte[]> results = Attack.contents(here.resolve(inPlace ? "logs" : "out"));
    for (String name : filled.keySet()) {
      assertTrue(Arrays.equals(filled.get(name), results.get(name)), name + " is not filled");
    }
    List<String> expected = new ArrayList<>();
    for (String name : old.keySet()) {
      expected.add("logs/" + name);
      if (backup || !inPlace) {
        expected.add(inPlace ? "logs/" + name + ".bak" : "out/" + name);
      }
    }
    expected.addAll(List.of("j.jsonl", "j.jsonl.lock"));
    if (command[0].equals("fill")) {
      expected.add(List.of(command).contains("r.html") ? "r.html" : "r.json");
    }
    Collections.sort(expected);
    assertEquals(expected, List.copyOf(Attack.contents(here).keySet()));
  }
}
