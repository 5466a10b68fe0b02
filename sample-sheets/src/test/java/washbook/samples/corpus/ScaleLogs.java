package washbook.samples.corpus;

import static washbook.log.Role.DATE;
import static washbook.log.Role.DAY;
import static washbook.log.Role.GRAVITY;
import static washbook.log.Role.NOTE;
import static washbook.log.Role.REFRACTOMETER;
import static washbook.log.Role.SUGAR_ADDED;
import static washbook.log.Role.TEMPERATURE;
import static washbook.log.Role.VOLUME;
import static washbook.samples.corpus.PlainLogs.HYDROMETER;
import static washbook.samples.corpus.PlainLogs.TWO_WEEKS;
import static washbook.samples.ferment.Ferment.APPLE_7;
import static washbook.samples.ferment.Ferment.MOLASSES_2;
import static washbook.samples.ferment.Ferment.PLUM_3;
import static washbook.samples.ferment.Ferment.SUGAR_4;

import java.util.List;
import washbook.functions.scale.SugarScale;
import washbook.samples.ferment.Entry;
import washbook.samples.ferment.Ferment;
import washbook.samples.ferment.Instrument;
import washbook.samples.ferment.Refractometer;
import washbook.samples.ferment.Thermometer;

/** Other scales, other instruments, sugar added on the way. */
final class ScaleLogs {
  private ScaleLogs() {}

  static List<Log> all() {
    return List.of(
        scale("en-brix-hydrometer.xlsx", "Brix (hydrometer)", SugarScale.BRIX, 0.2, "BRIX", PLUM_3),
        scale("en-plato.csv", "°Plato", SugarScale.PLATO, 0.1, "PLATO", APPLE_7),
        scale("en-balling.xls", "Balling", SugarScale.BALLING, 0.2, "BALLING", MOLASSES_2),
        scale("en-baume.xlsx", "Baumé", SugarScale.BAUME, 0.1, "BAUME", MOLASSES_2),
        scale(
            "en-twaddell.csv", "Twaddell (°Tw)", SugarScale.TWADDELL, 0.2, "TWADDELL", MOLASSES_2),
        scale("en-density.ods", "Density (kg/m3)", SugarScale.KGM3, 1, "KGM3", SUGAR_4),
        scale("en-density-gcc.csv", "Density g/mL", SugarScale.KGM3, 1, "*", PLUM_3, 0.001),
        scale(
            "en-potential.xlsx",
            "Potential alcohol %",
            SugarScale.POTENTIAL,
            0.1,
            "POTENTIAL",
            PLUM_3),
        askScale(),
        brixColumn(),
        refractometer(),
        both(),
        fed(),
        fedWithoutVolume(),
        noteOnly());
  }

  private static Log scale(
      String file, String header, SugarScale scale, double step, String unit, Ferment f) {
    return scale(file, header, scale, step, unit, f, 1);
  }

  private static Log scale(
      String file,
      String header,
      SugarScale scale,
      double step,
      String unit,
      Ferment f,
      double factor) {
    Log log = new Log(file, "A hydrometer with the scale " + header);
    Page page = log.page("Log");
    page.line(0, 0, f.name());
    List<Entry> e =
        Entry.readings(f, Instrument.reading(scale, step), Thermometer.C, 0, 1, 2, 3, 4, 6, 9, 13);
    log.table(page, 1, 0)
        .column("Date", DATE, Cells.DATE)
        .column(
            header, GRAVITY, unit, x -> new Page.Shown(x.shown() * factor, format(step * factor)))
        .column("Temp (°C)", TEMPERATURE, "C", Cells.TEMPERATURE)
        .column("Notes", NOTE, Cells.notes(e, "into the barrel"))
        .rows(e);
    return log;
  }

  private static String format(double step) {
    return step >= 1 ? "0" : step >= 0.1 ? "0.0" : "0.000";
  }

  private static Log askScale() {
    Log log =
        new Log(
                "en-ask-scale.csv",
                "21.4, 18.0 ... under Reading: Brix, Baumé or KMW cannot be told")
            .verdict(Expected.Verdict.ASK);
    Page page = log.page("log");
    page.line(0, 0, "Date", "Reading", "Temp C");
    Instrument plain = Instrument.reading(SugarScale.BRIX, 0.2);
    int row = 1;
    for (Entry e : Entry.readings(PLUM_3, plain, Thermometer.C, 0, 1, 2, 3, 4, 5)) {
      page.line(row++, 0, Cells.DATE.apply(e), e.shown(), e.temperature());
    }
    return log;
  }

