package washbook.samples.sheets;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.ComparisonOperator;
import org.apache.poi.ss.usermodel.ConditionalFormattingRule;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint.OperatorType;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import washbook.functions.scale.SugarScale;
import washbook.samples.Office;
import washbook.samples.ferment.Entry;
import washbook.samples.ferment.Ferment;
import washbook.samples.ferment.Instrument;
import washbook.samples.ferment.Thermometer;
import washbook.samples.sheets.Book.Look;

/**
 * The sample logs of the co-operative. Run {@code main} with the folder {@code samples} to write
 * them again. Invented data: the readings come from the model run forwards.
 */
public final class SampleLogs {
  private static final Instrument HYDROMETER = Instrument.reading(SugarScale.SG, 0.001);

  private SampleLogs() {}

  public static void main(String[] arguments) throws IOException, InterruptedException {
    Path folder = Path.of(arguments[0]);
    tidy(folder.resolve("plum-3.xlsx"));
    MessyLog.write(folder.resolve("molasses-2-messy.xlsx"));
    cellarBook(folder.resolve("cellar-book-brix.xlsx"));
    Path forOffice = Files.createTempDirectory("samples").resolve("apple-7.xlsx");
    apple(forOffice);
    Office.convert(List.of(forOffice), "ods", folder);
    sugar(folder.resolve("sugar-4.csv"));
    SampleRun.write(folder.resolve(SampleRun.FILE));
  }

  /** One batch, SG and °C, with all the formatting that a careful person gives it. */
  private static void tidy(Path file) throws IOException {
    Book book = new Book("Plum 3");
    XSSFSheet sheet = book.sheet("Plum 3");
    String[] heads = {"Date", "Time", "SG", "Temp (°C)", "Notes"};
    for (int i = 0; i < heads.length; i++) {
      book.put(sheet, 0, i, heads[i], Look.head("E8D5E8"));
    }
    String[] notes = {
      "Yeast in, lid loose",
      "",
      "foaming",
      "cap pushed down",
      "",
      "",
      "",
      "quieter",
      "",
      "racked",
      "",
      "clear"
    };
    List<Entry> entries =
        Entry.readings(
            Ferment.PLUM_3,
            HYDROMETER,
            Thermometer.C_HALF,
            0,
            1,
            2,
            3,
            4,
            5,
            6,
            7.5,
            9,
            11,
            13,
            16);
    int row = 1;
    for (Entry e : entries) {
      book.put(sheet, row, 0, e.time().toLocalDate(), Look.number("dd/mm/yyyy"));
      book.put(sheet, row, 1, e.time().toLocalTime(), Look.number("hh:mm"));
      book.put(sheet, row, 2, e.shown(), Look.number("0.000"));
      book.put(sheet, row, 3, e.temperature(), Look.number("0.0"));
      book.put(sheet, row, 4, notes[row - 1].isEmpty() ? null : notes[row - 1], Look.WRAPPED);
      row++;
    }
    int last = row - 1;
    book.widths(sheet, 12, 8, 8, 10, 26);
    sheet.createFreezePane(0, 1);
    book.comment(
        sheet.getRow(3).getCell(2), "Foam on the sample: let it settle before the reading.");
    checkGravity(sheet, last);
    warnWhenWarm(sheet, last);
    Charts.line(sheet, "Plum 3", 0, 2, 1, last, 0, last + 3);
    sheet.getHeader().setCenter("Plum 3, winter 2024");
    sheet.setRepeatingRows(CellRangeAddress.valueOf("1:1"));
    makeUp(book);
    book.save(file);
  }

  private static void checkGravity(XSSFSheet sheet, int last) {
    DataValidationHelper helper = sheet.getDataValidationHelper();
    DataValidation check =
        helper.createValidation(
            helper.createDecimalConstraint(OperatorType.BETWEEN, "0.98", "1.15"),
            new CellRangeAddressList(1, last + 20, 2, 2));
    check.createErrorBox("Gravity", "A gravity is between 0.980 and 1.150.");
    check.setShowErrorBox(true);
    sheet.addValidationData(check);
  }

