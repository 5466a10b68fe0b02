package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import washbook.runner.RawOds;

/** A copy with portable formulas replaces an earlier copy, and nobody's own file of its name. */
@Timeout(120)
final class PortableCopiesTest {
  private static final String CALL = "WASHBOOK.ABV(A%1$d,B%1$d)";

  @TempDir private Path folder;

  @Test
  void aFileOfThePersonsThatHasTheCopysNameIsNotReplaced() throws IOException {
    Path log = workbook("Plum 3.xlsx", 0, CALL.formatted(1));
    Path copy = workbook("Plum 3.portable.xlsx", 0, "ROUND(A1-B1,3)");
    byte[] precious = Files.readAllBytes(copy);
    Cli done = Cli.run("portable", log.toString());
    assertEquals(ExitCode.FILE, done.code(), done.out());
    assertTrue(done.err().contains("is no result of this program"), done.err());
    assertArrayEquals(precious, Files.readAllBytes(copy));
    assertEquals(ExitCode.DONE, Cli.run("portable", "--overwrite", log.toString()).code());
    assertFalse(Arrays.equals(precious, Files.readAllBytes(copy)));
  }

  @Test
  void anEarlierCopyIsReplacedAlsoWhenTheLogHasGrown() throws IOException {
    Path log = workbook("Plum 3.xlsx", 0, CALL.formatted(1));
    assertEquals(ExitCode.DONE, Cli.run("portable", log.toString()).code());
    byte[] earlier = Files.readAllBytes(folder.resolve("Plum 3.portable.xlsx"));
    workbook("Plum 3.xlsx", 4, CALL.formatted(5));
    Cli done = Cli.run("portable", log.toString());
    assertEquals(ExitCode.DONE, done.code(), done.err());
    assertFalse(Arrays.equals(earlier, Files.readAllBytes(folder.resolve("Plum 3.portable.xlsx"))));
  }

  @Test
  void theSameWithOpenDocumentSheets() throws IOException {
    Path log = sheet("Plum.ods", "WASHBOOK.ABV([.B1];[.C1])");
    Path copy = sheet("Plum.portable.ods", "SUM([.B1];[.C1])");
    byte[] precious = Files.readAllBytes(copy);
    assertEquals(ExitCode.FILE, Cli.run("portable", log.toString()).code());
    assertArrayEquals(precious, Files.readAllBytes(copy));
    Files.delete(copy);
    assertEquals(ExitCode.DONE, Cli.run("portable", log.toString()).code());
    sheet("Plum.ods", "WASHBOOK.ABV([.B2];[.C2])");
    assertEquals(ExitCode.DONE, Cli.run("portable", log.toString()).code());
    sheet("Plum.ods", "WASHBOOK.TRUEEXTRACT([.B2];[.C2])");
    assertEquals(ExitCode.FILE, Cli.run("portable", log.toString()).code());
  }

  private Path workbook(String name, int at, String formula) throws IOException {
    Path file = folder.resolve(name);
    try (XSSFWorkbook book = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      Row row = book.createSheet("Log").createRow(at);
      row.createCell(0).setCellValue(1.085);
      row.createCell(1).setCellValue(1.005);
      row.createCell(2).setCellFormula(formula);
      book.write(out);
    }
    return file;
  }

  private Path sheet(String name, String formula) throws IOException {
    return RawOds.log("")
        .behindTables(
            "<table:table table:name='Other'><table:table-row><table:table-cell"
                + " table:formula='of:="
                + formula
                + "' office:value-type='float' office:value='1'/>"
                + "</table:table-row></table:table>")
        .write(folder.resolve(name));
  }
}
