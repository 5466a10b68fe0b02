package washbook.functions.portable.form;

import washbook.functions.Sentence;

/** A call that cannot be written as plain arithmetic; the message is a sentence for people. */
public final class NotPortableException extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient Sentence told;

  /**
   * @param key of a {@link Sentence}
   * @param values what its placeholders stand for
   */
  public NotPortableException(String key, Object... values) {
    this(Sentence.of(key, values));
  }

  public NotPortableException(Sentence told) {
    super(told.key(), null, false, false);
    this.told = told;
  }

  /** Why, for people. */
  public Sentence told() {
    return told;
  }

  @Override
  public String getMessage() {
    return told.english();
  }
}
