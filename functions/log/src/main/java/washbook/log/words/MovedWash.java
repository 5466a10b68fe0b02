package washbook.log.words;

import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What a note says of wash that went from one batch into another. The words are in moved-words.txt.
 */
public final class MovedWash {
  /** Whose row a note stands on: that batch needs no name in it. */
  public enum Row {
    OWN,
    ANOTHERS,
    SHARED
  }

  private enum Meaning {
    MOVED,
    ADDED,
    FROM,
    INTO,
    AFTERWARDS,
    AFTER,
    READING,
    WASH,
    NO_WASH,
    NOT,
    EACH
  }

  /** And in some languages, in in others. */
  private static final String AND = "en";

  private static final Set<String> AND_ALONE = Set.of("e", "y");

  private static final WordList<Meaning> WORDS =
      WordList.load(MovedWash.class, "moved-words.txt", Meaning.class);

  /** Words between that for where it comes from and the vessel: the other, the big old. */
  private static final int BETWEEN = 3;

  /** So many letters name a vessel without a word before them, as left and right do. */
  private static final int NAME_BY_ITSELF = 4;

  private static final Pattern WITHOUT_DATES =
      Pattern.compile("\\d{1,4}[./-]\\d{1,4}(?:[./-]\\d{0,4})?");

  /** What stands behind a name in brackets tells of it. */
  private static final Pattern IN_BRACKETS = Pattern.compile("(?<=\\S)\\s*[(\\[].*");

  private static final Set<String> ARTICLES =
      Set.of("the", "der", "die", "das", "den", "dem", "la", "le", "el", "il", "lo", "het");

  private static final Pattern CLAUSES = Pattern.compile("[,;:.+]");

  private static final Remembered<Boolean> AFTER_READING =
      new Remembered<>(MovedWash::tellsOfAfterwards);

  /** What the words of a whole note mean. */
  private static final Remembered<Set<Meaning>> SAID =
      new Remembered<>(note -> meanings(Vocabulary.tokens(note)));

  /** The words of a batch's name. */
  private static final Remembered<List<String>> NAMES =
      new Remembered<>(name -> Vocabulary.tokens(IN_BRACKETS.matcher(name).replaceFirst("")));

  private MovedWash() {}

  /** Whether a note tells of what was done after the reading beside it. */
  public static boolean isAfterReading(String note) {
    return AFTER_READING.of(note);
  }

  private static boolean tellsOfAfterwards(String note) {
    List<String> tokens = Vocabulary.tokens(note);
    for (int i = 0; i < tokens.size(); i++) {
      Set<Meaning> here = meanings(tokens.subList(i, i + 1));
      List<String> behind = tokens.subList(i + 1, Math.min(i + 1 + BETWEEN, tokens.size()));
      if (here.contains(Meaning.AFTERWARDS)
          || here.contains(Meaning.AFTER) && meanings(behind).contains(Meaning.READING)) {
        return true;
      }
    }
    return false;
  }

  /** Whether a note tells that wash of another batch went into one. */
  public static boolean into(String batch, Collection<String> others, String text, Row row) {
    String note = withoutNegated(text);
    Set<Meaning> said = SAID.of(note);
    boolean added = said.contains(Meaning.ADDED) || note.strip().startsWith("+");
    List<String> tokens = Vocabulary.tokens(note);
    if (row == Row.OWN && isWashOfNumbered(batch, note)) {
      return true;
    }
    if (!added && !said.contains(Meaning.MOVED)) {
      return false;
    }
    if (row == Row.OWN
        && added
        && (isFromElsewhere(note, tokens) || isFromNumbered(batch, tokens))) {
      return true;
    }
    int here = at(tokens, batch);
    boolean about =
        here >= 0 && !(isBehind(tokens, here, Meaning.FROM) && isAfterAdded(tokens, here));
    if (added && (row == Row.OWN || row == Row.SHARED && about) && addsWash(note)) {
      return true;
    }
    boolean given = row == Row.ANOTHERS;
    boolean source = false;
    for (String other : others) {
      int at = other.equals(batch) ? -1 : at(tokens, other);
      given |= at >= 0 && !isInto(tokens, at, others);
      source |= at >= 0 && isBehind(tokens, at, Meaning.FROM);
    }
    if (added && isToppedUp(tokens, batch) && namesSource(tokens, batch, others)) {
      return true;
    }
    boolean named = isIntoAnywhere(tokens, batch, others);
    given |= named && isFromVessel(tokens);
    return given && (named || row == Row.OWN && here < 0 && source);
  }

  private static boolean isAfterAdded(List<String> tokens, int at) {
    return meanings(tokens.subList(0, at)).contains(Meaning.ADDED);
  }

  /** A note without the clauses that say that nothing was added: not before added. */
  private static String withoutNegated(String note) {
    if (!SAID.of(note).contains(Meaning.NOT)) {
      return note;
    }
    StringBuilder kept = new StringBuilder();
    for (String clause : CLAUSES.split(note)) {
      if (!deniesAdding(Vocabulary.tokens(clause))) {
        kept.append(kept.isEmpty() ? "" : ", ").append(clause.strip());
      }
    }
    return kept.toString();
  }

