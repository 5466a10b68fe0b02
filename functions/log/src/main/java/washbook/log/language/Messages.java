package washbook.log.language;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Properties;

/** The texts of one program part, a file for each language; each is read when first asked for. */
public final class Messages {
  /** What is said about logs. */
  static final Messages OF_LOGS = new Messages(Messages.class);

  private final Class<?> owner;
  private final Properties[] loaded = new Properties[Language.values().length];

  /**
   * @param owner the files {@code en.properties}, {@code de.properties} ... lie beside this class
   */
  public Messages(Class<?> owner) {
    this.owner = owner;
  }

  /** One of these texts with what its placeholders stand for. */
  public Message message(String key, Object... arguments) {
    return new Message(this, key, List.of(arguments));
  }

  /** The text with its placeholders {@code {0}}, {@code {1}}. */
  String text(Language language, String key) {
    String text = texts(language).getProperty(key);
    if (text == null) {
      throw new IllegalArgumentException("there is no message '" + key + "'");
    }
    return text;
  }

  private Properties texts(Language language) {
    synchronized (loaded) {
      Properties texts = loaded[language.ordinal()];
      if (texts == null) {
        texts = load(language.code() + ".properties");
        loaded[language.ordinal()] = texts;
      }
      return texts;
    }
  }

  private Properties load(String file) {
    Properties texts = new Properties();
    try (InputStream in = owner.getResourceAsStream(file);
        Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      texts.load(reader);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return texts;
  }
}
