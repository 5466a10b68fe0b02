package washbook.runner.season;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.openxml4j.opc.PackagePartName;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Hyperlink;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import washbook.log.understand.SeasonSheet;
import washbook.runner.file.UnusableFileException;
import washbook.runner.file.WrittenFile;
import washbook.runner.language.Wording;
import washbook.runner.report.OverviewColumn;

/**
 * The season as a workbook of the kind .xlsx. An older one is opened and its three sheets of ours
 * are rewritten, so that the person's other sheets stay.
 */
final class SeasonXlsx {
  private static final int NOTE_ROW = 2;
  private static final int HEAD_ROW = 3;
  private static final int[] WARNING_WIDTHS = {16, 24, 14, 11, 46, 20};

  /** Columns whose words wrap. */
  private static final List<OverviewColumn> WRAPPING =
      List.of(
          OverviewColumn.BATCH,
          OverviewColumn.STATE,
          OverviewColumn.WARNINGS,
          OverviewColumn.SHEET);

  /** Lines end at words: a text takes so much more than its letters. */
  private static final double WRAPPED = 1.25;

  private static final float LINE_POINTS = 13.5f;
  static final float HEAD_POINTS = 4 * LINE_POINTS + 3;
  private static final double MARGIN_INCHES = 0.3;

  private final XSSFWorkbook book;
  private final SeasonStyles styles;

  private SeasonXlsx(XSSFWorkbook book) {
    this.book = book;
    styles = new SeasonStyles(book);
  }

  /**
   * Writes it.
   *
   * @param file the older one, or null
   */
  static void write(Season season, OlderSeason older, Path file, Path to) throws IOException {
    try (XSSFWorkbook book = open(file);
        OutputStream out = WrittenFile.stream(to)) {
      SeasonXlsx writer = new SeasonXlsx(book);
      writer.table(season, older);
      writer.curves(season);
      writer.warnings(season);
      book.setActiveSheet(0);
      // In memory first: the library hides why a stream fails.
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      book.write(bytes);
      bytes.writeTo(out);
    }
  }

  private static XSSFWorkbook open(Path file) throws IOException {
    if (file == null) {
      return new XSSFWorkbook();
    }
    try (InputStream in = Files.newInputStream(file)) {
      return new XSSFWorkbook(in);
    }
  }

  private void table(Season season, OlderSeason older) throws IOException {
    XSSFSheet sheet = ours(season.words());
    List<OlderSeason.Place> places = older.places(season);
    OwnColumns own = older.own();
    Map<String, Integer> heads = new LinkedHashMap<>();
    for (String head : own.heads().keySet()) {
      heads.put(head, OverviewColumn.values().length + heads.size());
    }
    List<List<OwnCell>> kept = new ArrayList<>();
    for (OlderSeason.Place place : places) {
      kept.add(place.olderRow() < 0 ? List.of() : keep(sheet, place.olderRow(), own));
    }
    List<OwnCell> keptHeads = own.headRow() < 0 ? List.of() : keep(sheet, own.headRow(), own);
    clear(sheet);
    text(sheet.createRow(0), 0, season.title(), styles.title);
    text(sheet.createRow(1), 0, season.sentence(), styles.line);
    text(sheet.createRow(NOTE_ROW), 0, SeasonTable.note(season.words()), styles.note);
    XSSFRow head = sheet.createRow(HEAD_ROW);
    for (OverviewColumn column : OverviewColumn.values()) {
      text(head, SeasonPage.at(column), column.head(season.words()), styles.head);
    }
    put(sheet, head, keptHeads, heads);
    for (int i = 0; i < places.size(); i++) {
      XSSFRow row = sheet.createRow(HEAD_ROW + 1 + i);
      if (places.get(i).row() == null) {
        orphan(row, places.get(i).key(), season.words());
      } else {
        batch(row, places.get(i).row(), season.words());
      }
      int lines = lines(row, season.words());
      if (lines > 1) {
        row.setHeightInPoints(lines * LINE_POINTS);
      }
      put(sheet, row, kept.get(i), heads);
    }
    setUp(sheet, HEAD_ROW + places.size(), heads.size(), season.words());
  }

  /** The sheet of the table, the first one; the others of ours are taken out. */
  private XSSFSheet ours(Wording words) {
    XSSFSheet table = null;
    for (int i = book.getNumberOfSheets() - 1; i >= 0; i--) {
      XSSFSheet sheet = book.getSheetAt(i);
      String first = first(sheet);
      if (SeasonSheet.isTitle(first)) {
        table = sheet;
      } else if (SeasonSheet.isFurther(first)) {
        remove(i);
      }
    }
    return table == null ? book.createSheet(free(SeasonTable.sheet(words))) : table;
  }

  /** The library takes out a sheet, but leaves its charts in the file. */
  private void remove(int index) {
    XSSFDrawing drawing = book.getSheetAt(index).getDrawingPatriarch();
    List<PackagePartName> charts =
        drawing == null
            ? List.of()
            : drawing.getCharts().stream().map(c -> c.getPackagePart().getPartName()).toList();
    book.removeSheetAt(index);
    for (PackagePartName chart : charts) {
      if (book.getPackage().containPart(chart)) {
        book.getPackage().removePart(chart);
      }
    }
  }

