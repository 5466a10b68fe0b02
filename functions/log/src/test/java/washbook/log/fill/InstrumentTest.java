package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.Understanding;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Degrees of sugar of which the log does not say what they were read with. */
class InstrumentTest {
  private static TestGrid log(String header, String temperature, String end) {
    return TestGrid.of(
        "Sugar 4",
        "Day | "
            + header
            + temperature
            + "\n0 | 20 | 20\n3 | 12 | 20\n6 | "
            + end
            + " | 20\n9 | "
            + end
            + " | 20");
  }

  private static double lastAlcohol(TestGrid grid, String map) {
    Understanding understood = SheetUnderstanding.understand(grid, LogMap.parse(map));
    assertEquals(List.of(), understood.doubts());
    Filling filling = LogFiller.fill(grid, understood, FillOptions.usual());
    ColumnPatch alcohol =
        filling.patch().columns().stream()
            .filter(c -> c.header().equals("Alcohol to date (% vol)"))
            .findFirst()
            .orElseThrow();
    return alcohol.cells().number(4);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Brix",
        "\u00b0Bx",
        "Bx",
        "Plato",
        "\u00b0P",
        "Balling",
        "Brix reading",
        "Sugar (Brix)",
        "Degr\u00e9s Brix",
        "Grados Brix",
        "Gradi Brix",
        "Graus Brix",
        "Brix Wert",
        "Gravity (Brix)"
      })
  void aCourseThatEndsHighIsAskedAboutAndEachAnswerFillsItsOwnNumbers(String header) {
    TestGrid grid = log(header, " | Temp C", "7");
    Understanding understood = SheetUnderstanding.understand(grid, LogMap.none());
    assertEquals(1, understood.doubts().size(), header);
    assertEquals("B1", understood.doubts().get(0).cell());
    assertFalse(understood.tables().get(0).settled());
    assertEquals(7.4, lastAlcohol(grid, "column B = GRAVITY in BRIX"), 0.1);
    assertEquals(11.7, lastAlcohol(grid, "column B = REFRACTOMETER in BRIX"), 0.2);
  }

  @Test
  void noTemperatureIsAskedAboutToo() {
    TestGrid grid = TestGrid.of("Sugar 4", "Day | Brix\n0 | 20\n3 | 12\n6 | 1\n9 | 1");
    assertEquals(1, SheetUnderstanding.understand(grid, LogMap.none()).doubts().size());
    double hydrometer = lastAlcohol(grid, "column B = GRAVITY in BRIX\ntemperature = 20 C");
    double refractometer =
        lastAlcohol(TestGrid.copyWith(grid, 4, 1, 7.0), "column B = REFRACTOMETER in BRIX");
    assertTrue(Math.abs(hydrometer - refractometer) > 0.1);
  }

  @Test
  void aUnitBehindEveryReadingIsAskedAboutLikeOneInTheHeader() {
    TestGrid grid =
        TestGrid.of(
            "Sugar 4", "Day | Gravity | Temp C\n0 | 20 Bx | 20\n3 | 12 Bx | 20\n6 | 7 Bx | 20");
    assertFalse(SheetUnderstanding.understand(grid, LogMap.none()).tables().get(0).settled());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"Brix (hydrometer)", "Brix Spindel", "Extract \u00b0P", "Brix densim\u00e8tre"})
  void aNamedHydrometerIsNotAskedAbout(String header) {
    assertEquals(
        List.of(),
        SheetUnderstanding.understand(log(header, " | Temp C", "7"), LogMap.none()).doubts());
  }

  @Test
  void aCourseThatEndsLowIsAHydrometers() {
    assertEquals(
        List.of(),
        SheetUnderstanding.understand(log("Brix", " | Temp C", "-1"), LogMap.none()).doubts());
  }

  @Test
  void aCourseLowerThanARefractometerEverShowsIsAHydrometers() {
    assertEquals(
        List.of(),
        SheetUnderstanding.understand(log("Balling", " | Temp C", "3.6"), LogMap.none()).doubts());
  }

  @Test
  void batchesOneBelowTheOtherAreNotTakenForOneCourse() {
    TestGrid grid =
        TestGrid.of(
            "x", "Day | Brix | Temp C\n0 | 24 | 20\n6 | 9 | 20\nPlum 4\n0 | 12 | 20\n6 | 5 | 20");
    assertFalse(SheetUnderstanding.understand(grid, LogMap.none()).tables().get(0).settled());
  }
}
