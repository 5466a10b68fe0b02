package washbook.functions.quantity;

import java.util.Map;
import java.util.Set;
import washbook.functions.Sentence;

/** Units that have words in them; all others are signs, the same in every language. */
public final class UnitWords {
  private static final Map<String, String> KEYS =
      Map.of(
          "% mass", "unit.percentMass",
          "% of theory", "unit.percentOfTheory",
          "days", "unit.days",
          "points/day", "unit.pointsPerDay");

  private UnitWords() {}

  /** What a sentence has for that unit: the sign itself, or its words in the reader's language. */
  public static Object of(String unit) {
    return KEYS.containsKey(unit) ? Sentence.of(KEYS.get(unit)) : unit;
  }

  /** The units that have words, in English. */
  public static Set<String> english() {
    return KEYS.keySet();
  }
}
