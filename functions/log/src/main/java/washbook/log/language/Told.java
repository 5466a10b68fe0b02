package washbook.log.language;

/** A failure that says what is wrong in the language of whoever reads it. */
public interface Told {
  /** What is wrong. */
  Message told();
}
