package washbook.runner;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.Comment;
import org.apache.poi.ss.usermodel.CreationHelper;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** OpenDocument spreadsheets for tests. */
public final class OdsSamples {
  private OdsSamples() {}

  /** Header row of {@link #log}, from 0. */
  public static final int HEADER = 2;

  /** Last row with a reading. */
  public static final int LAST = 8;

  /** What the office makes of the log, which is the same each time. */
  private static byte[] saved;

  /**
   * A log saved by the office: title over merged cells, coloured headers, dates, times, a blank
   * row, formulas with and without an error, a percentage, a truth, spaces, line feeds, a comment,
   * and a second sheet with columns and rows of equal cells.
   */
  public static Path log(Path directory) throws IOException, InterruptedException {
    if (saved == null) {
      saved = Files.readAllBytes(savedByTheOffice(directory));
    }
    return Files.write(Files.createTempDirectory(directory, "saved").resolve("plum.ods"), saved);
  }

  private static Path savedByTheOffice(Path directory) throws IOException, InterruptedException {
    Path xlsx = directory.resolve("plum.xlsx");
    try (Workbook workbook = new XSSFWorkbook()) {
      Sheet sheet = workbook.createSheet("Plum 3");
      sheet.createRow(0).createCell(0).setCellValue("Plum 3, first pressing");
      sheet.addMergedRegion(new CellRangeAddress(0, 0, 0, 3));
      Row header = sheet.createRow(HEADER);
      CellStyle colour = workbook.createCellStyle();
      colour.setFillForegroundColor(IndexedColors.LIGHT_YELLOW.getIndex());
      colour.setFillPattern(FillPatternType.SOLID_FOREGROUND);
      for (String word : List.of("Date", "Gravity", "Points", "Share", "Note")) {
        Cell cell = header.createCell(header.getPhysicalNumberOfCells());
        cell.setCellValue(word);
        cell.setCellStyle(colour);
      }
      CellStyle date = style(workbook, "yyyy-mm-dd");
      CellStyle moment = style(workbook, "yyyy-mm-dd hh:mm");
      CellStyle percent = style(workbook, "0.0%");
      for (int i = HEADER + 1; i <= LAST; i++) {
        if (i == 6) {
          continue;
        }
        Row row = sheet.createRow(i);
        row.createCell(0).setCellValue(LocalDate.of(2024, 9, i));
        row.getCell(0).setCellStyle(i == 4 ? moment : date);
        row.createCell(1).setCellValue(1.085 - i / 100.0);
        row.createCell(2).setCellFormula(i == 5 ? "1/0" : "(B" + (i + 1) + "-1)*1000");
        row.createCell(3).setCellValue(i / 10.0);
        row.getCell(3).setCellStyle(percent);
      }
      sheet.getRow(3).createCell(4).setCellValue("two  spaces\nand a line ");
      sheet.getRow(4).createCell(4).setCellValue(true);
      sheet.getRow(5).createCell(4).setCellValue("a < b & c");
      sheet.getRow(7).createCell(4).setCellFormula("IF(B8>1,\"yes\",\"no\")");
      comment(workbook, sheet, sheet.getRow(3).getCell(1));
      Sheet constant = workbook.createSheet("Same & again");
      for (int i = 0; i < 12; i++) {
        Row row = constant.createRow(i);
        for (int column = 0; column < 5; column++) {
          row.createCell(column).setCellValue(column == 0 ? 7 : 8);
        }
      }
      workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
      try (OutputStream out = Files.newOutputStream(xlsx)) {
        workbook.write(out);
      }
    }
    return new Office(directory).convert(xlsx, "ods").resolve("plum.ods");
  }

  private static CellStyle style(Workbook workbook, String format) {
    CellStyle style = workbook.createCellStyle();
    style.setDataFormat(workbook.createDataFormat().getFormat(format));
    return style;
  }

  private static void comment(Workbook workbook, Sheet sheet, Cell cell) {
    CreationHelper helper = workbook.getCreationHelper();
    ClientAnchor anchor = helper.createClientAnchor();
    Comment comment = sheet.createDrawingPatriarch().createCellComment(anchor);
    comment.setString(helper.createRichTextString("read twice"));
    cell.setCellComment(comment);
  }

  private static final String ROOT =
      "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<office:document-content"
          + " xmlns:office=\"urn:oasis:names:tc:opendocument:xmlns:office:1.0\""
          + " xmlns:table=\"urn:oasis:names:tc:opendocument:xmlns:table:1.0\""
          + " xmlns:text=\"urn:oasis:names:tc:opendocument:xmlns:text:1.0\""
          + " xmlns:style=\"urn:oasis:names:tc:opendocument:xmlns:style:1.0\""
          + " xmlns:number=\"urn:oasis:names:tc:opendocument:xmlns:datastyle:1.0\""
          + " xmlns:of=\"urn:oasis:names:tc:opendocument:xmlns:of:1.2\""
          + " xmlns:calcext=\"urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0\""
          + " office:version=\"1.3\">";

  /** The content part around such styles and sheets. */
  public static String content(String styles, String sheets) {
    return ROOT
        + styles
        + "<office:body><office:spreadsheet>"
        + sheets
        + "</office:spreadsheet></office:body></office:document-content>";
  }

  /** A package with this content part and nothing that is not needed. */
  public static Path pack(Path file, String content) throws IOException {
    byte[] kind =
        "application/vnd.oasis.opendocument.spreadsheet".getBytes(StandardCharsets.US_ASCII);
    String manifest =
        "<manifest:manifest xmlns:manifest=\"urn:oasis:names:tc:opendocument:xmlns:manifest:1.0\">"
            + "<manifest:file-entry manifest:full-path=\"/\" manifest:media-type=\""
            + new String(kind, StandardCharsets.US_ASCII)
            + "\"/><manifest:file-entry manifest:full-path=\"content.xml\""
            + " manifest:media-type=\"text/xml\"/></manifest:manifest>";
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      ZipEntry first = new ZipEntry("mimetype");
      CRC32 sum = new CRC32();
      sum.update(kind);
      first.setMethod(ZipEntry.STORED);
      first.setSize(kind.length);
      first.setCrc(sum.getValue());
      zip.putNextEntry(first);
      zip.write(kind);
      zip.putNextEntry(new ZipEntry("content.xml"));
      zip.write(content.getBytes(StandardCharsets.UTF_8));
      zip.putNextEntry(new ZipEntry("META-INF/manifest.xml"));
      zip.write(manifest.getBytes(StandardCharsets.UTF_8));
    }
    return file;
  }
}
