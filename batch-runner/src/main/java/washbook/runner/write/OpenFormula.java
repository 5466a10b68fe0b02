package washbook.runner.write;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Turns formulas with A1 references and commas into OpenFormula (OpenDocument 1.3 part 4, chapter
 * 5), as they stand in OpenDocument sheets: {@code IF(A2>0,B$2,"a,b")} becomes {@code
 * of:=IF([.A2]>0;[.B$2];"a,b")}.
 */
final class OpenFormula {
  private static final String CELL = "\\$?[A-Za-z]{1,3}\\$?\\d{1,7}";
  private static final String COLUMN = "\\$?[A-Za-z]{1,3}";
  private static final String ROW = "\\$?\\d{1,7}";
  private static final String SHEET = "(?<sheet>'(?:[^']|'')*'|[\\p{L}_][\\p{L}\\p{N}_.]*)!";
  private static final String NO_NAME_BEHIND = "(?![\\p{L}\\p{N}_.(])";

  private static final Pattern STRING = Pattern.compile("\"(?:[^\"]|\"\")*\"");
  private static final Pattern REFERENCE =
      Pattern.compile(
          "(?:"
              + SHEET
              + ")?(?<from>"
              + CELL
              + ")(?::(?<to>"
              + CELL
              + "))?"
              + NO_NAME_BEHIND
              + "|(?:"
              + SHEET.replace("sheet", "sheet2")
              + ")?(?<from2>"
              + COLUMN
              + "|"
              + ROW
              + "):(?<to2>"
              + COLUMN
              + "|"
              + ROW
              + ")"
              + NO_NAME_BEHIND);
  private static final Pattern WORD = Pattern.compile("[\\p{L}_][\\p{L}\\p{N}_.]*");
  private static final Pattern NUMBER = Pattern.compile("(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?");
  private static final Pattern ERROR =
      Pattern.compile("#(DIV/0!|N/A|NAME\\?|NULL!|NUM!|REF!|VALUE!)");

  private OpenFormula() {}

  /** The formula for the attribute table:formula, with the prefix and the equals sign. */
  static String of(String formula) {
    StringBuilder out = new StringBuilder("of:=");
    int at = 0;
    int braces = 0;
    while (at < formula.length()) {
      Matcher reference = match(REFERENCE, formula, at);
      Matcher plain = reference != null ? null : plain(formula, at);
      if (reference != null) {
        appendReference(out, reference);
        at = reference.end();
      } else if (plain != null) {
        String word = plain.group();
        boolean truth = word.equalsIgnoreCase("TRUE") || word.equalsIgnoreCase("FALSE");
        boolean call = plain.end() < formula.length() && formula.charAt(plain.end()) == '(';
        out.append(word).append(truth && !call ? "()" : "");
        at = plain.end();
      } else {
        char c = formula.charAt(at++);
        braces += c == '{' ? 1 : c == '}' ? -1 : 0;
        // In a constant array the columns are divided by ";" and the rows by "|".
        out.append(c == ',' ? ';' : c == ';' && braces > 0 ? '|' : c);
      }
    }
    return out.toString();
  }

  private static Matcher plain(String formula, int at) {
    for (Pattern pattern : new Pattern[] {STRING, ERROR, NUMBER, WORD}) {
      Matcher matcher = match(pattern, formula, at);
      if (matcher != null) {
        return matcher;
      }
    }
    return null;
  }

  private static Matcher match(Pattern pattern, String formula, int at) {
    Matcher matcher = pattern.matcher(formula).region(at, formula.length());
    matcher.useTransparentBounds(true);
    return matcher.lookingAt() ? matcher : null;
  }

  private static void appendReference(StringBuilder out, Matcher reference) {
    boolean whole = reference.group("from") == null;
    String sheet = reference.group(whole ? "sheet2" : "sheet");
    String from = reference.group(whole ? "from2" : "from");
    String to = reference.group(whole ? "to2" : "to");
    out.append('[');
    if (sheet != null) {
      out.append('$').append(sheet);
    }
    out.append('.').append(from);
    if (to != null) {
      out.append(":.").append(to);
    }
    out.append(']');
  }
}
