package washbook.functions.log;

import java.util.Set;

/** Sentences in a log that say something about its readings. */
final class Statement {
  private Statement() {}

  /** Whether the text says that readings are corrected already. */
  static boolean saysCorrected(String text) {
    return saysCorrected(Words.meanings(text));
  }

  static boolean saysCorrected(Set<Concept> meanings) {
    return meanings.contains(Concept.CORRECTED)
        && !meanings.contains(Concept.NEGATION)
        && !meanings.contains(Concept.UNCORRECTED);
  }
}