  private static boolean deniesAdding(List<String> tokens) {
    for (int i = 1; i < tokens.size(); i++) {
      if (meanings(tokens.subList(i - 1, i)).contains(Meaning.NOT)
          && meanings(tokens.subList(i, i + 1)).contains(Meaning.ADDED)) {
        return true;
      }
    }
    return false;
  }

  /**
   * Whether a note on a batch's own row tells that its wash went into another: it was read before.
   */
  public static boolean away(String batch, Collection<String> others, String note) {
    List<String> tokens = Vocabulary.tokens(note);
    int here = at(tokens, batch);
    if (here < 0 || isByItself(tokens, here, batch) || isInto(tokens, here, others)) {
      return false;
    }
    for (String other : others) {
      int at = other.equals(batch) ? -1 : at(tokens, other);
      if (at >= 0 && isInto(tokens, at, others)) {
        return true;
      }
    }
    return false;
  }

  /** Whether a name stands without its word for vessel, and so may be a plain word. */
  private static boolean isByItself(List<String> tokens, int at, String name) {
    List<String> of = NAMES.of(name);
    return of.size() > 1
        && tokens.get(at).equals(of.get(of.size() - 1))
        && !isBehind(tokens, at, Meaning.FROM);
  }

  /**
   * Whether a batch stands right before or behind the word for added, as {@code T3 topped up} or
   * {@code colmata la 1}.
   */
  private static boolean isToppedUp(List<String> tokens, String batch) {
    for (int i = 0; i < tokens.size(); i++) {
      if (!meanings(tokens.subList(i, i + 1)).contains(Meaning.ADDED)) {
        continue;
      }
      int from = Math.max(0, i - BETWEEN);
      List<String> before = tokens.subList(from, i);
      List<String> behind = tokens.subList(i + 1, Math.min(i + 1 + BETWEEN, tokens.size()));
      if (isCalled(before, batch) || isCalled(behind, batch)) {
        return true;
      }
    }
    return false;
  }

  /** Whether a few words call a batch and do not tell that it is where something comes from. */
  private static boolean isCalled(List<String> words, String batch) {
    if (meanings(words).contains(Meaning.FROM)) {
      return false;
    }
    List<String> of = NAMES.of(batch);
    return at(words, batch) >= 0
        || of.size() == 2
            && isVessel(of.get(0))
            && isNumber(of.get(1))
            && words.contains(of.get(1));
  }

