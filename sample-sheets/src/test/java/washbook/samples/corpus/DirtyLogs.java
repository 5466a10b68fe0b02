package washbook.samples.corpus;

import static washbook.log.Role.DATE;
import static washbook.log.Role.DAY;
import static washbook.log.Role.GRAVITY;
import static washbook.log.Role.NOTE;
import static washbook.log.Role.OTHER;
import static washbook.log.Role.TEMPERATURE;
import static washbook.samples.corpus.PlainLogs.HYDROMETER;
import static washbook.samples.corpus.PlainLogs.TWO_WEEKS;
import static washbook.samples.ferment.Ferment.APPLE_7;
import static washbook.samples.ferment.Ferment.MOLASSES_2;
import static washbook.samples.ferment.Ferment.PLUM_3;
import static washbook.samples.ferment.Ferment.SUGAR_4;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.poi.ss.usermodel.DateUtil;
import washbook.log.Role;
import washbook.samples.ferment.Entry;
import washbook.samples.ferment.Thermometer;

/** Cells as people really fill them in. */
final class DirtyLogs {
  private DirtyLogs() {}

  static List<Log> all() {
    return List.of(
        atCells(),
        atCellsCelsius(),
        gaps(),
        commaText(),
        quotedThousands(),
        unicodeText(),
        mixedForms(),
        unitCells(),
        typingErrors(),
        totals(),
        repeatedHeader(),
        formulas(),
        blankTemperature(),
        formerSpreadsheet());
  }

  private static Log atCells() {
    Log log = new Log("en-at-cells.csv", "Gravity and temperature in one cell: 1.085 @ 68F");
    List<Entry> e = Entry.readings(PLUM_3, HYDROMETER, Thermometer.F, TWO_WEEKS);
    log.table(log.page("log"), 0, 0)
        .column("Date", DATE, Cells.DATE)
        .column(
            "Reading",
            GRAVITY,
            "SG",
            x -> String.format("%.3f @ %.0fF", x.shown(), x.temperature()))
        .column("Comment", NOTE, Cells.notes(e, "start", "", "punched the cap down"))
        .rows(e);
    return log;
  }

  private static Log atCellsCelsius() {
    Log log = new Log("en-at-cells-c.xlsx", "SG cells such as 1.052 at 15°C and 1.052 (15C)");
    List<Entry> e = Entry.readings(APPLE_7, HYDROMETER, Thermometer.C, TWO_WEEKS);
    Page page = log.page("Apple 7");
    page.line(0, 0, "APPLE 7 - late pressing");
    page.merge(0, 0, 0, 3);
    log.table(page, 2, 0)
        .column("Day", DAY, Cells.DAY)
        .column(
            "SG",
            GRAVITY,
            "SG",
            x ->
                x.moment().day() < 4
                    ? String.format("%.3f at %.0f°C", x.shown(), x.temperature())
                    : String.format("%.3f (%.0fC)", x.shown(), x.temperature()))
        .column("Notes", NOTE, Cells.notes(e, "", "bubbling"))
        .rows(e);
    return log;
  }

  private static Log gaps() {
    Log log = new Log("en-gaps.csv", "n/a, dashes, ~1.05, question marks and blank rows");
    List<Entry> e = Entry.readings(MOLASSES_2, HYDROMETER, Thermometer.C, TWO_WEEKS);
    e.get(2).withoutReading("SG", "-").put("Notes", "forgot");
    e.get(3).put("SG", String.format("~%.2f", e.get(3).shown()));
    e.get(3).spoil("Temp C", "?");
    e.get(6).withoutReading("SG", "n/a").put("Temp C", "n/a");
    e.get(8).spoil("Temp C", "-");
    log.table(log.page("log"), 0, 0)
        .column("Date", DATE, Cells.DATE)
        .column("SG", GRAVITY, "SG", Cells.SG)
        .column("Temp C", TEMPERATURE, "C", Cells.TEMPERATURE)
        .column("Notes", NOTE, Cells.NOTHING)
        .rows(Cells.withBlankRows(e, 1, 6));
    return log;
  }

