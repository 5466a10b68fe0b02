package washbook.functions.makeup;

/** Yeast nitrogen and diammonium phosphate, (NH4)2HPO4. */
public final class Nitrogen {
  /**
   * Nitrogen by mass: 25.79 % of ammonia in the salt (OIV Codex, COEI-1-PHODIA), 14.007 of 17.031
   * of that.
   */
  public static final double OF_PHOSPHATE = 0.2579 * 14.007 / 17.031;

  private Nitrogen() {}

  /** Grams of phosphate for litres; none when there is enough. */
  public static double grams(double litres, double presentMgPerL, double targetMgPerL) {
    return litres * Math.max(0, targetMgPerL - presentMgPerL) / 1000 / OF_PHOSPHATE;
  }

  /** mg of nitrogen per litre from grams of phosphate. */
  public static double milligramsPerLitre(double litres, double grams) {
    return grams * OF_PHOSPHATE * 1000 / litres;
  }
}
