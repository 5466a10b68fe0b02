package washbook.functions.reading;

import washbook.functions.Answer.Code;
import washbook.functions.RefusedException;
import washbook.functions.liquid.FermentingWash;
import washbook.functions.liquid.SucroseSolution;
import washbook.functions.liquid.Water;

/**
 * Glass hydrometers. A scale that is calibrated at its temperature {@code Tc} shows R in a liquid
 * at t whose density is {@code R x water(Tc) / (1 + beta (t - Tc))}: the glass has grown with the
 * warmth and displaces more. An instrument's offset is what it shows too much: its reading in plain
 * water at the calibration temperature less 1.000 (or less 0 °Bx).
 */
public final class Hydrometer {
  /** Cubic expansion of soda-lime glass per K; NBS Circular C440 tables are built on it. */
  public static final double GLASS_EXPANSION = 25e-6;

  private static final double WATER_20 = Water.density(20);

  /** A wash that has not fermented has its original gravity to the last digit. */
  private static final double ROUNDING = 1e-10;

  private Hydrometer() {}

  /** Density in kg/m3 at {@code temperatureC} of the liquid in which a gravity is read. */
  public static double liquidDensity(double reading, double temperatureC, double calibrationC) {
    return reading * Water.density(calibrationC) / glassGrowth(temperatureC, calibrationC);
  }

  private static double glassGrowth(double temperatureC, double calibrationC) {
    return 1 + GLASS_EXPANSION * (temperatureC - calibrationC);
  }

  /** SG 20/20 of a sugar solution from a reading. */
  public static double correctedGravity(
      double reading, double temperatureC, double calibrationC, double offset) {
    double density = liquidDensity(reading - offset, temperatureC, calibrationC);
    if (temperatureC == 20) {
      return density / WATER_20;
    }
    return SucroseSolution.gravity(SucroseSolution.brixOfDensity(density, temperatureC));
  }

  /** SG 20/20 of a fermenting wash, whose alcohol expands more than its sugar. */
  public static double correctedGravity(
      double reading,
      double temperatureC,
      double calibrationC,
      double originalGravity,
      double offset) {
    double density = liquidDensity(reading - offset, temperatureC, calibrationC);
    double originalExtract = SucroseSolution.brix(originalGravity);
    double trueExtract =
        FermentingWash.trueExtractOfDensity(originalExtract, density, temperatureC);
    if (!(trueExtract >= FermentingWash.LOWEST_TRUE_EXTRACT)) {
      throw new RefusedException(Code.CONTRADICTION, "reading.below", reading, originalGravity);
    }
    double gravity = FermentingWash.gravity(originalExtract, trueExtract);
    return Math.abs(gravity - originalGravity) < ROUNDING ? originalGravity : gravity;
  }

  /**
   * What a gravity scale calibrated at 20 °C shows in the liquid in which a Brix scale shows a
   * reading. From then on one path serves both scales: the two glasses grow alike.
   */
  public static double gravityOfBrixScale(double reading, double calibrationC) {
    return SucroseSolution.gravity(correctedBrix(reading, 20, calibrationC, 0));
  }

  /** °Bx at 20 °C from the reading of a Brix hydrometer in a sugar solution. */
  public static double correctedBrix(
      double reading, double temperatureC, double calibrationC, double offset) {
    double density =
        SucroseSolution.density(reading - offset, calibrationC)
            / glassGrowth(temperatureC, calibrationC);
    return SucroseSolution.brixOfDensity(density, temperatureC);
  }
}
