package washbook.log.words;

import java.util.Locale;
import java.util.Set;

/** Marks that mean: the same as in the row above. */
public final class Ditto {
  private static final Set<String> MARKS =
      Set.of(
          "\"",
          "''",
          "\u201d",
          "\u201c",
          "\u201e",
          "\u3003",
          "ditto",
          "dito",
          "dto",
          "dto.",
          "idem",
          "\u00eddem",
          "id",
          "id.");

  private Ditto() {}

  /** Whether a text only repeats the one above. */
  public static boolean isMark(String text) {
    return text.length() < 9 && MARKS.contains(text.strip().toLowerCase(Locale.ROOT));
  }
}
