package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.runner.TestLogs;

/** The joined report of a job's parts is the report of the whole job, charts included. */
final class ReportMergeTest {
  @TempDir private Path folder;
  private Path logs;

  @BeforeEach
  void anArchive() throws IOException {
    logs = folder.resolve("logs");
    TestLogs.plain(logs.resolve("a/plain.xlsx"), 1.085, 9);
    TestLogs.withBadRow(logs.resolve("a-b/bad row.xlsx"), 1.070, 12, 4);
    TestLogs.withOwnAbv(logs.resolve("a.xlsx"), 1.100, 12, 131.25);
    TestLogs.plain(logs.resolve("B/long.xlsx"), 1.090, 1000);
    TestLogs.noLog(logs.resolve("prices.xlsx"));
    Files.writeString(logs.resolve("broken.xlsx"), "PK");
    Files.writeString(
        logs.resolve("no days.csv"),
        """
        Batch,SG,Temp °C,ABV
        Plum 3,1.080,20,0
        Plum 3,1.071,20,1.4
        Apple 7,1.050,20,0
        Apple 7,1.043,20,
        Molasses 2,7.5,20,
        """);
    try (Stream<Path> samples = Files.list(Path.of("../sample-sheets/samples"))) {
      for (Path sample : samples.toList()) {
        Files.copy(sample, logs.resolve(sample.getFileName()));
      }
    }
  }

  @Test
  void joinedPartsOfFillAreTheWhole() throws IOException {
    assertTrue(charts("fill", "--dry-run") >= 10, "few charts");
  }

  @Test
  void joinedPartsOfAnAuditAreTheWhole() throws IOException {
    assertTrue(charts("audit") >= 2, "few charts");
  }

  @Test
  void aPartThatIsMissingIsTold() throws IOException {
    run(1, "3-1.json", "fill", "--dry-run", "--shard", "1/3");
    run(1, "3-3.json", "fill", "--dry-run", "--shard", "3/3");
    Cli joined =
        Cli.run(
            "report",
            "merge",
            folder.resolve("3-1.json").toString(),
            folder.resolve("3-3.json").toString(),
            "--out",
            folder.resolve("two.json").toString());
    assertEquals(ExitCode.FILE, joined.code());
    assertEquals("The report lacks these parts of the job: 2/3.", joined.err().strip());
    assertTrue(Files.exists(folder.resolve("two.json")));
  }

  /** Compares all kinds of report, whole and joined, and counts the charts of the page. */
  private int charts(String... command) throws IOException {
    for (String kind : List.of("json", "csv", "html")) {
      run(3, "whole." + kind, command);
    }
    for (int parts = 1; parts <= 3; parts++) {
      List<String> merge = new ArrayList<>(List.of("report", "merge"));
      for (int part = parts; part >= 1; part--) {
        String report = parts + "-" + part + ".json";
        List<String> words = new ArrayList<>(List.of(command));
        words.addAll(List.of("--shard", part + "/" + parts));
        run(1, report, words.toArray(String[]::new));
        merge.add(folder.resolve(report).toString());
      }
      for (String kind : List.of("json", "csv", "html")) {
        List<String> words = new ArrayList<>(merge);
        words.addAll(List.of("--out", folder.resolve("joined." + kind).toString()));
        Cli joined = Cli.run(words.toArray(String[]::new));
        assertEquals(ExitCode.DONE, joined.code(), joined.err());
        assertEquals(text("whole." + kind), text("joined." + kind), parts + " parts, " + kind);
      }
    }
    String[] figures = text("whole.html").split("<figure>", -1);
    for (int i = 1; i < figures.length; i++) {
      assertTrue(figures[i].contains("<path class="), figures[i]);
    }
    return figures.length - 1;
  }

  @Test
  void reportsOfDifferentCommandsAreNotJoined() throws IOException {
    run(1, "fill.json", "fill", "--dry-run");
    run(1, "audit.json", "audit");
    Path out = folder.resolve("out.html");
    Cli joined =
        Cli.run(
            "report",
            "merge",
            folder.resolve("fill.json").toString(),
            folder.resolve("audit.json").toString(),
            "--out",
            out.toString());
    assertEquals(ExitCode.FILE, joined.code());
    assertTrue(joined.err().contains("of another command"), joined.err());
    assertFalse(Files.exists(out));
  }

  @Test
  void aReportWithoutCurvesGivesAPageWithoutCharts() throws IOException {
    run(1, "whole.json", "fill", "--dry-run");
    Path bare = folder.resolve("bare.json");
    Files.writeString(
        bare, text("whole.json").replaceAll("(?s),\\s*\"curves\": \\[.*?\n   ?\\]", ""));
    assertFalse(Files.readString(bare).contains("points"));
    Path out = folder.resolve("bare.html");
    Cli joined = Cli.run("report", "merge", bare.toString(), "--out", out.toString());
    assertEquals(ExitCode.DONE, joined.code(), joined.err());
    assertFalse(Files.readString(out).contains("<figure>"));
    assertTrue(Files.readString(out).contains("plain.xlsx"));
  }

  private void run(int threads, String report, String... command) {
    List<String> words = new ArrayList<>(List.of(command));
    words.add(logs.toString());
    words.addAll(List.of("--threads", Integer.toString(threads)));
    words.addAll(List.of("--report", folder.resolve(report).toString()));
    Cli.run(words.toArray(String[]::new));
    assertTrue(Files.exists(folder.resolve(report)), String.join(" ", words));
  }

  private String text(String name) throws IOException {
    return Files.readString(folder.resolve(name));
  }
}
