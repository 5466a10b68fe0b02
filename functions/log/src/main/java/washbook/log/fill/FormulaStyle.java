package washbook.log.fill;

/** What computed cells hold. */
public enum FormulaStyle {
  /** Numbers only. */
  VALUES,
  /** Calls of the function pack, with their results. */
  PACK,
  /** Plain-arithmetic formulas that need no function pack, with their results. */
  PORTABLE
}
