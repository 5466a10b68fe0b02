package washbook.samples.sheets;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import washbook.functions.SafetyNote;
import washbook.log.sheet.CellAddress;
import washbook.samples.sheets.Book.Look;

/**
 * A sheet to fill in: a line for each value, with its unit and a word of explanation. What a person
 * types stands on a tinted ground; everything else is calculated.
 */
final class Form {
  static final String PAPER = "FBF3DC";
  static final String HEADING = "D9E4E8";
  private static final byte[] WARNING = {(byte) 0xF8, (byte) 0xC9, (byte) 0xC0};
  private static final int LABEL = 0;
  static final double LINE_POINTS = 15;
  private static final double MARGIN_INCHES = 0.4;

  private final Book book;
  private final XSSFSheet sheet;
  private final int lastColumn;
  private final int value;
  private final boolean portable;
  private int row;

  /**
   * @param value the column of the values beside their labels
   * @param portable whether it does without the Washbook functions, so that only formulas with a
   *     plain form can stand in it
   */
  Form(Book book, String name, int lastColumn, int value, boolean portable) {
    this.portable = portable;
    this.book = book;
    this.sheet = book.sheet(name);
    this.lastColumn = lastColumn;
    this.value = value;
    sheet.getPrintSetup().setLandscape(lastColumn > 5);
    onPaper(sheet, 0);
  }

  /** A4, as wide as the sheet of paper, with its name and the number of the page below. */
  static void onPaper(XSSFSheet sheet, int pagesHigh) {
    sheet.setDefaultRowHeightInPoints((float) LINE_POINTS);
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setPaperSize(PrintSetup.A4_PAPERSIZE);
    sheet.getPrintSetup().setFitWidth((short) 1);
    sheet.getPrintSetup().setFitHeight((short) pagesHigh);
    for (PageMargin side : new PageMargin[] {PageMargin.LEFT, PageMargin.RIGHT, PageMargin.TOP}) {
      sheet.setMargin(side, MARGIN_INCHES);
    }
    sheet.getFooter().setLeft("&A");
    sheet.getFooter().setRight("&P / &N");
  }

  /** Only what is written so far is printed, from the first cell to this row and column. */
  static void printed(XSSFSheet sheet, int lastRow, int lastColumn) {
    XSSFWorkbook workbook = sheet.getWorkbook();
    workbook.setPrintArea(workbook.getSheetIndex(sheet), 0, lastColumn, 0, lastRow);
  }

  /** These cells too, on a page of their own. */
  static void alsoPrinted(XSSFSheet sheet, int row, int column, int lastRow, int lastColumn) {
    XSSFWorkbook workbook = sheet.getWorkbook();
    int index = workbook.getSheetIndex(sheet);
    String area = workbook.getPrintArea(index);
    String own = area.substring(area.indexOf('!') + 1);
    String first = new CellReference(row, column, true, true).formatAsString();
    String last = new CellReference(lastRow, lastColumn, true, true).formatAsString();
    workbook.setPrintArea(index, own + "," + first + ":" + last);
  }

  /** Nothing is printed below and right of what the form holds now. */
  void done() {
    printed(sheet, sheet.getLastRowNum(), lastColumn);
  }

  XSSFSheet sheet() {
    return sheet;
  }

  int row() {
    return row;
  }

  /** The first in a sheet that uses the functions, the second in one that does without. */
  String either(String withFunctions, String plain) {
    return portable ? plain : withFunctions;
  }

  /** Only these words can be chosen in a cell. */
  Form choose(String address, String... words) {
    return check(
        sheet.getDataValidationHelper().createExplicitListConstraint(words),
        address,
        "Choose one of: " + String.join(", ", words));
  }

  /** Only numbers from {@code least} to {@code most} can be typed into the cells. */
  Form between(String area, double least, double most, String message) {
    return check(
        sheet
            .getDataValidationHelper()
            .createDecimalConstraint(
                DataValidationConstraint.OperatorType.BETWEEN,
                Double.toString(least),
                Double.toString(most)),
        area,
        message);
  }

  private Form check(DataValidationConstraint constraint, String area, String message) {
    CellRangeAddressList cells = new CellRangeAddressList();
    cells.addCellRangeAddress(CellRangeAddress.valueOf(area.replace("$", "")));
    DataValidation check = sheet.getDataValidationHelper().createValidation(constraint, cells);
    check.setShowErrorBox(true);
    check.createErrorBox("Not possible here", message);
    check.setShowPromptBox(true);
    check.createPromptBox("", message);
    check.setEmptyCellAllowed(true);
    sheet.addValidationData(check);
    return this;
  }

  /** Cells stand out in dark letters on red where the formula, of the first one, is true. */
  void warn(String area, String formula) {
    var rules = sheet.getSheetConditionalFormatting();
    var rule = rules.createConditionalFormattingRule(formula);
    rule.createPatternFormatting().setFillBackgroundColor(new XSSFColor(WARNING, null));
    rules.addConditionalFormatting(new CellRangeAddress[] {CellRangeAddress.valueOf(area)}, rule);
  }

  /** A note on a cell, shown when one points at it. */
  Form caution(String address, String text) {
    CellReference at = new CellReference(address);
    book.comment(sheet.getRow(at.getRow()).getCell(at.getCol()), text);
    return this;
  }

