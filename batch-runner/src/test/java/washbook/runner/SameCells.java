package washbook.runner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Compares all cells of two workbooks as a general library reads them. */
public final class SameCells {
  private SameCells() {}

  /** Opens a workbook for reading only. */
  public static XSSFWorkbook open(Path file) throws Exception {
    return new XSSFWorkbook(OPCPackage.open(file.toFile(), PackageAccess.READ));
  }

  /**
   * Every cell of the first file must be in the second with the same value, formula, stored result
   * and style, but for those named "sheet!A1".
   *
   * @return how many were compared
   */
  public static int check(Path before, Path after, Set<String> but) throws Exception {
    int compared = 0;
    try (XSSFWorkbook old = open(before);
        XSSFWorkbook now = open(after)) {
      assertEquals(old.getNumberOfSheets(), now.getNumberOfSheets());
      for (Sheet sheet : old) {
        Sheet other = now.getSheet(sheet.getSheetName());
        assertEquals(sheet.getMergedRegions(), other.getMergedRegions());
        for (Row row : sheet) {
          for (Cell cell : row) {
            String place = sheet.getSheetName() + "!" + cell.getAddress();
            if (!but.contains(place)) {
              Row otherRow = other.getRow(row.getRowNum());
              assertNotNull(otherRow, place);
              assertEquals(
                  describe(cell), describe(otherRow.getCell(cell.getColumnIndex())), place);
              compared++;
            }
          }
        }
      }
    }
    return compared;
  }

  private static String describe(Cell cell) throws IOException {
    if (cell == null) {
      return "none";
    }
    boolean formula = cell.getCellType() == CellType.FORMULA;
    CellType type = formula ? cell.getCachedFormulaResultType() : cell.getCellType();
    String value =
        switch (type) {
          case NUMERIC -> Double.toString(cell.getNumericCellValue());
          case STRING -> cell.getStringCellValue();
          case BOOLEAN -> Boolean.toString(cell.getBooleanCellValue());
          case ERROR -> "error " + cell.getErrorCellValue();
          default -> "";
        };
    return type
        + " "
        + value
        + " "
        + (formula ? cell.getCellFormula() : "")
        + " style "
        + cell.getCellStyle().getIndex();
  }
}
