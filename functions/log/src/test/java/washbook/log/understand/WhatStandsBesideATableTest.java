package washbook.log.understand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import washbook.log.Batch;
import washbook.log.LogColumn;
import washbook.log.LogTable;
import washbook.log.Role;
import washbook.log.Understanding;
import washbook.log.sheet.TestGrid;

/** What groups over a header, columns without one, lines over all tables and means tell. */
class WhatStandsBesideATableTest {
  private static Understanding understood(String log) {
    return SheetUnderstanding.understand(TestGrid.of("Cellar", log), LogMap.none());
  }

  private static LogTable table(String log) {
    return understood(log).tables().get(0);
  }

  private static int column(String log, Role role) {
    return table(log).column(role).map(LogColumn::column).orElse(-1);
  }

  @Test
  void theTemperatureOfTheSampleCountsBesideThatOfTheFermenter() {
    String log =
        """
        Data | Extrato °P | T amostra °C | T fermentador °C
        10/05/2025 | 12.4 | 18 | 10
        12/05/2025 | 11.2 | 16 | 10.5
        13/05/2025 | 8.4 | 15 | 11
        15/05/2025 | 5.0 | 17 | 11
        18/05/2025 | -0.3 | 17 | 11""";
    assertEquals(2, column(log, Role.TEMPERATURE));
  }

  @Test
  void theTemperatureOfTheMustCountsBesideThatOfTheCap() {
    String log =
        """
        Vinho tinto
        | Mosto | | Chapéu |
        Data | SG | Temp °C | Temp °C | Notas
        16/02/2025 | 1.070 | 22 | 25 | esmagado
        17/02/2025 | 1.055 | 23 | 27 |
        18/02/2025 | 1.030 | 25 | 30 |
        20/02/2025 | 1.004 | 25 | 31 |""";
    assertEquals(2, column(log, Role.TEMPERATURE));
    assertEquals(List.of(), understood(log).doubts());
  }

  @Test
  void aColumnCalledMustUnderAGroupOfTemperaturesIsOne() {
    String log =
        """
        Suikermeter | | | Temp °C | |
        Datum | KMW | °Oe | kelder | mos | Wat gedoen
        3/3/2025 | 17.8 | 88 | 18 | 20 | hanepoot
        4/3/2025 | 16.3 | 80 | 18 | 22 |
        5/3/2025 | 14 | 68 | 19 | 24 | roer
        6/3/2025 | 7.2 | 34 | 19 | 26 |
        9/3/2025 | | 8 | 18 | 25 |
        11/3/2025 | | -2 | 18 | 24 |
        13/3/2025 | | -5 | 17 | 22 |""";
    assertEquals(4, column(log, Role.TEMPERATURE));
    // Of two scales of one float the one that is read to the end.
    assertEquals(2, column(log, Role.GRAVITY));
  }

  private static final String REPLICATES =
      """
      Bench ferment, wheat wash
      Sample | Hours | SG Rep 1 | SG Rep 2 | Mean | Temp °C | Note
      W | 0 | 1.0613 | 1.0611 | 1.0612 | 20 |
      W | 8 | 1.0549 | 1.0547 | 1.0548 | 20 |
      W | 16 | 1.0437 | 1.0435 | 1.0436 | 20 |
      W | 24 | 1.0292 | 1.0290 | 1.0291 | 20 |
      W | 48 | 1.0026 | 1.0024 | 1.0025 | 20 |""";

  @Test
  void ofReplicatesTheMeanIsTheReading() {
    assertEquals(4, column(REPLICATES, Role.GRAVITY));
    assertEquals(List.of(), understood(REPLICATES).doubts());
  }

