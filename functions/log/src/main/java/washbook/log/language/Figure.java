package washbook.log.language;

import washbook.functions.Numbers;

/**
 * A number in a sentence; the language decides on its decimal mark.
 *
 * @param plain with a point
 */
public record Figure(String plain) {
  /** As it is written in that language. */
  public String in(Language language) {
    return Numbers.written(plain, language.code());
  }
}
