package washbook.functions.makeup;

import washbook.functions.liquid.WashKind;

/**
 * What goes into a wash: how much of it is dry solids, how much of those yeast can ferment and as
 * what it ferments. Common practice, no source, but where one is named; a batch's own label goes
 * before them.
 */
public enum SugarKind {
  SUCROSE(1, 1, 0, WashKind.SUGAR),
  /** Glucose with one water of crystallisation: 180.156 of 198.171 g/mol. */
  DEXTROSE(180.156 / 198.171, 1, 0, WashKind.FRUIT),
  /** Invert syrup. */
  INVERT(0.77, 1, 0, WashKind.FRUIT),
  /**
   * Codex Stan 12-1981 allows 20 % of water; 18 % is usual. Fermentable: all sugars over solids in
   * White's means of US honeys, 0.951; without maltose and higher ones 0.845.
   */
  HONEY(0.82, 0.95, 0.05, WashKind.HONEY),
  /**
   * Cane molasses as sold, 79.5 °Bx. Fermentable: 52.38 of 81.18 % in the means of a handbook on
   * fuel ethanol, 0.645; 0.58 to 0.80 are published, the most by the grades of 24 FR 8365 (1959).
   */
  MOLASSES(0.795, 0.65, 0.07, WashKind.MOLASSES),
  /** Liquid malt extract. */
  MALTEXTRACT(0.80, 0.65, 0.05, WashKind.MALT),
  /** Spray-dried malt extract. */
  DRYMALT(0.96, 0.65, 0.05, WashKind.MALT);

  private final double solids;
  private final double fermentable;
  private final double fermentableError;
  private final WashKind wash;

  SugarKind(double solids, double fermentable, double fermentableError, WashKind wash) {
    this.solids = solids;
    this.fermentable = fermentable;
    this.fermentableError = fermentableError;
    this.wash = wash;
  }

  /** Share of dry solids by mass. */
  public double solids() {
    return solids;
  }

  /** Share of the solids that ferments. */
  public double fermentable() {
    return fermentable;
  }

  /** One standard deviation of {@link #fermentable}. */
  public double fermentableError() {
    return fermentableError;
  }

  /** The balance by which it ferments. */
  public WashKind wash() {
    return wash;
  }
}
