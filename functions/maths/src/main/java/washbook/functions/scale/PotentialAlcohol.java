package washbook.functions.scale;

import washbook.functions.liquid.EthanolWater;
import washbook.functions.liquid.FermentingWash;
import washbook.functions.liquid.Solve;
import washbook.functions.liquid.SucroseSolution;

/** Alcohol that a gravity promises, in % vol, on the bases in use. */
public final class PotentialAlcohol {
  /** Below this the model's curve is continued as a straight line. */
  private static final double WATER = 1.0;

  /** Step above {@link #WATER} over which that line's slope is taken. */
  private static final double FIRST_STEP = 1e-4;

  private static final double FIRST_SLOPE = fermentedTo(WATER + FIRST_STEP, WATER) / FIRST_STEP;

  private PotentialAlcohol() {}

  /**
   * % vol when a wash of this SG 20/20 has fermented down to SG 1.000: how a potential-alcohol
   * scale with its zero at water works. Below 1.000 a straight line, negative.
   */
  public static double model(double gravity) {
    return gravity >= WATER + FIRST_STEP
        ? fermentedTo(gravity, WATER)
        : (gravity - WATER) * FIRST_SLOPE;
  }

  /** % vol when all extract ferments; 0 for water and below. */
  public static double dry(double gravity) {
    if (gravity <= WATER) {
      return 0;
    }
    double extract = SucroseSolution.brix(gravity);
    return percentVolume(extract, 0, FermentingWash.gravity(extract, 0));
  }

  /** % vol at a fixed yield: grams of extract per litre over the grams that make 1 % vol. */
  public static double fixed(double gravity, double gramsPerLitrePerPercent) {
    return gramsPerLitre(gravity) / gramsPerLitrePerPercent;
  }

  /** Grams of extract per litre at 20 °C of an unfermented wash. */
  public static double gramsPerLitre(double gravity) {
    return SucroseSolution.brix(gravity) / 100 * FermentingWash.density20(gravity);
  }

  /** The SG 20/20 whose {@link #model} potential is given. */
  public static double gravityOfModel(double percentVolume) {
    return Solve.root(g -> model(g) - percentVolume, WATER + percentVolume / 131, 0.95, 1.2);
  }

  private static double fermentedTo(double originalGravity, double gravity) {
    double extract = SucroseSolution.brix(originalGravity);
    return percentVolume(extract, FermentingWash.trueExtract(extract, gravity), gravity);
  }

  private static double percentVolume(double extract, double trueExtract, double gravity) {
    return FermentingWash.alcoholByMass(extract, trueExtract)
        * FermentingWash.density20(gravity)
        / EthanolWater.ETHANOL_DENSITY_20;
  }
}
