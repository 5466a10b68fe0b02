package washbook.runner.markup;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lengths with their unit, as OpenDocument has them (OpenDocument 1.3 part 3, 18.3.18 length). */
public final class Length {
  private static final Pattern LENGTH = Pattern.compile("(-?[\\d.]{1,12})(mm|cm|in|pt|pc|px)");

  private Length() {}

  /** In millimetres; {@code otherwise} for what is none. */
  public static double millimetres(String text, double otherwise) {
    Matcher parts = LENGTH.matcher(text.strip());
    if (!parts.matches()) {
      return otherwise;
    }
    double unit =
        switch (parts.group(2)) {
          case "cm" -> 10;
          case "in" -> 25.4;
          case "pt" -> 25.4 / 72;
          case "pc" -> 25.4 / 6;
          case "px" -> 25.4 / 96;
          default -> 1;
        };
    try {
      return Double.parseDouble(parts.group(1)) * unit;
    } catch (NumberFormatException e) {
      return otherwise;
    }
  }
}
