package washbook.log.fill;

import java.util.List;

/** Writes a call of a catalogue function as the text of a formula. */
@FunctionalInterface
public interface FormulaSource {
  /**
   * The formula without "=", or null when this call cannot be written.
   *
   * @param functionName as in the catalogue, without prefix
   * @param arguments A1 references, numbers with a point, words in double quotes or formulas of
   *     this same source; optional arguments left out at the end or "" in the middle
   */
  String formula(String functionName, List<String> arguments);

  /** Calls of the function pack: {@code WASHBOOK.ABV(1.085,B7)}. */
  static FormulaSource pack() {
    return (name, arguments) -> "WASHBOOK." + name + "(" + String.join(",", arguments) + ")";
  }
}
