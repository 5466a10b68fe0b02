package washbook.log.language;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import washbook.functions.TextFile;

/**
 * The texts of one program part, a file for each language; each is read when first asked for. What
 * is seldom said stands in folders of its own, which are read only for a text that is in none
 * before.
 */
public final class Messages {
  /** What is said about logs. */
  static final Messages OF_LOGS = new Messages(Messages.class, "understanding/");

  private final Class<?> owner;
  private final List<String> folders = new ArrayList<>(List.of(""));
  private final List<List<Map<String, String>>> loaded = new ArrayList<>();

  /**
   * @param owner the files {@code en.properties}, {@code de.properties} ... lie beside this class
   * @param seldom folders beside it with more of them, each ending in /
   */
  public Messages(Class<?> owner, String... seldom) {
    this.owner = owner;
    folders.addAll(List.of(seldom));
    for (int i = 0; i < Language.values().length; i++) {
      loaded.add(new ArrayList<>());
    }
  }

  /** One of these texts with what its placeholders stand for. */
  public Message message(String key, Object... arguments) {
    return new Message(this, key, List.of(arguments));
  }

  /** The text with its placeholders {@code {0}}, {@code {1}}. */
  String text(Language language, String key) {
    for (int i = 0; i < folders.size(); i++) {
      String text = texts(language, i).get(key);
      if (text != null) {
        return text;
      }
    }
    throw new IllegalArgumentException("there is no message '" + key + "'");
  }

  private Map<String, String> texts(Language language, int folder) {
    synchronized (loaded) {
      List<Map<String, String>> read = loaded.get(language.ordinal());
      while (read.size() <= folder) {
        String name = folders.get(read.size()) + language.code() + ".properties";
        read.add(TextFile.read(owner, name));
      }
      return read.get(folder);
    }
  }
}
