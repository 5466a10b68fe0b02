package washbook.samples.corpus;

import static washbook.samples.corpus.PlainLogs.HYDROMETER;
import static washbook.samples.ferment.Ferment.APPLE_7;
import static washbook.samples.ferment.Ferment.MOLASSES_2;
import static washbook.samples.ferment.Ferment.PLUM_3;
import static washbook.samples.ferment.Ferment.SUGAR_4;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import washbook.functions.scale.SugarScale;
import washbook.log.Role;
import washbook.samples.ferment.Entry;
import washbook.samples.ferment.Ferment;
import washbook.samples.ferment.Instrument;
import washbook.samples.ferment.Thermometer;

/** Logs in German, French and Dutch; more in {@link SouthernLogs}. */
final class LanguageLogs {
  static final double[] DAYS = {0, 1, 2, 3, 4, 6, 8, 11, 14};
  static final Instrument OECHSLE = Instrument.reading(SugarScale.OECHSLE, 1);

  private LanguageLogs() {}

  static List<Log> all() {
    List<Log> logs = new ArrayList<>();
    logs.addAll(german());
    logs.addAll(french());
    logs.addAll(dutch());
    return logs;
  }

  /**
   * A table from headers in short form: {@code role:header:unit}. Dates, batches and readings come
   * from the entries, in the dialect of the file.
   */
  static Sheetful table(Log log, Page page, int row, List<Entry> entries, String... columns) {
    Sheetful table = log.table(page, row, 0);
    for (String column : columns) {
      String[] part = column.split(":", -1);
      Role role = part[0].equals("?") ? null : Role.valueOf(part[0]);
      String unit = part.length > 2 ? part[2] : "";
      table.column(part[1], role, unit, e -> value(role, unit, e));
    }
    return table.rows(entries);
  }

  private static Object value(Role role, String unit, Entry e) {
    if (role == null) {
      return "x";
    }
    return switch (role) {
      case DATE -> Cells.DATE.apply(e);
      case TIME -> Cells.TIME.apply(e);
      case DAY -> e.moment().day();
      case HOURS -> e.moment().day() * 24;
      case BATCH -> Cells.BATCH.apply(e);
      case GRAVITY -> unit.equals("SG") ? Cells.SG.apply(e) : Cells.SHOWN.apply(e);
      case TEMPERATURE -> e.temperature();
      default -> null;
    };
  }

  static List<Entry> plain(Ferment f) {
    return Entry.readings(f, HYDROMETER, Thermometer.C, DAYS);
  }

