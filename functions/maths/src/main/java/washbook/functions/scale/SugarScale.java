package washbook.functions.scale;

import java.util.function.DoubleUnaryOperator;
import washbook.functions.liquid.FermentingWash;
import washbook.functions.liquid.Solve;
import washbook.functions.liquid.SucroseSolution;

/** The scales on which the sugar of a wash is read; all meet at SG 20/20. */
public enum SugarScale {
  SG(x -> x, g -> g),
  /** 1000 x (SG - 1). */
  POINTS(x -> 1 + x / 1000, g -> 1000 * (g - 1)),
  /** % by mass of sucrose. */
  BRIX(SucroseSolution::gravity, SucroseSolution::brix),
  /** % by mass of extract; the same figure as Brix. */
  PLATO(SucroseSolution::gravity, SucroseSolution::brix),
  /** % by mass of extract; the same figure as Brix. */
  BALLING(SucroseSolution::gravity, SucroseSolution::brix),
  /** 145 - 145 / SG, the modulus for liquids heavier than water. */
  BAUME(x -> 145 / (145 - x), g -> 145 - 145 / g),
  /** The same as points. */
  OECHSLE(x -> 1 + x / 1000, g -> 1000 * (g - 1)),
  /**
   * Klosterneuburg scale: Oechsle = KMW x (4.54 + 0.022 KMW); Ambrosi 1994 as quoted in a lexicon
   * of food.
   */
  KMW(
      x -> 1 + x * (4.54 + 0.022 * x) / 1000,
      g -> (Math.sqrt(4.54 * 4.54 + 88 * (g - 1)) - 4.54) / 0.044),
  /** 200 x (SG - 1). */
  TWADDELL(x -> 1 + x / 200, g -> 200 * (g - 1)),
  /** Density at 20 °C, kg/m3. */
  KGM3(x -> x / FermentingWash.density20(1), FermentingWash::density20),
  /** Grams of extract per litre at 20 °C. */
  GL(SugarScale::gravityOfGramsPerLitre, PotentialAlcohol::gramsPerLitre),
  /** % vol after a ferment to SG 1.000, by the model. */
  POTENTIAL(PotentialAlcohol::gravityOfModel, PotentialAlcohol::model);

  private final DoubleUnaryOperator toGravity;
  private final DoubleUnaryOperator fromGravity;

  SugarScale(DoubleUnaryOperator toGravity, DoubleUnaryOperator fromGravity) {
    this.toGravity = toGravity;
    this.fromGravity = fromGravity;
  }

  /** SG 20/20 of a value on this scale. */
  public double toGravity(double value) {
    return toGravity.applyAsDouble(value);
  }

  /** Value on this scale of an SG 20/20. */
  public double fromGravity(double gravity) {
    return fromGravity.applyAsDouble(gravity);
  }

  private static double gravityOfGramsPerLitre(double gramsPerLitre) {
    return Solve.root(
        g -> PotentialAlcohol.gramsPerLitre(g) - gramsPerLitre,
        1 + gramsPerLitre * 0.000385,
        0.95,
        1.45);
  }
}