  private static Log commaText() {
    Log log = new Log("en-comma-text.xlsx", "Some gravities typed with a decimal comma as text");
    List<Entry> e = Entry.readings(SUGAR_4, HYDROMETER, Thermometer.C, TWO_WEEKS);
    for (int i : new int[] {1, 4, 5}) {
      e.get(i).put("SG", Cells.text("%.3f", ',').apply(e.get(i)));
    }
    e.get(7).put("Temp", String.format("%.0f,0", e.get(7).temperature()));
    log.table(log.page("Sheet1"), 0, 0)
        .column("Date", DATE, Cells.DATE)
        .column("SG", GRAVITY, "SG", Cells.SG)
        .column("Temp", TEMPERATURE, "C", Cells.TEMPERATURE)
        .rows(e);
    return log;
  }

  private static Log quotedThousands() {
    Log log =
        new Log("en-quoted-thousands.csv", "Every cell quoted, gravities as 1,085 (not 1.085)")
            .as(Dialect.COMMA.quoted().dates("MM/dd/yyyy"));
    List<Entry> e = Entry.readings(PLUM_3, HYDROMETER, Thermometer.F, 0, 1, 2, 3, 4, 5);
    log.table(log.page("log"), 0, 0)
        .column("Date", DATE, Cells.DATE)
        .column("Gravity", GRAVITY, "*", x -> new Page.Shown(x.shown() * 1000, "#,##0"))
        .column("Temp (F)", TEMPERATURE, "F", Cells.TEMPERATURE)
        .rows(e);
    return log;
  }

  private static Log unicodeText() {
    Log log =
        new Log("en-unicode.tsv", "UTF-16 with a byte order mark, as office suites export text")
            .as(Dialect.TAB.in(StandardCharsets.UTF_16LE).marked(true).lines("\r\n"));
    List<Entry> e = Entry.readings(APPLE_7, HYDROMETER, Thermometer.C_HALF, TWO_WEEKS);
    log.table(log.page("log"), 0, 0)
        .column("Date", DATE, Cells.DATE)
        .column("Time", Role.TIME, Cells.TIME)
        .column("SG", GRAVITY, "SG", Cells.SG)
        .column("Temp °C", TEMPERATURE, "C", Cells.TEMPERATURE)
        .rows(e);
    return log;
  }

  private static Log mixedForms() {
    Log log = new Log("en-mixed-forms.xlsx", "1084, 1.061 and .999 in one column");
    List<Entry> e = Entry.readings(PLUM_3, HYDROMETER, Thermometer.C, TWO_WEEKS);
    for (int i : new int[] {0, 1, 3, 9}) {
      e.get(i).put("S.G.", Cells.THOUSAND.apply(e.get(i)));
    }
    e.get(10).put("S.G.", String.format("%.3f", e.get(10).shown()).replaceFirst("^0", ""));
    log.table(log.page("Sheet1"), 0, 0)
        .column("Date", DATE, Cells.DATE)
        .column("S.G.", GRAVITY, "SG", Cells.SG)
        .column("Temp", TEMPERATURE, "C", Cells.TEMPERATURE)
        .rows(e);
    return log;
  }

  private static Log unitCells() {
    Log log = new Log("en-unit-cells.xlsx", "Units typed into the cells, °F and °C by turns");
    List<Entry> e = Entry.readings(SUGAR_4, HYDROMETER, Thermometer.C, TWO_WEEKS);
    for (int i = 0; i < e.size(); i++) {
      double c = e.get(i).temperatureC();
      // A person with two thermometers: the °F one reads to a tenth here.
      e.get(i)
          .put(
              "Temp",
              i % 3 == 1 ? String.format("%.1f F", c * 1.8 + 32) : String.format("%.0f C", c));
    }
    log.table(log.page("Sheet1"), 1, 0)
        .column("Date", DATE, Cells.DATE)
        .column("Gravity", GRAVITY, "SG", x -> String.format("%.3f SG", x.shown()))
        .column("Temp", TEMPERATURE, "*", Cells.TEMPERATURE)
        .rows(e);
    return log;
  }

  private static Log typingErrors() {
    Log log = new Log("en-typing-errors.xlsx", "1.850 for 1.085, a reading that rises, a 250 °C");
    List<Entry> e = Entry.readings(PLUM_3, HYDROMETER, Thermometer.C, TWO_WEEKS);
    e.get(2).spoil("SG", 1.850);
    e.get(4).spoil("SG", 1.096);
    e.get(6).spoil("Temp (C)", 250);
    e.get(8).spoil("SG", 0.09);
    log.table(log.page("Sheet1"), 0, 0)
        .column("Date", DATE, Cells.DATE)
        .column("SG", GRAVITY, "SG", Cells.SG)
        .column("Temp (C)", TEMPERATURE, "C", Cells.TEMPERATURE)
        .rows(e);
    return log;
  }

