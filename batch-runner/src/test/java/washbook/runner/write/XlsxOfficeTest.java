package washbook.runner.write;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.log.sheet.SheetPatch;
import washbook.runner.Office;
import washbook.runner.SameCells;
import washbook.runner.TestColumn;
import washbook.runner.XlsxSamples;

/** The real office opens what was patched, and every old cell reads as it did. */
class XlsxOfficeTest {
  private static final List<SheetPatch> PATCHES =
      TestColumn.on(
          "Plum 3",
          TestColumn.of(
              XlsxSamples.FREE_COLUMN,
              XlsxSamples.HEADER_ROW,
              "ABV to date (Washbook)",
              XlsxSamples.LAST_ROW,
              2,
              Map.of(3, 0.0, 4, 0.789, 12, 7.126)),
          TestColumn.of(
              XlsxSamples.FREE_COLUMN + 1,
              XlsxSamples.HEADER_ROW,
              "Washbook note",
              XlsxSamples.LAST_ROW,
              -1,
              Map.of(5, "=1+1")));

  @TempDir private Path folder;

  private Office office;
  private Path log;

  @BeforeEach
  void makeLog() throws Exception {
    office = new Office(folder);
    log = XlsxSamples.log(folder.resolve("log.xlsx"));
  }

  private void fillAndCompare(Path source, int cells) throws Exception {
    Path filled = folder.resolve("filled.xlsx");
    new XlsxWriter().write(source, PATCHES, filled);
    assertEquals(cells, SameCells.check(source, filled, Set.of()));
    Map<String, List<String>> before = office.shown(source);
    Map<String, List<String>> after = office.shown(filled);
    assertEquals(before.keySet(), after.keySet());
    for (Map.Entry<String, List<String>> sheet : before.entrySet()) {
      List<String> now = after.get(sheet.getKey());
      assertEquals(sheet.getValue().size(), now.size());
      for (int i = 0; i < now.size(); i++) {
        assertTrue(now.get(i).startsWith(sheet.getValue().get(i)), now.get(i));
      }
    }
    List<String> rows = after.get("Plum 3");
    assertTrue(rows.get(2).contains("ABV to date (Washbook)"), rows.get(2));
    assertTrue(rows.get(4).contains(",0.79"), rows.get(4));
    assertTrue(rows.get(5).endsWith("=1+1"), rows.get(5));
    assertTrue(rows.get(12).contains(",7.13"), rows.get(12));
    Path again = folder.resolve("again.xlsx");
    new XlsxWriter().write(filled, PATCHES, again);
    assertArrayEquals(Files.readAllBytes(filled), Files.readAllBytes(again));
  }

  @Test
  void aFileWrittenByALibrary() throws Exception {
    fillAndCompare(log, 46);
  }

  @Test
  void aFileWrittenByTheOfficeItself() throws Exception {
    Path saved = office.convert(log, "xlsx:Calc MS Excel 2007 XML").resolve("log.xlsx");
    // The office also writes the blank cells of the merged title.
    fillAndCompare(saved, 50);
  }

  @Test
  void aFilledFileThatTheOfficeHasSavedIsFilledAgain() throws Exception {
    Path filled = folder.resolve("filled.xlsx");
    new XlsxWriter().write(log, PATCHES, filled);
    Path saved = office.convert(filled, "xlsx:Calc MS Excel 2007 XML").resolve("filled.xlsx");
    Path again = folder.resolve("again.xlsx");
    new XlsxWriter().write(saved, PATCHES, again);
    assertArrayEquals(Files.readAllBytes(saved), Files.readAllBytes(again));
  }
}
