package washbook.functions.liquid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.functions.ReferenceTable;

class EthanolWaterTest {
  /** OIML R 22:1975, table IVa. */
  @Test
  void densityAt20() {
    ReferenceTable.read("oiml-r22-density20.csv", 10)
        .rows()
        .forEach(
            row -> {
              double p = EthanolWater.massFraction(row.number("percent_volume"));
              assertEquals(row.number("density_kg_m3"), EthanolWater.density(p, 20), 0.005);
            });
  }

  /** CRC Handbook of Chemistry and Physics, density of ethanol (from memory). */
  @ParameterizedTest
  @CsvSource({"15, 793.6", "20, 789.3", "25, 785.1"})
  void densityOfEthanol(double temperatureC, double density) {
    assertEquals(density, EthanolWater.density(1, temperatureC), 0.2);
  }

  /** The proof that a density has one strength: it falls everywhere, at each half degree. */
  @Test
  void densityFallsWithStrengthAtEveryTemperature() {
    for (int halfDegrees = -40; halfDegrees <= 80; halfDegrees++) {
      double t = halfDegrees / 2.0;
      double[] inP = EthanolWater.atTemperature(t);
      for (int i = 0; i <= 20_000; i++) {
        double p = i / 20_000.0;
        assertTrue(Polynomial.slope(inP, p) < -1, "p " + p + " at " + t);
      }
    }
  }

  @Test
  void densityFindsItsStrengthAgain() {
    for (double t = -20; t <= 40; t += 2.5) {
      for (int i = 0; i <= 1000; i++) {
        double p = i / 1000.0;
        double found = EthanolWater.massFractionOfDensity(EthanolWater.density(p, t), t);
        assertEquals(p, found, 1e-9 * Math.max(p, 1e-3), "p " + p + " at " + t);
      }
    }
  }

  @Test
  void iceIsNearWaterOnlyAndComesLaterWithStrength() {
    double before = Freezing.point(0);
    assertEquals(0, before);
    for (int i = 1; i <= 1000; i++) {
      double point = Freezing.point(i / 1000.0);
      assertTrue(point <= before);
      before = point;
    }
    assertTrue(before < -20);
  }
}
