package washbook.samples.corpus;

import static washbook.log.Role.DATE;
import static washbook.log.Role.GRAVITY;
import static washbook.log.Role.OWN_ABV;
import static washbook.log.Role.OWN_APPARENT_ATTENUATION;
import static washbook.log.Role.OWN_CORRECTED_GRAVITY;
import static washbook.log.Role.OWN_REAL_ATTENUATION;
import static washbook.log.Role.TEMPERATURE;
import static washbook.samples.corpus.PlainLogs.HYDROMETER;
import static washbook.samples.corpus.PlainLogs.TWO_WEEKS;
import static washbook.samples.ferment.Ferment.APPLE_7;
import static washbook.samples.ferment.Ferment.MOLASSES_2;
import static washbook.samples.ferment.Ferment.PLUM_3;
import static washbook.samples.ferment.Ferment.SUGAR_4;

import java.util.ArrayList;
import java.util.List;
import washbook.functions.ferment.Balance;
import washbook.functions.reading.Hydrometer;
import washbook.samples.ferment.Entry;
import washbook.samples.ferment.Ferment;
import washbook.samples.ferment.Instrument;
import washbook.samples.ferment.Thermometer;

/** Logs with the person's own figures, and the reason why they are off. */
final class AuditLogs {
  static final String THUMB = "RULE_OF_THUMB";
  static final String WARM = "WARM_READING";
  static final String APPARENT = "APPARENT_AS_REAL";
  static final String REFERENCE = "WRONG_REFERENCE";

  private AuditLogs() {}

  static List<Log> all() {
    return List.of(
        thumb(),
        thumbDivided(),
        thumbOechsle(),
        warm(),
        warmThumb(),
        apparentAsReal(),
        reference(),
        right());
  }

  private static List<Entry> cool(Ferment f) {
    return Entry.readingsAt(20, f, HYDROMETER, TWO_WEEKS);
  }

  private static Log thumb() {
    Log log = new Log("audit-thumb.xlsx", "ABV by (OG - SG) x 131.25, as formulas").causes(THUMB);
    List<Entry> e = cool(PLUM_3);
    log.table(log.page("Plum 3"), 0, 0)
        .column("Date", DATE, Cells.DATE)
        .column("SG", GRAVITY, "SG", Cells.SG)
        .column("Temp C", TEMPERATURE, "C", Cells.TEMPERATURE)
        .column(
            "ABV %",
            OWN_ABV,
            "",
            x ->
                new Page.Formula(
                    "(B$2-B" + (e.indexOf(x) + 2) + ")*131.25",
                    (e.get(0).shown() - x.shown()) * 131.25))
        .rows(e);
    return log;
  }

  private static Log thumbDivided() {
    Log log = new Log("audit-thumb-divided.csv", "Alcohol as points gone / 7.36").causes(THUMB);
    List<Entry> e = cool(SUGAR_4);
    log.table(log.page("x"), 0, 0)
        .column("Date", DATE, Cells.DATE)
        .column("SG", GRAVITY, "SG", Cells.SG)
        .column("Temp C", TEMPERATURE, "C", Cells.TEMPERATURE)
        .column(
            "Alcohol % vol", OWN_ABV, "", x -> OwnFigures.thumbDivided(e.get(0).shown(), x.shown()))
        .rows(e);
    return log;
  }

  private static Log thumbOechsle() {
    Log log = new Log("audit-oechsle.xlsx", "Alkohol als vergorene Oechsle durch 8").causes(THUMB);
    List<Entry> e = Entry.readingsAt(20, PLUM_3, LanguageLogs.OECHSLE, TWO_WEEKS);
    log.table(log.page("Plum 3"), 0, 0)
        .column("Datum", DATE, Cells.DATE)
        .column("°Oe", GRAVITY, "OECHSLE", Cells.SHOWN)
        .column("Temp. °C", TEMPERATURE, "C", Cells.TEMPERATURE)
        .column("Alkohol % vol", OWN_ABV, "", x -> (e.get(0).shown() - x.shown()) / 8)
        .rows(e);
    return log;
  }

  private static List<Entry> warmReadings() {
    List<Entry> e = new ArrayList<>();
    e.add(new Entry(SUGAR_4.at(0), HYDROMETER, Thermometer.C, 20));
    e.addAll(Entry.readings(SUGAR_4.warmer(7), HYDROMETER, Thermometer.C, 1, 2, 3, 4, 5, 7, 9, 12));
    return e;
  }

