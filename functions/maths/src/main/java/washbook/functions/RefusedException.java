package washbook.functions;

/** Carries a refusal out of nested calculations; the catalogue turns it into a value. */
public final class RefusedException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient Answer.Refusal refusal;

  /**
   * @param key of a {@link Sentence}
   * @param values what its placeholders stand for
   */
  public RefusedException(Answer.Code code, String key, Object... values) {
    super(key, null, false, false);
    this.refusal = new Answer.Refusal(code, Sentence.of(key, values));
  }

  /** Each value is possible, but not together. */
  public static RefusedException contradiction(String key, Object... values) {
    return new RefusedException(Answer.Code.CONTRADICTION, key, values);
  }

  public Answer.Refusal refusal() {
    return refusal;
  }

  /** The sentence, made only where somebody reads it: most refusals are caught unread. */
  @Override
  public String getMessage() {
    return refusal.reason();
  }
}
