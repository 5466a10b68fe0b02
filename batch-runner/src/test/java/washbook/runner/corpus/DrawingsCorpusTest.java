package washbook.runner.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.regex.Matcher;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.apache.poi.openxml4j.util.ZipSecureFile;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFShape;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.log.fill.FillOptions;
import washbook.log.fill.Filling;
import washbook.log.fill.LogFiller;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.Grid;
import washbook.log.sheet.SheetPatch;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;
import washbook.runner.file.UnusableFileException;
import washbook.runner.read.XlsxPackage;
import washbook.runner.read.XlsxReader;
import washbook.runner.write.XlsxWriter;

/** A log is put beside the drawings of difficult workbooks and filled: they stay as they are. */
class DrawingsCorpusTest {
  private static final double PIXELS = 2;

  @TempDir private Path folder;

  private record Drawn(double x, double y, double width, double height, Grid.Area area) {}

  private final List<String> wrong = new ArrayList<>();
  private int filled;
  private int seen;

  @Test
  void noDrawingIsMovedCoveredOrStretched() throws IOException {
    ZipSecureFile.setMinInflateRatio(0);
    for (Path file : Corpus.files("xlsx", "xlsm")) {
      for (XlsxPackage.Sheet sheet : drawnSheets(file)) {
        for (int headerRow : new int[] {0, 3, 12}) {
          check(file, sheet, headerRow);
        }
      }
    }
    System.out.println("drawings: " + seen + " beside " + filled + " filled logs");
    wrong.forEach(System.out::println);
    assertEquals(0, wrong.size(), String.join("\n", wrong.subList(0, Math.min(20, wrong.size()))));
    assertTrue(filled > 50 && seen > 100, filled + " logs, " + seen + " drawings");
  }

  static List<XlsxPackage.Sheet> drawnSheets(Path file) {
    List<XlsxPackage.Sheet> drawn = new ArrayList<>();
    try (XlsxPackage workbook = XlsxPackage.open(file)) {
      for (XlsxPackage.Sheet sheet : workbook.sheets()) {
        if (!workbook.anchors(sheet.part()).isEmpty()) {
          drawn.add(sheet);
        }
      }
    } catch (IOException refused) {
      return List.of();
    }
    return drawn;
  }

  private void check(Path file, XlsxPackage.Sheet sheet, int headerRow) throws IOException {
    String name = file.getFileName() + ", " + sheet.name() + ", row " + headerRow;
    Path log = folder.resolve("log.xlsx");
    Path done = folder.resolve("done.xlsx");
    List<ColumnPatch> columns;
    if (!inject(file, sheet.part().name(), headerRow, log)) {
      return;
    }
    try {
      Grid grid =
          new XlsxReader()
              .read(log).stream()
                  .filter(one -> one.name().equals(sheet.name()))
                  .findFirst()
                  .orElseThrow();
      Filling filling =
          LogFiller.fill(
              grid, SheetUnderstanding.understand(grid, LogMap.none()), FillOptions.usual());
      columns = filling.patch().columns();
      if (columns.isEmpty()) {
        return;
      }
      new XlsxWriter().write(log, List.of(filling.patch()), done);
    } catch (UnusableFileException refused) {
      return;
    }
    List<Drawn> before = drawings(log, sheet.name());
    if (before.isEmpty()) {
      return;
    }
    filled++;
    compare(name, before, drawings(done, sheet.name()), columns);
    Path again = folder.resolve("again.xlsx");
    new XlsxWriter().write(done, List.of(new SheetPatch(sheet.name(), columns)), again);
    assertEquals(-1, Files.mismatch(done, again), name + " filled twice");
  }

  private void compare(
      String name, List<Drawn> before, List<Drawn> after, List<ColumnPatch> columns) {
    assertEquals(before.size(), after.size(), name);
    for (int i = 0; i < before.size(); i++) {
      seen++;
      Drawn old = before.get(i);
      Drawn now = after.get(i);
      if (Math.abs(old.width - now.width) > PIXELS || Math.abs(old.height - now.height) > PIXELS) {
        wrong.add(name + ": stretched from " + old + " to " + now);
      }
      boolean higher = now.y > old.y + PIXELS && old.area.firstRow() <= columns.get(0).headerRow();
      if (Math.abs(old.x - now.x) > PIXELS || higher || now.y < old.y - PIXELS) {
        wrong.add(name + ": moved from " + old + " to " + now);
      }
      for (ColumnPatch column : columns) {
        if (now.area.firstColumn() <= column.column()
            && now.area.lastColumn() >= column.column()
            && now.area.firstRow() <= column.lastRow()
            && now.area.lastRow() >= column.headerRow()) {
          wrong.add(name + ": column " + column.column() + " is covered by " + now);
        }
      }
    }
  }

