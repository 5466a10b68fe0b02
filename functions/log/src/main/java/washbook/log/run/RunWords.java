package washbook.log.run;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import washbook.log.language.Language;
import washbook.log.words.Remembered;
import washbook.log.words.Vocabulary;
import washbook.log.words.WordList;

/** The words of still runs: a text means all that its longest matches mean. */
public final class RunWords {
  private static final String FILE = "run-words.txt";

  /** Longer texts are prose. */
  private static final int LONGEST = 160;

  private static final WordList<RunWord> WORDS = WordList.load(RunWords.class, FILE, RunWord.class);

  private static final Remembered<Set<RunWord>> MEANINGS =
      new Remembered<>(text -> Collections.unmodifiableSet(meanings(text)));

  private RunWords() {}

  /** All meanings of a text; empty when there are none or when it is prose. */
  static Set<RunWord> in(String text) {
    return MEANINGS.of(text);
  }

  private static Set<RunWord> meanings(String text) {
    Set<RunWord> found = EnumSet.noneOf(RunWord.class);
    matches(text).forEach(entry -> found.add(entry.meaning()));
    return found;
  }

  /** The languages whose words stand in a text, each as often as words of it do. */
  public static List<Language> languages(String text) {
    return matches(text).flatMap(e -> e.language().stream()).toList();
  }

  private static Stream<WordList.Entry<RunWord>> matches(String text) {
    return text.length() > LONGEST
        ? Stream.of()
        : WORDS.matches(Vocabulary.tokens(text)).stream().flatMap(List::stream);
  }
}
