package washbook.functions.scale;

import washbook.functions.liquid.FermentingWash;
import washbook.functions.liquid.Solve;
import washbook.functions.liquid.SucroseSolution;
import washbook.functions.liquid.WashKind;

/** Alcohol that a gravity promises, in % vol, on the bases in use. */
public final class PotentialAlcohol {
  /** Below this the model's curve is continued as a straight line. */
  private static final double WATER = 1.0;

  /** Step above {@link #WATER} over which that line's slope is taken. */
  private static final double FIRST_STEP = 1e-4;

  private static final double FIRST_SLOPE = firstSlope(WashKind.MALT);

  private PotentialAlcohol() {}

  /**
   * % vol when a malt wash of this SG 20/20 has fermented down to SG 1.000: how a potential-alcohol
   * scale with its zero at water works. Below 1.000 a straight line, negative.
   */
  public static double model(double gravity) {
    return gravity >= WATER + FIRST_STEP
        ? fermentedTo(gravity, WATER, WashKind.MALT)
        : (gravity - WATER) * FIRST_SLOPE;
  }

  /** The same of any kind of wash. */
  public static double model(double gravity, WashKind kind) {
    return gravity >= WATER + FIRST_STEP
        ? fermentedTo(gravity, WATER, kind)
        : (gravity - WATER) * firstSlope(kind);
  }

  private static double firstSlope(WashKind kind) {
    return fermentedTo(WATER + FIRST_STEP, WATER, kind) / FIRST_STEP;
  }

  /** % vol when all extract ferments; 0 for water and below. */
  public static double dry(double gravity, WashKind kind) {
    if (gravity <= WATER) {
      return 0;
    }
    double extract = SucroseSolution.brix(gravity);
    double left = kind.extractLeft(extract, 1);
    return FermentingWash.percentVolume(
        extract, left, FermentingWash.gravity(extract, left, kind), kind);
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

  private static double fermentedTo(double originalGravity, double gravity, WashKind kind) {
    double extract = SucroseSolution.brix(originalGravity);
    return FermentingWash.percentVolume(
        extract, FermentingWash.trueExtract(extract, gravity, kind), gravity, kind);
  }
}
