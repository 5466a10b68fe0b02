package washbook.log.language;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Properties;

/** The texts of one language, from its file beside this class; read when first asked for. */
final class Messages {
  private static final Messages[] LOADED = new Messages[Language.values().length];

  private final Properties texts = new Properties();

  private Messages(Language language) {
    String file = language.code() + ".properties";
    try (InputStream in = Messages.class.getResourceAsStream(file);
        Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      texts.load(reader);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
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
    String text = texts.getProperty(key);
    if (text == null) {
      throw new IllegalArgumentException("there is no message '" + key + "'");
    }
    return text;
  }
}
