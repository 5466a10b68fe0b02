package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.ComputedColumn;
import washbook.log.LogTable;
import washbook.log.Understanding;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;
import washbook.log.words.BatchNameText;
import washbook.log.words.Statement;
import washbook.log.words.TradeWords;

/** What lines about a log say of one figure, and what of all its readings. */
class SaidOfOneGravityTest {
  private static final String WARM =
      """
      date | SG | temp C
      #2025-11-04 | 1.060 | 30
      #2025-11-06 | 1.030 | 32
      #2025-11-09 | 1.012 | 31\
      """;

  private static Understanding understand(String name, String log, String map) {
    return SheetUnderstanding.understand(TestGrid.of(name, log), LogMap.parse(map));
  }

  private static double firstGravity(String log, String map) {
    TestGrid grid = TestGrid.of("Plum 3", log);
    LogTable table =
        SheetUnderstanding.understand(grid, LogMap.parse(map)).tables().stream()
            .filter(LogTable::settled)
            .findFirst()
            .orElseThrow();
    return new ComputedTable(grid, table, Set.of(ComputedColumn.CORRECTED_GRAVITY))
        .number(ComputedColumn.CORRECTED_GRAVITY, table.batches().get(0).rows()[0]);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "OG (brew day, corrected) | 1.066",
        "start SG (temperature corrected) | 1.066",
        "Original gravity (corrected to 20 C): | 1.066",
        "OG | 1.066 | (corrected for temperature)",
        "Densité au pressage (corr. 20°C) | 1.066"
      })
  void anOriginalGravityThatIsCorrectedLeavesTheReadingsAsTheyAre(String line) {
    String map = "original gravity = 1.066 SG";
    double asRead = firstGravity("Plum wine |\n" + WARM, map);
    assertEquals(asRead, firstGravity("Plum wine |\n" + line + "\n" + WARM, map), 1e-9);
    assertTrue(asRead > 1.0622, String.valueOf(asRead));
  }

  @Test
  void readingsThatAreCorrectedAreNotCorrectedAgain() {
    assertEquals(
        1.060,
        firstGravity("Readings corrected to 20 C |\n" + WARM, "original gravity = 1.066 SG"));
  }

  @Test
  void aTemperatureSaidTwiceIsOne() {
    assertEquals(15.5556, Statement.temperatureIn("the paper says 60°F/60°F"), 1e-4);
    assertTrue(Double.isNaN(Statement.temperatureIn("60°F/68°F")));
  }

  @Test
  void theSouthIsNoBrew() {
    assertEquals(Set.of(), TradeWords.in("Grube Nord / Süd"));
    assertEquals(Set.of(), TradeWords.in("bassin sud"));
    assertEquals(Set.of(TradeWords.Side.FERMENT), TradeWords.in("Sud 14"));
    assertEquals(Set.of(TradeWords.Side.FERMENT), TradeWords.in("Sud"));
  }

  @Test
  void aVesselNamedAloneHeadsWhatStandsBelow() {
    assertEquals("Carboy B", BatchNameText.vessel("Carboy B (with cherries)"));
    assertEquals("garrafão 1", BatchNameText.vessel("2.ª fase – garrafão 1 (10 L, simples)"));
    assertEquals("", BatchNameText.vessel("moved to tank 2"));
    assertEquals("", BatchNameText.vessel("Tank cleaned with hot water."));
  }

  @Test
  void percentSignsBehindReadingsAreTheirScales() {
    String log =
        """
        date | Pot. alc. % | temp C
        #2025-11-04 | 12.0% | 20
        #2025-11-09 | 4.0 % vol | 20
        #2025-11-20 | 0.5 % | 20\
        """;
    Understanding sheet = understand("Plum 3", log, "");
    assertEquals(List.of(), sheet.doubts());
    assertEquals(3, sheet.tables().get(0).batches().get(0).rows().length);
  }

  @Test
  void refractometersShowPerCentToo() {
    String log =
        """
        date | refractometer Brix | temp C
        #2025-07-01 | 21.6 % | 20
        #2025-07-05 | 14.4 % | 23
        #2025-07-20 | 8.4 % | 19\
        """;
    TestGrid grid = TestGrid.of("Cherry wine", log);
    Understanding sheet = SheetUnderstanding.understand(grid, LogMap.none());
    Filling filling = LogFiller.fill(grid, sheet, FillOptions.usual());
    assertEquals(List.of(), filling.refusals());
    assertEquals(3, filling.tables().get(0).batches().get(0).filled());
  }

  @Test
  void aColumnOfCalibrationsIsNotPassedOver() {
    String log =
        """
        Day | SG | Temp C | Calibration temp °C
        0 | 1.085 | 15 | 15
        3 | 1.050 | 15 | 15
        9 | 1.010 | 15 | 15\
        """;
    assertEquals(15, understand("Plum 3", log, "").tables().get(0).settings().calibrationC(), 1e-9);
    String mixed = log.replace("9 | 1.010 | 15 | 15", "9 | 1.010 | 15 | 20");
    Understanding two = understand("Plum 3", mixed, "");
    assertFalse(two.tables().get(0).settled());
    assertTrue(two.doubts().get(0).question().contains("calibration = 20 C"));
    assertTrue(understand("Plum 3", mixed, "calibration = 20 C").tables().get(0).settled());
  }

  @Test
  void anAbbreviationEndsNoStatement() {
    String said = "Starting pot. alc. 12.4 |\n";
    String log =
        """
        date | pot. alc. % | temp C
        #2025-08-09 | 11.9 | 20
        #2025-08-16 | 2.9 | 20\
        """;
    Understanding sheet = understand("Plum wine", said + log, "");
    assertEquals(
        1.0922, sheet.tables().get(0).batches().get(0).originalGravity().getAsDouble(), 2e-4);
  }

  @Test
  void anAmountIsNoReading() {
    String log =
        """
        TANK 1 early | 1500 L |
        date | density | temp C
        #2025-04-08 | 1048 | 16
        #2025-04-14 | 1030 | 17
        #2025-05-08 | 1004 | 14
         | |
        TANK 2 late | 1400 L |
        date | density | temp C
        #2025-04-08 | 1054 | 17
        #2025-04-14 | 1033 | 18
        #2025-05-08 | 1001 | 14\
        """;
    Understanding sheet = understand("Cider", log, "");
    assertEquals(List.of(4, 10), sheet.tables().stream().map(LogTable::lastRow).toList());
  }

  @Test
  void hotWorkIsNoFermentWhereverItsUnitStands() {
    String log =
        """
        date | °Brix refractometer | temperature
        #2025-10-05 | 16.8 | 74 °C
        #2025-10-06 | 9.7 | 71 °C
        #2025-10-07 | 2.8 | 66 °C
        #2025-10-08 | 2.0 | 65 °C\
        """;
    Understanding sheet = understand("Line 2", log, "");
    assertEquals(List.of(), sheet.tables());
    assertEquals(List.of(), sheet.doubts());
  }

  @Test
  void whatRestsForMonthsIsAskedAboutAndWhatRestsForDaysIsNot() {
    String log =
        """
        Date | SG | Temp C (must)
        #2025-10-06 | 1.0868 | 14
        #2025-%s | 1.0865 | 12
        #2025-%s | 1.0852 | 11
        #2025-%s | 1.0849 | 10
        #2025-%s | 1.0843 | 9
        #2025-%s | 1.0838 | 9\
        """;
    Understanding months =
        understand("Store 3", log.formatted("10-20", "11-03", "11-17", "12-01", "12-15"), "");
    assertFalse(months.tables().stream().anyMatch(LogTable::settled));
    assertEquals(1, months.doubts().size());
    Understanding days =
        understand("Store 3", log.formatted("10-07", "10-08", "10-09", "10-10", "10-11"), "");
    assertTrue(days.tables().get(0).settled());
  }

  @Test
  void whoReadsAtTheRoomsTemperatureCanSaySo() {
    String log =
        """
        Elder wine | |
        date | Shed temp C | SG
        #2025-06-01 | 17 | 1.086
        #2025-06-06 | 19 | 1.050
        #2025-07-01 | 21 | 0.999\
        """;
    Understanding open = understand("Shed", log, "");
    assertTrue(open.doubts().get(0).question().contains("column B = TEMPERATURE in C"));
    Understanding told = understand("Shed", log, "column B = TEMPERATURE in C");
    assertFalse(told.tables().isEmpty());
    assertEquals(List.of(), told.doubts());
  }
}
