package washbook.functions.portable;

/** Cuts formula text into its smallest pieces, in either syntax, without judging them. */
final class Lexemes {
  private Lexemes() {}

  /** One past the end of the piece that begins at {@code from}. */
  static int end(String text, int from) {
    char c = text.charAt(from);
    if (c == '"' || c == '\'') {
      return quoted(text, from, c);
    }
    if (c == '[' || c == '{') {
      return enclosed(text, from, c, c == '[' ? ']' : '}');
    }
    int end = from;
    while (end < text.length() && isWord(text.charAt(end))) {
      end++;
    }
    return Math.max(end, from + 1);
  }

  /** One past the bracket that closes the one at {@code open}; the text's end if none does. */
  static int closing(String text, int open) {
    int depth = 0;
    for (int i = open; i < text.length(); i = end(text, i)) {
      if (text.charAt(i) == '(') {
        depth++;
      } else if (text.charAt(i) == ')' && --depth == 0) {
        return i + 1;
      }
    }
    return text.length();
  }

  static boolean isWord(char c) {
    return Character.isLetterOrDigit(c) || c == '_' || c == '.' || c == '$' || c == '\\';
  }

  private static int quoted(String text, int from, char quote) {
    for (int i = from + 1; i < text.length(); i++) {
      if (text.charAt(i) == quote) {
        if (i + 1 < text.length() && text.charAt(i + 1) == quote) {
          i++;
        } else {
          return i + 1;
        }
      }
    }
    return text.length();
  }

  private static int enclosed(String text, int from, char open, char close) {
    int depth = 0;
    int i = from;
    while (i < text.length()) {
      char c = text.charAt(i);
      if (c == '"' || c == '\'') {
        i = quoted(text, i, c);
        continue;
      }
      if (c == open) {
        depth++;
      } else if (c == close && --depth == 0) {
        return i + 1;
      }
      i++;
    }
    return text.length();
  }
}
