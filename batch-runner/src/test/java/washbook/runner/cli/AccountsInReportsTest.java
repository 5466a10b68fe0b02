package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What became of each row of a table is told alike wherever a fill or an explanation is told. */
class AccountsInReportsTest {
  private static final String LOG =
      """
      Plum 3,,
      Day,SG,Temp °C
      0,1.085,20
      ,,
      3,1.05,24
      racked today,,
      5,,20
      6,1.02,
      9,1.0,21
      """;

  private static final String TOLD =
      "Rows: 8; filled: 3; refused: 1; passed over: 4"
          + " (without a reading: 4, 7; headings: 2; notes: 6)";

  @TempDir Path folder;
  private Path log;

  @BeforeEach
  void aLog() throws IOException {
    log = Files.writeString(folder.resolve("Plum 3.csv"), LOG);
  }

  private String report(String name, String... more) throws IOException {
    Path report = folder.resolve(name);
    List<String> words =
        List.of("fill", log.toString(), "--dry-run", "--report", report.toString());
    String[] all = Stream.concat(words.stream(), List.of(more).stream()).toArray(String[]::new);
    assertEquals(ExitCode.REFUSED, Cli.run(all).code());
    return Files.readString(report);
  }

  @Test
  void theConsoleAndExplainSayIt() {
    String filled = Cli.run("fill", log.toString(), "--dry-run").out();
    assertTrue(filled.contains("Plum 3, A2:C9: " + TOLD), filled);
    String explained = Cli.run("explain", log.toString()).out().replaceAll("\\s+", " ");
    assertTrue(explained.contains(TOLD), explained);
  }

  @Test
  void theJsonReportHasTheCountsAndTheRows() throws IOException {
    String json = report("r.json").replaceAll("\\s+", "");
    assertTrue(
        json.contains("\"account\":{\"rows\":8,\"filled\":3,\"refused\":1,\"passedOver\":4"), json);
    assertTrue(json.contains("{\"reason\":\"BLANK\",\"count\":2,\"rows\":\"4,7\"}"), json);
  }

  @Test
  void theCsvReportHasALineForTheTable() throws IOException {
    List<String> lines = report("r.csv").lines().toList();
    assertTrue(lines.get(0).endsWith(",passedOver"), lines.get(0));
    String table = lines.stream().filter(l -> l.startsWith("table,")).findFirst().orElseThrow();
    assertTrue(table.contains(",Plum 3,A2:C9,,,8,3,1,,,"), table);
    assertTrue(table.contains("\"without a reading: 4, 7; headings: 2; notes: 6\""), table);
    assertTrue(table.endsWith(",4"), table);
  }

  @Test
  void thePageSaysItInTheUsersLanguage() throws IOException {
    String page = report("r.html", "--language", "de");
    assertTrue(page.contains("Was aus jeder Zeile wurde"), page);
    assertTrue(
        page.contains("<td>ohne Messwert: 4, 7; Überschriften: 2; Bemerkungen: 6</td>"), page);
  }

  @Test
  void aTableThatWaitsForAnAnswerIsAccountedForToo() throws IOException {
    Files.writeString(
        log, "Plum wine fermentation,,\nDay,Reading,Temp °C\n0,20.5,20\n3,14,24\n6,9,21\n9,6,21\n");
    String page = report("r.html");
    assertTrue(
        page.contains(
            "<td>A2:C6</td><td class=\"number\">5</td><td class=\"number\">0</td><td class=\"number\">4</td><td class=\"number\">1</td>"),
        page);
  }
}
