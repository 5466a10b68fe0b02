package washbook.log.words;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import washbook.log.sheet.Grid;

/**
 * Whether a sentence says that a log begins late or that nobody knows the original gravity; the
 * words stand in late-words.txt.
 */
public final class LateWords {
  /** Parts of such a sentence. */
  enum Part {
    NOT_NOTED,
    SINCE,
    RECORDED,
    FIRST,
    DAYS,
    PARTED,
    ALREADY,
    NO_START
  }

  /** What is said together stands between two of these. */
  private static final String BETWEEN = "[;!?()\\[\\]]|[.:]\\s|\\s[-\u2013\u2014]\\s";

  /** A later day of a ferment than this is no longer known to anybody. */
  private static final int MOST_DAYS = 60;

  /** Readings of the second day are early enough. */
  private static final int LATE_DAY = 3;

  private static final WordList<Part> WORDS =
      WordList.load(LateWords.class, "late-words.txt", Part.class);

  private LateWords() {}

  /** Whether a text says so. */
  public static boolean in(String text) {
    if (saysLate(text)) {
      return true;
    }
    for (String sentence : text.split(BETWEEN)) {
      if (saysUnknown(sentence)
          || parts(sentence).contains(Part.NO_START)
          || parts(sentence).containsAll(EnumSet.of(Part.FIRST, Part.DAYS, Part.NOT_NOTED))) {
        return true;
      }
    }
    return false;
  }

  /** Whether a text says that a wash was parted from another or put together of several. */
  public static boolean sayParted(String text) {
    return parts(text).contains(Part.PARTED);
  }

  /** Whether a text in a row says so, from one column on and before another. */
  public static boolean sayParted(Grid grid, int row, int from, int end) {
    for (int column = from; column < end; column++) {
      if (grid.kind(row, column) == Grid.Kind.TEXT && sayParted(grid.text(row, column))) {
        return true;
      }
    }
    return false;
  }

  /** Whether the note of a first reading says that it fermented by then. */
  public static boolean sayAlready(String text) {
    Set<Part> parts = parts(text);
    return parts.contains(Part.ALREADY) || parts.contains(Part.NO_START);
  }

  /** Whether the note of a row without a reading says that it was not taken, or was lost. */
  public static boolean sayLost(String text) {
    return parts(text).contains(Part.NOT_NOTED);
  }

  private static boolean saysUnknown(String sentence) {
    Set<Concept> meanings = Vocabulary.meanings(sentence);
    boolean original =
        meanings.contains(Concept.ORIGINALGRAVITY) || meanings.contains(Concept.ORIGINAL);
    return original && parts(sentence).contains(Part.NOT_NOTED);
  }

  /** Such as: recorded only from day 5 on. */
  private static boolean saysLate(String text) {
    Set<Part> parts = parts(text);
    return parts.contains(Part.SINCE) && parts.contains(Part.RECORDED) && hasLateDay(text);
  }

  private static boolean hasLateDay(String text) {
    List<String> tokens = Vocabulary.tokens(text);
    for (int i = 0; i < tokens.size(); i++) {
      if (!Vocabulary.meanings(tokens.get(i)).contains(Concept.DAY)) {
        continue;
      }
      for (int at = Math.max(0, i - 2); at <= Math.min(tokens.size() - 1, i + 2); at++) {
        int day = tokens.get(at).matches("\\d{1,2}") ? Integer.parseInt(tokens.get(at)) : 0;
        if (day >= LATE_DAY && day <= MOST_DAYS) {
          return true;
        }
      }
    }
    return false;
  }

  private static Set<Part> parts(String text) {
    Set<Part> parts = EnumSet.noneOf(Part.class);
    for (List<WordList.Entry<Part>> here : WORDS.matches(Vocabulary.tokens(text))) {
      here.forEach(entry -> parts.add(entry.meaning()));
    }
    return parts;
  }
}
