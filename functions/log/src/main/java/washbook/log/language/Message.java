package washbook.log.language;

import java.util.List;

/**
 * Something said to a person, before it is known in which language.
 *
 * @param texts the files that it is taken from
 * @param key of the text in the files of all languages
 * @param arguments what its placeholders stand for: texts that are quoted as they are, {@link
 *     Figure}s and other messages
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
    String text = texts.text(language, key);
    StringBuilder sentence = new StringBuilder();
    int at = 0;
    for (int open = text.indexOf('{'); open >= 0; open = text.indexOf('{', at)) {
      int close = text.indexOf('}', open);
      sentence.append(text, at, open);
      sentence.append(shown(Integer.parseInt(text, open + 1, close, 10), language));
      at = close + 1;
    }
    return sentence.append(text, at, text.length()).toString();
  }

  private String shown(int index, Language language) {
    Object argument = arguments.get(index);
    if (argument instanceof Message message) {
      return message.in(language);
    }
    return argument instanceof Figure figure ? figure.in(language) : argument.toString();
  }
}
