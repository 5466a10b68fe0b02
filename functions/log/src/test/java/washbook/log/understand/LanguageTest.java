package washbook.log.understand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.LogColumn;
import washbook.log.LogTable;
import washbook.log.Role;
import washbook.log.Understanding;
import washbook.log.WrittenScale;
import washbook.log.fill.FillOptions;
import washbook.log.fill.LogFiller;
import washbook.log.fill.SimpleLogTest;
import washbook.log.sheet.TestGrid;
import washbook.log.words.DateText;

/** One log in eight languages, and every scale. */
class LanguageTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Batch;Date;Specific gravity;Temperature °C;Sugar added kg;Remarks;Starting gravity",
        "Ansatz;Datum;Spindelwert;Gärtemperatur °C;Zuckerzugabe kg;Bemerkungen;Anfangsdichte",
        "Lot;Date;Densité;Température °C;Sucre ajouté kg;Remarques;Densité initiale",
        "Lote;Fecha;Densidad;Temperatura °C;Azúcar añadido kg;Observaciones;Densidad inicial",
        "Lotto;Data;Densità;Temperatura °C;Zucchero aggiunto kg;Note;Densità iniziale",
        "Lote;Data;Densidade;Temperatura °C;Açúcar adicionado kg;Notas;Densidade inicial",
        "Partij;Datum;Dichtheid;Temperatuur °C;Suiker toegevoegd kg;Opmerkingen;Begindichtheid",
        "Lot;Datum;Digtheid;Temperatuur °C;Suiker bygevoeg kg;Opmerkings;Begindigtheid",
      })
  void knowsTheWords(
      String batch,
      String date,
      String gravity,
      String temperature,
      String sugar,
      String note,
      String original) {
    TestGrid grid =
        TestGrid.of(
            "x",
            String.join(" | ", original + ":", "1.060")
                + "\n"
                + String.join(" | ", batch, date, gravity, temperature, sugar, note)
                + "\n"
                + "Plum 3 | #2025-01-01 | 1.055 | 20 | | a\n"
                + "Plum 3 | #2025-01-03 | 1.040 | 21 | | b");
    Understanding understood = SheetUnderstanding.understand(grid, LogMap.none());
    assertEquals(List.of(), understood.doubts());
    LogTable table = understood.tables().get(0);
    assertEquals(
        List.of(Role.BATCH, Role.DATE, Role.GRAVITY, Role.TEMPERATURE, Role.SUGAR_ADDED, Role.NOTE),
        table.columns().stream().map(LogColumn::role).toList());
    assertEquals("C", table.columns().get(3).unit());
    assertEquals(1.060, table.batches().get(0).originalGravity().orElseThrow());
  }

  @ParameterizedTest
  @CsvSource({
    "Alle Werte auf 20 °C korrigiert",
    "All readings corrected to 20 C",
    "Lectures corrigées à 20 °C",
    "Lecturas corregidas a 20 °C",
    "Letture corrette a 20 °C",
    "Leituras corrigidas a 20 °C",
    "Metingen gecorrigeerd naar 20 °C",
    "Lesings gekorrigeer na 20 °C",
  })
  void knowsThatReadingsAreCorrected(String line) {
    LogTable table = withLine(line);
    assertTrue(table.settings().correctedAlready());
    assertEquals(20, table.settings().temperatureC(), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({
    "Samples are cooled to 20 °C before reading",
    "All samples read at 20 C in the cellar",
    "Proben immer bei 20 °C gemessen",
    "Lectures à 20 °C",
    "Muestras enfriadas a 20 °C",
    "Wash temperature: 20 C",
  })
  void knowsOneTemperatureForAll(String line) {
    assertEquals(20, withLine(line).settings().temperatureC(), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({
    "Readings not corrected",
    "Readings must be corrected to 20 C",
    "Werte nicht korrigiert",
    "Lectures non corrigées",
    "Lecturas sin corregir",
    "Metingen niet gecorrigeerd",
    "Room temperature 20 C",
    "Raumtemperatur: 20 °C",
    "Correction factor 1.04",
    "Hydrometer reads 1.002 in water at 20 C",
    "Hydrometer calibrated at 20 C",
    "First reading at 20 C",
  })
  void doesNotTakeOtherLinesForIt(String line) {
    assertTrue(!withLine(line).settings().hasTemperature(), line);
  }

  private static LogTable withLine(String line) {
    TestGrid grid = TestGrid.of("x", line + "\nDay | SG\n0 | 1.080\n1 | 1.070");
    return SheetUnderstanding.understand(grid, LogMap.none()).tables().get(0);
  }

  @ParameterizedTest
  @CsvSource({
    "Points, POINTS, 85, 40",
    "°Brix, BRIX, 20.4, 2.1",
    "°Plato, PLATO, 20.4, 2.1",
    "Balling, BALLING, 20.4, 2.1",
    "Baumé, BAUME, 11.4, 5.6",
    "°Oechsle, OECHSLE, 85, 40",
    "KMW, KMW, 17.2, 8.6",
    "Twaddell, TWADDELL, 17, 8",
    "Density kg/m3, KGM3, 1083, 1038",
    "Extract g/L, GL, 221, 104",
    "Potential alcohol, POTENTIAL, 11.3, 5.2",
    "SG, SG, 1.085, 1.040",
    "Gravity, SG, 1085, 1040",
  })
  void readsEveryScale(String header, String unit, String first, String second) {
    TestGrid grid =
        TestGrid.of(
            "x", "Day | " + header + " | Temp C\n0 | " + first + " | 20\n3 | " + second + " | 20");
    Understanding understood = SheetUnderstanding.understand(grid, LogMap.none());
    assertEquals(List.of(), understood.doubts());
    assertEquals(unit, understood.tables().get(0).column(Role.GRAVITY).orElseThrow().unit());
    double shown = Double.parseDouble(first);
    double gravity =
        shown > 900 && unit.equals("SG")
            ? shown / 1000
            : SimpleLogTest.calc("CONVERT", shown, unit, "SG");
    FillOptions onGravity = FillOptions.usual().on(WrittenScale.SG);
    TestGrid filled = grid.with(LogFiller.fill(grid, understood, onGravity).patch());
    assertEquals(SimpleLogTest.calc("CORRECTEDGRAVITY", gravity, 20.0), filled.number(1, 3));
    TestGrid own = SimpleLogTest.fill(grid);
    assertEquals(shown, own.number(1, 3), 1e-9 * Math.abs(shown), "read at 20 \u00b0C");
    assertEquals(filled.number(2, 4), own.number(2, 4), "alcohol");
  }

  @Test
  void readsDatesInManyForms() {
    double day = 45668; // 2025-01-11
    for (String text :
        List.of(
            "2025-01-11",
            "11.1.2025",
            "11/01/2025",
            "11 Jan 2025",
            "11. Januar 2025",
            "11 janvier 2025",
            "11 de enero de 2025",
            "11 gennaio 2025",
            "January 11, 2025",
            "11-jan-25")) {
      assertEquals(day, DateText.serial(text, DateText.Order.DAY_FIRST), text);
    }
    assertEquals(day + 0.75, DateText.serial("2025-01-11 18:00", DateText.Order.DAY_FIRST));
    assertEquals(day, DateText.serial("1/11/2025", DateText.Order.MONTH_FIRST));
    assertTrue(Double.isNaN(DateText.serial("yesterday", DateText.Order.DAY_FIRST)));
  }
}
