package washbook.runner.write;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.apache.poi.hssf.record.crypto.Biff8EncryptionKey;
import org.apache.poi.hssf.usermodel.HSSFCell;
import org.apache.poi.hssf.usermodel.HSSFCellStyle;
import org.apache.poi.hssf.usermodel.HSSFRow;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.util.CellRangeAddress;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;
import washbook.log.sheet.SheetPatch;
import washbook.runner.Office;
import washbook.runner.TestColumn;
import washbook.runner.corpus.XlsCells;
import washbook.runner.file.UnusableFileException;
import washbook.runner.read.XlsReader;

class XlsTest {
  @TempDir Path directory;

  private Path save(HSSFWorkbook workbook, String name) throws IOException {
    Path file = directory.resolve(name);
    try (OutputStream out = Files.newOutputStream(file)) {
      workbook.write(out);
    }
    return file;
  }

  private Path log() throws IOException {
    try (HSSFWorkbook workbook = new HSSFWorkbook()) {
      HSSFSheet sheet = workbook.createSheet("Plum 3");
      sheet.createRow(0).createCell(0).setCellValue("Plum 3, first pressing");
      sheet.addMergedRegion(new CellRangeAddress(0, 0, 0, 2));
      HSSFCellStyle date = workbook.createCellStyle();
      date.setDataFormat(workbook.createDataFormat().getFormat("yyyy-mm-dd"));
      HSSFCellStyle bold = workbook.createCellStyle();
      bold.setFillForegroundColor((short) 13);
      HSSFRow header = sheet.createRow(2);
      for (String word : List.of("Date", "Gravity", "Points")) {
        HSSFCell cell = header.createCell(header.getPhysicalNumberOfCells());
        cell.setCellValue(word);
        cell.setCellStyle(bold);
      }
      for (int row = 3; row < 6; row++) {
        HSSFCell day = sheet.createRow(row).createCell(0);
        day.setCellValue(LocalDate.of(2024, 9, row));
        day.setCellStyle(date);
        sheet.getRow(row).createCell(1).setCellValue(1.085 - row / 100.0);
        HSSFCell points = sheet.getRow(row).createCell(2);
        points.setCellFormula("(B" + (row + 1) + "-1)*1000");
        // Wrong on purpose: a stored result that nobody may compute again.
        points.setCellValue(42.5);
      }
      workbook.createSheet("Notes").createRow(0).createCell(0).setCellValue("second sheet");
      return save(workbook, "log.xls");
    }
  }

  private static ColumnPatch[] columns() {
    return new ColumnPatch[] {
      TestColumn.of(3, 2, "ABV", 5, 2, Map.of(3, 1.2345, 4, 3.0)),
      TestColumn.of(4, 2, "Washbook note", 5, -1, Map.of(5, "=1+1 is no formula"))
    };
  }

  @Test
  void cellsAreRead() throws IOException {
    List<Grid> grids = new XlsReader().read(log());
    assertEquals(List.of("Plum 3", "Notes"), grids.stream().map(Grid::name).toList());
    Grid grid = grids.get(0);
    assertEquals(6, grid.rowCount());
    assertEquals(3, grid.columnCount());
    assertEquals(List.of(new Grid.Area(0, 0, 0, 2)), grid.merged());
    assertEquals(Kind.DATE, grid.kind(3, 0));
    assertEquals(
        LocalDate.of(1899, 12, 30).until(LocalDate.of(2024, 9, 3), ChronoUnit.DAYS),
        grid.number(3, 0));
    assertEquals(1.085 - 0.03, grid.number(3, 1));
    assertEquals(42.5, grid.number(3, 2));
    assertTrue(grid.isFormula(3, 2));
    assertEquals("Gravity", grid.text(2, 1));
    assertEquals(Kind.BLANK, grid.kind(1, 0));
  }

