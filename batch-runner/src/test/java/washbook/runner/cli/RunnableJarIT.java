package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.runner.TestLogs;

/** The runnable jar as a user starts it, in processes of its own. */
final class RunnableJarIT {
  private static final Path JAR = Path.of("target/washbook.jar").toAbsolutePath();

  /** Moments at which a run is killed: a few in each build, more with -Dwashbook.kills=500. */
  private static final int KILLS = Integer.getInteger("washbook.kills", 25);

  @TempDir private Path folder;

  @Test
  void calculatesAndRefuses() throws Exception {
    Cli sum = finish(start("calc", "CONVERT", "-5", "C", "F"));
    assertEquals(new Cli(0, "23" + System.lineSeparator(), ""), sum);
    Cli refused = finish(start("calc", "ABV", "1.085", "2"));
    assertEquals(1, refused.code());
    assertEquals("", refused.out());
    assertTrue(finish(start("--version")).out().startsWith("washbook 0."));
  }

  @Test
  void theShellLauncherGivesTheSame() throws Exception {
    Path launcher = Path.of("bin/washbook").toAbsolutePath();
    Path link = Files.createSymbolicLink(folder.resolve("washbook"), launcher);
    for (Path way : List.of(launcher, link)) {
      ProcessBuilder builder =
          new ProcessBuilder("/bin/sh", way.toString(), "calc", "CONVERT", "50", "F", "C");
      builder.environment().put("XDG_CACHE_HOME", folder.resolve("cache").toString());
      builder.directory(folder.toFile());
      assertEquals("10", finish(builder.start()).out().strip());
    }
    Files.delete(link);
  }

  @Test
  void theShellLauncherNeedsNoHomeAndCallsFromAnyFolderByAnyLink() throws Exception {
    Path bin = Files.createDirectories(folder.resolve("my täsks/washbook-1/bin"));
    Files.copy(Path.of("bin/washbook"), bin.resolve("washbook"));
    Files.copy(JAR, bin.resolve("washbook.jar"));
    Path links = Files.createDirectory(folder.resolve("links"));
    Files.createSymbolicLink(
        links.resolve("second"), Path.of("../my täsks/washbook-1/bin/washbook"));
    Path first = Files.createSymbolicLink(links.resolve("first"), Path.of("second"));
    for (String way :
        List.of(first.toString(), "links/first", "my täsks/washbook-1/bin/washbook")) {
      ProcessBuilder builder =
          new ProcessBuilder("/bin/sh", way, "calc", "CONVERT", "50", "F", "C");
      builder.environment().keySet().removeAll(List.of("HOME", "XDG_CACHE_HOME"));
      builder.directory(folder.toFile());
      assertEquals(new Cli(0, "10" + System.lineSeparator(), ""), finish(builder.start()), way);
    }
  }

  /** As cron and containers start it. */
  @Test
  void theShellLauncherReadsNamesWithUmlautsWhereNoLocaleIsSet() throws Exception {
    String name = "Jürgens Log.csv";
    Files.writeString(folder.resolve(name), "Day,SG,Temp C\n0,1.085,20\n3,1.050,20\n9,1.010,20\n");
    for (String all : List.of("", "C")) {
      ProcessBuilder builder =
          new ProcessBuilder(
              "/bin/sh",
              Path.of("bin/washbook").toAbsolutePath().toString(),
              "explain",
              folder.resolve(name).toString());
      builder.environment().keySet().removeAll(List.of("LANG", "LC_CTYPE", "LC_MESSAGES"));
      builder.environment().put("LC_ALL", all);
      builder.environment().put("XDG_CACHE_HOME", folder.resolve("cache").toString());
      Cli said = finish(builder.start());
      assertTrue(said.out().contains("gravity in SG"), said.toString());
    }
  }

  @Test
  void theBuildMakesShellCompletionAndTheManualsSource() throws IOException {
    String completion = Files.readString(Path.of("target/washbook_completion"));
    String manual = Files.readString(Path.of("target/manual-source/washbook-fill.adoc"));
    for (String option : List.of("--in-place", "--columns", "--dry-run", "--shard")) {
      assertTrue(completion.contains(option), option);
      assertTrue(manual.contains(option), option);
    }
  }

  @Test
  void holdsTheLicencesOfWhatIsInIt() throws IOException {
    try (ZipFile jar = new ZipFile(JAR.toFile())) {
      assertTrue(jar.getEntry("META-INF/LICENSE") != null, "no licence");
      assertTrue(jar.getEntry("META-INF/NOTICE") != null, "no notice");
      assertTrue(jar.getEntry("META-INF/THIRD-PARTY.txt") != null, "no list of libraries");
      assertNull(jar.getEntry("module-info.class"));
    }
  }

