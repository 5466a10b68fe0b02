package washbook.runner.season;

import java.util.Arrays;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * The looks of the cells in the workbook. Fonts and looks that an older one has already are used
 * again: else each day of a season would add some, and programs have limits for them.
 */
final class SeasonStyles {
  private static final String GENERAL = "General";
  private static final String INK = "23201C";
  private static final String SHADED = "F4EFE6";

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
    XSSFFont usual = font(10, false, INK);
    XSSFFont bold = font(10, true, INK);
    line = style(usual, false, GENERAL, false);
    plain = style(usual, true, GENERAL, false);
    name = style(bold, true, GENERAL, false);
    title = style(font(14, true, INK), false, GENERAL, false);
    note = style(font(10, false, "6B645B"), true, GENERAL, false);
    head = style(bold, true, GENERAL, true);
    date = style(usual, false, "yyyy-mm-dd", false);
    link = style(font(10, false, "1D5F8A"), false, GENERAL, false);
    // Clear of the number left of it.
    warning = style(font(10, false, "A3231B"), true, GENERAL, false, 1);
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = style(usual, false, i == 0 ? "0" : "0." + "0".repeat(i), false);
    }
  }

  XSSFCellStyle number(int decimals) {
    return numbers[decimals];
  }

  private XSSFCellStyle style(XSSFFont font, boolean wraps, String format, boolean shaded) {
    return style(font, wraps, format, shaded, 0);
  }

  private XSSFCellStyle style(
      XSSFFont font, boolean wraps, String format, boolean shaded, int indent) {
    for (int i = 0; i < book.getNumCellStyles(); i++) {
      XSSFCellStyle one = book.getCellStyleAt(i);
      if (one.getFontIndex() == font.getIndex()
          && one.getWrapText() == wraps
          && one.getDataFormatString().equals(format)
          && isPlaced(one, indent)
          && isShaded(one) == shaded
          && isFramed(one, shaded)) {
        return one;
      }
    }
    XSSFCellStyle style = book.createCellStyle();
    style.setFont(font);
    style.setVerticalAlignment(VerticalAlignment.TOP);
    style.setWrapText(wraps);
    if (indent > 0) {
      style.setAlignment(HorizontalAlignment.LEFT);
      style.setIndention((short) indent);
    }
    style.setDataFormat(book.createDataFormat().getFormat(format));
    if (shaded) {
      style.setFillForegroundColor(colour(SHADED));
      style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
      style.setBorderBottom(BorderStyle.THIN);
    }
    return style;
  }

  private static boolean isPlaced(XSSFCellStyle style, int indent) {
    HorizontalAlignment across =
        indent > 0 ? HorizontalAlignment.LEFT : HorizontalAlignment.GENERAL;
    return style.getVerticalAlignment() == VerticalAlignment.TOP
        && style.getAlignment() == across
        && style.getIndention() == indent
        && style.getRotation() == 0
        && !style.getShrinkToFit()
        && style.getLocked()
        && !style.getHidden();
  }

  /** A pattern of another colour is neither shaded nor plain. */
  private static boolean isShaded(XSSFCellStyle style) {
    return style.getFillPattern() == FillPatternType.SOLID_FOREGROUND
        && isSame(style.getFillForegroundXSSFColor(), SHADED);
  }

  private static boolean isFramed(XSSFCellStyle style, boolean shaded) {
    boolean filled = style.getFillPattern() != FillPatternType.NO_FILL;
    return filled == shaded
        && style.getBorderBottom() == (shaded ? BorderStyle.THIN : BorderStyle.NONE)
        && style.getBorderTop() == BorderStyle.NONE
        && style.getBorderLeft() == BorderStyle.NONE
        && style.getBorderRight() == BorderStyle.NONE;
  }

  private XSSFFont font(int points, boolean bold, String rgb) {
    for (int i = 0; i < book.getNumberOfFonts(); i++) {
      XSSFFont one = book.getFontAt(i);
      if (one.getFontHeightInPoints() == points
          && one.getBold() == bold
          && isSame(one.getXSSFColor(), rgb)
          && one.getFontName().equals(XSSFFont.DEFAULT_FONT_NAME)
          && !one.getItalic()
          && !one.getStrikeout()
          && one.getUnderline() == Font.U_NONE
          && one.getTypeOffset() == Font.SS_NONE) {
        return one;
      }
    }
    XSSFFont font = book.createFont();
    font.setFontHeightInPoints((short) points);
    font.setBold(bold);
    font.setColor(colour(rgb));
    return font;
  }

  private static boolean isSame(XSSFColor colour, String rgb) {
    return colour != null && Arrays.equals(colour.getRGB(), colour(rgb).getRGB());
  }

  private static XSSFColor colour(String rgb) {
    int value = Integer.parseInt(rgb, 16);
    return new XSSFColor(
        new byte[] {(byte) (value >> 16), (byte) (value >> 8), (byte) value}, null);
  }
}
