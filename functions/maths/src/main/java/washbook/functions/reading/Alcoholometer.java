package washbook.functions.reading;

import washbook.functions.RefusedException;
import washbook.functions.liquid.EthanolWater;
import washbook.functions.liquid.Freezing;

/**
 * Glass alcoholometers in spirit without sugar. The scale is % vol with both volumes at the
 * calibration temperature; the glass grows with the warmth as a hydrometer's does.
 */
public final class Alcoholometer {
  private Alcoholometer() {}

  /** Mass fraction of ethanol from a reading. */
  public static double massFraction(double reading, double temperatureC, double calibrationC) {
    double shown = EthanolWater.massFractionAt(reading, calibrationC);
    double density =
        EthanolWater.density(shown, calibrationC)
            / (1 + Hydrometer.GLASS_EXPANSION * (temperatureC - calibrationC));
    double p = EthanolWater.massFractionOfDensity(density, temperatureC);
    if (!(p >= 0 && p <= 1)) {
      throw RefusedException.contradiction("alcoholometer.none", reading, temperatureC);
    }
    Freezing.refuseIce(p, temperatureC);
    return p;
  }

  /** % vol at 20 °C from a reading. */
  public static double trueStrength(double reading, double temperatureC, double calibrationC) {
    return temperatureC == calibrationC && calibrationC == 20
        ? reading
        : EthanolWater.percentVolume(massFraction(reading, temperatureC, calibrationC));
  }
}
