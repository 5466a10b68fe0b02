package washbook.functions.still;

import washbook.functions.RefusedException;
import washbook.functions.liquid.EthanolWater;
import washbook.functions.liquid.Heat;
import washbook.functions.liquid.VapourLiquid;

/** Heat into a charge and out of a distillate, in kWh; the still's own heat and losses left out. */
public final class StillHeat {
  private static final double JOULES_PER_KWH = 3.6e6;
  private static final double WATER_KG_PER_LITRE = 0.9982;

  private StillHeat() {}

  /** kWh to bring litres of charge (at 20 °C) from a temperature to the boil at 1013.25 hPa. */
  public static double toBoil(double litres, double strength, double temperatureC) {
    double p = EthanolWater.massFraction(strength);
    double boiling = PotRun.boilingPoint(strength, VapourLiquid.ATMOSPHERE_HPA);
    return kilograms(litres, p) * Heat.toWarm(p, temperatureC, boiling) / JOULES_PER_KWH;
  }

  /** Minutes that takes with a power in kW of which a share reaches the charge. */
  public static double minutesToBoil(
      double litres, double strength, double temperatureC, double kilowatts, double share) {
    return 60 * toBoil(litres, strength, temperatureC) / (kilowatts * share);
  }

  /** kWh that a condenser takes out of a distillate of that volume and strength. */
  public static double ofCondensing(double litres, double strength, double temperatureC) {
    double p = EthanolWater.massFraction(strength);
    double boiling = PotRun.boilingPoint(strength, VapourLiquid.ATMOSPHERE_HPA);
    double heat = Heat.ofCondensing(p, boiling) + Heat.toWarm(p, temperatureC, boiling);
    return kilograms(litres, p) * heat / JOULES_PER_KWH;
  }

  /** Litres of cooling water that carry it off. */
  public static double coolingWater(
      double litres, double strength, double temperatureC, double inC, double outC) {
    if (outC <= inC) {
      throw RefusedException.contradiction("cooling", outC, inC);
    }
    return ofCondensing(litres, strength, temperatureC)
        * JOULES_PER_KWH
        / Heat.toWarm(0, inC, outC)
        / WATER_KG_PER_LITRE;
  }

  private static double kilograms(double litres, double p) {
    return litres * EthanolWater.density(p, 20) / 1000;
  }
}