  private static void warnWhenWarm(XSSFSheet sheet, int last) {
    ConditionalFormattingRule rule =
        sheet
            .getSheetConditionalFormatting()
            .createConditionalFormattingRule(ComparisonOperator.GT, "23");
    rule.createPatternFormatting().setFillBackgroundColor(IndexedColors.ROSE.index);
    sheet
        .getSheetConditionalFormatting()
        .addConditionalFormatting(
            new CellRangeAddress[] {new CellRangeAddress(1, last, 3, 3)}, rule);
  }

  /** A second sheet with other things, formulas and a name. */
  private static void makeUp(Book book) {
    XSSFSheet sheet = book.sheet("What went in");
    book.put(sheet, 0, 0, "What", Look.head("DDE8CB"));
    book.put(sheet, 0, 1, "kg", Look.head("DDE8CB"));
    book.put(sheet, 0, 2, "Price per kg", Look.head("DDE8CB"));
    book.put(sheet, 0, 3, "Cost", Look.head("DDE8CB"));
    Object[][] lines = {
      {"Plums, stoned", 42, 0.6}, {"Sugar", 8.5, 1.1}, {"Pectin enzyme", 0.03, 90}
    };
    double total = 0;
    for (int i = 0; i < lines.length; i++) {
      double cost = ((Number) lines[i][1]).doubleValue() * ((Number) lines[i][2]).doubleValue();
      total += cost;
      book.put(sheet, i + 1, 0, lines[i][0], Look.PLAIN);
      book.put(sheet, i + 1, 1, lines[i][1], Look.number("0.00"));
      book.put(sheet, i + 1, 2, lines[i][2], Look.number("0.00"));
      book.formula(sheet, i + 1, 3, "B" + (i + 2) + "*C" + (i + 2), cost, Look.number("0.00"));
    }
    book.put(sheet, 4, 0, "Total", Look.TITLE);
    Cell sum = book.formula(sheet, 4, 3, "SUM(D2:D4)", total, Look.number("0.00"));
    Name name = book.workbook().createName();
    name.setNameName("total_cost");
    name.setRefersToFormula("'What went in'!$D$5");
    book.comment(sum, "Without the bottles.");
    book.widths(sheet, 18, 10, 12, 10);
  }

  /** Two batches in one list, read with a Brix hydrometer. */
  private static void cellarBook(Path file) throws IOException {
    Book book = new Book("Cellar book");
    XSSFSheet sheet = book.sheet("Cellar book");
    book.put(sheet, 0, 0, "Cellar book, winter 2024", Look.TITLE);
    sheet.addMergedRegion(new CellRangeAddress(0, 0, 0, 4));
    book.put(sheet, 1, 0, "Brix hydrometer, right at 20 °C, read to 0.2", Look.PLAIN);
    String[] heads = {"Batch", "Date", "Brix", "Temp °C", "Remarks"};
    for (int i = 0; i < heads.length; i++) {
      book.put(sheet, 3, i, heads[i], Look.head("FCE4D6"));
    }
    Instrument brix = Instrument.reading(SugarScale.BRIX, 0.2);
    List<Entry> entries = new ArrayList<>();
    double[] days = {0, 1, 2, 3, 5, 7, 9, 12, 15};
    entries.addAll(Entry.readings(Ferment.PLUM_3, brix, Thermometer.C, days));
    entries.addAll(Entry.readings(Ferment.APPLE_7, brix, Thermometer.C, days));
    entries.sort(Comparator.comparing(Entry::time));
    int row = 4;
    for (Entry e : entries) {
      String remark = e.moment().day() == 0 ? "start" : e.moment().day() == 12 ? "racked" : null;
      book.put(sheet, row, 0, e.moment().ferment().name(), Look.PLAIN);
      book.put(sheet, row, 1, e.time().toLocalDate(), Look.number("d mmm yyyy"));
      book.put(sheet, row, 2, e.shown(), Look.number("0.0"));
      book.put(sheet, row, 3, e.temperature(), Look.number("0"));
      book.put(sheet, row, 4, remark, Look.PLAIN);
      row++;
    }
    book.widths(sheet, 10, 13, 8, 10, 20);
    sheet.createFreezePane(0, 4);
    sheet.setAutoFilter(new CellRangeAddress(3, row - 1, 0, 4));
    XSSFSheet later = book.sheet("To do");
    book.put(later, 0, 0, "Buy bungs for the 10 L jars", Look.PLAIN);
    book.put(later, 1, 0, "Rack Apple 7 again in spring", Look.PLAIN);
    book.save(file);
  }

