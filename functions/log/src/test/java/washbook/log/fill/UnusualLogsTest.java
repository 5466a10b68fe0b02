package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static washbook.log.fill.SimpleLogTest.calc;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.LogTable;
import washbook.log.Role;
import washbook.log.Understanding;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Logs that were filled wrongly, or passed over in silence, because of how they are written. */
class UnusualLogsTest {
  static Understanding understand(TestGrid grid) {
    return SheetUnderstanding.understand(grid, LogMap.none());
  }

  static LogTable table(TestGrid grid) {
    Understanding understood = understand(grid);
    assertEquals(List.of(), understood.doubts());
    assertEquals(1, understood.tables().size());
    return understood.tables().get(0);
  }

  static double original(LogTable table) {
    return table.batches().get(0).originalGravity().orElseThrow();
  }

  /** martes is no March: the rows stay in their order, and the first reading is the first. */
  @Test
  void aWeekdayWithADayOfTheMonthGoesOnFromTheDateAboveIt() {
    TestGrid grid =
        TestGrid.of(
            "Mosto",
            """
            fecha | densidad | temp C
            lunes 29-sep | 1.085 | 20
            martes 30 | 1.070 | 20
            jueves 2 | 1.040 | 20
            sábado 4 | 1.010 | 20\
            """);
    LogTable table = table(grid);
    assertEquals(
        List.of(1, 2, 3, 4), Arrays.stream(table.batches().get(0).rows()).boxed().toList());
    assertEquals(1.085, original(table), 1e-9);
  }

  @Test
  void aRunningNumberNamesNoBatch() {
    TestGrid grid =
        TestGrid.of(
            "Met",
            """
            Ansatz Nr | Datum | Dichte | Most C
            1 | #2025-11-02 | 1.080 | 20
            2 | #2025-11-04 | 1.060 | 20
            3 | #2025-11-07 | 1.030 | 20
            4 | #2025-11-12 | 1.005 | 20\
            """);
    LogTable table = table(grid);
    assertEquals(1, table.batches().size());
    assertEquals(1.080, original(table), 1e-9);
  }

