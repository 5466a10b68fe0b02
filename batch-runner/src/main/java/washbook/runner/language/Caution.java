package washbook.runner.language;

import java.util.List;
import java.util.stream.IntStream;
import washbook.functions.SafetyNote;

/** The safety note in the language of its reader. */
public final class Caution {
  private Caution() {}

  /** One sentence or two for each danger. */
  public static List<String> lines(Wording words) {
    return IntStream.rangeClosed(1, SafetyNote.LINES.size())
        .mapToObj(line -> words.say("safety." + line))
        .toList();
  }

  /** The whole note as one paragraph. */
  public static String text(Wording words) {
    return words.say("safety.title") + ": " + String.join(" ", lines(words));
  }
}
