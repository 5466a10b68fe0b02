package washbook.log.language;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

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
        Map<String, String> texts = new HashMap<>();
        String name = folders.get(read.size()) + language.code() + ".properties";
        try (InputStream in = owner.getResourceAsStream(name)) {
          read(new String(in.readAllBytes(), StandardCharsets.UTF_8), texts);
        } catch (IOException e) {
          throw new UncheckedIOException(e);
        }
        read.add(texts);
      }
      return read.get(folder);
    }
  }

  /**
   * Lines {@code key = text}, as {@link java.util.Properties} reads them, only sooner: a log's
   * headers are looked for in all languages at every start. Of what that class knows beyond such
   * lines there is only the backslash before a first blank.
   */
  private static void read(String lines, Map<String, String> texts) {
    int start = 0;
    while (start < lines.length()) {
      int end = lines.indexOf('\n', start);
      end = end < 0 ? lines.length() : end;
      int equals = lines.indexOf('=', start);
      if (equals > start && equals < end && lines.charAt(start) != '#') {
        String text = lines.substring(equals + 1, end).strip();
        texts.put(
            lines.substring(start, equals).strip(),
            text.startsWith("\\ ") ? text.substring(1) : text);
      }
      start = end + 1;
    }
  }
}
