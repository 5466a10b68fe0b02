package washbook.samples.sheets;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import washbook.functions.scale.SugarScale;
import washbook.samples.ferment.Entry;
import washbook.samples.ferment.Ferment;
import washbook.samples.ferment.Instrument;
import washbook.samples.ferment.Thermometer;
import washbook.samples.sheets.Book.Look;

/** A log as it looks after a winter: nothing in it is tidy. */
final class MessyLog {
  private static final int ABOVE_ORIGINAL = 3;
  private static final int COMMA = 5;
  private static final int NO_TEMPERATURE = 7;
  private static final int ABOUT = 9;

  private MessyLog() {}

  static void write(Path file) throws IOException {
    Book book = new Book("Molasses");
    XSSFSheet notes = book.sheet("Notes");
    book.put(notes, 0, 0, "Ask for the second barrel. Molasses comes on Thursdays.", Look.PLAIN);
    XSSFSheet sheet = book.sheet("winter");
    book.put(sheet, 0, 0, "MOLASSES 2  (blackstrap + raw sugar)", Look.TITLE);
    sheet.addMergedRegion(new CellRangeAddress(0, 0, 0, 5));
    book.put(sheet, 1, 0, "60 litres in the blue barrel, heat belt on", Look.PLAIN);
    book.put(sheet, 2, 0, "Hydrometer calibrated at 60 °F", Look.PLAIN);
    String[] heads = {"Date", "Who", "Gravity", "Temp F", "Remarks", "Bubbles/min"};
    for (int i = 0; i < heads.length; i++) {
      book.put(sheet, 5, i, heads[i], i == 4 ? Look.WRAPPED : Look.head("FFF2CC"));
    }
    Instrument sixty = Instrument.reading(SugarScale.SG, 0.001).calibratedAt(Instrument.SIXTY_F);
    List<Entry> entries =
        Entry.readings(
            Ferment.MOLASSES_2, sixty, Thermometer.F, 0, 0.5, 1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 11);
    int row = 6;
    for (int i = 0; i < entries.size(); i++) {
      line(book, sheet, row, i, entries.get(i));
      row += i == 2 || i == 6 ? 2 : 1;
    }
    book.put(sheet, row + 1, 4, "finished, about 10 % says the old table", Look.WRAPPED);
    book.widths(sheet, 11, 6, 10, 8, 30, 12);
    sheet.getRow(10).setHeightInPoints(30);
    sheet.setColumnHidden(5, true);
    Charts.line(sheet, "molasses", 0, 2, 6, row - 1, 13, 1);
    book.save(file);
  }

  private static void line(Book book, XSSFSheet sheet, int row, int i, Entry e) {
    book.put(sheet, row, 0, e.time().toLocalDate(), Look.number("m/d/yy"));
    book.put(sheet, row, 1, i % 2 == 0 ? "me" : "her", Look.PLAIN);
    Object gravity = e.shown();
    String remark = null;
    if (i == 0) {
      remark = "pitched at noon, smells of treacle";
    } else if (i == ABOVE_ORIGINAL) {
      gravity = 1.108;
      remark = "can this be right??";
    } else if (i == COMMA) {
      gravity = String.format(Locale.ROOT, "%.3f", e.shown()).replace('.', ',');
    } else if (i == ABOUT) {
      gravity = "~" + String.format(Locale.ROOT, "%.3f", e.shown());
      remark = "hard to read, foam";
    } else if (i == NO_TEMPERATURE) {
      remark = "thermometer broken";
    }
    book.put(sheet, row, 2, gravity, Look.number("0.000"));
    book.put(sheet, row, 3, i == NO_TEMPERATURE ? null : e.temperature(), Look.number("0"));
    book.put(sheet, row, 4, remark, Look.WRAPPED);
    book.put(sheet, row, 5, Math.round(40 * Math.exp(-i / 4.0)), Look.PLAIN);
  }
}
