package washbook.samples.sheets;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Date;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.Comment;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.ss.usermodel.FontFamily;
import org.apache.poi.ss.usermodel.FontScheme;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A workbook with the formatting that a person gives it. */
final class Book {
  /** A column's width counts digits; of a sentence's letters more fit into it. */
  private static final double LETTERS_PER_DIGIT = 1.1;

  static final double LINE_POINTS = 13;

  /** A line of a sentence, and what stands free below the last. */
  private static final double SENTENCE_POINTS = 12;

  private static final double BELOW_POINTS = 8;

  /** Between rows on paper: seen, and lighter than what is written. */
  private static final String RULE = "C4C4C4";

  /** When all of them were made, as far as a file says so. */
  private static final Date MADE = new Date(1_735_000_000_000L);

  /** How a cell looks. */
  record Look(
      String format,
      String background,
      boolean bold,
      boolean wrap,
      boolean framed,
      int points,
      HorizontalAlignment across) {
    /** The size that a workbook has by itself. */
    private static final int USUAL = 11;

    static final Look PLAIN = new Look("General", "", false, false, false);
    static final Look HEADLINE =
        new Look("General", "", true, false, false, 14, HorizontalAlignment.GENERAL);
    static final Look UNIT =
        new Look("General", "", false, false, false, USUAL, HorizontalAlignment.LEFT);
    static final Look TITLE = new Look("General", "", true, false, false);
    static final Look WRAPPED = new Look("General", "", false, true, false);

    Look(String format, String background, boolean bold, boolean wrap, boolean framed) {
      this(format, background, bold, wrap, framed, USUAL, HorizontalAlignment.GENERAL);
    }

    static Look head(String background) {
      return new Look("General", background, true, true, true);
    }

    /** A word in a column of words, clear of the number at its left. */
    Look left() {
      return new Look(format, background, bold, wrap, framed, points, HorizontalAlignment.LEFT);
    }

    Look wrapping() {
      return new Look(format, background, bold, true, framed, points, across);
    }

    /** A title that runs on over the blank cells at its right. */
    Look unwrapped() {
      return new Look(format, background, bold, false, framed, points, across);
    }

    Look strong() {
      return new Look(format, background, true, wrap, framed, points, across);
    }

    /** A head over numbers, which stand at the right. */
    Look right() {
      return new Look(format, background, bold, wrap, framed, points, HorizontalAlignment.RIGHT);
    }

    static Look number(String format) {
      return new Look(format, "", false, false, false);
    }

    /** A cell of a table that holds a formula. */
    static Look cell(String format) {
      return new Look(format, "", false, false, true);
    }

    static Look input(String format, String background) {
      return new Look(format, background, false, false, true);
    }
  }

  private final XSSFWorkbook workbook = new XSSFWorkbook();
  private final Map<Look, CellStyle> styles = new HashMap<>();
  private final boolean paper;

  Book(String title) {
    this(title, false);
  }

  /** One to be printed too, in a font that every machine has, or one of the same widths. */
  static Book forPaper(String title) {
    return new Book(title, true);
  }

  private Book(String title, boolean paper) {
    this.paper = paper;
    if (paper) {
      font(workbook.getFontAt(0), Look.USUAL);
      workbook.getFontAt(0).setScheme(FontScheme.NONE);
      workbook.getFontAt(0).setFamily(FontFamily.NOT_APPLICABLE);
    }
    workbook.getProperties().getCoreProperties().setTitle(title);
    workbook.getProperties().getCoreProperties().setCreated(Optional.of(MADE));
  }

  XSSFWorkbook workbook() {
    return workbook;
  }

  XSSFSheet sheet(String name) {
    return workbook.createSheet(name);
  }

  Cell put(Sheet sheet, int row, int column, Object value, Look look) {
    Row line = sheet.getRow(row) == null ? sheet.createRow(row) : sheet.getRow(row);
    Cell cell = line.createCell(column);
    if (value instanceof Number number) {
      cell.setCellValue(number.doubleValue());
    } else if (value instanceof LocalDate date) {
      cell.setCellValue(date);
    } else if (value instanceof LocalDateTime time) {
      cell.setCellValue(time);
    } else if (value instanceof LocalTime time) {
      cell.setCellValue(DateUtil.convertTime(time.toString()));
    } else if (value != null) {
      cell.setCellValue(value.toString());
    }
    cell.setCellStyle(style(look));
    return cell;
  }

