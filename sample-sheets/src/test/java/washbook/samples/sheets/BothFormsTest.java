package washbook.samples.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

/** A class that reads the sheet with functions and the one in plain formulas sees one figure. */
class BothFormsTest {
  private final DataFormatter formatter = new DataFormatter(Locale.ROOT);

  @Test
  void theClassSheetShowsTheSameFiguresInBothForms() throws IOException {
    formatter.setUseCachedValuesForFormulaCells(true);
    int compared = 0;
    try (XSSFWorkbook pack = open("pack");
        XSSFWorkbook plain = open("portable")) {
      for (Sheet sheet : pack) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            if (cell.getCellType() == CellType.FORMULA) {
              Row other = plain.getSheet(sheet.getSheetName()).getRow(row.getRowNum());
              String where = sheet.getSheetName() + " " + cell.getAddress();
              assertEquals(shown(cell), shown(other.getCell(cell.getColumnIndex())), where);
              compared++;
            }
          }
        }
      }
    }
    assertTrue(compared >= 78, compared + " figures");
  }

  private String shown(Cell cell) {
    return formatter.formatCellValue(cell);
  }

  private static XSSFWorkbook open(String form) throws IOException {
    try (InputStream in = Files.newInputStream(Path.of("starters", form, "class.xlsx"))) {
      return new XSSFWorkbook(in);
    }
  }
}