  private static String first(XSSFSheet sheet) {
    Row row = sheet.getRow(0);
    Cell cell = row == null ? null : row.getCell(0);
    return cell == null || cell.getCellType() != CellType.STRING ? "" : cell.getStringCellValue();
  }

  private static void clear(XSSFSheet sheet) {
    for (int row = sheet.getLastRowNum(); row >= 0; row--) {
      XSSFRow old = sheet.getRow(row);
      if (old != null) {
        sheet.removeRow(old);
      }
    }
    for (int i = sheet.getNumMergedRegions() - 1; i >= 0; i--) {
      if (sheet.getMergedRegion(i).getFirstRow() == NOTE_ROW) {
        sheet.removeMergedRegion(i);
      }
    }
    for (Hyperlink link : List.copyOf(sheet.getHyperlinkList())) {
      sheet.removeHyperlink(link.getFirstRow(), link.getFirstColumn());
    }
  }

  private static List<OwnCell> keep(XSSFSheet sheet, int row, OwnColumns own)
      throws UnusableFileException {
    List<OwnCell> kept = new ArrayList<>();
    for (Map.Entry<String, Integer> head : own.heads().entrySet()) {
      XSSFRow from = sheet.getRow(row);
      XSSFCell cell = from == null ? null : from.getCell(head.getValue());
      if (cell != null) {
        OwnCell one = OwnCell.of(head.getKey(), cell);
        if (one.isFormula() && own.isAmongOurs(head.getValue())) {
          throw UnusableFileException.of(
              "season.among", UnusableFileException.quoted(head.getKey()));
        }
        kept.add(one);
      }
    }
    return kept;
  }

  private static void put(
      XSSFSheet sheet, XSSFRow row, List<OwnCell> cells, Map<String, Integer> heads)
      throws UnusableFileException {
    for (OwnCell cell : cells) {
      cell.put(sheet, row, heads.get(cell.head()));
    }
  }

  private void batch(XSSFRow row, SeasonRow batch, Wording words) {
    for (OverviewColumn column : OverviewColumn.values()) {
      int at = SeasonPage.at(column);
      if (column.isNumber()) {
        Double number = column.number(batch.line());
        if (number != null) {
          Cell cell = row.createCell(at);
          cell.setCellValue(number);
          cell.setCellStyle(styles.number(column.decimals()));
        }
        continue;
      }
      if (column.isDate() && !column.text(batch.line()).isEmpty()) {
        Cell cell = row.createCell(at);
        cell.setCellValue(LocalDate.parse(column.text(batch.line())));
        cell.setCellStyle(styles.date);
        continue;
      }
      String value = column.shown(batch.line(), words);
      if (!value.isEmpty()) {
        text(row, at, value, style(column, batch));
      }
    }
    Hyperlink link = book.getCreationHelper().createHyperlink(HyperlinkType.FILE);
    link.setAddress(batch.link().toASCIIString());
    row.getCell(SeasonPage.at(OverviewColumn.FILE)).setHyperlink(link);
  }

  private CellStyle style(OverviewColumn column, SeasonRow batch) {
    return switch (column) {
      case FILE -> styles.link;
      case BATCH -> styles.name;
      case WARNINGS -> styles.warning;
      case STATE -> batch.line().batch().state().equals("stuck") ? styles.warning : styles.plain;
      default -> styles.plain;
    };
  }

  /** How many lines the words of a row need: not every program finds that by itself. */
  private static int lines(XSSFRow row, Wording words) {
    double lines = 1;
    for (OverviewColumn column : WRAPPING) {
      XSSFCell cell = row.getCell(SeasonPage.at(column));
      int length = cell == null ? 0 : cell.getStringCellValue().length();
      int width = SeasonPage.width(column, words);
      lines = Math.max(lines, length < width ? 1 : Math.ceil(length * WRAPPED / width));
    }
    return (int) lines;
  }

  private void orphan(XSSFRow row, OwnColumns.Key key, Wording words) {
    text(row, SeasonPage.at(OverviewColumn.BATCH), key.batch(), styles.name);
    text(row, SeasonPage.at(OverviewColumn.STATE), SeasonTable.gone(words), styles.warning);
    text(row, SeasonPage.at(OverviewColumn.FILE), key.file(), styles.plain);
    text(row, SeasonPage.at(OverviewColumn.SHEET), key.sheet(), styles.plain);
  }

