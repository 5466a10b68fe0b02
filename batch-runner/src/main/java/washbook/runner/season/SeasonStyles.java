package washbook.runner.season;

import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The looks of the cells in the workbook; looks that an older one has already are used again. */
final class SeasonStyles {
  /** Of words that run on over what is blank right of them. */
  final XSSFCellStyle line;

  final XSSFCellStyle plain;
  final XSSFCellStyle name;
  final XSSFCellStyle title;
  final XSSFCellStyle note;
  final XSSFCellStyle head;
  final XSSFCellStyle date;
  final XSSFCellStyle link;
  final XSSFCellStyle warning;
  private final XSSFCellStyle[] numbers = new XSSFCellStyle[5];
  private final XSSFWorkbook book;

  SeasonStyles(XSSFWorkbook book) {
    this.book = book;
    XSSFFont usual = font(10, false, "23201C");
    line = style(usual);
    plain = style(usual);
    plain.setWrapText(true);
    name = style(font(10, true, "23201C"));
    name.setWrapText(true);
    title = style(font(14, true, "23201C"));
    note = style(font(10, false, "6B645B"));
    note.setWrapText(true);
    head = style(font(10, true, "23201C"));
    head.setWrapText(true);
    head.setFillForegroundColor(colour("F4EFE6"));
    head.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    head.setBorderBottom(BorderStyle.THIN);
    date = style(usual);
    date.setDataFormat(book.createDataFormat().getFormat("yyyy-mm-dd"));
    XSSFFont linked = font(10, false, "1D5F8A");
    link = style(linked);
    warning = style(font(10, false, "A3231B"));
    warning.setWrapText(true);
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = style(usual);
      String zeros = "0".repeat(i);
      numbers[i].setDataFormat(book.createDataFormat().getFormat(i == 0 ? "0" : "0." + zeros));
    }
  }

  XSSFCellStyle number(int decimals) {
    return numbers[decimals];
  }

  private XSSFCellStyle style(XSSFFont font) {
    XSSFCellStyle style = book.createCellStyle();
    style.setFont(font);
    style.setVerticalAlignment(VerticalAlignment.TOP);
    return style;
  }

  private XSSFFont font(int points, boolean bold, String rgb) {
    XSSFFont font = book.createFont();
    font.setFontHeightInPoints((short) points);
    font.setBold(bold);
    font.setColor(colour(rgb));
    return font;
  }

  private static XSSFColor colour(String rgb) {
    int value = Integer.parseInt(rgb, 16);
    return new XSSFColor(
        new byte[] {(byte) (value >> 16), (byte) (value >> 8), (byte) value}, null);
  }
}
