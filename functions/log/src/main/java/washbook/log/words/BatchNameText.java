package washbook.log.words;

import java.util.EnumSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A batch's name as people head a log with it: one to three words, the first with a capital, and a
 * number, as {@code Plum 3}; more may follow in brackets, after a comma or after a dash. Anything
 * else is no name: a sentence, a date, a page, a thing that was done.
 */
public final class BatchNameText {
  private static final Pattern NAME =
      Pattern.compile(
          "(\\p{Lu}[\\p{L}'.]*(?: [\\p{L}'-]+){0,2} #?\\d{1,3}\\p{L}?)"
              + "(?=\\s*$|\\s+[-\u2013\u2014]+\\s|\\s*[(\\[;]|,\\s)");

  /** Meanings that a name may have: {@code Sugar 4}, {@code Tank 2}. */
  private static final Set<Concept> ALLOWED =
      EnumSet.of(Concept.SUGAR, Concept.WATER, Concept.BATCH, Concept.VESSEL);

  private BatchNameText() {}

  /** The name at the beginning of a text, "" when there is none. */
  public static String of(String text) {
    Matcher matcher = NAME.matcher(text.strip());
    if (!matcher.lookingAt()) {
      return "";
    }
    String name = matcher.group(1);
    boolean isDate = !Double.isNaN(DateText.serial(name, DateText.Order.DAY_FIRST));
    return isDate || !ALLOWED.containsAll(Vocabulary.meanings(name)) ? "" : name;
  }

  /**
   * What a line is about that begins with a word for batch or vessel, itself or after a dash:
   * {@code Carboy B} of {@code stage 2 - Carboy B (with cherries)}; "" where it does not.
   */
  public static String vessel(String text) {
    for (String part : text.strip().split("\\s+[-\u2013\u2014]+\\s+")) {
      String name = part.split("[(\\[,;:]", 2)[0].strip();
      String[] words = name.split("\\s+");
      Set<Concept> first = Vocabulary.meanings(words[0]);
      boolean named = first.contains(Concept.VESSEL) || first.contains(Concept.BATCH);
      if (named && (words.length == 2 || words.length == 3) && !part.endsWith(".")) {
        return name;
      }
    }
    return "";
  }

  /** Whether a text may follow a word for batch as its name: short, and no sentence. */
  public static boolean mayFollow(String text) {
    if (text.isEmpty() || text.length() > 40 || text.endsWith(".")) {
      return false;
    }
    char first = text.charAt(0);
    return (Character.isUpperCase(first) || Character.isDigit(first) || first == '#')
        && text.split("\\s+").length <= 4;
  }
}