  private void setUp(XSSFSheet sheet, int lastRow, int further, Wording words) {
    int last = OverviewColumn.values().length - 1 + further;
    for (OverviewColumn column : OverviewColumn.values()) {
      sheet.setColumnWidth(SeasonPage.at(column), SeasonPage.width(column, words) * 256);
    }
    sheet.addMergedRegion(new CellRangeAddress(NOTE_ROW, NOTE_ROW, 0, SeasonPage.LAST_OF_FIRST));
    sheet.getRow(NOTE_ROW).setHeightInPoints(2 * LINE_POINTS);
    sheet.createFreezePane(1, HEAD_ROW + 1);
    sheet.setAutoFilter(new CellRangeAddress(HEAD_ROW, Math.max(HEAD_ROW + 1, lastRow), 0, last));
    sheet.setRepeatingRows(new CellRangeAddress(HEAD_ROW, HEAD_ROW, -1, -1));
    sheet.setRepeatingColumns(new CellRangeAddress(-1, -1, 0, 0));
    sheet.getRow(HEAD_ROW).setHeightInPoints(HEAD_POINTS);
    String printed =
        SeasonPage.printed(further).stream()
            .map(
                part ->
                    new CellRangeAddress(part[0] == 0 ? 0 : HEAD_ROW, lastRow, part[0], part[1]))
            .map(part -> part.formatAsString(null, true))
            .collect(Collectors.joining(","));
    book.setPrintArea(book.getSheetIndex(sheet), printed);
    setUpPage(sheet, SeasonPage.pages(words, further));
  }

  /**
   * So many pages of A4 paper that lies on its side are side by side, as many below each other as
   * it takes.
   */
  private static void setUpPage(XSSFSheet sheet, int pages) {
    onPaper(sheet);
    sheet.setFitToPage(true);
    sheet.getPrintSetup().setFitWidth((short) pages);
    sheet.getPrintSetup().setFitHeight((short) 0);
  }

  static void onPaper(XSSFSheet sheet) {
    sheet.getPrintSetup().setPaperSize(PrintSetup.A4_PAPERSIZE);
    sheet.getPrintSetup().setLandscape(true);
    for (PageMargin side :
        new PageMargin[] {PageMargin.LEFT, PageMargin.RIGHT, PageMargin.TOP, PageMargin.BOTTOM}) {
      sheet.setMargin(side, MARGIN_INCHES);
    }
  }

  private void curves(Season season) {
    XSSFSheet sheet = book.createSheet(free(SeasonTable.curves(season.words())));
    book.setSheetOrder(sheet.getSheetName(), 1);
    text(
        sheet.createRow(0),
        0,
        season.title() + ": " + season.words().say("season.curves"),
        styles.title);
    text(sheet.createRow(1), 0, season.notDrawn(SeasonTable.MOST_CURVES), styles.line);
    new SeasonXlsxCharts(sheet, styles, season.words())
        .draw(season.byWash(SeasonTable.MOST_CURVES));
  }

  private void warnings(Season season) {
    XSSFSheet sheet = book.createSheet(free(SeasonTable.warnings(season.words())));
    book.setSheetOrder(sheet.getSheetName(), 2);
    int row = 0;
    text(
        sheet.createRow(row++),
        0,
        season.title() + ": " + season.words().say("season.warnings"),
        styles.title);
    row = line(sheet, row, SeasonTable.warningHeads(season.words()), styles.head);
    for (List<String> warning : SeasonTable.warnings(season)) {
      row = wrapped(sheet, row, warning);
    }
    for (List<String> left : SeasonTable.left(season)) {
      row = wrapped(sheet, row, left);
    }
    row++;
    for (String safety : SeasonTable.safety(season.words())) {
      text(sheet.createRow(row), 0, safety, styles.plain);
      sheet.addMergedRegion(new CellRangeAddress(row, row, 0, WARNING_WIDTHS.length - 1));
      int lines = (int) Math.ceil(safety.length() * WRAPPED / IntStream.of(WARNING_WIDTHS).sum());
      sheet.getRow(row++).setHeightInPoints(lines * LINE_POINTS);
    }
    for (int i = 0; i < WARNING_WIDTHS.length; i++) {
      sheet.setColumnWidth(i, WARNING_WIDTHS[i] * 256);
    }
    sheet.createFreezePane(0, 2);
    sheet.setRepeatingRows(new CellRangeAddress(1, 1, -1, -1));
    setUpPage(sheet, 1);
  }

  /** A name that no sheet of the person's has. */
  private String free(String wanted) {
    String name = wanted;
    for (int i = 2; book.getSheet(name) != null; i++) {
      name = wanted + " " + i;
    }
    return name;
  }

  /** A line as high as its texts need: not every program finds that by itself. */
  private int wrapped(XSSFSheet sheet, int at, List<String> words) {
    int lines = 1;
    for (int i = 0; i < words.size(); i++) {
      lines = Math.max(lines, (int) Math.ceil(words.get(i).length() * WRAPPED / WARNING_WIDTHS[i]));
    }
    int next = line(sheet, at, words, styles.plain);
    sheet.getRow(at).setHeightInPoints(lines * LINE_POINTS);
    return next;
  }

  private static int line(XSSFSheet sheet, int at, List<String> words, CellStyle style) {
    XSSFRow row = sheet.createRow(at);
    for (int i = 0; i < words.size(); i++) {
      text(row, i, words.get(i), style);
    }
    return at + 1;
  }

  static void text(XSSFRow row, int column, String text, CellStyle style) {
    Cell cell = row.createCell(column);
    cell.setCellValue(text.length() > 32_767 ? text.substring(0, 32_767) : text);
    cell.setCellStyle(style);
  }
}