  /** SG and the same reading turned into Brix by the person. */
  private static Log brixColumn() {
    Log log = new Log("en-sg-and-brix.xlsx", "SG and, beside it, the same reading in Brix");
    List<Entry> e = Entry.readings(APPLE_7, HYDROMETER, Thermometer.C, TWO_WEEKS);
    log.table(log.page("Apple 7"), 0, 0)
        .column("Date", DATE, Cells.DATE)
        .column("SG", GRAVITY, "SG", Cells.SG)
        .column("= Brix", null, x -> OwnFigures.brix(x.shown()))
        .column("Temp °C", TEMPERATURE, "C", Cells.TEMPERATURE)
        .rows(e);
    return log;
  }

  private static Log refractometer() {
    Log log =
        new Log("en-refractometer.xlsx", "A refractometer throughout, with the original reading");
    Page page = log.page("Plum 3");
    List<Entry> e = Entry.readingsAt(20, PLUM_3, HYDROMETER, 0, 1, 2, 3, 4, 6, 9, 13);
    e.forEach(x -> x.loose(0.6));
    page.line(0, 0, "Plum 3");
    page.line(1, 0, "Original Brix", Refractometer.shows(e.get(0).moment()));
    log.table(page, 3, 0)
        .alreadyCorrected()
        .stated(SugarScale.BRIX.toGravity(Refractometer.shows(e.get(0).moment())), 0.0006)
        .column("Date", DATE, Cells.DATE)
        .column("Refractometer (Brix)", REFRACTOMETER, "BRIX", x -> Refractometer.shows(x.moment()))
        .column("Notes", NOTE, Cells.notes(e, "ATC refractometer"))
        .rows(e);
    return log;
  }

  private static Log both() {
    Log log =
        new Log("en-both-instruments.xlsx", "Refractometer on every day, hydrometer now and then");
    Page page = log.page("Apple 7");
    List<Entry> e = Entry.readings(APPLE_7, HYDROMETER, Thermometer.C, 0, 1, 2, 4, 6, 9, 13);
    page.line(0, 0, "Apple 7, refractometer has ATC");
    for (int i : new int[] {1, 3, 4}) {
      // No hydrometer that day: the refractometer can stand in, or the row stays open.
      e.get(i).withoutReading("SG", null);
    }
    log.table(page, 2, 0)
        .column("Date", DATE, Cells.DATE)
        .column("Refractometer °Bx", REFRACTOMETER, "BRIX", x -> Refractometer.shows(x.moment()))
        .column("SG", GRAVITY, "SG", Cells.SG)
        .column("Temp C", TEMPERATURE, "C", Cells.TEMPERATURE)
        .rows(e);
    return log;
  }

  private static Log fed() {
    Log log =
        new Log("en-fed.xlsx", "Sugar fed on the third day, with the volume: the original moves");
    List<Entry> e = Feeding.sugarWash();
    log.table(log.page("Sugar 4"), 0, 0)
        .column("Date", DATE, Cells.DATE_TIME)
        .column("SG", GRAVITY, "SG", Cells.SG)
        .column("Temp C", TEMPERATURE, "C", Cells.TEMPERATURE)
        .column("Volume (L)", VOLUME, "L", Cells.always(25.0))
        .column("Sugar added (kg)", SUGAR_ADDED, "KG", Cells.NOTHING)
        .column("Notes", NOTE, Cells.NOTHING)
        .rows(e);
    return log;
  }

  private static Log fedWithoutVolume() {
    Log log =
        new Log(
                "en-fed-no-volume.csv",
                "Sugar fed, but no volume anywhere: later rows cannot be told")
            .verdict(Expected.Verdict.CAREFUL);
    List<Entry> e = Feeding.sugarWash();
    for (int i = Feeding.FIRST_AFTER; i < e.size(); i++) {
      e.get(i).spoil("Notes", "");
    }
    log.table(log.page("log"), 0, 0)
        .column("Date", DATE, Cells.DATE_TIME)
        .column("SG", GRAVITY, "SG", Cells.SG)
        .column("Temp C", TEMPERATURE, "C", Cells.TEMPERATURE)
        .column("Sugar added (kg)", SUGAR_ADDED, "KG", Cells.NOTHING)
        .column("Notes", NOTE, Cells.NOTHING)
        .rows(e);
    return log;
  }

  private static Log noteOnly() {
    Log log =
        new Log("en-fed-in-notes.csv", "Sugar stands in a note only and the gravity jumps up");
    List<Entry> e = Entry.readings(SUGAR_4, HYDROMETER, Thermometer.C, TWO_WEEKS);
    e.get(3).spoil("SG", new Page.Shown(1.099, "0.000"));
    List<Entry> until = e.subList(0, 4);
    log.table(log.page("log"), 0, 0)
        .column("Day", DAY, Cells.DAY)
        .column("SG", GRAVITY, "SG", Cells.SG)
        .column("Temp C", TEMPERATURE, "C", Cells.TEMPERATURE)
        .column("Notes", NOTE, Cells.notes(e, "", "", "", "added 2 kg sugar in hot water"))
        .rows(until);
    return log;
  }
}
