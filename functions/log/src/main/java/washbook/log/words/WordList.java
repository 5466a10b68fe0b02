package washbook.log.words;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import washbook.log.language.Language;

/**
 * Words with their meanings from a data file: a line {@code MEANING | language | word, word} each,
 * where a star stands for any beginning or end of a single word.
 */
public final class WordList<M extends Enum<M>> {
  private final Map<String, List<Entry<M>>> byFirstToken = new HashMap<>();
  private final List<Entry<M>> withStar = new ArrayList<>();

  /**
   * @param language empty for words that are the same in all languages
   * @param tokens the word or words as {@link Vocabulary#tokens} takes them apart
   */
  public record Entry<M extends Enum<M>>(
      M meaning, Optional<Language> language, List<String> tokens) {}

  private WordList() {}

  /**
   * @param file a resource beside the class {@code owner}
   */
  public static <M extends Enum<M>> WordList<M> load(
      Class<?> owner, String file, Class<M> meanings) {
    WordList<M> words = new WordList<>();
    try (InputStream in = owner.getResourceAsStream(file);
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        if (!line.isBlank() && !line.startsWith("#")) {
          words.addLine(line, meanings);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    for (List<Entry<M>> list : words.byFirstToken.values()) {
      if (list.size() > 1) {
        list.sort((a, b) -> Integer.compare(b.tokens.size(), a.tokens.size()));
      }
    }
    return words;
  }

  private void addLine(String line, Class<M> meanings) {
    String[] parts = line.split("\\|", 3);
    M meaning = Enum.valueOf(meanings, parts[0].strip());
    Optional<Language> language = Language.of(parts[1]);
    for (String word : parts[2].split(",")) {
      String trimmed = word.strip();
      if (trimmed.contains("*")) {
        withStar.add(new Entry<>(meaning, language, List.of(trimmed)));
      } else {
        List<String> tokens = Vocabulary.takeApart(trimmed);
        byFirstToken
            .computeIfAbsent(tokens.get(0), k -> new ArrayList<>())
            .add(new Entry<>(meaning, language, tokens));
      }
    }
  }

  /** What stands in a text taken apart: at each place all words of the longest match there. */
  public List<List<Entry<M>>> matches(List<String> tokens) {
    List<List<Entry<M>>> found = new ArrayList<>();
    int at = 0;
    while (at < tokens.size()) {
      List<Entry<M>> here = longest(tokens, at);
      if (here.isEmpty()) {
        at++;
      } else {
        found.add(here);
        at += here.get(0).tokens.size();
      }
    }
    return found;
  }

  /**
   * The longest entries that stand at a token, as they come first; one with a star if none does.
   */
  private List<Entry<M>> longest(List<String> tokens, int at) {
    List<Entry<M>> here = new ArrayList<>();
    for (Entry<M> entry : byFirstToken.getOrDefault(tokens.get(at), List.of())) {
      int longest = here.isEmpty() ? 0 : here.get(0).tokens.size();
      if (entry.tokens.size() >= longest && stands(entry.tokens, tokens, at)) {
        here.add(entry);
      }
    }
    if (here.isEmpty()) {
      for (Entry<M> entry : withStar) {
        if (isWord(entry.tokens.get(0), tokens.get(at))) {
          here.add(entry);
        }
      }
    }
    return here;
  }

  /** The meaning that all single words share that begin so; empty where none or several do. */
  Optional<M> begins(String letters) {
    M found = null;
    for (List<Entry<M>> entries : byFirstToken.values()) {
      for (Entry<M> entry : entries) {
        if (entry.tokens.size() == 1 && entry.tokens.get(0).startsWith(letters)) {
          if (found != null && found != entry.meaning) {
            return Optional.empty();
          }
          found = entry.meaning;
        }
      }
    }
    return Optional.ofNullable(found);
  }

  static boolean stands(List<String> wanted, List<String> tokens, int at) {
    return at + wanted.size() <= tokens.size()
        && tokens.subList(at, at + wanted.size()).equals(wanted);
  }

  /** Whether a token is a word of a data file, where * stands for any beginning or end. */
  static boolean isWord(String word, String token) {
    int letters = word.length() - 1;
    if (word.startsWith("*")) {
      return token.regionMatches(token.length() - letters, word, 1, letters);
    }
    return word.endsWith("*") ? token.regionMatches(0, word, 0, letters) : token.equals(word);
  }
}
