package washbook.functions.reading;

import washbook.functions.RefusedException;
import washbook.functions.liquid.EthanolWater;
import washbook.functions.liquid.FermentingWash;
import washbook.functions.liquid.RefractiveIndex;
import washbook.functions.liquid.Solve;
import washbook.functions.liquid.SucroseSolution;

/**
 * Refractometers in a fermenting wash: alcohol lifts the reading, so that it must be read together
 * with the original reading or with the gravity. Readings are °Bx at 20 °C; an instrument's factor
 * is what it shows in the wash over the true °Bx.
 */
public final class Refractometer {
  /** Below zero by so little, % by mass, is reading error: nothing has fermented. */
  private static final double UNFERMENTED = -0.25;

  private Refractometer() {}

  /** SG 20/20 of a wash from its readings before the ferment and now. */
  public static double gravity(double originalBrix, double presentBrix, double factor) {
    double originalExtract = originalBrix / factor;
    double shown = RefractiveIndex.ofSucrose(presentBrix / factor);
    if (presentBrix > originalBrix) {
      throw RefusedException.contradiction("brix.above", presentBrix, originalBrix);
    }
    double slope = FermentingWash.alcoholByMass(originalExtract, originalExtract - 1);
    double trueExtract =
        Solve.root(
            re ->
                RefractiveIndex.ofSucrose(re)
                    + RefractiveIndex.ofEthanol(FermentingWash.alcoholByMass(originalExtract, re))
                    - shown,
            re ->
                RefractiveIndex.sucroseSlope(re)
                    - slope
                        * RefractiveIndex.ethanolSlope(
                            FermentingWash.alcoholByMass(originalExtract, re)),
            presentBrix / factor,
            FermentingWash.LOWEST_TRUE_EXTRACT,
            originalExtract + 0.001);
    if (!(trueExtract >= FermentingWash.LOWEST_TRUE_EXTRACT)) {
      throw RefusedException.contradiction("brix.below", presentBrix, originalBrix);
    }
    return FermentingWash.gravity(originalExtract, trueExtract);
  }

  /** % vol of a wash from a refractometer reading and a hydrometer reading, both corrected. */
  public static double percentVolume(double presentBrix, double gravity, double factor) {
    double shown = RefractiveIndex.ofSucrose(presentBrix / factor);
    double alcohol =
        Solve.root(
            a ->
                RefractiveIndex.ofSucrose(extract(gravity, a))
                    + RefractiveIndex.ofEthanol(a)
                    - shown,
            (presentBrix / factor - SucroseSolution.brix(gravity)) / 1.38,
            -1,
            20);
    if (alcohol < 0 && alcohol >= UNFERMENTED) {
      return 0;
    }
    double trueExtract = extract(gravity, alcohol);
    if (!(alcohol >= 0 && trueExtract >= FermentingWash.LOWEST_TRUE_EXTRACT)) {
      throw RefusedException.contradiction("brix.gravity", presentBrix, gravity);
    }
    return alcohol * FermentingWash.density20(gravity) / EthanolWater.ETHANOL_DENSITY_20;
  }

  /** True extract of a wash of that gravity and alcohol in % by mass. */
  private static double extract(double gravity, double percentMass) {
    return SucroseSolution.brix(gravity + 1 - EthanolWater.gravity(percentMass / 100));
  }
}
