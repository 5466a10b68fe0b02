package washbook.log.language;

import java.time.LocalDate;
import java.util.List;
import washbook.functions.Sentence;
import washbook.functions.TextFile;

/**
 * Something said to a person, before it is known in which language.
 *
 * @param texts the files that it is taken from
 * @param key of the text in the files of all languages
 * @param arguments what its placeholders stand for: texts that are quoted as they are, {@link
 *     Figure}s, days, {@link Sentence}s and other messages
 */
public record Message(Messages texts, String key, List<Object> arguments) {
  /** Nothing to say. */
  public static final Message NONE = of("blank");

  public Message {
    arguments = List.copyOf(arguments);
  }

  /** One of the texts that stand beside {@link Messages}. */
  public Message(String key, List<Object> arguments) {
    this(Messages.OF_LOGS, key, arguments);
  }

  /** A message of these arguments. */
  public static Message of(String key, Object... arguments) {
    return new Message(key, List.of(arguments));
  }

  public boolean isBlank() {
    return equals(NONE);
  }

  /** Written out: Java takes long over the first comparison that it makes of a record itself. */
  @Override
  public boolean equals(Object other) {
    return this == other
        || (other instanceof Message that
            && texts == that.texts
            && key.equals(that.key)
            && arguments.equals(that.arguments));
  }

  @Override
  public int hashCode() {
    return 31 * key.hashCode() + arguments.hashCode();
  }

  /** The sentence. */
  public String in(Language language) {
    return TextFile.filled(
        texts.text(language, key), index -> shown(arguments.get(index), language));
  }

  private static String shown(Object argument, Language language) {
    if (argument instanceof Message message) {
      return message.in(language);
    }
    if (argument instanceof Sentence sentence) {
      return sentence.in(language.code());
    }
    if (argument instanceof Figure figure) {
      return figure.in(language);
    }
    return argument instanceof LocalDate day ? language.shown(day) : argument.toString();
  }
}
