package washbook.samples.sheets;

import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import washbook.functions.SafetyNote;
import washbook.functions.log.CellAddress;
import washbook.samples.sheets.Book.Look;

/**
 * A sheet to fill in: a line for each value, with its unit and a word of explanation. What a person
 * types stands on a tinted ground; everything else is reckoned.
 */
final class Form {
  private static final String PAPER = "FBF3DC";
  private static final String HEADING = "D9E4E8";
  private static final int LABEL = 0;
  private static final int VALUE = 1;
  private static final int UNIT = 2;
  private static final int WORDS = 3;
  private static final int LINE_POINTS = 14;

  private final Book book;
  private final XSSFSheet sheet;
  private final int lastColumn;
  private int row;

  Form(Book book, String name, int lastColumn) {
    this.book = book;
    this.sheet = book.sheet(name);
    this.lastColumn = lastColumn;
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setFitWidth((short) 1);
    sheet.getPrintSetup().setFitHeight((short) 0);
    sheet.getPrintSetup().setLandscape(lastColumn > 5);
  }

  XSSFSheet sheet() {
    return sheet;
  }

  int row() {
    return row;
  }

  /** The sheet's title, what it is for, and the safety note. */
  Form head(String title, String purpose, int safetyLines) {
    book.put(sheet, row++, 0, title, Look.TITLE);
    across(purpose, 2);
    across(SafetyNote.text(), safetyLines);
    row++;
    return this;
  }

  /** A text over the width of the sheet. */
  Form across(String text, int lines) {
    book.put(sheet, row, 0, text, Look.WRAPPED);
    sheet.addMergedRegion(new CellRangeAddress(row, row, 0, lastColumn));
    sheet.getRow(row).setHeightInPoints(LINE_POINTS * lines);
    row++;
    return this;
  }

  Form section(String title) {
    row++;
    for (int column = 0; column <= lastColumn; column++) {
      book.put(sheet, row, column, column == 0 ? title : null, Look.head(HEADING));
    }
    row++;
    return this;
  }

  /** A value to type; gives its absolute address. */
  String input(String label, Object value, String format, String unit, String words) {
    line(label, unit, words);
    book.put(sheet, row, VALUE, value, Look.input(format, PAPER));
    return address();
  }

  /** A reckoned value that stays empty while one of its numbers is missing. */
  String result(String label, String formula, String format, String unit, String words) {
    line(label, unit, words);
    Cell cell = book.put(sheet, row, VALUE, null, Look.number(format));
    cell.setCellFormula(formula);
    return address();
  }

  private void line(String label, String unit, String words) {
    book.put(sheet, row, LABEL, label, Look.PLAIN);
    book.put(sheet, row, UNIT, unit, Look.PLAIN);
    book.put(sheet, row, WORDS, words, Look.PLAIN);
  }

  private String address() {
    String address = "$" + CellAddress.letters(VALUE) + "$" + (row + 1);
    row++;
    return address;
  }

  /** A table to type into: heads, and tinted rows under them; gives the number of its first row. */
  int table(int rows, String[] heads, Object[][] values, String... formats) {
    for (int column = 0; column < heads.length; column++) {
      book.put(sheet, row, column, heads[column], Look.head(HEADING));
    }
    row++;
    int first = row + 1;
    for (int i = 0; i < rows; i++) {
      for (int column = 0; column < formats.length; column++) {
        Object value = i < values.length ? values[i][column] : null;
        book.put(sheet, row, column, value, Look.input(formats[column], PAPER));
      }
      row++;
    }
    return first;
  }

  /** {@code formula}, or nothing while one of the cells is not a number. */
  static String when(String formula, String... cells) {
    return "IF(COUNT("
        + String.join(",", cells)
        + ")<"
        + cells.length
        + ",\"\",WASHBOOK."
        + formula
        + ")";
  }
}
