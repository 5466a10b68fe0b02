package washbook.log.layout;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import washbook.log.Role;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;
import washbook.log.words.CellText;
import washbook.log.words.Concept;
import washbook.log.words.ReadingScale;
import washbook.log.words.Vocabulary;

/**
 * The original gravity inside other words: a header that states it in brackets, {@code SG (start
 * 1.090)}, or a title.
 */
public final class OriginalGravityInHeader {
  private static final Pattern BRACKETS = Pattern.compile("([^(\\[]+)[(\\[]([^)\\]]+)[)\\]]\\s*");

  /** A word and a gravity behind it. */
  private static final Pattern NAMED_GRAVITY =
      Pattern.compile("([\\p{L}.]+)\\s*[:=]?\\s*(1[.,][01]\\d{2,3})(?!\\d)");

  private OriginalGravityInHeader() {}

  /** An original gravity inside a title, as {@code Kit 2 - start 1.093 - 23 L}. */
  static Optional<KeyLine> inTitle(Grid grid, int row, int column) {
    String text = grid.text(row, column).strip();
    Matcher matcher = NAMED_GRAVITY.matcher(text);
    while (matcher.find()) {
      Set<Concept> meanings = Vocabulary.meanings(matcher.group(1));
      boolean original =
          meanings.contains(Concept.ORIGINAL) || meanings.contains(Concept.ORIGINALGRAVITY);
      if (original && matcher.start() > 0) {
        double value = Double.parseDouble(matcher.group(2).replace(',', '.'));
        CellText read = CellText.read(KeyLines.upToTemperature(text.substring(matcher.start(2))));
        return Optional.of(
            new KeyLine(
                EnumSet.of(Concept.ORIGINALGRAVITY),
                matcher.group(1),
                row,
                column,
                grid.address(row, column),
                matcher.group(2),
                value,
                Set.of(),
                read.celsius(),
                false));
      }
    }
    return Optional.empty();
  }

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
