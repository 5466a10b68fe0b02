package washbook.log.layout;

import java.util.EnumSet;
import java.util.Set;
import java.util.regex.Pattern;
import washbook.log.Role;
import washbook.log.layout.Header.HeaderCell;
import washbook.log.words.Concept;
import washbook.log.words.DateText;
import washbook.log.words.Vocabulary;

/** What the text of one header cell says by itself. */
final class HeaderWords {
  private static final Pattern T_OF =
      Pattern.compile("[Tt](?:[\u00aa\u00b0\u00ba.]\\s?|\\s)\\p{L}{2,}");

  /** The time since the beginning, as {@code t (h)} or {@code t/d}. */
  private static final Pattern ELAPSED =
      Pattern.compile("t ?(?:/ ?[hd]|\\( ?[hd] ?\\)|\\[ ?[hd] ?\\])");

  private static final Set<Concept> OF_WHAT =
      EnumSet.of(Concept.VESSEL, Concept.BATCH, Concept.SAMPLE, Concept.FOREIGN, Concept.AMBIENT);

  private HeaderWords() {}

  /** Its meanings and role; values and statements have none. */
  static HeaderCell judge(String text) {
    String trimmed = text.strip();
    Set<Concept> none = EnumSet.noneOf(Concept.class);
    if (trimmed.isEmpty() || isValue(trimmed) || isStatement(trimmed)) {
      return new HeaderCell(-1, trimmed, none, Role.OTHER);
    }
    if (ELAPSED.matcher(trimmed).matches()) {
      Concept unit = trimmed.contains("h") ? Concept.HOURS : Concept.DAY;
      Set<Concept> elapsed = EnumSet.of(unit);
      return new HeaderCell(-1, trimmed, elapsed, HeaderRoles.role(elapsed));
    }
    Set<Concept> meanings = Vocabulary.meanings(OriginalGravityInHeader.outside(trimmed));
    if (isTemperatureOf(trimmed, meanings)) {
      meanings = EnumSet.copyOf(meanings);
      meanings.add(Concept.TEMPERATURE);
    }
    return new HeaderCell(-1, trimmed, meanings, HeaderRoles.role(meanings));
  }

  /** A letter T before a place, as {@code T tank} or {@code T. sample}. */
  private static boolean isTemperatureOf(String text, Set<Concept> meanings) {
    return !meanings.isEmpty() && OF_WHAT.containsAll(meanings) && T_OF.matcher(text).lookingAt();
  }

  static boolean isValue(String text) {
    char first = text.charAt(0);
    return Character.isDigit(first)
        || ((first == '-' || first == '~' || first == '+') && text.length() > 1);
  }

  /** A label with its value, or a name with a number after it: no header. */
  private static boolean isStatement(String text) {
    int mark = Math.max(text.indexOf(':'), text.indexOf('='));
    if (mark > 0 && mark + 1 < text.length() && Character.isLetter(text.charAt(0))) {
      return true;
    }
    int space = text.lastIndexOf(' ');
    return space > 0 && text.substring(space + 1).matches("#?\\d+");
  }

  /** Whether a text begins as a word and is no date. */
  static boolean isWord(String text) {
    String word = text.strip();
    return !word.isEmpty() && Character.isLetter(word.charAt(0)) && !DateText.isDate(word);
  }
}