  @Test
  void aMeanThatIsNotThatOfTheReadingsOrOfVesselsIsAskedAbout() {
    String slipped = REPLICATES.replace("1.0436 | 20", "1.0536 | 20");
    assertFalse(understood(slipped).doubts().isEmpty());
    String vessels =
        """
        Wheat wash ferment
        Hours | SG Rep 1 | SG Rep 2 | Mean | Temp °C
        0 | 1.060 | 1.060 | 1.060 | 20
        8 | 1.054 | 1.044 | 1.049 | 20
        16 | 1.043 | 1.031 | 1.037 | 20
        24 | 1.029 | 1.013 | 1.021 | 20
        48 | 1.012 | 1.002 | 1.007 | 20""";
    assertFalse(understood(vessels).doubts().isEmpty());
  }

  @Test
  void theHeaderOfReplicatesSpeaksForTheirMean() {
    String meter = REPLICATES.replace("SG Rep", "SG 20/20 Rep").replace("| 20 |", "| 30 |");
    assertTrue(
        understood(meter).doubts().stream().anyMatch(d -> d.asked().key().equals("ask.corrected")));
  }

  @Test
  void remarksAndDatesWithoutAHeaderAreRead() {
    String log =
        """
        Mead, float for 60F
        | jug | SG | F |
        8/3/2025 | A | 1.101 | 68 | start
        8/3/2025 | B | 1.116 | 68 | start
        14/3/2025 | A | 1.070 | 70 |
        14/3/2025 | B | 1.090 | 70 |
        21/3/2025 | A | 1.030 | 70 |
        21/3/2025 | B | 1.060 | 70 | gave it some more honey after reading
        28/3/2025 | A | 1.003 | 69 |
        28/3/2025 | B | 1.066 | 69 |""";
    assertEquals(0, column(log, Role.DATE));
    assertEquals(4, column(log, Role.NOTE));
    assertEquals(1, column(log, Role.BATCH));
    assertTrue(understood(log).doubts().stream().anyMatch(d -> d.cell().equals("E8")));
  }

  @Test
  void figuresBesideATableAreNoRemarks() {
    String log =
        "Cider\nDate | SG | °C |\n1/10/2025 | 1.055 | 20 | 4\n3/10/2025 | 1.030 | 20 | 6\n"
            + "5/10/2025 | 1.010 | 20 | ok\n7/10/2025 | 1.002 | 20 | 8";
    assertEquals(-1, column(log, Role.NOTE));
  }

  private static final String SPLIT =
      """
      Pale ale ferment, split in two | | | | |
      Starting gravity 1.060 | | | | All gravities hydrometer, corrected to 68F | |
      LEFT yeast | | | | RIGHT yeast | |
      Date | SG | °F | | Date | SG | °F
      9/2/2025 | 1.055 | 66 | | 9/2/2025 | 1.055 | 76
      10/2/2025 | 1.040 | 66 | | 10/2/2025 | 1.041 | 76
      12/2/2025 | 1.020 | 66 | | 12/2/2025 | 1.018 | 76
      14/2/2025 | 1.012 | 66 | | 14/2/2025 | 1.010 | 76""";

  @Test
  void anOriginalGravityOverTheNamesOfTablesBesideOneAnotherIsThatOfAll() {
    List<LogTable> tables = understood(SPLIT).tables();
    assertEquals(2, tables.size());
    for (LogTable table : tables) {
      assertEquals(1.060, table.batches().get(0).originalGravity().orElseThrow(), 1e-4);
      assertTrue(table.settings().correctedAlready());
    }
  }

  @Test
  void beneathTheNamesItIsThatOfOne() {
    String own =
        SPLIT
            .replace("Starting gravity 1.060 | | | | All", " | | | | All")
            .replace("Date | SG | °F | | Date", "OG 1.060 | | | | |\nDate | SG | °F | | Date");
    List<LogTable> tables = understood(own).tables();
    assertEquals(1.060, original(tables.get(0)), 1e-4);
    assertEquals(1.055, original(tables.get(1)), 1e-4);
  }