  private static Log warm() {
    Log log =
        new Log("audit-warm.ods", "ABV from a good table, but from the warm readings as they are")
            .causes(WARM);
    List<Entry> e = warmReadings();
    log.table(log.page("Sugar 4"), 0, 0)
        .column("Date", DATE, Cells.DATE)
        .column("SG", GRAVITY, "SG", Cells.SG)
        .column("Temp C", TEMPERATURE, "C", Cells.TEMPERATURE)
        .column(
            "ABV (table)",
            OWN_ABV,
            "",
            x -> Math.round(100 * Balance.of(e.get(0).shown(), x.shown()).percentVolume()) / 100.0)
        .rows(e);
    return log;
  }

  private static Log warmThumb() {
    Log log =
        new Log("audit-warm-thumb.csv", "131.25 on warm readings as they are: two causes")
            .causes(WARM, THUMB);
    List<Entry> e = warmReadings();
    log.table(log.page("x"), 0, 0)
        .column("Date", DATE, Cells.DATE)
        .column("SG", GRAVITY, "SG", Cells.SG)
        .column("Temp C", TEMPERATURE, "C", Cells.TEMPERATURE)
        .column("ABV", OWN_ABV, "", x -> OwnFigures.thumb(e.get(0).shown(), x.shown()))
        .rows(e);
    return log;
  }

  private static Log apparentAsReal() {
    Log log =
        new Log("audit-apparent.xlsx", "Real attenuation calculated from the gravities alone")
            .causes(APPARENT);
    List<Entry> e = cool(APPLE_7);
    log.table(log.page("Apple 7"), 0, 0)
        .column("Date", DATE, Cells.DATE)
        .column("SG", GRAVITY, "SG", Cells.SG)
        .column("Temp C", TEMPERATURE, "C", Cells.TEMPERATURE)
        .column(
            "Real attenuation %",
            OWN_REAL_ATTENUATION, "", x -> OwnFigures.pointsGone(e.get(0).shown(), x.shown()))
        .rows(e);
    return log;
  }

  private static Log reference() {
    Log log =
        new Log("audit-reference.xlsx", "A 20 °C hydrometer corrected as if it were a 60 °F one")
            .causes(REFERENCE);
    Page page = log.page("Molasses 2");
    page.line(0, 0, "Hydrometer calibrated at", "20 C");
    List<Entry> e = Entry.readings(MOLASSES_2, HYDROMETER, Thermometer.C, TWO_WEEKS);
    log.table(page, 2, 0)
        .column("Date", DATE, Cells.DATE)
        .column("SG", GRAVITY, "SG", Cells.SG)
        .column("Temp C", TEMPERATURE, "C", Cells.TEMPERATURE)
        .column(
            "Corrected SG",
            OWN_CORRECTED_GRAVITY,
            "SG",
            x ->
                new Page.Shown(
                    Hydrometer.correctedGravity(
                        x.shown(),
                        x.temperatureC(),
                        Instrument.SIXTY_F,
                        x.moment().ferment().originalGravity(),
                        0),
                    "0.0000"))
        .rows(e);
    return log;
  }

  private static Log right() {
    Log log = new Log("audit-right.xlsx", "Own figures that are right to the digits shown");
    List<Entry> e = Entry.readings(PLUM_3, HYDROMETER, Thermometer.C, TWO_WEEKS);
    log.table(log.page("Plum 3"), 0, 0)
        .column("Date", DATE, Cells.DATE)
        .column("SG", GRAVITY, "SG", Cells.SG)
        .column("Temp C", TEMPERATURE, "C", Cells.TEMPERATURE)
        .column("ABV", OWN_ABV, x -> hundredths(right(e, x).percentVolume()))
        .column(
            "Apparent attenuation",
            OWN_APPARENT_ATTENUATION,
            x -> hundredths(right(e, x).apparentAttenuation()))
        .rows(e);
    return log;
  }

  private static double hundredths(double value) {
    return Math.round(100 * value) / 100.0;
  }

  private static Balance right(List<Entry> entries, Entry x) {
    Entry first = entries.get(0);
    double og = Hydrometer.correctedGravity(first.shown(), first.temperatureC(), 20, 0);
    double sg =
        x == first ? og : Hydrometer.correctedGravity(x.shown(), x.temperatureC(), 20, og, 0);
    return Balance.of(og, sg);
  }
}
