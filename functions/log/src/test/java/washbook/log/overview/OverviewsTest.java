package washbook.log.overview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static washbook.log.fill.SimpleLogTest.calc;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import washbook.log.Doubt;
import washbook.log.Understanding;
import washbook.log.WarningLimits;
import washbook.log.fill.FillOptions;
import washbook.log.fill.Filling;
import washbook.log.fill.LogFiller;
import washbook.log.language.Language;
import washbook.log.overview.Warning.Kind;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Where a batch stands, against the catalogue's functions (wiring), and what is warned of. */
class OverviewsTest {
  private static final LocalDate TODAY = LocalDate.of(2025, 10, 20);

  @Test
  void anOverviewSaysWhatTheFunctionsSayOfTheLastReading() {
    BatchOverview plum =
        overview(
            """
            Date | SG | Temp (°C) | Note
            #2025-10-01 | 1.085 | 20 | pressed and pitched
            #2025-10-03 | 1.062 | 27 |
            #2025-10-06 | 1.030 | 25.5 | racked
            #2025-10-08 | 1.020 | |
            #2025-10-14 | 0.998 | 19 |
            #2025-10-16 | 0.998 | 20 |""");
    assertEquals("2025-10-01", plum.firstDate());
    assertEquals("2025-10-16", plum.lastDate());
    assertEquals(15, plum.days());
    assertEquals(1.085, plum.originalGravity(), 5e-5);
    assertEquals(calc("CORRECTEDGRAVITY", 0.998, 20.0, null, 1.085), plum.latestGravity(), 6e-5);
    assertEquals(calc("ABV", 1.085, 0.998), plum.alcohol(), 0.02);
    assertEquals(calc("ABVPLUSMINUS", 1.085, 0.998), plum.alcoholPlusMinus(), 0.01);
    assertEquals(calc("APPARENTATTENUATION", 1.085, 0.998), plum.apparentAttenuation(), 0.2);
    assertEquals(calc("REALATTENUATION", 1.085, 0.998), plum.realAttenuation(), 0.2);
    assertEquals("done", plum.state());
    assertEquals(0, plum.daysToFinish());
    assertEquals(19, plum.lowestTemperatureC());
    assertEquals(27, plum.highestTemperatureC());
    assertEquals(6, plum.readings());
    assertEquals(1, plum.refused());
    assertEquals(List.of(), plum.warnings());
  }

  @Test
  void aLogWithoutDatesHasNoDatesAndIsNeverOverdue() {
    BatchOverview plum =
        overview(
            """
            Day | SG | Temp (°C) | Note
            0 | 1.085 | 20 | pitched
            2 | 1.062 | 20 |
            4 | 1.036 | 20 |""");
    assertNull(plum.firstDate());
    assertEquals(4, plum.days());
    assertEquals("working", plum.state());
    assertEquals(List.of(), plum.warnings());
  }

  @Test
  void aWashThatWorksIsOverdueAfterSomeDaysUntilItsLogCountsAsPutAway() {
    String log =
        """
        Date | SG | Temp (°C) | Note
        #2025-10-01 | 1.085 | 20 | pitched
        #2025-10-03 | 1.062 | 20 |
        #2025-10-05 | 1.036 | 20 |""";
    assertEquals(List.of(), kinds(log, LocalDate.of(2025, 10, 9)));
    assertEquals(List.of(Kind.OVERDUE), kinds(log, LocalDate.of(2025, 10, 10)));
    assertEquals(List.of(Kind.OVERDUE), kinds(log, LocalDate.of(2026, 1, 3)));
    assertEquals(List.of(), kinds(log, LocalDate.of(2026, 1, 4)));
    BatchOverview early = overview(log, LocalDate.of(2025, 10, 9), List.of());
    LocalDate later = LocalDate.of(2025, 10, 12);
    assertEquals(1, early.asOf(later, WarningLimits.usual(), Language.EN).warnings().size());
    assertEquals(
        List.of(),
        early.asOf(later, WarningLimits.parse(List.of("overdue-days=9")), Language.EN).warnings());
  }

