package washbook.office.menu;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/**
 * What a menu entry or a macro asks for: {@code washbook.office:NAME?key=value&key=value}.
 *
 * @param name the command
 * @param options {@code ask=no} leaves dialogs out; {@code as=pack} writes formulas
 */
record Command(String name, Map<String, String> options) {

  static Command of(String url) {
    String rest = url.substring(url.indexOf(':') + 1);
    int question = rest.indexOf('?');
    Map<String, String> options = new HashMap<>();
    if (question >= 0) {
      for (String pair : rest.substring(question + 1).split("&", -1)) {
        String[] sides = pair.split("=", 2);
        options.put(lower(sides[0]), sides.length == 2 ? lower(sides[1]) : "");
      }
    }
    return new Command(lower(question < 0 ? rest : rest.substring(0, question)), options);
  }

  boolean asks() {
    return !"no".equals(options.get("ask"));
  }

  boolean writesFormulas() {
    return "pack".equals(options.get("as"));
  }

  private static String lower(String text) {
    return text.toLowerCase(Locale.ROOT);
  }
}
