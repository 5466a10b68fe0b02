package washbook.log.words;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import washbook.log.language.Language;

/**
 * The vocabulary of headers and key lines. It knows no language: every line of its data file gives
 * words of one meaning, and a text means all that its longest matches mean.
 */
public final class Vocabulary {
  private static final String FILE = "header-words.txt";

  /** Longer texts are prose, not headers. */
  private static final int LONGEST = 120;

  /** Temperatures to which readings are brought, °C and °F. */
  private static final Set<String> REFERENCES = Set.of("15", "17", "20", "25", "60", "68");

  /** Distinct texts remembered; a sheet's headers and batch names are far fewer. */
  private static final int REMEMBERED = 4096;

  private static final Vocabulary ONE = load();

  private final Map<String, List<Entry>> byFirstToken = new HashMap<>();
  private final List<Entry> withStar = new ArrayList<>();
  private final ThreadLocal<Map<String, Set<Concept>>> known =
      ThreadLocal.withInitial(HashMap::new);

  private record Entry(Concept concept, Optional<Language> language, List<String> tokens) {}

  private Vocabulary() {}

  /** All meanings of a text; empty when there are none or when it is prose. */
  public static Set<Concept> meanings(String text) {
    if (text.length() > LONGEST) {
      return Set.of();
    }
    Map<String, Set<Concept>> known = ONE.known.get();
    Set<Concept> found = known.get(text);
    if (found == null) {
      found = meaningsOf(tokens(text));
      if (known.size() >= REMEMBERED) {
        known.clear();
      }
      known.put(text, found);
    }
    return found;
  }

  /** The same of a text taken apart, which is not remembered. */
  static Set<Concept> meaningsOf(List<String> tokens) {
    return ONE.match(tokens);
  }

  /**
   * The languages whose words stand in a text, each as often as words of it do. Units are the same
   * in all languages and count for none.
   */
  public static List<Language> languages(String text) {
    return text.length() > LONGEST ? List.of() : ONE.languages(tokens(text));
  }

  private List<Language> languages(List<String> tokens) {
    List<Language> found = new ArrayList<>();
    int at = 0;
    while (at < tokens.size()) {
      List<Entry> here = longest(tokens, at);
      here.stream().flatMap(e -> e.language.stream()).distinct().forEach(found::add);
      at += here.isEmpty() ? 1 : here.get(0).tokens.size();
    }
    return found;
  }

  /** Lower-case words without accents; the degree sign, % and / are words of their own. */
  public static List<String> tokens(String text) {
    String plain =
        Normalizer.normalize(
            text.replace('\u00ba', '\u00b0').replace("\u00df", "ss"), Normalizer.Form.NFKD);
    List<String> tokens = new ArrayList<>();
    StringBuilder word = new StringBuilder();
    for (int i = 0; i < plain.length(); i++) {
      char c = plain.charAt(i);
      if (Character.isLetterOrDigit(c)) {
        boolean digit = Character.isDigit(c);
        if (word.length() > 0 && !digit && Character.isDigit(word.charAt(word.length() - 1))) {
          end(word, tokens);
        }
        word.append(c);
      } else if (Character.getType(c) != Character.NON_SPACING_MARK) {
        end(word, tokens);
        if (c == '\u00b0' || c == '%' || c == '/') {
          tokens.add(String.valueOf(c));
        }
      }
    }
    end(word, tokens);
    return tokens;
  }

  private static void end(StringBuilder word, List<String> tokens) {
    if (word.length() > 0) {
      tokens.add(word.toString().toLowerCase(Locale.ROOT));
      word.setLength(0);
    }
  }

  private Set<Concept> match(List<String> tokens) {
    Set<Concept> found = EnumSet.noneOf(Concept.class);
    int at = 0;
    while (at < tokens.size()) {
      List<Entry> here = longest(tokens, at);
      here.forEach(entry -> found.add(entry.concept));
      at += here.isEmpty() ? 1 : here.get(0).tokens.size();
    }
    settleLetters(found, tokens.size() == 1);
    if (found.remove(Concept.CONVERTED) && tokens.stream().anyMatch(REFERENCES::contains)) {
      found.add(Concept.CORRECTED);
    }
    return found;
  }

  /**
   * The longest entries that stand at a token, as they come first; one with a star if none does.
   */
  private List<Entry> longest(List<String> tokens, int at) {
    List<Entry> here = new ArrayList<>();
    for (Entry entry : byFirstToken.getOrDefault(tokens.get(at), List.of())) {
      int longest = here.isEmpty() ? 0 : here.get(0).tokens.size();
      if (entry.tokens.size() >= longest && matches(entry.tokens, tokens, at)) {
        here.add(entry);
      }
    }
    if (here.isEmpty()) {
      for (Entry entry : withStar) {
        if (isWord(entry.tokens.get(0), tokens.get(at))) {
          here.add(entry);
        }
      }
    }
    return here;
  }

  private static void settleLetters(Set<Concept> found, boolean alone) {
    boolean degrees =
        alone
            || found.contains(Concept.TEMPERATURE)
            || found.contains(Concept.CALIBRATION)
            || found.contains(Concept.CORRECTED)
            || found.contains(Concept.AMBIENT)
            || found.contains(Concept.DEGREES);
    if (found.remove(Concept.BARE_C) && degrees) {
      found.add(Concept.C);
    }
    if (found.remove(Concept.BARE_F) && degrees) {
      found.add(Concept.F);
    }
  }

  private static boolean matches(List<String> wanted, List<String> tokens, int at) {
    return at + wanted.size() <= tokens.size()
        && tokens.subList(at, at + wanted.size()).equals(wanted);
  }

  /** Whether a token is a word of a data file, where * stands for any beginning or end. */
  static boolean isWord(String word, String token) {
    if (word.startsWith("*")) {
      return token.endsWith(word.substring(1));
    }
    return word.endsWith("*")
        ? token.startsWith(word.substring(0, word.length() - 1))
        : token.equals(word);
  }

  private static Vocabulary load() {
    Vocabulary words = new Vocabulary();
    try (InputStream in = Vocabulary.class.getResourceAsStream(FILE);
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      lines
          .lines()
          .filter(line -> !line.isBlank() && !line.startsWith("#"))
          .forEach(words::addLine);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Comparator<Entry> longestFirst = Comparator.comparing(e -> -e.tokens.size());
    words.byFirstToken.values().forEach(list -> list.sort(longestFirst));
    return words;
  }

  private void addLine(String line) {
    String[] parts = line.split("\\|", 3);
    Concept concept = Concept.valueOf(parts[0].strip());
    Optional<Language> language = Language.of(parts[1]);
    for (String word : parts[2].split(",")) {
      String trimmed = word.strip();
      if (trimmed.contains("*")) {
        withStar.add(new Entry(concept, language, List.of(trimmed)));
      } else {
        List<String> tokens = tokens(trimmed);
        byFirstToken
            .computeIfAbsent(tokens.get(0), k -> new ArrayList<>())
            .add(new Entry(concept, language, tokens));
      }
    }
  }
}
