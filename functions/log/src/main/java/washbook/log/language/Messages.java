package washbook.log.language;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;

/** The texts of one language, from its file beside this class; read when first asked for. */
final class Messages {
  private static final Messages[] LOADED = new Messages[Language.values().length];

  private final Map<String, String> texts = new HashMap<>();

  private Messages(Language language) {
    String file = language.code() + ".properties";
    try (InputStream in = Messages.class.getResourceAsStream(file)) {
      read(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Lines {@code key = text}, as {@link java.util.Properties} reads them, only sooner: a log's
   * headers are looked for in all languages at every start. Of what that class knows beyond such
   * lines there is only the backslash before a first blank.
   */
  private void read(String lines) {
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

  static Messages of(Language language) {
    synchronized (LOADED) {
      Messages loaded = LOADED[language.ordinal()];
      if (loaded == null) {
        loaded = new Messages(language);
        LOADED[language.ordinal()] = loaded;
      }
      return loaded;
    }
  }

  /** The text with its placeholders {@code {0}}, {@code {1}}. */
  String text(String key) {
    String text = texts.get(key);
    if (text == null) {
      throw new IllegalArgumentException("there is no message '" + key + "'");
    }
    return text;
  }
}