  @Test
  void aFillAddsItsCellsAndASecondOneNothing() throws Exception {
    Path source = log();
    Path target = directory.resolve("filled.xls");
    new XlsWriter().write(source, TestColumn.on("Plum 3", columns()), target);
    Map<String, String> before = XlsCells.of(source);
    Map<String, String> after = XlsCells.of(target);
    assertEquals(before.size() + 5, after.size());
    assertTrue(after.entrySet().containsAll(before.entrySet()));
    try (HSSFWorkbook workbook = new HSSFWorkbook(Files.newInputStream(target))) {
      HSSFSheet sheet = workbook.getSheet("Plum 3");
      assertEquals("0.00", sheet.getRow(3).getCell(3).getCellStyle().getDataFormatString());
      HSSFCellStyle header = sheet.getRow(2).getCell(4).getCellStyle();
      assertEquals(13, header.getFillForegroundColor());
      assertTrue(header.getWrapText());
      assertEquals(sheet.getRow(2).getCell(3).getCellStyle(), header);
    }
    Path again = directory.resolve("again.xls");
    new XlsWriter().write(target, TestColumn.on("Plum 3", columns()), again);
    assertArrayEquals(Files.readAllBytes(target), Files.readAllBytes(again));
    Path untouched = directory.resolve("untouched.xls");
    new XlsWriter().write(source, List.<SheetPatch>of(), untouched);
    assertArrayEquals(Files.readAllBytes(source), Files.readAllBytes(untouched));
    List<String> shown = new Office(directory).shown(target).get("Plum 3");
    assertEquals("Date,Gravity,Points,ABV,Washbook note", shown.get(2));
    assertTrue(shown.get(3).endsWith(",1.23,"), shown.get(3));
    assertTrue(shown.get(5).endsWith(",,=1+1 is no formula"), shown.get(5));
    assertEquals(List.of("second sheet"), new Office(directory).shown(target).get("Notes"));
  }

  @Test
  void anOldResultThatNoLongerHoldsIsCleared() throws IOException {
    Path first = directory.resolve("first.xls");
    new XlsWriter().write(log(), TestColumn.on("Plum 3", columns()), first);
    Path second = directory.resolve("second.xls");
    ColumnPatch less = TestColumn.of(3, 2, "ABV", 5, 2, Map.of(4, 7.0));
    new XlsWriter().write(first, TestColumn.on("Plum 3", less), second);
    Grid grid = new XlsReader().read(second).get(0);
    assertEquals(Kind.BLANK, grid.kind(3, 3));
    assertEquals(7, grid.number(4, 3));
  }

  @Test
  void aWorkbookOfTheOfficeIsReadAsTheOfficeShowsIt() throws Exception {
    Path csv =
        Files.writeString(
            directory.resolve("Apple 7.csv"), "Day,SG,Temp\n1,1.052,19.5\n2,1.041,20\n4,1.02,\n");
    Path xls = new Office(directory).convert(csv, "xls").resolve("Apple 7.xls");
    Grid grid = new XlsReader().read(xls).get(0);
    assertEquals("Apple 7", grid.name());
    assertEquals(1.041, grid.number(2, 1));
    assertEquals(Kind.BLANK, grid.kind(3, 2));
    Path target = directory.resolve("filled.xls");
    ColumnPatch column = TestColumn.of(3, 0, "ABV", 3, 1, Map.of(1, 0.0, 2, 1.4, 3, 4.26));
    new XlsWriter().write(xls, TestColumn.on("Apple 7", column), target);
    assertEquals(
        List.of("Day,SG,Temp,ABV", "1,1.052,19.5,0.0", "2,1.041,20,1.4", "4,1.02,,4.3"),
        new Office(directory).shown(target).get("Apple 7"));
  }

  @Test
  void encryptedSignedOldAndForeignFilesAreRefused() throws IOException {
    Biff8EncryptionKey.setCurrentUserPassword("pass");
    Path locked;
    try (HSSFWorkbook workbook = new HSSFWorkbook()) {
      workbook.createSheet("Plum 3");
      locked = save(workbook, "locked.xls");
    } finally {
      Biff8EncryptionKey.setCurrentUserPassword(null);
    }
    refused(locked, "encrypted");
    Path signed = log();
    try (POIFSFileSystem files = new POIFSFileSystem(signed.toFile(), false)) {
      files.getRoot().createDirectory("_xmlsignatures");
      files.writeFilesystem();
    }
    refused(signed, "signed");
    refused(Files.write(directory.resolve("old.xls"), new byte[] {9, 4, 6, 0, 0, 0, 0, 0}), "97");
    refused(Files.writeString(directory.resolve("text.xls"), "<html>a table</html>"), "no Excel");
    refused(
        Files.write(directory.resolve("zip.xls"), new byte[] {'P', 'K', 3, 4, 0, 0, 0, 0}), "zip");
    refused(Files.write(directory.resolve("empty.xls"), new byte[0]), "no Excel");
  }