  /** Puts a log of three columns in the place of a sheet's cells. */
  static boolean inject(Path file, String part, int headerRow, Path to) throws IOException {
    StringBuilder rows = new StringBuilder("<sheetData>");
    rows.append(row(headerRow, text("Day") + text("SG") + text("Temp \u00b0C")));
    double[] gravities = {1.085, 1.06, 1.04, 1.02, 1.004, 0.998};
    for (int i = 0; i < gravities.length; i++) {
      String cells = number(i * 2) + number(gravities[i]) + number(20);
      rows.append(row(headerRow + 1 + i, cells));
    }
    rows.append("</sheetData>");
    boolean put = false;
    try (ZipFile zip = new ZipFile(file.toFile());
        OutputStream out = Files.newOutputStream(to);
        ZipOutputStream copy = new ZipOutputStream(out)) {
      for (ZipEntry entry : Collections.list(zip.entries())) {
        byte[] bytes;
        try (InputStream in = zip.getInputStream(entry)) {
          bytes = in.readAllBytes();
        }
        if (entry.getName().equals(part)) {
          String old = new String(bytes, StandardCharsets.UTF_8);
          String cells = Matcher.quoteReplacement(rows.toString());
          String now =
              old.replaceFirst("(?s)<sheetData(\\s*/>|>.*</sheetData>)", cells)
                  .replaceFirst("(?s)<mergeCells.*</mergeCells>", "");
          put = !now.equals(old);
          bytes = now.getBytes(StandardCharsets.UTF_8);
        }
        copy.putNextEntry(new ZipEntry(entry.getName()));
        copy.write(bytes);
        copy.closeEntry();
      }
    }
    return put;
  }

  private static String row(int row, String cells) {
    return "<row r=\"" + (row + 1) + "\">" + cells + "</row>";
  }

  private static String text(String text) {
    return "<c t=\"inlineStr\"><is><t>" + text + "</t></is></c>";
  }

  private static String number(double number) {
    return "<c><v>" + number + "</v></c>";
  }

  /** Where another library finds the drawings that are tied to two cells, in pixels and points. */
  private static List<Drawn> drawings(Path file, String name) {
    List<Drawn> drawn = new ArrayList<>();
    try (InputStream in = Files.newInputStream(file);
        XSSFWorkbook workbook = new XSSFWorkbook(in)) {
      XSSFSheet sheet = workbook.getSheet(name);
      if (sheet == null || sheet.getDrawingPatriarch() == null) {
        return drawn;
      }
      for (XSSFShape shape : sheet.getDrawingPatriarch()) {
        if (shape.getAnchor() instanceof XSSFClientAnchor at && at.getCol2() > 0) {
          double left = x(sheet, at.getCol1(), at.getDx1());
          double top = y(sheet, at.getRow1(), at.getDy1());
          boolean oneCell = at.getSize() != null;
          double right =
              oneCell ? left + at.getSize().getCx() / 9525.0 : x(sheet, at.getCol2(), at.getDx2());
          double bottom =
              oneCell ? top + at.getSize().getCy() / 12700.0 : y(sheet, at.getRow2(), at.getDy2());
          Grid.Area area =
              new Grid.Area(
                  at.getRow1(),
                  at.getCol1(),
                  at(bottom, row -> height(sheet, row)),
                  at(right, column -> width(sheet, column)));
          drawn.add(new Drawn(left, top, right - left, bottom - top, area));
        }
      }
    } catch (IOException | RuntimeException | LinkageError unreadable) {
      return List.of();
    }
    return drawn;
  }

  /** The column or row in which a place lies; at its very edge, the one before. */
  private static int at(double place, IntToDoubleFunction size) {
    int at = 0;
    for (double rest = place - 1; rest > size.applyAsDouble(at); at++) {
      rest -= size.applyAsDouble(at);
    }
    return at;
  }

  private static double x(XSSFSheet sheet, int column, double offset) {
    double x = 0;
    for (int i = 0; i < column; i++) {
      x += width(sheet, i);
    }
    return x + Math.min(offset / 9525, width(sheet, column));
  }

  private static double width(XSSFSheet sheet, int column) {
    if (sheet.getColumnHelper().getColumn(column, false) == null) {
      var usual = sheet.getCTWorksheet().getSheetFormatPr();
      // Eight characters and margins, rounded up to a multiple of eight pixels (18.3.1.81).
      return usual != null && usual.isSetDefaultColWidth() ? usual.getDefaultColWidth() * 7 : 64;
    }
    return sheet.isColumnHidden(column) ? 0 : sheet.getColumnWidthInPixels(column);
  }

  private static double y(XSSFSheet sheet, int row, double offset) {
    double y = 0;
    for (int i = 0; i < row; i++) {
      y += height(sheet, i);
    }
    return y + Math.min(offset / 12700, height(sheet, row));
  }

  private static double height(XSSFSheet sheet, int row) {
    Row one = sheet.getRow(row);
    return one == null
        ? sheet.getDefaultRowHeightInPoints()
        : one.getZeroHeight() ? 0 : one.getHeightInPoints();
  }
}
