package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static washbook.log.fill.UnusualLogsTest.original;
import static washbook.log.fill.UnusualLogsTest.table;
import static washbook.log.fill.UnusualLogsTest.understand;

import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.functions.reading.Refractometer;
import washbook.functions.scale.SugarScale;
import washbook.log.Batch;
import washbook.log.ComputedColumn;
import washbook.log.LogTable;
import washbook.log.OriginalGravity;
import washbook.log.Role;
import washbook.log.Understanding;
import washbook.log.reading.RowInstrument;
import washbook.log.sheet.TestGrid;

/** Which instrument was read, said row by row or by a scale in a sentence; rough readings. */
class InstrumentOfEachRowTest {
  @Test
  void aColumnSaysWhichInstrumentWasRead() {
    TestGrid grid =
        TestGrid.of(
            "Bin",
            """
            Date | Brix | Must temp (C) | Tool | Notes
            #2022-04-02 | 24.0 | 20 | refr (ATC) | crushed
            #2022-04-03 | 24.0 | 20 | hydrom. |
            #2022-04-05 | 17.0 | 20 | " |
            #2022-04-08 | 10.0 | 20 | refr |
            #2022-04-11 | 1.0 | 20 | hydrom. |\
            """);
    LogTable table = table(grid);
    assertEquals(Role.INSTRUMENT, table.columns().get(3).role());
    ComputedTable figures = new ComputedTable(grid, table, EnumSet.allOf(ComputedColumn.class));
    assertEquals(
        SugarScale.BRIX.toGravity(17),
        figures.number(ComputedColumn.CORRECTED_GRAVITY, 3),
        2e-4,
        "the mark repeats the hydrometer");
    assertEquals(
        Refractometer.gravity(24, 10, 1),
        figures.number(ComputedColumn.CORRECTED_GRAVITY, 4),
        1e-6);
  }

  @ParameterizedTest
  @CsvSource({
    "refr., REFRACTOMETER",
    "Refr, REFRACTOMETER",
    "refrac (ATC), REFRACTOMETER",
    "R, REFRACTOMETER",
    "hyd, HYDROMETER",
    "Sp., HYDROMETER",
    "Spindel, HYDROMETER",
    "densímetro, HYDROMETER",
    "hot, NOTHING",
    "'', NOTHING",
  })
  void wordsForInstruments(String word, RowInstrument.Kindred kindred) {
    assertEquals(kindred, RowInstrument.of(word));
  }

  @Test
  void aPotentialScaleNamedInASentenceIsThatOfTheReadings() {
    LogTable table =
        table(
            TestGrid.of(
                "Sugar",
                """
                sugar wash, 12 lb cane sugar + 6 gal
                "potential alc. side of the hydrometer, % (made for 60 F)"
                day | pot. % | wash temp C | misc
                0 | 10.6 | 20 | pitched
                2 | 8.0 | 20 | oyster shell in
                6 | 0.4 | 20 |
                11 | -1.4 | 20 | below the zero\
                """));
    assertEquals("POTENTIAL", table.column(Role.GRAVITY).orElseThrow().unit());
  }

  @ParameterizedTest
  @CsvSource({"~ 4, true", "ca. 4, true", "± 4, true", "~4.2, true", "4, false"})
  void aReadingThatIsOnlyAboutRightIsRefused(String shown, boolean refused) {
    TestGrid grid =
        TestGrid.of(
            "Most",
            """
            Wann | KMW | Grad C | Notiz
            #2024-10-04 | 15.0 | 20 | gepresst
            #2024-10-07 | 12.8 | 20 |
            #2024-10-10 | 8.1 | 20 |
            #2024-10-13 | %s | 20 |
            #2024-10-15 | 2.1 | 20 |\
            """
                .formatted(shown));
    ComputedTable figures = new ComputedTable(grid, table(grid), EnumSet.of(ComputedColumn.ABV));
    assertEquals(refused, Double.isNaN(figures.number(ComputedColumn.ABV, 4)));
  }

  @Test
  void pointsAndTheirTemperatureStandInOneCell() {
    TestGrid grid =
        TestGrid.of(
            "Brew",
            """
            Hydro cal | 60F | gravity noted as points @ deg C
            Day | Pts @ temp | Who
            Sat d0 | 47 @ 22 | A
            Mon d2 | 29 @ 19.5 | B
            Wed d4 | 13 @ 20 | A
            Fri d6 | 10 @ 19 | B\
            """);
    assertEquals("POINTS", table(grid).column(Role.GRAVITY).orElseThrow().unit());
    assertEquals(1.0482, original(table(grid)), 1e-3);
  }

