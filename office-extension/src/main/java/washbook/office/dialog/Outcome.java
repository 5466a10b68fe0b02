package washbook.office.dialog;

import washbook.log.language.Language;
import washbook.office.language.OfficeText;

/**
 * How a command ended.
 *
 * @param done whether it did what was asked
 * @param text what there is to say about it
 * @param shown whether the user is to see it; not when the user has just called the command off
 */
public record Outcome(boolean done, String text, boolean shown) {
  public static Outcome done(String text) {
    return new Outcome(true, text, true);
  }

  public static Outcome failed(String text) {
    return new Outcome(false, text, true);
  }

  public static Outcome calledOff(Language language) {
    return new Outcome(false, OfficeText.of("nothing.written").in(language), false);
  }
}
