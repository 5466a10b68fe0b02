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
import org.apache.poi.hssf.usermodel.HSSFRichTextString;
import org.apache.poi.hssf.usermodel.HSSFRow;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.CellType;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.SheetPatch;
import washbook.runner.file.UnusableFileException;
import washbook.runner.file.WrittenFile;
import washbook.runner.read.XlsFile;
import washbook.runner.sheet.OwnCells;
import washbook.runner.sheet.SheetWriter;

/**
 * Puts columns as values into an Excel 97-2003 workbook. No formula is evaluated: stored results
 * stay as they are. A new column that has no width of its own gets one by which its header can be
 * read. When no cell would change the copy is the same file.
 */
public final class XlsWriter implements SheetWriter {
  /** Of a cell, in 256ths of a character. */
  private static final int MARGINS = 182;

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

  private static final class Cells {
    private final HSSFWorkbook workbook;
    private final Map<Integer, HSSFCellStyle> numberStyles = new HashMap<>();
    private final Map<Short, HSSFCellStyle> wrappingStyles = new HashMap<>();
    private final ColumnLook look = new ColumnLook();
    private boolean changed;

    Cells(HSSFWorkbook workbook) {
      this.workbook = workbook;
    }

    void put(SheetPatch patch) throws UnusableFileException {
      HSSFSheet sheet = workbook.getSheet(patch.sheet());
      if (sheet == null) {
        throw UnusableFileException.of("sheet.noneInFile", patch.sheet());
      }
      for (ColumnPatch column : patch.columns()) {
        int last = Math.max(column.headerRow(), column.lastRow());
        if (column.column() > LIMITS.getLastColumnIndex() || last > LIMITS.getLastRowIndex()) {
          throw UnusableFileException.of(
              "xls.full", patch.sheet(), CellAddress.of(last, column.column()));
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
          HSSFCell old = find(sheet, row, column.column());
          OwnCells.refuseOthers(patch.sheet(), row, column.column(), ours, isBlank(old));
          putCell(sheet, column, row);
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
      int letters = look.width(patch);
      if (sheet.getColumnWidth(patch.column()) == 256 * sheet.getDefaultColumnWidth()
          && letters > sheet.getDefaultColumnWidth()) {
        sheet.setColumnWidth(patch.column(), 256 * letters + MARGINS);
      }
      double width = sheet.getColumnWidth(patch.column()) / 256.0;
      int lines = ColumnLook.lines(patch.header(), width);
      float height = lines * sheet.getDefaultRowHeightInPoints();
      if (lines > 1 && header.getRow().getHeightInPoints() < height) {
        header.getRow().setHeightInPoints(height);
      }
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
        putText(sheet, row, patch.column(), text);
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
        cell.setCellStyle(numberStyle(patch.decimals(row)));
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

    /** The default style with so many digits behind the point. */
    private HSSFCellStyle numberStyle(int decimals) {
      return numberStyles.computeIfAbsent(
          decimals,
          key -> {
            HSSFCellStyle style = workbook.createCellStyle();
            String format = decimals == 0 ? "0" : "0." + "0".repeat(decimals);
            style.setDataFormat(workbook.createDataFormat().getFormat(format));
            return style;
          });
    }
  }
}