  @Test
  void theInstrumentOfOneBlockIsNotThatOfTheNext() {
    String log =
        """
        Johannisbeermaische, 20 l, Spindel 15 °C
        Tag | Oe | °C
        0 | 88 | 20
        4 | 55 | 22
        8 | 26 | 21
        14 | 6 | 20
        23 | -1 | 19

        Stachelbeermaische 10 l
        Tag | Brix | °C
        0 | 21 | 20
        4 | 17 | 22
        8 | 12 | 21
        14 | 9 | 20
        23 | 8 | 19""";
    assertTrue(understood(log).doubts().stream().anyMatch(d -> d.cell().equals("B10")));
    assertEquals(15, understood(log).tables().get(1).settings().calibrationC(), 1e-9);
  }

  /** Each run has the line that begins with its name; none takes that of the other. */
  @Test
  void severalOriginalGravitiesAboveAreThoseOfTheirBatches() {
    String log =
        """
        GRAIN MASH LOG
        Run 11: OG 1.066 at 68 F, 10 gal
        Run 12: OG 1.071 at 68 F, 10 gal
        Day | Run | SG | F
        1 | 11 | 1.058 | 68
        2 | 11 | 1.041 | 68
        2 | 12 | 1.066 | 68
        3 | 11 | 1.025 | 68
        3 | 12 | 1.049 | 68
        4 | 11 | 1.013 | 68
        4 | 12 | 1.033 | 68
        5 | 12 | 1.019 | 68""";
    List<Batch> batches = table(log).batches();
    assertEquals(1.066, batches.get(0).originalGravity().orElseThrow(), 1e-4);
    assertEquals(1.071, batches.get(1).originalGravity().orElseThrow(), 1e-4);
    Understanding open = understood(log.replace("Run 11:", "Barrel:"));
    assertTrue(open.tables().get(0).batches().get(0).originalGravity().isEmpty());
    assertTrue(open.doubts().stream().anyMatch(d -> d.asked().key().equals("ask.whichOriginal")));
  }

  @Test
  void anOriginalGravityInALineHasItsTemperature() {
    String log =
        """
        Corn mash, hydrometer 60F
        Mash 11 - OG 1.066 at 86 F, 10 gal
        Day | SG | F
        1 | 1.058 | 60
        2 | 1.041 | 60
        3 | 1.025 | 60
        4 | 1.013 | 60""";
    assertEquals(1.0695, original(table(log)), 5e-4);
  }

  private static final String OLD_YEAR =
      """
      Corn mash
      Date | SG | °C
      14/3/2026 | 1.060 | 20
      15/3/2026 | 1.040 | 20
      16/3/2025 | 1.020 | 20
      17/3/2026 | 1.008 | 20
      19/3/2026 | 1.001 | 20""";

  /** The only date out of order is of the year around it, and the log is told so. */
  @Test
  void aWrongYearIsNoFirstReading() {
    assertEquals(1.060, original(table(OLD_YEAR)), 1e-4);
    assertTrue(
        table(OLD_YEAR).remarks().stream()
            .anyMatch(r -> r.key().equals("remark.year") && r.arguments().contains("A5")));
    String two = OLD_YEAR.replace("15/3/2026", "15/3/2025");
    assertTrue(table(two).remarks().stream().noneMatch(r -> r.key().equals("remark.year")));
  }

  /** A number behind an original gravity is a temperature only where something says so. */
  @Test
  void aBareNumberBehindAnOriginalGravityIsAskedAbout() {
    for (String og : List.of("1.080 / 30", "1.080 (19.3)", "1.080/10.5")) {
      String log =
          "Cider\nOG | "
              + og
              + "\nDate | SG | °C\n1/3/2025 | 1.070 | 20\n"
              + "3/3/2025 | 1.040 | 20\n5/3/2025 | 1.010 | 20\n8/3/2025 | 1.002 | 20";
      assertTrue(
          understood(log).doubts().stream().anyMatch(d -> d.asked().key().equals("ask.notRead")),
          og);
    }
  }

