package washbook.samples.corpus;

import static washbook.log.Role.DATE;
import static washbook.log.Role.GRAVITY;
import static washbook.log.Role.NOTE;
import static washbook.log.Role.ORIGINAL_GRAVITY;
import static washbook.log.Role.OTHER;
import static washbook.log.Role.OWN_CORRECTED_GRAVITY;
import static washbook.log.Role.TEMPERATURE;
import static washbook.samples.corpus.PlainLogs.HYDROMETER;
import static washbook.samples.corpus.PlainLogs.SIXTY;
import static washbook.samples.corpus.PlainLogs.TWO_WEEKS;
import static washbook.samples.ferment.Ferment.APPLE_7;
import static washbook.samples.ferment.Ferment.MOLASSES_2;
import static washbook.samples.ferment.Ferment.PLUM_3;
import static washbook.samples.ferment.Ferment.SUGAR_4;

import java.util.List;
import washbook.log.Role;
import washbook.samples.ferment.Entry;
import washbook.samples.ferment.Instrument;
import washbook.samples.ferment.Thermometer;

/** What a log says about its readings outside of the rows: corrected, calibrated, original. */
final class StatedLogs {
  private static final double[] LATE = {1, 2, 3, 4, 6, 8, 11};

  private StatedLogs() {}

  static List<Log> all() {
    return List.of(
        correctedHeader(),
        correctedKeyLine(),
        oneTemperature(),
        offset(),
        originalKeyLine(),
        originalColumn(),
        originalInTitle(),
        readAndCorrected(),
        correctedWithRoom(),
        twoThermometers(),
        twentyInHeader(),
        calibrationColumn(),
        ambiguousWarmth(),
        controller());
  }

  private static Log correctedHeader() {
    Log log = new Log("en-corrected-header.xlsx", "The header says that gravities are corrected");
    List<Entry> e = Entry.readingsAt(20, PLUM_3, HYDROMETER, TWO_WEEKS);
    log.table(log.page("Plum 3"), 0, 0)
        .alreadyCorrected()
        .column("Date", DATE, Cells.DATE)
        .column("SG (corrected to 20 °C)", GRAVITY, "SG", Cells.SG)
        .column("Notes", NOTE, Cells.notes(e, "start"))
        .rows(e);
    return log;
  }

  private static Log correctedKeyLine() {
    Log log = new Log("en-corrected-line.csv", "A line above says that all readings are corrected");
    Page page = log.page("log");
    page.line(0, 0, "Sugar 4");
    page.line(1, 0, "all readings temperature corrected");
    List<Entry> e = Entry.readingsAt(20, SUGAR_4, HYDROMETER, TWO_WEEKS);
    log.table(page, 3, 0)
        .alreadyCorrected()
        .column("Date", DATE, Cells.DATE)
        .column("SG", GRAVITY, "SG", Cells.SG)
        .rows(e);
    return log;
  }

  private static Log oneTemperature() {
    Log log =
        new Log("en-one-temperature.xlsx", "One temperature for the whole batch in a line above");
    Page page = log.page("Molasses 2");
    page.line(0, 0, "Molasses 2");
    page.line(1, 0, "Wash temperature:", "26 C");
    List<Entry> e = Entry.readingsAt(26, MOLASSES_2, HYDROMETER, TWO_WEEKS);
    log.table(page, 3, 0)
        .column("Date", DATE, Cells.DATE)
        .column("SG", GRAVITY, "SG", Cells.SG)
        .column("Notes", NOTE, Cells.NOTHING)
        .rows(e);
    return log;
  }

