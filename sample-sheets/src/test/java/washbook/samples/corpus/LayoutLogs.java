package washbook.samples.corpus;

import static washbook.log.Role.BATCH;
import static washbook.log.Role.DATE;
import static washbook.log.Role.DAY;
import static washbook.log.Role.GRAVITY;
import static washbook.log.Role.NOTE;
import static washbook.log.Role.TEMPERATURE;
import static washbook.samples.corpus.PlainLogs.HYDROMETER;
import static washbook.samples.corpus.PlainLogs.TWO_WEEKS;
import static washbook.samples.ferment.Ferment.APPLE_7;
import static washbook.samples.ferment.Ferment.MOLASSES_2;
import static washbook.samples.ferment.Ferment.PLUM_3;
import static washbook.samples.ferment.Ferment.SUGAR_4;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import washbook.log.Role;
import washbook.samples.ferment.Entry;
import washbook.samples.ferment.Ferment;
import washbook.samples.ferment.Refractometer;
import washbook.samples.ferment.Thermometer;

/** Several batches and several tables in one file. */
final class LayoutLogs {
  private LayoutLogs() {}

  static List<Log> all() {
    return List.of(
        batchColumn(),
        batchColumnSparse(),
        stacked(),
        stackedWithKeys(),
        sideBySide(),
        sideBySideTight(),
        sheets(),
        groupHeader(),
        transposed(),
        register());
  }

  private static Log batchColumn() {
    Log log = new Log("en-batch-column.xlsx", "Three batches in one list, by date");
    List<Entry> e = new ArrayList<>();
    e.addAll(Entry.readings(PLUM_3, HYDROMETER, Thermometer.C, TWO_WEEKS));
    e.addAll(Entry.readings(APPLE_7, HYDROMETER, Thermometer.C, TWO_WEEKS));
    e.addAll(Entry.readings(MOLASSES_2, HYDROMETER, Thermometer.C, TWO_WEEKS));
    e.sort(Comparator.comparing(Entry::time));
    log.table(log.page("Cellar book"), 0, 0)
        .column("Date", DATE, Cells.DATE)
        .column("Batch", BATCH, Cells.BATCH)
        .column("SG", GRAVITY, "SG", Cells.SG)
        .column("Temp °C", TEMPERATURE, "C", Cells.TEMPERATURE)
        .column("Notes", NOTE, Cells.notes(e, "first pressing"))
        .rows(e);
    return log;
  }

  private static Log batchColumnSparse() {
    Log log =
        new Log("en-batch-once.csv", "The batch is named in its first row only; rows unsorted");
    List<Entry> plum = Entry.readings(PLUM_3, HYDROMETER, Thermometer.C, 0, 2, 1, 5, 3, 8);
    List<Entry> sugar = Entry.readings(SUGAR_4, HYDROMETER, Thermometer.C, 0, 1, 3, 2, 9, 6);
    List<Entry> all = new ArrayList<>(plum);
    all.addAll(sugar);
    log.table(log.page("log"), 0, 0)
        .column(
            "Batch",
            BATCH,
            x -> x == plum.get(0) || x == sugar.get(0) ? Cells.BATCH.apply(x) : null)
        .column("Date", DATE, Cells.DATE)
        .column("SG", GRAVITY, "SG", Cells.SG)
        .column("Temp C", TEMPERATURE, "C", Cells.TEMPERATURE)
        .rows(all);
    return log;
  }

  private static Log stacked() {
    Log log =
        new Log("en-stacked.xlsx", "Two tables under each other, each with the batch as title");
    Page page = log.page("Winter");
    int row = 0;
    for (Ferment f : List.of(PLUM_3, APPLE_7)) {
      page.line(row, 0, f.name());
      row =
          log.table(page, row + 1, 0)
                  .column("Date", DATE, Cells.DATE)
                  .column("SG", GRAVITY, "SG", Cells.SG)
                  .column("Temp (°C)", TEMPERATURE, "C", Cells.TEMPERATURE)
                  .rows(Entry.readings(f, HYDROMETER, Thermometer.C, TWO_WEEKS))
                  .end()
              + 2;
    }
    return log;
  }

  private static Log stackedWithKeys() {
    Log log =
        new Log("en-stacked-keys.xls", "Stacked tables, the original gravity stated above each");
    Page page = log.page("Log");
    int row = 0;
    for (Ferment f : List.of(SUGAR_4, MOLASSES_2)) {
      double og = Math.round(f.originalGravity() * 1000) / 1000.0;
      page.line(row, 0, "Batch", f.name());
      page.line(row + 1, 0, "OG", og, null, "Volume (L)", 25);
      row =
          log.table(page, row + 2, 0)
                  .stated(og, 0.0005)
                  .column("Day", DAY, Cells.DAY)
                  .column("Gravity", GRAVITY, "SG", Cells.SG)
                  .column("Temp C", TEMPERATURE, "C", Cells.TEMPERATURE)
                  .rows(Entry.readings(f, HYDROMETER, Thermometer.C, 1, 2, 3, 5, 8, 11))
                  .end()
              + 1;
    }
    return log;
  }

  private static Log sideBySide() {
    Log log =
        new Log("en-side-by-side.xlsx", "Two tables beside each other, a blank column between");
    Page page = log.page("Both");
    int column = 0;
    for (Ferment f : List.of(PLUM_3, SUGAR_4)) {
      page.line(0, column, f.name());
      log.table(page, 1, column)
          .column("Date", DATE, Cells.DATE)
          .column("SG", GRAVITY, "SG", Cells.SG)
          .column("Temp C", TEMPERATURE, "C", Cells.TEMPERATURE)
          .rows(Entry.readings(f, HYDROMETER, Thermometer.C, TWO_WEEKS));
      // The columns to the right of the second stay free; those of the first do not.
      column += 4;
    }
    return log.verdict(Expected.Verdict.FILL);
  }

