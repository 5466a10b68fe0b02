package washbook.functions.portable.form;

/** A call that cannot be written as plain arithmetic; the message is a sentence for people. */
public final class NotPortableException extends Exception {
  private static final long serialVersionUID = 1L;

  public NotPortableException(String reason) {
    super(reason);
  }
}