  @Test
  void whatIsCorrectedBehindAnOriginalGravityIsThatOne() {
    LogTable table =
        table(
            TestGrid.of(
                "Goose",
                """
                Gravity points | | hydrometer 60F | | OG into fermenter | | 74 | corrected by hand to 60F
                day/time | pts | sample F | room F | note
                Sat 16:00 | 69 | 92 | 66 | pitched
                Sun 17:30 | 43 | 96 | 66 |
                Mon 06:45 | 31 | 95 | 63 |
                Tue 19:00 | 15 | 83 | 66 |\
                """));
    assertTrue(!table.settings().correctedAlready());
    assertEquals(1.074, original(table), 1e-9);
  }

  @Test
  void linesThatTellOfABlendBeginABatchWhoseOriginalIsAsked() {
    Understanding sheet =
        understand(
            TestGrid.of(
                "Cider",
                """
                datum | s.g. | gr C | geur
                4-10-2024 | 1.061 | 20 | zoet
                9-10-2024 | 1.051 | 20 |
                17-10-2024 | 1.026 | 20 |

                SAMENGEVOEGD 18 okt in vat 50 l | | |
                18-10-2024 | 1.020 | 20 |
                29-10-2024 | 1.006 | 20 |
                9-11-2024 | 1.002 | 20 |\
                """));
    List<Batch> batches = sheet.tables().get(0).batches();
    assertEquals(2, batches.size());
    assertTrue(batches.get(1).original() instanceof OriginalGravity.Unknown);
    assertEquals(1, sheet.doubts().size());
  }

  @Test
  void daysWithTheirMonthsAreDatesWhereAMonthBegins() {
    LogTable table =
        table(
            TestGrid.of(
                "Medronho",
                """
                medronho, dorna velha, densímetro 20 ºC
                dia | SG | graus C | notas
                12.11 | 1.061 | 20 | mexi
                18.11 | 1.055 | 20 |
                27.11 | 1.030 | 20 |
                2.12 | 1.025 | 20 |
                17.12 | 1.008 | 20 |\
                """));
    assertEquals(Role.DATE, table.columns().get(0).role());
    assertEquals(2, table.batches().get(0).rows()[0]);
  }

  @Test
  void degreesOfNoStatedKindBesideReadingsAreTemperatures() {
    LogTable table =
        table(
            TestGrid.of(
                "Wein",
                """
                Hagebuttenwein, Spindel 20 °C
                wann | Spindel (SG) | warm? | sonst
                #2024-11-02 | 1.098 | 22 Grad | Hefe
                #2024-11-08 | 1.082 | 23 Grad |
                #2024-11-12 | 1.067 | 22 |
                #2024-11-20 | 1.038 | 21 Grad |
                #2024-12-03 | 1.011 | 20 |\
                """));
    assertEquals(Role.TEMPERATURE, table.columns().get(2).role());
  }

  @Test
  void daysAndMonthsThatMayMeanTwoThingsKeepTheOrderOfTheRows() {
    Understanding sheet =
        understand(
            TestGrid.of(
                "Wine",
                """
                wine, hydrometer 20 C
                day | SG | C | notes
                28.12 | 1.062 | 20 | yeast
                30.12 | 1.058 | 20 |
                2.1 | 1.050 | 20 |
                5.1 | 1.030 | 20 |
                9.1 | 1.010 | 20 |\
                """));
    assertEquals(2, sheet.tables().get(0).batches().get(0).rows()[0]);
  }

  @Test
  void aBlankInstrumentIsNotThatOfTheRowAbove() {
    Understanding sheet =
        understand(
            TestGrid.of(
                "Bin",
                """
                Date | Brix | Must temp (C) | Tool | Notes
                #2022-04-02 | 24.0 | 20 | refractometer | crushed
                #2022-04-03 | 20.0 | 20 | |
                #2022-04-05 | 12.0 | 20 | |
                #2022-04-11 | 1.0 | 20 | hydrometer |\
                """));
    assertTrue(sheet.tables().get(0).column(Role.INSTRUMENT).isEmpty());
    assertEquals(1, sheet.doubts().size());
  }
}
