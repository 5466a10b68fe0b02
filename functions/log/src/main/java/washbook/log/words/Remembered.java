package washbook.log.words;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * What texts mean, for those of a thread that were asked for before: the same few headers and notes
 * stand in thousands of cells and logs.
 */
public final class Remembered<V> {
  /** Distinct texts remembered; a sheet's headers and batch names are far fewer. */
  private static final int MOST = 4096;

  /** Longer texts seldom come twice. */
  private static final int LONGEST = 160;

  private final ThreadLocal<Map<String, V>> known = ThreadLocal.withInitial(HashMap::new);
  private final Function<String, V> meaning;

  /**
   * @param meaning gives values that nobody changes, never null
   */
  public Remembered(Function<String, V> meaning) {
    this.meaning = meaning;
  }

  /** What the text means. */
  public V of(String text) {
    if (text.length() > LONGEST) {
      return meaning.apply(text);
    }
    Map<String, V> texts = known.get();
    V found = texts.get(text);
    if (found == null) {
      found = meaning.apply(text);
      if (texts.size() >= MOST) {
        texts.clear();
      }
      texts.put(text, found);
    }
    return found;
  }
}
