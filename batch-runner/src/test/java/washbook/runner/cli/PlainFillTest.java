package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import washbook.runner.TestLogs;

/** A fill that goes round the command-line library does what it does through it. */
final class PlainFillTest {
  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "#/a.xlsx",
        "#/a.xlsx #/b.xlsx",
        "#/a.xlsx #/none.xlsx",
        "#/a.xlsx --out #/out",
        "--out #/out #/a.xlsx --quiet",
        "#/a.xlsx --in-place --backup",
        "# --in-place",
        "--dry-run #/a.xlsx --language de",
        "--language de_AT #/a.xlsx"
      })
  void plainWordsGiveTheSameRoundTheLibrary(String words) throws IOException {
    String[] args = words.split(" ");
    assertTrue(isPlain(args), words);
    same(args);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "--out",
        "#/a.xlsx --out",
        "#/a.xlsx --out --in-place",
        "#/a.xlsx --out #/out --out #/other",
        "#/a.xlsx --out #/out --in-place",
        "#/a.xlsx --backup",
        "#/a.xlsx --in-place --in-place",
        "#/a.xlsx --language klingon",
        "#/a.xlsx --out=#/out",
        "#/a.xlsx --threads 1",
        "#/a.xlsx --as pack",
        "#/a.xlsx --no-such-option",
        "#/a.xlsx -h",
        "-- #/a.xlsx",
        "@#/a.xlsx",
        "--dry-run"
      })
  void anythingElseIsLeftToTheLibrary(String words) throws IOException {
    String[] args = words.split(" ");
    assertFalse(isPlain(args), words);
    same(args);
  }

  @Test
  void aShardInTheEnvironmentIsLeftToTheLibrary() {
    List<String> words = List.of("a.xlsx");
    assertNull(FillCommand.plain(words, Map.of(RunArguments.SHARD_VARIABLE, "1/2")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"fill", "explain", "audit", "watch", "season", "portable"})
  void aCommandMadeAloneHasTheHelpThatItHasAmongAll(String name) {
    String[][] ways = {{name, "--help"}, {"help"}};
    String[] helps = new String[2];
    for (int i = 0; i < ways.length; i++) {
      CommandLine line = WashbookCommand.commandLine(ways[i], System.out, System.err);
      assertEquals(i == 0 ? 1 : 11, line.getSubcommands().size());
      helps[i] = line.getSubcommands().get(name).getUsageMessage();
    }
    assertEquals(helps[1], helps[0]);
  }

  @Test
  void theWarmUpFillsALogOfEachFormat() throws IOException {
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    Warmup.run(new PrintStream(said, true, StandardCharsets.UTF_8));
    String text = said.toString(StandardCharsets.UTF_8);
    for (String format : List.of("csv", "xlsx", "ods")) {
      long filled = text.lines().filter(l -> l.contains("warm-up." + format + ": filled")).count();
      assertTrue(filled >= 4, text);
    }
  }

  private static boolean isPlain(String[] args) {
    return FillCommand.plain(Arrays.asList(args), Map.of()) != null;
  }

  private void same(String[] words) throws IOException {
    Path logs = folder.resolve("logs");
    TestLogs.plain(logs.resolve("a.xlsx"), 1.085, 9);
    TestLogs.plain(logs.resolve("b.xlsx"), 1.070, 5);
    Path round = copy(logs, folder.resolve("round"));
    Path through = copy(logs, folder.resolve("through"));
    Cli plain = in(round, words, Cli::run);
    Cli library = in(through, words, Cli::viaLibrary);
    assertEquals(library.code(), plain.code(), plain.err());
    assertEquals(library.out().replace("through", "round"), plain.out());
    assertEquals(library.err().replace("through", "round"), plain.err());
    Map<String, byte[]> wanted = files(through);
    Map<String, byte[]> found = files(round);
    assertEquals(wanted.keySet(), found.keySet());
    wanted.forEach((name, bytes) -> assertArrayEquals(bytes, found.get(name), name));
  }

  private static Cli in(Path logs, String[] words, Function<String[], Cli> way) {
    return way.apply(
        Stream.concat(Stream.of("fill"), Stream.of(words).map(w -> w.replace("#", logs.toString())))
            .toArray(String[]::new));
  }

  private static Path copy(Path logs, Path to) throws IOException {
    for (String name : List.of("a.xlsx", "b.xlsx")) {
      Files.createDirectories(to);
      Files.copy(logs.resolve(name), to.resolve(name));
    }
    return to;
  }

  private static Map<String, byte[]> files(Path root) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(root)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(root.relativize(file).toString(), Files.readAllBytes(file));
      }
    }
    return files;
  }
}