  private static Log offset() {
    Log log =
        new Log("en-offset.xlsx", "The hydrometer's own error is stated: 1.002 in plain water")
            .verdict(Expected.Verdict.CAREFUL);
    Page page = log.page("Apple 7");
    page.line(0, 0, "Apple 7");
    page.line(1, 0, "Hydrometer reads 1.002 in water at 20 C");
    List<Entry> e = Entry.readings(APPLE_7, HYDROMETER.offBy(0.002), Thermometer.C, TWO_WEEKS);
    log.table(page, 3, 0)
        .column("Date", DATE, Cells.DATE)
        .column("SG", GRAVITY, "SG", Cells.SG)
        .column("Temp C", TEMPERATURE, "C", Cells.TEMPERATURE)
        .rows(e);
    return log;
  }

  private static Log originalKeyLine() {
    Log log =
        new Log("en-og-line.xlsx", "Starting gravity stated above; readings begin a day later");
    Page page = log.page("Sheet1");
    page.line(0, 0, "Batch name", "Plum 3", null, "Yeast", "cellar yeast, 20 g");
    page.line(1, 0, "Starting gravity", 1.084, null, "Volume", "60 litres");
    page.line(2, 0, "Target", 1.0, null, "Vessel", "blue barrel");
    List<Entry> e = Entry.readings(PLUM_3, HYDROMETER, Thermometer.C, LATE);
    log.table(page, 4, 0)
        .stated(1.084, 0.0005)
        .column("Date", DATE, Cells.DATE)
        .column("SG", GRAVITY, "SG", Cells.SG)
        .column("Temp °C", TEMPERATURE, "C", Cells.TEMPERATURE)
        .rows(e);
    return log;
  }

  private static Log originalColumn() {
    Log log = new Log("en-og-column.csv", "The original gravity stands in every row");
    List<Entry> e = Entry.readings(SUGAR_4, HYDROMETER, Thermometer.C, LATE);
    log.table(log.page("log"), 0, 0)
        .stated(1.090, 0.0006)
        .column("Batch", Role.BATCH, Cells.BATCH)
        .column("Date", DATE, Cells.DATE)
        .column("OG", ORIGINAL_GRAVITY, "SG", Cells.always(new Page.Shown(1.090, "0.000")))
        .column("SG", GRAVITY, "SG", Cells.SG)
        .column("Temp C", TEMPERATURE, "C", Cells.TEMPERATURE)
        .rows(e);
    return log;
  }

  private static Log originalInTitle() {
    Log log =
        new Log("en-og-title.ods", "The title line holds batch and original gravity in words");
    Page page = log.page("Sheet1");
    page.line(0, 0, "Molasses 2 (OG 1.098), 12 January, blackstrap and raw sugar");
    page.merge(0, 0, 0, 5);
    List<Entry> e = Entry.readings(MOLASSES_2, HYDROMETER, Thermometer.C, LATE);
    log.table(page, 2, 0)
        .stated(1.098, 0.0005)
        .column("Date", DATE, Cells.DATE)
        .column("SG", GRAVITY, "SG", Cells.SG)
        .column("Temp (C)", TEMPERATURE, "C", Cells.TEMPERATURE)
        .rows(e);
    return log;
  }

  private static Log readAndCorrected() {
    Log log =
        new Log("en-read-and-corrected.xlsx", "Raw reading and the person's own corrected one");
    List<Entry> e = Entry.readings(MOLASSES_2, SIXTY, Thermometer.F, TWO_WEEKS);
    Page page = log.page("Molasses 2");
    page.line(0, 0, "Calibration temp", "60 F");
    log.table(page, 2, 0)
        .column("Date", DATE, Cells.DATE)
        .column("SG read", GRAVITY, "SG", Cells.SG)
        .column("Temp F", TEMPERATURE, "F", Cells.TEMPERATURE)
        .column(
            "SG corrected",
            OWN_CORRECTED_GRAVITY,
            "SG",
            x -> new Page.Shown(OwnFigures.linearCorrection(x), "0.0000"))
        .rows(e);
    return log;
  }

