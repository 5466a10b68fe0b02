package washbook.samples.corpus;

import static washbook.samples.corpus.LanguageLogs.DAYS;
import static washbook.samples.corpus.LanguageLogs.plain;
import static washbook.samples.corpus.LanguageLogs.table;
import static washbook.samples.corpus.PlainLogs.HYDROMETER;
import static washbook.samples.ferment.Ferment.APPLE_7;
import static washbook.samples.ferment.Ferment.MOLASSES_2;
import static washbook.samples.ferment.Ferment.PLUM_3;
import static washbook.samples.ferment.Ferment.SUGAR_4;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import washbook.functions.scale.SugarScale;
import washbook.log.Role;
import washbook.samples.ferment.Entry;
import washbook.samples.ferment.Ferment;
import washbook.samples.ferment.Instrument;
import washbook.samples.ferment.Thermometer;

/** Logs in Spanish, Italian, Portuguese and Afrikaans. */
final class SouthernLogs {
  private static final Dialect SLASHES = Dialect.SEMICOLON.dates("dd/MM/yyyy");

  private SouthernLogs() {}

  static List<Log> all() {
    List<Log> logs = new ArrayList<>();
    logs.addAll(spanish());
    logs.addAll(italian());
    logs.addAll(portuguese());
    logs.addAll(afrikaans());
    return logs;
  }

  private static Log stated(
      String file,
      String about,
      Ferment f,
      double og,
      Dialect dialect,
      Object[] keys,
      String... heads) {
    Log log = new Log(file, about).as(dialect);
    Page page = log.page("1");
    page.line(0, 0, keys);
    log.table(page, 2, 0)
        .stated(og, 0.0006)
        .column(heads[0], Role.DATE, Cells.DATE)
        .column(heads[1], Role.GRAVITY, "SG", Cells.SG)
        .column(heads[2], Role.TEMPERATURE, "C", Cells.TEMPERATURE)
        .column(heads[3], Role.NOTE, Cells.NOTHING)
        .rows(Entry.readings(f, HYDROMETER, Thermometer.C, 1, 2, 3, 4, 6, 9));
    return log;
  }

  private static List<Log> two(Log log, Ferment a, Ferment b, String... columns) {
    List<Entry> both = new ArrayList<>(plain(a));
    both.addAll(plain(b));
    table(log, log.page("1"), 0, both, columns);
    return List.of(log);
  }

  private static List<Log> spanish() {
    Log plain = new Log("es-registro.xlsx", "Fecha, hora, densidad, temperatura").as(SLASHES);
    table(
        plain,
        plain.page("Registro"),
        0,
        plain(PLUM_3),
        "DATE:Fecha",
        "TIME:Hora",
        "GRAVITY:Densidad:SG",
        "TEMPERATURE:Temperatura (°C):C",
        "NOTE:Observaciones");
    Log lots = new Log("es-lotes.csv", "Dos lotes en una lista").as(SLASHES.marked(false));
    two(
        lots,
        APPLE_7,
        SUGAR_4,
        "BATCH:Lote",
        "DATE:Fecha",
        "GRAVITY:Densidad:SG",
        "TEMPERATURE:Temp.:C",
        "NOTE:Notas");
    Log initial =
        stated(
            "es-densidad-inicial.ods",
            "La densidad inicial arriba",
            MOLASSES_2,
            1.098,
            SLASHES,
            new Object[] {"Lote", "Molasses 2", "Densidad inicial", 1.098},
            "Día",
            "Lectura densímetro",
            "Temp. mosto °C",
            "Comentarios");
    Log brix = new Log("es-brix.xls", "Grados Brix con densímetro").as(SLASHES);
    table(
        brix,
        brix.page("Hoja1"),
        1,
        Entry.readings(PLUM_3, Instrument.reading(SugarScale.BRIX, 0.2), Thermometer.C, DAYS),
        "DATE:Fecha",
        "GRAVITY:Grados Brix (densímetro):BRIX",
        "TEMPERATURE:T °C:C");
    return List.of(plain, lots, initial, brix);
  }

