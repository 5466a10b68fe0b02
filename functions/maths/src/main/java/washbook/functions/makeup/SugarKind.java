package washbook.functions.makeup;

/**
 * What goes into a wash: how much of it is dry solids and how much of those yeast can ferment.
 * Common practice, no source, but where one is named; a batch's own label goes before them.
 */
public enum SugarKind {
  SUCROSE(1, 1),
  /** Glucose with one water of crystallisation: 180.156 of 198.171 g/mol. */
  DEXTROSE(180.156 / 198.171, 1),
  /** Invert syrup. */
  INVERT(0.77, 1),
  /** Codex Stan 12-1981 allows 20 % of water; 18 % is usual. */
  HONEY(0.82, 0.95),
  /** Cane molasses as sold, 79.5 °Bx. */
  MOLASSES(0.795, 0.65),
  /** Liquid malt extract. */
  MALTEXTRACT(0.80, 0.65),
  /** Spray-dried malt extract. */
  DRYMALT(0.96, 0.65);

  private final double solids;
  private final double fermentable;

  SugarKind(double solids, double fermentable) {
    this.solids = solids;
    this.fermentable = fermentable;
  }

  /** Share of dry solids by mass. */
  public double solids() {
    return solids;
  }

  /** Share of the solids that ferments. */
  public double fermentable() {
    return fermentable;
  }
}