  private static Log totals() {
    Log log = new Log("en-totals.xls", "An average and a total row, then remarks, under the table");
    List<Entry> e = Entry.readings(SUGAR_4, HYDROMETER, Thermometer.C, TWO_WEEKS);
    Page page = log.page("Sugar 4");
    page.line(0, 0, "Sugar 4: 5 kg sugar in 20 L");
    log.table(page, 1, 0)
        .column("Date", DATE, Cells.DATE)
        .column("SG", GRAVITY, "SG", Cells.SG)
        .column("Temp C", TEMPERATURE, "C", Cells.TEMPERATURE)
        .column("Minutes spent", OTHER, Cells.always(10.0))
        .rows(
            Cells.lines(
                e,
                Cells.raw("Average", new Page.Formula("AVERAGE(B3:B13)", 1.0207), 24.2, 10),
                Cells.raw("Total", null, null, new Page.Formula("SUM(D3:D13)", 110)),
                null,
                Cells.raw("Next time more nutrient. Racked into two 10 L jars.")));
    return log;
  }

  private static Log repeatedHeader() {
    Log log = new Log("en-repeated-header.csv", "The header comes again for each week");
    List<Entry> e = Entry.readings(APPLE_7, HYDROMETER, Thermometer.C, TWO_WEEKS);
    Object header = Cells.raw("Date", "SG", "Temp C", "Notes");
    log.table(log.page("log"), 1, 0)
        .column("Date", DATE, Cells.DATE)
        .column("SG", GRAVITY, "SG", Cells.SG)
        .column("Temp C", TEMPERATURE, "C", Cells.TEMPERATURE)
        .column("Notes", NOTE, Cells.notes(e, "fizzing a little"))
        .rows(
            Cells.lines(
                e.subList(0, 4),
                null,
                Cells.raw("Week 2"),
                header,
                e.subList(4, 8),
                null,
                Cells.raw("Week 3"),
                header,
                e.subList(8, 11)));
    return log;
  }

  private static Log formulas() {
    Log log = new Log("en-formulas.xlsx", "Dates and °C come from formulas; °F is what was typed");
    List<Entry> e = Entry.readings(PLUM_3, HYDROMETER, Thermometer.F, 0, 1, 2, 3, 4, 5, 6, 7);
    double first = DateUtil.getExcelDate(e.get(0).time().toLocalDate());
    for (int i = 1; i < e.size(); i++) {
      e.get(i)
          .put(
              "Date",
              new Page.Shown(new Page.Formula("A" + (i + 1) + "+1", first + i), "dd/mm/yyyy"));
    }
    log.table(log.page("Sheet1"), 0, 0)
        .column("Date", DATE, Cells.DATE)
        .column("SG", GRAVITY, "SG", Cells.SG)
        .column("Temp F", null, Cells.TEMPERATURE)
        .column(
            "Temp C",
            null,
            x ->
                new Page.Formula(
                    "(C" + (Math.round(x.moment().day()) + 2) + "-32)/1.8", x.temperatureC()))
        .rows(e);
    return log;
  }

  private static Log blankTemperature() {
    Log log =
        new Log("en-blank-temperatures.csv", "No temperature anywhere and no word about it")
            .verdict(Expected.Verdict.ASK);
    List<Entry> e = Entry.readings(SUGAR_4, HYDROMETER, Thermometer.C, TWO_WEEKS);
    log.table(log.page("log"), 0, 0)
        .column("Date", DATE, Cells.DATE)
        .column("SG", GRAVITY, "SG", Cells.SG)
        .column("Temp", TEMPERATURE, "", Cells.NOTHING)
        .rows(e);
    return log;
  }

  private static Log formerSpreadsheet() {
    Log log =
        new Log(
                "en-trailing-commas.csv",
                "Empty rows and columns as a sheet exports them, old Mac line ends")
            .as(Dialect.COMMA.lines("\r").dates("d-MMM-yy"));
    List<Entry> e = Entry.readings(MOLASSES_2, HYDROMETER, Thermometer.C, TWO_WEEKS);
    Page page = log.page("log");
    page.line(1, 1, "Molasses 2");
    log.table(page, 3, 1)
        .column("Date", DATE, Cells.DATE)
        .column("SG", GRAVITY, "SG", Cells.SG)
        .column("Temp (°C)", TEMPERATURE, "C", Cells.TEMPERATURE)
        .rows(e);
    page.line(20, 12, "");
    return log;
  }
}
