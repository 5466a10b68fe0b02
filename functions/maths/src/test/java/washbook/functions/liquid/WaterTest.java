package washbook.functions.liquid;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.hummeling.if97.IF97;
import org.junit.jupiter.api.Test;
import washbook.functions.ReferenceTable;

class WaterTest {
  private static final IF97 STEAM = new IF97(IF97.UnitSystem.ENGINEERING);

  /** Tanaka et al., Metrologia 38 (2001) 301, table 1. */
  @Test
  void cipmMeetsItsTable() {
    ReferenceTable.read("tanaka-2001-water.csv", 10)
        .rows()
        .forEach(
            row ->
                assertEquals(
                    row.number("density_kg_m3"),
                    Water.densityCipm(row.number("temperature_c")),
                    0.0001));
  }

  /** Kell and CIPM differ by up to 0.004 kg/m3, for want of one temperature scale. */
  @Test
  void kellMeetsCipm() {
    for (double t = 0; t <= 40; t += 0.1) {
      assertEquals(Water.densityCipm(t), Water.density(t), 0.004, "at " + t);
    }
  }

  /** IAPWS-IF97 region 1 at 1.01325 bar, by an independent library; it is good to 0.001 %. */
  @Test
  void kellMeetsTheSteamTables() {
    for (double t = 0.01; t <= 60; t += 0.5) {
      assertEquals(1 / STEAM.specificVolumePT(1.01325, t), Water.density(t), 0.02, "at " + t);
    }
  }

  /** IAPWS R9-97, refractive index of water, by the same library; against air, not vacuum. */
  @Test
  void refractiveIndexOfWater() {
    double againstVacuum = STEAM.refractiveIndexPTLambda(1.01325, 20, 0.5893);
    assertEquals(againstVacuum / 1.00027, RefractiveIndex.WATER, 0.00002);
  }
}
