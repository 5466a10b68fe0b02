package washbook.functions.makeup;

/**
 * Extract of a mash in shares of the goods' mass, after Balling's table (19th century goods mashed
 * with malt; cooking and modern enzymes give more).
 */
public enum Grain {
  WHEAT(0.70),
  RYE(0.65),
  BARLEY(0.60),
  MALT(0.60),
  OATS(0.42),
  MAIZE(0.65),
  RICE(0.74),
  POTATO(0.173),
  POTATOSTARCH(0.82);

  /** Ethanol by mass from starch by mass: 100 g take up 11.11 g of water and give 56.82 g. */
  public static final double ETHANOL_PER_STARCH = 2 * 46.069 / 162.141;

  private static final double ETHANOL_KG_PER_LITRE = 0.78924;

  private final double extract;

  Grain(double extract) {
    this.extract = extract;
  }

  /** Extract by mass of the goods. */
  public double extract() {
    return extract;
  }

  /** Litres of pure alcohol at 20 °C from goods of that starch, when a share of it gets there. */
  public static double alcohol(double kilograms, double starch, double reached) {
    return kilograms * starch * ETHANOL_PER_STARCH * reached / ETHANOL_KG_PER_LITRE;
  }
}
