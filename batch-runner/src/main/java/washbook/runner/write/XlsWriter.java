package washbook.runner.write;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.hssf.record.DrawingRecord;
import org.apache.poi.hssf.record.EscherAggregate;
import org.apache.poi.hssf.usermodel.HSSFCell;
import org.apache.poi.hssf.usermodel.HSSFCellStyle;
import org.apache.poi.hssf.usermodel.HSSFPrintSetup;
import org.apache.poi.hssf.usermodel.HSSFRichTextString;
import org.apache.poi.hssf.usermodel.HSSFRow;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.SheetPatch;
import washbook.runner.extent.PageFit;
import washbook.runner.extent.XlsPages;
import washbook.runner.file.UnusableFileException;
import washbook.runner.file.WrittenFile;
import washbook.runner.read.XlsFile;
import washbook.runner.sheet.OwnCells;
import washbook.runner.sheet.SheetWriter;

/**
 * Puts columns as values into an Excel 97-2003 workbook. No formula is evaluated: stored results
 * stay as they are. A new column that has no width of its own gets one by which its header can be
 * read, and its cells look like their neighbours. When no cell would change the copy is the same
 * file.
 */
public final class XlsWriter implements SheetWriter {
  /** Of a cell, in 256ths of a character. */
  private static final int MARGINS = 182;

  /** The number of the cell format that a workbook has by itself. */
  private static final int USUAL = 15;

  private static final SpreadsheetVersion LIMITS = SpreadsheetVersion.EXCEL97;

  @Override
  public void write(Path source, List<SheetPatch> patches, Path target) throws IOException {
    boolean changed =
        XlsFile.with(
            source,
            workbook -> {
              Cells cells = new Cells(workbook);
              for (SheetPatch patch : patches) {
                cells.put(patch);
              }
              if (cells.changed) {
                save(workbook, target);
              }
              return cells.changed;
            });
    if (!changed) {
      WrittenFile.copy(source, target);
    }
  }

  private static void save(HSSFWorkbook workbook, Path target) throws IOException {
    try (OutputStream out = WrittenFile.stream(target)) {
      workbook.write(out);
    }
  }

  /** Cells so far right of ours belong to something else: then nothing is fitted. */
  private static final int FARTHEST = 40;

  private static final class Cells {
    private final HSSFWorkbook workbook;
    private final Map<String, HSSFCellStyle> styles = new HashMap<>();
    private final Map<Short, HSSFCellStyle> wrappingStyles = new HashMap<>();
    private ColumnLook look = new ColumnLook();
    private boolean changed;

    Cells(HSSFWorkbook workbook) {
      this.workbook = workbook;
    }

    void put(SheetPatch patch) throws UnusableFileException {
      HSSFSheet sheet = workbook.getSheet(patch.sheet());
      if (sheet == null) {
        throw UnusableFileException.of("sheet.noneInFile", patch.sheet());
      }
      boolean anyNew =
          patch.columns().stream().anyMatch(c -> isBlank(find(sheet, c.headerRow(), c.column())));
      boolean fits = anyNew && !hasDrawings(sheet);
      look = new ColumnLook();
      int last = fits ? XlsPages.lastColumn(sheet) : -1;
      if (fits) {
        XlsPages.complete(sheet);
        look.fitNotes(() -> PageFit.pages(fit(sheet, patch.columns(), last)));
      }
      for (ColumnPatch column : patch.columns()) {
        int lastRow = Math.max(column.headerRow(), column.lastRow());
        if (column.column() > LIMITS.getLastColumnIndex() || lastRow > LIMITS.getLastRowIndex()) {
          throw UnusableFileException.of(
              "xls.full", patch.sheet(), CellAddress.of(lastRow, column.column()));
        }
        HSSFCell header = find(sheet, column.headerRow(), column.column());
        boolean ours =
            header != null
                && header.getCellType() == CellType.STRING
                && column.isOurs(header.getStringCellValue());
        OwnCells.refuseOthers(
            patch.sheet(), column.headerRow(), column.column(), ours, isBlank(header));
        putHeader(sheet, column);
        for (int row = column.firstRow(); row <= column.lastRow(); row++) {
          if (!column.owns(row)) {
            continue;
          }
          HSSFCell old = find(sheet, row, column.column());
          OwnCells.refuseOthers(patch.sheet(), row, column.column(), ours, isBlank(old));
          putCell(sheet, column, row);
        }
      }
      if (fits) {
        print(sheet, fit(sheet, patch.columns(), last));
      }
    }

