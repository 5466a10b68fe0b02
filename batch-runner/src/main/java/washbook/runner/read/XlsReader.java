package washbook.runner.read;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.hssf.usermodel.HSSFCell;
import org.apache.poi.hssf.usermodel.HSSFCellStyle;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import washbook.log.sheet.Grid;
import washbook.runner.file.UnusableFileException;
import washbook.runner.sheet.CompactGrid;
import washbook.runner.sheet.SheetReader;
import washbook.runner.sheet.Texts;

/** Reads the sheets of an Excel 97-2003 workbook; formulas by their stored results. */
public final class XlsReader implements SheetReader {
  /** Days between the two beginnings of time that Excel knows, 1899-12-30 and 1904-01-01. */
  private static final int DAYS_1904 = 1462;

  @Override
  public List<Grid> read(Path file) throws IOException {
    return XlsFile.with(file, workbook -> new Sheets(file, workbook).all());
  }

  private static final class Sheets {
    private final Path file;
    private final HSSFWorkbook workbook;
    private final Texts texts = new Texts();
    private final Map<Integer, Boolean> dateFormats = new HashMap<>();
    private final int dayShift;

    Sheets(Path file, HSSFWorkbook workbook) {
      this.file = file;
      this.workbook = workbook;
      dayShift = workbook.getInternalWorkbook().isUsing1904DateWindowing() ? DAYS_1904 : 0;
    }

    List<Grid> all() throws IOException {
      List<Grid> grids = new ArrayList<>();
      for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
        grids.add(grid(workbook.getSheetAt(i), workbook.getSheetName(i)));
      }
      if (grids.isEmpty()) {
        throw UnusableFileException.of("damaged.sheets");
      }
      return grids;
    }

    private Grid grid(HSSFSheet sheet, String name) throws IOException {
      CompactGrid grid = new CompactGrid(name, texts).in(file);
      for (Row row : sheet) {
        for (Cell cell : row) {
          put((HSSFCell) cell, grid);
        }
      }
      for (CellRangeAddress area : sheet.getMergedRegions()) {
        grid.merge(
            new Grid.Area(
                area.getFirstRow(),
                area.getFirstColumn(),
                area.getLastRow(),
                area.getLastColumn()));
      }
      return grid;
    }

    private void put(HSSFCell cell, CompactGrid grid) throws IOException {
      boolean formula = cell.getCellType() == CellType.FORMULA;
      int row = cell.getRowIndex();
      int column = cell.getColumnIndex();
      switch (formula ? cell.getCachedFormulaResultType() : cell.getCellType()) {
        case NUMERIC -> {
          double number = cell.getNumericCellValue();
          if (isDate(cell)) {
            // Below one day it is a time of day, which knows no beginning of time.
            grid.putDate(row, column, number < 1 ? number : number + dayShift, formula);
          } else {
            grid.putNumber(row, column, number, formula);
          }
        }
        case STRING -> {
          grid.putText(row, column, cell.getStringCellValue(), formula);
          HSSFCellStyle style = cell.getCellStyle();
          if (style.getWrapText() || style.getShrinkToFit()) {
            grid.keepInside(row, column);
          }
        }
        case BOOLEAN -> grid.putLogical(row, column, cell.getBooleanCellValue(), formula);
        case ERROR -> grid.putError(row, column, formula);
        case BLANK, FORMULA, _NONE -> {
          // A styled cell without content is blank.
        }
      }
    }

    private boolean isDate(HSSFCell cell) {
      HSSFCellStyle style = cell.getCellStyle();
      int format = style.getDataFormat();
      return dateFormats.computeIfAbsent(
          format, key -> DateUtil.isADateFormat(format, style.getDataFormatString()));
    }
  }
}
