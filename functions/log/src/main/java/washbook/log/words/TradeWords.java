package washbook.log.words;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Words by which a text speaks of a ferment or of another trade; they stand in trade-words.txt. */
public final class TradeWords {
  /** Of what a word speaks. */
  public enum Side {
    FERMENT,
    OTHER
  }

  private static final String FILE = "trade-words.txt";

  /** Longer texts are prose: they speak of many things. */
  private static final int LONGEST = 120;

  private static final List<Entry> ENTRIES = load();

  private record Entry(Side side, List<String> tokens) {}

  private TradeWords() {}

  /** Of what a text speaks; of both or of nothing that is known, too. */
  public static Set<Side> in(String text) {
    if (text.length() > LONGEST) {
      return Set.of();
    }
    Set<Side> sides = EnumSet.noneOf(Side.class);
    List<String> tokens = Vocabulary.tokens(text);
    for (Entry entry : ENTRIES) {
      if (!sides.contains(entry.side) && stands(entry.tokens, tokens)) {
        sides.add(entry.side);
      }
    }
    return sides;
  }

  private static boolean stands(List<String> wanted, List<String> tokens) {
    for (int at = 0; at + wanted.size() <= tokens.size(); at++) {
      boolean all = true;
      for (int i = 0; all && i < wanted.size(); i++) {
        all = WordList.isWord(wanted.get(i), tokens.get(at + i));
      }
      if (all) {
        return true;
      }
    }
    return false;
  }

  private static List<Entry> load() {
    try (InputStream in = TradeWords.class.getResourceAsStream(FILE);
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      return lines
          .lines()
          .filter(line -> !line.isBlank() && !line.startsWith("#"))
          .map(line -> line.split("\\|", 3))
          .flatMap(
              part ->
                  List.of(part[2].split(",")).stream()
                      .map(word -> new Entry(Side.valueOf(part[0].strip()), tokens(word.strip()))))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> tokens(String word) {
    if (word.startsWith("*")) {
      return List.of("*" + Vocabulary.tokens(word.substring(1)).get(0));
    }
    return word.endsWith("*")
        ? List.of(Vocabulary.tokens(word.substring(0, word.length() - 1)).get(0) + "*")
        : Vocabulary.tokens(word);
  }
}
