package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.functions.SafetyNote;
import washbook.runner.TestLogs;

final class AuditCommandTest {
  @TempDir private Path folder;

  @Test
  void saysWhereAndByHowMuchARuleOfThumbIsOff() throws IOException {
    Path log = TestLogs.withOwnAbv(folder.resolve("Plum 3.xlsx"), 1.100, 12, 131.25);
    byte[] before = Files.readAllBytes(log);
    Path report = folder.resolve("r.json");
    Cli run = Cli.run("audit", log.toString(), "--report", report.toString());
    assertEquals(ExitCode.DONE, run.code(), run.err());
    assertArrayEquals(before, Files.readAllBytes(log));
    assertTrue(run.out().contains("likely cause: a rule of thumb"), run.out());

    JsonObject json = JsonParser.parseString(Files.readString(report)).getAsJsonObject();
    assertEquals(SafetyNote.text(), json.get("safety").getAsString());
    JsonObject total = json.getAsJsonObject("total");
    assertEquals(1, total.get("files").getAsInt());
    assertTrue(total.get("compared").getAsInt() >= total.get("differing").getAsInt());
    assertTrue(Math.abs(total.get("largestAbv").getAsDouble()) > 0);
    JsonObject file = json.getAsJsonArray("files").get(0).getAsJsonObject();
    JsonObject column = file.getAsJsonArray("columns").get(0).getAsJsonObject();
    assertEquals("ABV", column.get("header").getAsString());
    assertEquals(12, column.get("compared").getAsInt());
    assertEquals("RULE_OF_THUMB", column.getAsJsonArray("causes").get(0).getAsString());
    int differing = column.get("differing").getAsInt();
    int listed = 0;
    for (var batch : column.getAsJsonArray("batches")) {
      listed += batch.getAsJsonObject().getAsJsonArray("rows").size();
    }
    assertTrue(differing > 0);
    assertEquals(differing, listed);
    String largest = column.get("largestCell").getAsString();
    assertTrue(run.out().contains(largest), run.out());
  }

  @Test
  void theCsvReportHasALineForEachDifferingRow() throws IOException {
    Path log = TestLogs.withOwnAbv(folder.resolve("Plum 3.xlsx"), 1.100, 12, 131.25);
    Path report = folder.resolve("r.csv");
    assertEquals(
        ExitCode.DONE, Cli.run("audit", log.toString(), "--report", report.toString()).code());
    List<String> lines = Files.readAllLines(report);
    long rows = lines.stream().filter(line -> line.startsWith("row,")).count();
    String column = lines.stream().filter(line -> line.startsWith("column,")).findFirst().get();
    assertTrue(column.contains("," + rows + ","), column);
    String total = lines.get(lines.size() - 2);
    assertTrue(total.startsWith("total,"), total);
    assertTrue(total.contains("1 file,") && total.contains("," + rows + ","), total);
    assertTrue(lines.get(lines.size() - 1).startsWith("safety,"));
  }

  @Test
  void aLogWithoutFiguresOfItsOwnHasNothingToCompare() throws IOException {
    Path log = TestLogs.plain(folder.resolve("a.xlsx"), 1.085, 9);
    Cli run = Cli.run("audit", log.toString());
    assertEquals(ExitCode.DONE, run.code());
    assertTrue(run.out().contains("nothing to compare"), run.out());
    Path other = TestLogs.noLog(folder.resolve("prices.xlsx"));
    assertEquals(ExitCode.NOTHING_RECOGNISED, Cli.run("audit", other.toString()).code());
  }
}
