package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static washbook.log.fill.SimpleLogTest.calc;
import static washbook.log.fill.SimpleLogTest.fill;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.functions.Answer;
import washbook.functions.catalogue.Catalogue;
import washbook.log.Batch;
import washbook.log.Doubt;
import washbook.log.Understanding;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Sugar fed in steps, and refractometers. */
class FedLogTest {
  private static final TestGrid FED =
      TestGrid.of(
          "Sugar 4",
          """
          Volume: 25 L
          Day | SG | Temp C | Sugar added (kg) | Water added (L)
          0 | 1.065 | 20 | 5 |
          2 | 1.030 | 20 | 2 | 1
          3 | 1.045 | 20 | |
          4 | 1.046 | 20 | 1 |
          8 | 1.002 | 20 | |\
          """);

  @Test
  void theOriginalGravityIsThatOfEverythingPutIn() {
    Understanding understood = SheetUnderstanding.understand(FED, LogMap.none());
    assertEquals(List.of(), understood.doubts());
    Batch batch = understood.tables().get(0).batches().get(0);
    double first = calc("CORRECTEDGRAVITY", 1.065, 20.0);
    double second = fed(new double[] {25, 1}, new double[] {first, 1}, new double[] {2});
    double third = fed(new double[] {25, 1}, new double[] {first, 1}, new double[] {2, 1});
    assertEquals(3, batch.steps().size());
    assertEquals(second, batch.steps().get(1).originalGravity().orElseThrow(), 1e-12);
    assertEquals(third, batch.originalGravity().orElseThrow(), 1e-12);
    TestGrid filled = fill(FED);
    double[] originals = {first, first, second, second, third};
    double[] readings = {1.065, 1.030, 1.045, 1.046, 1.002};
    for (int i = 1; i < 5; i++) {
      double gravity = calc("CORRECTEDGRAVITY", readings[i], 20.0, 20.0, originals[i]);
      assertEquals(gravity, filled.number(i + 2, 5), 1e-12);
      assertEquals(calc("ABV", originals[i], gravity), filled.number(i + 2, 6), 1e-9);
    }
  }

  private static double fed(double[] litres, double[] gravities, double[] kilograms) {
    return ((Answer.Number) Catalogue.get("FEDORIGINAL").call(litres, gravities, kilograms))
        .value();
  }

  @ParameterizedTest
  @CsvSource({"5 gal uk, 22.73045", "5 us gal, 18.92705892", "25 L, 25", "25000 ml, 25"})
  void theVolumeAboveTheTableMayBeInAnyUnitOfTheTrade(String volume, double litres) {
    TestGrid grid =
        TestGrid.of("Sugar 4", "Volume: " + volume + "\nDay | SG | Temp C\n0 | 1.065 | 20");
    Understanding understood = SheetUnderstanding.understand(grid, LogMap.none());
    assertEquals(litres, understood.tables().get(0).settings().volumeL(), 1e-9);
  }

  @Test
  void sugarInLitresIsAskedFor() {
    TestGrid grid =
        TestGrid.of(
            "Sugar 4",
            """
            Volume: 25 L
            Day | SG | Temp C | Sugar added (kg)
            0 | 1.065 | 20 |
            2 | 1.030 | 20 | 2 L
            4 | 1.020 | 20 |\
            """);
    Understanding understood = SheetUnderstanding.understand(grid, LogMap.none());
    assertEquals(1, understood.doubts().size(), understood.doubts().toString());
    assertTrue(understood.doubts().get(0).question().startsWith("How much was added"));
  }

