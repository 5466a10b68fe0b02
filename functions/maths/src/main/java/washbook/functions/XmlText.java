package washbook.functions;

/** Text as XML holds it, in elements and in attributes with double quotes. */
public final class XmlText {
  /** In the place of a character that XML cannot hold. */
  private static final char REPLACEMENT = '\uFFFD';

  private XmlText() {}

  /**
   * The text with the signs that XML needs for itself escaped. What XML cannot hold (control
   * characters, halves of a pair of surrogates, U+FFFE and U+FFFF) becomes U+FFFD.
   */
  public static String escaped(String text) {
    StringBuilder escaped = new StringBuilder(text.length() + 16);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '&' -> escaped.append("&amp;");
        case '<' -> escaped.append("&lt;");
        case '>' -> escaped.append("&gt;");
        case '"' -> escaped.append("&quot;");
        default -> escaped.append(isHeld(text, i, c) ? c : REPLACEMENT);
      }
    }
    return escaped.toString();
  }

  private static boolean isHeld(String text, int at, char c) {
    if (Character.isHighSurrogate(c)) {
      return at + 1 < text.length() && Character.isLowSurrogate(text.charAt(at + 1));
    }
    if (Character.isLowSurrogate(c)) {
      return at > 0 && Character.isHighSurrogate(text.charAt(at - 1));
    }
    return c >= ' ' ? c != '\uFFFE' && c != '\uFFFF' : c == '\t' || c == '\n' || c == '\r';
  }
}
