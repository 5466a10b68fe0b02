package washbook.runner.report;

/**
 * Text from outside - names of files, sheets and batches, cells - as it may be shown on a terminal,
 * in a log or in a report: on one line, and nothing in it steers a terminal or turns the order of
 * what stands beside it.
 */
public final class ShownText {
  private ShownText() {}

  /**
   * The text with everything that is not seen written out, as {@code \n} or {@code \}{@code u001b}.
   */
  public static String of(String text) {
    return shown(text, false);
  }

  /** The same for text of several lines of our own making. */
  public static String lines(String text) {
    return shown(text, true);
  }

  private static String shown(String text, boolean keepsLines) {
    StringBuilder shown = null;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean whole = Character.isSurrogate(c) && isPaired(text, i);
      if (whole || isPlain(c) || (keepsLines && (c == '\n' || c == '\r'))) {
        if (shown != null) {
          shown.append(c);
        }
        continue;
      }
      if (shown == null) {
        shown = new StringBuilder(text.length() + 8).append(text, 0, i);
      }
      switch (c) {
        case '\n' -> shown.append("\\n");
        case '\r' -> shown.append("\\r");
        case '\t' -> shown.append(' ');
        default -> shown.append(String.format("\\u%04x", (int) c));
      }
    }
    return shown == null ? text : shown.toString();
  }

  private static boolean isPaired(String text, int at) {
    return Character.isHighSurrogate(text.charAt(at))
        ? at + 1 < text.length() && Character.isLowSurrogate(text.charAt(at + 1))
        : at > 0 && Character.isHighSurrogate(text.charAt(at - 1));
  }

  /** Controls, marks that turn the direction of writing, and separators of lines are not. */
  private static boolean isPlain(char c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          false;
      case Character.FORMAT -> !isDirection(c);
      default -> true;
    };
  }

  private static boolean isDirection(char c) {
    return (c >= '\u202a' && c <= '\u202e')
        || (c >= '\u2066' && c <= '\u2069')
        || c == '\u200e'
        || c == '\u200f'
        || c == '\u061c';
  }
}