  private static List<Log> italian() {
    Log plain =
        new Log("it-registro.csv", "Data, ora, densità, temperatura")
            .as(SLASHES.in(StandardCharsets.ISO_8859_1).marked(false));
    table(
        plain,
        plain.page("x"),
        0,
        plain(APPLE_7),
        "DATE:Data",
        "TIME:Ora",
        "GRAVITY:Densità:SG",
        "TEMPERATURE:Temperatura °C:C",
        "NOTE:Note");
    Log lots = new Log("it-lotti.xlsx", "Due lotti in un elenco").as(SLASHES);
    two(
        lots,
        PLUM_3,
        MOLASSES_2,
        "DATE:Data",
        "BATCH:Lotto",
        "GRAVITY:Densità mosto:SG",
        "TEMPERATURE:Temp. (°C):C",
        "NOTE:Osservazioni");
    Log initial =
        stated(
            "it-densita-iniziale.xls",
            "La densità iniziale sopra",
            SUGAR_4,
            1.09,
            SLASHES,
            new Object[] {"Lotto: Sugar 4", null, "Densità iniziale:", 1.09},
            "Giorno",
            "Peso specifico",
            "Temperatura",
            "Annotazioni");
    Log brix = new Log("it-brix.ods", "Gradi Brix").as(SLASHES);
    table(
        brix,
        brix.page("Foglio1"),
        0,
        Entry.readings(PLUM_3, Instrument.reading(SugarScale.BRIX, 0.2), Thermometer.C, DAYS),
        "DATE:Data",
        "GRAVITY:Gradi Brix (densimetro):BRIX",
        "TEMPERATURE:Temperatura del mosto °C:C",
        "NOTE:Note");
    return List.of(plain, lots, initial, brix);
  }

  private static List<Log> portuguese() {
    Log plain = new Log("pt-registo.xlsx", "Data, hora, densidade, temperatura").as(SLASHES);
    table(
        plain,
        plain.page("Registo"),
        2,
        plain(SUGAR_4),
        "DATE:Data",
        "TIME:Hora",
        "GRAVITY:Densidade:SG",
        "TEMPERATURE:Temperatura (°C):C",
        "NOTE:Observações");
    Log lots =
        new Log("pt-lotes.tsv", "Dois lotes em uma lista")
            .as(Dialect.TAB.decimals(',').dates("dd/MM/yyyy"));
    two(
        lots,
        PLUM_3,
        APPLE_7,
        "BATCH:Lote",
        "DATE:Data",
        "GRAVITY:Densidade:SG",
        "TEMPERATURE:Temp.:C",
        "NOTE:Notas");
    Log initial =
        stated(
            "pt-densidade-inicial.ods",
            "A densidade inicial em cima",
            PLUM_3,
            1.084,
            SLASHES,
            new Object[] {"Lote", "Plum 3", null, "Densidade inicial", 1.084},
            "Data",
            "Densidade lida",
            "Temp. do mosto (°C)",
            "Comentários");
    Log brix = new Log("pt-baume.csv", "Graus Baumé").as(SLASHES);
    table(
        brix,
        brix.page("x"),
        0,
        Entry.readings(MOLASSES_2, Instrument.reading(SugarScale.BAUME, 0.1), Thermometer.C, DAYS),
        "DAY:Dia",
        "GRAVITY:Graus Baumé:BAUME",
        "TEMPERATURE:Temperatura:C",
        "NOTE:Notas");
    return List.of(plain, lots, initial, brix);
  }

  private static List<Log> afrikaans() {
    Log plain = new Log("af-logboek.xlsx", "Datum, SG, temperatuur").as(Dialect.COMMA);
    table(
        plain,
        plain.page("Logboek"),
        0,
        plain(MOLASSES_2),
        "DATE:Datum",
        "TIME:Tyd",
        "GRAVITY:SG:SG",
        "TEMPERATURE:Temperatuur (°C):C",
        "NOTE:Aantekeninge");
    Log balling = new Log("af-balling.ods", "Balling, soos in die kelder");
    Page page = balling.page("Plum 3");
    page.line(0, 0, "Plum 3");
    table(
        balling,
        page,
        1,
        Entry.readings(PLUM_3, Instrument.reading(SugarScale.BALLING, 0.1), Thermometer.C, DAYS),
        "DATE:Datum",
        "GRAVITY:Balling:BALLING",
        "TEMPERATURE:Temp:C",
        "NOTE:Opmerkings");
    Log lots =
        new Log("af-lotte.csv", "Twee lotte in een lys")
            .as(Dialect.SEMICOLON.marked(false).dates("yyyy/MM/dd"));
    two(
        lots,
        APPLE_7,
        SUGAR_4,
        "BATCH:Lot",
        "DATE:Datum",
        "GRAVITY:Digtheid:SG",
        "TEMPERATURE:Temp °C:C",
        "NOTE:Notas");
    Log initial =
        stated(
            "af-begin-sg.xls",
            "Die aanvanklike SG bo-aan",
            SUGAR_4,
            1.09,
            Dialect.COMMA,
            new Object[] {"Lot", "Sugar 4", "Aanvanklike SG", 1.09},
            "Datum",
            "Lesing (SG)",
            "Temp van wash °C",
            "Nota");
    return List.of(plain, balling, lots, initial);
  }
}
