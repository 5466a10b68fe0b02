package washbook.functions.still;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.hummeling.if97.IF97;
import org.junit.jupiter.api.Test;
import washbook.functions.Calls;
import washbook.functions.ReferenceTable;
import washbook.functions.liquid.Heat;

class StillHeatTest {
  private static final IF97 STEAM = new IF97(IF97.UnitSystem.ENGINEERING);

  /** Water by IAPWS-IF97; mixtures by Melinder (2010) and Perry's table 2-205. */
  @Test
  void heatToTheBoilMeetsSteamTablesAndMixtures() {
    for (double t = 5; t <= 75; t += 10) {
      double published =
          (STEAM.specificEnthalpyPT(1.01325, 99.5) - STEAM.specificEnthalpyPT(1.01325, t)) * 0.998;
      double kilojoules = 3600 * Calls.value("CHARGEHEAT", 1.0, 0.5, t);
      assertEquals(1, kilojoules / published, 0.02, t + " °C");
      assertEquals(
          kilojoules / 60, Calls.value("MINUTESTOBOIL", 1.0, 0.5, t, 2.0, 0.5), 1e-9, "1 kW");
    }
    for (ReferenceTable.Row row : ReferenceTable.read("cp-ethanol-water.csv", 5).rows()) {
      if (row.number("t_c") < 10) {
        continue;
      }
      for (String percent : row.columns().subList(1, row.columns().size())) {
        double found = Heat.specific(Double.parseDouble(percent) / 100, row.number("t_c"));
        assertEquals(1, found / row.number(percent), 0.008, row + " " + percent);
      }
    }
    for (ReferenceTable.Row row : ReferenceTable.read("cp-perry.csv", 3).rows()) {
      for (String molePercent : row.columns().subList(1, row.columns().size())) {
        double x = Double.parseDouble(molePercent) / 100;
        double p = x * 46.069 / (x * 46.069 + (1 - x) * 18.015);
        assertEquals(1, Heat.specific(p, row.number("t_c")) / row.number(molePercent) / 4184, 0.03);
      }
    }
  }

  /** Water by IAPWS-IF97, ethanol 38560 J/mol at 351.44 K by the CRC Handbook. */
  @Test
  void condensingMeetsTheSteamTablesAndTheHandbook() {
    double steam =
        STEAM.specificEnthalpySaturatedVapourP(1.01325)
            - STEAM.specificEnthalpySaturatedLiquidP(1.01325);
    assertEquals(1, Heat.ofCondensing(0, 100) / 1000 / steam, 0.005);
    assertEquals(1, Heat.ofCondensing(1, 78.29) / (38560 / 0.046069), 0.012);
    double whole =
        (STEAM.specificEnthalpySaturatedVapourP(1.01325) - STEAM.specificEnthalpyPT(1.01325, 20))
            * 0.998;
    assertEquals(1, 3600 * Calls.value("CONDENSERHEAT", 1.0, 0.5, 20.0) / whole, 0.01);
    double water = STEAM.specificEnthalpyPT(1, 45) - STEAM.specificEnthalpyPT(1, 12);
    assertEquals(
        whole / water / 0.9982,
        Calls.value("COOLINGWATER", 1.0, 0.5, 20.0, 12.0, 45.0),
        0.02 * whole / water);
  }

  /** 68.9 kJ/mol by the CRC's enthalpies of formation; 24 kcal/mol (Colombié 2007, as quoted). */
  @Test
  void fermentHeatLiesBetweenThePublishedFigures() {
    double formation = 1273.3 - 2 * 277.6 - 2 * 393.5;
    assertEquals(-68.9, formation, 0.11);
    double moles = Calls.value("CARBONDIOXIDE", 1.085, 0.998, 25.0) / 2 / 44.0095;
    double kilojoulesPerMole = 3600 * Calls.value("FERMENTHEAT", 25.0, 1.085, 0.998) / moles;
    assertEquals(24 * 4.184, kilojoulesPerMole, 0.5);
    assertTrue(kilojoulesPerMole > -formation);
  }
}
