package washbook.functions.spirit;

import washbook.functions.liquid.EthanolWater;
import washbook.functions.liquid.Freezing;

/** Volumes and masses of a spirit without sugar; strengths are % vol at 20 °C. */
public final class Spirit {
  /** Air, kg/m3 at 20 °C and sea level; common practice for weighing, no source. */
  private static final double AIR = 1.2;

  /** Conventional density of weights, kg/m3: OIML D 28:2004. */
  private static final double WEIGHTS = 8000;

  private Spirit() {}

  /** Density in kg/m3. */
  public static double density(double percentVolume, double temperatureC) {
    double p = EthanolWater.massFraction(percentVolume);
    Freezing.refuseIce(p, temperatureC);
    return EthanolWater.density(p, temperatureC);
  }

  /** Litres at 20 °C of a volume measured at another temperature. */
  public static double volumeAt20(double litres, double temperatureC, double percentVolume) {
    return litres * density(percentVolume, temperatureC) / density(percentVolume, 20);
  }

  /** Litres of pure alcohol at 20 °C. */
  public static double pureAlcohol(double litres, double percentVolume, double temperatureC) {
    return volumeAt20(litres, temperatureC, percentVolume) * percentVolume / 100;
  }

  /** Litres at 20 °C of what a scale shows as {@code kilograms}; the air's lift is counted. */
  public static double volumeOfWeight(double kilograms, double percentVolume) {
    return kilograms * (1 - AIR / WEIGHTS) / (density(percentVolume, 20) - AIR) * 1000;
  }
}
