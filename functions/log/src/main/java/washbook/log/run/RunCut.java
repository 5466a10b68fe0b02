package washbook.log.run;

import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** The three parts of a run. */
enum RunCut {
  HEADS,
  HEARTS,
  TAILS;

  /** Single letters and short forms; they count only in a column that has no other text. */
  private static final Map<String, RunCut> LETTERS =
      Map.ofEntries(
          Map.entry("v", HEADS),
          Map.entry("vl", HEADS),
          Map.entry("hd", HEADS),
          Map.entry("k", HEADS),
          Map.entry("t", HEADS),
          Map.entry("m", HEARTS),
          Map.entry("ml", HEARTS),
          Map.entry("c", HEARTS),
          Map.entry("h", HEARTS),
          Map.entry("ht", HEARTS),
          Map.entry("n", TAILS),
          Map.entry("cab", HEADS),
          Map.entry("cor", HEARTS),
          Map.entry("caud", TAILS),
          Map.entry("nl", TAILS),
          Map.entry("q", TAILS),
          Map.entry("tl", TAILS));

  /** The cut that a text names; null where it names none or several. */
  static RunCut of(String text) {
    Set<RunWord> words = RunWords.in(text);
    RunCut found = null;
    for (RunCut cut : values()) {
      if (words.contains(RunWord.valueOf(cut.name()))) {
        if (found != null) {
          return null;
        }
        found = cut;
      }
    }
    return found;
  }

  /** The cut of a short form; null where it is none. */
  static RunCut ofLetter(String text) {
    return LETTERS.get(text.strip().replace(".", "").toLowerCase(Locale.ROOT));
  }
}
