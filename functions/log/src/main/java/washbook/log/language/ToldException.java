package washbook.log.language;

/** Something that a person gave makes no sense; says what, in the language of whoever reads it. */
public final class ToldException extends IllegalArgumentException implements Told {
  private static final long serialVersionUID = 1L;

  private final transient Message told;

  public ToldException(Message told) {
    super(told.in(Language.EN));
    this.told = told;
  }

  @Override
  public Message told() {
    return told;
  }
}
