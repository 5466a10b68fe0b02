package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.functions.Answer;
import washbook.functions.SafetyNote;
import washbook.functions.catalogue.Catalogue;
import washbook.runner.TestLogs;

final class FillCommandTest {
  @TempDir private Path folder;

  @Test
  void writesACopyBesideTheLogAndLeavesTheLogAlone() throws IOException {
    Path log = TestLogs.plain(folder.resolve("Plum 3.xlsx"), 1.085, 9);
    byte[] before = Files.readAllBytes(log);
    Cli run = Cli.run("fill", log.toString());
    assertEquals(ExitCode.DONE, run.code(), run.err() + run.out());
    assertArrayEquals(before, Files.readAllBytes(log));
    assertTrue(run.out().contains("filled, 9 of 9 rows; wrote "), run.out());
    assertTrue(run.err().endsWith(SafetyNote.POINTER + System.lineSeparator()), run.err());
    try (Workbook book = WorkbookFactory.create(folder.resolve("Plum 3.filled.xlsx").toFile())) {
      Sheet sheet = book.getSheet("Log");
      assertEquals("Corrected gravity (SG)", sheet.getRow(0).getCell(3).getStringCellValue());
      double gravity = sheet.getRow(9).getCell(3).getNumericCellValue();
      double first = sheet.getRow(1).getCell(3).getNumericCellValue();
      Answer abv = Catalogue.get("ABV").call(first, gravity);
      assertEquals(
          ((Answer.Number) abv).value(), sheet.getRow(9).getCell(4).getNumericCellValue(), 1e-9);
    }
  }

  /** The command of the help text, given in an empty place. */
  @Test
  void aReportAmongResultsNeedsNoFolderBeforehand() throws IOException {
    Path log = TestLogs.plain(folder.resolve("a.xlsx"), 1.085, 9);
    Path out = folder.resolve("computed");
    Path report = out.resolve("report.html");
    Cli run =
        Cli.run("fill", log.toString(), "--out", out.toString(), "--report", report.toString());
    assertEquals(ExitCode.DONE, run.code(), run.err() + run.out());
    assertTrue(Files.size(report) > 0);
    Path elsewhere = folder.resolve("nowhere").resolve("report.html");
    Cli refused =
        Cli.run("fill", log.toString(), "--out", out.toString(), "--report", elsewhere.toString());
    assertEquals(ExitCode.USAGE, refused.code());
    assertTrue(refused.err().contains("there is no folder"), refused.err());
  }

  @Test
  void fillingInPlaceTwiceGivesTheSameBytes() throws IOException {
    Path log = TestLogs.plain(folder.resolve("a.xlsx"), 1.085, 9);
    assertEquals(ExitCode.DONE, Cli.run("fill", log.toString(), "--in-place").code());
    byte[] once = Files.readAllBytes(log);
    Cli again = Cli.run("fill", log.toString(), "--in-place", "--backup");
    assertEquals(ExitCode.DONE, again.code());
    assertTrue(again.out().contains("is up to date"), again.out());
    assertArrayEquals(once, Files.readAllBytes(log));
    assertEquals(List.of("a.xlsx"), names());
  }

  @Test
  void aBackupHoldsTheOldBytes() throws IOException {
    Path log = TestLogs.plain(folder.resolve("a.xlsx"), 1.085, 9);
    byte[] before = Files.readAllBytes(log);
    assertEquals(ExitCode.DONE, Cli.run("fill", log.toString(), "--in-place", "--backup").code());
    assertArrayEquals(before, Files.readAllBytes(folder.resolve("a.xlsx.bak")));
  }

  @Test
  void theJsonReportHasTheFrozenShape() throws IOException {
    Path log = TestLogs.withBadRow(folder.resolve("a.xlsx"), 1.085, 9, 4);
    Path report = folder.resolve("r.json");
    Cli run = Cli.run("fill", log.toString(), "--report", report.toString());
    assertEquals(ExitCode.REFUSED, run.code(), run.err());
    JsonObject json = JsonParser.parseString(Files.readString(report)).getAsJsonObject();
    assertEquals(List.of("files", "safety"), List.copyOf(json.keySet()));
    JsonObject file = json.getAsJsonArray("files").get(0).getAsJsonObject();
    assertEquals(
        List.of("path", "status", "tables", "refusals", "curves", "overview", "map"),
        List.copyOf(file.keySet()));
    assertEquals("partly filled", file.get("status").getAsString());
    JsonObject table = file.getAsJsonArray("tables").get(0).getAsJsonObject();
    assertEquals(
        List.of("sheet", "range", "batches", "kind", "account"), List.copyOf(table.keySet()));
    assertEquals(
        "{\"rows\":10,\"filled\":8,\"refused\":1,\"passedOver\":1,"
            + "\"passed\":[{\"reason\":\"HEADING\",\"count\":1,\"rows\":\"1\"}]}",
        table.getAsJsonObject("account").toString());
    JsonObject batch = table.getAsJsonArray("batches").get(0).getAsJsonObject();
    assertEquals(
        List.of("name", "originalGravity", "rows", "filled", "refused"),
        List.copyOf(batch.keySet()));
    assertEquals(9, batch.get("rows").getAsInt());
    assertEquals(8, batch.get("filled").getAsInt());
    JsonObject refusal = file.getAsJsonArray("refusals").get(0).getAsJsonObject();
    assertEquals(List.of("cell", "code", "reason"), List.copyOf(refusal.keySet()));
    assertEquals("Log!B6", refusal.get("cell").getAsString());
    assertEquals("TOO_HIGH", refusal.get("code").getAsString());
    JsonObject curve = file.getAsJsonArray("curves").get(0).getAsJsonObject();
    assertEquals(List.of("batch", "unit", "points"), List.copyOf(curve.keySet()));
    assertEquals(9, curve.getAsJsonArray("points").size());
    assertEquals("[4,null,null]", curve.getAsJsonArray("points").get(4).toString());
    assertTrue(curve.getAsJsonArray("points").get(0).toString().matches("\\[0,1\\.085\\d*,0\\]"));
  }

