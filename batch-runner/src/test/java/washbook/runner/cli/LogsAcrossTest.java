package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.sheet.Grid;
import washbook.runner.FileFormats;
import washbook.runner.OdsSamples;

/** Logs whose dates stand side by side, in every kind of file. */
class LogsAcrossTest {
  private static final Object[][] LOG = {
    {"Plum 3"},
    {"day", 0, 2, 6, 13},
    {"SG", 1.084, 1.052, 1.011, 0.998},
    {"temp C", 24, 26, 23, 19},
    {"racked on day 13"}
  };

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"log.csv", "log.xlsx", "log.xls", "log.ods"})
  void itsFiguresStandInRowsBelowItAndAFilledOneStaysAsItIs(String name) throws IOException {
    Path log = folder.resolve(name);
    write(log);
    fill(log, "out");
    Path filled = folder.resolve("out").resolve(name);
    Grid grid = FileFormats.of(filled).reader().read(filled).get(0);
    assertEquals("Computed (Washbook)", grid.text(6, 0));
    assertEquals("Alcohol to date (% vol)", grid.text(8, 0));
    assertEquals(11.71, grid.number(8, 4), 0.01);
    assertEquals(LOG[4][0], grid.text(4, 0));
    fill(filled, "again");
    assertArrayEquals(
        Files.readAllBytes(filled), Files.readAllBytes(folder.resolve("again").resolve(name)));
  }

  private void fill(Path log, String out) {
    Cli run = Cli.run("fill", log.toString(), "--out", folder.resolve(out).toString());
    assertEquals(0, run.code(), run.err());
  }

  private static void write(Path file) throws IOException {
    String name = file.toString();
    if (name.endsWith(".csv")) {
      Files.write(file, lines());
    } else if (name.endsWith(".ods")) {
      OdsSamples.pack(file, OdsSamples.content("", table()));
    } else {
      try (Workbook book = name.endsWith(".xls") ? new HSSFWorkbook() : new XSSFWorkbook();
          OutputStream out = Files.newOutputStream(file)) {
        Sheet sheet = book.createSheet("Plum 3");
        for (int i = 0; i < LOG.length; i++) {
          Row row = sheet.createRow(i);
          for (int j = 0; j < LOG[i].length; j++) {
            if (LOG[i][j] instanceof Number number) {
              row.createCell(j).setCellValue(number.doubleValue());
            } else {
              row.createCell(j).setCellValue((String) LOG[i][j]);
            }
          }
        }
        book.write(out);
      }
    }
  }

  private static List<String> lines() {
    List<String> lines = new ArrayList<>();
    for (Object[] row : LOG) {
      List<String> cells = new ArrayList<>();
      for (Object cell : row) {
        cells.add(String.valueOf(cell));
      }
      lines.add(String.join(",", cells));
    }
    return lines;
  }

  private static String table() {
    StringBuilder rows = new StringBuilder("<table:table table:name=\"Plum 3\">");
    for (Object[] row : LOG) {
      rows.append("<table:table-row>");
      for (Object cell : row) {
        boolean number = cell instanceof Number;
        rows.append("<table:table-cell office:value-type=\"");
        rows.append(number ? "float\" office:value=\"" + cell + "\">" : "string\">");
        rows.append("<text:p>").append(cell).append("</text:p></table:table-cell>");
      }
      rows.append("</table:table-row>");
    }
    return rows.append("</table:table>").toString();
  }
}
