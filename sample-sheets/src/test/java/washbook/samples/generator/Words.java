package washbook.samples.generator;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What keepers of logs write in one language. */
record Words(String language, Map<String, List<String>> phrases) {
  static final List<String> LANGUAGES = List.of("en", "de", "fr", "es", "it", "pt", "nl", "af");

  private static final Map<String, Words> ALL = load();

  static Words in(String language) {
    return ALL.get(language);
  }

  /** All phrases for that, as {@code temperature}. */
  List<String> all(String what) {
    List<String> found = phrases.get(what);
    if (found == null) {
      throw new IllegalArgumentException("no words for " + what + " in " + language);
    }
    return found;
  }

  String one(String what, Choice choice) {
    return choice.of(all(what));
  }

  Locale locale() {
    return Locale.forLanguageTag(language);
  }

  /** Lines of a table in the test resources, split into fields; remarks left out. */
  static List<String[]> lines(String resource) {
    try (BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(
                Words.class.getResourceAsStream("/generator/" + resource),
                StandardCharsets.UTF_8))) {
      return reader
          .lines()
          .filter(l -> !l.isBlank() && !l.startsWith("#"))
          .map(l -> l.split(" \\| ", -1))
          .toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static Map<String, Words> load() {
    Map<String, Words> all = new HashMap<>();
    for (String[] line : lines("words.txt")) {
      all.computeIfAbsent(line[0], l -> new Words(l, new HashMap<>()))
          .phrases()
          .put(line[1], Arrays.stream(line[2].split(";")).map(String::strip).toList());
    }
    return all;
  }
}
