package washbook.functions.liquid;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.hummeling.if97.IF97;
import org.junit.jupiter.api.Test;
import washbook.functions.ReferenceTable;

class VapourLiquidTest {
  /** Perry's Chemical Engineers' Handbook, ethanol-water at 101.325 kPa. */
  @Test
  void equilibriumMeetsPerry() {
    ReferenceTable.read("perry-ethanol-water-vle.csv", 15)
        .rows()
        .forEach(
            row -> {
              VapourLiquid.Boil boil =
                  VapourLiquid.boil(row.number("x_liquid"), VapourLiquid.ATMOSPHERE_HPA);
              assertEquals(row.number("y_vapour"), boil.vapour(), 0.012, row.toString());
              assertEquals(row.number("temperature_c"), boil.temperatureC(), 0.6, row.toString());
            });
  }

  /** Saturation line of IAPWS-IF97, by an independent library. */
  @Test
  void waterBoilsWhereTheSteamTablesSay() {
    IF97 steam = new IF97(IF97.UnitSystem.ENGINEERING);
    for (double hPa = 700; hPa <= 1050; hPa += 25) {
      assertEquals(
          steam.saturationTemperatureP(hPa / 1000), VapourLiquid.boil(0, hPa).temperatureC(), 0.07);
    }
  }

  @Test
  void moleAndMassFractionsGoBothWays() {
    for (int i = 0; i <= 1000; i++) {
      double x = i / 1000.0;
      assertEquals(x, VapourLiquid.moleFraction(VapourLiquid.massFraction(x)), 1e-12);
    }
  }
}
