package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a log leaves open is asked on the terminal, and the answer fills it from then on. */
class AskingTest {
  @TempDir Path folder;
  private Path log;

  @BeforeEach
  void aLogThatDoesNotNameItsInstrument() throws IOException {
    log = folder.resolve("Wine.csv");
    Files.writeString(
        log,
        """
        date,Brix,temp C
        2025-10-01,20,20
        2025-10-03,15,20
        2025-10-06,10,20
        2025-10-14,7.5,20
        """);
  }

  private Cli ask(String typed, String... more) {
    InputStream before = System.in;
    System.setIn(new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)));
    try {
      String[] words = new String[3 + more.length];
      words[0] = "explain";
      words[1] = "--ask";
      words[2] = log.toString();
      System.arraycopy(more, 0, words, 3, more.length);
      return Cli.run(words);
    } finally {
      System.setIn(before);
    }
  }

  @Test
  void theAnswerIsWrittenBesideTheLogAndUsedFromThenOn() throws IOException {
    assertEquals(ExitCode.REFUSED, Cli.run("fill", log.toString()).code());
    Cli asked = ask("1\n");
    assertEquals(ExitCode.DONE, asked.code(), asked.err());
    assertTrue(asked.out().contains("a refractometer's or a hydrometer's?"), asked.out());
    assertTrue(asked.out().contains("% vol in 4 rows"), asked.out());
    assertTrue(
        Files.readString(folder.resolve("Wine.map")).contains("column B = REFRACTOMETER in BRIX"));
    Cli filled = Cli.run("fill", log.toString());
    assertEquals(ExitCode.DONE, filled.code(), filled.out());
    assertTrue(filled.out().contains("by the map Wine.map beside it"), filled.out());
  }

  @Test
  void whatIsNoAnswerIsAskedAgain() {
    Cli asked = ask("9\nperhaps\ncolumn B = REFRACTOMETER in BRIX\n");
    assertEquals(ExitCode.DONE, asked.code(), asked.err());
    assertTrue(asked.out().contains("There is no answer 9."), asked.out());
    assertTrue(Files.exists(folder.resolve("Wine.map")));
  }

  @Test
  void anEmptyLineAndAnEndedInputLeaveItOpen() {
    for (String typed : new String[] {"\n", ""}) {
      Cli asked = ask(typed);
      assertEquals(ExitCode.REFUSED, asked.code());
      assertTrue(asked.out().contains("nothing written"), asked.out());
      assertFalse(Files.exists(folder.resolve("Wine.map")));
    }
  }

  @Test
  void aMapThatIsThereIsLeftAsItIs() throws IOException {
    Path map = Files.writeString(folder.resolve("Wine.map"), "# mine\n");
    Cli asked = ask("1\n");
    assertEquals(ExitCode.FILE, asked.code());
    assertEquals("# mine\n", Files.readString(map));
    Cli elsewhere = ask("1\n", "--write-map", folder.resolve("other.map").toString());
    assertEquals(ExitCode.DONE, elsewhere.code(), elsewhere.err());
    assertTrue(Files.exists(folder.resolve("other.map")));
  }
}
