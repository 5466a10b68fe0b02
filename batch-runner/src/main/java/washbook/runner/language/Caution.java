package washbook.runner.language;

import java.util.List;
import washbook.functions.SafetyNote;

/** The safety note in the language of its reader. */
public final class Caution {
  private Caution() {}

  public static String title(Wording words) {
    return SafetyNote.title(words.language().code());
  }

  /** One sentence or two for each danger. */
  public static List<String> lines(Wording words) {
    return SafetyNote.lines(words.language().code());
  }

  /** The whole note as one paragraph. */
  public static String text(Wording words) {
    return SafetyNote.text(words.language().code());
  }
}
