package washbook.log.words;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the note beside a reading says of sugar that was put in. The words are in feed-words.txt.
 */
public final class FeedWords {
  /** Sugar in honey, as a share of it; common practice, no source. */
  public static final double SUGAR_IN_HONEY = 0.8;

  /** What a word of a note means. */
  public enum Meaning {
    SUGAR,
    HONEY,
    SYRUP,
    FED,
    MORE
  }

  /** A number with the word behind it, as 1,2 kg; no share, as 12 g/L. */
  private static final Pattern AMOUNT =
      Pattern.compile("(?<![\\d.,/])(\\d{1,4}(?:[.,]\\d{1,2})?)\\s*(\\p{L}{1,8})(?![\\p{L}/])");

  /** A range, a multiple or a share: {@code 2-3 kg}, {@code 3 x 500 g}, {@code 200 g per litre}. */
  private static final Pattern SEVERAL =
      Pattern.compile(
          "\\d\\s*[-\u2013\u2014x\u00d7*]\\s*\\d|\\d\\s*\\p{L}{1,5}\\s*(/|(?i:per|pro|par|por|al|a|je)\\b)"
              + "|(?i:twice|times|zweimal|mal|deux fois|fois|dos veces|veces|due volte|volte|vezes"
              + "|tweemaal|keer|maal)");

  private static final Pattern CLAUSES = Pattern.compile("[,;.:]");

  private static final Set<String> COMPARING = Set.of("than", "als", "di", "del");

  private static final WordList<Meaning> WORDS =
      WordList.load(FeedWords.class, "feed-words.txt", Meaning.class);

  private static final Remembered<Set<Meaning>> MEANINGS =
      new Remembered<>(text -> Collections.unmodifiableSet(meanings(text)));

  private static final Remembered<Boolean> MORE = new Remembered<>(FeedWords::beginsWithMore);

  private FeedWords() {}

  /** What the words of a text mean. */
  public static Set<Meaning> in(String text) {
    return MEANINGS.of(text);
  }

  private static Set<Meaning> meanings(String text) {
    Set<Meaning> meanings = EnumSet.noneOf(Meaning.class);
    WORDS
        .matches(Vocabulary.tokens(text))
        .forEach(here -> here.forEach(entry -> meanings.add(entry.meaning())));
    return meanings;
  }

  /** Whether a text names something that sugar comes with. */
  public static boolean namesSugar(String text) {
    return namesSugar(in(text));
  }

  /** Whether a text speaks of sugar and of how much, or of putting it in. */
  public static boolean saysFed(String text) {
    Set<Meaning> fed = in(text);
    if (!namesSugar(fed)) {
      return false;
    }
    Set<Concept> meanings = Vocabulary.meanings(text);
    boolean put = fed.contains(Meaning.FED) || meanings.contains(Concept.ADDED);
    return !meanings.contains(Concept.NEGATION)
        && (put || !Double.isNaN(only(text, FeedWords::massKg)));
  }

  /** Whether a clause begins with more of what sugar comes with, as {@code more honey}. */
  public static boolean saysMore(String text) {
    return MORE.of(text);
  }

  private static boolean beginsWithMore(String text) {
    for (String clause : CLAUSES.split(text)) {
      List<String> tokens = Vocabulary.tokens(clause);
      boolean compares = tokens.stream().anyMatch(COMPARING::contains);
      if (tokens.size() > 1
          && !compares
          && in(tokens.get(0)).contains(Meaning.MORE)
          && namesSugar(in(tokens.get(1)))) {
        return !Vocabulary.meanings(text).contains(Concept.NEGATION);
      }
    }
    return false;
  }

  private static boolean namesSugar(Set<Meaning> meanings) {
    return meanings.contains(Meaning.SUGAR)
        || meanings.contains(Meaning.HONEY)
        || meanings.contains(Meaning.SYRUP);
  }

  /**
   * The sugar that a text tells of, kg; empty when it tells no amount or several, or names
   * something of which it is not known how much sugar it holds.
   */
  public static OptionalDouble kilograms(String text) {
    Set<Meaning> fed = in(text);
    boolean honey = fed.contains(Meaning.HONEY);
    if (fed.contains(Meaning.SYRUP) || honey == fed.contains(Meaning.SUGAR)) {
      return OptionalDouble.empty();
    }
    double amount = only(text, FeedWords::massKg) * (honey ? SUGAR_IN_HONEY : 1);
    return Double.isNaN(amount) ? OptionalDouble.empty() : OptionalDouble.of(amount);
  }

  /** The volume that a text tells of, L; empty when it tells none or several. */
  public static OptionalDouble litres(String text) {
    double litres = only(text, FeedWords::volumeL);
    return Double.isNaN(litres) ? OptionalDouble.empty() : OptionalDouble.of(litres);
  }

  /** The only amount that counts in a text; NaN when there is none or more than one. */
  private static double only(String text, ToDoubleFunction<Matcher> amount) {
    if (SEVERAL.matcher(text).find()) {
      return Double.NaN;
    }
    Matcher matcher = AMOUNT.matcher(text);
    double found = Double.NaN;
    while (matcher.find()) {
      double here = amount.applyAsDouble(matcher);
      if (!Double.isNaN(here)) {
        if (!Double.isNaN(found)) {
          return Double.NaN;
        }
        found = here;
      }
    }
    return found;
  }

  private static double massKg(Matcher matcher) {
    return inBase(matcher, true);
  }

  private static double volumeL(Matcher matcher) {
    return inBase(matcher, false);
  }

  private static double inBase(Matcher matcher, boolean mass) {
    List<String> word = Vocabulary.tokens(matcher.group(2));
    double value = Double.parseDouble(matcher.group(1).replace(',', '.'));
    return word.size() != 1
        ? Double.NaN
        : AmountUnit.in(Vocabulary.meanings(matcher.group(2)), mass)
            .map(unit -> unit.toBase(value))
            .orElse(Double.NaN);
  }
}
