package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static washbook.log.fill.SimpleLogTest.calc;
import static washbook.log.fill.UnusualLogsTest.original;
import static washbook.log.fill.UnusualLogsTest.table;
import static washbook.log.fill.UnusualLogsTest.understand;

import java.util.List;
import org.junit.jupiter.api.Test;
import washbook.log.LogTable;
import washbook.log.Role;
import washbook.log.Understanding;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** What is said around a table, and which of its rows belong together. */
class UnusualStatementsTest {
  @Test
  void aListAboveGivesEachVesselItsOriginalGravity() {
    TestGrid grid =
        TestGrid.of(
            "Cellar",
            """
            Tank | Beer | OG °P
            FV1 | Lager | 13.2
            FV2 | Stout | 16.5

            Date | Tank | °P saccharometer | Temp C
            #2026-02-03 | FV1 | 12.3 | 20
            #2026-02-03 | FV2 | 15.2 | 20
            #2026-02-05 | FV1 | 9.0 | 20
            #2026-02-05 | FV2 | 8.7 | 20
            #2026-02-09 | FV1 | 3.0 | 20
            #2026-02-09 | FV2 | 4.7 | 20\
            """);
    LogTable table = table(grid);
    assertEquals(calc("CONVERT", 13.2, "PLATO", "SG"), original(table), 1e-9);
    assertEquals(
        calc("CONVERT", 16.5, "PLATO", "SG"),
        table.batches().get(1).originalGravity().orElseThrow(),
        1e-9);
  }

  @Test
  void aListThatDoesNotNameTheBatchIsAskedAbout() {
    TestGrid grid =
        TestGrid.of(
            "Cellar wine",
            """
            Tank | OG °P
            Lager | 13.2
            Stout | 16.5

            Date | °P saccharometer | Temp C
            #2026-02-03 | 12.3 | 20
            #2026-02-05 | 9.0 | 20
            #2026-02-09 | 3.0 | 20
            #2026-02-12 | 2.9 | 20\
            """);
    Understanding understood = understand(grid);
    assertTrue(understood.doubts().get(0).question().startsWith("Which of the original gravities"));
    assertTrue(understood.tables().get(0).batches().get(0).originalGravity().isEmpty());
  }

  /** Corrected was the original gravity, and the readings are said to be not. */
  @Test
  void whatIsSaidOfTheOriginalGravityIsNotSaidOfTheReadings() {
    TestGrid grid =
        TestGrid.of(
            "Wash",
            """
            6 kg suiker op 22 L, begin SG 1.088 (gecorr. 20 °C)
            SG met hydrometer, niet gecorrigeerd
            datum | SG | temp °C
            #2025-06-07 | 1.084 | 30
            #2025-06-08 | 1.070 | 31
            #2025-06-09 | 1.030 | 33
            #2025-06-11 | 1.000 | 30\
            """);
    LogTable table = table(grid);
    assertEquals(false, table.settings().correctedAlready());
    assertEquals(1.088, original(table), 1e-9);
  }

  @Test
  void aBlendThatBeginsLowIsAskedAbout() {
    TestGrid grid =
        TestGrid.of(
            "Perry",
            """
            Blended on 9 Nov from three lots
            date | SG | temp C
            #2025-11-09 | 1.032 | 15
            #2025-11-13 | 1.026 | 15
            #2025-11-25 | 1.012 | 15
            #2025-12-19 | 1.001 | 15\
            """);
    Understanding understood = understand(grid);
    assertEquals(1, understood.doubts().size());
    assertTrue(understood.tables().get(0).batches().get(0).originalGravity().isEmpty());
  }

  @Test
  void wineThatHasFermentedLongAgoIsLeftAlone() {
    TestGrid grid =
        TestGrid.of(
            "Wine ageing",
            """
            date | barrel | density g/mL | temp C | SO2
            #2025-03-01 | 1 | 0.9935 | 14 | 28
            #2025-04-01 | 1 | 0.9934 | 14 | 25
            #2025-05-01 | 1 | 0.9934 | 15 | 24
            #2025-06-01 | 1 | 0.9933 | 15 | 30\
            """);
    Understanding understood = understand(grid);
    assertEquals(List.of(), understood.tables());
    assertEquals(1, understood.leftAlone().size());
  }

