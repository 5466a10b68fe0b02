package washbook.runner.card;

import java.util.List;
import washbook.runner.language.Wording;

/**
 * What a card says, whatever file it goes into.
 *
 * @param words of its reader
 * @param kind of what it is a card
 * @param purpose one sentence below the title
 * @param settings of the instrument, which formulas refer to
 * @param tables each on a page of its own
 * @param notes how to read it and what it does not say
 */
public record Card(
    Wording words,
    Kind kind,
    String purpose,
    List<Setting> settings,
    List<CardTable> tables,
    List<String> notes) {

  /** The cards that there are. */
  public enum Kind {
    SCALES,
    HYDROMETER,
    ALCOHOLOMETER
  }

  /** What every card of ours begins with in that language, by which it is known again. */
  static String beginOfTitle(Wording words) {
    return words.say("card.title", "");
  }

  String title() {
    return words.say("card.title", words.say("card." + kind));
  }

  /**
   * A number that the person's instrument has.
   *
   * @param name by which formulas ask for it
   * @param unit stands beside the value
   */
  record Setting(String name, String label, double value, int decimals, String unit) {
    String text(Wording words) {
      return label + " " + words.decimal(CardNumber.plain(value, decimals)) + " " + unit;
    }
  }
}