  private static List<Log> german() {
    Log semicolon = new Log("de-semikolon.csv", "Semikolon, Dezimalkomma").as(Dialect.SEMICOLON);
    List<Entry> e = plain(PLUM_3);
    e.get(1).put("Bemerkung", "Maische umgerührt; gärt kräftig");
    table(
        semicolon,
        semicolon.page("x"),
        0,
        e,
        "DATE:Datum",
        "TIME:Uhrzeit",
        "GRAVITY:Dichte:SG",
        "TEMPERATURE:Temperatur (°C):C",
        "NOTE:Bemerkung");

    Log oechsle =
        new Log("de-oechsle.xlsx", "Mostgewicht in Oechsle, zwei Ansätze").as(Dialect.SEMICOLON);
    List<Entry> two = new ArrayList<>();
    two.addAll(Entry.readings(PLUM_3, OECHSLE, Thermometer.C, DAYS));
    two.addAll(Entry.readings(APPLE_7, OECHSLE, Thermometer.C, DAYS));
    two.sort(Comparator.comparing(Entry::time));
    Page cellar = oechsle.page("Kellerbuch");
    cellar.line(0, 0, "Kellerbuch Winter 2024").merge(0, 0, 0, 3);
    table(
        oechsle,
        cellar,
        2,
        two,
        "BATCH:Ansatz",
        "DATE:Datum",
        "GRAVITY:Mostgewicht (°Oe):OECHSLE",
        "TEMPERATURE:Temp. [°C]:C",
        "NOTE:Notizen");

    Log kmw = new Log("de-kmw.ods", "Klosterneuburger Mostwaage");
    Page plum = kmw.page("Plum 3");
    plum.line(0, 0, "Charge: Plum 3");
    table(
        kmw,
        plum,
        1,
        Entry.readings(
            PLUM_3, Instrument.reading(SugarScale.KMW, 0.1), Thermometer.C, 0, 1, 2, 3, 4, 5),
        "DAY:Tag",
        "GRAVITY:KMW:KMW",
        "TEMPERATURE:Grad C:C",
        "NOTE:Anmerkung");

    Log plato = new Log("de-restextrakt.xls", "Stammwürze oben, scheinbarer Restextrakt in °P");
    Page sugar = plato.page("Zuckerwash");
    Instrument saccharometer = Instrument.reading(SugarScale.PLATO, 0.1);
    double original = saccharometer.showsOriginal(SUGAR_4.at(0));
    sugar.line(0, 0, "Charge", "Sugar 4").line(1, 0, "Stammwürze (°P)", original);
    Sheetful t = plato.table(sugar, 3, 0).stated(SugarScale.PLATO.toGravity(original), 0.0002);
    t.column("Datum", Role.DATE, Cells.DATE)
        .column("Restextrakt scheinbar (°P)", Role.GRAVITY, "PLATO", Cells.TENTH)
        .column("Gärtemperatur °C", Role.TEMPERATURE, "C", Cells.TEMPERATURE)
        .rows(Entry.readings(SUGAR_4, saccharometer, Thermometer.C, 1, 2, 3, 5, 8, 11));

    Log spindle =
        new Log("de-spindel.tsv", "Spindelwert 1084, Datum ohne Jahr")
            .as(Dialect.TAB.decimals(','));
    List<Entry> m = plain(MOLASSES_2);
    m.forEach(
        x ->
            x.put("Wann", Cells.date("d.M.", Locale.GERMAN).apply(x))
                .put("Spindel", Cells.THOUSAND.apply(x)));
    table(
        spindle,
        spindle.page("x"),
        0,
        m,
        "DATE:Wann",
        "GRAVITY:Spindel:*",
        "TEMPERATURE:Temp:C",
        "NOTE:Was");

    Log once =
        new Log("de-korrigiert.xlsx", "Dichte auf 20 °C umgerechnet, Alkohol selbst gerechnet")
            .as(Dialect.SEMICOLON);
    List<Entry> c = Entry.readingsAt(20, APPLE_7, HYDROMETER, DAYS);
    Page apple = once.page("Apple 7");
    apple.line(0, 0, "Alle Werte auf 20 °C korrigiert");
    once.table(apple, 2, 0)
        .alreadyCorrected()
        .column("Datum", Role.DATE, Cells.DATE)
        .column("Dichte", Role.GRAVITY, "SG", Cells.SG)
        .column(
            "Alkohol (% vol)", Role.OWN_ABV, "", x -> OwnFigures.thumb(c.get(0).shown(), x.shown()))
        .rows(c);
    return List.of(semicolon, oechsle, kmw, plato, spindle, once);
  }

