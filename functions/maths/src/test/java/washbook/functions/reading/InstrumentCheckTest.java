package washbook.functions.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.functions.Calls;
import washbook.functions.ReferenceTable;
import washbook.functions.liquid.Water;

class InstrumentCheckTest {
  /**
   * OIV-MA-AS2-02 (2012), table I: correction to add to a reading at 5 to 17 °C; the rows above 20
   * °C were not at hand.
   */
  @Test
  void refractometerMeetsTheTemperatureTable() {
    int checked = 0;
    for (ReferenceTable.Row row :
        ReferenceTable.read("oiv-refractometer-temperature.csv", 14).rows()) {
      for (int brix = 10; brix <= 35; brix += 5) {
        String printed = row.text(Integer.toString(brix));
        if (!printed.isEmpty()) {
          assertEquals(
              brix + Double.parseDouble(printed),
              Calls.value("REFRACTOMETERAT20", (double) brix, row.number("t_c")),
              0.035,
              row + " at " + brix);
          checked++;
        }
      }
    }
    assertEquals(79, checked);
  }

  /** Index of water at sodium light: 1.33369, 1.33250 and 1.33194; from memory. */
  @ParameterizedTest
  @CsvSource({"10, 1.33369", "25, 1.33250", "30, 1.33194"})
  void waterHasItsIndexAtOtherTemperatures(double temperatureC, double index) {
    assertEquals(index, RefractometerTemperature.index(0, temperatureC), 1.5e-4);
  }

  /** Plato: SG 20/20 of 5, 10 and 20 % of sugar by mass; NBS Circular C440, from memory. */
  @ParameterizedTest
  @CsvSource({"5, 1.01965", "10, 1.03998", "20, 1.08287"})
  void solutionMadeByMassHasThePublishedGravity(double brix, double gravity) {
    assertEquals(gravity, Calls.value("CHECKGRAVITY", brix, 100 - brix), 1e-4);
  }

  /** Tanaka and others (2001): water's density over that at 20 °C, with glass that grows. */
  @Test
  void hydrometerInWaterShowsTheDensityOfWater() {
    for (double t = 0.5; t <= 40; t += 0.5) {
      double shown = Water.densityCipm(t) / Water.densityCipm(20) * (1 + 25e-6 * (t - 20));
      assertEquals(0, Calls.value("HYDROMETEROFFSET", shown, t), 2e-5, t + " °C");
    }
    assertEquals(0.002, Calls.value("HYDROMETEROFFSET", 1.002, 20.0), 1e-9);
  }

  /** An instrument that shows the published gravities, each a fiftieth too far from water. */
  @ParameterizedTest
  @CsvSource({"10, 1.03998", "20, 1.08287"})
  void slopeOfAHydrometerIsThatOfThePublishedGravities(double brix, double gravity) {
    double shown = 1.001 + 1.02 * (gravity - 1);
    assertEquals(1.02, Calls.value("HYDROMETERSLOPE", 1.001, shown, brix, 100 - brix), 0.002);
  }
}
