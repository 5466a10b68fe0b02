package washbook.functions.scale;

import washbook.functions.liquid.FermentingWash;
import washbook.functions.liquid.Solve;
import washbook.functions.liquid.SucroseSolution;

/** The scales on which the sugar of a wash is read; all meet at SG 20/20. */
public enum SugarScale {
  SG,
  /** 1000 x (SG - 1). */
  POINTS,
  /** % by mass of sucrose. */
  BRIX,
  /** % by mass of extract; the same figure as Brix. */
  PLATO,
  /** % by mass of extract; the same figure as Brix. */
  BALLING,
  /** 145 - 145 / SG, the modulus for liquids heavier than water. */
  BAUME,
  /** The same as points. */
  OECHSLE,
  /**
   * Klosterneuburg scale: Oechsle = KMW x (4.54 + 0.022 KMW); Ambrosi 1994 as quoted in a lexicon
   * of food.
   */
  KMW,
  /** 200 x (SG - 1). */
  TWADDELL,
  /** Density at 20 °C, kg/m3. */
  KGM3,
  /** Grams of extract per litre at 20 °C. */
  GL,
  /** % vol after a ferment to SG 1.000, by the model. */
  POTENTIAL;

  /** SG 20/20 of a value on this scale. */
  public double toGravity(double value) {
    return switch (this) {
      case SG -> value;
      case POINTS, OECHSLE -> 1 + value / 1000;
      case BRIX, PLATO, BALLING -> SucroseSolution.gravity(value);
      case BAUME -> 145 / (145 - value);
      case KMW -> 1 + value * (4.54 + 0.022 * value) / 1000;
      case TWADDELL -> 1 + value / 200;
      case KGM3 -> value / FermentingWash.density20(1);
      case GL -> gravityOfGramsPerLitre(value);
      case POTENTIAL -> PotentialAlcohol.gravityOfModel(value);
    };
  }

  /** Value on this scale of an SG 20/20. */
  public double fromGravity(double gravity) {
    return switch (this) {
      case SG -> gravity;
      case POINTS, OECHSLE -> 1000 * (gravity - 1);
      case BRIX, PLATO, BALLING -> SucroseSolution.brix(gravity);
      case BAUME -> 145 - 145 / gravity;
      case KMW -> (Math.sqrt(4.54 * 4.54 + 88 * (gravity - 1)) - 4.54) / 0.044;
      case TWADDELL -> 200 * (gravity - 1);
      case KGM3 -> FermentingWash.density20(gravity);
      case GL -> PotentialAlcohol.gramsPerLitre(gravity);
      case POTENTIAL -> PotentialAlcohol.model(gravity);
    };
  }

  private static double gravityOfGramsPerLitre(double gramsPerLitre) {
    return Solve.root(
        g -> PotentialAlcohol.gramsPerLitre(g) - gramsPerLitre,
        1 + gramsPerLitre * 0.000385,
        0.95,
        1.45);
  }
}
