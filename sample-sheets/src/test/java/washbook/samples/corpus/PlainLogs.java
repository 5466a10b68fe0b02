package washbook.samples.corpus;

import static washbook.functions.scale.SugarScale.POINTS;
import static washbook.functions.scale.SugarScale.SG;
import static washbook.log.Role.DATE;
import static washbook.log.Role.DAY;
import static washbook.log.Role.GRAVITY;
import static washbook.log.Role.HOURS;
import static washbook.log.Role.NOTE;
import static washbook.log.Role.OTHER;
import static washbook.log.Role.TEMPERATURE;
import static washbook.log.Role.TIME;
import static washbook.samples.ferment.Ferment.APPLE_7;
import static washbook.samples.ferment.Ferment.MOLASSES_2;
import static washbook.samples.ferment.Ferment.PLUM_3;
import static washbook.samples.ferment.Ferment.SUGAR_4;

import java.util.List;
import washbook.log.Role;
import washbook.samples.ferment.Entry;
import washbook.samples.ferment.Instrument;
import washbook.samples.ferment.Thermometer;

/** One batch in one table, in English, kept by people who like order more or less. */
final class PlainLogs {
  static final Instrument HYDROMETER = Instrument.reading(SG, 0.001);
  static final Instrument SIXTY = HYDROMETER.calibratedAt(Instrument.SIXTY_F);
  static final double[] TWO_WEEKS = {0, 1, 2, 3, 4, 5, 6.5, 8, 10, 12, 14};

  private PlainLogs() {}

  static List<Log> all() {
    return List.of(
        tidy(),
        sixtyF(),
        points(),
        thousand(),
        warmNumbers(),
        hours(),
        dayWords(),
        weekdays(),
        order(),
        unitRow(),
        deep(),
        acids());
  }

  private static Log tidy() {
    Log log = new Log("en-tidy.xlsx", "Date, SG, °C and notes; nothing else");
    List<Entry> e = Entry.readings(PLUM_3, HYDROMETER, Thermometer.C, TWO_WEEKS);
    log.table(log.page("Plum 3"), 0, 0)
        .column("Date", DATE, Cells.DATE)
        .column("SG", GRAVITY, "SG", Cells.SG)
        .column("Temp (°C)", TEMPERATURE, "C", Cells.TEMPERATURE)
        .column("Notes", NOTE, Cells.notes(e, "Yeast in", "", "foaming", "stirred"))
        .rows(e);
    return log;
  }

  private static Log sixtyF() {
    Log log = new Log("en-60f.xlsx", "°F readings with a hydrometer calibrated at 60 °F");
    Page page = log.page("Sheet1");
    page.line(0, 0, "Cider apple, winter pressing");
    page.line(1, 0, "Batch:", "Apple 7");
    page.line(2, 0, "Hydrometer calibrated at 60F");
    List<Entry> e = Entry.readings(APPLE_7, SIXTY, Thermometer.F, TWO_WEEKS);
    log.table(page, 4, 0)
        .column("Date", DATE, Cells.DATE)
        .column("Time", TIME, Cells.TIME)
        .column("Gravity", GRAVITY, "SG", Cells.SG)
        .column("Temp °F", TEMPERATURE, "F", Cells.TEMPERATURE)
        .column("Comments", NOTE, Cells.notes(e, "", "lid on", "", "", "smells good"))
        .rows(e);
    return log;
  }

  private static Log points() {
    Log log = new Log("en-points.csv", "Gravity points by day number");
    List<Entry> e =
        Entry.readings(
            MOLASSES_2, Instrument.reading(POINTS, 1), Thermometer.C, 0, 1, 2, 3, 4, 5, 6, 7, 9);
    log.table(log.page("points"), 0, 0)
        .column("Day", DAY, Cells.DAY)
        .column("Points", GRAVITY, "POINTS", Cells.SHOWN)
        .column("Temp C", TEMPERATURE, "C", Cells.TEMPERATURE)
        .rows(e);
    return log;
  }

  private static Log thousand() {
    Log log =
        new Log(
            "en-1085.csv", "Gravities as 1085, temperatures without a unit that can only be °C");
    List<Entry> e = Entry.readings(PLUM_3, HYDROMETER, Thermometer.C, TWO_WEEKS);
    log.table(log.page("log"), 0, 0)
        .column("Date", DATE, Cells.DATE)
        .column("Gravity", GRAVITY, "*", Cells.THOUSAND)
        .column("Temp", TEMPERATURE, "C", Cells.TEMPERATURE)
        .rows(e);
    return log;
  }

  private static Log warmNumbers() {
    Log log =
        new Log("en-no-unit-f.tsv", "Temperatures without a unit that can only be °F")
            .as(Dialect.TAB.dates("M/d/yyyy"));
    List<Entry> e = Entry.readings(SUGAR_4, SIXTY, Thermometer.F, TWO_WEEKS);
    Page page = log.page("log");
    page.line(0, 0, "Sugar 4", null, "hydrometer: 60 F");
    log.table(page, 1, 0)
        .column("date", DATE, Cells.DATE)
        .column("hydrometer", GRAVITY, "SG", Cells.SG)
        .column("temp", TEMPERATURE, "F", Cells.TEMPERATURE)
        .column("what i did", null, Cells.notes(e, "pitched", "", "nutrient", "", "", "slow"))
        .rows(e);
    return log;
  }

