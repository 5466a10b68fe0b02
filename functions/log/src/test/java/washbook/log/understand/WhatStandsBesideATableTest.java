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
import washbook.log.fill.FillOptions;
import washbook.log.fill.LogFiller;
import washbook.log.sheet.SheetPatch;
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
  void theMeanOfNamedVesselsIsLeftAlone() {
    String vessels =
        """
        Apple juice ferment; SG 20/20 by bench density meter (cell at 20.0 C)
        t (h) | Flask 1 | Flask 2 (+100 mg/L) | mean
        0 | 1.060 | 1.060 | 1.060
        8 | 1.054 | 1.044 | 1.049
        16 | 1.043 | 1.031 | 1.037
        24 | 1.029 | 1.013 | 1.021
        48 | 1.012 | 1.002 | 1.007""";
    assertTrue(
        understood(vessels).doubts().stream()
            .noneMatch(d -> d.asked().key().equals("ask.twoReadings")));
    assertEquals(2, understood(vessels).tables().size());
    assertEquals(0, column(vessels, Role.HOURS));
  }

  @Test
  void unitsInTheCellsTellWhatAColumnOfDegreesHolds() {
    String log =
        """
        Tank 1
        giorno | grado | temp | lavori
        27 set 2025 | 11,5 Bé | 20° | lievito
        28 set 2025 | 11,0 Bé | 22° |
        29 set 2025 | 9,5 Bé | 25° | rimontaggio
        30 set 2025 | 7 Bé | 26° |
        2 ott 2025 | 4,5 Bé | 24° |
        6 ott 2025 | 1,0 Bé | 22° |""";
    assertEquals(1, column(log, Role.GRAVITY));
    assertEquals(2, column(log, Role.TEMPERATURE));
  }

  @Test
  void twoTimesOfDayUnderOneHeaderAreTwoReadings() {
    String log =
        """
        Datum | °KMW | | Temp °C | | Anmerkung
        | früh | abends | früh | abends |
        #2025-09-22 | | 17.4 | | 16 | Hefe
        #2025-09-23 | 17.3 | 17.2 | 16 | 17 |
        #2025-09-24 | 16.7 | 16 | 17.5 | 18 |
        #2025-09-25 | 15 | 13.9 | 18 | 18.5 |
        #2025-09-26 | 12.9 | 8.9 | 18 | 18 |
        #2025-09-27 | 4.9 | 3.9 | 17.5 | 17.5 |""";
    Understanding understood = understood(log);
    assertEquals(2, understood.tables().size());
    for (LogTable table : understood.tables()) {
      assertEquals(
          1.0846, table.batches().get(0).originalGravity().orElseThrow(), 0.0004, table.toString());
    }
  }

  @Test
  void whatStandsUnderTimesOfDayIsFilledTheSameAgain() {
    TestGrid grid =
        TestGrid.of(
            "Cellar",
            """
            Date | SG | | Temp C
            | morning | evening |
            #2024-03-01 | 1.080 | 1.075 | 20
            #2024-03-02 | 1.070 | 1.065 | 20
            #2024-03-03 | 1.050 | 1.040 | 20
            #2024-03-06 | 1.010 | 1.005 | 20""");
    TestGrid once = grid.with(filled(grid));
    TestGrid twice = once.with(filled(once));
    assertEquals(14, once.columnCount());
    assertEquals(once.columnCount(), twice.columnCount());
    for (int row = 0; row < once.rowCount(); row++) {
      for (int column = 0; column < once.columnCount(); column++) {
        assertEquals(once.text(row, column), twice.text(row, column));
      }
    }
  }

  private static SheetPatch filled(TestGrid grid) {
    return LogFiller.fill(
            grid, SheetUnderstanding.understand(grid, LogMap.none()), FillOptions.usual())
        .patch();
  }

  @Test
  void waterBeforeTheWashIsAskedAbout() {
    String log =
        """
        Cider ferment
        Time | SG 20/20 compensated | Probe °C
        #2025-09-18 | 0.9998 | 14
        #2025-09-19 | 1.0884 | 16
        #2025-09-21 | 1.0634 | 17
        #2025-09-24 | 1.0289 | 17
        #2025-09-28 | 0.9984 | 17""";
    assertTrue(
        understood(log).doubts().stream()
            .anyMatch(d -> d.cell().equals("B4") && d.asked().key().equals("ask.rise")));
  }

  @Test
  void aNoteInAColumnOfAVesselsOwnIsAboutIt() {
    String log =
        """
        | Cuve 3 rosé | | | Cuve 8 blanc | |
        Jour | TAP | T° | obs | TAP | T° | obs
        #2025-09-22 | 12.3 | 15 | levurage | 11.6 | 14 |
        #2025-09-25 | 10.4 | 17 | | 10.8 | 16 |
        #2025-09-27 | 7.6 | 17 | | 8.8 | 16 |
        #2025-10-01 | 3.0 | 17 | | 4.7 | 16 | + fond de cuve 3 ??
        #2025-10-04 | 1.0 | 17 | | 2.5 | 16 |""";
    assertTrue(understood(log).doubts().stream().anyMatch(d -> d.cell().equals("G6")));
  }

  @Test
  void theMeanOfGroupsSideBySideIsLeftAlone() {
    String log =
        """
        Corn mash ferment
        | Group 1 | | Group 2 | | mean
        Date | SG | Temp C | SG | Temp C | SG
        #2025-03-03 | 1.060 | 20 | 1.064 | 20 | 1.062
        #2025-03-04 | 1.050 | 20 | 1.058 | 20 | 1.054
        #2025-03-05 | 1.030 | 20 | 1.044 | 20 | 1.037
        #2025-03-07 | 1.008 | 20 | 1.016 | 20 | 1.012""";
    assertEquals(2, understood(log).tables().size());
    String total = log.replace("1.062", "1.070").replace("mean", "total");
    assertEquals(1, understood(total).tables().size());
  }

  @Test
  void twoSamplesOfOneWashAreNoTwoVessels() {
    String log =
        """
        Date | SG before feeding | Temp | SG after feeding | Temp
        #2024-03-01 | 1.080 | 20 | 1.080 | 20
        #2024-03-02 | 1.070 | 21 | 1.082 | 21
        #2024-03-03 | 1.060 | 21 | 1.071 | 21
        #2024-03-06 | 1.010 | 21 | 1.020 | 21""";
    assertFalse(understood(log).doubts().isEmpty());
  }

  @Test
  void volumesInThousandsAreNoGravities() {
    String log =
        """
        Date | Temp | mL | Note
        #2024-03-01 | 20 | 1080 |
        #2024-03-02 | 21 | 1070 |
        #2024-03-03 | 21 | 1050 |
        #2024-03-04 | 21 | 1030 |
        #2024-03-05 | 21 | 1020 |""";
    assertEquals(List.of(), understood(log).tables());
  }

  @Test
  void whoHasMeasuredIsNoReading() {
    String log =
        """
        Date | Ash SG | Ash temp C | Oak SG | Oak temp C | Who measured
        #2025-09-18 | 1.070 | 20 | 1.060 | 20 | Kim
        #2025-09-20 | 1.050 | 20 | 1.050 | 20 | Sam
        #2025-09-23 | 1.020 | 20 | 1.030 | 20 | Kim
        #2025-09-26 | 1.002 | 20 | 1.010 | 20 |""";
    assertEquals(List.of(), understood(log).doubts());
    assertEquals(2, understood(log).tables().size());
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
  @Test
  void aNoteForAllVesselsIsDroppedForNone() {
    for (String note : List.of("added a kg of sugar to each", "aggiunto zucchero a entrambi")) {
      String log =
          """
          Cider
          Date | A SG | B SG | Temp °C | Note
          1/3/2025 | 1.080 | 1.082 | 20 |
          3/3/2025 | 1.060 | 1.064 | 20 |
          5/3/2025 | 1.045 | 1.048 | 20 | %s
          7/3/2025 | 1.040 | 1.042 | 20 |
          9/3/2025 | 1.020 | 1.024 | 20 |"""
              .formatted(note);
      for (LogTable table : understood(log).tables()) {
        assertTrue(table.batches().get(0).steps().size() > 1, note);
      }
    }
  }

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
