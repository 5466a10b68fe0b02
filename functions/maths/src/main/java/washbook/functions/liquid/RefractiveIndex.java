package washbook.functions.liquid;

/**
 * Refractive index at 20 °C and 589 nm of sugar and alcohol in water, each as what it adds to the
 * index of water. In a wash the two add up, as the gravities do.
 *
 * <p>Sucrose: cubic through water (1.332986) fitted to the index column of OIV-MA-AS2-02 table II
 * (French order of 14 September 2011, annex IV), which it meets within 1e-5 from 10 to 30 °Bx. The
 * values of the ICUMSA table of 1974 from 0 to 9 and from 31 to 40 °Bx (from memory) are met within
 * 1e-5 as well, so it is used from 0 to 40 °Bx.
 *
 * <p>Ethanol: cubic fitted to the table "Concentrative properties of aqueous solutions: ethanol" of
 * the CRC Handbook of Chemistry and Physics, 0 to 20 % by mass (from memory), met within the
 * table's rounding of 6e-5.
 */
public final class RefractiveIndex {
  /** Index of water at 20 °C, sodium light, against air. */
  public static final double WATER = 1.332986;

  private static final double[] SUCROSE = {0, 0.142854, 0.053431, 0.018514};
  private static final double[] ETHANOL = {0, 0.055465, 0.128820, -0.287447};

  private RefractiveIndex() {}

  /** What sucrose of {@code brix} % by mass adds to the index of water; 0 to 40 °Bx. */
  public static double ofSucrose(double brix) {
    return Polynomial.value(SUCROSE, brix / 100);
  }

  /** Slope of {@link #ofSucrose} per degree Brix. */
  public static double sucroseSlope(double brix) {
    return Polynomial.slope(SUCROSE, brix / 100) / 100;
  }

  /** What ethanol of {@code percentMass} adds to the index of water; 0 to 20 % by mass. */
  public static double ofEthanol(double percentMass) {
    return Polynomial.value(ETHANOL, percentMass / 100);
  }

  /** Slope of {@link #ofEthanol} per % by mass. */
  public static double ethanolSlope(double percentMass) {
    return Polynomial.slope(ETHANOL, percentMass / 100) / 100;
  }
}
