package washbook.log.words;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

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

  /** The quarter of the sky, in many languages the German word for a brew without its number. */
  private static final Pattern SOUTH =
      Pattern.compile("(?iu)\\bs[u\u00fc]d\\b(?=\\s*(/|-|\u2013|$|\\p{L}))(?<!^sud)");

  /** By their first token, as every note of a log is looked through for them. */
  private static final Map<String, List<Entry>> BY_FIRST_TOKEN = new HashMap<>();

  /** Single words with a star. */
  private static final List<Entry> WITH_STAR = new ArrayList<>();

  static {
    for (Entry entry : load()) {
      String first = entry.tokens.get(0);
      if (first.contains("*")) {
        WITH_STAR.add(entry);
      } else {
        BY_FIRST_TOKEN.computeIfAbsent(first, k -> new ArrayList<>()).add(entry);
      }
    }
  }

  private record Entry(Side side, List<String> tokens) {}

  private static final Remembered<Set<Side>> SIDES =
      new Remembered<>(text -> Collections.unmodifiableSet(sides(text)));

  private TradeWords() {}

  /** Of what a text speaks; of both or of nothing that is known, too. */
  public static Set<Side> in(String text) {
    return text.length() > LONGEST ? Set.of() : SIDES.of(text);
  }

  private static Set<Side> sides(String text) {
    Set<Side> sides = EnumSet.noneOf(Side.class);
    List<String> tokens = Vocabulary.tokens(SOUTH.matcher(text).replaceAll(" "));
    for (int at = 0; at < tokens.size(); at++) {
      String token = tokens.get(at);
      for (Entry entry : BY_FIRST_TOKEN.getOrDefault(token, List.of())) {
        if (WordList.stands(entry.tokens, tokens, at)) {
          sides.add(entry.side);
        }
      }
      for (Entry entry : WITH_STAR) {
        if (!sides.contains(entry.side) && WordList.isWord(entry.tokens.get(0), token)) {
          sides.add(entry.side);
        }
      }
    }
    return sides;
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
      return List.of("*" + Vocabulary.takeApart(word.substring(1)).get(0));
    }
    return word.endsWith("*")
        ? List.of(Vocabulary.takeApart(word.substring(0, word.length() - 1)).get(0) + "*")
        : Vocabulary.takeApart(word);
  }
}
