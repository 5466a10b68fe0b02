package washbook.runner.corpus;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.filesystem.Entry;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import washbook.log.sheet.CellAddress;

/** All that an .xls workbook holds, as far as POI can tell, in a form that can be compared. */
public final class XlsCells {
  private XlsCells() {}

  public static Map<String, String> of(Path file) throws IOException {
    Map<String, String> all = new TreeMap<>();
    try (POIFSFileSystem files = new POIFSFileSystem(file.toFile(), true);
        HSSFWorkbook workbook = new HSSFWorkbook(files)) {
      files.getRoot().getEntries().forEachRemaining(e -> all.put("stream " + name(e), ""));
      all.put("pictures", String.valueOf(workbook.getAllPictures().size()));
      workbook
          .getAllNames()
          .forEach(name -> all.merge("name " + name.getNameName(), refersTo(name), String::concat));
      for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
        Sheet sheet = workbook.getSheetAt(i);
        String prefix = i + " " + workbook.getSheetName(i) + "!";
        all.put(prefix, sheet.getMergedRegions() + " " + workbook.getSheetVisibility(i));
        all.put(prefix + " comments", comments(sheet));
        all.put(
            prefix + " conditions",
            "" + sheet.getSheetConditionalFormatting().getNumConditionalFormattings());
        for (Row row : sheet) {
          for (Cell cell : row) {
            if (cell.getCellType() != CellType.BLANK) {
              all.put(
                  prefix + CellAddress.of(cell.getRowIndex(), cell.getColumnIndex()), say(cell));
            }
          }
        }
      }
    }
    return all;
  }

  private static String refersTo(Name name) {
    try {
      return String.valueOf(name.getRefersToFormula());
    } catch (RuntimeException e) {
      return e.toString();
    }
  }

  /** Capitals do not count in the names of streams. */
  private static String name(Entry entry) {
    return entry.getName().toLowerCase(Locale.ROOT);
  }

  /** The entries that two workbooks do not share. */
  public static Map<String, String> difference(Map<String, String> one, Map<String, String> other) {
    Map<String, String> difference = new TreeMap<>();
    one.forEach(
        (key, value) -> {
          if (!value.equals(other.get(key))) {
            difference.put(key, value + " / " + other.get(key));
          }
        });
    other.forEach(
        (key, value) -> {
          if (!one.containsKey(key)) {
            difference.put(key, "nothing / " + value);
          }
        });
    return difference;
  }

  private static String comments(Sheet sheet) {
    try {
      return sheet.getCellComments().keySet().toString();
    } catch (RuntimeException e) {
      return "beyond POI: " + e.getMessage();
    }
  }

  private static String style(Cell cell) {
    try {
      return String.valueOf(cell.getCellStyle().getIndex());
    } catch (IllegalStateException e) {
      return "none that the workbook has";
    }
  }

  private static String say(Cell cell) {
    boolean formula = cell.getCellType() == CellType.FORMULA;
    CellType type = formula ? cell.getCachedFormulaResultType() : cell.getCellType();
    String value =
        switch (type) {
          case NUMERIC -> "n" + Double.doubleToLongBits(cell.getNumericCellValue());
          case STRING -> "t" + cell.getStringCellValue();
          case BOOLEAN -> "b" + cell.getBooleanCellValue();
          case ERROR -> "e" + cell.getErrorCellValue();
          default -> type.name();
        };
    String text = "";
    if (formula) {
      try {
        text = "=" + cell.getCellFormula();
      } catch (RuntimeException e) {
        text = "=?" + e.getClass();
      }
    }
    return value + text + " style " + style(cell);
  }
}
