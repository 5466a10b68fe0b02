package washbook.functions;

/** Carries a refusal out of nested calculations; the catalogue turns it into a value. */
public final class RefusedException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient Answer.Refusal refusal;

  public RefusedException(Answer.Code code, String reason) {
    super(reason, null, false, false);
    this.refusal = new Answer.Refusal(code, reason);
  }

  /** Each value is possible, but not together. */
  public static RefusedException contradiction(String reason) {
    return new RefusedException(Answer.Code.CONTRADICTION, reason);
  }

  public Answer.Refusal refusal() {
    return refusal;
  }
}
