package washbook.functions.ferment;

/** Heat that a ferment sets free. */
public final class FermentHeat {
  /**
   * kJ per mole of hexose with the growth of yeast: about 100 (Colombié and others 2007, as
   * quoted). Without growth it is 68.9 from the enthalpies of formation in the CRC Handbook.
   */
  public static final double KILOJOULES_PER_MOLE = 100;

  /** Two moles of carbon dioxide come with each mole of hexose. */
  private static final double CO2_GRAMS_PER_MOLE = 2 * 44.0095;

  private static final double KILOJOULES_PER_KWH = 3600;

  private FermentHeat() {}

  /** kWh with this many grams of carbon dioxide. */
  public static double kilowattHours(double gramsOfCarbonDioxide) {
    return gramsOfCarbonDioxide / CO2_GRAMS_PER_MOLE * KILOJOULES_PER_MOLE / KILOJOULES_PER_KWH;
  }
}
