package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.runner.TestLogs;

/** An archive spread over processes, the way a scheduler of jobs does it. */
final class ShardsIT {
  private static final Path JAR = Path.of("target/washbook.jar").toAbsolutePath();
  private static final int LOGS = 12;

  @TempDir private Path folder;

  @BeforeEach
  void makeAnArchive() throws IOException {
    for (int i = 0; i < LOGS; i++) {
      Path year = folder.resolve("archive").resolve("202" + i % 3);
      TestLogs.plain(year.resolve("log " + i + ".xlsx"), 1.060 + 0.001 * i, 5 + i % 7);
    }
  }

  /** The commands of README's example. */
  @Test
  void theDocumentedExampleOfTwoPartsGivesTheWhole() throws Exception {
    run("", "fill", "archive/", "--out", "whole", "--report", "whole.json");
    run("", "fill", "archive/", "--out", "computed", "--shard", "1/2", "--report", "part1.json");
    run("", "fill", "archive/", "--out", "computed", "--shard", "2/2", "--report", "part2.json");
    run("", "report", "merge", "part1.json", "part2.json", "--out", "whole.html");
    run("", "report", "merge", "part1.json", "part2.json", "--out", "joined.json");
    assertEquals(LOGS, results("whole").size());
    assertEquals(results("whole"), results("computed"));
    assertEquals(text("whole.json"), text("joined.json"));
    // Once for each batch in the overview, once for each file below.
    assertEquals(2 * LOGS, text("whole.html").split("class=\"status\"", -1).length - 1);
    assertEquals(LOGS, text("whole.html").split("<figure>", -1).length - 1);
  }

  @Test
  void anyNumberOfPartsTakenFromTheEnvironmentGivesTheWhole() throws Exception {
    run("", "fill", "archive", "--out", "whole", "--threads", "8", "--report", "whole.json");
    for (int parts : new int[] {1, 3, 5}) {
      List<String> merge = new ArrayList<>(List.of("report", "merge"));
      String out = "in" + parts;
      for (int part = 1; part <= parts; part++) {
        String report = out + "-" + part + ".json";
        run(part + "/" + parts, "fill", "archive", "--out", out, "--report", report);
        merge.add(report);
      }
      String joined = out + ".json";
      merge.addAll(List.of("--out", joined));
      run("", merge.toArray(String[]::new));
      assertEquals(results("whole"), results(out), parts + " parts");
      assertEquals(text("whole.json"), text(joined), parts + " parts");
    }
  }

  private void run(String shard, String... arguments) throws Exception {
    List<String> words = new ArrayList<>();
    words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    words.addAll(List.of("-Xmx256m", "-XX:TieredStopAtLevel=1", "-jar", JAR.toString()));
    words.addAll(List.of(arguments));
    Path said = folder.resolve("said.txt");
    ProcessBuilder builder = new ProcessBuilder(words).directory(folder.toFile());
    builder.environment().put("XDG_STATE_HOME", folder.resolve("state").toString());
    if (!shard.isEmpty()) {
      builder.environment().put("WASHBOOK_SHARD", shard);
    }
    Process process = builder.redirectErrorStream(true).redirectOutput(said.toFile()).start();
    try {
      assertTrue(process.waitFor(120, TimeUnit.SECONDS), words + " hangs");
    } finally {
      process.destroyForcibly();
    }
    assertEquals(0, process.exitValue(), words + ": " + Files.readString(said));
  }

  private String text(String name) throws IOException {
    return Files.readString(folder.resolve(name));
  }

  private Map<String, ByteBuffer> results(String name) throws IOException {
    Path where = folder.resolve(name);
    Map<String, ByteBuffer> content = new TreeMap<>();
    try (Stream<Path> files = Files.walk(where)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        content.put(where.relativize(file).toString(), ByteBuffer.wrap(Files.readAllBytes(file)));
      }
    }
    return content;
  }
}
