package washbook.runner.write;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static washbook.runner.XlsxSamples.FREE_COLUMN;
import static washbook.runner.XlsxSamples.HEADER_ROW;
import static washbook.runner.XlsxSamples.LAST_ROW;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.log.sheet.Grid;
import washbook.log.sheet.SheetPatch;
import washbook.runner.SameCells;
import washbook.runner.TestColumn;
import washbook.runner.XlsxSamples;
import washbook.runner.file.UnusableFileException;
import washbook.runner.read.XlsxReader;

class XlsxWriterTest {
  private static final String NOTE = "Washbook note";
  private static final String ABV = "ABV to date (Washbook)";

  @TempDir private Path folder;

  private final XlsxWriter writer = new XlsxWriter();

  private static Map<Integer, Object> numbers() {
    Map<Integer, Object> numbers = new HashMap<>();
    for (int row = HEADER_ROW + 1; row <= LAST_ROW; row++) {
      numbers.put(row, (row - 3) * 0.79 + 1e-9);
    }
    return numbers;
  }

  private static List<SheetPatch> patch(Map<Integer, Object> numbers, Map<Integer, Object> texts) {
    return TestColumn.on(
        "Plum 3",
        TestColumn.of(FREE_COLUMN + 1, HEADER_ROW, NOTE, LAST_ROW, -1, texts),
        TestColumn.of(FREE_COLUMN, HEADER_ROW, ABV, LAST_ROW, 4, numbers));
  }

  private Path fill(Path from, String name, List<SheetPatch> patches) throws Exception {
    Path to = folder.resolve(name);
    writer.write(from, patches, to);
    return to;
  }

  @Test
  void addsColumnsAndChangesNothingElse() throws Exception {
    Path log = XlsxSamples.log(folder.resolve("log.xlsx"));
    Map<Integer, Object> texts = Map.of(4, "=1+1", 5, "a & b < c > d \"e\"", 9, " \u0001_x0041_\n");
    Path filled = fill(log, "filled.xlsx", patch(numbers(), texts));

    assertEquals(46, SameCells.check(log, filled, Set.of()));
    try (XSSFWorkbook workbook = SameCells.open(filled)) {
      XSSFSheet sheet = workbook.getSheet("Plum 3");
      assertEquals(ABV, sheet.getRow(HEADER_ROW).getCell(FREE_COLUMN).getStringCellValue());
      XSSFCellStyle left = sheet.getRow(HEADER_ROW).getCell(FREE_COLUMN - 1).getCellStyle();
      XSSFCellStyle header = sheet.getRow(HEADER_ROW).getCell(FREE_COLUMN).getCellStyle();
      assertEquals(left.getFontIndex(), header.getFontIndex());
      assertEquals(left.getFillForegroundColorColor(), header.getFillForegroundColorColor());
      assertEquals(left.getBorderBottom(), header.getBorderBottom());
      assertTrue(header.getWrapText());
      for (int row = HEADER_ROW + 1; row <= LAST_ROW; row++) {
        XSSFCell cell = sheet.getRow(row).getCell(FREE_COLUMN);
        assertEquals(numbers().get(row), cell.getNumericCellValue());
        assertEquals("0.0000", cell.getCellStyle().getDataFormatString());
      }
      XSSFCell sneaky = sheet.getRow(4).getCell(FREE_COLUMN + 1);
      assertEquals(CellType.STRING, sneaky.getCellType());
      assertEquals("=1+1", sneaky.getStringCellValue());
      assertEquals(
          "a & b < c > d \"e\"", sheet.getRow(5).getCell(FREE_COLUMN + 1).getStringCellValue());
      int width = sheet.getColumnWidth(FREE_COLUMN);
      assertTrue(width > 10 * 256 && width < 13 * 256, width + "");
    }
    Grid grid = new XlsxReader().read(filled).get(0);
    assertEquals(" \u0001_x0041_\n", grid.text(9, FREE_COLUMN + 1));
    assertEquals(FREE_COLUMN + 2, grid.columnCount());
  }

  @Test
  void fillingAFilledFileGivesTheSameBytes() throws Exception {
    Path log = XlsxSamples.log(folder.resolve("log.xlsx"));
    Map<Integer, Object> texts = Map.of(5, "refused: 99 is above 60");
    Path once = fill(log, "once.xlsx", patch(numbers(), texts));
    Path twice = fill(once, "twice.xlsx", patch(numbers(), texts));
    assertArrayEquals(Files.readAllBytes(once), Files.readAllBytes(twice));
  }

