package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.runner.TestLogs;

/** What is left unsaid with {@code --quiet} and {@code --continue}; exit codes stay. */
final class SayingLessTest {
  private static final String COLD_GUESS = "Day,SG,Temp C\n0,1.085,20\n1,1.080,99\n2,1.070,21\n";

  @TempDir private Path folder;

  @BeforeEach
  void threeLogs() throws IOException {
    TestLogs.plain(folder.resolve("logs/apple.xlsx"), 1.060, 9);
    TestLogs.plain(folder.resolve("logs/plum.xlsx"), 1.085, 9);
    Files.writeString(folder.resolve("logs/sugar.csv"), COLD_GUESS);
  }

  private Cli fill(String... more) {
    String[] words = new String[6 + more.length];
    String[] first = {
      "fill", at("logs"), "--out", at("out"), "--journal", at("j.jsonl"),
    };
    System.arraycopy(first, 0, words, 0, first.length);
    System.arraycopy(more, 0, words, first.length, more.length);
    return Cli.run(words);
  }

  private String at(String name) {
    return folder.resolve(name).toString();
  }

  @Test
  void quietSaysWhatWasRefusedAndNothingElse() {
    Cli usual = fill();
    Cli quiet = fill("--quiet");
    assertEquals(usual.code(), quiet.code());
    assertEquals(ExitCode.REFUSED, quiet.code(), quiet.out());
    assertTrue(usual.out().contains("apple.xlsx"), usual.out());
    assertFalse(quiet.out().contains("apple.xlsx"), quiet.out());
    assertTrue(quiet.out().contains("sugar.csv"), quiet.out());
    assertTrue(quiet.out().contains("99"), quiet.out());
  }

  @Test
  void quietSaysNothingWhereNothingWasRefused() throws IOException {
    Files.delete(folder.resolve("logs/sugar.csv"));
    Cli quiet = fill("--quiet");
    assertEquals(ExitCode.DONE, quiet.code());
    assertEquals("", quiet.out() + quiet.err());
  }

  @Test
  void aContinuedRunPrintsOnlyWhatIsNew() throws IOException {
    Cli first = fill();
    TestLogs.plain(folder.resolve("logs/molasses.xlsx"), 1.070, 9);
    Cli again = fill("--continue");
    assertEquals(first.code(), again.code(), again.out());
    assertTrue(again.out().contains("molasses.xlsx"), again.out());
    assertFalse(again.out().contains("apple.xlsx"), again.out());
    assertFalse(again.out().contains("sugar.csv"), again.out());
    assertTrue(again.out().contains("3 of them were done by an earlier run"), again.out());
  }
}