  private static boolean namesSource(List<String> tokens, String batch, Collection<String> others) {
    for (String other : others) {
      int at = other.equals(batch) ? -1 : at(tokens, other);
      if (at >= 0 && isBehind(tokens, at, Meaning.FROM)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isNumber(String word) {
    return word.chars().allMatch(Character::isDigit);
  }

  /** Whether a clause ends with the wash of another vessel's number, as {@code vino del 1}. */
  private static boolean isWashOfNumbered(String batch, String note) {
    List<String> own = NAMES.of(batch);
    if (own.stream().noneMatch(MovedWash::isNumber)) {
      return false;
    }
    for (String clause : CLAUSES.split(WITHOUT_DATES.matcher(note).replaceAll(" "))) {
      List<String> tokens = Vocabulary.tokens(clause);
      int last = tokens.size() - 1;
      if (last < 2 || !isNumber(tokens.get(last)) || own.contains(tokens.get(last))) {
        continue;
      }
      int from = last - 1;
      from -= ARTICLES.contains(tokens.get(from)) || isVessel(tokens.get(from)) ? 1 : 0;
      if (from > 0
          && tokens.get(last).length() == 1
          && meanings(tokens.subList(from, from + 1)).contains(Meaning.FROM)
          && meanings(tokens.subList(from - 1, from)).contains(Meaning.WASH)) {
        return true;
      }
    }
    return false;
  }

  /** Whether must, juice or wine was added, and not something else to it. */
  private static boolean addsWash(String note) {
    for (String clause : CLAUSES.split(note)) {
      List<String> tokens = Vocabulary.tokens(clause);
      Set<Meaning> said = meanings(tokens);
      boolean adds = said.contains(Meaning.ADDED) && !said.contains(Meaning.NO_WASH);
      for (int i = 0; adds && i < tokens.size(); i++) {
        List<String> before = tokens.subList(Math.max(0, i - 2), i);
        if (meanings(tokens.subList(i, i + 1)).contains(Meaning.WASH)
            && !meanings(before).contains(Meaning.INTO)) {
          return true;
        }
      }
    }
    return false;
  }

  /**
   * Whether a note names other vessels, each by its whole name, and not this one, nor all of them:
   * it is not about it. A letter or a number alone names none here.
   */
  public static boolean isAboutOthers(String batch, Collection<String> others, String note) {
    List<String> tokens = Vocabulary.tokens(note);
    return at(tokens, batch) < 0
        && !meanings(tokens).contains(Meaning.EACH)
        && others.stream().anyMatch(o -> !o.equals(batch) && isNamed(tokens, o));
  }

  private static boolean isNamed(List<String> tokens, String name) {
    List<String> of = NAMES.of(name);
    boolean whole =
        of.size() > 1 || of.size() == 1 && of.get(0).length() > (hasDigit(of.get(0)) ? 1 : 2);
    return whole && Collections.indexOfSubList(tokens, of) >= 0;
  }

  private static boolean hasDigit(String word) {
    return word.chars().anyMatch(Character::isDigit);
  }

  private static Set<Meaning> meanings(List<String> tokens) {
    Set<Meaning> meanings = EnumSet.noneOf(Meaning.class);
    WORDS.matches(tokens).forEach(here -> here.forEach(entry -> meanings.add(entry.meaning())));
    return meanings;
  }

  /** Whether litres of what is in some other vessel were added; wash that is racked is not. */
  private static boolean isFromElsewhere(String note, List<String> tokens) {
    return FeedWords.litres(note).isPresent() && isFromVessel(tokens);
  }

  /** Whether it came from a vessel of another number, as {@code mit Rest von Fass 2} for Fass 3. */
  private static boolean isFromNumbered(String batch, List<String> tokens) {
    List<String> own = Vocabulary.tokens(batch);
    for (int i = 2; i < tokens.size(); i++) {
      boolean number = isNumber(tokens.get(i));
      boolean other = number && isVessel(tokens.get(i - 1)) && !own.contains(tokens.get(i));
      if (other
          && meanings(tokens.subList(Math.max(0, i - 1 - BETWEEN), i - 1)).contains(Meaning.FROM)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isFromVessel(List<String> tokens) {
    for (int i = 1; i < tokens.size(); i++) {
      boolean vessel = isVessel(tokens.get(i));
      List<String> before = tokens.subList(Math.max(0, i - BETWEEN), i);
      if (vessel && meanings(before).contains(Meaning.FROM)) {
        return true;
      }
    }
    return false;
  }

  /**
   * Whether wash goes into what is named; T1 en T2 are two in some languages, not one in another.
   */
  private static boolean isInto(List<String> tokens, int at, Collection<String> names) {
    boolean and = at > 1 && AND.equals(tokens.get(at - 1));
    if (and && names.stream().anyMatch(n -> at(tokens.subList(0, at - 1), n) >= 0)) {
      return false;
    }
    return isBehind(tokens, at, Meaning.INTO);
  }

  /** Whether a name stands as where wash goes, the first time or later: C1 and C2 into C1. */
  private static boolean isIntoAnywhere(
      List<String> tokens, String name, Collection<String> names) {
    int from = 0;
    int at = at(tokens, name);
    while (at >= 0) {
      if (isInto(tokens, from + at, names)) {
        return true;
      }
      from += at + 1;
      at = at(tokens.subList(from, tokens.size()), name);
    }
    return false;
  }

  /** Whether such a word stands before a name, or before the word for vessel in front of it. */
  private static boolean isBehind(List<String> tokens, int at, Meaning meaning) {
    int before = at > 1 && isVessel(tokens.get(at - 1)) ? at - 1 : at;
    before -= before > 1 && ARTICLES.contains(tokens.get(before - 1)) ? 1 : 0;
    return before > 0 && meanings(tokens.subList(before - 1, before)).contains(meaning);
  }

  private static boolean isVessel(String word) {
    Set<Concept> meanings = Vocabulary.meanings(word);
    return meanings.contains(Concept.VESSEL) || meanings.contains(Concept.BATCH);
  }

  /**
   * Where a batch is named, also by its initial and number as B1 for Bottich 1, or without the word
   * for vessel behind that for from or into; -1 for nowhere.
   */
  private static int at(List<String> tokens, String name) {
    List<String> of = NAMES.of(name);
    for (int i = 0; !of.isEmpty() && i + of.size() <= tokens.size(); i++) {
      if (tokens.subList(i, i + of.size()).equals(of)) {
        return i;
      }
    }
    boolean numbered = of.size() == 2 && isNumber(of.get(1));
    int brief = numbered ? tokens.indexOf(of.get(0).charAt(0) + of.get(1)) : -1;
    if (brief >= 0 || of.size() != 2 || !isVessel(of.get(0))) {
      return brief;
    }
    boolean word = of.get(1).length() >= NAME_BY_ITSELF;
    for (int i = word ? 0 : 1; i < tokens.size(); i++) {
      // 1 is not 1b.
      boolean longer =
          i + 1 < tokens.size()
              && tokens.get(i + 1).length() == 1
              && !(AND_ALONE.contains(tokens.get(i + 1)) && i + 2 < tokens.size())
              && meanings(tokens.subList(i + 1, i + 2)).isEmpty();
      if (tokens.get(i).equals(of.get(1))
          && !longer
          && (word || isBehind(tokens, i, Meaning.FROM) || isBehind(tokens, i, Meaning.INTO))) {
        return i;
      }
    }
    return -1;
  }
}