  private static Log hours() {
    Log log = new Log("en-hours.csv", "Hours since the start; key lines with = signs");
    Page page = log.page("log");
    page.line(0, 0, "batch = Molasses 2");
    page.line(1, 0, "volume = 60 L");
    page.line(2, 0, "hydrometer calibration = 20 C");
    List<Entry> e =
        Entry.readings(MOLASSES_2, HYDROMETER, Thermometer.C_HALF, 0, 0.5, 1, 1.5, 2, 3, 4, 5.5, 7);
    log.table(page, 4, 0)
        .column("Hours", HOURS, x -> x.moment().day() * 24)
        .column("S.G.", GRAVITY, "SG", Cells.SG)
        .column("deg C", TEMPERATURE, "C", Cells.TEMPERATURE)
        .rows(e);
    return log;
  }

  private static Log dayWords() {
    Log log =
        new Log("en-day-words.xls", "Day 1, Day 2 as words in the first column without a header");
    List<Entry> e = Entry.readings(SUGAR_4, HYDROMETER, Thermometer.C, 0, 1, 2, 3, 4, 6, 8, 11);
    log.table(log.page("Sugar 4"), 0, 0)
        .column("", null, x -> "Day " + Math.round(x.moment().day() + 1))
        .column("SG", GRAVITY, "SG", Cells.SG)
        .column("Wash temp", TEMPERATURE, "C", Cells.TEMPERATURE)
        .rows(e);
    return log;
  }

  private static Log weekdays() {
    Log log = new Log("en-weekdays.xlsx", "Weekday and date columns, gravity as text numbers");
    List<Entry> e = Entry.readings(APPLE_7, HYDROMETER, Thermometer.C, TWO_WEEKS);
    log.table(log.page("Apple"), 1, 1)
        .column("Day", null, Cells.date("EEE"))
        .column("Date", DATE, Cells.date("d MMM yyyy"))
        .column("Specific Gravity", GRAVITY, "SG", Cells.text("%.3f", '.'))
        .column("Temperature (C)", TEMPERATURE, "C", Cells.TEMPERATURE)
        .rows(e);
    return log;
  }

  private static Log order() {
    Log log = new Log("en-order.ods", "Notes first, date last, newest reading on top");
    List<Entry> e =
        Entry.readings(PLUM_3, HYDROMETER, Thermometer.C_HALF, 14, 11, 9, 7, 5, 4, 3, 2, 1, 0);
    log.table(log.page("plums"), 2, 0)
        .column("Remarks", NOTE, Cells.notes(e, "racked", "", "", "quiet", "", "", "", "strong"))
        .column("Temp. (°C)", TEMPERATURE, "C", Cells.TEMPERATURE)
        .column("Hydrometer reading", GRAVITY, "SG", Cells.SG)
        .column("When", DATE, Cells.DATE_TIME)
        .rows(e);
    return log;
  }

  private static Log unitRow() {
    Log log = new Log("en-unit-row.xlsx", "A second header row holds the units");
    List<Entry> e = Entry.readings(SUGAR_4, HYDROMETER, Thermometer.F, TWO_WEEKS);
    log.table(log.page("Log"), 2, 0)
        .column("Date", DATE, Cells.DATE)
        .column("Gravity", GRAVITY, "SG", Cells.SG)
        .column("Temperature", TEMPERATURE, "F", Cells.TEMPERATURE)
        .column("Volume", Role.VOLUME, "L", Cells.always(25.0))
        .unitRow(null, "(SG)", "(°F)", "(litres)")
        .rows(e);
    return log;
  }

  private static Log deep() {
    Log log = new Log("en-deep.xlsx", "The table starts at E12 under a page of other things");
    Page page = log.page("Plum 3 2024");
    page.line(1, 1, "Orchard co-operative, cellar book");
    page.line(3, 1, "To do", null, "Buy bungs", null, 12);
    page.line(4, 1, null, null, "Wash the press", null, 3);
    page.line(6, 1, "Fruit (kg)", 140, "Water (L)", 40);
    page.line(7, 1, "Pectin enzyme (g)", 30);
    List<Entry> e = Entry.readings(PLUM_3, HYDROMETER, Thermometer.C, TWO_WEEKS);
    log.table(page, 11, 4)
        .column("Date", DATE, Cells.DATE)
        .column("SG", GRAVITY, "SG", Cells.SG)
        .column("°C", TEMPERATURE, "C", Cells.TEMPERATURE)
        .column("By", null, Cells.always("R."))
        .rows(e);
    return log;
  }

  private static Log acids() {
    Log log =
        new Log("en-acids.xlsx", "pH, acid and bubbles stand between the columns that matter");
    List<Entry> e = Entry.readings(APPLE_7, HYDROMETER, Thermometer.C_TENTH, TWO_WEEKS);
    log.table(log.page("Apple 7"), 0, 0)
        .column("Date", DATE, Cells.DATE)
        .column("pH", OTHER, x -> 3.4 + Math.round(x.moment().day()) / 100.0)
        .column("TA (g/L)", OTHER, x -> 6.5 - Math.round(x.moment().day()) / 20.0)
        .column("SG", GRAVITY, "SG", Cells.SG)
        .column("Bubbles per min", OTHER, x -> 20.0 - Math.round(x.moment().day()))
        .column("Free SO2 (ppm)", OTHER, Cells.always(20.0))
        .column("T (°C)", TEMPERATURE, "C", Cells.TEMPERATURE)
        .rows(e);
    return log;
  }
}