  /** Every file is afterwards either the old or the new one, whole, and a rerun completes. */
  @Test
  void killedAtAnyMomentAnInPlaceRunLosesNothing() throws Exception {
    Path logs = folder.resolve("logs");
    Map<Path, byte[]> before = new HashMap<>();
    for (int i = 0; i < 100; i++) {
      Path log = TestLogs.plain(logs.resolve("log " + i + ".xlsx"), 1.060 + i * 0.0005, 40);
      before.put(log, Files.readAllBytes(log));
    }
    Path done = folder.resolve("done");
    assertEquals(0, finish(start("fill", logs.toString(), "--out", done.toString())).code());
    long started = System.nanoTime();
    assertEquals(0, finish(fillInPlace(logs)).code());
    long whole = System.nanoTime() - started;
    Random random = new Random(7);
    for (int kill = 0; kill < KILLS; kill++) {
      for (Map.Entry<Path, byte[]> entry : before.entrySet()) {
        Files.write(entry.getKey(), entry.getValue());
      }
      Process run = fillInPlace(logs);
      TimeUnit.NANOSECONDS.sleep((long) (whole * random.nextDouble()));
      run.destroyForcibly();
      run.waitFor();
      for (Map.Entry<Path, byte[]> entry : before.entrySet()) {
        byte[] now = Files.readAllBytes(entry.getKey());
        byte[] filled = Files.readAllBytes(done.resolve(entry.getKey().getFileName()));
        assertTrue(
            Arrays.equals(now, entry.getValue()) || Arrays.equals(now, filled),
            entry.getKey() + " is neither old nor new");
      }
    }
    assertEquals(0, finish(fillInPlace(logs)).code());
    List<String> names = new ArrayList<>();
    try (Stream<Path> files = Files.list(logs)) {
      for (Path file : files.toList()) {
        names.add(file.getFileName().toString());
        byte[] filled = Files.readAllBytes(done.resolve(file.getFileName()));
        assertArrayEquals(filled, Files.readAllBytes(file));
      }
    }
    assertEquals(100, names.size(), "left behind: " + names);
  }

  @Test
  void aWatcherEndsCleanlyWhenToldTo() throws Exception {
    Path logs = folder.resolve("logs");
    TestLogs.plain(logs.resolve("a.xlsx"), 1.085, 9);
    Path journal = folder.resolve("j.jsonl");
    Path out = folder.resolve("out.txt");
    ProcessBuilder builder =
        command("watch", logs.toString(), "--settle", "0", "--journal", journal.toString());
    Process watcher = builder.redirectOutput(out.toFile()).start();
    try {
      for (int i = 0; i < 600 && !Files.readString(out).contains("filled, 9 of 9"); i++) {
        Thread.sleep(100);
      }
      watcher.destroy();
      assertTrue(watcher.waitFor(60, TimeUnit.SECONDS), "it does not stop");
    } finally {
      watcher.destroyForcibly();
    }
    String log = Files.readString(out);
    assertTrue(log.contains("a.xlsx: filled, 9 of 9 rows; wrote "), log);
    assertTrue(log.contains("1 file: 1 filled"), log);
    assertEquals(143, watcher.exitValue());
  }

  private Process fillInPlace(Path logs) throws IOException {
    return start("fill", logs.toString(), "--in-place", "--threads", "2");
  }

  private Process start(String... arguments) throws IOException {
    return command(arguments).start();
  }

  private ProcessBuilder command(String... arguments) {
    List<String> words = new ArrayList<>();
    words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    words.addAll(List.of("-Xmx256m", "-XX:TieredStopAtLevel=1", "-jar", JAR.toString()));
    words.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(words);
    builder.environment().put("XDG_STATE_HOME", folder.resolve("state").toString());
    return builder.redirectError(folder.resolve("err.txt").toFile());
  }

  private Cli finish(Process process) throws Exception {
    try (InputStream out = process.getInputStream()) {
      String text = new String(out.readAllBytes(), StandardCharsets.UTF_8);
      assertTrue(process.waitFor(120, TimeUnit.SECONDS), "it hangs");
      Path err = folder.resolve("err.txt");
      String problems = Files.exists(err) ? Files.readString(err) : "";
      return new Cli(process.exitValue(), text, process.exitValue() == 0 ? problems : "");
    } finally {
      process.destroyForcibly();
    }
  }
}
