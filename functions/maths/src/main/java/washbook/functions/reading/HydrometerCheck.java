package washbook.functions.reading;

import washbook.functions.Numbers;
import washbook.functions.RefusedException;
import washbook.functions.liquid.SucroseSolution;

/** Checks of a hydrometer in water and in a sugar solution made up by mass. */
public final class HydrometerCheck {
  /** A solution this near water tells no slope, SG. */
  private static final double LEAST_DIFFERENCE = 0.02;

  private static final double HIGHEST_BRIX = SucroseSolution.brix(1.190);

  private HydrometerCheck() {}

  /** SG 20/20 of sugar dissolved in water, both by mass. */
  public static double gravity(double gramsOfSugar, double gramsOfWater) {
    double brix = 100 * gramsOfSugar / (gramsOfSugar + gramsOfWater);
    if (brix > HIGHEST_BRIX) {
      throw RefusedException.contradiction("solution.heavy", Numbers.rounded(brix, 1));
    }
    return SucroseSolution.gravity(brix);
  }

  /** SG that the instrument shows too much in water. */
  public static double offset(double waterReading, double temperatureC, double calibrationC) {
    return waterReading - shown(0, temperatureC, calibrationC);
  }

  /** What the instrument shows for a difference in gravity, over the true difference. */
  public static double slope(
      double waterReading,
      double solutionReading,
      double gramsOfSugar,
      double gramsOfWater,
      double temperatureC,
      double calibrationC) {
    if (solutionReading <= waterReading) {
      throw RefusedException.contradiction("solution.lighter", solutionReading, waterReading);
    }
    double brix = SucroseSolution.brix(gravity(gramsOfSugar, gramsOfWater));
    double difference =
        shown(brix, temperatureC, calibrationC) - shown(0, temperatureC, calibrationC);
    if (difference < LEAST_DIFFERENCE) {
      throw RefusedException.contradiction(
          "solution.weak", Numbers.rounded(1000 * difference, 1), 1000 * LEAST_DIFFERENCE);
    }
    return (solutionReading - waterReading) / difference;
  }

  /** What an instrument without an error shows. */
  private static double shown(double brix, double temperatureC, double calibrationC) {
    return SucroseSolution.density(brix, temperatureC)
        / Hydrometer.liquidDensity(1, temperatureC, calibrationC);
  }
}