  /** A title over the first cell is no group of temperatures. */
  @Test
  void aTitleMakesNoColumnATemperature() {
    String log =
        """
        Cider temperature and gravity
        Date | SG | Must | Note
        1/3/2025 | 1.060 | 25 |
        3/3/2025 | 1.040 | 24 |
        5/3/2025 | 1.010 | 23 |
        8/3/2025 | 1.002 | 22 |""";
    assertEquals(-1, column(log, Role.TEMPERATURE));
  }

  /** Sugar in each of two vessels beside one another is noted for both. */
  private static double original(LogTable table) {
    Batch batch = table.batches().get(0);
    return batch.originalGravity().orElseThrow();
  }

  @Test
  void aLogThatSaysBelowItsHeaderThatItBeganLateHasNoOriginalGravity() {
    String log =
        """
        quando | densidade | T °C | obs
        comecei a apontar só agora, já fervia há uns dias | | |
        22/9/2025 | 1.046 | 24 |
        23/9/2025 | 1.031 | 24 |
        24/9/2025 | 1.022 | 24 |
        27/9/2025 | 1.006 | 22 |
        29/9/2025 | 1.000 | 21 |""";
    assertTrue(table(log).batches().get(0).originalGravity().isEmpty());
  }

  @Test
  void aFirstSampleThatWasLostLeavesTheOriginalGravityOpen() {
    String log =
        REPLICATES.replace("1.0613 | 1.0611 | 1.0612 | 20 |", "- | - | | 20 | tube broke, lost");
    assertTrue(table(log).batches().get(0).originalGravity().isEmpty());
  }

  @Test
  void aLineWithAnOriginalGravityAtSomeDegreesIsRead() {
    String log =
        """
        LAVAGGIO n. 9
        D.I. 1,078 a 20 gradi
        quando | densità | gradi °C | note
        03/10/2025 | 1.076 | 20 | lievito
        05/10/2025 | 1.058 | 20 |
        07/10/2025 | 1.030 | 20 |
        10/10/2025 | 1.006 | 20 |""";
    assertEquals(1.078, original(table(log)), 1e-4);
  }

  @Test
  void brineIsNoOriginalGravity() {
    String log =
        """
        Fermentador 4 - aceituna verde
        Salmuera inicial | 11 °Bé
        Fecha | °Bé | Sal % | Temp ºC | pH
        6/10/2025 | 11 | 11.2 | 22 | 6.9
        7/10/2025 | 9.1 | 9.2 | 22 | 6.6
        8/10/2025 | 8 | 8 | 23 | 6.2
        13/10/2025 | 6.5 | 6.4 | 25 | 5
        22/10/2025 | 6 | 5.9 | 24 | 4.3""";
    assertTrue(understood(log).tables().stream().noneMatch(LogTable::settled));
  }

  @Test
  void aListWithoutTimesWhoseFiguresGoUpAndDownIsLeftAlone() {
    String log =
        """
        Supplier | Variety | Brix | pH | Fermentable?
        Hilltop | White | 22.5 | 3.3 | yes
        Hilltop | Red | 24 | 3.5 | yes
        Riverbend | Apple | 12.2 | 3.6 | yes
        Oak | Cherry | 16.8 | 3.5 | yes
        Oak | Pear | 11.5 | 3.9 |""";
    assertEquals(List.of(), understood(log).tables());
    assertEquals(List.of(), understood(log).doubts());
  }

  @Test
  void figuresWithoutHeadersAreAskedAboutFromTheFirstOn() {
    String log =
        """
        1/6/2025 | 1.089 | 27 | 8 kg sugar, yeast in
        2/6/2025 | 1.082 | 28 |
        3/6/2025 | 1.072 | 29 |
        4/6/2025 | 1.100 | 29 |
        5/6/2025 | 1041 | 28 |
        6/6/2025 | 1.024 | 28 |
        7/6/2025 | 104 | 28 |
        8/6/2025 | 1.011 | 27 | wash is done""";
    assertEquals("B1", understood(log).doubts().get(0).cell());
  }
}
