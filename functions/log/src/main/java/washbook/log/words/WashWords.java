package washbook.log.words;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import washbook.functions.liquid.WashKind;

/**
 * What a log says of the kind of its wash. A title decides when it names one outright (sugar wash,
 * mead); after a label for the wash a plain word is enough (sugar, honey). The words stand in
 * wash-words.txt; names of batches are none of them.
 */
public final class WashWords {
  private static final String FILE = "wash-words.txt";

  /** Longer texts are prose, not titles. */
  private static final int LONGEST = 60;

  private static final List<Entry> ENTRIES = load();

  private record Entry(String use, List<String> tokens) {}

  private WashWords() {}

  /** Whether a text is a label for the kind of wash. */
  public static boolean isLabel(String text) {
    List<String> tokens = Vocabulary.tokens(text);
    return ENTRIES.stream().anyMatch(e -> e.use.equals("LABEL") && e.tokens.equals(tokens));
  }

  /** Kinds that a title names outright. */
  public static Set<WashKind> inTitle(String text) {
    return kinds(text, "TITLE ");
  }

  /** Kinds that the value after a label names. */
  public static Set<WashKind> inValue(String text) {
    Set<WashKind> named = inTitle(text);
    return named.isEmpty() ? kinds(text, "VALUE ") : named;
  }

  private static Set<WashKind> kinds(String text, String use) {
    if (text.length() > LONGEST) {
      return Set.of();
    }
    List<String> tokens = Vocabulary.tokens(text);
    Set<String> words = new TreeSet<>();
    for (Entry entry : ENTRIES) {
      if (entry.use.startsWith(use) && Collections.indexOfSubList(tokens, entry.tokens) >= 0) {
        words.add(entry.use.substring(use.length()));
      }
    }
    Set<WashKind> kinds = new HashSet<>();
    words.forEach(word -> kinds.add(WashKind.of(word)));
    return kinds;
  }

  private static List<Entry> load() {
    try (InputStream in = WashWords.class.getResourceAsStream(FILE);
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      return lines
          .lines()
          .filter(line -> !line.isBlank() && !line.startsWith("#"))
          .map(line -> line.split("\\|", 3))
          .flatMap(
              part ->
                  List.of(part[2].split(",")).stream()
                      .map(word -> new Entry(part[0].strip(), Vocabulary.takeApart(word))))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
