package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.log.language.Language;
import washbook.log.understand.ChartsSheet;
import washbook.runner.TestLogs;

final class ChartsInMixedFoldersTest {
  private static final String TABLE =
      "Day,SG,Temp °C\n0,1.085,20\n3,1.050,21\n6,1.020,20\n9,1.004,20\n";

  @TempDir private Path folder;

  @Test
  void aTextTableAmongWorkbooksIsFilledWithAWordThatItCannotHoldCharts() throws IOException {
    Path logs = Files.createDirectory(folder.resolve("logs"));
    TestLogs.plain(logs.resolve("a.xlsx"), 1.085, 9);
    Files.writeString(logs.resolve("b.csv"), TABLE);
    Path out = folder.resolve("out");
    Path report = folder.resolve("r.json");
    Cli run =
        Cli.run(
            "fill", logs.toString(), "--out", out.toString(), "--chart", "--report", "" + report);
    assertEquals(ExitCode.REFUSED, run.code(), run.err() + run.out());
    assertTrue(run.out().contains("filled, 4 of 4 rows"), run.out());
    String word = "A text table (.csv, .tsv) cannot hold charts; it was filled without them.";
    assertTrue(run.out().contains(word), run.out());
    assertTrue(Files.readString(report).contains(word));
    assertTrue(Files.readString(out.resolve("b.csv")).contains("Apparent attenuation"));
    assertTrue(hasCharts(out.resolve("a.xlsx")));
  }

  @Test
  void aWorkbookWithAForeignSheetOfThatNameOrALockIsFilledWithAWord() throws IOException {
    Path log = TestLogs.plain(folder.resolve("a.xlsx"), 1.085, 9);
    try (InputStream in = Files.newInputStream(log);
        XSSFWorkbook workbook = new XSSFWorkbook(in);
        var out = Files.newOutputStream(folder.resolve("named.xlsx"))) {
      workbook.createSheet("washbook CHARTS").createRow(0).createCell(0).setCellValue("mine");
      workbook.write(out);
    }
    Cli named = Cli.run("fill", folder.resolve("named.xlsx").toString(), "--in-place", "--chart");
    assertEquals(ExitCode.REFUSED, named.code(), named.err() + named.out());
    assertTrue(named.out().contains("filled, 9 of 9 rows"), named.out());
    assertTrue(named.out().contains("that is not ours"), named.out());
    try (InputStream in = Files.newInputStream(log);
        XSSFWorkbook workbook = new XSSFWorkbook(in);
        var out = Files.newOutputStream(folder.resolve("locked.xlsx"))) {
      workbook.lockStructure();
      workbook.write(out);
    }
    Cli locked = Cli.run("fill", folder.resolve("locked.xlsx").toString(), "--in-place", "--chart");
    assertEquals(ExitCode.REFUSED, locked.code(), locked.err() + locked.out());
    assertTrue(locked.out().contains("filled, 9 of 9 rows"), locked.out());
    assertTrue(locked.out().contains("structure is protected"), locked.out());
  }

  private static boolean hasCharts(Path file) throws IOException {
    try (Workbook workbook = WorkbookFactory.create(file.toFile())) {
      return workbook.getSheet(ChartsSheet.name(Language.EN)) != null;
    }
  }
}