  @Test
  void withoutAVolumeTheRowsAfterTheFeedAreRefused() {
    TestGrid grid =
        TestGrid.of(
            "Sugar 4",
            """
            Day | SG | Temp C | Sugar added (kg)
            0 | 1.065 | 20 |
            2 | 1.030 | 20 | 2
            3 | 1.045 | 20 |\
            """);
    Understanding understood = SheetUnderstanding.understand(grid, LogMap.none());
    assertEquals("D3", understood.doubts().get(0).cell());
    Filling filling = LogFiller.fill(grid, understood, FillOptions.usual());
    assertEquals(1, filling.refusals().size());
    assertTrue(
        filling.refusals().get(0).reason().contains("the volume is not stated"),
        filling.refusals().get(0).reason());
    LogMap map = LogMap.parse("volume = 25 L");
    Understanding clear = SheetUnderstanding.understand(grid, map);
    assertEquals(0, LogFiller.fill(grid, clear, FillOptions.usual()).refusals().size());
  }

  @Test
  void sugarInANoteIsAskedFor() {
    TestGrid grid =
        TestGrid.of(
            "Sugar 4",
            """
            Day | SG | Temp C | Notes
            0 | 1.065 | 20 | sugar all added and stirred
            2 | 1.030 | 20 | added 2 kg sugar in hot water
            3 | 1.045 | 20 |\
            """);
    Understanding understood = SheetUnderstanding.understand(grid, LogMap.none());
    assertEquals("D3", understood.doubts().get(0).cell());
    Filling filling = LogFiller.fill(grid, understood, FillOptions.usual());
    assertEquals(2, filling.tables().get(0).batches().get(0).filled());
    assertEquals("B4", filling.refusals().get(0).cell());
  }

  @Test
  void aRefractometerReadingBecomesAGravity() {
    TestGrid grid =
        TestGrid.of(
            "Plum 3",
            """
            Date | Refractometer (Brix) | SG | Temp C
            #2025-01-01 | 20.0 | |
            #2025-01-03 | 14.5 | |
            #2025-01-05 | 12.0 | 1.021 | 22
            #2025-01-07 | 25.0 | |\
            """);
    Understanding understood = SheetUnderstanding.understand(grid, LogMap.none());
    assertEquals(List.of("C5"), understood.doubts().stream().map(Doubt::cell).toList());
    Filling filling = LogFiller.fill(grid, understood, FillOptions.usual());
    TestGrid filled = grid.with(filling.patch());
    double original = calc("REFRACTOMETERGRAVITY", 20.0, 20.0);
    assertEquals(original, filled.number(1, 4), 1e-12);
    double second = calc("REFRACTOMETERGRAVITY", 20.0, 14.5);
    assertEquals(second, filled.number(2, 4), 1e-12);
    assertEquals(calc("ABV", original, second), filled.number(2, 5), 1e-9);
    double third = calc("CORRECTEDGRAVITY", 1.021, 22.0, 20.0, original);
    assertEquals(third, filled.number(3, 4), 1e-12);
    assertEquals(1, filling.refusals().size());
    assertEquals("B5", filling.refusals().get(0).cell());
  }

  @Test
  void readingsThatDoNotMoveAreNotRefusedInTheLag() {
    TestGrid grid =
        TestGrid.of("x", "Day | SG | Temp C\n0 | 1.085 | 20\n1 | 1.085 | 20\n2 | 1.070 | 20");
    TestGrid filled = fill(grid);
    assertEquals(0.0, filled.number(2, 4));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "+ sugar | 1.049 | true",
        "racked, +2 cups of sugar | 1.030 | true",
        "sugar all gone? | 1.030 | false",
        "after reading: another splash of honey (not weighed) | 1.050 | true",
        "smells of honey | 1.030 | false",
      })
  void anUnclearAdditionIsAskedAbout(String note, double next, boolean asked) {
    TestGrid grid =
        TestGrid.of(
            "Wash 3",
            """
            Day | SG | Temp C | Notes
            0 | 1.080 | 20 | yeast
            2 | 1.065 | 20 |
            4 | 1.047 | 20 | %s
            5 | %s | 20 |
            9 | 1.010 | 20 |\
            """
                .formatted(note, next));
    List<Doubt> doubts = SheetUnderstanding.understand(grid, LogMap.none()).doubts();
    assertEquals(asked, !doubts.isEmpty(), doubts.toString());
  }
}
