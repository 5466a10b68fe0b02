package washbook.office.menu;

/** Formulas in the two ways of writing them. */
final class CalcFormulaText {
  private CalcFormulaText() {}

  /** Puts semicolons between arguments, as Calc wants them, where commas stand. */
  static String forCalc(String formula) {
    StringBuilder text = new StringBuilder(formula);
    boolean quoted = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"') {
        quoted = !quoted;
      } else if (c == ',' && !quoted) {
        text.setCharAt(i, ';');
      }
    }
    return text.toString();
  }
}