  private static List<Log> french() {
    Log latin =
        new Log("fr-cahier.csv", "Latin-1, points-virgules, densité 1084")
            .as(
                Dialect.SEMICOLON
                    .marked(false)
                    .in(StandardCharsets.ISO_8859_1)
                    .dates("dd/MM/yyyy"));
    List<Entry> e = plain(PLUM_3);
    e.forEach(x -> x.put("Densité", Cells.THOUSAND.apply(x)));
    e.get(2).put("Remarques", "chapeau enfoncé, odeur agréable");
    table(
        latin,
        latin.page("x"),
        0,
        e,
        "DATE:Date",
        "GRAVITY:Densité:*",
        "TEMPERATURE:Température:C",
        "NOTE:Remarques");

    Log vat =
        new Log("fr-cuves.xlsx", "Une colonne pour la cuve")
            .as(Dialect.SEMICOLON.dates("dd/MM/yyyy"));
    List<Entry> two = new ArrayList<>(plain(APPLE_7));
    two.addAll(plain(SUGAR_4));
    Page book = vat.page("Suivi");
    book.line(0, 0, "Suivi de fermentation").merge(0, 0, 0, 4);
    table(
        vat,
        book,
        1,
        two,
        "DATE:Jour",
        "BATCH:Cuve",
        "GRAVITY:Densité du moût:SG",
        "TEMPERATURE:T (°C):C",
        "NOTE:Observations");

    Log initial =
        new Log("fr-densite-initiale.ods", "Densité initiale en tête, heures depuis le départ");
    Page page = initial.page("Plum 3");
    page.line(0, 0, "Lot :", "Plum 3").line(1, 0, "Densité initiale :", 1.084);
    initial
        .table(page, 3, 0)
        .stated(1.084, 0.0005)
        .column("Heures", Role.HOURS, x -> x.moment().day() * 24)
        .column("Densité lue", Role.GRAVITY, "SG", Cells.SG)
        .column("Temp. du moût (°C)", Role.TEMPERATURE, "C", Cells.TEMPERATURE)
        .rows(Entry.readings(PLUM_3, HYDROMETER, Thermometer.C, 1, 2, 3, 4, 6, 9));

    Log brix =
        new Log("fr-brix.xlsx", "Degrés Brix au mustimètre")
            .as(Dialect.SEMICOLON.dates("dd/MM/yyyy"));
    table(
        brix,
        brix.page("Feuille1"),
        0,
        Entry.readings(MOLASSES_2, Instrument.reading(SugarScale.BRIX, 0.2), Thermometer.C, DAYS),
        "DATE:Date",
        "TIME:Heure",
        "GRAVITY:Degré Brix (mustimètre):BRIX",
        "TEMPERATURE:Temp. °C:C",
        "NOTE:Commentaire");
    return List.of(latin, vat, initial, brix);
  }

  private static List<Log> dutch() {
    Log plain =
        new Log("nl-logboek.xlsx", "Datum, SG, temperatuur")
            .as(Dialect.SEMICOLON.dates("d-M-yyyy"));
    table(
        plain,
        plain.page("Logboek"),
        0,
        plain(PLUM_3),
        "DATE:Datum",
        "TIME:Tijd",
        "GRAVITY:SG:SG",
        "TEMPERATURE:Temperatuur (°C):C",
        "NOTE:Opmerkingen");

    Log lots =
        new Log("nl-partijen.csv", "Twee partijen in één lijst")
            .as(Dialect.SEMICOLON.marked(false).dates("d-M-yyyy"));
    List<Entry> two = new ArrayList<>(plain(APPLE_7));
    two.addAll(plain(MOLASSES_2));
    table(
        lots,
        lots.page("x"),
        0,
        two,
        "BATCH:Partij",
        "DATE:Datum",
        "GRAVITY:Soortelijk gewicht:SG",
        "TEMPERATURE:Temp:C");

    Log begin = new Log("nl-begin-sg.xlsx", "Begin-SG boven de tabel");
    Page page = begin.page("Suiker");
    page.line(0, 0, "Brouwsel", "Sugar 4").line(1, 0, "Begin SG", 1.09);
    begin
        .table(page, 3, 0)
        .stated(1.09, 0.0006)
        .column("Dag", Role.DAY, Cells.DAY)
        .column("Gemeten SG", Role.GRAVITY, "SG", Cells.SG)
        .column("Temp. wash °C", Role.TEMPERATURE, "C", Cells.TEMPERATURE)
        .column("Notities", Role.NOTE, Cells.NOTHING)
        .rows(Entry.readings(SUGAR_4, HYDROMETER, Thermometer.C, 1, 2, 3, 5, 8));

    Log oechsle = new Log("nl-oechsle.xls", "Mostgewicht in graden Oechsle");
    Page most = oechsle.page("Appel");
    most.line(0, 0, "Apple 7");
    table(
        oechsle,
        most,
        2,
        Entry.readings(APPLE_7, OECHSLE, Thermometer.C, DAYS),
        "DATE:Datum",
        "GRAVITY:°Oechsle:OECHSLE",
        "TEMPERATURE:°C:C",
        "NOTE:Opm.");
    return List.of(plain, lots, begin, oechsle);
  }
}
