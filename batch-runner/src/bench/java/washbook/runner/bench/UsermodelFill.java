package washbook.runner.bench;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import washbook.log.fill.FillOptions;
import washbook.log.fill.LogFiller;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.SheetPatch;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;
import washbook.runner.sheet.CompactGrid;
import washbook.runner.sheet.Texts;

/** The same job by POI's usermodel: it reads and writes, the computing is ours. */
final class UsermodelFill {
  private UsermodelFill() {}

  /** Number of threads, folder of the logs, folder of the results. */
  public static void main(String[] arguments) throws Exception {
    EachFile.in(
        Path.of(arguments[1]),
        Path.of(arguments[2]),
        Integer.parseInt(arguments[0]),
        UsermodelFill::fill);
  }

  private static void fill(Path source, Path target) throws IOException {
    try (InputStream in = Files.newInputStream(source);
        XSSFWorkbook book = new XSSFWorkbook(in)) {
      XSSFSheet sheet = book.getSheetAt(0);
      CompactGrid grid = read(sheet);
      write(
          sheet,
          LogFiller.fill(
                  grid, SheetUnderstanding.understand(grid, LogMap.none()), FillOptions.usual())
              .patch());
      try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(target), 1 << 16);
          ZipArchiveOutputStream zip = new ZipArchiveOutputStream(out)) {
        zip.setLevel(KnownColumns.DEFLATE_LEVEL);
        book.write(zip);
      }
    }
  }

  private static CompactGrid read(XSSFSheet sheet) throws IOException {
    CompactGrid grid = new CompactGrid(sheet.getSheetName(), new Texts());
    for (Row row : sheet) {
      for (Cell cell : row) {
        int column = cell.getColumnIndex();
        switch (cell.getCellType()) {
          case NUMERIC -> {
            if (DateUtil.isCellDateFormatted(cell)) {
              grid.putDate(row.getRowNum(), column, cell.getNumericCellValue(), false);
            } else {
              grid.putNumber(row.getRowNum(), column, cell.getNumericCellValue(), false);
            }
          }
          case STRING -> grid.putText(row.getRowNum(), column, cell.getStringCellValue(), false);
          default -> {
            // The logs of this benchmark hold nothing else.
          }
        }
      }
    }
    return grid;
  }

  private static void write(XSSFSheet sheet, SheetPatch patch) {
    for (ColumnPatch column : patch.columns()) {
      sheet.getRow(column.headerRow()).createCell(column.column()).setCellValue(column.header());
      for (int row = column.firstRow(); row <= column.lastRow(); row++) {
        double number = column.cells().number(row);
        if (!Double.isNaN(number)) {
          sheet.getRow(row).createCell(column.column()).setCellValue(number);
        }
      }
    }
  }
}
