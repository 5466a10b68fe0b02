package washbook.runner.card;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import washbook.runner.card.CardLayout.Line;
import washbook.runner.card.CardLayout.Look;
import washbook.runner.card.CardLayout.Placed;
import washbook.runner.file.WrittenFile;

/** A card as a workbook of the kind .xlsx. */
final class CardXlsx {
  private static final String FONT = "Liberation Sans";
  private static final double LINE_POINTS = 12.5;
  private static final double INCH = 25.4;

  /** Width of a digit of the workbook's own font, and what stands around the text. */
  private static final double DIGIT_MM = 7 * INCH / 96;

  private final XSSFWorkbook book = new XSSFWorkbook();
  private final Map<String, XSSFCellStyle> styles = new HashMap<>();

  private CardXlsx() {}

  static void write(CardLayout layout, Paper paper, Path to) throws IOException {
    CardXlsx card = new CardXlsx();
    try (card.book;
        OutputStream out = WrittenFile.stream(to)) {
      card.fill(layout, paper);
      // In memory first: the library hides why a stream fails.
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      card.book.write(bytes);
      bytes.writeTo(out);
    }
  }

  private void fill(CardLayout layout, Paper paper) {
    // Widths of columns count in digits of this font.
    book.getFontAt(0).setFontName(FONT);
    book.getFontAt(0).setFontHeightInPoints((short) 10);
    XSSFSheet sheet = book.createSheet("Card");
    sheet.setDefaultRowHeightInPoints((float) LINE_POINTS);
    for (int i = 0; i < layout.columns(); i++) {
      double mm = i == 0 ? layout.firstMm() : layout.otherMm();
      sheet.setColumnWidth(i, (int) (mm / DIGIT_MM * 256));
    }
    for (int i = 0; i < layout.lines().size(); i++) {
      Line line = layout.lines().get(i);
      XSSFRow row = sheet.createRow(i);
      boolean title = line.cells().get(0).look() == Look.TITLE;
      row.setHeightInPoints((float) (title ? 22 : LINE_POINTS * line.lines()));
      line.cells().forEach(cell -> put(row, cell));
      if (line.across()) {
        sheet.addMergedRegion(new CellRangeAddress(i, i, 0, layout.columns() - 1));
      }
      if (line.newPage()) {
        sheet.setRowBreak(i - 1);
      }
    }
    onPaper(sheet, layout, paper);
  }

  private void onPaper(XSSFSheet sheet, CardLayout layout, Paper paper) {
    sheet.setFitToPage(true);
    PrintSetup print = sheet.getPrintSetup();
    print.setPaperSize(paper == Paper.A4 ? PrintSetup.A4_PAPERSIZE : PrintSetup.LETTER_PAPERSIZE);
    print.setFitWidth((short) 1);
    print.setFitHeight((short) 0);
    for (PageMargin side :
        new PageMargin[] {PageMargin.LEFT, PageMargin.RIGHT, PageMargin.TOP, PageMargin.BOTTOM}) {
      sheet.setMargin(side, Paper.MARGIN / INCH);
    }
    if (layout.repeatedRow() >= 0) {
      int row = layout.repeatedRow();
      sheet.setRepeatingRows(new CellRangeAddress(row, row, -1, -1));
    }
    book.setPrintArea(0, 0, layout.columns() - 1, 0, layout.lines().size() - 1);
  }

  private void put(XSSFRow row, Placed placed) {
    XSSFCell cell = row.createCell(placed.column());
    cell.setCellStyle(style(placed));
    if (!placed.formula().isEmpty()) {
      cell.setCellFormula(placed.formula().replace("[", "").replace("]", ""));
    }
    if (Double.isNaN(placed.number())) {
      cell.setCellValue(placed.text());
    } else {
      cell.setCellValue(placed.number());
    }
  }

  private XSSFCellStyle style(Placed placed) {
    String format = format(placed);
    return styles.computeIfAbsent(placed.look() + format, name -> make(placed.look(), format));
  }

  /** The number format; that of text for texts. */
  static String format(Placed placed) {
    if (Double.isNaN(placed.number()) && placed.look() != Look.VALUE) {
      return "General";
    }
    String digits = placed.decimals() == 0 ? "0" : "0." + "0".repeat(placed.decimals());
    return placed.signed() ? "+" + digits + ";-" + digits + ";" + digits : digits;
  }

  private XSSFCellStyle make(Look look, String format) {
    XSSFCellStyle style = book.createCellStyle();
    XSSFFont font = book.createFont();
    font.setFontName(FONT);
    font.setFontHeightInPoints((short) (look == Look.TITLE ? 15 : 9));
    font.setBold(
        look == Look.TITLE || look == Look.CAPTION || look == Look.HEAD || look == Look.ROW);
    style.setFont(font);
    style.setDataFormat(book.createDataFormat().getFormat(format));
    style.setVerticalAlignment(VerticalAlignment.CENTER);
    switch (look) {
      case NOTE -> {
        style.setWrapText(true);
        style.setVerticalAlignment(VerticalAlignment.TOP);
      }
      case CAPTION -> font.setColor(accent());
      case INPUT -> {
        style.setBorderBottom(BorderStyle.THIN);
        style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
        style.setFillForegroundColor(colour(CardOds.TINT));
      }
      case HEAD -> {
        style.setWrapText(true);
        style.setAlignment(HorizontalAlignment.RIGHT);
        style.setVerticalAlignment(VerticalAlignment.BOTTOM);
        style.setBorderBottom(BorderStyle.MEDIUM);
      }
      case ROW, VALUE -> {
        style.setAlignment(HorizontalAlignment.RIGHT);
        style.setBorderBottom(BorderStyle.THIN);
        style.setBottomBorderColor(colour(Drawing.HAIRLINE));
      }
      default -> {}
    }
    return style;
  }

  private static XSSFColor accent() {
    return colour(Drawing.ACCENT);
  }

  private static XSSFColor colour(String hex) {
    int rgb = Integer.parseInt(hex.substring(1), 16);
    return new XSSFColor(new byte[] {(byte) (rgb >> 16), (byte) (rgb >> 8), (byte) rgb}, null);
  }
}