    /** One page wide where that is readable, if nobody has set how the sheet is printed. */
    private PageFit fit(HSSFSheet sheet, List<ColumnPatch> columns, int lastBefore) {
      HSSFPrintSetup print = sheet.getPrintSetup();
      short paper = print.getPaperSize();
      boolean letter = paper == PrintSetup.LETTER_PAPERSIZE;
      boolean own =
          XlsPages.isFit(sheet)
              || XlsPages.isSaid(print) && print.getScale() != 0 && print.getScale() != 100
              || sheet.getColumnBreaks().length > 0
              || sheet.getRowBreaks().length > 0
              || paper > PrintSetup.LETTER_PAPERSIZE && paper != PrintSetup.A4_PAPERSIZE;
      if (own) {
        return null;
      }
      double width = 0;
      int ours = columns.stream().mapToInt(ColumnPatch::column).max().orElse(-1);
      int last = Math.max(ours, lastBefore);
      if (last > ours + FARTHEST) {
        return null;
      }
      for (int column = 0; column <= last; column++) {
        width += sheet.isColumnHidden(column) ? 0 : pixels(sheet, column, columns) * 0.75;
      }
      double left = 72 * sheet.getMargin(PageMargin.LEFT);
      double right = 72 * sheet.getMargin(PageMargin.RIGHT);
      return PageFit.of(
          width,
          XlsPages.isSaid(print) && print.getLandscape() && !print.getNoOrientation(),
          turned -> (turned ? letter ? 792 : 842 : letter ? 612 : 595) - left - right,
          PageFit.spare(left, right));
    }

    /** Of a column with what it gets. */
    private double pixels(HSSFSheet sheet, int column, List<ColumnPatch> columns) {
      double now = sheet.getColumnWidthInPixels(column);
      double wanted = sheet.getColumnWidth(column);
      for (ColumnPatch patch : columns) {
        if (isBlank(find(sheet, patch.headerRow(), patch.column()))) {
          if (patch.column() == column && mayWiden(sheet, patch)) {
            wanted = Math.max(wanted, 256 * look.width(patch) + MARGINS);
          } else if (patch.column() - 1 == column && mayWidenBefore(sheet, patch)) {
            wanted = Math.max(wanted, widthBefore(patch));
          }
        }
      }
      return now * wanted / Math.max(1, sheet.getColumnWidth(column));
    }

    private static void print(HSSFSheet sheet, PageFit fit) {
      HSSFPrintSetup print = sheet.getPrintSetup();
      if (fit != null) {
        XlsPages.setFit(sheet);
        XlsPages.say(print);
        print.setLandscape(fit.landscape());
        print.setNoOrientation(false);
        print.setFitWidth((short) fit.pages());
        print.setFitHeight((short) 0);
        if (fit.narrow()) {
          sheet.setMargin(PageMargin.LEFT, PageFit.MARGIN / 72);
          sheet.setMargin(PageMargin.RIGHT, PageFit.MARGIN / 72);
        }
      }
    }

