package washbook.log.words;

import java.text.Normalizer;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** What a note says of wash that went from one batch into another. */
public final class MovedWash {
  /** Words for moving wash, by how they begin; accents do not matter. */
  private static final List<String> MOVED =
      words(
          "poured pumped tipped moved blended mixed bucket gekippt umgepumpt gepumpt gegossen"
              + " geschutte eimer vers pomp seau echad vertid bombe cubo deitad pompat secchi balde"
              + " gegoten overgepomp ingepomp oorgepomp gepomp ingegooi emmer");

  /** Those that say that more came in. */
  private static final List<String> ADDED =
      words(
          "topped added aufgefull nachgefull zugegeb dazu ouill complet ajout rellen anad atest"
              + " juntad acrescent aggiunt rabbocc colmat bijgevul aangevul toegevoeg bygegooi"
              + " bygevoeg volgemaak");

  private static final List<String> FROM =
      words("from of aus von vom uit van de du da do dal del dalla di");

  private static final List<String> INTO =
      words("in into to zu nach naar na dans en a al au para nel nella by no");

  private static final Pattern AFTER_READING =
      Pattern.compile(
          "(?i)\\b(after|nach|na|apr\u00e8s|apres|despu\u00e9s|despues|dopo|depois)\\b.{0,12}"
              + "\\b(read|measur|test|messen|messung|spindel|ablesen|meten|meting|mesure|relev|medir"
              + "|medici|lectura|lettura|misur|leitura|medi\u00e7|lesing|meet)"
              + "|\\b(danach|daarna|afterwards|ensuite)\\b");

  private MovedWash() {}

  /** Whether a note tells of what was done after the reading beside it. */
  public static boolean isAfterReading(String note) {
    return AFTER_READING.matcher(note).find();
  }

  /** Whose row a note stands on: that batch needs no name in it. */
  public enum Row {
    OWN,
    ANOTHERS,
    SHARED
  }

  /** Whether a note tells that wash of another batch went into one. */
  public static boolean into(String batch, Collection<String> others, String note, Row row) {
    List<String> tokens = tokens(note);
    boolean added = begins(tokens, ADDED);
    if (!added && !begins(tokens, MOVED)) {
      return false;
    }
    if (row == Row.OWN && added && isFromElsewhere(note, tokens)) {
      return true;
    }
    boolean given = row == Row.ANOTHERS;
    for (String other : others) {
      int at = other.equals(batch) ? -1 : at(tokens, other);
      given |= at >= 0 && !isBehind(tokens, at, INTO);
    }
    int here = at(tokens, batch);
    boolean named = here >= 0 && isBehind(tokens, here, INTO);
    return given && (named || row == Row.OWN && here < 0 && isSource(tokens, others));
  }

  private static List<String> words(String all) {
    return List.of(all.split(" "));
  }

  private static boolean begins(List<String> tokens, List<String> words) {
    return tokens.stream().anyMatch(t -> words.stream().anyMatch(t::startsWith));
  }

  /** Whether litres of what is in some other vessel were added; wash that is racked is not. */
  private static boolean isFromElsewhere(String note, List<String> tokens) {
    if (FeedWords.litres(note).isEmpty()) {
      return false;
    }
    for (int i = 1; i < tokens.size(); i++) {
      Set<Concept> meanings = Vocabulary.meanings(tokens.get(i));
      boolean vessel = meanings.contains(Concept.VESSEL) || meanings.contains(Concept.BATCH);
      if (vessel && tokens.subList(Math.max(0, i - 3), i).stream().anyMatch(FROM::contains)) {
        return true;
      }
    }
    return false;
  }

  /** Whether one of the others is said to be what it comes from. */
  private static boolean isSource(List<String> tokens, Collection<String> others) {
    return others.stream()
        .anyMatch(o -> at(tokens, o) >= 0 && isBehind(tokens, at(tokens, o), FROM));
  }

  private static boolean isBehind(List<String> tokens, int at, List<String> words) {
    return at > 0 && words.contains(tokens.get(at - 1));
  }

  /** Where a batch is named, also by its initial and number as B1 for Bottich 1; -1 for nowhere. */
  private static int at(List<String> tokens, String name) {
    List<String> of = tokens(name);
    for (int i = 0; !of.isEmpty() && i + of.size() <= tokens.size(); i++) {
      if (tokens.subList(i, i + of.size()).equals(of)) {
        return i;
      }
    }
    boolean numbered = of.size() == 2 && of.get(1).chars().allMatch(Character::isDigit);
    return numbered ? tokens.indexOf(of.get(0).charAt(0) + of.get(1)) : -1;
  }

  private static List<String> tokens(String text) {
    String plain =
        Normalizer.normalize(text, Normalizer.Form.NFD)
            .replaceAll("\\p{M}+", "")
            .toLowerCase(Locale.ROOT);
    return List.of(plain.strip().split("[^\\p{L}\\p{N}]+"));
  }
}