  @Test
  void aWashThatStandsStillIsStuckAndOneThatNeverFellIsNotFalling() {
    assertEquals(
        List.of(Kind.STUCK),
        kinds(
            """
            Date | SG | Temp (°C) | Note
            #2025-10-01 | 1.085 | 20 | pitched
            #2025-10-03 | 1.062 | 20 |
            #2025-10-05 | 1.040 | 20 |
            #2025-10-07 | 1.040 | 20 |
            #2025-10-09 | 1.040 | 20 |
            #2025-10-11 | 1.040 | 20 |""",
            TODAY));
    assertEquals(
        List.of(Kind.NOT_FALLING),
        kinds(
            """
            Fermentation log
            Date | SG | Temp (°C) | Note
            #2025-10-01 | 1.085 | 20 | yeast pitched
            #2025-10-03 | 1.085 | 20 |
            #2025-10-05 | 1.084 | 20 |
            #2025-10-06 | 1.084 | 20 |""",
            TODAY));
  }

  @Test
  void aTemperatureOutsideItsRangeIsNamedWithItsCellAndLimit() {
    BatchOverview plum =
        overview(
            """
            Date | SG | Temp (°C) | Note
            #2025-10-01 | 1.085 | 20 | pitched
            #2025-10-03 | 1.062 | 34 |
            #2025-10-06 | 1.030 | 36 |
            #2025-10-14 | 0.998 | 9 |
            #2025-10-16 | 0.998 | 15 |""");
    assertEquals(
        List.of(
            new Warning(
                Kind.TOO_WARM, "C4", "36.0 °C is above 32 °C.", "common practice, no source"),
            new Warning(
                Kind.TOO_COLD, "C5", "9.0 °C is below 10 °C.", "common practice, no source")),
        plum.warnings());
  }

  @Test
  void alcoholIsAbovePlanOnlyWhenAPlanIsGivenAndTheSourceSaysSo() {
    String log =
        """
        Date | SG | Temp (°C) | Note
        #2025-10-01 | 1.085 | 20 | pitched
        #2025-10-03 | 1.062 | 20 |
        #2025-10-06 | 1.030 | 20 |
        #2025-10-14 | 0.998 | 20 |
        #2025-10-16 | 0.998 | 20 |""";
    Warning above = overview(log, TODAY, List.of("planned-abv=10")).warnings().get(0);
    assertEquals(Kind.ABOVE_PLAN, above.kind());
    assertEquals("limit as given", above.source());
    assertTrue(above.reason().endsWith("more than the planned 10 % vol."), above.reason());
    assertEquals(List.of(), overview(log, TODAY, List.of("planned-abv=12")).warnings());
  }

  @Test
  void whatRisesAfterALowReadingIsInQuestion() {
    BatchOverview plum =
        overview(
            """
            Date | SG | Temp (°C) | Note
            #2025-10-01 | 1.085 | 20 | pitched
            #2025-10-02 | 1.080 | 20 |
            #2025-10-03 | 1.052 | 20 |
            #2025-10-04 | 1.064 | 20 |
            #2025-10-05 | 1.055 | 20 |""",
            TODAY,
            List.of(),
            List.of("B5"));
    assertEquals(2, plum.refused());
  }

  @Test
  void aLimitOutsideItsRangeOrOfAnotherNameIsRefused() {
    for (String wrong : List.of("warmest=x", "warmest", "warmest=99", "hottest=30")) {
      assertThrows(IllegalArgumentException.class, () -> WarningLimits.parse(List.of(wrong)));
    }
  }

  private static List<Kind> kinds(String log, LocalDate today) {
    return overview(log, today, List.of()).warnings().stream().map(Warning::kind).toList();
  }

  private static BatchOverview overview(String log) {
    return overview(log, TODAY, List.of());
  }

  private static BatchOverview overview(String log, LocalDate today, List<String> limits) {
    return overview(log, today, limits, List.of());
  }

  private static BatchOverview overview(
      String log, LocalDate today, List<String> limits, List<String> asked) {
    TestGrid grid = TestGrid.of("Plum 3", log);
    Understanding understood = SheetUnderstanding.understand(grid, LogMap.none());
    assertEquals(asked, understood.doubts().stream().map(Doubt::cell).toList());
    Filling filling = LogFiller.fill(grid, understood, FillOptions.usual());
    List<BatchOverview> all =
        new Overviews(WarningLimits.parse(limits), today).of(grid, understood, filling);
    assertEquals(1, all.size());
    return all.get(0);
  }
}