  /** Apple 7 with key lines above; becomes the .ods sample. */
  private static void apple(Path file) throws IOException {
    Book book = new Book("Apple 7");
    XSSFSheet sheet = book.sheet("Apple 7");
    book.put(sheet, 0, 0, "Batch", Look.TITLE);
    book.put(sheet, 0, 1, "Apple 7", Look.PLAIN);
    book.put(sheet, 1, 0, "Original gravity", Look.TITLE);
    book.put(sheet, 1, 1, 1.052, Look.number("0.000"));
    book.put(sheet, 2, 0, "Calibration (°C)", Look.TITLE);
    book.put(sheet, 2, 1, 15, Look.number("0"));
    String[] heads = {"Date", "Hydrometer SG", "Wash temperature (°C)", "Notes"};
    for (int i = 0; i < heads.length; i++) {
      book.put(sheet, 4, i, heads[i], Look.head("E2EFDA"));
    }
    List<Entry> entries =
        Entry.readings(
            Ferment.APPLE_7,
            HYDROMETER.calibratedAt(15),
            Thermometer.C,
            1,
            2,
            3,
            4,
            6,
            8,
            11,
            15,
            20);
    int row = 5;
    for (Entry e : entries) {
      book.put(sheet, row, 0, e.time(), Look.number("yyyy-mm-dd hh:mm"));
      book.put(sheet, row, 1, e.shown(), Look.number("0.000"));
      book.put(sheet, row, 2, e.temperature(), Look.number("0"));
      book.put(sheet, row, 3, row == 6 ? "fizzing a little" : null, Look.PLAIN);
      row++;
    }
    book.widths(sheet, 18, 12, 14, 24);
    book.comment(sheet.getRow(5).getCell(1), "Two people read it: 1.051 and 1.052.");
    Charts.line(sheet, "Apple 7", 0, 1, 5, row - 1, 0, row + 1);
    warnWhenWarm(sheet, row - 1);
    makeUp(book);
    book.save(file);
  }

  /** Semicolons, decimal commas, German words. */
  private static void sugar(Path file) throws IOException {
    StringBuilder text =
        new StringBuilder("\uFEFFDatum;Uhrzeit;Dichte;Temperatur (°C);Bemerkung\r\n");
    List<Entry> entries =
        Entry.readings(
            Ferment.SUGAR_4, HYDROMETER, Thermometer.C_HALF, 0, 0.6, 1, 2, 3, 4, 5, 7, 9, 12);
    for (Entry e : entries) {
      int i = entries.indexOf(e);
      String note =
          i == 0 ? "Hefe rein" : i == 4 ? "\"Nährsalz; 10 g\"" : i == 9 ? "klar, abgezogen" : "";
      text.append(
          String.format(
              Locale.GERMAN,
              "%s;%s;%.3f;%.1f;%s\r\n",
              DateTimeFormatter.ofPattern("dd.MM.yyyy", Locale.ROOT).format(e.time()),
              DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT).format(e.time()),
              e.shown(),
              e.temperature(),
              note));
    }
    Files.write(file, text.toString().getBytes(StandardCharsets.UTF_8));
  }
}