  @Test
  void readingsThatAreCalledBrineAreNoFerments() {
    TestGrid grid =
        TestGrid.of(
            "Eggs",
            """
            brine read with the wine hydrometer
            date | brine SG | brine °C
            #2025-04-01 | 1.080 | 15
            #2025-04-09 | 1.075 | 15
            #2025-04-17 | 1.060 | 16
            #2025-04-25 | 1.040 | 17
            #2025-05-07 | 1.010 | 17\
            """);
    assertEquals(List.of(), understand(grid).tables());
  }

  /** A day column of weekdays with day and month is one of dates. */
  @Test
  void daysAsWeekdayDayAndMonthStayInOrder() {
    TestGrid grid =
        TestGrid.of(
            "Sidra",
            """
            día | densidad | temp mosto C
            sáb 28/10 | 1.052 | 14
            lun 30 | 1.052 | 13
            jue 2/11 | 1.047 | 13
            dom 5 | 1.040 | 13
            sáb 11 | 1.025 | 12\
            """);
    LogTable table = table(grid);
    assertEquals(Role.DATE, table.columns().get(0).role());
    Filling filling = LogFiller.fill(grid, understand(grid), FillOptions.usual());
    assertEquals(List.of(), filling.refusals());
  }

  /** Two vessels whose readings hardly differ are told apart by nothing but the rows of a day. */
  @Test
  void rowsOfOneDayThatDifferInAColumnAreAskedAbout() {
    TestGrid grid =
        TestGrid.of(
            "Saison",
            """
            date | Q | °P saccharometer | temp C
            #2025-04-07 | 1 | 13.2 | 20
            #2025-04-07 | 2 | 13.4 | 20
            #2025-04-08 | 1 | 12.6 | 21
            #2025-04-08 | 2 | 13.1 | 21
            #2025-04-09 | 1 | 8.7 | 24
            #2025-04-09 | 2 | 9.7 | 24
            #2025-04-12 | 1 | 3.2 | 24
            #2025-04-12 | 2 | 3.9 | 24\
            """);
    Understanding understood = understand(grid);
    assertEquals(1, understood.doubts().size());
    LogMap answered =
        LogMap.none().with("Saison", understood.doubts().get(0), List.of("column B = BATCH"));
    Understanding again = SheetUnderstanding.understand(grid, answered);
    assertEquals(2, again.tables().get(0).batches().size());
  }

  /** Who has read is no batch, also where a slip of the pen stands between. */
  @Test
  void whoHasReadIsNoBatch() {
    TestGrid grid =
        TestGrid.of(
            "Medronho",
            """
            data | Bé pesa-mostos | temp °C | Quem
            #2021-11-20 | 9.8 | 20 | Zé
            #2021-11-24 | 9.5 | 20 | Zé
            #2021-11-29 | 8.4 | 20 | Zé
            #2021-12-04 | 6.5 | 20 | Lurdes
            #2021-12-09 | 4.3 | 20 | Zé
            #2021-12-12 | 33 | 20 | neto
            #2021-12-18 | 1.7 | 20 | Zé
            #2021-12-27 | 1.1 | 20 | Zé
            #2022-01-10 | 1.0 | 20 | Zé\
            """);
    assertEquals(1, table(grid).batches().size());
  }

  /** A row of labels with a unit is no header of a table without rows that hides what it says. */
  @Test
  void anOriginalGravityInALineThatLooksLikeAHeaderHolds() {
    TestGrid grid =
        TestGrid.of(
            "Märzen",
            """
            Stammwürze | 13.2 | °P | Spindel 20 °C
            Anstellen | #2022-11-17 | | 11.5 hl
            Datum | Extrakt °P | Probe °C
            #2022-11-18 | 12.9 | 20
            #2022-11-20 | 10.9 | 20
            #2022-11-23 | 5.8 | 20
            #2022-11-28 | 4.0 | 20\
            """);
    assertEquals(calc("CONVERT", 13.2, "PLATO", "SG"), original(table(grid)), 1e-9);
  }
}