  @Test
  void aDryRunReportsButWritesNoWorkbook() throws IOException {
    Path log = TestLogs.plain(folder.resolve("a.xlsx"), 1.085, 9);
    byte[] before = Files.readAllBytes(log);
    for (String way : List.of("--in-place", "--out=" + folder.resolve("out"))) {
      Cli run = Cli.run("fill", log.toString(), "--dry-run", way);
      assertEquals(ExitCode.DONE, run.code(), run.err());
      assertTrue(run.out().contains("9 of 9 rows (dry run: nothing written)"), run.out());
    }
    assertEquals(List.of("a.xlsx"), names());
    assertArrayEquals(before, Files.readAllBytes(log));
  }

  @Test
  void exitCodesSayTheWorst() throws IOException {
    Path log = TestLogs.plain(folder.resolve("a.xlsx"), 1.085, 9);
    Path other = TestLogs.noLog(folder.resolve("prices.xlsx"));
    Path broken = Files.writeString(folder.resolve("broken.xlsx"), "PK\3\4 no workbook");
    String[] files = {log.toString(), other.toString(), broken.toString()};
    assertEquals(ExitCode.DONE, Cli.run("fill", "--dry-run", files[0]).code());
    assertEquals(ExitCode.REFUSED, Cli.run("fill", "--dry-run", files[0], files[1]).code());
    assertEquals(ExitCode.NOTHING_RECOGNISED, Cli.run("fill", "--dry-run", files[1]).code());
    assertEquals(ExitCode.FILE, Cli.run("fill", "--dry-run", files[0], files[2]).code());
    assertEquals(ExitCode.FILE, Cli.run("fill", folder.resolve("gone.xlsx").toString()).code());
  }

  @Test
  void senselessCommandLinesAreUsageErrors() throws IOException {
    String log = TestLogs.plain(folder.resolve("a.xlsx"), 1.085, 9).toString();
    for (String options :
        List.of(
            "--backup",
            "--in-place --out x",
            "--columns nosuch",
            "--as nosuch",
            "--shard 3/2",
            "--threads 0",
            "--report r.pdf",
            "--report nosuchfolder/r.json",
            "--nosuch")) {
      Cli run = Cli.run(("fill " + log + " " + options).split(" "));
      assertEquals(ExitCode.USAGE, run.code(), options);
      assertFalse(run.err().isEmpty(), options);
    }
    assertEquals(ExitCode.USAGE, Cli.run("fill").code());
    assertEquals(List.of("a.xlsx"), names());
    assertEquals(
        List.of(
            "There is no column 'nosuch'; there are gravity, abv, apparent, real, extract, sugar,"
                + " rate, state, plusminus, original, sg, strength, volume20, pure, puresum, share, cut,"
                + " head.",
            "'washbook fill --help' lists what can be given."),
        Cli.run("fill", log, "--columns", "nosuch").err().lines().toList());
  }

  @Test
  void aMapForASheetThatIsNotThereIsSaid() throws IOException {
    Path log = Files.writeString(folder.resolve("plum.csv"), "SG,Temp C\n1.080,20\n1.050,20\n");
    Path map =
        Files.writeString(folder.resolve("m.map"), "[table]\nsheet = plom\ncalibration = 15 C\n");
    Cli wrong = Cli.run("fill", log.toString(), "--map", map.toString());
    assertEquals(ExitCode.REFUSED, wrong.code());
    assertTrue(wrong.err().contains("no log on a sheet named 'plom'"), wrong.err());
    Files.writeString(map, "[table]\nsheet = plum\ncalibration = 15 C\n");
    Cli right = Cli.run("fill", log.toString(), "--map", map.toString());
    assertEquals(ExitCode.DONE, right.code(), right.err());
    assertEquals(SafetyNote.POINTER, right.err().strip());
  }