  private static void refused(Path file, String word) {
    UnusableFileException refusal =
        assertThrows(UnusableFileException.class, () -> new XlsReader().read(file));
    assertTrue(refusal.getMessage().contains(word), refusal.getMessage());
  }

  @Test
  void whatIsNotOursIsNotReplaced() throws IOException {
    Path source = log();
    ColumnPatch column = TestColumn.of(2, 2, "ABV", 5, 2, Map.of(3, 1.0));
    Path target = directory.resolve("filled.xls");
    UnusableFileException refusal =
        assertThrows(
            UnusableFileException.class,
            () -> new XlsWriter().write(source, TestColumn.on("Plum 3", column), target));
    assertTrue(refusal.getMessage().contains("C3"), refusal.getMessage());
  }

  @Test
  void aFullSheetIsRefused() throws IOException {
    Path source = log();
    ColumnPatch column = TestColumn.of(256, 2, "ABV", 5, 2, Map.of());
    Path target = directory.resolve("filled.xls");
    UnusableFileException refusal =
        assertThrows(
            UnusableFileException.class,
            () -> new XlsWriter().write(source, TestColumn.on("Plum 3", column), target));
    assertTrue(refusal.getMessage().contains("IW6"), refusal.getMessage());
  }

  @Test
  void damageNeverEscapesAsAnythingButARefusal() throws IOException {
    byte[] good = Files.readAllBytes(log());
    Random random = new Random(3);
    int refused = 0;
    for (int i = 0; i < 600; i++) {
      byte[] bytes = Arrays.copyOf(good, i % 3 == 0 ? random.nextInt(good.length) : good.length);
      for (int flips = random.nextInt(6); flips >= 0 && bytes.length > 0; flips--) {
        bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
      }
      Path broken = Files.write(directory.resolve("broken.xls"), bytes);
      try {
        new XlsReader().read(broken);
        new XlsWriter()
            .write(broken, TestColumn.on("Plum 3", columns()), directory.resolve("t.xls"));
      } catch (UnusableFileException e) {
        refused++;
      }
    }
    assertTrue(refused > 100, "refused: " + refused);
  }

  @Test
  void newCellsLookLikeTheirNeighboursAndTheSheetIsPrintedOnePageWide() throws IOException {
    Path log;
    try (HSSFWorkbook workbook = new HSSFWorkbook()) {
      HSSFSheet sheet = workbook.createSheet("Plum 3");
      HSSFCellStyle framed = workbook.createCellStyle();
      framed.setBorderBottom(BorderStyle.HAIR);
      framed.setAlignment(HorizontalAlignment.CENTER);
      for (int row = 0; row < 3; row++) {
        HSSFCell cell = sheet.createRow(row).createCell(1);
        cell.setCellValue(1.05);
        cell.setCellStyle(framed);
      }
      sheet.setColumnWidth(0, 50 * 256);
      log = save(workbook, "framed.xls");
    }
    Path filled = directory.resolve("framed.filled.xls");
    String reason = "B3: temperature is blank; it must be 0 to 60 °C, or the log must say more.";
    List<SheetPatch> patches =
        TestColumn.on(
            "Plum 3",
            TestColumn.of(2, 0, "Alcohol to date (% vol)", 2, 2, Map.of(1, 1.5)),
            TestColumn.of(3, 0, "Washbook note", 2, -1, Map.of(2, reason)));
    new XlsWriter().write(log, patches, filled);
    try (HSSFWorkbook workbook = new HSSFWorkbook(Files.newInputStream(filled))) {
      HSSFSheet sheet = workbook.getSheetAt(0);
      HSSFCellStyle number = sheet.getRow(1).getCell(2).getCellStyle();
      assertEquals(BorderStyle.HAIR, number.getBorderBottom());
      assertEquals(HorizontalAlignment.GENERAL, number.getAlignment());
      assertEquals("0.00", number.getDataFormatString());
      assertTrue(sheet.getRow(2).getCell(3).getCellStyle().getWrapText());
      assertTrue(sheet.getRow(2).getHeightInPoints() > 1.5 * sheet.getDefaultRowHeightInPoints());
      assertTrue(sheet.getFitToPage());
      assertEquals(1, sheet.getPrintSetup().getFitWidth());
    }
  }
}
