package washbook.functions.ferment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import washbook.functions.Calls;
import washbook.functions.ReferenceTable;
import washbook.functions.ReferenceTable.Row;
import washbook.functions.liquid.EthanolWater;
import washbook.functions.liquid.VapourLiquid.Vapour;

class WeighedGasTest {
  /** Commission Regulation (EEC) No 2676/90, annex: 1.951e-5 Pa (0.86 - 0.01 A) g/L at 20 °C. */
  @Test
  void whatTheScaleDoesNotSee() {
    for (double strength : new double[] {0, 5, 10, 14}) {
      double published = 1.951e-5 * 101325 * (0.86 - 0.01 * strength);
      assertEquals(1, WeighedGas.dissolved(strength, 20, 1013.25) / published, 0.025);
    }
    // 1.5 g/L left in a wash of 10 % vol are worth 0.2 % vol of alcohol.
    double grams = Calls.value("CARBONDIOXIDE", 1.085, 1.010, 20.0);
    double worth =
        Calls.value("ABVFROMWEIGHTLOSS", 1.085, grams, 20.0)
            - Calls.value("ABVFROMWEIGHTLOSS", 1.085, grams - 20 * 1.5, 20.0);
    assertEquals(0.2, worth, 0.03);
  }

  /** CO2 in water under 101.0 kPa at 298.15 K: x = 0.606e-3 (Findlay and Howell 1915). */
  @Test
  void dissolvedGasMeetsAMeasurement() {
    double published = 0.606e-3 * 44.0095 / 18.0153 * 997.05;
    assertEquals(1, WeighedGas.dissolved(0, 25, 1010) / published, 0.03);
  }

  @Test
  void vapoursMeetTheTable() {
    for (Row row : ReferenceTable.read("vapour-carried-off.csv", 24).rows()) {
      double strength = EthanolWater.percentVolume(row.number("ethanol_mass_pct_of_wash") / 100);
      Vapour vapour = WeighedGas.vapour(strength, row.number("t_c"));
      double gas = 1013.25 - vapour.ethanolHPa() - vapour.waterHPa();
      assertEquals(
          row.number("ethanol_g_per_g_CO2"),
          vapour.ethanolHPa() / gas * 46.0684 / 44.0095,
          0.0004,
          row.toString());
      assertEquals(
          row.number("water_g_per_g_CO2"),
          vapour.waterHPa() / gas * 18.0153 / 44.0095,
          0.0003,
          row.toString());
    }
  }

  /** Cold holds gas back, warmth carries alcohol off; at cellar warmth they nearly cancel. */
  @Test
  void coldAddsAndWarmthTakesAway() {
    double plain = Calls.value("ABVFROMWEIGHTLOSS", 1.085, 1900.0, 23.0);
    double cold = Calls.value("ABVFROMWEIGHTLOSS", 1.085, 1900.0, 23.0, 8.0);
    double warm = Calls.value("ABVFROMWEIGHTLOSS", 1.085, 1900.0, 23.0, 32.0);
    assertTrue(cold > plain && warm < plain, cold + " " + plain + " " + warm);
    assertEquals(plain, Calls.value("ABVFROMWEIGHTLOSS", 1.085, 1900.0, 23.0, 20.0), 0.05);
  }
}