  @Test
  void anEmptyFolderIsSaid() throws IOException {
    Cli run = Cli.run("fill", Files.createDirectory(folder.resolve("empty")).toString());
    assertEquals(ExitCode.NOTHING_RECOGNISED, run.code());
    assertTrue(run.out().contains("No files of a kind that Washbook reads"), run.out());
  }

  @Test
  void resultsDoNotDependOnTheNumberOfThreads() throws IOException {
    manyLogs(folder.resolve("logs"), 30);
    Map<String, String> one = fillTo("one", "--threads", "1");
    Map<String, String> eight = fillTo("eight", "--threads", "8");
    assertEquals(30, one.size());
    assertEquals(one, eight);
    assertEquals(
        Files.readString(folder.resolve("one.json")),
        Files.readString(folder.resolve("eight.json")));
  }

  @Test
  void twoShardsJoinedEqualTheWhole() throws IOException {
    manyLogs(folder.resolve("logs"), 30);
    Map<String, String> whole = fillTo("whole");
    Map<String, String> parts = fillTo("part1", "--shard", "1/2");
    assertTrue(parts.size() > 5 && parts.size() < 25, "first part: " + parts.size());
    parts.putAll(fillTo("part2", "--shard", "2/2"));
    assertEquals(whole, parts);
    Path joined = folder.resolve("joined.json");
    Cli merge =
        Cli.run(
            "report",
            "merge",
            folder.resolve("part2.json").toString(),
            folder.resolve("part1.json").toString(),
            "--out",
            joined.toString());
    assertEquals(ExitCode.DONE, merge.code(), merge.err());
    assertEquals(Files.readString(folder.resolve("whole.json")), Files.readString(joined));
  }

  @Test
  void joiningReportsThatOverlapOrAreNoneIsRefused() throws IOException {
    manyLogs(folder.resolve("logs"), 2);
    fillTo("whole");
    String whole = folder.resolve("whole.json").toString();
    String out = folder.resolve("joined.json").toString();
    assertEquals(ExitCode.FILE, Cli.run("report", "merge", whole, whole, "--out", out).code());
    Files.writeString(folder.resolve("no.json"), "[1]");
    String no = folder.resolve("no.json").toString();
    assertEquals(ExitCode.FILE, Cli.run("report", "merge", whole, no, "--out", out).code());
    assertFalse(Files.exists(Path.of(out)));
  }

  @Test
  void continuingLeavesUnchangedFilesAloneAndReportsThemAllTheSame() throws IOException {
    manyLogs(folder.resolve("logs"), 5);
    String[] command = {
      "fill",
      folder.resolve("logs").toString(),
      "--in-place",
      "--continue",
      "--journal",
      folder.resolve("j.jsonl").toString(),
      "--report",
      folder.resolve("r.json").toString()
    };
    assertEquals(ExitCode.DONE, Cli.run(command).code());
    String first = Files.readString(folder.resolve("r.json"));
    TestLogs.plain(folder.resolve("logs/log 2.xlsx"), 1.070, 4);
    Cli second = Cli.run(command);
    assertFalse(second.out().contains("log 1.xlsx"), second.out());
    assertTrue(second.out().contains("4 of them were done by an earlier run"), second.out());
    assertTrue(second.out().contains("log 2.xlsx: filled, 4 of 4 rows; wrote"), second.out());
    Cli third = Cli.run(command);
    assertTrue(third.out().contains("5 of them were done by an earlier run"), third.out());
    assertFalse(first.equals(Files.readString(folder.resolve("r.json"))));
  }

  private void manyLogs(Path where, int count) throws IOException {
    for (int i = 0; i < count; i++) {
      TestLogs.plain(where.resolve("log " + i + ".xlsx"), 1.060 + 0.001 * i, 5 + i % 7);
    }
  }

  /** Fills the folder of logs and gives the results' content by name. */
  private Map<String, String> fillTo(String name, String... options) throws IOException {
    Path out = folder.resolve(name);
    Cli run =
        Cli.run(
            Stream.concat(
                    Stream.of(
                        "fill",
                        folder.resolve("logs").toString(),
                        "--out",
                        out.toString(),
                        "--report",
                        folder.resolve(name + ".json").toString()),
                    Stream.of(options))
                .toArray(String[]::new));
    assertEquals(ExitCode.DONE, run.code(), run.err() + run.out());
    Map<String, String> content = new TreeMap<>();
    try (Stream<Path> files = Files.list(out)) {
      for (Path file : files.toList()) {
        content.put(
            file.getFileName().toString(),
            Arrays.toString(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file))));
      }
    } catch (NoSuchAlgorithmException missing) {
      throw new IllegalStateException(missing);
    }
    return content;
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
