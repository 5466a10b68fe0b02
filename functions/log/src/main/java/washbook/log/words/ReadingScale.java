package washbook.log.words;

import java.util.Set;
import washbook.functions.scale.SugarScale;

/** Units as they stand in logs. */
public final class ReadingScale {
  /** Density as written on some instruments; 1000 times this is CONVERT's KGM3. */
  public static final String GRAMS_PER_CUBIC_CENTIMETRE = "GCM3";

  private ReadingScale() {}

  /** The sugar scale that a word behind a number means, or null. */
  public static SugarScale sugarScale(String word) {
    Set<Concept> meanings = Vocabulary.meanings(word.length() <= 2 ? "\u00b0" + word : word);
    if (meanings.isEmpty()) {
      meanings = Vocabulary.meanings(word);
    }
    for (Concept meaning : meanings) {
      if (Concept.SUGAR_SCALES.contains(meaning) && meaning != Concept.GCM3) {
        return SugarScale.valueOf(meaning.name());
      }
    }
    return null;
  }

  /** The scale in a header's meanings as a word of CONVERT (or GCM3), "" when there is none. */
  public static String sugarScale(Set<Concept> meanings) {
    for (Concept scale : Concept.SUGAR_SCALES) {
      if (meanings.contains(scale) && scale != Concept.SG) {
        return scale.name();
      }
    }
    return meanings.contains(Concept.GL)
        ? Concept.GL.name()
        : meanings.contains(Concept.SG) ? Concept.SG.name() : "";
  }

  /** Whether a number without a unit looks like a specific gravity: 1.085 or 1085. */
  public static boolean looksLikeGravity(double value) {
    return (value >= 0.97 && value <= 1.2) || (value >= 970 && value <= 1200);
  }
}
