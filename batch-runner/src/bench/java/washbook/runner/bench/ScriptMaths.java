package washbook.runner.bench;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.portable.PortableFormulas;
import washbook.functions.portable.form.NotPortableException;

/** Our portable formulas, rewritten as functions of JavaScript with all their guards. */
final class ScriptMaths {
  private static final String READING = "A2";
  private static final String WARMTH = "B2";
  private static final String ORIGINAL = "C2";
  private static final String GRAVITY = "D2";

  private final String formula;
  private int at;

  private ScriptMaths(String formula) {
    this.formula = formula;
  }

  /** A module of Node. What is refused is NaN. */
  static String module() throws NotPortableException {
    return function("originalGravity", "CORRECTEDGRAVITY", READING, WARMTH)
        + function("correctedGravity", "CORRECTEDGRAVITY", READING, WARMTH, "", ORIGINAL)
        + function("alcohol", "ABV", ORIGINAL, GRAVITY)
        + function("apparentAttenuation", "APPARENTATTENUATION", ORIGINAL, GRAVITY)
        + function("realAttenuation", "REALATTENUATION", ORIGINAL, GRAVITY);
  }

  private static String function(String name, String function, String... arguments)
      throws NotPortableException {
    List<String> cells = List.of(arguments);
    String formula = PortableFormulas.formula(Catalogue.get(function), cells);
    String given = cells.stream().filter(cell -> !cell.isEmpty()).collect(joining(", "));
    return "exports."
        + name
        + " = ("
        + given
        + ") => "
        + new ScriptMaths(formula).until("")
        + ";\n";
  }

  /** What stands before one of these characters, which is gone past. */
  private String until(String ends) {
    StringBuilder script = new StringBuilder();
    while (at < formula.length()) {
      char here = formula.charAt(at++);
      if (ends.indexOf(here) >= 0) {
        return script.toString();
      }
      if (here == '(') {
        script.append('(').append(until(")")).append(')');
      } else if (here == '"') {
        at = formula.indexOf('"', at) + 1;
        script.append("null");
      } else if (Character.isUpperCase(here)) {
        script.append(word());
      } else if (here == '=' && !ends(script, '<') && !ends(script, '>')) {
        script.append("===");
      } else {
        script.append(here);
      }
    }
    return script.toString();
  }

  private static boolean ends(StringBuilder script, char with) {
    return !script.isEmpty() && script.charAt(script.length() - 1) == with;
  }

  /** A cell, or a function with its arguments; the first letter is gone past. */
  private String word() {
    int first = at - 1;
    while (at < formula.length() && Character.isLetterOrDigit(formula.charAt(at))) {
      at++;
    }
    String word = formula.substring(first, at);
    if (at == formula.length() || formula.charAt(at) != '(') {
      return word;
    }
    at++;
    List<String> parts = new ArrayList<>();
    do {
      parts.add(until(",)"));
    } while (formula.charAt(at - 1) == ',');
    return switch (word) {
      case "IF" -> "((" + parts.get(0) + ") ? (" + parts.get(1) + ") : (" + parts.get(2) + "))";
      case "AND" -> "((" + String.join(") && (", parts) + "))";
      case "OR" -> "((" + String.join(") || (", parts) + "))";
      case "MAX" -> "Math.max(" + String.join(", ", parts) + ")";
      case "ABS" -> "Math.abs(" + parts.get(0) + ")";
      case "NA" -> "NaN";
      default -> throw new IllegalStateException(word + " has no word in JavaScript");
    };
  }
}