  @Test
  void aSecondFillReplacesAndClearsOurOwnCells() throws Exception {
    Path log = XlsxSamples.log(folder.resolve("log.xlsx"));
    Path once = fill(log, "once.xlsx", patch(numbers(), Map.of(5, "refused")));
    Map<Integer, Object> others = numbers();
    others.put(6, 7.5);
    others.remove(8);
    Path twice = fill(once, "twice.xlsx", patch(others, Map.of(8, "now this")));
    assertEquals(56, SameCells.check(once, twice, Set.of("Plum 3!F7", "Plum 3!F9", "Plum 3!G6")));
    Grid grid = new XlsxReader().read(twice).get(0);
    assertEquals(7.5, grid.number(6, FREE_COLUMN));
    assertEquals(Grid.Kind.BLANK, grid.kind(8, FREE_COLUMN));
    assertEquals(Grid.Kind.BLANK, grid.kind(5, FREE_COLUMN + 1));
    assertEquals("now this", grid.text(8, FREE_COLUMN + 1));
    Path back = fill(twice, "back.xlsx", patch(numbers(), Map.of(5, "refused")));
    assertEquals(59, SameCells.check(once, back, Set.of()));
  }

  @Test
  void writesFormulasWithTheirResults() throws Exception {
    Path log = XlsxSamples.log(folder.resolve("log.xlsx"));
    Map<Integer, String> formulas = Map.of(3, "ROUND(B4*2,3)&\"<\"", 4, "B5*1000");
    List<SheetPatch> patches =
        TestColumn.on(
            "Plum 3",
            TestColumn.of(
                FREE_COLUMN,
                HEADER_ROW,
                ABV,
                LAST_ROW,
                2,
                Map.of(3, "2.17<", 4, 1079.0),
                formulas));
    Path filled = fill(log, "filled.xlsx", patches);
    try (XSSFWorkbook workbook = SameCells.open(filled)) {
      XSSFSheet sheet = workbook.getSheet("Plum 3");
      XSSFCell text = sheet.getRow(3).getCell(FREE_COLUMN);
      assertEquals(formulas.get(3), text.getCellFormula());
      assertEquals("2.17<", text.getStringCellValue());
      XSSFCell number = sheet.getRow(4).getCell(FREE_COLUMN);
      assertEquals("B5*1000", number.getCellFormula());
      assertEquals(1079.0, number.getNumericCellValue());
    }
    assertTrue(new XlsxReader().read(filled).get(0).isFormula(4, FREE_COLUMN));
    assertArrayEquals(
        Files.readAllBytes(filled), Files.readAllBytes(fill(filled, "again.xlsx", patches)));
  }

  @Test
  void refusesToReplaceWhatIsNotOurs() throws Exception {
    Path log = XlsxSamples.log(folder.resolve("log.xlsx"));
    UnusableFileException overHeader =
        assertThrows(
            UnusableFileException.class,
            () ->
                fill(
                    log,
                    "no.xlsx",
                    TestColumn.on(
                        "Plum 3", TestColumn.of(1, HEADER_ROW, ABV, LAST_ROW, 2, numbers()))));
    assertTrue(overHeader.getMessage().contains("B3"), overHeader.getMessage());
    UnusableFileException overData =
        assertThrows(
            UnusableFileException.class,
            () ->
                fill(
                    log,
                    "no.xlsx",
                    TestColumn.on("Plum 3", TestColumn.of(1, 1, ABV, LAST_ROW, 2, Map.of()))));
    assertTrue(overData.getMessage().contains("B3"), overData.getMessage());
  }

  @Test
  void fillsSheetsWithoutRowsAndRowsThatWereMissing() throws Exception {
    Path log = XlsxSamples.log(folder.resolve("log.xlsx"));
    Path filled =
        fill(
            log,
            "filled.xlsx",
            List.of(
                new SheetPatch(
                    "Empty", List.of(TestColumn.of(2, 3, ABV, 6, 0, Map.of(4, 1.5, 6, 2.5)))),
                new SheetPatch(
                    "Apple 7", List.of(TestColumn.of(5, 1, ABV, 8, 1, Map.of(4, 1.5, 8, 2.5))))));
    assertEquals(46, SameCells.check(log, filled, Set.of()));
    List<Grid> grids = new XlsxReader().read(filled);
    assertEquals(2.5, grids.get(2).number(6, 2));
    assertEquals(ABV, grids.get(2).text(3, 2));
    assertEquals(1.5, grids.get(1).number(4, 5));
    assertEquals(2.5, grids.get(1).number(8, 5));
    assertEquals(ABV, grids.get(1).text(1, 5));
  }

  @Test
  void saysWhichSheetIsMissing() throws Exception {
    Path log = XlsxSamples.log(folder.resolve("log.xlsx"));
    UnusableFileException refused =
        assertThrows(
            UnusableFileException.class,
            () ->
                fill(
                    log,
                    "no.xlsx",
                    TestColumn.on("Sugar 4", TestColumn.of(1, 1, ABV, 2, 2, Map.of()))));
    assertTrue(refused.getMessage().contains("Sugar 4"));
  }
}
