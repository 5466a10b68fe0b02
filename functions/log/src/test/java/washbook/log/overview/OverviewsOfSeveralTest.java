package washbook.log.overview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static washbook.log.fill.SimpleLogTest.calc;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import washbook.functions.ferment.Progress;
import washbook.log.Understanding;
import washbook.log.WarningLimits;
import washbook.log.fill.FillOptions;
import washbook.log.fill.LogFiller;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Overviews of sheets with several tables and batches, and of what is nearly not a ferment. */
class OverviewsOfSeveralTest {
  private static List<BatchOverview> overviews(String log) {
    TestGrid grid = TestGrid.of("Winter", log);
    Understanding understood = SheetUnderstanding.understand(grid, LogMap.none());
    return new Overviews(WarningLimits.usual(), LocalDate.of(2025, 10, 20))
        .of(grid, understood, LogFiller.fill(grid, understood, FillOptions.usual()));
  }

  private static List<String> names(String log) {
    return overviews(log).stream().map(BatchOverview::batch).toList();
  }

  private static final String PLUM = "Plum 3\nDay|SG|Temp C\n0|1.085|20\n3|1.05|20\n6|1.02|20\n\n";
  private static final String OPEN = "Sugar 4\nDay|SG|Temp\n0|1.085|50\n4|1.04|49\n8|1.01|51\n\n";
  private static final String APPLE = "Apple 7\nDay|SG|Temp C\n0|1.06|20\n3|1.03|17\n6|1.01|19\n";

  @Test
  void eachTableThatIsUnderstoodHasItsOwnFigures() {
    assertEquals(List.of("Plum 3", "Apple 7"), names(PLUM + APPLE));
    assertEquals(List.of("Plum 3", "Apple 7"), names(OPEN + PLUM + APPLE));
    assertEquals(List.of("Plum 3", "Apple 7"), names(PLUM + OPEN + APPLE));
    for (String log : List.of(PLUM + APPLE, OPEN + PLUM + APPLE, PLUM + OPEN + APPLE)) {
      BatchOverview apple = overviews(log).get(1);
      assertEquals("Winter", apple.sheet());
      assertEquals(1.06, apple.originalGravity());
      assertEquals(1.01, apple.latestGravity(), 1e-3);
      assertEquals(3, apple.readings());
      assertEquals(17, apple.lowestTemperatureC());
      assertEquals(20, apple.highestTemperatureC());
    }
  }

  @Test
  void rateAndDaysAreThoseOfTheFunctions() {
    BatchOverview plum = overviews(PLUM).get(0);
    assertEquals(
        Progress.rate(new double[] {0, 3, 6}, new double[] {1.085, 1.05, 1.02}), plum.rate(), 0.01);
    assertEquals(6, plum.days());
    assertNotNull(plum.daysToFinish());
    assertTrue(plum.daysToFinish() > 0);
    assertTrue(plum.daysToFinishPlusMinus() > 0);
    assertEquals(calc("TRUEEXTRACT", 1.085, 1.02), plum.extractLeft(), 0.02);
    assertNull(plum.firstDate(), "a day's number is no date");
  }

  @Test
  void aBatchWithoutAReadingIsLeftOutAndOneRefusedThroughoutIsNot() {
    String log = "Batch|Day|SG|Temp C\nPlum 3|0|1.085|20\nPlum 3|3|1.05|20\n";
    assertEquals(List.of("Plum 3"), names(log + "Apple 7|0||20\nApple 7|3||20"));
    List<BatchOverview> two = overviews(log + "Apple 7|0|1.06|\nApple 7|3|1.03|");
    assertEquals(2, two.size());
    BatchOverview apple = two.get(1);
    assertEquals(2, apple.readings());
    assertEquals(2, apple.refused());
    assertNull(apple.latestGravity());
    assertNull(apple.alcohol());
    assertNull(apple.alcoholPlusMinus());
    assertNull(apple.rate());
    assertNull(apple.lowestTemperatureC());
    assertEquals("", apple.state());
  }

  /** A last reading a little above the original gravity means that nothing has fermented yet. */
  @Test
  void aWashThatHasNotBegunHasNoAlcohol() {
    BatchOverview plum = overviews("OG|1.085\nDay|SG|Temp C\n0|1.086|20\n1|1.0855|20").get(0);
    assertEquals(0, plum.alcohol());
    assertEquals(1.085, plum.originalGravity());
    assertEquals(1.0855, plum.latestGravity());
    assertEquals(0, plum.apparentAttenuation());
    assertEquals(calc("ABVPLUSMINUS", 1.085, 1.085), plum.alcoholPlusMinus(), 0.006);
  }

  @Test
  void datesAreThoseOfTheFirstAndTheLastReading() {
    String dated = "Date|SG|Temp C\n#2025-10-01|1.085|20\n#2025-10-04|1.05|20\n#2025-10-09|1.02|20";
    BatchOverview plum = overviews(dated).get(0);
    assertEquals("2025-10-01", plum.firstDate());
    assertEquals("2025-10-09", plum.lastDate());
    assertEquals(8, plum.days());
  }
}
