package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import washbook.log.language.Language;
import washbook.runner.file.UnusableFileException;
import washbook.runner.language.Wording;
import washbook.runner.report.FileResult;
import washbook.runner.report.ReportPlace;
import washbook.runner.report.ReportWriter;
import washbook.runner.report.Reports;

/** One place for two things, or a place in which somebody's file lies already: nothing is lost. */
@Timeout(120)
final class PlacesOfResultsTest {
  private static final String LOG = "Day,SG,Temp C\n0,1.085,20\n1,1.080,21\n2,1.070,21\n";
  private static final String LATER = LOG + "3,1.060,21\n";

  @TempDir private Path folder;
  private Path logs;
  private Path out;
  private Path result;

  @BeforeEach
  void twoLogs() throws IOException {
    logs = Files.createDirectory(folder.resolve("logs"));
    Files.writeString(logs.resolve("apple.csv"), LOG);
    Files.writeString(logs.resolve("plum.csv"), LOG);
    out = Files.createDirectory(folder.resolve("out"));
    result = out.resolve("apple.csv");
  }

  @Test
  void aReportIsNotPutWhereAResultGoes() throws IOException {
    Cli done = fill("--report", result.toString());
    assertEquals(ExitCode.USAGE, done.code(), done.out());
    assertTrue(done.err().contains("is where the result of"), done.err());
    assertFalse(Files.exists(result));
    Path beside = logs.resolve("apple.filled.csv");
    Path log = logs.resolve("apple.csv");
    done = Cli.run("fill", log.toString(), "--report", beside.toString());
    assertEquals(ExitCode.USAGE, done.code(), done.out());
  }

  @Test
  void aReportNeverReplacesALogThatIsReadAlsoWhenItMayOverwrite() throws IOException {
    Path log = logs.resolve("apple.csv");
    Path link = Files.createSymbolicLink(logs.resolve("other.csv"), folder.resolve("real.csv"));
    Path real = Files.writeString(folder.resolve("real.csv"), LOG);
    for (Path report : List.of(log, real)) {
      Cli done = fill("--report", report.toString(), "--overwrite");
      assertEquals(ExitCode.USAGE, done.code(), done.out());
      assertTrue(done.err().contains("is one of the files to read"), done.err());
      assertEquals(LOG, Files.readString(report));
      String[] audit = {"audit", logs.toString(), "--report", report.toString(), "--overwrite"};
      assertEquals(ExitCode.USAGE, Cli.run(audit).code());
      assertEquals(LOG, Files.readString(report));
    }
    Files.delete(link);
    Files.delete(real);
    Path report = logs.resolve("report.csv");
    assertEquals(ExitCode.DONE, fill("--report", report.toString()).code());
    assertEquals(ExitCode.DONE, fill("--report", report.toString()).code(), "an earlier report");
  }

  @Test
  void journalAndReportHaveNamesOfTheirOwn() throws IOException {
    Path both = folder.resolve("both.csv");
    Path otherwise = folder.resolve("logs/../both.csv");
    Cli done = fill("--journal", both.toString(), "--report", otherwise.toString());
    assertEquals(ExitCode.USAGE, done.code(), done.out());
    assertTrue(done.err().contains("--journal and --report both name"), done.err());
    assertFalse(Files.exists(both));
  }

  /** As where another part of the job has put its result there while this one ran. */
  @Test
  void aReportLooksAgainBeforeItTakesItsPlace() throws IOException {
    Path report = folder.resolve("report.csv");
    try (ReportWriter<FileResult> writer =
        Reports.open(
            ReportPlace.about(report, List.of(logs.resolve("plum.csv"))),
            new Wording(Language.EN))) {
      Files.writeString(report, "mine\n");
      UnusableFileException told = assertThrows(UnusableFileException.class, writer::finish);
      assertTrue(told.getMessage().contains("is no report"), told.getMessage());
    }
    assertEquals("mine\n", Files.readString(report));
  }

  @Test
  void aResultReplacesAnEarlierResultAndNobodysFile() throws IOException {
    Files.writeString(result, "mine\n");
    Cli done = fill();
    assertEquals(ExitCode.FILE, done.code(), done.out());
    assertTrue(done.out().contains("is no result of this program"), done.out());
    assertEquals("mine\n", Files.readString(result));
    assertTrue(Files.exists(out.resolve("plum.csv")));
    assertEquals(ExitCode.DONE, fill("--overwrite").code());
    byte[] first = Files.readAllBytes(result);
    Files.writeString(logs.resolve("apple.csv"), LATER);
    assertEquals(ExitCode.DONE, fill().code());
    assertTrue(Files.readAllBytes(result).length > first.length);
  }

  @Test
  void aCopyOfTheLogThatSomebodyKeepsInTheFolderStays() throws IOException {
    Files.writeString(result, LOG);
    Cli done =
        Cli.run("watch", logs.toString(), "--out", out.toString(), "--once", "--settle", "0");
    assertEquals(ExitCode.FILE, done.code(), done.out());
    assertEquals(LOG, Files.readString(result));
  }

  @Test
  void aCopyBesideTheLogReplacesAnEarlierOneAlone() throws IOException {
    Path log = logs.resolve("apple.csv");
    Path beside = Files.writeString(logs.resolve("apple.filled.csv"), LOG);
    assertEquals(ExitCode.FILE, Cli.run("fill", log.toString()).code());
    assertEquals(LOG, Files.readString(beside));
    Files.delete(beside);
    assertEquals(ExitCode.DONE, Cli.run("fill", log.toString()).code());
    Files.writeString(log, LATER);
    assertEquals(ExitCode.DONE, Cli.run("fill", log.toString()).code());
    assertTrue(Files.readString(beside).contains("1.060"));
  }

  @Test
  void aSeasonDoesNotReplaceAResultThatCameThereMeanwhile() throws IOException {
    Cli done =
        Cli.run(
            "watch",
            logs.toString(),
            "--out",
            out.toString(),
            "--once",
            "--settle",
            "0",
            "--season",
            result.toString());
    assertTrue(done.out().contains("is no season of this program"), done.out());
    assertTrue(Files.readString(result).contains("Corrected gravity"));
  }

  @Test
  void aJournalIsNoResult() throws IOException {
    Cli done = fill("--journal", result.toString());
    assertEquals(ExitCode.FILE, done.code(), done.out());
    byte[] journal = Files.readAllBytes(result);
    fill("--journal", result.toString(), "--continue");
    assertArrayEquals(journal, Files.readAllBytes(result));
  }

  private Cli fill(String... more) {
    List<String> words = new ArrayList<>(List.of("fill", logs.toString(), "--out", out.toString()));
    words.addAll(List.of(more));
    return Cli.run(words.toArray(String[]::new));
  }
}
