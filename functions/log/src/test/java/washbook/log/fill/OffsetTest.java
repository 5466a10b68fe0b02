package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static washbook.log.fill.SimpleLogTest.calc;
import static washbook.log.fill.SimpleLogTest.fill;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.sheet.TestGrid;

/** What an instrument shows too much is taken off every reading, the first and those after it. */
class OffsetTest {
  private static TestGrid log(String line, String first, String later) {
    return TestGrid.of(
        "Plum 3",
        line
            + "\n|\nDay | SG | Temp C\n0 | "
            + first
            + " | 20\n2 | 1.060 | 24\n4 | "
            + later
            + " | 30\n6 | 1.020 | 25");
  }

  @ParameterizedTest
  @CsvSource({"0.002", "-0.003", "0.01"})
  void aLogWithAnOffsetIsTheLogOfAnExactInstrument(double offset) {
    TestGrid filled = fill(log("Hydrometer error: " + offset, "1.085", "1.030"));
    double original = calc("CORRECTEDGRAVITY", 1.085 - offset, 20.0);
    double later = calc("CORRECTEDGRAVITY", 1.030 - offset, 30.0, 20.0, original);
    assertEquals(original, filled.number(3, 3), 1e-9);
    assertEquals(later, filled.number(5, 3), 1e-9);
    assertEquals(calc("ABV", original, later), filled.number(5, 4), 1e-6);
  }

  /** A 20 °C hydrometer in water at 20 °C shows 1.000. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {"Hydrometer reads 1.002 in water; 0.002", "Hydrometer error: 2; 0.002"})
  void itMayBeStatedInOtherWays(String line, double offset) {
    TestGrid filled = fill(log(line, "1.085", "1.030"));
    assertEquals(1.085 - offset, filled.number(3, 3), 2e-5);
  }

  /** A reading up to 0.002 SG above the original gravity is no ferment yet, and no rise. */
  @ParameterizedTest
  @CsvSource({"1.0850, true", "1.0868, true", "1.0875, false"})
  void aReadingALittleAboveTheFirstIsNoFermentYet(String second, boolean filled) {
    TestGrid grid =
        fill(
            TestGrid.of(
                "Plum 3",
                "Day | SG | Temp C\n0 | 1.085 | 20\n1 | "
                    + second
                    + " | 20\n3 | 1.060 | 20\n5 | 1.030 | 20\n7 | 1.010 | 20"));
    if (filled) {
      assertEquals(0, grid.number(2, 4));
    } else {
      assertEquals(true, Double.isNaN(grid.number(2, 4)));
    }
  }
}