  /** The sheet's title, what it is for, and the safety note. */
  Form head(String title, String purpose, int safetyLines) {
    book.put(sheet, row, 0, title, Look.HEADLINE);
    sheet.getRow(row++).setHeightInPoints(21);
    across(
        purpose
            + either(
                " Needs the Washbook functions in LibreOffice Calc. Where a cell shows #NAME? they"
                    + " are missing: install the extension washbook.oxt, or use the form of this"
                    + " sheet in plain formulas.",
                " Plain formulas only, so it needs nothing installed; what cannot be had that way"
                    + " is left out."),
        lastColumn < 6 ? 3 : 2);
    across(SafetyNote.text(), safetyLines);
    row++;
    return this;
  }

  /** The line now written is done. */
  void next() {
    sheet.getRow(row).setHeightInPoints((float) LINE_POINTS);
    row++;
  }

  /** A text over the width of the sheet. */
  Form across(String text, int lines) {
    book.put(sheet, row, 0, text, Look.WRAPPED);
    sheet.addMergedRegion(new CellRangeAddress(row, row, 0, lastColumn));
    sheet.getRow(row).setHeightInPoints((float) (LINE_POINTS * lines));
    row++;
    return this;
  }

  Form section(String title) {
    row++;
    for (int column = 0; column <= lastColumn; column++) {
      Look look = column == 0 ? Look.head(HEADING).unwrapped() : Look.head(HEADING);
      book.put(sheet, row, column, column == 0 ? title : null, look);
    }
    row++;
    return this;
  }

  /** A unit stands below what it is of, never in two lines. */
  static String headText(String head) {
    return head == null ? null : head.replace(" (", "\n(");
  }

  /** The head over a column whose cells are shown so. */
  static Look head(String format) {
    Look head = Look.head(HEADING);
    return format.equals("General") ? head.left() : head.right();
  }

  /** A cell of a table, to type into or not; words stand clear of the column at their left. */
  static Look cell(String format, boolean typed) {
    Look cell = typed ? Look.input(format, PAPER) : Look.cell(shown(format));
    return format.equals("General") ? cell.left() : cell;
  }

  /** The office opens an .ods with 0 where a formula gave an empty text; so none is shown. */
  private static String shown(String format) {
    return format.equals("General") ? "General;-General;;@" : format;
  }

  /** A value to type; gives its absolute address. */
  String input(String label, Object value, String format, String unit, String words) {
    line(label, unit, words);
    book.put(sheet, row, this.value, value, Look.input(format, PAPER));
    return address();
  }

  /** A calculated value that stays empty while one of its numbers is missing; no line for null. */
  String result(String label, String formula, String format, String unit, String words) {
    if (formula == null) {
      return null;
    }
    line(label, unit, words);
    Cell cell = book.put(sheet, row, value, null, Look.number(shown(format)));
    cell.setCellFormula(formula);
    return address();
  }

  private void line(String label, String unit, String words) {
    book.put(sheet, row, LABEL, label, Look.PLAIN);
    sheet.getRow(row).setHeightInPoints((float) LINE_POINTS);
    if (value > 1) {
      sheet.addMergedRegion(new CellRangeAddress(row, row, LABEL, value - 1));
    }
    if (!unit.isEmpty()) {
      book.put(sheet, row, value + 1, unit, Look.UNIT);
    }
    if (!words.isEmpty()) {
      book.put(sheet, row, value + 2, words, Look.PLAIN);
    }
  }

  /**
   * A line with a value in each of the next columns: a number to type, or text that is a formula;
   * gives their addresses.
   */
  List<String> series(String label, List<?> values, String format, String unit, boolean typed) {
    book.put(sheet, row, LABEL, label, Look.PLAIN);
    sheet.getRow(row).setHeightInPoints((float) LINE_POINTS);
    List<String> addresses = new ArrayList<>();
    for (int i = 0; i < values.size(); i++) {
      Object each = values.get(i);
      Look look = typed ? Look.input(format, PAPER) : Look.cell(format);
      Cell cell = book.put(sheet, row, value + i, typed ? each : null, look);
      if (!typed) {
        cell.setCellFormula(each.toString());
      }
      addresses.add("$" + CellAddress.letters(value + i) + "$" + (row + 1));
    }
    book.put(sheet, row, value + values.size(), unit, Look.UNIT);
    row++;
    return addresses;
  }

  private String address() {
    String address = "$" + CellAddress.letters(value) + "$" + (row + 1);
    row++;
    return address;
  }

  /** A table to type into: heads, and tinted rows under them; gives the number of its first row. */
  int table(int rows, String[] heads, Object[][] values, String... formats) {
    for (int column = 0; column <= lastColumn; column++) {
      String head = column < heads.length ? heads[column] : null;
      String format = column < formats.length ? formats[column] : "General";
      book.put(sheet, row, column, headText(head), head(format));
    }
    row++;
    int first = row + 1;
    for (int i = 0; i < rows; i++) {
      for (int column = 0; column < formats.length; column++) {
        Object value = i < values.length ? values[i][column] : null;
        book.put(sheet, row, column, value, cell(formats[column], true));
      }
      row++;
    }
    return first;
  }

  /** A call of a function, or nothing while one of the cells is not a number. */
  static String when(String call, String... cells) {
    return plain("WASHBOOK." + call, cells);
  }

  /** A formula, or nothing while one of the cells is not a number. */
  static String plain(String formula, String... cells) {
    for (String cell : cells) {
      if (cell == null) {
        return null;
      }
    }
    return "IF(COUNT(" + String.join(",", cells) + ")<" + cells.length + ",\"\"," + formula + ")";
  }
}
