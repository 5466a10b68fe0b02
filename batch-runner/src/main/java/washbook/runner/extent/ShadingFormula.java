package washbook.runner.extent;

import java.util.regex.Pattern;

/** Tells a rule that shades whole rows from one that looks at each cell by itself. */
final class ShadingFormula {
  private static final Pattern LITERAL = Pattern.compile("\"[^\"]*\"|'[^']*'");

  /** A cell whose column moves with the cell that is shaded. */
  private static final Pattern MOVING =
      Pattern.compile("(?<![A-Za-z0-9_.$])[A-Za-z]{1,3}\\$?\\d+(?![A-Za-z0-9_.(])");

  private ShadingFormula() {}

  static boolean isByRow(String formula) {
    return !MOVING.matcher(LITERAL.matcher(formula).replaceAll("")).find();
  }
}
