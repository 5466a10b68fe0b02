package washbook.log.run;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import washbook.log.language.Language;
import washbook.log.words.Vocabulary;

/** The words of still runs: a text means all that its longest matches mean. */
public final class RunWords {
  private static final String FILE = "run-words.txt";

  /** Longer texts are prose. */
  private static final int LONGEST = 160;

  private static final RunWords ONE = load();

  private final Map<String, List<Entry>> byFirstToken = new HashMap<>();
  private final List<Entry> withStar = new ArrayList<>();

  private record Entry(RunWord meaning, Optional<Language> language, List<String> tokens) {}

  private RunWords() {}

  /** All meanings of a text; empty when there are none or when it is prose. */
  static Set<RunWord> in(String text) {
    Set<RunWord> found = EnumSet.noneOf(RunWord.class);
    ONE.match(text).forEach(entry -> found.add(entry.meaning));
    return found;
  }

  /** The languages whose words stand in a text, each as often as words of it do. */
  public static List<Language> languages(String text) {
    return ONE.match(text).stream().flatMap(e -> e.language.stream()).toList();
  }

  private List<Entry> match(String text) {
    if (text.isEmpty() || text.length() > LONGEST) {
      return List.of();
    }
    List<String> tokens = Vocabulary.tokens(text);
    List<Entry> found = new ArrayList<>();
    int at = 0;
    while (at < tokens.size()) {
      List<Entry> here = longest(tokens, at);
      found.addAll(here);
      at += here.isEmpty() ? 1 : here.get(0).tokens.size();
    }
    return found;
  }

  private List<Entry> longest(List<String> tokens, int at) {
    List<Entry> here = new ArrayList<>();
    for (Entry entry : byFirstToken.getOrDefault(tokens.get(at), List.of())) {
      int size = entry.tokens.size();
      int longest = here.isEmpty() ? 0 : here.get(0).tokens.size();
      boolean stands =
          at + size <= tokens.size() && tokens.subList(at, at + size).equals(entry.tokens);
      if (stands && size >= longest) {
        if (size > longest) {
          here.clear();
        }
        here.add(entry);
      }
    }
    if (here.isEmpty()) {
      withStar.stream().filter(e -> matches(e.tokens.get(0), tokens.get(at))).forEach(here::add);
    }
    return here;
  }

  private static boolean matches(String pattern, String token) {
    return pattern.startsWith("*")
        ? token.endsWith(pattern.substring(1))
        : token.startsWith(pattern.substring(0, pattern.length() - 1));
  }

  private static RunWords load() {
    RunWords words = new RunWords();
    try (InputStream in = RunWords.class.getResourceAsStream(FILE);
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      lines
          .lines()
          .filter(line -> !line.isBlank() && !line.startsWith("#"))
          .forEach(words::addLine);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return words;
  }

  private void addLine(String line) {
    String[] parts = line.split("\\|", 3);
    RunWord meaning = RunWord.valueOf(parts[0].strip());
    Optional<Language> language = Language.of(parts[1]);
    for (String word : parts[2].split(",")) {
      if (word.contains("*")) {
        withStar.add(new Entry(meaning, language, List.of(word.strip())));
      } else {
        List<String> tokens = Vocabulary.tokens(word);
        byFirstToken
            .computeIfAbsent(tokens.get(0), k -> new ArrayList<>())
            .add(new Entry(meaning, language, tokens));
      }
    }
  }
}
