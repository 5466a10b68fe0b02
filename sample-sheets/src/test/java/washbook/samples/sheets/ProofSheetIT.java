package washbook.samples.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.office.testing.Office;

/** The proof sheet says yes in every line, in the office and in a spreadsheet of another make. */
class ProofSheetIT {
  private static final Path FOLDER = Path.of("starters");
  private static final int MOST_ROWS = 2000;
  private static final int SECONDS = 120;

  @TempDir Path scratch;

  @Test
  void everyLineAgreesInTheOffice() throws IOException {
    try (Office office = Office.with(Path.of(System.getProperty("washbook.oxt")))) {
      for (String file : List.of("pack/proof.xlsx", "pack/proof.ods", "portable/proof.ods")) {
        try (washbook.office.testing.Book book = office.open(FOLDER.resolve(file))) {
          book.recalculate();
          int lines = 0;
          for (Object[] row : book.data("A1:H" + MOST_ROWS)) {
            if (row[StarterProof.CALCULATED] instanceof Double
                && row[StarterProof.PUBLISHED] instanceof Double) {
              assertEquals("yes", row[StarterProof.WITHIN], file + " " + List.of(row));
              lines++;
            }
          }
          assertTrue(lines > 300, file + " " + lines);
          assertEquals(rows(FOLDER.resolve(file.replace(".ods", ".xlsx"))), lines, file);
        }
      }
    }
  }

  /** Lines of the table as the file has them, whether calculated or not. */
  private static int rows(Path xlsx) throws IOException {
    int rows = 0;
    try (InputStream in = Files.newInputStream(xlsx);
        XSSFWorkbook workbook = new XSSFWorkbook(in)) {
      for (Row row : workbook.getSheetAt(0)) {
        boolean isLine =
            row.getCell(StarterProof.WITHIN) != null
                && row.getCell(StarterProof.WITHIN).getCellType() == CellType.FORMULA;
        rows += isLine ? 1 : 0;
      }
    }
    return rows;
  }

  /** Gnumeric's converter; .ci/run installs it. */
  @ParameterizedTest
  @ValueSource(strings = {"proof.xlsx", "proof.ods"})
  void everyLineOfThePlainFormAgreesInAnotherSpreadsheet(String name)
      throws IOException, InterruptedException {
    Path out = scratch.resolve("proof.csv");
    boolean found =
        Stream.of(System.getenv("PATH").split(":"))
            .anyMatch(folder -> Files.isExecutable(Path.of(folder, "ssconvert")));
    Assumptions.assumeTrue(
        found || System.getenv("CI") != null, "ssconvert is needed: apt-get install gnumeric");
    Process process =
        new ProcessBuilder(
                "ssconvert",
                "--recalc",
                FOLDER.resolve("portable").resolve(name).toString(),
                out.toString())
            .redirectErrorStream(true)
            .redirectOutput(scratch.resolve("ssconvert.log").toFile())
            .start();
    try {
      assertTrue(process.waitFor(SECONDS, TimeUnit.SECONDS), "ssconvert hangs");
    } finally {
      process.destroyForcibly();
    }
    List<String> wrong = new ArrayList<>();
    int lines = 0;
    for (String line : Files.readAllLines(out)) {
      if (line.contains(",yes,")) {
        lines++;
      } else if (line.contains(",no,") || line.contains("#N")) {
        wrong.add(line);
      }
    }
    assertEquals(List.of(), wrong);
    assertEquals(rows(FOLDER.resolve("portable/proof.xlsx")), lines);
  }
}
