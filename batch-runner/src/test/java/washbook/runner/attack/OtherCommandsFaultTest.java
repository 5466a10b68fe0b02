package washbook.runner.attack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.runner.TestLogs;
import washbook.runner.cli.Cli;

/**
 * The commands that are not in the large matrix, killed and failed at each call that writes: what
 * they make is the file of an earlier run or the new one, whole, and the next run completes. One
 * moment each in each build; all of them with {@code -Pattack}. Errors strike a process that lives
 * on.
 */
@Timeout(3600)
final class OtherCommandsFaultTest {
  @TempDir private Path folder;
  private Path here;
  private Path library;
  private Attack attack;
  private Attack.Struck runner;
  private Map<String, byte[]> before;
  private Map<String, byte[]> after;

  @BeforeEach
  void begin() throws Exception {
    library = Attack.faults(folder);
    attack = new Attack(folder);
    here = Files.createDirectory(folder.resolve("here"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "season %/logs --out %/season.xlsx",
        "season %/logs --out %/season.html",
        "portable %/pack.xlsx",
        "report merge %/one.json %/two.json --out %/whole.html",
        "audit %/own.csv --report %/audit.json",
        "fill %/logs/apple.xlsx --out %/out --chart",
        "explain %/logs/apple.xlsx --write-map %/apple.map"
      })
  void whatItMakesIsOldOrNewAndTheNextRunCompletes(String line) throws Exception {
    String[] command = line.replace("%", here.toString()).split(" ");
    boolean neverReplaces = command[0].equals("explain");
    inputs(1.060);
    if (!neverReplaces) {
      run(command);
    }
    inputs(1.075);
    before = Attack.contents(here);
    Path log = folder.resolve("calls.txt");
    Attack.Ended whole = attack.runWithFault(here, library, 0, 1, log, command);
    assertEquals(0, whole.code(), whole.said());
    after = Attack.contents(here);
    assertFalse(sameFiles(before, after), "nothing was made: " + whole.said());
    int calls = Files.readAllLines(log).size();
    assertTrue(calls > 3, calls + " calls");

    runner = (at, error, words) -> attack.runWithFault(here, library, at, error, null, words);
    List<Integer> moments = Attack.moments(calls, Math.min(Attack.MOMENTS, 1), line);
    int tried = struck(Map.of("kill", 0), command, moments);
    if (Attack.MOMENTS == 0) {
      try (LivingRunner living = attack.living(here, Attack.faultAt(here, library, 0, 1, null))) {
        runner = living::run;
        tried += struck(Attack.errors(), command, moments);
      }
    }
    System.out.println(line + ": " + calls + " calls, " + tried + " moments");
  }

  private int struck(Map<String, Integer> faults, String[] command, List<Integer> moments)
      throws Exception {
    for (Map.Entry<String, Integer> fault : faults.entrySet()) {
      for (int at : moments) {
        attackAt(at, fault.getValue(), command, fault.getKey() + " at call " + at + ": ");
      }
    }
    return faults.size() * moments.size();
  }

  private void inputs(double originalGravity) throws Exception {
    Attack.logs(here.resolve("logs"));
    TestLogs.plain(here.resolve("logs/apple.xlsx"), originalGravity, 9);
    String apple = here.resolve("logs/apple.xlsx").toString();
    run("fill", apple, "--dry-run", "--report", here.resolve("one.json").toString());
    String sugar = here.resolve("logs/sugar.csv").toString();
    run("fill", sugar, "--dry-run", "--report", here.resolve("two.json").toString());
    Files.writeString(
        here.resolve("own.csv"),
        "Day,SG,Temp C,ABV\n0,1.085,20,0\n1,1.080,21,0.7\n2,"
            + (originalGravity - 0.01)
            + ",21,2\n");
    run("fill", apple, "--as", "pack", "--out", here.resolve("p").toString());
    Files.write(here.resolve("pack.xlsx"), Files.readAllBytes(here.resolve("p/apple.xlsx")));
    Attack.empty(here.resolve("p"));
  }

  /** A run with no fault, inside the test. */
  private static void run(String... command) {
    Cli done = Cli.run(command);
    assertEquals(0, done.code(), done.out() + done.err());
  }

  private void attackAt(int at, int error, String[] command, String what) throws Exception {
    Attack.empty(here);
    for (Map.Entry<String, byte[]> file : before.entrySet()) {
      Path path = here.resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.write(path, file.getValue());
    }
    Attack.Ended ended = runner.run(at, error, command);
    assertTrue(!ended.said().contains("Exception"), what + ended.said());
    for (Map.Entry<String, byte[]> file : Attack.contents(here).entrySet()) {
      String name = file.getKey();
      byte[] now = file.getValue();
      assertTrue(
          name.contains(".washbook-") || Arrays.equals(now, before.get(name)) || isWhole(name, now),
          what + name + " is neither old nor new");
    }
    for (String name : before.keySet()) {
      assertTrue(Files.exists(here.resolve(name)), what + name + " is gone");
    }
    if (command[0].equals("explain")) {
      // A map that is there is never written over.
      Files.deleteIfExists(here.resolve("apple.map"));
    }
    Attack.Ended again = runner.run(0, 1, command);
    assertEquals(0, again.code(), what + "the next run: " + again.said());
    Map<String, byte[]> now = Attack.contents(here);
    assertEquals(after.keySet(), now.keySet(), what);
    for (String name : after.keySet()) {
      assertTrue(isWhole(name, now.get(name)), what + name + " is not the new one");
    }
  }

  /** Whether it is the new one; a season's workbook knows its time, so that it is read instead. */
  private boolean isWhole(String name, byte[] bytes) throws IOException {
    if (!name.equals("season.xlsx")) {
      return Arrays.equals(bytes, after.get(name));
    }
    Path copy = Files.write(folder.resolve("look.xlsx"), bytes);
    try (XSSFWorkbook season = new XSSFWorkbook(copy.toFile())) {
      return season.getSheetAt(0).getLastRowNum() >= 3;
    } catch (InvalidFormatException | RuntimeException torn) {
      return false;
    }
  }

  private static boolean sameFiles(Map<String, byte[]> one, Map<String, byte[]> other) {
    return one.keySet().equals(other.keySet())
        && one.keySet().stream().allMatch(name -> Arrays.equals(one.get(name), other.get(name)));
  }
}
