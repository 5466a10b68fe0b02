package washbook.log.layout;

import java.util.EnumSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import washbook.log.Role;
import washbook.log.sheet.CellAddress;
import washbook.log.words.Concept;
import washbook.log.words.ReadingScale;
import washbook.log.words.Vocabulary;

/** A header of readings that states the original gravity in brackets: {@code SG (start 1.090)}. */
public final class OriginalGravityInHeader {
  private static final Pattern BRACKETS = Pattern.compile("([^(\\[]+)[(\\[]([^)\\]]+)[)\\]]\\s*");

  private OriginalGravityInHeader() {}

  /** The header without its brackets where they state an original gravity, else the header. */
  static String outside(String header) {
    Matcher parts = parts(header);
    return parts == null ? header : parts.group(1).strip();
  }

  /** What the brackets state, null when they state nothing. */
  public static KeyLine stated(String header, int row, int column) {
    Matcher parts = parts(header);
    if (parts == null) {
      return null;
    }
    return new KeyLine(
        EnumSet.of(Concept.ORIGINALGRAVITY),
        header,
        row,
        column,
        CellAddress.of(row, column),
        parts.group(2),
        number(parts.group(2)),
        Set.of(),
        Double.NaN,
        false);
  }

  private static Matcher parts(String header) {
    Matcher parts = BRACKETS.matcher(header);
    if (!parts.matches()) {
      return null;
    }
    Set<Concept> inside = Vocabulary.meanings(words(parts.group(2)));
    boolean original =
        inside.contains(Concept.ORIGINAL) || inside.contains(Concept.ORIGINALGRAVITY);
    boolean reading = HeaderRoles.role(Vocabulary.meanings(parts.group(1))) == Role.GRAVITY;
    return original && reading && ReadingScale.looksLikeGravity(number(parts.group(2)))
        ? parts
        : null;
  }

  private static String words(String inside) {
    return inside.replaceAll("[\\d.,:=]+", " ");
  }

  private static double number(String inside) {
    Matcher number = Pattern.compile("\\d+(?:[.,]\\d+)?").matcher(inside);
    if (!number.find()) {
      return Double.NaN;
    }
    double value = Double.parseDouble(number.group().replace(',', '.'));
    return number.find() ? Double.NaN : value;
  }
}