  private static Log sideBySideTight() {
    Log log = new Log("en-side-by-side-tight.ods", "Two tables that touch, headers repeated");
    Page page = log.page("Both");
    int column = 0;
    for (Ferment f : List.of(APPLE_7, MOLASSES_2)) {
      page.line(0, column, f.name(), null, null, null);
      page.merge(0, column, 0, column + 2);
      log.table(page, 1, column)
          .column("Date", DATE, Cells.DATE)
          .column("SG", GRAVITY, "SG", Cells.SG)
          .column("Temp", TEMPERATURE, "C", Cells.TEMPERATURE)
          .rows(Entry.readings(f, HYDROMETER, Thermometer.C, 0, 1, 2, 3, 5, 7, 9));
      column += 3;
    }
    return log;
  }

  private static Log sheets() {
    Log log = new Log("en-sheets.xlsx", "A sheet for each batch, and sheets with other things");
    Page read = log.page("Read me");
    read.line(
        0, 0, "One sheet per batch. Gravity at the temperature of the wash, 20 C hydrometer.");
    for (Ferment f : List.of(PLUM_3, APPLE_7, MOLASSES_2, SUGAR_4)) {
      Page page = log.page(f.name());
      page.line(0, 0, f.name(), null, "started", f.start().toLocalDate());
      log.table(page, 2, 0)
          .column("Date", DATE, Cells.DATE)
          .column("SG", GRAVITY, "SG", Cells.SG)
          .column("Temp °C", TEMPERATURE, "C", Cells.TEMPERATURE)
          .column("Notes", NOTE, Cells.NOTHING)
          .rows(Entry.readings(f, HYDROMETER, Thermometer.C, TWO_WEEKS));
    }
    Page shop = log.page("Shopping");
    shop.line(0, 0, "What", "How many", "Price");
    shop.line(1, 0, "Sugar, 25 kg", 2, 31.5);
    shop.line(2, 0, "Bungs", 12, 0.8);
    return log;
  }

  private static Log groupHeader() {
    Log log =
        new Log("en-group-header.xlsx", "One date column, then SG and Temp under each batch's name")
            .verdict(Expected.Verdict.CAREFUL);
    Page page = log.page("Together");
    page.line(0, 1, "Plum 3", null, "Sugar 4");
    page.merge(0, 1, 0, 2);
    page.merge(0, 3, 0, 4);
    page.line(1, 0, "Date", "SG", "Temp C", "SG", "Temp C");
    Ferment sugar = new Ferment("Sugar 4", 1.0905, 0.9908, 3.6, 24, PLUM_3.start());
    List<Entry> left = Entry.readings(PLUM_3, HYDROMETER, Thermometer.C, TWO_WEEKS);
    List<Entry> right = Entry.readings(sugar, HYDROMETER, Thermometer.C, TWO_WEEKS);
    log.table(page, 1, 0)
        .column("Date", null, Cells.DATE)
        .column("SG", GRAVITY, "SG", Cells.SG)
        .column("Temp C", TEMPERATURE, "C", Cells.TEMPERATURE)
        .rows(left);
    log.table(page, 1, 3)
        .column("SG", GRAVITY, "SG", Cells.SG)
        .column("Temp C", TEMPERATURE, "C", Cells.TEMPERATURE)
        .rows(right);
    return log;
  }

  private static Log transposed() {
    Log log =
        new Log("en-across.xlsx", "Days run to the right; whose Brix they are nobody says")
            .verdict(Expected.Verdict.ASK);
    Page page = log.page("Plum 3");
    List<Entry> e = Entry.readings(PLUM_3, HYDROMETER, Thermometer.C, TWO_WEEKS);
    page.line(0, 0, "Date").line(1, 0, "Brix").line(2, 0, "Temp C").line(3, 0, "Notes", "yeast in");
    for (int i = 0; i < e.size(); i++) {
      page.put(0, i + 1, Cells.DATE.apply(e.get(i)));
      page.put(1, i + 1, Refractometer.shows(e.get(i).moment()));
      page.put(2, i + 1, e.get(i).temperature());
    }
    return log;
  }

  /** One line a batch: its gravity when made and its gravity when it was done. */
  private static Log register() {
    Log log =
        new Log("en-register.xlsx", "One row a batch: original and final gravity, read at 20 °C")
            .verdict(Expected.Verdict.CAREFUL);
    Page page = log.page("All batches");
    page.line(0, 0, "Batch register. All gravities corrected to 20 C.");
    Sheetful table = log.table(page, 2, 0).alreadyCorrected();
    List<Entry> e = new ArrayList<>();
    for (Ferment f : List.of(PLUM_3, APPLE_7, MOLASSES_2, SUGAR_4)) {
      e.addAll(Entry.readingsAt(20, f, HYDROMETER, 21));
    }
    table
        .column("Batch", BATCH, Cells.BATCH)
        .column("Finished", DATE, Cells.DATE)
        .column(
            "OG",
            Role.ORIGINAL_GRAVITY,
            "SG",
            x -> new Page.Shown(x.instrument().showsOriginal(x.moment()), "0.000"))
        .column("FG", GRAVITY, "SG", Cells.SG)
        .column("Bottles", null, Cells.always(30.0))
        .rows(e);
    e.forEach(x -> table.statedFor(x, x.instrument().showsOriginal(x.moment())));
    return log;
  }
}
