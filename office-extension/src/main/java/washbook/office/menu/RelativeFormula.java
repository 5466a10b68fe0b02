package washbook.office.menu;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A formula with the rows of its references counted from its own row. */
final class RelativeFormula {
  /** Texts and quoted names stay; a reference is no part of a longer name and names no sheet. */
  private static final Pattern PIECE =
      Pattern.compile(
          "\"[^\"]*\"|'[^']*'|(?<![A-Za-z0-9_$])(\\$?[A-Z]{1,3})([0-9]{1,7})(?![A-Za-z0-9_(.])");

  private RelativeFormula() {}

  /** The same text for formulas that filling down makes of each other; rows count from 0. */
  static String of(String formula, int row) {
    if (formula.startsWith("{")) {
      return formula; // one array formula, which each of its cells shows
    }
    Matcher matcher = PIECE.matcher(formula);
    StringBuilder text = new StringBuilder();
    while (matcher.find()) {
      String piece =
          matcher.group(1) == null
              ? matcher.group()
              : matcher.group(1) + "[" + (Integer.parseInt(matcher.group(2)) - row - 1) + "]";
      matcher.appendReplacement(text, Matcher.quoteReplacement(piece));
    }
    return matcher.appendTail(text).toString();
  }
}