    private void putHeader(HSSFSheet sheet, ColumnPatch patch) throws UnusableFileException {
      boolean wasBlank = isBlank(find(sheet, patch.headerRow(), patch.column()));
      if (!putText(sheet, patch.headerRow(), patch.column(), patch.header()) || !wasBlank) {
        return;
      }
      HSSFCell header = find(sheet, patch.headerRow(), patch.column());
      HSSFCell left =
          patch.column() > 0 ? find(sheet, patch.headerRow(), patch.column() - 1) : null;
      HSSFCellStyle beside = left == null ? header.getCellStyle() : left.getCellStyle();
      if (hasDrawings(sheet)) {
        // They are tied to cells: a wider column or a higher row would stretch them.
        header.setCellStyle(beside);
        return;
      }
      header.setCellStyle(wrapping(beside));
      if (mayWiden(sheet, patch)) {
        sheet.setColumnWidth(patch.column(), 256 * look.width(patch) + MARGINS);
      }
      widenBefore(sheet, patch);
      double width = sheet.getColumnWidth(patch.column()) / 256.0;
      int lines = ColumnLook.lines(patch.header(), width);
      float height = lines * sheet.getDefaultRowHeightInPoints();
      if (lines > 1 && header.getRow().getHeightInPoints() < height) {
        header.getRow().setHeightInPoints(height);
      }
    }

    /**
     * A text that ran on over the new column's cells gets room, unless a person has set a width.
     */
    private static void widenBefore(HSSFSheet sheet, ColumnPatch patch) {
      if (mayWidenBefore(sheet, patch)) {
        sheet.setColumnWidth(patch.column() - 1, widthBefore(patch));
      }
    }

    private boolean mayWiden(HSSFSheet sheet, ColumnPatch patch) {
      return isUsual(sheet, patch.column()) && look.width(patch) > sheet.getDefaultColumnWidth();
    }

    private static boolean mayWidenBefore(HSSFSheet sheet, ColumnPatch patch) {
      return patch.column() > 0
          && patch.cut() >= sheet.getDefaultColumnWidth()
          && isUsual(sheet, patch.column() - 1);
    }

    private static int widthBefore(ColumnPatch patch) {
      return 256 * Math.min(patch.cut() + 1, ColumnLook.NOTE) + MARGINS;
    }

    private static boolean isUsual(HSSFSheet sheet, int column) {
      return sheet.getColumnWidth(column) == 256 * sheet.getDefaultColumnWidth();
    }

    private static boolean hasDrawings(HSSFSheet sheet) {
      return sheet.getSheet().findFirstRecordLocBySid(DrawingRecord.sid) >= 0
          || sheet.getSheet().findFirstRecordLocBySid(EscherAggregate.sid) >= 0;
    }

    private HSSFCellStyle wrapping(HSSFCellStyle look) {
      return look.getWrapText()
          ? look
          : wrappingStyles.computeIfAbsent(
              look.getIndex(),
              key -> {
                HSSFCellStyle style = workbook.createCellStyle();
                style.cloneStyleFrom(look);
                style.setWrapText(true);
                return style;
              });
    }

    private void putCell(HSSFSheet sheet, ColumnPatch patch, int row) throws UnusableFileException {
      double number = patch.cells().number(row);
      if (!Double.isNaN(number)) {
        putNumber(sheet, patch, row, number);
        return;
      }
      String text = patch.cells().text(row);
      if (text != null && !text.isEmpty()) {
        boolean wasBlank = isBlank(find(sheet, row, patch.column()));
        if (putText(sheet, row, patch.column(), text) && wasBlank) {
          lookOfText(sheet, patch, row, text);
        }
        return;
      }
      HSSFCell old = find(sheet, row, patch.column());
      if (old != null && old.getCellType() != CellType.BLANK) {
        checkArray(old);
        old.setBlank();
        changed = true;
      }
    }