  private static Log correctedWithRoom() {
    Log log =
        new Log("en-corrected-room.xlsx", "Corrected gravities beside the temperature of the room");
    List<Entry> e = Entry.readingsAt(20, APPLE_7, HYDROMETER, TWO_WEEKS);
    log.table(log.page("Apple 7"), 0, 0)
        .alreadyCorrected()
        .column("Date", DATE, Cells.DATE)
        .column("Room temp (C)", null, x -> 11 + Math.round(x.moment().day()) % 4)
        .column("SG, temp. corrected", GRAVITY, "SG", Cells.SG)
        .rows(e);
    return log;
  }

  private static Log twoThermometers() {
    Log log = new Log("en-room-and-wash.xlsx", "Room °C stands before wash °C");
    List<Entry> e = Entry.readings(PLUM_3, HYDROMETER, Thermometer.C, TWO_WEEKS);
    log.table(log.page("Plum 3"), 0, 0)
        .column("Date", DATE, Cells.DATE)
        .column("Room °C", OTHER, x -> 9 + Math.round(x.moment().day()) % 5)
        .column("Wash °C", TEMPERATURE, "C", Cells.TEMPERATURE)
        .column("SG", GRAVITY, "SG", Cells.SG)
        .rows(e);
    return log;
  }

  private static Log controller() {
    Log log =
        new Log(
            "en-controller.csv", "Set, lowest and highest temperature beside that of the sample");
    List<Entry> e = Entry.readings(SUGAR_4, HYDROMETER, Thermometer.C_TENTH, TWO_WEEKS);
    log.table(log.page("log"), 0, 0)
        .column("Date", DATE, Cells.DATE)
        .column("Set temp C", OTHER, Cells.always(25.0))
        .column("Min temp C", OTHER, x -> x.temperature() - 2.5)
        .column("Max temp C", OTHER, x -> x.temperature() + 1.5)
        .column("Gravity", GRAVITY, "SG", Cells.SG)
        .column("Sample temp C", TEMPERATURE, "C", Cells.TEMPERATURE)
        .rows(e);
    return log;
  }

  private static Log twentyInHeader() {
    Log log = new Log("en-sg-at-20.ods", "Cooled samples: the header says SG @ 20°C");
    List<Entry> e = Entry.readingsAt(20, MOLASSES_2, HYDROMETER, TWO_WEEKS);
    log.table(log.page("Molasses 2"), 0, 0)
        .alreadyCorrected()
        .column("Date", DATE, Cells.DATE)
        .column("SG @ 20°C", GRAVITY, "SG", Cells.SG)
        .column("Remarks", NOTE, Cells.notes(e, "sample cooled in the sink"))
        .rows(e);
    return log;
  }

  private static Log calibrationColumn() {
    Log log =
        new Log("en-calibration-header.xlsx", "The hydrometer's calibration stands in the header");
    Instrument fifteen = HYDROMETER.calibratedAt(15);
    List<Entry> e = Entry.readings(APPLE_7, fifteen, Thermometer.C, TWO_WEEKS);
    log.table(log.page("Apple 7"), 0, 0)
        .column("Date", DATE, Cells.DATE)
        .column("SG (hydrometer calibrated at 15 °C)", GRAVITY, "SG", Cells.SG)
        .column("Temp °C", TEMPERATURE, "C", Cells.TEMPERATURE)
        .rows(e);
    return log;
  }

  private static Log ambiguousWarmth() {
    Log log =
        new Log(
                "en-ask-temperature.csv",
                "Temperatures of 41 to 52 without a unit: either is possible")
            .verdict(Expected.Verdict.ASK);
    Page page = log.page("log");
    page.line(0, 0, "Date", "SG", "Temp");
    double[] temps = {52, 51, 49, 47, 46, 44, 43, 41};
    for (int i = 0; i < temps.length; i++) {
      Entry e = new Entry(APPLE_7.at(2 * i), HYDROMETER, Thermometer.F, (temps[i] - 32) / 1.8);
      page.line(i + 1, 0, Cells.DATE.apply(e), Cells.SG.apply(e), e.temperature());
    }
    return log;
  }
}
