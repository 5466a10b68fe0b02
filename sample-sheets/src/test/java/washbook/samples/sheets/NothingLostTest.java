package washbook.samples.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.PaneInformation;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.samples.Office;

/** In the filled samples everything is as it was but for the new columns. */
class NothingLostTest {
  /** All sheets, with what the cells show. */
  private static final String EVERY_SHEET =
      "csv:Text - txt - csv (StarCalc):9,34,76,1,,0,false,true,false,false,false,-1";

  @Test
  void theOfficeShowsTheOldCellsAsBefore(@TempDir Path folder)
      throws IOException, InterruptedException {
    Map<String, List<String[]>> before = shown(GoldenTest.SAMPLES, folder.resolve("before"));
    Map<String, List<String[]>> after = shown(GoldenTest.GOLDEN, folder.resolve("after"));
    assertEquals(before.keySet(), after.keySet());
    assertTrue(before.size() >= 8, before.keySet().toString());
    int cells = 0;
    for (Map.Entry<String, List<String[]>> sheet : before.entrySet()) {
      List<String[]> now = after.get(sheet.getKey());
      for (int row = 0; row < sheet.getValue().size(); row++) {
        String[] old = sheet.getValue().get(row);
        for (int column = 0; column < old.length; column++) {
          if (!old[column].isEmpty()) {
            assertEquals(old[column], now.get(row)[column], sheet.getKey() + " row " + (row + 1));
            cells++;
          }
        }
      }
    }
    assertTrue(cells > 280, cells + " cells");
  }

  private static Map<String, List<String[]>> shown(Path from, Path folder)
      throws IOException, InterruptedException {
    try (Stream<Path> files = Files.list(from)) {
      Office.convert(
          files.filter(f -> !f.toString().endsWith(".csv")).sorted().toList(), EVERY_SHEET, folder);
    }
    Map<String, List<String[]>> sheets = new TreeMap<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        List<String[]> rows = new ArrayList<>();
        Files.readAllLines(file).forEach(line -> rows.add(line.split("\t", -1)));
        sheets.put(file.getFileName().toString(), rows);
      }
    }
    return sheets;
  }

  @Test
  void everyLineOfTextStillBeginsAsBefore() throws IOException {
    String[] before = Files.readString(GoldenTest.SAMPLES.resolve("sugar-4.csv")).split("\r\n");
    String[] after = Files.readString(GoldenTest.GOLDEN.resolve("sugar-4.csv")).split("\r\n");
    assertEquals(11, before.length);
    assertEquals(before.length, after.length);
    for (int i = 0; i < before.length; i++) {
      assertTrue(after[i].startsWith(before[i] + ";"), after[i]);
    }
  }

  @Test
  void formattingChartsCommentsAndChecksAreStillThere() throws IOException {
    int comments = 0;
    int charts = 0;
    for (String name : List.of("plum-3", "molasses-2-messy", "cellar-book-brix")) {
      try (XSSFWorkbook before = open(GoldenTest.SAMPLES.resolve(name + ".xlsx"));
          XSSFWorkbook after = open(GoldenTest.GOLDEN.resolve(name + ".xlsx"))) {
        assertEquals(before.getNumberOfSheets(), after.getNumberOfSheets());
        assertEquals(names(before), names(after));
        for (int i = 0; i < before.getNumberOfSheets(); i++) {
          same(before.getSheetAt(i), after.getSheetAt(i));
          comments += before.getSheetAt(i).getCellComments().size();
          charts +=
              before.getSheetAt(i).getDrawingPatriarch() == null
                  ? 0
                  : before.getSheetAt(i).getDrawingPatriarch().getCharts().size();
        }
      }
    }
    assertEquals(2, comments);
    assertEquals(2, charts);
  }

  /** What is filtered and printed may reach further right. */
  private static List<String> names(XSSFWorkbook workbook) {
    return workbook.getAllNames().stream()
        .map(
            name ->
                name.getNameName().startsWith("_xlnm.")
                    ? name.getRefersToFormula().replaceAll(":\\$[A-Z]+", ":")
                    : name.getRefersToFormula())
        .toList();
  }

  private static void same(XSSFSheet before, XSSFSheet after) {
    String where = before.getSheetName();
    assertEquals(before.getSheetName(), after.getSheetName());
    assertEquals(before.getMergedRegions(), after.getMergedRegions(), where);
    assertEquals(before.getDataValidations().size(), after.getDataValidations().size(), where);
    assertEquals(
        before.getSheetConditionalFormatting().getNumConditionalFormattings(),
        after.getSheetConditionalFormatting().getNumConditionalFormattings(),
        where);
    assertEquals(frozen(before), frozen(after), where);
    assertEquals(before.getCellComments().keySet(), after.getCellComments().keySet(), where);
    assertEquals(
        before.getDrawingPatriarch() == null ? 0 : before.getDrawingPatriarch().getCharts().size(),
        after.getDrawingPatriarch() == null ? 0 : after.getDrawingPatriarch().getCharts().size(),
        where);
    for (Row row : before) {
      Row now = after.getRow(row.getRowNum());
      if (row.getHeight() != now.getHeight()) {
        assertTrue(now.getHeight() > row.getHeight() && hasNewText(row, now), where);
      }
      for (Cell cell : row) {
        Cell same = now.getCell(cell.getColumnIndex());
        assertEquals(cell.toString(), same.toString(), where + " " + cell.getAddress());
        assertEquals(cell.getCellStyle().getIndex(), same.getCellStyle().getIndex(), where);
        assertEquals(
            before.getColumnWidth(cell.getColumnIndex()),
            after.getColumnWidth(cell.getColumnIndex()),
            where);
      }
    }
  }

  /** A new header or note that wraps needs a higher row. */
  private static boolean hasNewText(Row before, Row after) {
    for (Cell cell : after) {
      boolean isNew = cell.getColumnIndex() >= before.getLastCellNum();
      if (isNew && cell.getCellType() == CellType.STRING && cell.getCellStyle().getWrapText()) {
        return true;
      }
    }
    return false;
  }

  private static String frozen(XSSFSheet sheet) {
    PaneInformation pane = sheet.getPaneInformation();
    return pane == null
        ? ""
        : pane.getHorizontalSplitTopRow() + " " + pane.getVerticalSplitLeftColumn();
  }

  private static XSSFWorkbook open(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return new XSSFWorkbook(in);
    }
  }
}
