package washbook.office.menu;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A call of one of our functions inside a formula.
 *
 * @param name upper case, without the prefix
 * @param arguments the text between its brackets
 */
record PackCall(String name, String arguments) {
  private static final Pattern START =
      Pattern.compile("WASHBOOK\\.([A-Z][A-Z0-9]*)\\(", Pattern.CASE_INSENSITIVE);

  /** All calls in a formula, those inside others first. */
  static List<PackCall> in(String formula) {
    record Found(int start, int end) {}
    List<Found> places = new ArrayList<>();
    List<PackCall> calls = new ArrayList<>();
    Matcher matcher = START.matcher(withoutTexts(formula));
    while (matcher.find()) {
      int end = closing(formula, matcher.end());
      places.add(new Found(matcher.start(), end));
      calls.add(
          new PackCall(
              matcher.group(1).toUpperCase(Locale.ROOT), formula.substring(matcher.end(), end)));
    }
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < calls.size(); i++) {
      order.add(i);
    }
    order.sort(Comparator.comparingInt(i -> places.get(i).end()));
    return order.stream().map(calls::get).toList();
  }

  /** The arguments one by one. */
  List<String> split() {
    List<String> all = new ArrayList<>();
    String bare = withoutTexts(arguments);
    int depth = 0;
    int from = 0;
    for (int i = 0; i < bare.length(); i++) {
      char c = bare.charAt(i);
      depth += c == '(' || c == '{' ? 1 : c == ')' || c == '}' ? -1 : 0;
      if (c == ';' && depth == 0) {
        all.add(arguments.substring(from, i));
        from = i + 1;
      }
    }
    all.add(arguments.substring(from));
    return all;
  }

  /** The bracket that closes a call whose arguments begin at {@code from}. */
  private static int closing(String formula, int from) {
    String bare = withoutTexts(formula);
    int depth = 1;
    for (int i = from; i < bare.length(); i++) {
      char c = bare.charAt(i);
      depth += c == '(' ? 1 : c == ')' ? -1 : 0;
      if (depth == 0) {
        return i;
      }
    }
    return bare.length();
  }

  /** The formula with blanks in the place of quoted texts and names, of the same length. */
  private static String withoutTexts(String formula) {
    StringBuilder text = new StringBuilder(formula);
    char open = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (open != 0) {
        text.setCharAt(i, ' ');
        open = c == open ? 0 : open;
      } else if (c == '"' || c == '\'') {
        open = c;
        text.setCharAt(i, ' ');
      }
    }
    return text.toString();
  }
}
