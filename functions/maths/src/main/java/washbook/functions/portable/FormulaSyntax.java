package washbook.functions.portable;

/** How a file writes formulas. */
public enum FormulaSyntax {
  /** As in .xlsx: {@code ABV(A1,'My log'!B2)}. */
  A1(','),
  /** OpenFormula, as in .ods after {@code of:=}: {@code ABV([.A1];['My log'.B2])}. */
  OPEN(';');

  private final char separator;

  FormulaSyntax(char separator) {
    this.separator = separator;
  }

  char separator() {
    return separator;
  }
}
