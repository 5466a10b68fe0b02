package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import washbook.runner.RawXlsx;

final class HostileMergesTest {
  @TempDir private Path folder;

  /** 18 kB that took minutes and gigabytes. */
  @Test
  @Timeout(60)
  void aHundredThousandMergedAreasThatOverlapAreReadInAMoment() throws IOException {
    StringBuilder sheet = new StringBuilder("<sheetData><row r=\"1\">");
    sheet.append(text("A1", "Day")).append(text("B1", "SG")).append(text("C1", "Temp C"));
    sheet.append("</row>");
    for (int row = 2; row < 12; row++) {
      sheet.append(
          "<row r=\"%1$d\"><c r=\"A%1$d\"><v>%1$d</v></c><c r=\"B%1$d\"><v>%2$s</v></c><c r=\"C%1$d\"><v>20</v></c></row>"
              .formatted(row, (1092 - 8 * row) / 1000.0));
    }
    sheet.append("</sheetData><mergeCells>");
    sheet.append("<mergeCell ref=\"H20:M1000000\"/>".repeat(100_000)).append("</mergeCells>");
    Path file = RawXlsx.withSheet(sheet.toString()).write(folder.resolve("log.xlsx"));
    Cli done = Cli.run("fill", file.toString());
    assertEquals(0, done.code(), done.out() + done.err());
  }

  private static String text(String cell, String text) {
    return "<c r=\"%s\" t=\"inlineStr\"><is><t>%s</t></is></c>".formatted(cell, text);
  }
}