  /** Labels with their values right above the header are no part of it. */
  @Test
  void aLineOfLabelsAndAmountsIsNoUpperHeader() {
    TestGrid grid =
        TestGrid.of(
            "Met",
            """
            Ansatz | 15 l | | Spindel | 20 °C
            Nr | Datum | Dichte | Most °C | Bemerkung
            1 | #2025-11-02 | 1.080 | 22 |
            2 | #2025-11-04 | 1.060 | 22 |
            3 | #2025-11-07 | 1.030 | 22 |
            4 | #2025-11-12 | 1.005 | 22 |\
            """);
    LogTable table = table(grid);
    assertEquals(1, table.headerRow());
    assertEquals("Datum", table.column(Role.DATE).orElseThrow().header());
    assertEquals(calc("CORRECTEDGRAVITY", 1.080, 22.0), original(table), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(strings = {"T", "T mosto", "T moût", "How warm (C)", "t"})
  void aLetterOrAUnitNamesTheTemperatureWhereItsValuesCanBeOne(String header) {
    TestGrid grid =
        TestGrid.of(
            "Wine",
            "date | SG | "
                + header
                + """

                #2025-10-01 | 1.085 | 24
                #2025-10-03 | 1.062 | 27
                #2025-10-06 | 1.030 | 25.5
                #2025-10-14 | 0.998 | 19\
                """);
    assertEquals(calc("CORRECTEDGRAVITY", 1.085, 24.0), original(table(grid)), 1e-9);
  }

  /** The weather of the day is not the temperature of the wash: it is asked for. */
  @ParameterizedTest
  @ValueSource(strings = {"temp. do dia", "day temp", "Tagestemperatur", "weather C"})
  void theWeatherIsNotTheTemperatureOfTheWash(String header) {
    TestGrid grid =
        TestGrid.of(
            "Vinho",
            "data | densidade | "
                + header
                + """

                #2025-10-01 | 1.085 | 31
                #2025-10-03 | 1.062 | 33
                #2025-10-06 | 1.030 | 29
                #2025-10-14 | 0.998 | 24\
                """);
    Understanding understood = understand(grid);
    assertEquals(1, understood.doubts().size());
    assertTrue(understood.doubts().get(0).question().startsWith("At what temperature"));
  }

  /** Temperatures side by side above the columns are not one for all readings. */
  @Test
  void severalTemperaturesAboveAreNotOneForAll() {
    TestGrid grid =
        TestGrid.of(
            "Most",
            """
            Gärversuch Most | | | |
            Wasserbad | 12 °C | 20 °C | 28 °C |
            Tag | Dichte g/cm³ A | Dichte g/cm³ B | Dichte g/cm³ C | Notiz
            0 | 1.065 | 1.064 | 1.062 |
            2 | 1.060 | 1.048 | 1.030 |
            4 | 1.050 | 1.030 | 1.010 |
            8 | 1.040 | 1.006 | 0.995 |\
            """);
    Understanding understood = understand(grid);
    understood.tables().forEach(t -> assertEquals(false, t.settled()));
    assertTrue(understood.doubts().size() >= 1);
  }

  @ParameterizedTest
  @CsvSource({
    "valeurs ramenées à 20 °C, fr",
    "alle Werte auf 20 °C umgerechnet, de",
    "alles omgerekend naar 20 graden, nl",
    "all values converted to 20 C, en"
  })
  void aRemarkBelowThatReadingsAreCorrectedHolds(String remark, String language) {
    TestGrid grid =
        TestGrid.of(
            "Wine " + language,
            """
            date | SG | temp C
            #2025-10-01 | 1.085 | 24
            #2025-10-03 | 1.062 | 27
            #2025-10-06 | 1.030 | 25.5
            #2025-10-14 | 0.998 | 19

            """
                + remark);
    LogTable table = table(grid);
    assertTrue(table.settings().correctedAlready());
    assertEquals(1.085, original(table), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"fortified with spirit", "aguardentado", "aufgespritet", "blended with the other"})
  void whatIsReadAfterSpiritOrAnotherWashWasPutInIsNotComputed(String note) {
    TestGrid grid =
        TestGrid.of(
            "Wine",
            """
            date | SG | temp C | notes
            #2025-10-01 | 1.095 | 20 | pitched
            #2025-10-03 | 1.062 | 20 |
            #2025-10-06 | 1.030 | 20 |\
            """
                + note
                + """

                #2025-10-07 | 1.015 | 20 |
                #2025-10-09 | 1.014 | 20 |\
                """);
    Understanding understood = understand(grid);
    Filling filling = LogFiller.fill(grid, understood, FillOptions.usual());
    TestGrid filled = grid.with(filling.patch());
    assertEquals(calc("ABV", 1.095, 1.062), filled.number(2, 5), 1e-9);
    assertEquals(3, filling.refusals().size());
  }

  @Test
  void aBlendBelowTheTablesItWasMadeOfDoesNotBeginAtNought() {
    TestGrid grid =
        TestGrid.of(
            "Two picks",
            """
            Pick one
            date | SG | temp C
            #2025-03-07 | 1.105 | 20
            #2025-03-12 | 1.060 | 20
            #2025-03-21 | 1.036 | 20

            Pick two
            date | SG | temp C
            #2025-03-14 | 1.096 | 20
            #2025-03-18 | 1.050 | 20
            #2025-03-21 | 1.016 | 20

            Both in one
            date | SG | temp C
            #2025-03-21 | 1.027 | 20
            #2025-03-24 | 1.015 | 20
            #2025-03-31 | 0.998 | 20\
            """);
    Understanding understood = understand(grid);
    assertEquals(3, understood.tables().size());
    assertTrue(
        understood.tables().get(2).batches().get(0).originalGravity().isEmpty(),
        "its first reading is no original gravity");
    assertEquals(1.096, original(understood.tables().get(1)), 1e-9);
  }

  @Test
  void aReadingEqualToAStatedOriginalIsNoughtPerCent() {
    TestGrid grid =
        TestGrid.of(
            "Brouw 41",
            """
            OG refracto | 18,4 °Bx
            datum | °Bx refracto | temp C
            #2026-03-14 | 18.4 | 20
            #2026-03-16 | 15.8 | 20
            #2026-03-20 | 11.0 | 20
            #2026-03-25 | 9.6 | 20\
            """);
    Understanding understood = understand(grid);
    Filling filling = LogFiller.fill(grid, understood, FillOptions.usual());
    assertEquals(List.of(), filling.refusals());
    assertEquals(0.0, grid.with(filling.patch()).number(2, 4), 1e-9);
  }

  @Test
  void aTableOfWhichNothingCanBeFilledGetsNoColumn() {
    TestGrid grid =
        TestGrid.of(
            "Wine",
            """
            date | SG | temp C
            #2025-10-01 | 1.085 | 24
            #2025-10-03 | 1.012 | 27
            #2025-10-05 | 1.081 | 24
            #2025-10-07 | 1.020 | 24
            #2025-10-09 | 1.079 | 24\
            """);
    Filling filling = LogFiller.fill(grid, understand(grid), FillOptions.usual());
    assertEquals(List.of(), filling.patch().columns());
  }

  @ParameterizedTest
  @ValueSource(strings = {"empty", "leer", "vide", "vacío", "vuoto", "vazio", "leeg"})
  void aVesselThatIsStillEmptyHasNoReading(String word) {
    TestGrid grid =
        TestGrid.of(
            "Wine",
            "date | SG | temp C\n#2025-09-30 | "
                + word
                + """
                 | 20
                #2025-10-01 | 1.085 | 20
                #2025-10-03 | 1.062 | 20
                #2025-10-06 | 1.030 | 20\
                """);
    assertEquals(1.085, original(table(grid)), 1e-9);
  }

  /** Morning and evening of one vessel are no two vessels: it began once. */
  @Test
  void readingsOfTwoTimesOfDayHaveOneOriginalGravity() {
    TestGrid grid =
        TestGrid.of(
            "Tanque",
            """
            Tanque 3 | Garnacha | | pH 3.4 |
            fecha | SG mañana | temp C | SG tarde | temp C
            #2025-09-27 | 1.095 | 19 | 1.094 | 20
            #2025-09-28 | 1.090 | 19 | 1.080 | 20
            #2025-09-29 | 1.070 | 19 | 1.060 | 20
            #2025-09-30 | 1.040 | 19 | 1.030 | 20\
            """);
    Understanding understood = understand(grid);
    assertEquals(2, understood.tables().size());
    for (LogTable table : understood.tables()) {
      assertTrue(table.settled());
      assertEquals(1.0949, original(table), 2e-4);
    }
  }

  @Test
  void aSheetThatSpeaksOfAFermentButHasNoHeaderIsAskedAbout() {
    TestGrid grid =
        TestGrid.of(
            "Most",
            """
            Most aus dem Garten | |
            Sonntag | 52 Oe bei 13 °C |
            Dienstag | 47 Oe bei 13 °C | gärt
            Samstag | 34 Oe bei 14 °C |
            Mittwoch | 22 Oe bei 14 °C |
            Montag | 9 Oe bei 12 °C |\
            """);
    Understanding understood = understand(grid);
    assertEquals(1, understood.doubts().size());
    assertEquals("B2", understood.doubts().get(0).cell());
    assertEquals(
        List.of("header row = 1", "column B = GRAVITY in OECHSLE"),
        understood.doubts().get(0).answers().get(0).lines());
  }

  @Test
  void figuresThatFallAmongWordsOfAnotherTradeAreLeftAlone() {
    TestGrid grid =
        TestGrid.of(
            "Batterie",
            """
            Stapler Batterie | |
            Sonntag | 1.28 |
            Dienstag | 1.25 | wein
            Samstag | 1.20 |
            Mittwoch | 1.15 |
            Montag | 1.12 |\
            """);
    assertEquals(List.of(), understand(grid).doubts());
  }
}
