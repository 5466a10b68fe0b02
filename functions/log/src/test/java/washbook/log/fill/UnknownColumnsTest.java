package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static washbook.log.fill.UnusualLogsTest.original;
import static washbook.log.fill.UnusualLogsTest.table;
import static washbook.log.fill.UnusualLogsTest.understand;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.Role;
import washbook.log.Understanding;
import washbook.log.sheet.TestGrid;

/** Logs whose columns and tables are told by what stands in them, not by known headers. */
class UnknownColumnsTest {
  @Test
  void newestOnTopIsPutInOrderByDatesWithoutAHeaderForThem() {
    TestGrid grid =
        TestGrid.of(
            "Rhabarber",
            """
            Ansatz, Spindel 20 °C
            gemessen am | °C | Dichte g/cm³ | Anmerkung
            29.06.2024 | 20 | 0.995 | klar
            09.06.2024 | 20 | 0.999 |
            31.05.2024 | 20 | 1.012 |
            26.05.2024 | 20 | 1.040 |
            20.05.2024 | 20 | 1.085 | Hefe\
            """);
    assertEquals(Role.DATE, table(grid).columns().get(0).role());
    assertEquals(6, table(grid).batches().get(0).rows()[0]);
  }

  @Test
  void aLineOfTheInstrumentOverTheHeaderIsNoPartOfIt() {
    TestGrid grid =
        TestGrid.of(
            "Cuve",
            """
            Cuve | 11 | Vol. 3800 L | densimètre °Brix étalonné 20 °C | non corrigé
            h | T° moût | Brix | acidité | équipe
            0 | 29 | 17.3 | 2.1 | nuit
            12 | 35 | 14.4 | 2.4 | jour
            24 | 34 | 4.8 | 3.3 | nuit
            38 | 31 | 2.9 | 3.7 | soir\
            """);
    assertEquals(2, table(grid).column(Role.GRAVITY).orElseThrow().column());
  }

  @Test
  void readAsItWasSeenIsNoNote() {
    TestGrid grid =
        TestGrid.of(
            "Wash",
            """
            Date | Temp C | Brix (obs.) hydrometer | Remarks
            #2025-01-17 | 20 | 13.2 | yeast
            #2025-01-18 | 20 | 7.6 |
            #2025-01-20 | 20 | 2.3 |\
            """);
    assertEquals(2, table(grid).column(Role.GRAVITY).orElseThrow().column());
  }

  @Test
  void aDryWineThatRestsIsNoFerment() {
    Understanding sheet =
        understand(
            TestGrid.of(
                "Weinkeller",
                """
                Monat | Tank | SG | Temp C
                Jan | L1 | 1.0092 | 11
                Feb | L1 | 1.0092 | 10
                Mär | L1 | 1.0091 | 11
                Apr | L1 | 1.0092 | 13
                Mai | L1 | 1.0092 | 13\
                """));
    assertEquals(List.of(), sheet.tables());
    assertEquals(1, sheet.leftAlone().size());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "28-9, 30-9, 1-10, 8-10",
        "'28.9., '30.9., '1.10., '8.10.",
        "28.09, 30.09, 1.10, 8.10"
      })
  void datesWithoutAYearAreInOrder(String dates) {
    String[] at = dates.replace("'", "").split(", ");
    TestGrid grid =
        TestGrid.of(
            "Moût",
            """
            date | SG | T moût °C
            %s | 1.000 | 20
            %s | 1.010 | 20
            %s | 1.050 | 20
            %s | 1.075 | 20\
            """
                .formatted(at[3], at[2], at[1], at[0]));
    assertEquals(4, table(grid).batches().get(0).rows()[0]);
  }

  @Test
  void aRefractometerInTheTitleIsThatOfAllTables() {
    String table =
        """
        date | °Oe lu | °C moût
        #2024-07-02 | 75 | 20
        #2024-07-05 | 60 | 20
        #2024-07-08 | 46 | 20
        #2024-07-19 | 34 | 20
        """;
    Understanding sheet =
        understand(
            TestGrid.of(
                "Cerises",
                "Moût de cerises, réfractomètre optique ATC échelle °Oe\n"
                    + "Fût 1\n"
                    + table
                    + "|\nFût 2\n"
                    + table));
    assertEquals(2, sheet.tables().size());
    assertEquals(2, sheet.doubts().size());
    assertTrue(sheet.tables().stream().noneMatch(t -> t.settled()));
  }

  @Test
  void vesselsInRowsWithTheirDatesAcrossAreTablesOfTheirOwn() {
    Understanding sheet =
        understand(
            TestGrid.of(
                "Mead shelf",
                """
                Mead shelf 2025 | 3/15 | 3/18 | 3/25 | 4/6 | 4/29
                jar temp F | 70 | 72 | 71 | 68 | 65
                Wildflower | 1.103 | 1.094 | 1.049 | 1.004 | 1.002
                Blackberry | 1.111 | 1.101 | 1.046 | 1.010 | 1.010\
                """));
    assertEquals(
        List.of("Wildflower", "Blackberry"),
        sheet.tables().stream().map(t -> t.batches().get(0).name()).toList());
    assertEquals(List.of(), sheet.doubts());
  }

  @Test
  void vesselsUnderTheirNamesAreReadOnTheScaleOfTheTitle() {
    Understanding sheet =
        understand(
            TestGrid.of(
                "Tinas",
                """
                Brix con mostímetro, mosto de agave
                Día | Tina 1 | Tina 2
                #2025-02-05 | 13.4 | 12.8
                #2025-02-07 | 11.4 | 10.4
                #2025-02-09 | 4.9 | 4.1
                #2025-02-11 | 0.8 | 0.5\
                """));
    assertEquals(2, sheet.tables().size());
    assertEquals("BRIX", sheet.tables().get(0).column(Role.GRAVITY).orElseThrow().unit());
  }

  @Test
  void measuredFiguresNameNoBatch() {
    TestGrid grid =
        TestGrid.of(
            "Trigo",
            """
            quando | densímetro | T balde | T amostra
            #2025-03-08 | 1.049 | 21 | 20
            #2025-03-10 | 1.030 | 20.5 | 20
            #2025-03-12 | 1.020 | 19.5 | 20
            #2025-03-20 | 1.011 | 18 | 20\
            """);
    assertEquals(
        1, understand(grid).tables().get(0).batches().size() + understand(grid).doubts().size());
  }

  @Test
  void aNumberOfTheReadingIsNoReading() {
    TestGrid grid =
        TestGrid.of(
            "Maple wine",
            """
            Reading # | When | Corrected SG | Remarks
            1 | #2025-04-06 | 1.092 | yeast
            2 | #2025-04-11 | 1.081 |
            3 | #2025-04-24 | 1.030 |
            4 | #2025-07-01 | 1.000 |\
            """);
    assertEquals(1.092, original(table(grid)), 1e-9);
  }

  @Test
  void aRowOfADateAndADashIsNoHeader() {
    TestGrid grid =
        TestGrid.of(
            "Molasses 2",
            """
            Date | SG | Temp C | Notes
            2025-01-12 | 1.096 | 26 | yeast
            2025-01-13 | 1.083 | 29 |
            | | |
            2025-01-14 | - | | forgot
            2025-01-16 | 1.035 | 30 |
            2025-01-17 | 1.028 | 29 |
            2025-01-20 | 1.021 | 28 |
            2025-01-24 | 1.020 | 27 |\
            """);
    assertEquals(8, table(grid).lastRow());
  }
}
