package washbook.functions.log;

import java.util.Set;
import washbook.functions.scale.SugarScale;

/** Units as they stand in logs. */
final class Units {
  /** Density as written on some instruments; 1000 times this is CONVERT's KGM3. */
  static final String GRAMS_PER_CUBIC_CENTIMETRE = "GCM3";

  private Units() {}

  /** The sugar scale that a word behind a number means, or null. */
  static SugarScale sugarScale(String word) {
    Set<Concept> meanings = Words.meanings(word.length() <= 2 ? "\u00b0" + word : word);
    if (meanings.isEmpty()) {
      meanings = Words.meanings(word);
    }
    for (Concept meaning : meanings) {
      if (Concept.SUGAR_SCALES.contains(meaning) && meaning != Concept.GCM3) {
        return SugarScale.valueOf(meaning.name());
      }
    }
    return null;
  }

  /** The scale in a header's meanings as a word of CONVERT (or GCM3), "" when there is none. */
  static String sugarScale(Set<Concept> meanings) {
    for (Concept scale : Concept.SUGAR_SCALES) {
      if (meanings.contains(scale) && scale != Concept.SG) {
        return scale.name();
      }
    }
    return meanings.contains(Concept.GL)
        ? Concept.GL.name()
        : meanings.contains(Concept.SG) ? Concept.SG.name() : "";
  }
}