  Cell formula(Sheet sheet, int row, int column, String formula, double result, Look look) {
    Cell cell = put(sheet, row, column, null, look);
    cell.setCellFormula(formula);
    cell.setCellValue(result);
    return cell;
  }

  void widths(Sheet sheet, int... characters) {
    for (int i = 0; i < characters.length; i++) {
      sheet.setColumnWidth(i, characters[i] * 256);
    }
  }

  void comment(Cell cell, String text) {
    ClientAnchor anchor = workbook.getCreationHelper().createClientAnchor();
    anchor.setCol1(cell.getColumnIndex() + 1);
    anchor.setCol2(cell.getColumnIndex() + 4);
    anchor.setRow1(cell.getRowIndex());
    anchor.setRow2(cell.getRowIndex() + 3);
    Comment comment = cell.getSheet().createDrawingPatriarch().createCellComment(anchor);
    comment.setString(workbook.getCreationHelper().createRichTextString(text));
    comment.setAuthor("cellar");
    cell.setCellComment(comment);
  }

  private CellStyle style(Look look) {
    return styles.computeIfAbsent(look, this::make);
  }

  private CellStyle make(Look look) {
    XSSFCellStyle style = workbook.createCellStyle();
    style.setDataFormat(workbook.createDataFormat().getFormat(look.format()));
    style.setWrapText(look.wrap());
    style.setVerticalAlignment(upright(look));
    if (look.bold() || paper) {
      Font font = workbook.createFont();
      font.setBold(look.bold());
      font(font, look.points());
      style.setFont(font);
    }
    if (look.across() != HorizontalAlignment.GENERAL) {
      style.setAlignment(look.across());
      style.setIndention((short) (look.across() == HorizontalAlignment.LEFT ? 1 : 0));
    }
    if (!look.background().isEmpty()) {
      style.setFillForegroundColor(new XSSFColor(bytes(look.background()), null));
      style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    }
    if (look.framed()) {
      BorderStyle line = look.bold() || paper ? BorderStyle.THIN : BorderStyle.HAIR;
      style.setBorderBottom(line);
      style.setBorderTop(line);
      if (paper && !look.bold()) {
        XSSFColor light = new XSSFColor(bytes(RULE), null);
        style.setBottomBorderColor(light);
        style.setTopBorderColor(light);
      }
    }
    return style;
  }

  /** On paper no letter touches the rule above it. */
  private VerticalAlignment upright(Look look) {
    boolean text = look.wrap() && !look.framed();
    return paper && !text
        ? VerticalAlignment.CENTER
        : paper || look.wrap() ? VerticalAlignment.TOP : VerticalAlignment.BOTTOM;
  }

  private void font(Font font, int points) {
    font.setFontHeightInPoints((short) (paper ? points - 1 : points));
    if (paper) {
      font.setFontName("Arial");
    }
  }

  /** Rows are as high as the texts that run over several columns need. */
  private static void giveRoom(XSSFSheet sheet) {
    for (CellRangeAddress area : sheet.getMergedRegions()) {
      Row row = sheet.getRow(area.getFirstRow());
      Cell cell = row.getCell(area.getFirstColumn());
      if (cell != null && cell.getCellStyle().getWrapText()) {
        double width = 0;
        for (int column = area.getFirstColumn(); column <= area.getLastColumn(); column++) {
          width += sheet.isColumnHidden(column) ? 0 : sheet.getColumnWidth(column) / 256.0;
        }
        double letters = cell.getStringCellValue().length();
        int lines = (int) Math.ceil(letters / (width * LETTERS_PER_DIGIT));
        row.setHeightInPoints((float) (SENTENCE_POINTS * lines + BELOW_POINTS));
      }
    }
  }

  private static byte[] bytes(String hex) {
    int rgb = Integer.parseInt(hex, 16);
    return new byte[] {(byte) (rgb >> 16), (byte) (rgb >> 8), (byte) rgb};
  }

  void save(Path file) throws IOException {
    if (paper) {
      workbook.forEach(sheet -> giveRoom((XSSFSheet) sheet));
    }
    Files.createDirectories(file.toAbsolutePath().getParent());
    try (workbook;
        OutputStream out = Files.newOutputStream(file)) {
      workbook.write(out);
    }
  }
}
