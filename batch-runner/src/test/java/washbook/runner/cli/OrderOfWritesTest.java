package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import washbook.runner.TestLogs;

/** What is on the disk before what, as the system calls show it. */
@Timeout(120)
final class OrderOfWritesTest {
  private static final Pattern CALL =
      Pattern.compile(
          "(?:\\d+ +)?(fsync|fdatasync|rename|renameat2?|write|pwrite64)\\((.*)\\) += (\\d+)");

  /** Another thread's call can come between a call's beginning and its end. */
  private static final Pattern BEGUN =
      Pattern.compile("(\\d+) +f(?:data)?sync\\(\\d+<(.*)> <unfinished");

  private static final Pattern ENDED =
      Pattern.compile("(\\d+) +<\\.\\.\\. f(?:data)?sync resumed>.*= 0");

  @TempDir private Path folder;

  @Test
  void eachResultIsOnTheDiskBeforeItsNameAndItsNameBeforeItsLineInTheJournal() throws Exception {
    Path logs = folder.resolve("logs");
    for (int i = 0; i < 5; i++) {
      TestLogs.plain(logs.resolve("log " + i + ".xlsx"), 1.060 + i * 0.005, 9);
    }
    List<String> calls =
        trace("fill", "logs", "--out", "out", "--journal", "j.jsonl", "--threads", "1");
    Map<String, Integer> forced = new HashMap<>();
    int named = 0;
    int lines = 0;
    Map<String, String> begun = new HashMap<>();
    for (int at = 0; at < calls.size(); at++) {
      Matcher part = BEGUN.matcher(calls.get(at));
      Matcher rest = ENDED.matcher(calls.get(at));
      if (part.find()) {
        begun.put(part.group(1), part.group(2));
      } else if (rest.find()) {
        forced.put(begun.get(rest.group(1)), at);
      }
      Matcher call = CALL.matcher(calls.get(at));
      if (!call.find()) {
        continue;
      }
      String what = call.group(2);
      if (call.group(1).endsWith("sync")) {
        forced.put(what.substring(what.indexOf('<') + 1, what.lastIndexOf('>')), at);
      } else if (call.group(1).startsWith("rename") && what.matches(".*[\"/]log \\d\\.xlsx\".*")) {
        named++;
        String from = what.substring(what.indexOf(".washbook-"), what.indexOf(".xlsx"));
        assertTrue(forced.keySet().stream().anyMatch(f -> f.contains(from)), calls.get(at));
        forced.remove(folder.toRealPath().resolve("out").toString());
      } else if (what.contains("j.jsonl") && what.contains("logs/log")) {
        lines++;
        String out = folder.toRealPath().resolve("out").toString();
        assertTrue(forced.containsKey(out), "the folder was not forced before " + calls.get(at));
      }
    }
    assertEquals(5, named, String.join("\n", calls));
    assertTrue(lines > 0, String.join("\n", calls));
  }

  @Test
  void aBackupIsOnTheDiskBeforeTheOriginalIsReplaced() throws Exception {
    TestLogs.plain(folder.resolve("logs/log.xlsx"), 1.060, 9);
    List<String> calls = trace("fill", "logs", "--in-place", "--backup");
    int kept = -1;
    int replaced = -1;
    int forced = 0;
    for (int at = 0; at < calls.size(); at++) {
      String call = calls.get(at);
      boolean rename = call.contains("rename") || call.contains("link");
      if (rename && call.contains("log.xlsx.bak\"") && kept < 0) {
        kept = at;
        assertTrue(forced > 0, "the copy was not forced: " + call);
      } else if (rename && call.matches(".*log\\.xlsx\"\\) = 0.*") && replaced < 0) {
        replaced = at;
      } else if (call.contains("sync(")) {
        forced++;
      }
    }
    assertTrue(kept >= 0 && replaced > kept, String.join("\n", calls));
    assertTrue(forced >= 3, "file, copy and folder are forced: " + String.join("\n", calls));
  }

  private List<String> trace(String... arguments) throws IOException, InterruptedException {
    Path trace = folder.resolve("trace.txt");
    List<String> words = new ArrayList<>();
    words.addAll(List.of("strace", "-f", "-y", "-s", "200", "-o", trace.toString()));
    words.add("-e");
    words.add("trace=fsync,fdatasync,rename,renameat,renameat2,link,linkat,write,pwrite64");
    words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    words.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:-UsePerfData", "-cp"));
    words.addAll(List.of(System.getProperty("java.class.path"), Main.class.getName()));
    words.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(words).directory(folder.toFile());
    builder.environment().put("XDG_STATE_HOME", folder.resolve("state").toString());
    builder.redirectErrorStream(true).redirectOutput(folder.resolve("said.txt").toFile());
    Process process = null;
    try {
      process = builder.start();
    } catch (IOException missing) {
      assumeTrue(false, "no strace on this machine");
    }
    try {
      assertTrue(process.waitFor(100, TimeUnit.SECONDS), "it hangs");
      assertEquals(0, process.exitValue(), Files.readString(folder.resolve("said.txt")));
      return Files.readAllLines(trace).stream()
          .filter(
              line -> line.contains("washbook") || line.contains("sync") || line.contains(".xlsx"))
          .toList();
    } finally {
      process.destroyForcibly();
    }
  }
}
