package washbook.log.language;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The texts of one program part, a file for each language; each is read when first asked for. */
public final class Messages {
  /** What is said about logs. */
  static final Messages OF_LOGS = new Messages(Messages.class);

  private final Class<?> owner;
  private final List<Map<String, String>> loaded = new ArrayList<>();

  /**
   * @param owner the files {@code en.properties}, {@code de.properties} ... lie beside this class
   */
  public Messages(Class<?> owner) {
    this.owner = owner;
    for (int i = 0; i < Language.values().length; i++) {
      loaded.add(new HashMap<>());
    }
  }

  /** One of these texts with what its placeholders stand for. */
  public Message message(String key, Object... arguments) {
    return new Message(this, key, List.of(arguments));
  }

  /** The text with its placeholders {@code {0}}, {@code {1}}. */
  String text(Language language, String key) {
    String text = texts(language).get(key);
    if (text == null) {
      throw new IllegalArgumentException("there is no message '" + key + "'");
    }
    return text;
  }

  private Map<String, String> texts(Language language) {
    synchronized (loaded) {
      Map<String, String> texts = loaded.get(language.ordinal());
      if (texts.isEmpty()) {
        try (InputStream in = owner.getResourceAsStream(language.code() + ".properties")) {
          read(new String(in.readAllBytes(), StandardCharsets.UTF_8), texts);
        } catch (IOException e) {
          throw new UncheckedIOException(e);
        }
      }
      return texts;
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