    private void putNumber(HSSFSheet sheet, ColumnPatch patch, int row, double number)
        throws UnusableFileException {
      HSSFCell old = find(sheet, row, patch.column());
      if (old != null
          && old.getCellType() == CellType.NUMERIC
          && Double.compare(old.getNumericCellValue(), number) == 0) {
        return;
      }
      boolean restyle = isBlank(old) && patch.decimals() >= 0;
      HSSFCell cell = writable(sheet, row, patch.column());
      cell.setCellValue(number);
      if (restyle) {
        cell.setCellStyle(beside(cell, patch.decimals(row), false));
      }
    }

    private boolean putText(HSSFSheet sheet, int row, int column, String text)
        throws UnusableFileException {
      HSSFCell old = find(sheet, row, column);
      String kept = text.length() <= LIMITS.getMaxTextLength() ? text : cut(text);
      if (old != null
          && old.getCellType() == CellType.STRING
          && old.getStringCellValue().equals(kept)) {
        return false;
      }
      writable(sheet, row, column).setCellValue(new HSSFRichTextString(kept));
      return true;
    }

    private static String cut(String text) {
      return text.substring(0, LIMITS.getMaxTextLength());
    }

    private HSSFCell writable(HSSFSheet sheet, int rowIndex, int column)
        throws UnusableFileException {
      changed = true;
      HSSFRow row = sheet.getRow(rowIndex);
      if (row == null) {
        row = sheet.createRow(rowIndex);
      }
      HSSFCell cell = row.getCell(column);
      if (cell == null) {
        return row.createCell(column);
      }
      checkArray(cell);
      if (cell.getCellType() == CellType.FORMULA) {
        cell.removeFormula();
      }
      return cell;
    }

    private static void checkArray(HSSFCell cell) throws UnusableFileException {
      if (cell.isPartOfArrayFormulaGroup()) {
        throw UnusableFileException.of(
            "xls.array", CellAddress.of(cell.getRowIndex(), cell.getColumnIndex()));
      }
    }

    private static HSSFCell find(HSSFSheet sheet, int rowIndex, int column) {
      HSSFRow row = sheet.getRow(rowIndex);
      return row == null ? null : row.getCell(column);
    }

    private static boolean isBlank(HSSFCell cell) {
      return cell == null || cell.getCellType() == CellType.BLANK;
    }

    /** A note wraps, and its row is high enough for it. */
    private void lookOfText(HSSFSheet sheet, ColumnPatch patch, int row, String text) {
      HSSFCell cell = find(sheet, row, patch.column());
      boolean wraps = look.isNote(patch) && !hasDrawings(sheet);
      cell.setCellStyle(beside(cell, -1, wraps));
      double width = sheet.getColumnWidth(patch.column()) / 256.0 * ColumnLook.LETTERS;
      float height = ColumnLook.lines(text, width) * sheet.getDefaultRowHeightInPoints();
      if (wraps && cell.getRow().getHeightInPoints() < height) {
        cell.getRow().setHeightInPoints(height);
      }
    }

    /** The look of the cell to its left, with that many decimal places; -1 for text. */
    private HSSFCellStyle beside(HSSFCell cell, int decimals, boolean wraps) {
      HSSFCell left = cell.getColumnIndex() > 0 ? neighbour(cell) : null;
      HSSFCellStyle base = left == null ? workbook.getCellStyleAt(USUAL) : left.getCellStyle();
      return styles.computeIfAbsent(
          base.getIndex() + " " + decimals + " " + wraps,
          key -> {
            HSSFCellStyle style = workbook.createCellStyle();
            style.cloneStyleFrom(base);
            String places = decimals < 1 ? "" : "." + "0".repeat(decimals);
            String format = decimals < 0 ? "General" : "0" + places;
            style.setDataFormat(workbook.createDataFormat().getFormat(format));
            style.setAlignment(HorizontalAlignment.GENERAL);
            style.setWrapText(wraps);
            return style;
          });
    }

    private static HSSFCell neighbour(HSSFCell cell) {
      return cell.getRow().getCell(cell.getColumnIndex() - 1);
    }
  }
}
