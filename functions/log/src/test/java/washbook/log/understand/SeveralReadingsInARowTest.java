package washbook.log.understand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import washbook.log.LogColumn;
import washbook.log.LogTable;
import washbook.log.Role;
import washbook.log.Understanding;
import washbook.log.fill.FillOptions;
import washbook.log.fill.LogFiller;
import washbook.log.sheet.SheetPatch;
import washbook.log.sheet.TestGrid;

/** Several readings in one row: of vessels, of times of day, their mean; and what is no reading. */
class SeveralReadingsInARowTest {
  private static Understanding understood(String log) {
    return SheetUnderstanding.understand(TestGrid.of("Cellar", log), LogMap.none());
  }

  private static int column(String log, Role role) {
    LogTable table = understood(log).tables().get(0);
    return table.column(role).map(LogColumn::column).orElse(-1);
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

  private static SheetPatch filled(TestGrid grid) {
    return LogFiller.fill(
            grid, SheetUnderstanding.understand(grid, LogMap.none()), FillOptions.usual())
        .patch();
  }
}
