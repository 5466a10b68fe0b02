package washbook.runner.write;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import org.apache.poi.hssf.usermodel.HSSFCellStyle;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.Grid;
import washbook.runner.Office;
import washbook.runner.TestColumn;
import washbook.runner.file.UnusableFileException;
import washbook.runner.read.XlsReader;

/** Small programs write .xls files without records that large ones always write. */
class XlsOptionalRecordsTest {
  private static final int BOF = 0x809;
  private static final int EOF = 0x0A;
  private static final int FONT = 0x31;
  private static final int FORMAT = 0x41E;
  private static final int CELL_FORMAT = 0xE0;
  private static final int STYLE = 0x293;
  private static final int DIMENSIONS = 0x200;
  private static final int WINDOW = 0x23E;

  /** Cells, texts and the list of sheets are no optional records. */
  private static final Set<Integer> CONTENT = Set.of(BOF, EOF, 0x85, 0x203, 0x204, 0xFD, 0xFC);

  @TempDir private Path folder;

  @Test
  void aWorkbookWithoutNumberFormatsFontsOrCellFormatsIsFilled() throws Exception {
    Path log = log();
    for (Set<Integer> missing :
        List.of(
            Set.of(FORMAT),
            Set.of(FONT),
            Set.of(STYLE),
            Set.of(CELL_FORMAT),
            Set.of(DIMENSIONS),
            Set.of(WINDOW),
            Set.of(FORMAT, CELL_FORMAT, STYLE),
            Set.of(FORMAT, FONT, CELL_FORMAT, STYLE, DIMENSIONS, WINDOW))) {
      Grid grid = filled(without(log, missing::contains)).get(0);
      assertEquals(1.23, grid.number(2, 2), missing.toString());
      assertEquals("text", grid.text(3, 2), missing.toString());
      assertEquals(1.05, grid.number(2, 1), missing.toString());
    }
    List<String> shown = new Office(folder).shown(folder.resolve("filled.xls")).get("Plum 3");
    assertEquals(List.of("Day,SG,ABV", "1,1.06,0.5", "2,1.05,1.2", "3,1.04,text"), shown);
  }

  @Test
  void whatCanBeReadWithoutARecordCanBeFilledWithoutIt() throws IOException {
    Path log = log();
    Set<Integer> kinds = kinds(log);
    int readable = 0;
    for (int kind : kinds) {
      Path less = without(log, found -> found == kind);
      List<Grid> read;
      try {
        read = new XlsReader().read(less);
      } catch (UnusableFileException refused) {
        System.out.println("without record " + Integer.toHexString(kind) + ": refused");
        continue;
      }
      assertEquals(1.05, read.get(0).number(2, 1), "record " + Integer.toHexString(kind));
      Grid grid = filled(less).get(0);
      assertEquals(1.23, grid.number(2, 2), "record " + Integer.toHexString(kind));
      assertEquals(1.05, grid.number(2, 1), "record " + Integer.toHexString(kind));
      readable++;
    }
    assertTrue(readable > 30, readable + " of " + kinds.size());
  }

  private List<Grid> filled(Path log) throws IOException {
    Path target = folder.resolve("filled.xls");
    ColumnPatch column = TestColumn.of(2, 0, "ABV", 3, 1, Map.of(1, 0.5, 2, 1.23, 3, "text"));
    new XlsWriter().write(log, TestColumn.on("Plum 3", column), target);
    return new XlsReader().read(target);
  }

  private Path log() throws IOException {
    try (HSSFWorkbook workbook = new HSSFWorkbook()) {
      HSSFCellStyle date = workbook.createCellStyle();
      date.setDataFormat(workbook.createDataFormat().getFormat("yyyy-mm-dd"));
      HSSFSheet sheet = workbook.createSheet("Plum 3");
      sheet.createRow(0).createCell(0).setCellValue("Day");
      sheet.getRow(0).createCell(1).setCellValue("SG");
      for (int row = 1; row < 4; row++) {
        sheet.createRow(row).createCell(0).setCellValue(row);
        sheet.getRow(row).createCell(1).setCellValue(1.07 - row / 100.0);
      }
      Path file = folder.resolve("log.xls");
      try (OutputStream out = Files.newOutputStream(file)) {
        workbook.write(out);
      }
      return file;
    }
  }

  private static Set<Integer> kinds(Path log) throws IOException {
    Set<Integer> kinds = new TreeSet<>();
    byte[] stream = stream(log);
    for (int at = 0; at + 4 <= stream.length; at += 4 + number(stream, at + 2)) {
      kinds.add(number(stream, at));
    }
    kinds.removeAll(CONTENT);
    return kinds;
  }

  private Path without(Path log, IntPredicate left) throws IOException {
    byte[] stream = stream(log);
    ByteArrayOutputStream less = new ByteArrayOutputStream();
    for (int at = 0; at + 4 <= stream.length; at += 4 + number(stream, at + 2)) {
      if (!left.test(number(stream, at))) {
        less.write(stream, at, 4 + number(stream, at + 2));
      }
    }
    Path file = folder.resolve("less.xls");
    try (POIFSFileSystem files = new POIFSFileSystem();
        OutputStream out = Files.newOutputStream(file)) {
      files.createDocument(new ByteArrayInputStream(less.toByteArray()), "Workbook");
      files.writeFilesystem(out);
    }
    return file;
  }

  private static byte[] stream(Path log) throws IOException {
    try (POIFSFileSystem files = new POIFSFileSystem(log.toFile(), true);
        var in = files.createDocumentInputStream("Workbook")) {
      return in.readAllBytes();
    }
  }

  private static int number(byte[] bytes, int at) {
    return bytes[at] & 0xff | (bytes[at + 1] & 0xff) << 8;
  }
}
