package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static washbook.log.fill.UnusualLogsTest.original;
import static washbook.log.fill.UnusualLogsTest.table;
import static washbook.log.fill.UnusualLogsTest.understand;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.Batch;
import washbook.log.LogTable;
import washbook.log.OriginalGravity.Unknown;
import washbook.log.Role;
import washbook.log.Understanding;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Columns of names: who has read, the vessel that a wash is moved to, vessels read in turn. */
class ReadersAndVesselsTest {
  private static List<String> batches(LogTable table) {
    return table.batches().stream().map(Batch::name).toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"TAKEN BY", "Opérateur", "init", "wer", "door"})
  void whoHasReadPartsNoLogThatRisesOnce(String header) {
    LogTable table =
        understand(
                TestGrid.of(
                    "Wine",
                    """
                Date | SG | Must C | %s | Notes
                #2025-06-03 | 1.089 | 20 | Ann | yeast
                #2025-06-04 | 1.085 | 20 | Ann |
                #2025-06-05 | 1.062 | 20 | Bea |
                #2025-06-06 | 1.082 | 20 | Bea | 2 kg sugar added
                #2025-06-07 | 1.050 | 20 | Ann |
                #2025-06-09 | 1.025 | 20 | Ann |
                #2025-06-12 | 1.005 | 20 | Bea |
                #2025-06-16 | 0.998 | 20 | Ann |\
                """
                        .formatted(header)))
            .tables()
            .get(0);
    assertEquals(1, table.batches().size());
    assertEquals(Role.OTHER, table.columns().get(3).role());
  }

  @Test
  void whoHasReadPartsNoLogWithTheNewestRowsOnTop() {
    LogTable table =
        table(
            TestGrid.of(
                "Beer",
                """
                Date | wort °P hydrometer | beer C | init
                #2026-05-01 | 2.0 | 20 | jt
                #2026-04-20 | 2.1 | 20 | jt
                #2026-04-12 | 3.0 | 20 | jt
                #2026-04-09 | 5.0 | 20 | jt
                #2026-04-07 | 8.0 | 20 | rw
                #2026-04-06 | 10.8 | 20 | rw
                #2026-04-05 | 11.5 | 20 | rw\
                """));
    assertEquals(1, table.batches().size());
    assertEquals("C8", table.batches().get(0).original().cell().replace('B', 'C'));
  }

  @Test
  void vesselsReadOnOneRoundAreBatchesOfTheirOwn() {
    LogTable table =
        table(
            TestGrid.of(
                "Wash",
                """
                lot | vessel | date | plato hydrometer | temp C
                SW-1 | A | #2025-06-01 | 17.5 | 20
                SW-1 | B | #2025-06-01 | 17.9 | 20
                SW-1 | A | #2025-06-02 | 11.6 | 20
                SW-1 | B | #2025-06-02 | 13.3 | 20
                SW-1 | A | #2025-06-03 | 7.1 | 20
                SW-1 | B | #2025-06-03 | 9.9 | 20
                SW-1 | A | #2025-06-05 | 3.0 | 20
                SW-1 | B | #2025-06-05 | 6.0 | 20\
                """));
    assertEquals(List.of("A", "B"), batches(table));
  }

  @Test
  void aWashThatIsMovedFromVesselToVesselIsOneBatch() {
    LogTable table =
        table(
            TestGrid.of(
                "Wine",
                """
                Day | KMW | Must C | Vessel | Notes
                1 | 16.2 | 20 | bucket | yeast
                3 | 14.8 | 20 | bucket |
                5 | 8.6 | 20 | bucket |
                8 | 3.1 | 20 | demijohn | strained
                13 | 1.1 | 20 | demijohn |
                17 | 0.7 | 20 | demijohn |\
                """));
    assertEquals(1, table.batches().size());
    assertEquals("B2", table.batches().get(0).original().cell());
  }

  @Test
  void anAverageBesideTheDatesIsNoReading() {
    LogTable table =
        table(
            TestGrid.of(
                "Wine",
                """
                S/No. | DATE | S.G. | MUST C
                1 | #2024-06-03 | 1.089 | 20
                2 | #2024-06-05 | 1.061 | 20
                3 | #2024-06-08 | 1.021 | 20
                4 | #2024-06-12 | 0.997 | 20
                 | AVERAGE | 1.042 | 20\
                """));
    assertEquals(4, table.batches().get(0).rows().length);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"Keller/Most °C", "°C Keller = Most", "room/must temp C", "cave + moût °C"})
  void aTemperatureOfRoomAndWashIsThatOfTheWash(String header) {
    LogTable table =
        table(
            TestGrid.of(
                "Most",
                """
                Datum | Oechsle | %s
                #2025-10-05 | 64 | 14
                #2025-10-10 | 47 | 14
                #2025-10-20 | 19 | 13
                #2025-11-12 | 4 | 12\
                """
                    .formatted(header)));
    assertEquals(Role.TEMPERATURE, table.columns().get(2).role());
  }

  @Test
  void aPartOfABatchIsAskedForAndTakesItsOriginalGravity() {
    TestGrid grid =
        TestGrid.of(
            "Wine",
            """
            Date | Vessel | SG | Must C | Notes
            #2025-07-18 | bin | 1.090 | 20 | yeast
            #2025-07-20 | bin | 1.075 | 20 |
            #2025-07-22 | bin | 1.047 | 20 | split
            #2025-07-22 | A | 1.047 | 20 |
            #2025-07-25 | A | 1.028 | 20 |
            #2025-07-30 | A | 1.007 | 20 |
            #2025-08-11 | A | 0.997 | 20 |\
            """);
    Understanding open = understand(grid);
    Batch part = open.tables().get(0).batches().get(1);
    assertTrue(part.original() instanceof Unknown);
    List<String> answer = open.doubts().get(0).answers().get(0).lines();
    assertEquals(List.of("original gravity of A = 1.09 SG"), answer);
    LogMap said = LogMap.none().with("Wine", open.doubts().get(0), answer);
    LogTable answered = SheetUnderstanding.understand(grid, said).tables().get(0);
    assertEquals(1.09, answered.batches().get(1).originalGravity().orElseThrow(), 1e-9);
  }

  @Test
  void theNewestOfOneDayStandsOnTopOfTheOldest() {
    LogTable table =
        table(
            TestGrid.of(
                "Wort",
                """
                Date | h | °P hydrometer | T (°C)
                #2026-06-07 | 08:00 | 0.9 | 20
                #2026-06-05 | 08:00 | 5.2 | 20
                #2026-06-03 | 08:00 | 11.8 | 20
                #2026-06-02 | 20:00 | 12.4 | 20
                #2026-06-02 | 08:00 | 12.8 | 20\
                """));
    assertEquals("C6", table.batches().get(0).original().cell());
  }

  @Test
  void whatIsSaidBetweenHeaderAndFirstReadingIsSaidOfTheInstrument() {
    LogTable table =
        table(
            TestGrid.of(
                "Wine",
                """
                when | reading (1000s) | must temp, deg F
                 | hydrometer 60/60 |
                #2025-07-01 | 1071 | 60
                #2025-07-05 | 1039 | 60
                #2025-07-09 | 1020 | 60
                #2025-07-28 | 1001 | 60\
                """));
    assertEquals(15.56, table.settings().calibrationC(), 0.01);
    assertTrue(original(table) > 1.07);
  }

  @Test
  void wordsAreNoAmountsOfSugar() {
    Understanding sheet =
        understand(
            TestGrid.of(
                "Store",
                """
                Date | SG (air/water) | Temp F | Sugar (strip)
                #2023-09-22 | 1.091 | 60 | neg
                #2023-10-10 | 1.090 | 57 | tr
                #2023-10-28 | 1.089 | 54 | neg
                #2023-12-03 | 1.088 | 50 | neg
                #2024-02-13 | 1.083 | 49 | neg
                #2024-03-20 | 1.080 | 55 | neg\
                """));
    assertTrue(sheet.tables().stream().noneMatch(LogTable::settled));
  }

  private static final String BESIDE =
      """
       | Cask 1 | Cask 2
      Date | Refr., Brix | Refr., Brix
      #2024-03-07 | 17.8 | 11.2
      #2024-03-09 | 16.8 | 8.0
      #2024-03-11 | 15.2 | 5.2
      #2024-03-13 | 13.8 | 4.2
      #2024-03-15 | 12.8 | 4.0
      #2024-03-17 | 12.6 | 4.0
      #2024-03-22 | 12.2 | 3.8\
      """;

  @Test
  void refractometersBesideOneAnotherAreThoseOfVessels() {
    Understanding sheet = understand(TestGrid.of("Sheet", BESIDE));
    assertEquals(
        List.of("Cask 1", "Cask 2"),
        sheet.tables().stream().flatMap(t -> batches(t).stream()).toList());
    assertTrue(sheet.leftAlone().isEmpty());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"Umbu dens.,Umbu T,Caja dens.,Caja T", "tub SG,tub T,cask SG,cask T"})
  void vesselsAreCalledAsTheirTemperaturesAre(String headers) {
    Understanding sheet =
        understand(
            TestGrid.of(
                "Wine must",
                """
                Date | %s | %s | %s | %s
                #2025-02-19 | 1.076 | 25 | 1.085 | 24
                #2025-02-22 | 1.068 | 28 | 1.082 | 26
                #2025-02-24 | 1.050 | 28 | 1.072 | 29
                #2025-02-26 | 1.026 | 27 | 1.054 | 28
                #2025-03-02 | 1.004 | 25 | 1.020 | 25\
                """
                    .formatted((Object[]) headers.split(","))));
    assertEquals(2, sheet.tables().size());
    assertTrue(sheet.tables().stream().allMatch(LogTable::settled));
  }

  @Test
  void aSentenceBelowTheReadingsIsNoReading() {
    LogTable table =
        table(
            TestGrid.of(
                "Cherry must",
                """
                Brix (ATC refractometer) | Must C | Date
                8.5 | 18 | #2025-08-04
                12.7 | 25 | #2025-07-19
                19.8 | 23 | #2025-07-16
                22.5 | 20 | #2025-07-14
                TA 9.8 g/L at crush; 3.31 pH | |\
                """));
    assertEquals(4, table.batches().get(0).rows().length);
    assertEquals("A5", table.batches().get(0).original().cell());
  }

  @Test
  void aLogAcrossByWeekdaysIsTurned() {
    Understanding sheet =
        understand(
            TestGrid.of(
                "Rosso",
                """
                Rosso, tino grande | | | | | |
                giorno | lun 11 | mar 12 | mer 13 | ven 15 | dom 17 | lun 25
                Baumé (mostimetro 20°) | 13.2 | 12.8 | 11.0 | 6.0 | 2.8 | -0.2
                temperatura mosto | 21 | 22 | 25 | 30 | 28 | 21\
                """));
    assertTrue(sheet.doubts().isEmpty());
    assertEquals(6, sheet.tables().get(0).batches().get(0).rows().length);
  }
}
