package washbook.samples.sheets;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** One sheet read by a library that the program does not use for it: numbers and texts by place. */
final class Cellwise {
  private final List<List<Object>> rows;

  private Cellwise(List<List<Object>> rows) {
    this.rows = rows;
  }

  static Cellwise workbook(Path file, String sheet) throws IOException {
    List<List<Object>> rows = new ArrayList<>();
    try (InputStream in = Files.newInputStream(file);
        XSSFWorkbook workbook = new XSSFWorkbook(in)) {
      Sheet from = workbook.getSheet(sheet);
      for (int r = 0; r <= from.getLastRowNum(); r++) {
        Row row = from.getRow(r);
        List<Object> cells = new ArrayList<>();
        for (int c = 0; row != null && c < row.getLastCellNum(); c++) {
          cells.add(value(row.getCell(c)));
        }
        rows.add(cells);
      }
    }
    return new Cellwise(rows);
  }

  private static Object value(Cell cell) {
    if (cell == null || cell.getCellType() == CellType.BLANK) {
      return null;
    }
    CellType type =
        cell.getCellType() == CellType.FORMULA
            ? cell.getCachedFormulaResultType()
            : cell.getCellType();
    return type == CellType.NUMERIC
        ? (Object) cell.getNumericCellValue()
        : cell.getStringCellValue();
  }

  /** Semicolons and decimal commas; quotes as the sample has them. */
  static Cellwise text(Path file) throws IOException {
    List<List<Object>> rows = new ArrayList<>();
    for (String line : Files.readString(file, StandardCharsets.UTF_8).split("\r\n")) {
      List<Object> cells = new ArrayList<>();
      for (String cell : line.split(";(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1)) {
        boolean number = cell.matches("-?\\d+(,\\d+)?");
        cells.add(number ? (Object) Double.valueOf(cell.replace(',', '.')) : cell);
      }
      rows.add(cells);
    }
    return new Cellwise(rows);
  }

  Object at(int row, int column) {
    boolean inside = row < rows.size() && column < rows.get(row).size();
    return inside ? rows.get(row).get(column) : null;
  }

  /** A number as a person reads it: 1,055 and ~1.023 too; NaN for none. */
  double number(int row, int column) {
    Object value = at(row, column);
    if (value instanceof Double number) {
      return number;
    }
    if (value == null || value.toString().isEmpty()) {
      return Double.NaN;
    }
    return Double.parseDouble(value.toString().replace("~", "").replace(',', '.'));
  }

  String string(int row, int column) {
    Object value = at(row, column);
    return value == null ? "" : value.toString();
  }

  int rowCount() {
    return rows.size();
  }
}
